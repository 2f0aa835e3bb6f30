#include "parts/nosing.h"
#include "parts/start.h"

/*
 * The starting step: its tread reaches out past the stringer, its end rounded,
 * and the newel stands on it.  Seen from above, the front nearest:
 *
 *         face of riser 2
 *      ________________________________ _ _ _ back
 *     |                                |______
 *     |                                       `.
 *     |  starting tread              newel []   |  radius: half the depth makes
 *     |                                        .'  a half round
 *     |_______________________________________'
 *                                      |<---->|  projection
 *                              outer face of the stringer
 *
 * It is cut out of one glued-up board, and the nosing goes all the way round.
 */

/* A riser block reaches out past the stringer at least so far (common practice). */
#define LEAST_BLOCK 10.0

double start_back(const struct rod *r)
{
	return r->nosing + r->run + r->job->treads.return_past;
}

bool side_starts(const struct side *side)
{
	return side->start > 0;
}

bool rod_has_start(const struct rod *r)
{
	return side_starts(&r->sides[HAND_LEFT]) || side_starts(&r->sides[HAND_RIGHT]);
}

double start_radius(const struct rod *r)
{
	double radius = r->job->treads.starting.radius;
	return radius > 0 ? radius : start_back(r) / 2;
}

/* Corners of a rounded end, smaller all round by `less`, on the way from its front to its back or
 * the other way; where it leaves the stringer's face at the back it goes on at `depth`. */
static void strike_end(struct path *p, const struct rod *r, const struct side *side, double less,
	double depth)
{
	double out = -side->start + less, back = start_back(r) - less;
	double radius = fmax(start_radius(r) - less, 0);
	struct vec c[6] = { { out + radius, less }, { out, less + radius }, { out, back - radius },
		{ out + radius, back }, { 0, back }, { 0, depth } };
	bool right = side->hand == HAND_RIGHT;
	for (int i = 0; i < 6; i++) {
		int k = right ? i : 5 - i;
		bool rounded = right ? k == 1 || k == 3 : k == 0 || k == 2;
		double x = rod_along(r, side, c[k].x);
		if (rounded && radius > NEAR_ENOUGH)
			path_round_to(p, x, c[k].y);
		else
			path_to(p, x, c[k].y);
	}
}

struct outline start_core_outline(struct arena *a, const struct rod *r, const struct side *side,
	double skin)
{
	struct path p = path_begin(a, 8);
	double less = r->nosing + skin;
	if (side->hand == HAND_RIGHT)
		path_to(&p, rod_along(r, side, 0), less);
	strike_end(&p, r, side, less, start_back(r) - less);
	if (side->hand == HAND_LEFT)
		path_to(&p, rod_along(r, side, 0), less);
	return path_close(p);
}

struct outline start_block_outline(struct arena *a, const struct rod *r, const struct side *side)
{
	return start_core_outline(a, r, side, 0);
}

static struct outline tread_outline(struct arena *a, const struct tread_plan *t)
{
	const struct rod *r = t->rod;
	struct path p = path_begin(a, 16);
	for (int i = 0; i < 2; i++) {
		const struct tread_end *e = &t->ends[i]; /* right, then left */
		if (side_starts(e->side)) {
			strike_end(&p, r, e->side, 0, t->depth);
			continue;
		}
		double x = rod_along(r, e->side, e->body);
		path_to(&p, x, i == HAND_RIGHT ? 0 : t->depth);
		path_to(&p, x, i == HAND_RIGHT ? t->depth : 0);
	}
	return path_close(p);
}

/* One level of the tread: its outline drawn in by what the nosing takes there, but not at the back
 * and at the wall. */
struct level {
	const struct tread_plan *tread;
	struct profile outline;
};

static bool is_nosed(const struct level *l, int i)
{
	const struct rod *r = l->tread->rod;
	struct vec a = l->outline.at[i], b = l->outline.at[(i + 1) % l->outline.n];
	struct vec middle = vec_scale(vec_add(a, b), 0.5);
	if (middle.y < NEAR_ENOUGH)
		return true;
	return (side_starts(&r->sides[HAND_LEFT]) && middle.x < -NEAR_ENOUGH) ||
		(side_starts(&r->sides[HAND_RIGHT]) && middle.x > r->width + NEAR_ENOUGH);
}

/* The corner between two edges of which each is moved in by so much. */
static struct vec corner_in(struct vec before, struct vec at, struct vec after, double in0,
	double in1)
{
	struct vec u = vec_unit(vec_sub(at, before)), v = vec_unit(vec_sub(after, at));
	struct vec p = vec_add(at, vec_scale(vec_left(u), in0));
	struct vec q = vec_add(at, vec_scale(vec_left(v), in1));
	double turn = vec_cross(u, v);
	if (fabs(turn) < NEAR_ENOUGH)
		return p;
	return vec_add(p, vec_scale(u, vec_cross(vec_sub(q, p), v) / turn));
}

static struct vec3 *drawn_in(struct arena *a, const struct level *l, double in, double z)
{
	int n = l->outline.n;
	const struct vec *at = l->outline.at;
	struct vec3 *points = NEW_N(a, struct vec3, n);
	for (int i = 0; i < n; i++) {
		int before = (i + n - 1) % n;
		struct vec c = corner_in(at[before], at[i], at[(i + 1) % n],
			is_nosed(l, before) ? in : 0, is_nosed(l, i) ? in : 0);
		points[i] = vec3(c.x, c.y, z);
	}
	return points;
}

/* Seams between slices are no edges, nor is the rounded arris; that of the back is one. */
static unsigned char *slice_soft(struct arena *a, const struct level *l, struct vec high,
	struct vec low, double thickness)
{
	unsigned char *soft = NEW_N(a, unsigned char, l->outline.n);
	bool top = high.y > thickness - NEAR_ENOUGH, bottom = low.y < NEAR_ENOUGH;
	for (int i = 0; i < l->outline.n; i++) {
		bool nosed = is_nosed(l, i);
		unsigned s = l->outline.soft[i];
		s |= !top || (nosed && high.x > NEAR_ENOUGH) ? SOFT_A : 0u;
		s |= !bottom || (nosed && low.x > NEAR_ENOUGH) ? SOFT_B : 0u;
		soft[i] = (unsigned char)s;
	}
	return soft;
}

/* In slices from the top down: one between every two corners of the nosing. */
static const struct solid *tread_solids(struct arena *a, const struct level *l,
	const struct nosing *nosing)
{
	struct profile edge = profile_of(a, nosing_outline(a, nosing, l->tread->depth));
	struct solid *s = NULL;
	for (int k = 3; k < edge.n; k++) {
		struct vec high = edge.at[k], low = edge.at[(k + 1) % edge.n];
		if (high.y - low.y < NEAR_ENOUGH)
			continue;
		s = solid_add(s,
			solid_join(a, l->outline.n, drawn_in(a, l, high.x, high.y),
				drawn_in(a, l, low.x, low.y),
				slice_soft(a, l, high, low, nosing->thickness)));
	}
	return s;
}

void start_tread_add(struct pieces *list, const struct tread_plan *t)
{
	struct arena *a = list->arena;
	const struct rod *r = t->rod;
	struct outline o = tread_outline(a, t);
	struct box at = outline_extent(o);
	struct nosing nosing = nosing_make(&r->job->treads, r->tread);
	struct level l = { t, profile_of(a, o) };
	struct part *p = piece_add(list, "starting tread", r->job->material.treads,
		rod_flat(r, at.x0, tread_front(t), r->rise - r->tread));
	p->size = (struct part_size){ at.x1 - at.x0, at.y1 - at.y0, r->tread };
	p->makeup = tread_makeup(r->job, p->size.width);
	p->outline = outline_moved(a, o, -at.x0, 0);
	p->solids = solids_moved(a, tread_solids(a, &l, &nosing), vec3(-at.x0, 0, 0));
	nosing_add(a, p, r->job, &nosing);
	nosing_goes_round(p);
	bool both = side_starts(&r->sides[HAND_LEFT]) && side_starts(&r->sides[HAND_RIGHT]);
	bool moulded = r->job->mouldings.under_nosing != MOULDING_NONE;
	p->note = arena_printf(a, "nosing round the end%s first, then along the front%s",
		both ? "s" : "", moulded ? "; a bent moulding goes round under it" : "");
}

static void refuse(const struct rod *r, struct diags *d, const char *key, const char *hint,
	const char *text)
{
	diag_error(d, rod_pos(r, r->job->treads.starting.src, key), hint,
		"treads.starting_step: %s", text);
}

static void check_side(const struct rod *r, const struct side *side, struct diags *d)
{
	bool open = side_open_at(side, 1) && side->kind != STRINGER_HOUSED;
	if (side_starts(side) && side->kind == STRINGER_HOUSED)
		refuse(r, d, "ends", "take a sawtooth or mitred one",
			"a housed stringer stands in the way of the rounded end");
	else if (side_starts(side) && !open)
		refuse(r, d, "ends",
			side->hand == HAND_LEFT ? "write treads.starting_step.ends: right"
						: "write treads.starting_step.ends: left",
			side->hand == HAND_LEFT ? "the left side is not open at step 1"
						: "the right side is not open at step 1");
	else if (!side_starts(side) && side_open_at(side, 1))
		refuse(r, d, "ends", "write treads.starting_step.ends: both",
			"its other end is open too");
}

/* One in step 2 that comes up from the floor stands under the nosing there. */
static bool stands_in_first(const struct rod *r, const struct job_notch *n)
{
	struct notch_wall w = notch_wall_make(r, n);
	return n->step == 1 || (w.passes && w.low.x < r->run - NEAR_ENOUGH);
}

static void check_sizes(struct arena *a, const struct rod *r, struct diags *d)
{
	struct lettering l = job_lettering(r->job);
	const struct job_starting *s = &r->job->treads.starting;
	double radius = start_radius(r), section = r->job->newels.section;
	double room = 2 * (r->run - start_back(r) / 2 - rod_cap_overhang(r));
	if (radius > start_back(r) / 2 + NEAR_ENOUGH)
		refuse(r, d, "radius",
			job_write_most(a, r->job, "treads.starting_step.radius", start_back(r) / 2),
			arena_printf(a, "radius: %s is more than half the depth, %s",
				length_say(a, l, radius), length_say(a, l, start_back(r) / 2)));
	double reach = s->projection > 0 ? s->projection : radius;
	const char *key = s->projection > 0 ? "projection" : "radius";
	if (reach < r->nosing + LEAST_BLOCK)
		refuse(r, d, key,
			job_write_least(a, r->job, arena_printf(a, "treads.starting_step.%s", key),
				r->nosing + LEAST_BLOCK),
			arena_printf(a, "it reaches out %s, and leaves no block under its nosing",
				length_say(a, l, reach)));
	if (s->projection > 0 && s->projection < radius - NEAR_ENOUGH)
		refuse(r, d, "projection",
			arena_printf(a, "%s, or take a smaller radius",
				job_write_least(a, r->job, "treads.starting_step.projection",
					radius)),
			arena_printf(a, "projection: %s is less than the radius of its end, %s",
				length_say(a, l, s->projection), length_say(a, l, radius)));
	if (r->job->newels.bottom && section > room + NEAR_ENOUGH)
		refuse(r, d, NULL, job_write_most(a, r->job, "newels.section", fmax(room, 1)),
			arena_printf(a, "its newel of %s runs into the nosing above",
				length_say(a, l, section)));
	if (r->riser <= 0)
		refuse(r, d, NULL, "its end stands on a riser block",
			"open risers have no starting step");
	for (int i = 0; i < r->job->treads.notch_count; i++)
		if (stands_in_first(r, &r->job->treads.notches[i]))
			refuse(r, d, NULL, NULL,
				"it is not cut out for a wall: leave that notch out");
}

void start_check(struct arena *a, const struct rod *r, struct diags *d)
{
	if (!rod_has_start(r))
		return;
	for (int i = 0; i < 2; i++)
		check_side(r, &r->sides[i], d);
	check_sizes(a, r, d);
}
