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

#define BEYOND 600.0 /* how much is shown in front of the stair and behind it */
#define BESIDE 300.0 /* and past an open side */
#define WALL 115.0   /* a partition of 90 mm studs, boarded (common practice) */
#define SLAB 150.0   /* of the lower structure */
#define FLOOR 300.0  /* upper floor, finish to ceiling, when the job is silent */
#define HEADER 90.0  /* two boards of 45 mm (common practice) */
#define ABOVE 300.0  /* how far walls go on over the upper floor */

static const struct work lower_floor = { EXISTING_LOWER_FLOOR, "lower floor" };
static const struct work lower_finish = { EXISTING_LOWER_FLOOR, "lower floor finish" };
static const struct work upper_floor = { EXISTING_UPPER_FLOOR, "upper floor" };
static const struct work upper_finish = { EXISTING_UPPER_FLOOR, "upper floor finish" };
static const struct work over_foot = { EXISTING_UPPER_FLOOR, "upper floor over the foot" };
static const struct work header = { EXISTING_HEADER, "header" };
static const struct work walls[] = {
	[HAND_RIGHT] = { EXISTING_WALL, "wall right" },
	[HAND_LEFT] = { EXISTING_WALL, "wall left" },
};

/* A strip across the floor that the floor's edge keeps clear of. */
struct notch {
	double y0, y1, x;
};

/* One layer of a floor on plan: from `far` to an edge that draws back to notches. */
struct layer {
	const struct rod *rod;
	double y0, y1, far, edge;
	struct notch notches[6];
	int n;
};

static void add_notch(struct layer *l, double ya, double yb, double x)
{
	l->notches[l->n++] = (struct notch){ fmin(ya, yb), fmax(ya, yb), x };
}

static double edge_at(const struct layer *l, double y)
{
	double x = l->edge;
	for (int i = 0; i < l->n; i++) {
		const struct notch *k = &l->notches[i];
		if (y > k->y0 && y < k->y1)
			x = l->far > l->edge ? fmax(x, k->x) : fmin(x, k->x);
	}
	return x;
}

/* The next y above this one at which the edge may jump. */
static double next_y(const struct layer *l, double y)
{
	double next = l->y1;
	for (int i = 0; i < l->n; i++) {
		double ys[2] = { l->notches[i].y0, l->notches[i].y1 };
		for (int k = 0; k < 2; k++)
			if (ys[k] > y + NEAR_ENOUGH && ys[k] < next)
				next = ys[k];
	}
	return next;
}

static struct outline layer_outline(struct arena *a, const struct layer *l)
{
	struct path p = path_begin(a, 32);
	path_to(&p, l->far, l->y1);
	path_to(&p, l->far, l->y0);
	for (double y = l->y0, next; y < l->y1 - NEAR_ENOUGH; y = next) {
		next = next_y(l, y);
		double x = edge_at(l, (y + next) / 2);
		path_to(&p, x, y);
		path_to(&p, x, next);
	}
	return path_close(p);
}

static struct part *slab_add(struct pieces *list, const struct rod *r, struct work work,
	struct outline plan, double z0, double z1)
{
	struct box b = outline_extent(plan);
	struct part *p = piece_add(list, work.name, "", r->flight->frame);
	p->existing = work.kind;
	p->outline = plan;
	p->size = (struct part_size){ b.x1 - b.x0, b.y1 - b.y0, z1 - z0 };
	p->solids = solid_prism(list->arena, profile_of(list->arena, plan), z0, z1);
	return p;
}

void existing_box_add(struct pieces *list, const struct rod *r, struct work work, struct vec3 from,
	struct vec3 to)
{
	slab_add(list, r, work, outline_box(list->arena, from.x, from.y, to.x, to.y), from.z, to.z);
}

/* How far a floor reaches past the limit of a side at a step. */
static double beside(const struct side *side, int step)
{
	return side_open_at(side, step) ? BESIDE : 0;
}

static struct layer layer_of(const struct rod *r, int step, double far, double edge)
{
	struct layer l = { .rod = r, .far = far, .edge = edge };
	l.y0 = -beside(&r->sides[HAND_RIGHT], step);
	l.y1 = r->width + beside(&r->sides[HAND_LEFT], step);
	return l;
}

static double back_end(const struct rod *r)
{
	return r->header_x + BEYOND;
}

/* Structure is shown past a side that is open anywhere, and under a wall. */
static double slab_edge(const struct side *side)
{
	return side->is_open ? BESIDE : WALL;
}

/* The back of the newels that go down through the lower floor's layer at this level; as far as it
 * is shown when none does. */
static double newels_back(const struct rod *r, double level)
{
	double back = back_end(r);
	for (int i = 0; i < 2; i++) {
		const struct side *side = &r->sides[i];
		if (side_has_foot_newel(side) && side->foot.newel_z < level - NEAR_ENOUGH)
			back = fmin(back, side->foot.newel_x + r->job->newels.section);
	}
	return back;
}

static void add_foot_newel_notches(struct layer *l)
{
	const struct rod *r = l->rod;
	double half = r->job->newels.section / 2;
	for (int i = 0; i < 2; i++) {
		const struct side *side = &r->sides[i];
		if (side_has_foot_newel(side))
			add_notch(l, rod_y(r, side, side->rail - half),
				rod_y(r, side, side->rail + half), side->foot.newel_x);
	}
}

/* A layer of the lower floor: `front` round the newels that go through it, and behind them the
 * floor that goes on between `gap.x` and `gap.y`, where the stair stands in it, on either side. */
static struct solid *lower_layer(struct arena *a, struct layer front, struct vec gap, struct vec z)
{
	double back = newels_back(front.rod, z.y), end = back_end(front.rod);
	if (back >= end - NEAR_ENOUGH)
		return solid_prism(a, profile_of(a, layer_outline(a, &front)), z.x, z.y);
	front.edge = back;
	add_foot_newel_notches(&front);
	struct solid *s = solid_prism(a, profile_of(a, layer_outline(a, &front)), z.x, z.y);
	double from[2] = { front.y0, gap.y }, to[2] = { gap.x, front.y1 };
	for (int i = 0; i < 2; i++)
		if (to[i] > from[i] + NEAR_ENOUGH)
			s = solid_add(s,
				solid_box(a, vec3(back, from[i], z.x), vec3(end, to[i], z.y)));
	return s;
}

/* The finish is laid last: it stops at what stands on the structure, stair and newels, and goes on
 * beside the stair. */
static void lower_finish_add(struct pieces *list, const struct rod *r)
{
	struct arena *a = list->arena;
	double structure = r->stair->lower_structural, middle = r->width / 2;
	struct layer l = layer_of(r, 1, -BEYOND, back_end(r));
	struct part *p = slab_add(list, r, lower_finish, layer_outline(a, &l), structure, 0);
	if (r->foot > structure + NEAR_ENOUGH) {
		p->solids = lower_layer(a, l, vec(middle, middle), vec(structure, 0));
		return;
	}
	add_notch(&l, 0, r->width, 0);
	for (int i = 0; i < 2; i++)
		if (r->sides[i].kind == STRINGER_HOUSED)
			add_notch(&l, rod_y(r, &r->sides[i], r->sides[i].outer),
				rod_y(r, &r->sides[i], r->sides[i].inner),
				-r->nosing - HOUSED_FRONT);
	p->solids = lower_layer(a, l, vec(0, r->width), vec(structure, 0));
}

/* As deep as newels are let into it, it goes round them. */
static void lower_structure_add(struct pieces *list, const struct rod *r)
{
	struct arena *a = list->arena;
	double top = r->stair->lower_structural, middle = r->width / 2, let_in = top;
	struct layer l = { .rod = r, .far = -BEYOND, .edge = back_end(r) };
	l.y0 = -slab_edge(&r->sides[HAND_RIGHT]);
	l.y1 = r->width + slab_edge(&r->sides[HAND_LEFT]);
	struct outline whole = layer_outline(a, &l);
	struct part *p = slab_add(list, r, lower_floor, whole, top - SLAB, top);
	for (int i = 0; i < 2; i++)
		if (side_has_foot_newel(&r->sides[i]))
			let_in = fmin(let_in, r->sides[i].foot.newel_z);
	if (let_in > top - NEAR_ENOUGH)
		return;
	p->solids = solid_add(lower_layer(a, l, vec(middle, middle), vec(let_in, top)),
		solid_prism(a, profile_of(a, whole), top - SLAB, let_in));
}

/* Where a side opens on its way up, the floor goes on from the end of its wall. */
static void finish_behind_wall_add(struct pieces *list, const struct rod *r,
	const struct side *side)
{
	if (!side->is_open || side->from == 1)
		return;
	double a = rod_y(r, side, 0), b = rod_y(r, side, -BESIDE);
	existing_box_add(list, r, lower_finish,
		vec3(side->wall_end, fmin(a, b), r->stair->lower_structural),
		vec3(back_end(r), fmax(a, b), 0));
}

static void lower_floor_add(struct pieces *list, const struct rod *r)
{
	lower_structure_add(list, r);
	if (r->stair->lower_structural > -NEAR_ENOUGH)
		return;
	lower_finish_add(list, r);
	finish_behind_wall_add(list, r, &r->sides[HAND_RIGHT]);
	finish_behind_wall_add(list, r, &r->sides[HAND_LEFT]);
}

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
		if (side->is_open && side->head.kind == RAIL_END_NEWEL)
			add_notch(l, rod_y(r, side, side->rail - half),
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
		if (r->sides[i].is_open && r->sides[i].head.kind == RAIL_END_NEWEL)
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
static void structure_add(struct pieces *list, const struct rod *r, struct work work, struct vec x,
	double top)
{
	struct arena *a = list->arena;
	double under = r->top - existing_floor_depth(r), let_in = r->top - r->tread;
	struct layer l = upper_layer(r, r->steps, x.y, x.x);
	struct outline whole = layer_outline(a, &l);
	struct part *p = slab_add(list, r, work, whole, under, top);
	if (top <= let_in + NEAR_ENOUGH || newel_reach(r) <= x.x + NEAR_ENOUGH)
		return;
	add_newel_notches(&l);
	p->solids = solid_add(half(a, whole, under, let_in, SOFT_A),
		half(a, layer_outline(a, &l), let_in, top, SOFT_B));
}

/* What is laid on the structure: under the nosing piece, where that is thinner, and behind it. */
static void upper_finish_add(struct pieces *list, const struct rod *r)
{
	double structure = r->stair->upper_structural, bed = r->top - rod_landing_rabbet(r);
	struct layer l = upper_layer(r, r->steps, back_end(r), r->header_x);
	if (r->job->floors.upper_finish <= 0)
		return;
	if (bed > structure + NEAR_ENOUGH)
		slab_add(list, r, upper_finish, layer_outline(list->arena, &l), structure, bed);
	add_newel_notches(&l);
	l.edge += landing_depth(r);
	slab_add(list, r, upper_finish, layer_outline(list->arena, &l), bed, r->top);
}

static void upper_floor_add(struct pieces *list, const struct rod *r)
{
	double structure = r->stair->upper_structural, back = header_back(r);
	double head = nosing_is_let_in(r) ? r->top - r->tread : structure;
	structure_add(list, r, header, vec(r->header_x, back), head);
	structure_add(list, r, upper_floor, vec(back, back_end(r)), structure);
	upper_finish_add(list, r);
}

struct box existing_floor_behind(const struct rod *r)
{
	struct layer l = upper_layer(r, r->steps, back_end(r), r->header_x);
	return (struct box){ r->header_x, l.y0, back_end(r), l.y1 };
}

/* No walls may stand in it, in front or behind. */
struct box existing_floor_over_foot(const struct rod *r)
{
	double edge = r->stair->opening.x0;
	if (r->job->opening.length <= 0 || edge < 1 - BEYOND)
		return (struct box){ 0, 0, 0, 0 };
	struct layer first = upper_layer(r, 1, fmax(-BEYOND, edge - BEYOND), edge);
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

static void wall_add(struct pieces *list, const struct rod *r, const struct side *side,
	struct vec x, struct vec z)
{
	double a = rod_y(r, side, 0), b = rod_y(r, side, -WALL);
	existing_box_add(list, r, walls[side->hand], vec3(x.x, fmin(a, b), z.x),
		vec3(x.y, fmax(a, b), z.y));
}

/* A wall all along, or in front of the open steps, or behind them.  Where the stair goes on beside
 * it up to the floor, so does the wall past it; else the floor's line would seem to cross the
 * opening. */
static void walls_add(struct pieces *list, const struct rod *r, const struct side *side)
{
	double low = r->stair->lower_structural, ceiling = r->top - existing_floor_depth(r);
	bool has_guard = level_run_lines(list->arena, r, side).n > 0;
	double rails = wall_runs_top(list->arena, r, side) + BESIDE / 2;
	double high = has_guard ? ceiling : fmax(r->top + ABOVE, rails);
	if (!side->is_open) {
		wall_add(list, r, side, vec(-BEYOND, back_end(r)), vec(low, high));
		return;
	}
	if (side->from > 1)
		wall_add(list, r, side, vec(-BEYOND, side->wall_end), vec(low, ceiling));
	if (side->head.kind != RAIL_END_WALL)
		return;
	/* it takes the end of the rail */
	double rail = rod_nosing_z(r, side->head.x) + r->job->rail.height + BESIDE / 2;
	wall_add(list, r, side, vec(side->head.x, back_end(r)),
		vec(0, has_guard ? high : fmax(rail, high)));
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_existing };
	struct rod r = rod_make(s, f);
	(void)d;
	lower_floor_add(&list, &r);
	upper_floor_add(&list, &r);
	floor_over_foot_add(&list, &r);
	existing_guarded_floor_add(&list, &r);
	walls_add(&list, &r, &r.sides[HAND_RIGHT]);
	walls_add(&list, &r, &r.sides[HAND_LEFT]);
	existing_notched_walls_add(&list, &r);
	return list.first;
}

const struct part_kind part_existing = { "existing work", "", make };
