#include "parts/fixing.h"
#include "parts/newel.h"
#include "parts/start.h"
#include "parts/stringer.h"
#include "parts/tread.h"

/*
 * How newels are held: to stringers by loose tenons, to a tread by dowels, over
 * a string by its leg, to a floor by a bolt up the middle or a plate.  Sizes are
 * common practice.
 */

#define TENON_DEPTH 30.0 /* into either side */
#define TENON_THICK 12.0
#define LEAST_TENON 6.0
#define TALL_JOINT 140.0 /* takes two tenons */
#define LEAST_JOINT 45.0

#define TREAD_DOWEL 16.0
#define LEAST_TREAD_DOWEL 8.0
#define BESIDE_DOWEL 10.0 /* of the tread up to its end, and of the newel up to its face */
#define DOWEL_IN_NEWEL 50.0
#define UNDER_DOWEL 5.0 /* of the tread, left whole */

#define BOLT 10.0
#define BOLT_IN_NEWEL 90.0
#define ACCESS 25.0 /* hole to the bolt's nut, plugged */
#define ACCESS_UP 65.0
#define PLATE_THICK 6.0
#define PLATE_EDGE 10.0 /* from the recess to the newel's face */

#define SEAT_DEPTH 40.0
#define SCREW 10 /* number */
#define SCREW_IN_STRING 25.0
#define LEG_HEAD 8.0 /* of the leg: its head lies so deep, under a plug */
#define PLATE_SCREW 51.0

static const struct vec3 up = { 1, 0, 0 }, down = { -1, 0, 0 }, back = { 0, 1, 0 };

static void note_add(struct arena *a, const struct post *p, const char *text)
{
	const char *before = p->wood->note;
	p->wood->note = before ? arena_printf(a, "%s; %s", before, text) : text;
}

/* In the post's axes: out of the wood along w, longer side along u. */
static struct frame mouth(struct vec3 origin, struct vec3 u, struct vec3 w)
{
	return (struct frame){ origin, u, vec3_cross(w, u), w };
}

/* Drills the piece of the newel that the mouth is in. */
static void drill(struct pieces *list, const struct post *p, struct bore b)
{
	struct frame at = frame_compose(p->place, b.at);
	struct vec3 inside = vec3_sub(at.origin, vec3_scale(at.w, 0.5));
	for (struct part *w = p->wood; w; w = w->next) {
		struct frame place = w->places[0];
		if (!solids_contain(w->solids, frame_place_back(place, inside)))
			continue;
		b.at = frame_within(place, at);
		piece_bore(list->arena, w, b);
		return;
	}
}

/* Where a stringer's end stands against the newel: in from the limit, and levels. */
struct contact {
	double in0, in1, low, high;
};

static double across(const struct post *p, double in)
{
	double off = in - p->side->rail;
	return p->section / 2 + (p->side->hand == HAND_RIGHT ? off : -off);
}

static void tenons_add(struct pieces *list, const struct post *p, struct contact c, double face)
{
	double half = p->section / 2, tall = c.high - c.low;
	double in0 = fmax(c.in0, p->side->rail - half), in1 = fmin(c.in1, p->side->rail + half);
	double thick = fmin(TENON_THICK, (in1 - in0) / 3);
	int n = tall > TALL_JOINT ? 2 : 1;
	struct vec3 out = vec3(0, face > half ? 1 : -1, 0);
	if (thick < LEAST_TENON || tall < LEAST_JOINT)
		return;
	struct bore b = { .fixing = FIXING_LOOSE_TENON, .text = "loose tenon, stringer to newel" };
	b.size = bore_oblong(BORE_MORTISE, fmin(60, tall / n - 25), thick, TENON_DEPTH);
	b.mate = b.size;
	b.fixing_length = 2 * TENON_DEPTH;
	b.fixing_width = b.size.length;
	for (int i = 0; i < n; i++) {
		double level = c.low + tall * (i + 0.5) / n - p->end.newel_z;
		b.at = mouth(vec3(level, face, across(p, (in0 + in1) / 2)), up, out);
		drill(list, p, b);
	}
}

/* The wood of a stringer that no housing goes into. */
static struct contact contact_of(const struct post *p)
{
	const struct rod *r = p->rod;
	struct contact c = { p->side->outer, p->side->inner, p->end.newel_z, 0 };
	if (p->side->kind == STRINGER_HOUSED)
		c.in1 -= r->job->stringers.housing_depth;
	return c;
}

static void foot_tenons_add(struct pieces *list, const struct post *p)
{
	const struct rod *r = p->rod;
	struct contact c = contact_of(p);
	bool housed = p->side->kind == STRINGER_HOUSED;
	double block = stringers_have_block(r) ? r->job->stringers.block_thickness : 0;
	c.low = r->foot + (housed ? 0 : block);
	c.high = housed ? rod_housed_edge_z(r, p->end.x) : r->rise - r->tread;
	tenons_add(list, p, c, p->section);
}

static void head_tenons_add(struct pieces *list, const struct post *p)
{
	struct contact c = contact_of(p);
	c.high = rod_housed_edge_z(p->rod, p->end.x);
	if (p->side->kind == STRINGER_HOUSED)
		tenons_add(list, p, c, 0);
}

static void bolt_add(struct pieces *list, const struct post *p)
{
	double middle = p->section / 2;
	bool right = p->side->hand == HAND_RIGHT;
	struct bore b = { .fixing = FIXING_FLOOR_BOLT, .text = "bolt, newel to floor" };
	b.at = mouth(vec3(0, middle, middle), back, down);
	b.size = bore_round(BOLT, BOLT_IN_NEWEL);
	b.fixing_length = 2 * BOLT_IN_NEWEL; /* as much again in joist or blocking */
	b.fixing_width = BOLT;
	drill(list, p, b);
	struct bore access = { .text = "to the bolt's nut, plugged" };
	access.at = mouth(vec3(ACCESS_UP, middle, right ? 0 : p->section), up,
		vec3(0, 0, right ? -1 : 1));
	access.size = bore_round(ACCESS, middle + BOLT);
	drill(list, p, access);
}

static void plate_add(struct pieces *list, const struct post *p)
{
	double middle = p->section / 2, out = p->core / 4;
	struct bore plate = { .fixing = FIXING_PLATE, .text = "newel plate, let in flush" };
	plate.at = mouth(vec3(0, middle, middle), back, down);
	plate.size = bore_round(p->core - 2 * PLATE_EDGE, PLATE_THICK);
	drill(list, p, plate);
	struct fastener screw = fastener_screw_within(SCREW, PLATE_SCREW, p->rod->job->about.units);
	struct bore b = fastener_bore(screw, screw.length);
	b.size = bore_round(screw.pilot, screw.length);
	b.text = "screw, plate to newel";
	for (int i = 0; i < 4; i++) {
		double y = middle + (i & 1 ? out : -out) / 1.5,
		       z = middle + (i & 2 ? out : -out) / 1.5;
		b.at = mouth(vec3(0, y, z), back, down);
		drill(list, p, b);
	}
}

static void floor_fixing_add(struct pieces *list, const struct post *p)
{
	const struct job_newels *n = &p->rod->job->newels;
	struct lettering l = job_lettering(p->rod->job);
	if (p->is_bottom && n->let_in > 0) {
		note_add(list->arena, p,
			arena_printf(list->arena,
				"let %s into the floor: bolt it there to joist or blocking",
				length_say(list->arena, l, n->let_in)));
		return;
	}
	switch (n->floor_fixing) {
	case FLOOR_FIXING_BOLT: bolt_add(list, p); return;
	case FLOOR_FIXING_PLATE: plate_add(list, p); return;
	case FLOOR_FIXING_NONE: return;
	}
}

/* Where the body of the tread ends that a newel stands on, in from the limit: none of the return
 * strip holds a newel. */
static double tread_end_under(const struct post *p)
{
	const struct rod *r = p->rod;
	int step = (int)round(p->end.newel_z / r->rise);
	if (step < 1 || step > r->steps || (step == 1 && side_starts(p->side)))
		return -INFINITY;
	return tread_plan_make(r, step).ends[p->side->hand].body;
}

/* How thick dowels may be, and how far in from the limit: under the newel's middle, unless the end
 * of the tread is too near. */
struct dowel_place {
	double diameter, in;
};

static struct dowel_place dowel_place(const struct post *p)
{
	double end = tread_end_under(p), face = p->side->rail + p->core / 2;
	double thick = fmin(TREAD_DOWEL, face - end - 2 * BESIDE_DOWEL);
	double in = fmax(p->side->rail, end + BESIDE_DOWEL + thick / 2);
	return (struct dowel_place){ thick, in };
}

static void tread_dowels_add(struct pieces *list, const struct post *p, struct diags *d)
{
	const struct rod *r = p->rod;
	double middle = p->section / 2, out = p->core / 4, tread = r->tread;
	struct dowel_place at = dowel_place(p);
	if (p->is_bottom && p->side->from > 1)
		note_add(list->arena, p, "pack out and screw to the end of the wall as well");
	if (at.diameter < LEAST_TREAD_DOWEL) {
		diag_warning(d, rod_pos(r, r->job->newels.src, "section"),
			"take a thicker newel or a narrower return, or fix it to the stringer",
			"the end of the tread leaves no wood for dowels under a newel of %s",
			length_say(list->arena, job_lettering(r->job), p->section));
		return;
	}
	double in_tread = fmax(tread - UNDER_DOWEL, tread / 2);
	struct bore b = dowel_bore(
		(struct dowel){ at.diameter, 2 * DOWEL_IN_NEWEL, DOWEL_IN_NEWEL, in_tread });
	b.text = "dowel, newel to tread";
	for (int i = 0; i < 2; i++) {
		b.at = mouth(vec3(0, middle + (i ? out : -out), across(p, at.in)), back, down);
		drill(list, p, b);
	}
}

/* On the raked edge, its hole square to that, in the wood that no housing goes into. */
static void seat_tenon_add(struct pieces *list, const struct post *p)
{
	const struct rod *r = p->rod;
	double middle = p->section / 2, sine = r->slope * r->cosine;
	struct contact c = contact_of(p);
	struct bore b = { .fixing = FIXING_LOOSE_TENON, .text = "loose tenon, newel on string" };
	double thick = fmin(TENON_THICK, (c.in1 - c.in0) / 3);
	if (thick < LEAST_TENON - NEAR_ENOUGH)
		return;
	b.at = mouth(vec3(p->slope * middle, middle, across(p, (c.in0 + c.in1) / 2)),
		vec3(sine, r->cosine, 0), vec3(-r->cosine, sine, 0));
	b.size = bore_oblong(BORE_MORTISE, p->core / 2, thick, SEAT_DEPTH);
	b.mate = b.size;
	b.fixing_length = 2 * SEAT_DEPTH;
	b.fixing_width = b.size.length;
	drill(list, p, b);
}

/* From outside through the leg; the mouth is on the face against the string. */
static void leg_screws_add(struct pieces *list, const struct post *p)
{
	const struct rod *r = p->rod;
	bool right = p->side->hand == HAND_RIGHT;
	double string = p->side->inner - p->side->outer, thick = (p->core - string) / 2;
	double solid = string - r->job->stringers.housing_depth;
	double face = across(p, p->side->outer);
	double most = thick - LEG_HEAD + fmin(SCREW_IN_STRING, solid - 2);
	struct fastener screw = fastener_screw_within(SCREW, most, r->job->about.units);
	struct bore b = fastener_bore(screw, thick);
	b.mate = bore_round(screw.pilot, screw.length - (thick - LEG_HEAD));
	b.text = "screw through the leg, plugged";
	for (int i = 0; i < 4; i++) {
		double y = p->section / 2 + (i & 1 ? 1 : -1) * p->core / 4;
		double x = p->slope * y - p->leg * (i & 2 ? 0.7 : 0.3);
		b.at = mouth(vec3(x, y, face), up, vec3(0, 0, right ? 1 : -1));
		drill(list, p, b);
	}
}

void newel_joints_add(struct pieces *list, const struct post *p, struct diags *d)
{
	switch (p->end.kind) {
	case RAIL_END_NEWEL:
		floor_fixing_add(list, p);
		if (p->is_bottom)
			foot_tenons_add(list, p);
		else
			head_tenons_add(list, p);
		return;
	case RAIL_END_FLOOR_NEWEL: floor_fixing_add(list, p); return;
	case RAIL_END_TREAD_NEWEL: tread_dowels_add(list, p, d); return;
	case RAIL_END_STRING_NEWEL:
		seat_tenon_add(list, p);
		if (p->leg > 0)
			leg_screws_add(list, p);
		return;
	case RAIL_END_MET_NEWEL:
	case RAIL_END_PLUMB:
	case RAIL_END_WALL: return;
	}
}
