#include "parts/newel.h"

#include <stdlib.h>

#include "lists/yard.h"

/*
 * The post of a newel, or its core, and how pieces of it are drawn out.  On the
 * raked edge of a housed stringer it is notched over the string: an outer leg,
 * screwed to the string's face, hangs down beside the seat.
 *
 *        ____       ____
 *       |    |     |    |    from the side, and from the front
 *       |  .'|     |  __|
 *       |.'  |     | |  .'   the string
 *       |  .'      | |
 *       |.'        |_|
 */

/* How far the leg hangs down, what it keeps clear of the floor, and the thinnest that holds
 * screws (common practice). */
#define LEG 140.0
#define LEG_CLEAR 20.0
#define LEAST_LEG 12.0

struct makeup newel_plies(const struct job *job, double thickness)
{
	struct makeup m = { 0 };
	int plies = (int)ceil(thickness / job->newels.ply_planed - NEAR_ENOUGH);
	if (plies < 2)
		return m;
	m.plies = plies;
	m.ply_thickness = thickness / plies;
	return m;
}

const char *newel_plies_note(struct arena *a, const struct job *job, struct makeup m)
{
	if (m.plies == 0)
		return NULL;
	const char *bought = ply_bought(a, job, job->material.newels, m.ply_thickness);
	return bought ? arena_printf(a, "plies out of %s boards", bought) : NULL;
}

/* Is this end of a rail in the plane of one of its faces? */
static bool meets(const struct post *p, const struct stretch *s, double x)
{
	struct vec3 end = frame_place_back(p->place, frame_place(s->axes, vec3(x, 0, 0)));
	double half = p->section / 2;
	return vec_length(vec(end.y - half, end.z - half)) <= half + NEAR_ENOUGH;
}

struct vec newel_rail(const struct post *p, int i)
{
	for (const struct stretch *s = p->all; s; s = s->next)
		for (int k = 0; k < 2; k++) {
			double x = k == 0 ? s->from : s->to, foot = p->end.newel_z;
			if (stretch_is_made(s) && meets(p, s, x) && i-- == 0)
				return vec(stretch_rail_under(s, x) - foot,
					stretch_rail_top(s, x) - foot);
		}
	return vec(1, 0);
}

/* Takes a point into one side of a hull; those it leaves inside go. */
static int hull_add(struct vec *hull, int n, int least, struct vec p)
{
	while (n >= least &&
		vec_cross(vec_sub(hull[n - 1], hull[n - 2]), vec_sub(p, hull[n - 1])) <=
			NEAR_ENOUGH)
		n--;
	hull[n] = p;
	return n + 1;
}

/* The outline of a convex piece, seen on its face: monotone chain (Andrew, Information Processing
 * Letters 9, 1979: from memory). */
static struct outline face_outline(struct arena *a, const struct vec3 *points, int n)
{
	struct vec *p = NEW_N(a, struct vec, n), *hull = NEW_N(a, struct vec, 2 * n);
	int k = 0;
	for (int i = 0; i < n; i++)
		p[i] = vec(points[i].x, points[i].y);
	qsort(p, (size_t)n, sizeof(*p), vec_by_place);
	for (int i = 0; i < n; i++)
		k = hull_add(hull, k, 2, p[i]);
	for (int i = n - 2, least = k + 1; i >= 0; i--)
		k = hull_add(hull, k, least, p[i]);
	struct path o = path_begin(a, k);
	for (int i = 0; i < k; i++)
		path_to(&o, hull[i].x, hull[i].y);
	return path_close(o);
}

/* Its cross section in its own y and z, for a piece that lies along the post; empty when that is
 * its whole width and thickness. */
static struct outline own_section(struct arena *a, const struct part *piece, struct frame at,
	const struct vec3 *low, int n)
{
	struct path o = path_begin(a, n);
	double area = 0, whole = 2 * piece->size.width * piece->size.thickness;
	for (int i = 0; i < n; i++)
		area += vec_cross(vec(low[i].y, low[i].z),
			vec(low[(i + 1) % n].y, low[(i + 1) % n].z));
	if (fabs(at.u.x) < 0.5 || fabs(area) > whole - NEAR_ENOUGH)
		return path_close(o);
	for (int i = 0; i < n; i++) {
		struct vec3 p = low[area > 0 ? i : n - 1 - i];
		path_to(&o, p.y, p.z);
	}
	return path_close(o);
}

/* Of one that lies across the post and has its lower edge bevelled to the rake. */
static struct outline bevelled_section(struct arena *a, const struct vec3 *points, int n)
{
	struct vec3 *across = NEW_N(a, struct vec3, n);
	for (int i = 0; i < n; i++)
		across[i] = vec3(points[i].y, points[i].z, 0);
	return face_outline(a, across, n);
}

/* Moves the axes so that the piece begins at 0 along each of them. */
static struct vec3 settle(struct vec3 *points, int n)
{
	struct box3 box = box3_empty();
	for (int i = 0; i < n; i++)
		box = box3_add(box, points[i]);
	for (int i = 0; i < n; i++)
		points[i] = vec3_sub(points[i], box.low);
	return box.low;
}

static struct part_size size_of(const struct vec3 *points, int n)
{
	struct part_size s = { 0 };
	for (int i = 0; i < n; i++) {
		s.length = fmax(s.length, points[i].x);
		s.width = fmax(s.width, points[i].y);
		s.thickness = fmax(s.thickness, points[i].z);
	}
	return s;
}

/* The lower end follows the rake: a mitre on the faces along the flight, a bevel on the others. */
static void add_end_cut(struct part *piece, const struct slat *s)
{
	struct end_cut cut = { fabs(atan(s->slope * s->v.y)), fabs(atan(s->slope * s->w.y)) };
	if (s->u.x > 0.5)
		piece->start = cut;
	if (s->u.x < -0.5)
		piece->end = cut;
}

struct part *slat_add(struct pieces *list, const struct post *p, const struct slat *s)
{
	struct arena *a = list->arena;
	struct frame at = { .u = s->u, .v = s->v, .w = s->w };
	int n = s->section.n;
	struct vec3 *points = NEW_N(a, struct vec3, 2 * n);
	for (int i = 0; i < n; i++) {
		struct vec c = s->section.corners[i].at;
		points[i] = frame_turn_back(at, vec3(s->from + s->slope * c.x, c.x, c.y));
		points[n + i] = frame_turn_back(at, vec3(s->to, c.x, c.y));
	}
	at.origin = frame_turn(at, settle(points, 2 * n));
	struct part *piece =
		piece_add(list, s->name, p->rod->job->material.newels, frame_compose(p->place, at));
	piece->size = size_of(points, 2 * n);
	piece->outline = face_outline(a, points, 2 * n);
	bool is_bevelled = fabs(s->u.x) < 0.5 && fabs(s->slope * s->w.y) > NEAR_ENOUGH;
	piece->section = is_bevelled ? bevelled_section(a, points, 2 * n)
				     : own_section(a, piece, at, points, n);
	piece->solids = solid_join(a, n, points, points + n, NULL);
	piece->grain = GRAIN_ALONG;
	add_end_cut(piece, s);
	return piece;
}

/* How far a leg hangs down: 0 when the string leaves no wood for one, or the floor no room. */
static double leg_of(const struct post *p)
{
	double string = p->side->inner - p->side->outer;
	bool fits = p->end.newel_z - LEG >= LEG_CLEAR && (p->core - string) / 2 >= LEAST_LEG;
	return p->end.kind == RAIL_END_STRING_NEWEL && fits ? LEG : 0;
}

/* Flat against the string's outer face, as wide as the post, its lower end on the rake as well. */
static void notch_over_string(struct arena *a, const struct post *p, struct part *w,
	struct outline section)
{
	struct lettering l = job_lettering(p->rod->job);
	double string = p->side->inner - p->side->outer, thick = (p->core - string) / 2;
	double z = p->side->hand == HAND_RIGHT ? 0 : p->core - thick;
	struct outline leg = outline_box(a, 0, z, p->core, z + thick);
	struct end_plane low = { 0, p->slope, 0 }, seat = { p->leg, p->slope, 0 };
	w->solids = solid_strip(a, profile_of(a, section), seat,
		(struct end_plane){ w->size.length, 0, 0 });
	w->solids =
		solid_add(solid_strip(a, profile_of(a, leg), low, seat), (struct solid *)w->solids);
	piece_feature(a, w,
		(struct feature){ .kind = FEATURE_NOTCH,
			.depth = p->core - thick,
			.text = arena_printf(a,
				"notched over the string: outer leg %s thick, %s plumb below the "
				"seat",
				length_say(a, l, thick), length_say(a, l, p->leg)) });
}

/* A square, or with its corners chamfered. */
static struct outline post_section(struct arena *a, const struct post *p)
{
	double in = (p->section - p->core) / 2, out = in + p->core;
	double c = p->core < p->section ? p->rod->job->newels.panels.arris : 0;
	struct path o = path_begin(a, 8);
	path_to(&o, in + c, in);
	path_to(&o, out - c, in);
	path_to(&o, out, in + c);
	path_to(&o, out, out - c);
	path_to(&o, out - c, out);
	path_to(&o, in + c, out);
	path_to(&o, in, out - c);
	path_to(&o, in, in + c);
	return path_close(o);
}

static struct newel *facts_of(struct arena *a, const struct post *p)
{
	struct newel *n = NEW(a, struct newel);
	double lower = p->leg - p->slope * (p->section - p->core) / 2;
	n->build = p->rod->job->newels.build;
	n->section = p->section;
	n->core = p->core;
	n->height = p->height + p->leg;
	struct vec rail = newel_rail(p, 0);
	if (rail.y > rail.x) {
		n->rail_low = rail.x + lower;
		n->rail_high = rail.y + lower;
	}
	n->leg = p->leg;
	return n;
}

bool newel_post_add(struct pieces *list, struct post *p, struct diags *d)
{
	struct arena *a = list->arena;
	const struct job *job = p->rod->job;
	bool panelled = job->newels.build == NEWEL_PANELLED;
	if (panelled && !newel_panels_fit(a, p, d))
		return false;
	p->leg = leg_of(p);
	struct slat s = { .name = panelled ? "newel core" : "newel" };
	s.u = vec3(1, 0, 0);
	s.v = vec3(0, 1, 0);
	s.w = vec3(0, 0, 1);
	s.section = post_section(a, p);
	s.from = -p->leg;
	s.slope = p->slope;
	s.to = p->height;
	struct part *w = slat_add(list, p, &s);
	p->wood = w;
	w->newel = facts_of(a, p);
	if (job->newels.build != NEWEL_SOLID)
		w->makeup = newel_plies(job, p->core);
	w->note = newel_plies_note(a, job, w->makeup);
	if (p->leg > 0)
		notch_over_string(a, p, w,
			outline_moved(a, s.section, -(p->section - p->core) / 2,
				-(p->section - p->core) / 2));
	return !panelled || newel_panels_add(list, p, d);
}
