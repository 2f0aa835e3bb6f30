#include "parts/existing.h"
#include "parts/skirt.h"
#include "parts/start.h"

/*
 * The lower floor: structure all through, and the finish on it, which is laid
 * last: it stops at what stands on the structure, stair, skirts, riser block and
 * newels.
 *
 *      finish ____      ___________ beside the stair
 *             ____|newel|__________
 *      structure __________________
 */

#define SLAB 150.0 /* so much of the structure is shown, whatever its depth */

static const struct work lower_floor = { EXISTING_LOWER_FLOOR, "lower floor" };
static const struct work lower_finish = { EXISTING_LOWER_FLOOR, "lower floor finish" };

/* Structure is shown past a side that is open anywhere, and under a wall. */
static double slab_edge(const struct side *side)
{
	return side->is_open ? existing_beside(side) : WALL;
}

/* The back of the newels that go down through the lower floor's layer at this level; as far as it
 * is shown when none does. */
static double newels_back(const struct rod *r, double level)
{
	double back = existing_back(r);
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
			layer_notch(l, rod_y(r, side, side->rail - half),
				rod_y(r, side, side->rail + half), side->foot.newel_x);
	}
}

/* A layer of the lower floor: `front` round the newels that go through it, and behind them the
 * floor that goes on on either side of what is between `gap.x` and `gap.y`, where the stair stands
 * in it; there it goes up to the stair. */
static struct solid *lower_layer(struct arena *a, struct layer front, struct vec gap, struct vec z)
{
	struct layer stair = front;
	double back = newels_back(front.rod, z.y), end = existing_back(front.rod);
	if (back >= end - NEAR_ENOUGH)
		return solid_prism(a, profile_of(a, layer_outline(a, &front)), z.x, z.y);
	front.edge = back;
	add_foot_newel_notches(&front);
	struct solid *s = solid_prism(a, profile_of(a, layer_outline(a, &front)), z.x, z.y);
	if (gap.y <=
		gap.x) /* nothing stands in it: in one, or a section that runs there is blank */
		return solid_add(s,
			solid_box(a, vec3(back, front.y0, z.x), vec3(end, front.y1, z.y)));
	double from[2] = { front.y0, gap.y }, to[2] = { gap.x, front.y1 };
	for (int i = 0; i < 2; i++)
		if (to[i] > from[i] + NEAR_ENOUGH)
			s = solid_add(s,
				solid_box(a, vec3(back, from[i], z.x), vec3(end, to[i], z.y)));
	stair.y0 = gap.x;
	stair.y1 = gap.y;
	return layer_rest(a, &stair, back, z, s);
}

/* Along the riser block from one end to the other, seen from the floor that comes against it. */
static void strike_block(struct arena *a, struct path *p, const struct rod *r,
	const struct side *side)
{
	struct outline o = start_block_outline(a, r, side);
	for (int i = o.n - 1; i >= 0; i--) {
		struct vec at = o.corners[i].at;
		path_arc_to(p, at.y - r->nosing, r->width - at.x, -o.corners[i].bulge);
	}
}

/* A layer that goes round the riser blocks of a starting step and on behind them; between the
 * stair's sides it ends as it does without. */
static struct outline outline_round_blocks(struct arena *a, const struct layer *l)
{
	const struct rod *r = l->rod;
	bool right = side_starts(&r->sides[HAND_RIGHT]), left = side_starts(&r->sides[HAND_LEFT]);
	double back = existing_back(r);
	struct layer between = *l;
	between.y0 = right ? 0 : l->y0;
	between.y1 = left ? r->width : l->y1;
	struct outline o = layer_outline(a, &between); /* its edge from the third corner on */
	struct path p = path_begin(a, o.n + 24);
	path_to(&p, l->far, l->y1);
	path_to(&p, l->far, l->y0);
	if (right) {
		path_to(&p, back, l->y0);
		path_to(&p, back, 0);
		strike_block(a, &p, r, &r->sides[HAND_RIGHT]);
	}
	for (int i = 2; i < o.n; i++)
		path_to(&p, o.corners[i].at.x, o.corners[i].at.y);
	if (left) {
		strike_block(a, &p, r, &r->sides[HAND_LEFT]);
		path_to(&p, back, r->width);
		path_to(&p, back, l->y1);
	}
	return path_close(p);
}

/* Across the floor, what goes on before the first riser at this side. */
static void add_front_notch(struct layer *l, const struct side *side)
{
	const struct rod *r = l->rod;
	bool is_wall = !side->is_open || side->from > 1;
	if (side->kind == STRINGER_HOUSED)
		layer_notch(l, rod_y(r, side, side->outer), rod_y(r, side, side->inner),
			-r->nosing - HOUSED_FRONT);
	else if (is_wall && side->skirt > 0)
		layer_notch(l, rod_y(r, side, 0), rod_y(r, side, side->skirt), wall_skirt_front(r));
}

/* Up to what stands on the structure. */
static const struct solid *finish_against(struct arena *a, struct layer l)
{
	const struct rod *r = l.rod;
	double structure = r->stair->lower_structural;
	layer_notch(&l, 0, r->width, 0);
	for (int i = 0; i < 2; i++)
		add_front_notch(&l, &r->sides[i]);
	if (rod_has_start(r)) /* no newel stands on the floor beside it */
		return solid_prism(a, profile_of(a, outline_round_blocks(a, &l)), structure, 0);
	return lower_layer(a, l, vec(0, r->width), vec(structure, 0));
}

/* The finish is laid last, and goes on beside the stair. */
static void lower_finish_add(struct pieces *list, const struct rod *r)
{
	struct arena *a = list->arena;
	double structure = r->stair->lower_structural, middle = r->width / 2;
	struct layer l = layer_of(r, 1, -BEYOND, existing_back(r));
	struct part *p =
		existing_slab_add(list, r, lower_finish, layer_outline(a, &l), structure, 0);
	bool is_under = r->foot > structure + NEAR_ENOUGH;
	p->solids = is_under ? lower_layer(a, l, vec(middle, middle), vec(structure, 0))
			     : finish_against(a, l);
}

/* As deep as newels are let into it, it goes round them. */
static void lower_structure_add(struct pieces *list, const struct rod *r)
{
	struct arena *a = list->arena;
	double top = r->stair->lower_structural, middle = r->width / 2, let_in = top;
	struct layer l = { .rod = r, .far = -BEYOND, .edge = existing_back(r) };
	l.y0 = -slab_edge(&r->sides[HAND_RIGHT]);
	l.y1 = r->width + slab_edge(&r->sides[HAND_LEFT]);
	struct outline whole = layer_outline(a, &l);
	struct part *p = existing_slab_add(list, r, lower_floor, whole, top - SLAB, top);
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
		vec3(existing_back(r), fmax(a, b), 0));
}

void existing_lower_floor_add(struct pieces *list, const struct rod *r)
{
	lower_structure_add(list, r);
	if (r->stair->lower_structural > -NEAR_ENOUGH)
		return;
	lower_finish_add(list, r);
	finish_behind_wall_add(list, r, &r->sides[HAND_RIGHT]);
	finish_behind_wall_add(list, r, &r->sides[HAND_LEFT]);
}
