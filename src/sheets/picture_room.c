/*
 * What carries the stair in its picture: floors, the wall behind it, and of a wall before it what
 * does not hide the steps.
 *
 *              ________
 *            .' wall   |
 *          .'   .-.----|------.
 *        .'   .'_|     |______| floor above
 *       |   .'_|       |
 *       | .'_|    _    |
 *       |'_|  _| | wall before the stair, cut off along the steps
 *      /___|_____|____/ floor below
 */
#include "sheets/picture_room.h"

/* How much of the room is shown round the stair: along it, and across on either floor. */
#define ALONG 300.0
#define ACROSS_ABOVE 100.0
#define ACROSS_BELOW 180.0

#define FLOOR_EDGE 60.0 /* of the floor below, in sight */
#define OVER_RAIL 250.0 /* a wall goes on over the rail, plumb */

struct room {
	struct arena *arena;
	const struct stair *stair;
	const struct flight *flight;
	struct box3 made;   /* round the stair, in the flight's axes */
	struct part *below; /* the floor */
	struct part *first, *last;
	struct picture_wall gone;
};

static bool has_level_runs(const struct room *r)
{
	return r->stair->job->rail.level_run_count > 0;
}

static struct part *room_add(struct room *r, enum existing_kind kind)
{
	struct part *p = NEW(r->arena, struct part);
	struct frame *place = NEW(r->arena, struct frame);

	*place = r->flight->frame;
	*p = (struct part){ .existing = kind, .mark = "", .places = place, .count = 1 };
	if (r->last)
		r->last->next = p;
	else
		r->first = p;
	r->last = p;
	return p;
}

/* A board across the flight, of a profile along it, counter-clockwise seen from the right. */
static struct solid *board(struct arena *a, const struct vec *profile, int n, struct vec y)
{
	struct vec3 *at = NEW_N(a, struct vec3, 2 * n);
	struct solid *solid = NEW(a, struct solid);

	for (int i = 0; i < n; i++) {
		at[i] = vec3(profile[i].x, y.x, profile[i].y);
		at[n + i] = vec3(profile[i].x, y.y, profile[i].y);
	}
	*solid = (struct solid){ NULL, n, at, at + n, NULL };
	return solid;
}

/* ---- floors ---- */

static double drawn_in(double v, double low, double high)
{
	return fmin(fmax(v, low), high);
}

static struct vec3 point_within(struct box3 b, struct vec3 p)
{
	return vec3(drawn_in(p.x, b.low.x, b.high.x), drawn_in(p.y, b.low.y, b.high.y),
		drawn_in(p.z, b.low.z, b.high.z));
}

static const struct solid *solid_within(struct arena *a, const struct solid *s, struct box3 b,
	const struct solid *next)
{
	struct solid *drawn = NEW(a, struct solid);
	struct vec3 *corners = NEW_N(a, struct vec3, 2 * s->n);

	for (int i = 0; i < s->n; i++) {
		corners[i] = point_within(b, s->a[i]);
		corners[s->n + i] = point_within(b, s->b[i]);
	}
	*drawn = (struct solid){ (struct solid *)next, s->n, corners, corners + s->n, s->soft };
	return drawn;
}

/* The floor over the foot of the stair would hang in the air without the guard on it. */
static bool is_needed(const struct room *r, struct box3 floor)
{
	return floor.high.x > r->flight->header_x || has_level_runs(r);
}

/* All layers of a floor as one piece, so that no joints are seen in it. */
static struct part *floor_add(struct room *r, const struct part *parts, unsigned kinds,
	struct box3 within)
{
	struct part *floor = room_add(r, EXISTING_UPPER_FLOOR);

	for (const struct part *p = parts; p; p = p->next) {
		struct box3 b = solids_extent(p->solids);
		if (!(kinds >> p->existing & 1) || !box3_near(b, within, 0) || !is_needed(r, b))
			continue;
		for (const struct solid *s = p->solids; s; s = s->next)
			floor->solids = solid_within(r->arena, s, within, floor->solids);
	}
	return floor;
}

static struct box3 room_round(const struct room *r, double low, double across)
{
	struct box3 b = r->made;

	return (struct box3){ { b.low.x - ALONG, b.low.y - across, low },
		{ b.high.x + ALONG, b.high.y + across, b.high.z } };
}

static void floors_add(struct room *r, const struct part *parts)
{
	double below = r->stair->lower_structural - FLOOR_EDGE;

	r->below =
		floor_add(r, parts, 1u << EXISTING_LOWER_FLOOR, room_round(r, below, ACROSS_BELOW));
	floor_add(r, parts, 1u << EXISTING_UPPER_FLOOR | 1u << EXISTING_HEADER,
		room_round(r, 0, ACROSS_ABOVE));
}

static void floor_box_add(struct room *r, struct vec x, struct vec y, struct vec z)
{
	const struct vec profile[] = { { x.x, z.x }, { x.y, z.x }, { x.y, z.y }, { x.x, z.y } };
	struct solid *more = board(r->arena, profile, 4, y);

	if (y.y <= y.x || z.y <= z.x)
		return;
	more->next = (struct solid *)r->below->solids;
	r->below->solids = more;
}

/* The floor below ends under a wall, and its finish at the wall; where that is taken away it goes
 * on. */
static void floor_before_add(struct room *r, struct box3 wall)
{
	double structure = r->stair->lower_structural;
	struct box3 b = room_round(r, structure - FLOOR_EDGE, ACROSS_BELOW);
	struct box3 slab = solids_extent(r->below->solids);
	struct vec x = vec(wall.low.x, wall.high.x), low = vec(b.low.z, structure);

	if (wall.high.y < r->stair->width / 2) {
		floor_box_add(r, x, vec(b.low.y, slab.low.y), low);
		floor_box_add(r, x, vec(b.low.y, wall.high.y), vec(structure, 0));
	} else {
		floor_box_add(r, x, vec(slab.high.y, b.high.y), low);
		floor_box_add(r, x, vec(wall.low.y, b.high.y), vec(structure, 0));
	}
}

/* ---- walls ---- */

/* Plumb over x: cut off along the rake, unless a guard up there ends at it. */
static double wall_top(const struct room *r, struct box3 b, double x)
{
	struct slope_line nosing = flight_nosing_line(r->stair, r->flight);
	double rake = slope_at(nosing, x) + r->stair->job->rail.height + OVER_RAIL;

	return has_level_runs(r) ? b.high.z : fmin(rake, b.high.z);
}

static int wall_profile(const struct room *r, struct box3 b, struct vec *out)
{
	struct slope_line nosing = flight_nosing_line(r->stair, r->flight);
	double over = r->stair->job->rail.height + OVER_RAIL;
	double turn = (b.high.z - over - nosing.z0) / nosing.slope;
	int n = 0;

	out[n++] = vec(b.low.x, b.low.z);
	out[n++] = vec(b.high.x, b.low.z);
	out[n++] = vec(b.high.x, wall_top(r, b, b.high.x));
	if (turn > b.low.x && turn < b.high.x && !has_level_runs(r))
		out[n++] = vec(turn, b.high.z);
	out[n++] = vec(b.low.x, wall_top(r, b, b.low.x));
	return n;
}

static void wall_behind_add(struct room *r, struct box3 b)
{
	struct vec profile[5];
	int n = wall_profile(r, b, profile);

	room_add(r, EXISTING_WALL)->solids = board(r->arena, profile, n, vec(b.low.y, b.high.y));
}

/* Along the steps, from the end of the wall down to the floor. */
static int steps_profile(const struct room *r, struct box3 b, struct vec *out)
{
	const struct flight *f = r->flight;
	double x = b.high.x;
	int n = 0;

	out[n++] = vec(fmin(f->steps[0].nosing_x, x), 0);
	out[n++] = vec(x, 0);
	if (x > f->header_x) {
		out[n++] = vec(x, fmin(r->stair->total_rise, b.high.z));
		out[n++] = vec(f->header_x, fmin(r->stair->total_rise, b.high.z));
		x = f->header_x;
	}
	for (int i = f->step_count - 1; i >= 0; i--) {
		const struct step *step = &f->steps[i];
		if (step->nosing_x >= x)
			continue;
		out[n++] = vec(x, step->level);
		out[n++] = vec(step->nosing_x, step->level);
		x = step->nosing_x;
	}
	return n;
}

/* The outline of what is taken away is kept where a rail hangs on it. */
static void wall_gone_keep(struct room *r, struct box3 b)
{
	struct vec profile[5];
	int n = wall_profile(r, b, profile);
	double y = b.high.y < r->stair->width / 2 ? b.high.y : b.low.y;

	profile[0].y = 0;
	profile[1].y = fmin(r->stair->total_rise, profile[2].y);
	r->gone.at = NEW_N(r->arena, struct vec3, n);
	for (int i = 1; i <= n; i++)
		r->gone.at[r->gone.n++] =
			frame_place(r->flight->frame, vec3(profile[i % n].x, y, profile[i % n].y));
}

static void wall_before_add(struct room *r, struct box3 b)
{
	struct vec *profile = NEW_N(r->arena, struct vec, 2 * r->flight->step_count + 4);
	int n = steps_profile(r, b, profile);

	floor_before_add(r, b);
	room_add(r, EXISTING_WALL)->solids = board(r->arena, profile, n, vec(b.low.y, b.high.y));
}

static bool has_wall_rail(const struct room *r, enum which_side side)
{
	const struct job *job = r->stair->job;

	for (int i = 0; i < job->wall_rail_count; i++)
		if (job->wall_rails[i].side == side)
			return true;
	return false;
}

static void wall_add(struct room *r, struct box3 b, enum which_side from)
{
	enum which_side side =
		(b.low.y + b.high.y) / 2 < r->stair->width / 2 ? ON_THE_RIGHT : ON_THE_LEFT;

	b.low.x = fmax(b.low.x, r->made.low.x - ALONG);
	b.high.x = fmin(b.high.x, r->made.high.x + ALONG);
	if (side != from && has_level_runs(r) && b.high.z > r->stair->total_rise)
		b.high.z = fmax(b.high.z, r->made.high.z);
	if (side != from) {
		wall_behind_add(r, b);
		return;
	}
	wall_before_add(r, b);
	if (has_wall_rail(r, side))
		wall_gone_keep(r, b);
}

/* The lump of wall that a tread is cut out for is no higher than that tread. */
static bool is_wall(const struct room *r, const struct part *p)
{
	return p->existing == EXISTING_WALL && p->size.thickness > r->stair->unit_rise;
}

/* ---- all of it ---- */

static struct box3 box_made(const struct part *parts, struct frame axes)
{
	struct box3 b = box3_empty();

	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; i < p->count && !p->existing; i++) {
			struct frame at = frame_within(axes, p->places[i]);
			for (const struct solid *s = p->solids; s; s = s->next)
				for (int k = 0; k < s->n; k++) {
					b = box3_add(b, frame_place(at, s->a[k]));
					b = box3_add(b, frame_place(at, s->b[k]));
				}
		}
	return b;
}

struct picture_room picture_room(struct arena *a, const struct sheet_context *c,
	enum which_side from)
{
	const struct flight *f = &c->stair->flights[0];
	struct room r = { .arena = a,
		.stair = c->stair,
		.flight = f,
		.made = box_made(c->parts, f->frame) };

	floors_add(&r, c->parts);
	for (const struct part *p = c->parts; p; p = p->next)
		if (is_wall(&r, p))
			wall_add(&r, solids_extent(p->solids), from);
	return (struct picture_room){ r.first, r.last, r.gone };
}
