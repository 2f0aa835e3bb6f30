#include "parts/fixing.h"
#include "parts/newel.h"
#include "parts/start.h"
#include "parts/stringer.h"
#include "parts/tread.h"

/*
 * How the foot of a newel is held, so that a push at its top does not turn it over:
 *
 *       |   |            |     |           |     |             |     |.'
 *       |  (o) access    |     |           |  (o)|             |  (o).'
 *       |_|_|            |     |           | '|' |             | '|.'|  dowels before and
 *     ____|____ floor  __|     |__       __|_'|'_|__ tread     |_.|' |  behind the bolt
 *         |              | -o- |           __.|.__             |' |  |
 *         |              |_-o-_| joist        | string         |__|     leg
 *
 *     newel bolt         let in, two       newel bolt and      on a string: newel bolt,
 *     (through a plate)  through bolts     two dowels          two dowels, leg screwed on
 *
 * A newel bolt has a wood thread at one end, a nut at the other, under a plug.
 * Sizes are common practice.
 */

#define TREAD_DOWEL 16.0
#define LEAST_TREAD_DOWEL 8.0
#define BESIDE_DOWEL 10.0 /* of the tread up to its end, and of the newel up to its face */
#define DOWEL_IN_NEWEL 50.0
#define UNDER_DOWEL 5.0 /* of the tread, left whole */

#define BOLT 10.0
#define BOLT_IN_NEWEL 90.0
#define BOLT_IN_FLOOR 90.0 /* in joist or blocking */
#define THREAD 7.0         /* drilled for its wood thread */
#define IN_STRING 80.0
#define LEAST_IN_STRING 50.0
#define UNDER_BOLT 15.0 /* of a stringer, left whole */
#define BESIDE_BOLT 8.0 /* hole to the stringer's face; less beside a thread */
#define BESIDE_THREAD 4.0
#define LEAST_HALF 12.0 /* middle of a bolt to a face of newel or block */
#define ACCESS 25.0     /* hole to the bolt's nut, plugged */
#define ACCESS_UP 65.0
#define PLUG 10.0

#define PLATE_THICK 6.0
#define PLATE_EDGE 10.0 /* from the recess to the newel's face */

#define LEAST_LET_IN 75.0 /* less holds no cross bolts */
#define IN_JOIST 60.0     /* through bolt beyond the newel: joist, nut and washers */

#define SEAT_DEPTH 40.0
#define SEAT_DOWEL 12.0
#define LEAST_SEAT_DOWEL 6.0
#define SCREW 14 /* number */
#define SCREW_IN_STRING 25.0
#define LEG_HEAD 8.0 /* of the leg: its head lies so deep, under a plug */
#define PLATE_SCREW 51.0

static const struct vec3 up = { 1, 0, 0 }, down = { -1, 0, 0 }, back = { 0, 1, 0 };

static void note_add(struct arena *a, const struct post *p, const char *text)
{
	const char *before = p->wood->note;
	p->wood->note = before ? arena_printf(a, "%s; %s", before, text) : text;
}

/* Its face towards the outside of the stair, and the way out of it. */
static double outer_face(const struct post *p)
{
	return p->side->hand == HAND_RIGHT ? 0 : p->section;
}

static struct vec3 outward(const struct post *p)
{
	return vec3(0, 0, p->side->hand == HAND_RIGHT ? -1 : 1);
}

/* ---- the newel bolt ---- */

/* Up from the foot, so far along the flight and across; where it goes, `b` says. */
static void newel_bolt_add(struct pieces *list, const struct post *p, struct vec at, struct bore b)
{
	b.at = post_mouth(vec3(p->slope * at.x, at.x, at.y), back, down);
	b.size = bore_round(BOLT, BOLT_IN_NEWEL);
	b.fixing = FIXING_NEWEL_BOLT;
	b.fixing_width = BOLT;
	post_drill(list, p, b);
}

/* From the outside, as far as the bolt that lies deepest. */
static void access_add(struct pieces *list, const struct post *p, struct vec at)
{
	struct bore b = { .fixing = FIXING_PLUG, .text = "to the bolt's nut, plugged" };
	double level = p->slope * at.x + ACCESS_UP, face = outer_face(p);
	b.at = post_mouth(vec3(level, at.x, face), up, outward(p));
	b.size = bore_round(ACCESS, fabs(at.y - face) + BOLT);
	b.fixing_width = ACCESS;
	b.fixing_length = PLUG;
	post_drill(list, p, b);
}

/* ---- on a floor ---- */

/* What is laid on the structure under its foot. */
static double finish_under(const struct post *p)
{
	const struct stair *s = p->rod->stair;
	return fmax(p->end.newel_z - (p->is_bottom ? s->lower_structural : s->upper_structural), 0);
}

static void floor_bolt_add(struct pieces *list, const struct post *p)
{
	struct vec middle = vec(p->section / 2, p->section / 2);
	struct bore b = { .text = "newel bolt, into joist or blocking" };
	b.fixing_length = BOLT_IN_NEWEL + finish_under(p) + BOLT_IN_FLOOR;
	newel_bolt_add(list, p, middle, b);
	access_add(list, p, middle);
}

/* The bolt goes through its middle. */
static void plate_add(struct pieces *list, const struct post *p)
{
	double middle = p->section / 2, out = p->core / 8;
	struct bore plate = { .fixing = FIXING_PLATE, .text = "newel plate, let in flush" };
	plate.at = post_mouth(vec3(0, middle, middle), back, down);
	plate.size = bore_round(p->core - 2 * PLATE_EDGE, PLATE_THICK);
	post_drill(list, p, plate);
	struct fastener screw = fastener_screw_within(SCREW, PLATE_SCREW, p->rod->job->about.units);
	struct bore b = fastener_bore(screw, screw.length);
	b.size = bore_round(screw.pilot, screw.length);
	b.text = "screw, plate to newel";
	for (int i = 0; i < 4; i++) {
		double y = middle + (i & 1 ? out : -out), z = middle + (i & 2 ? out : -out);
		b.at = post_mouth(vec3(0, y, z), back, down);
		post_drill(list, p, b);
	}
	floor_bolt_add(list, p);
}

/* Two bolts across, at a third of what is let in and at two, to either side of the middle. */
static void cross_bolts_add(struct pieces *list, const struct post *p, double let_in)
{
	struct bore b = { .fixing = FIXING_BOLT, .fixing_width = BOLT };
	b.text = "bolt through the newel into joist or blocking";
	b.size = bore_round(BOLT, p->section);
	b.fixing_length = p->section + IN_JOIST;
	for (int i = 0; i < 2; i++) {
		double y = p->section / 2 + (i ? 1 : -1) * p->core / 5;
		b.at = post_mouth(vec3(let_in * (i + 1) / 3, y, outer_face(p)), up, outward(p));
		post_drill(list, p, b);
	}
}

static enum newel_held floor_fixing_add(struct pieces *list, const struct post *p)
{
	const struct job_newels *n = &p->rod->job->newels;
	double let_in = p->is_bottom ? n->let_in : 0;
	if (let_in > 0)
		note_add(list->arena, p,
			arena_printf(list->arena, "let %s into the floor",
				length_say(list->arena, job_lettering(p->rod->job), let_in)));
	if (let_in >= LEAST_LET_IN) {
		cross_bolts_add(list, p, let_in);
		return NEWEL_HELD;
	}
	switch (n->floor_fixing) {
	case FLOOR_FIXING_BOLT: floor_bolt_add(list, p); return NEWEL_HELD;
	case FLOOR_FIXING_PLATE: plate_add(list, p); return NEWEL_HELD;
	case FLOOR_FIXING_NONE: return NEWEL_LOOSE_ON_FLOOR;
	}
	return NEWEL_HELD;
}

/* ---- on a tread ---- */

static int step_under(const struct post *p)
{
	return (int)round(p->end.newel_z / p->rod->rise);
}

static bool is_on_start(const struct post *p)
{
	return step_under(p) == 1 && side_starts(p->side);
}

/* Where the body of the tread ends that a newel stands on, in from the limit: none of the return
 * strip holds a newel. */
static double tread_end_under(const struct post *p)
{
	const struct rod *r = p->rod;
	int step = step_under(p);
	if (step < 1 || step > r->steps || is_on_start(p))
		return -INFINITY;
	return tread_plan_make(r, step).ends[p->side->hand].body;
}

/* How thick dowels may be, and how far in from the limit: under the newel's middle, unless the end
 * of the tread is too near.  Between them there is room for the bolt. */
struct dowel_place {
	double diameter, in;
};

static struct dowel_place dowel_place(const struct post *p)
{
	double end = tread_end_under(p), face = p->side->rail + p->core / 2;
	double thick = fmin(TREAD_DOWEL, face - end - 2 * BESIDE_DOWEL);
	thick = fmin(thick, p->core / 6);
	double in = fmax(p->side->rail, end + BESIDE_DOWEL + thick / 2);
	return (struct dowel_place){ thick, in };
}

static void tread_dowels_add(struct pieces *list, const struct post *p, struct dowel_place at)
{
	double middle = p->section / 2, out = p->core / 4, tread = p->rod->tread;
	double in_tread = fmax(tread - UNDER_DOWEL, tread / 2);
	struct bore b = dowel_bore(
		(struct dowel){ at.diameter, 2 * DOWEL_IN_NEWEL, DOWEL_IN_NEWEL, in_tread });
	b.text = "dowel, newel to tread";
	for (int i = 0; i < 2; i++) {
		double z = post_across(p, at.in);
		b.at = post_mouth(vec3(0, middle + (i ? out : -out), z), back, down);
		post_drill(list, p, b);
	}
}

/* Plumb under the tread, of the stringer's wood that the bolt may take. */
static double depth_in_string(struct arena *a, const struct post *p)
{
	const struct rod *r = p->rod;
	struct stand at = side_stand(r, p->side->hand);
	double x = p->end.newel_x + p->section / 2 + BOLT / 2;
	double block = stringers_have_block(r) ? r->job->stringers.block_thickness : 0;
	double under = fmax(sawtooth_edges(a, &at).lower + r->slope * x, r->foot + block);
	return fmin(IN_STRING, p->end.newel_z - r->tread - under - UNDER_BOLT);
}

/* In from the limit: through the newel's middle, or as near to it as the stringer lies. */
static double over_string(const struct post *p)
{
	double keep = BOLT / 2 + BESIDE_BOLT;
	double low = p->side->outer + keep, high = p->side->inner - keep;
	return low > high ? (low + high) / 2 : fmin(fmax(p->side->rail, low), high);
}

static bool string_bolt_add(struct pieces *list, const struct post *p)
{
	double depth = depth_in_string(list->arena, p), in = over_string(p);
	double off = p->core / 2 - fabs(in - p->side->rail);
	if (depth < LEAST_IN_STRING || off < LEAST_HALF)
		return false;
	struct bore b = { .text = "newel bolt, through the tread into the stringer" };
	b.mate = bore_round(BOLT, p->rod->tread + depth);
	b.thread = THREAD;
	b.fixing_length = BOLT_IN_NEWEL + b.mate.depth;
	newel_bolt_add(list, p, vec(p->section / 2, post_across(p, in)), b);
	return true;
}

/* Down through tread and riser block, with a nut let in under that: half-way between the stringer
 * and the outer face of newel or block. */
static bool block_bolt_add(struct pieces *list, const struct post *p)
{
	const struct rod *r = p->rod;
	double block = p->side->start - r->nosing; /* beyond the stringer's face */
	double half = fmin(p->core / 2 - p->side->rail, block) / 2;
	if (!is_on_start(p) || half < LEAST_HALF)
		return false;
	struct bore b = { .text = "newel bolt, up through riser block and tread" };
	b.mate = bore_round(BOLT, r->rise);
	b.fixing_length = BOLT_IN_NEWEL + r->rise;
	newel_bolt_add(list, p, vec(p->section / 2, post_across(p, -half)), b);
	return true;
}

static enum newel_held tread_fixing_add(struct pieces *list, const struct post *p)
{
	struct dowel_place at = dowel_place(p);
	bool doweled = at.diameter >= LEAST_TREAD_DOWEL;
	if (p->is_bottom && p->side->from > 1)
		note_add(list->arena, p, "pack out and screw to the end of the wall as well");
	bool in_block = block_bolt_add(list, p), in_string = string_bolt_add(list, p);
	if (in_block || in_string)
		access_add(list, p, vec(p->section / 2, post_across(p, over_string(p))));
	if (doweled)
		tread_dowels_add(list, p, at);
	if (!doweled)
		return NEWEL_WITHOUT_DOWELS;
	return in_block || in_string ? NEWEL_HELD : NEWEL_WITHOUT_BOLT;
}

/* ---- on a closed string ---- */

/* Plumb, before and behind the bolt, in the wood that no housing goes into. */
static void seat_dowels_add(struct pieces *list, const struct post *p, struct post_contact c)
{
	double thick = fmin(SEAT_DOWEL, (c.in1 - c.in0) / 2);
	if (thick < LEAST_SEAT_DOWEL)
		return;
	struct bore b = dowel_bore((struct dowel){ thick, 2 * SEAT_DEPTH, SEAT_DEPTH, SEAT_DEPTH });
	b.text = "dowel, newel on string";
	for (int i = -1; i <= 1; i += 2) {
		double y = p->section / 2 + i * p->core / 4;
		b.at = post_mouth(vec3(p->slope * y, y, post_across(p, (c.in0 + c.in1) / 2)), back,
			down);
		post_drill(list, p, b);
	}
}

static bool seat_bolt_add(struct pieces *list, const struct post *p, struct post_contact c)
{
	struct vec at = vec(p->section / 2, post_across(p, (c.in0 + c.in1) / 2));
	struct bore b = { .text = "newel bolt, into the string" };
	if (c.in1 - c.in0 < THREAD + 2 * BESIDE_THREAD)
		return false;
	b.mate = bore_round(THREAD, IN_STRING);
	b.fixing_length = BOLT_IN_NEWEL + IN_STRING;
	newel_bolt_add(list, p, at, b);
	access_add(list, p, at);
	return true;
}

static void leg_plug_add(struct pieces *list, const struct post *p, struct vec at, double head)
{
	struct bore b = { .fixing = FIXING_PLUG, .text = "for the head and its plug" };
	double in = (p->section - p->core) / 2;
	double face = p->side->hand == HAND_RIGHT ? in : p->section - in;
	b.at = post_mouth(vec3(at.x, at.y, face), up, outward(p));
	b.size = bore_round(head, LEG_HEAD);
	b.fixing_width = head;
	b.fixing_length = LEG_HEAD;
	post_drill(list, p, b);
}

/* From outside through the leg; the mouth is on the face against the string. */
static void leg_screws_add(struct pieces *list, const struct post *p)
{
	const struct rod *r = p->rod;
	bool right = p->side->hand == HAND_RIGHT;
	double string = p->side->inner - p->side->outer, thick = (p->core - string) / 2;
	double solid = string - r->job->stringers.housing_depth;
	double face = post_across(p, p->side->outer);
	double most = thick - LEG_HEAD + fmin(SCREW_IN_STRING, solid - 2);
	struct fastener screw = fastener_screw_within(SCREW, most, r->job->about.units);
	struct bore b = fastener_bore(screw, thick);
	b.mate = bore_round(screw.pilot, screw.length - (thick - LEG_HEAD));
	b.text = "screw through the leg, plugged";
	for (int i = 0; i < 4; i++) {
		double y = p->section / 2 + (i & 1 ? 1 : -1) * p->core / 4;
		double x = p->slope * y - p->leg * (i & 2 ? 0.7 : 0.3);
		b.at = post_mouth(vec3(x, y, face), up, vec3(0, 0, right ? 1 : -1));
		post_drill(list, p, b);
		leg_plug_add(list, p, vec(x, y), screw.head);
	}
}

static enum newel_held string_fixing_add(struct pieces *list, const struct post *p)
{
	struct post_contact c = post_contact(p);
	bool bolted = seat_bolt_add(list, p, c);
	note_add(list->arena, p, "pack out and screw to the end of the wall as well");
	seat_dowels_add(list, p, c);
	if (p->leg > 0)
		leg_screws_add(list, p);
	return bolted ? NEWEL_HELD : NEWEL_WITHOUT_BOLT;
}

enum newel_held newel_foot_fix(struct pieces *list, const struct post *p)
{
	switch (p->end.kind) {
	case RAIL_END_NEWEL:
	case RAIL_END_FLOOR_NEWEL: return floor_fixing_add(list, p);
	case RAIL_END_TREAD_NEWEL: return tread_fixing_add(list, p);
	case RAIL_END_STRING_NEWEL: return string_fixing_add(list, p);
	case RAIL_END_MET_NEWEL:
	case RAIL_END_PLUMB:
	case RAIL_END_WALL: break;
	}
	return NEWEL_HELD;
}

/* ---- what is said of one that is not held ---- */

void newel_foot_warn(const struct post *p, enum newel_held held, struct diags *d)
{
	const struct job_newels *n = &p->rod->job->newels;
	const char *section = length_say(d->arena, job_lettering(p->rod->job), n->section);
	switch (held) {
	case NEWEL_HELD: return;
	case NEWEL_LOOSE_ON_FLOOR:
		diag_warning(d, rod_pos(p->rod, n->src, "floor_fixing"),
			arena_printf(d->arena, "bolt or plate, or let bottom ones in by %s or more",
				length_say(d->arena, job_lettering(p->rod->job), LEAST_LET_IN)),
			"newels.floor_fixing: nothing is drilled that holds a newel to its floor");
		return;
	case NEWEL_WITHOUT_DOWELS:
		diag_warning(d, rod_pos(p->rod, n->src, "section"),
			"take a thicker newel or a narrower return, or fix it to the stringer",
			"the end of the tread leaves no wood for dowels under a newel of %s",
			section);
		return;
	case NEWEL_WITHOUT_BOLT:
		diag_warning(d, rod_pos(p->rod, n->src, "section"),
			"take a thicker newel or a thicker stringer, or a deeper plank",
			"the stringer under a newel of %s leaves no wood for its bolt: weak for a "
			"guard",
			section);
		return;
	}
}
