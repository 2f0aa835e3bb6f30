#include "parts/newel.h"

#include <stdlib.h>

#include "base/text.h"

/*
 * Panelled newels: on every corner of a core two strips mitred to each other,
 * and rings of cross rails between them, so that each face reads as panels.
 *
 *      z  ____________________
 *        |\_|______________|_/|   strips, mitred at the corner
 *        |  |\            /|  |
 *        |__| |   core   | |__|   its arris chamfered, so that the strips seat
 *        |  | |          | |  |
 *        |__|_|          |_|__|
 *        |  |/____________\|  |
 *        |/_|______________|_\|   cross rail between two strips
 *                              y
 */

/* The least that is left of a face between two strips, of a core, and of a panel's height: what
 * would be lower is closed by the cross rail beside it (common practice). */
#define LEAST_FACE 20.0
#define LEAST_CORE 25.0
#define LEAST_PANEL 20.0

/* A cross rail shows so much beyond what comes against it (common practice). */
#define REVEAL 6.0

/* Rails that meet at one newel: on each of its faces. */
#define MOST_RAILS 4

/* Rings from below: positions up from the foot's highest point. */
struct rings {
	struct newel_ring *ring;
	int n;
};

bool newel_panels_fit(struct arena *a, const struct post *p, struct diags *d)
{
	const struct job_newels *n = &p->rod->job->newels;
	const struct job_newel_panels *k = &n->panels;
	struct lettering l = job_lettering(p->rod->job);
	double face = n->section - 2 * k->strip_width;
	int before = d->errors;
	if (face < LEAST_FACE)
		diag_error(d, rod_pos(p->rod, k->src ? k->src : n->src, "strip_width"),
			arena_printf(a, "%s, or take a larger section",
				job_write_most(a, p->rod->job, "newels.panels.strip_width",
					(n->section - LEAST_FACE) / 2)),
			"newels.panels: two strips of %s leave %s of a face of %s: it takes %s",
			length_say(a, l, k->strip_width), length_say(a, l, fmax(0, face)),
			length_say(a, l, n->section), length_say(a, l, LEAST_FACE));
	if (p->core < LEAST_CORE)
		diag_error(d, rod_pos(p->rod, k->src ? k->src : n->src, "strip_thickness"),
			arena_printf(a, "%s, or take thinner strips",
				job_write_least(a, p->rod->job, "newels.section",
					n->section + LEAST_CORE - p->core)),
			"newels.panels: strips of %s leave a core of %s: it takes %s",
			length_say(a, l, k->strip_thickness), length_say(a, l, fmax(0, p->core)),
			length_say(a, l, LEAST_CORE));
	if (k->strip_width < k->strip_thickness + k->arris + 1)
		diag_error(d, rod_pos(p->rod, k->src ? k->src : n->src, "strip_width"),
			arena_printf(a, "%s, or take a smaller arris",
				job_write_least(a, p->rod->job, "newels.panels.strip_width",
					k->strip_thickness + k->arris + 1)),
			"newels.panels: a strip %s wide and %s thick, mitred, does not reach past "
			"the core's chamfer of %s",
			length_say(a, l, k->strip_width), length_say(a, l, k->strip_thickness),
			length_say(a, l, k->arris));
	return d->errors == before;
}

static int by_level(const void *one, const void *other)
{
	const struct newel_ring *p = one, *q = other;
	return (p->from > q->from) - (p->from < q->from);
}

static void ring_add(struct rings *r, double from, double to)
{
	r->ring[r->n++] = (struct newel_ring){ .from = from, .to = to };
}

/* How much of its foot is under the finished floor. */
static double under_floor(const struct post *p)
{
	double floor = p->is_bottom ? 0 : p->rod->top;
	return p->end.kind == RAIL_END_NEWEL ? fmax(floor - p->end.newel_z, 0) : 0;
}

/* What the job asks for; where it says nothing as much shows over a floor as at the top. */
static struct rings rings_wanted(struct arena *a, const struct post *p, double room)
{
	const struct job_newel_panels *k = &p->rod->job->newels.panels;
	struct rings r = { NEW_N(a, struct newel_ring, k->rail_count + 2 + MOST_RAILS + 2), 0 };
	for (int i = 0; i < k->rail_count; i++) {
		double height = k->rails[i].height, from = k->rails[i].at * (room - height);
		ring_add(&r, from, from + height);
	}
	if (k->rail_count == 0) {
		ring_add(&r, 0, under_floor(p) + k->strip_width * 2);
		ring_add(&r, room - k->strip_width * 2, room);
	}
	qsort(r.ring, (size_t)r.n, sizeof(*r.ring), by_level);
	return r;
}

static bool rings_apart(struct arena *a, const struct post *p, const struct rings *r, double room,
	struct diags *d)
{
	const struct job *job = p->rod->job;
	for (int i = 0; i < r->n; i++) {
		double over = i > 0 ? r->ring[i - 1].to - r->ring[i].from : -r->ring[i].from;
		if (over <= NEAR_ENOUGH && r->ring[i].to <= room + NEAR_ENOUGH)
			continue;
		diag_error(d, rod_pos(p->rod, job->newels.panels.src, "rails"),
			"set them further apart, or make them lower",
			"newels.panels.rails: two cross rails of a newel %s high lie over each "
			"other by %s",
			length_say(a, job_lettering(job), p->height),
			length_say(a, job_lettering(job), fmax(over, r->ring[i].to - room)));
		return false;
	}
	return true;
}

/* Where rail, tread or moulding come against a face it must be whole. */
static void add_covered(struct rings *r, const struct post *p, double foot, double room)
{
	double moulding = p->has_cap ? p->rod->job->newels.cap.quarter_round : 0;
	struct vec rail = newel_rail(p, 0);
	for (int i = 0; i < MOST_RAILS && rail.y > rail.x; rail = newel_rail(p, ++i))
		ring_add(r, fmax(0, rail.x - foot - REVEAL), fmin(room, rail.y - foot + REVEAL));
	if (p->covered > NEAR_ENOUGH)
		ring_add(r, 0, fmin(room, p->covered - foot + REVEAL));
	if (moulding > 0)
		ring_add(r, room - moulding - REVEAL, room);
	qsort(r->ring, (size_t)r->n, sizeof(*r->ring), by_level);
}

/* Panels too low to be seen are closed; each ring learns how far it is kept off the one below. */
static void unite(struct rings *r, double room)
{
	int n = 0;
	for (int i = 0; i < r->n; i++) {
		struct newel_ring next = r->ring[i];
		double below = n > 0 ? r->ring[n - 1].to : 0;
		next.from = next.from < LEAST_PANEL ? 0 : next.from;
		next.to = room - next.to < LEAST_PANEL ? room : next.to;
		if (n > 0 && next.from - below < LEAST_PANEL) {
			r->ring[n - 1].to = fmax(below, next.to);
			continue;
		}
		next.spacer = next.from - below;
		r->ring[n++] = next;
	}
	r->n = n;
}

/* A side of the newel: which way it looks. */
struct side_of {
	struct vec3 out, along;
};

static const struct side_of sides[4] = {
	{ { 0, -1, 0 }, { 0, 0, 1 } },
	{ { 0, 1, 0 }, { 0, 0, 1 } },
	{ { 0, 0, -1 }, { 0, 1, 0 } },
	{ { 0, 0, 1 }, { 0, 1, 0 } },
};

/* A point of the section: so far along a side, so far in from it. */
static struct vec point_on(const struct post *p, const struct side_of *s, double along, double in)
{
	double out = s->out.y + s->out.z > 0 ? p->section - in : in;
	return s->along.z > 0.5 ? vec(out, along) : vec(along, out);
}

static void section_to(struct path *o, struct vec at)
{
	path_to(o, at.x, at.y);
}

/* One of the two strips of a side: at its near corner, or at the far one. */
static void strip_add(struct pieces *list, const struct post *p, const struct side_of *s,
	double way)
{
	const struct job_newel_panels *k = &p->rod->job->newels.panels;
	double corner = way > 0 ? 0 : p->section, t = k->strip_thickness;
	double inner = corner + way * k->strip_width;
	struct path o = path_begin(list->arena, 4);
	section_to(&o, point_on(p, s, corner, 0));
	section_to(&o, point_on(p, s, inner, 0));
	section_to(&o, point_on(p, s, inner, t));
	section_to(&o, point_on(p, s, corner + way * t, t));
	struct slat strip = { .name = "newel strip", .slope = p->slope, .to = p->height };
	strip.section = path_close(o);
	strip.v = vec3_scale(s->along, way);
	strip.w = s->out;
	strip.u = vec3_cross(strip.v, strip.w);
	struct part *piece = slat_add(list, p, &strip);
	piece_feature(list->arena, piece,
		(struct feature){ .kind = FEATURE_SAWN,
			.sawn = { PI / 4, 0, 0, 1, "one long edge, face down" },
			.text = "one long edge bevelled 45 degrees, to its neighbour on the "
				"corner" });
}

static void cross_rail_add(struct pieces *list, const struct post *p, const struct side_of *s,
	struct vec levels)
{
	const struct job_newel_panels *k = &p->rod->job->newels.panels;
	struct vec3 u = vec3_cross(vec3(1, 0, 0), s->out);
	bool forward = vec3_dot(u, s->along) > 0;
	double near = forward ? k->strip_width : p->section - k->strip_width;
	double far = p->section - near, t = k->strip_thickness;
	struct path o = path_begin(list->arena, 4);
	section_to(&o, point_on(p, s, near, 0));
	section_to(&o, point_on(p, s, far, 0));
	section_to(&o, point_on(p, s, far, t));
	section_to(&o, point_on(p, s, near, t));
	bool on_foot = levels.x <= p->slope * p->section + NEAR_ENOUGH;
	struct slat rail = { .name = "newel cross rail", .section = path_close(o) };
	rail.from = on_foot ? 0 : levels.x;
	rail.slope = on_foot ? p->slope : 0;
	rail.to = levels.y;
	rail.v = vec3(1, 0, 0);
	rail.w = s->out;
	rail.u = u;
	struct part *piece = slat_add(list, p, &rail);
	/* the core it is glued to moves the other way (common practice) */
	if (piece->size.width > piece->size.length + NEAR_ENOUGH)
		piece->note = "glue along the middle of its height only";
	if (on_foot && p->slope > 0)
		piece_feature(list->arena, piece,
			(struct feature){ .kind = FEATURE_MITRE,
				.angle = p->rod->pitch,
				.text = arena_printf(list->arena,
					"lower edge cut to the rake, %s from square",
					angle_letter(list->arena, p->rod->pitch)) });
}

/* How the rings are set, in the words of who glues them on. */
static void add_spacers(struct arena *a, const struct post *p, const struct rings *r)
{
	struct lettering l = job_lettering(p->rod->job);
	struct text t = { .arena = a };
	if (p->wood->note)
		text_add(&t, "%s; ", p->wood->note);
	text_add(&t, "spacer blocks between cross rails, up from the foot: ");
	struct text sizes = { .arena = a };
	for (int i = 0; i < r->n; i++)
		if (r->ring[i].spacer > 0)
			text_join(&sizes, ", ", length_say(a, l, r->ring[i].spacer));
	text_add(&t, "%s", text_chars(&sizes));
	p->wood->note = text_chars(&t);
}

static void add_chamfer(struct arena *a, const struct post *p)
{
	double arris = p->rod->job->newels.panels.arris;
	struct lettering l = job_lettering(p->rod->job);
	if (arris > 0)
		piece_feature(a, p->wood,
			(struct feature){ .kind = FEATURE_CHAMFER,
				.depth = arris,
				.text = arena_printf(a,
					"corners chamfered %s, so that the strips seat",
					length_say(a, l, arris)) });
}

bool newel_panels_add(struct pieces *list, const struct post *p, struct diags *d)
{
	struct arena *a = list->arena;
	double foot = p->slope * p->section, room = p->height - foot;
	struct rings r = rings_wanted(a, p, room);
	if (!rings_apart(a, p, &r, room, d))
		return false;
	add_covered(&r, p, foot, room);
	unite(&r, room);
	for (int i = 0; i < 4; i++) {
		strip_add(list, p, &sides[i], 1);
		strip_add(list, p, &sides[i], -1);
	}
	for (int k = 0; k < r.n; k++)
		for (int i = 0; i < 4; i++)
			cross_rail_add(list, p, &sides[i],
				vec(foot + r.ring[k].from, foot + r.ring[k].to));
	struct newel *facts = (struct newel *)p->wood->newel;
	facts->rings = r.ring;
	facts->ring_count = r.n;
	add_chamfer(a, p);
	add_spacers(a, p, &r);
	return true;
}
