#include "parts/piece.h"

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

/* A strip across the floor that the floor's edge keeps clear of. */
struct notch {
	double y0, y1, x;
};

/* One layer of a floor on plan: from `far` to an edge that draws back to notches. */
struct layer {
	const struct rod *rod;
	double y0, y1, far, edge;
	struct notch notches[4];
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
	struct path p = path_begin(a, 20);
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

static struct part *slab_add(struct pieces *list, const struct rod *r, const char *name,
	struct outline plan, double z0, double z1)
{
	struct box b = outline_extent(plan);
	struct part *p = piece_add(list, name, "", r->flight->frame);
	p->outline = plan;
	p->size = (struct part_size){ b.x1 - b.x0, b.y1 - b.y0, z1 - z0 };
	p->solids = solid_prism(list->arena, profile_of(list->arena, plan), z0, z1);
	return p;
}

static void box_add(struct pieces *list, const struct rod *r, const char *name, struct vec3 from,
	struct vec3 to)
{
	slab_add(list, r, name, outline_box(list->arena, from.x, from.y, to.x, to.y), from.z, to.z);
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

/* Where the wall in front of the open steps ends: at the nosing of the first of them. */
static double wall_end(const struct rod *r, const struct side *side)
{
	return (side->from - 1) * r->run - r->nosing;
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

/* The finish is laid last: it stops at a stair that stands on the structure, and goes on beside
 * it. */
static struct layer finish_layer(const struct rod *r)
{
	struct layer l = layer_of(r, 1, -BEYOND, back_end(r));
	if (r->foot > r->stair->lower_structural + NEAR_ENOUGH)
		return l;
	add_notch(&l, 0, r->width, 0);
	for (int i = 0; i < 2; i++)
		if (r->sides[i].kind == STRINGER_HOUSED)
			add_notch(&l, rod_y(r, &r->sides[i], r->sides[i].outer),
				rod_y(r, &r->sides[i], r->sides[i].inner),
				-r->nosing - HOUSED_FRONT);
	return l;
}

/* Where a side opens on its way up, the floor goes on from the end of its wall. */
static void finish_behind_wall_add(struct pieces *list, const struct rod *r,
	const struct side *side)
{
	if (!side->is_open || side->from == 1)
		return;
	double a = rod_y(r, side, 0), b = rod_y(r, side, -BESIDE);
	box_add(list, r, "lower floor finish",
		vec3(wall_end(r, side), fmin(a, b), r->stair->lower_structural),
		vec3(back_end(r), fmax(a, b), 0));
}

static void lower_floor_add(struct pieces *list, const struct rod *r)
{
	double structure = r->stair->lower_structural;
	double right = slab_edge(&r->sides[HAND_RIGHT]), left = slab_edge(&r->sides[HAND_LEFT]);
	box_add(list, r, "lower floor", vec3(-BEYOND, -right, structure - SLAB),
		vec3(back_end(r), r->width + left, structure));
	if (structure > -NEAR_ENOUGH)
		return;
	struct layer l = finish_layer(r);
	slab_add(list, r, "lower floor finish", layer_outline(list->arena, &l), structure, 0);
	finish_behind_wall_add(list, r, &r->sides[HAND_RIGHT]);
	finish_behind_wall_add(list, r, &r->sides[HAND_LEFT]);
}

/* Finished floor above to finished ceiling below. */
static double floor_depth(const struct rod *r)
{
	const struct job_opening *o = &r->job->opening;
	double depth = o->floor_thickness;
	if (depth <= 0 && o->ceiling_height > 0)
		depth = r->top - o->ceiling_height;
	double least = r->tread + fmax(r->job->floors.upper_finish, 0) + 50;
	return fmin(fmax(depth > 0 ? depth : FLOOR, least), r->top);
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

static void upper_floor_add(struct pieces *list, const struct rod *r)
{
	double under = r->top - floor_depth(r), let_in = r->top - r->tread;
	double rabbet = r->top - rod_landing_rabbet(r);
	double header = r->header_x + HEADER;
	struct layer l = layer_of(r, r->steps, back_end(r), r->header_x);
	box_add(list, r, "header", vec3(r->header_x, l.y0, under), vec3(header, l.y1, let_in));
	box_add(list, r, "upper floor", vec3(header, l.y0, under), vec3(l.far, l.y1, let_in));
	add_newel_notches(&l);
	if (rabbet > let_in + NEAR_ENOUGH)
		slab_add(list, r, "upper floor boards", layer_outline(list->arena, &l), let_in,
			rabbet);
	l.edge += landing_depth(r);
	slab_add(list, r, "upper floor finish", layer_outline(list->arena, &l), rabbet, r->top);
}

/* The upper floor at the other end of the opening, over the foot of the stair. */
static void floor_over_foot_add(struct pieces *list, const struct rod *r)
{
	double length = r->job->opening.length, edge = r->header_x - length;
	if (length <= 0 || edge < 1 - BEYOND)
		return;
	double from = fmax(-BEYOND, edge - BEYOND);
	box_add(list, r, "upper floor over the foot", vec3(from, 0, r->top - floor_depth(r)),
		vec3(edge, r->width, r->top));
}

static void wall_add(struct pieces *list, const struct rod *r, const struct side *side,
	struct vec x, struct vec z)
{
	const char *name = side->hand == HAND_RIGHT ? "wall right" : "wall left";
	double a = rod_y(r, side, 0), b = rod_y(r, side, -WALL);
	box_add(list, r, name, vec3(x.x, fmin(a, b), z.x), vec3(x.y, fmax(a, b), z.y));
}

/* A wall all along, or in front of the open steps, or behind them. */
static void walls_add(struct pieces *list, const struct rod *r, const struct side *side)
{
	double low = r->stair->lower_structural, ceiling = r->top - floor_depth(r);
	if (!side->is_open) {
		wall_add(list, r, side, vec(-BEYOND, back_end(r)), vec(low, r->top));
		return;
	}
	if (side->from > 1)
		wall_add(list, r, side, vec(-BEYOND, wall_end(r, side)), vec(low, ceiling));
	if (side->head.kind != RAIL_END_WALL)
		return;
	/* it takes the end of the rail */
	double rail = rod_nosing_z(r, side->head.x) + r->job->rail.height + BESIDE / 2;
	wall_add(list, r, side, vec(side->head.x, back_end(r)), vec(0, fmax(rail, r->top)));
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
	walls_add(&list, &r, &r.sides[HAND_RIGHT]);
	walls_add(&list, &r, &r.sides[HAND_LEFT]);
	return list.first;
}

const struct part_kind part_existing = { "existing work", "", make };
