#include "parts/existing.h"

#include "parts/level_run.h"
#include "parts/wall_rail.h"

/*
 * Existing work: what the stair is built into, no more of it than a view needs.
 *
 *   wall  ______                 ____________________ finish
 *        |______| over the foot |____|_______________ structure
 *               |<-- opening -->| header
 *                           .'
 *   finish ____________ .'
 *   structure __________________________________________
 *
 * Its pieces are drawn in the flight's own axes.
 */

#define FLOOR 300.0 /* upper floor, finish to ceiling, when the job is silent */
#define HEADER 90.0 /* two boards of 45 mm (common practice) */
#define ABOVE 300.0 /* how far walls go on over the upper floor */

static const struct work upper_floor = { EXISTING_UPPER_FLOOR, "upper floor" };
static const struct work upper_finish = { EXISTING_UPPER_FLOOR, "upper floor finish" };
static const struct work over_foot = { EXISTING_UPPER_FLOOR, "upper floor over the foot" };
static const struct work header = { EXISTING_HEADER, "header" };
static const struct work walls[] = {
	[HAND_RIGHT] = { EXISTING_WALL, "wall right" },
	[HAND_LEFT] = { EXISTING_WALL, "wall left" },
};

double existing_floor_depth(const struct rod *r)
{
	double depth = r->stair->floor_depth > 0 ? r->stair->floor_depth : FLOOR;
	double least = r->tread + r->job->floors.upper_finish + 50;
	return fmin(fmax(depth, least), r->top);
}

/* Newels that are let into the upper floor. */
static void add_newel_notches(struct layer *l)
{
	const struct rod *r = l->rod;
	double half = r->job->newels.section / 2;
	for (int i = 0; i < 2; i++) {
		const struct side *side = &r->sides[i];
		if (side_has_head_newel(side))
			layer_notch(l, rod_y(r, side, side->rail - half),
				rod_y(r, side, side->rail + half), side->head.newel_x + 2 * half);
	}
}

/* How much of the floor the landing nosing takes: nothing when the last tread is flush. */
static double landing_depth(const struct rod *r)
{
	return r->steps < r->risers ? r->job->treads.landing_bearing : 0;
}

/* The floor beside the opening would hide the stair from the side: only what lies before the
 * opening and behind it is shown, on an open side past its corner. */
static struct layer upper_layer(const struct rod *r, int step, double far, double edge)
{
	struct layer l = layer_of(r, step, far, edge);
	const struct box *o = &r->stair->opening;
	l.y0 += side_open_at(&r->sides[HAND_RIGHT], step) ? o->y0 : 0;
	l.y1 += side_open_at(&r->sides[HAND_LEFT], step) ? o->y1 - r->width : 0;
	return l;
}

/* How far back newels reach that are let into the upper floor. */
static double newel_reach(const struct rod *r)
{
	double reach = -INFINITY;
	for (int i = 0; i < 2; i++)
		if (side_has_head_newel(&r->sides[i]))
			reach = fmax(reach, r->sides[i].head.newel_x + r->job->newels.section);
	return reach;
}

/* Without a finish the nosing piece is let into the structure itself: into its header. */
static bool nosing_is_let_in(const struct rod *r)
{
	return landing_depth(r) > 0 && r->job->floors.upper_finish <= 0;
}

static double header_back(const struct rod *r)
{
	if (nosing_is_let_in(r))
		return r->header_x + landing_depth(r);
	return fmax(r->header_x + HEADER, newel_reach(r) + HEADER / 4);
}

/* One of two solids of a piece, the face between them no edge. */
static struct solid *half(struct arena *a, struct outline plan, double z0, double z1,
	unsigned char seam)
{
	struct profile f = profile_of(a, plan);
	for (int i = 0; i < f.n; i++)
		f.soft[i] |= seam;
	return solid_prism(a, f, z0, z1);
}

/* Structure of the upper floor between two x, with the notches of newels let into it. */
static struct part *structure_add(struct pieces *list, const struct rod *r, struct work work,
	struct vec x, double top)
{
	struct arena *a = list->arena;
	double under = r->top - existing_floor_depth(r), let_in = r->top - r->tread;
	struct layer l = upper_layer(r, r->steps, x.y, x.x);
	struct outline whole = layer_outline(a, &l);
	struct part *p = existing_slab_add(list, r, work, whole, under, top);
	if (top <= let_in + NEAR_ENOUGH || newel_reach(r) <= x.x + NEAR_ENOUGH)
		return p;
	add_newel_notches(&l);
	p->solids = solid_add(half(a, whole, under, let_in, SOFT_A),
		half(a, layer_outline(a, &l), let_in, top, SOFT_B));
	return p;
}

/* What is laid on the structure: under the nosing piece, where that is thinner, and behind it. */
static void upper_finish_add(struct pieces *list, const struct rod *r)
{
	double structure = r->stair->upper_structural, bed = r->top - rod_landing_rabbet(r);
	struct layer l = upper_layer(r, r->steps, existing_back(r), r->header_x);
	if (r->job->floors.upper_finish <= 0)
		return;
	add_newel_notches(&l);
	if (bed > structure + NEAR_ENOUGH)
		existing_slab_add(list, r, upper_finish, layer_outline(list->arena, &l), structure,
			bed);
	l.edge += landing_depth(r);
	existing_slab_add(list, r, upper_finish, layer_outline(list->arena, &l), bed, r->top);
}

double existing_header_top(const struct rod *r)
{
	return nosing_is_let_in(r) ? r->top - r->tread : r->stair->upper_structural;
}

/* How deep newels at the head of the stair go into it. */
static double newel_in_header(const struct rod *r)
{
	double deep = 0;
	for (int i = 0; i < 2; i++) {
		const struct side *side = &r->sides[i];
		if (side_has_head_newel(side))
			deep = fmax(deep, existing_header_top(r) - side->head.newel_z);
	}
	return deep;
}

static const char *header_note(struct arena *a, const struct rod *r)
{
	struct lettering l = job_lettering(r->job);
	double newel = newel_in_header(r);
	if (!nosing_is_let_in(r) && newel <= NEAR_ENOUGH)
		return NULL;
	if (!nosing_is_let_in(r))
		return arena_printf(a,
			"The header is cut out %s deep under a newel at the head: it goes as low "
			"as the landing nosing's underside.",
			length_say(a, l, newel));
	return arena_printf(a,
		"The header lies %s lower than the floor, or is cut down by as much, and the "
		"subfloor ends %s behind its face: the landing nosing is let in there, flush.",
		length_say(a, l, r->tread), length_say(a, l, landing_depth(r)));
}

static void upper_floor_add(struct pieces *list, const struct rod *r)
{
	double structure = r->stair->upper_structural, back = header_back(r);
	struct part *p =
		structure_add(list, r, header, vec(r->header_x, back), existing_header_top(r));
	p->note = header_note(list->arena, r);
	structure_add(list, r, upper_floor, vec(back, existing_back(r)), structure);
	upper_finish_add(list, r);
}

struct box existing_floor_behind(const struct rod *r)
{
	struct layer l = upper_layer(r, r->steps, existing_back(r), r->header_x);
	return (struct box){ r->header_x, l.y0, existing_back(r), l.y1 };
}

/* No walls may stand in it, in front or behind. */
struct box existing_floor_over_foot(const struct rod *r)
{
	double edge = r->stair->opening.x0;
	if (r->job->opening.length <= 0 || edge < 1 - BEYOND)
		return (struct box){ 0, 0, 0, 0 };
	struct layer first = upper_layer(r, 1, -BEYOND, edge);
	struct layer last = upper_layer(r, r->steps, first.far, edge);
	return (struct box){ first.far, fmax(first.y0, last.y0), edge, fmin(first.y1, last.y1) };
}

/* The upper floor at the other end of the opening, over the foot of the stair. */
static void floor_over_foot_add(struct pieces *list, const struct rod *r)
{
	struct box b = existing_floor_over_foot(r);
	if (b.x1 > b.x0)
		existing_box_add(list, r, over_foot,
			vec3(b.x0, b.y0, r->top - existing_floor_depth(r)),
			vec3(b.x1, b.y1, r->top));
}

static struct part *wall_add(struct pieces *list, const struct rod *r, const struct side *side,
	struct vec x, struct vec z)
{
	double a = rod_y(r, side, 0), b = rod_y(r, side, -WALL);
	struct outline plan = outline_box(list->arena, x.x, fmin(a, b), x.y, fmax(a, b));
	return existing_slab_add(list, r, walls[side->hand], plan, z.x, z.y);
}

/* Beyond a newel's face: its cap, and the moulding under it. */
static double cap_reach(const struct rod *r)
{
	const struct job_newel_cap *cap = &r->job->newels.cap;

	return cap->kind == CAP_NONE ? 0 : fmax(cap->overhang, cap->quarter_round);
}

/* Is there no floor of a guard, and none of its wood, where it goes up beside the stair? */
static bool goes_up(struct arena *a, const struct rod *r, const struct side *side)
{
	struct run_lines l = level_run_lines(a, r, side);
	struct box wall = { side->head.x, -WALL, r->header_x, 0 };
	bool is_beside = false;
	for (int i = 0; i < l.n; i++) {
		struct box b = level_run_box(r, &l.line[i]);
		is_beside |= b.x0 < r->header_x - NEAR_ENOUGH;
		if (box_touches(box_grow(b, cap_reach(r) - NEAR_ENOUGH), wall))
			return false;
	}
	return !is_beside || level_run_edge(r, side) <= -WALL + NEAR_ENOUGH;
}

/* Behind the header it ends under the floor that the guard stands on, before it as high as it has
 * to hold the rail. */
static void stepped_wall_add(struct pieces *list, const struct rod *r, const struct side *side,
	double ceiling, double top)
{
	struct arena *a = list->arena;
	double front = side->head.x, back = existing_back(r);
	struct part *p = wall_add(list, r, side, vec(front, back), vec(0, top));
	struct vec corners[6] = { { front, 0 }, { back, 0 }, { back, ceiling },
		{ r->header_x, ceiling }, { r->header_x, top }, { front, top } };
	struct vec3 *one = NEW_N(a, struct vec3, 6), *other = NEW_N(a, struct vec3, 6);
	for (int i = 0; i < 6; i++) {
		one[i] = vec3(corners[i].x, rod_y(r, side, 0), corners[i].y);
		other[i] = vec3(corners[i].x, rod_y(r, side, -WALL), corners[i].y);
	}
	p->solids = solid_join(a, 6, one, other, NULL);
}

static void warn_of_no_wall(const struct rod *r, const struct side *side, double over,
	struct diags *d)
{
	struct lettering l = job_lettering(r->job);
	const char *hand = hand_word(side->hand);
	diag_warning(d, rod_pos(r, side->job->src, "to_step"),
		arena_printf(d->arena,
			"write stair.%s.to_step: %d, and a newel holds the rail; or, where the "
			"wall goes up in the opening, an opening.width that leaves %s for it",
			hand, r->steps, length_say(d->arena, l, WALL + cap_reach(r))),
		"rail: on the %s its end stands %s over the ceiling, under the floor of a guard: "
		"no wall is known there that holds it",
		hand, length_say(d->arena, l, over));
}

/* The one behind the open steps takes the end of the rail. */
static void wall_behind_add(struct pieces *list, const struct rod *r, const struct side *side,
	double ceiling, struct diags *d)
{
	double rail = rod_nosing_z(r, side->head.x) + r->job->rail.height;
	struct vec x = vec(side->head.x, existing_back(r));
	if (level_run_lines(list->arena, r, side).n == 0) {
		double rails = wall_runs_top(list->arena, r, side);
		double high = fmax(fmax(rail, rails) + BESIDE / 2, r->top + ABOVE);
		wall_add(list, r, side, x, vec(0, high));
	} else if (rail <= ceiling + NEAR_ENOUGH) {
		wall_add(list, r, side, x, vec(0, ceiling));
	} else if (goes_up(list->arena, r, side)) {
		stepped_wall_add(list, r, side, ceiling, rail + BESIDE / 2);
	} else {
		wall_add(list, r, side, x, vec(0, ceiling));
		warn_of_no_wall(r, side, rail - ceiling, d);
	}
}

/* A wall all along, or in front of the open steps, or behind them.  Where the stair goes on beside
 * it up to the floor, so does the wall past it; else the floor's line would seem to cross the
 * opening. */
static void walls_add(struct pieces *list, const struct rod *r, const struct side *side,
	struct diags *d)
{
	double low = r->stair->lower_structural, ceiling = r->top - existing_floor_depth(r);
	bool has_guard = level_run_lines(list->arena, r, side).n > 0;
	double rails = wall_runs_top(list->arena, r, side) + BESIDE / 2;
	double high = has_guard ? ceiling : fmax(r->top + ABOVE, rails);
	if (!side->is_open) {
		wall_add(list, r, side, vec(-BEYOND, existing_back(r)), vec(low, high));
		return;
	}
	if (side->from > 1)
		wall_add(list, r, side, vec(-BEYOND, side->wall_end), vec(low, ceiling));
	if (side->head.kind == RAIL_END_WALL)
		wall_behind_add(list, r, side, ceiling, d);
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_existing };
	struct rod r = rod_make(s, f);
	existing_lower_floor_add(&list, &r);
	upper_floor_add(&list, &r);
	floor_over_foot_add(&list, &r);
	existing_guarded_floor_add(&list, &r);
	walls_add(&list, &r, &r.sides[HAND_RIGHT], d);
	walls_add(&list, &r, &r.sides[HAND_LEFT], d);
	existing_notched_walls_add(&list, &r);
	return list.first;
}

const struct part_kind part_existing = { "existing work", "", make };
