/*
 * The picture of the whole stair.
 *
 * A parallel projection.  The eye is before the foot of the stair, on its more open side, and no
 * higher than the steps need to be seen from above; how far it goes round to the side is chosen by
 * the shape of the stair and of the room on paper.
 */
#include "sheets/picture.h"

#include "draw/bounds.h"
#include "draw/picture.h"
#include "sheets/picture_room.h"

/* Degrees: of the eye over the floor, and round from the foot of the stair: the least, the most,
 * and where there is no room to be filled. */
#define TILT 21
#define TURN_LEAST 38
#define TURN_MOST 53
#define TURN_STEP 3
#define TURN_KEY 44

/* Pieces less wide on paper are too slender for a bold line along either side. */
#define SLENDER 1.8

static bool is_in_picture(const struct part *p, const void *with)
{
	(void)with;
	return !p->existing || !p->kind;
}

/* Light comes from above, and from before the stair; where a wall is cut off it is dark. */
static enum shade shade_of(const struct part *p, struct vec3 normal)
{
	bool is_up = normal.z > 0.3, is_front = normal.x < -0.6;

	if (p->existing)
		return p->existing == EXISTING_WALL && (is_up || is_front) ? SHADE_MIDDLE
									   : SHADE_WHITE;
	if (normal.z > 0.6)
		return SHADE_WHITE;
	return is_front ? SHADE_PALE : SHADE_LIGHT;
}

static enum picture_line line_of(const struct part *p, double scale)
{
	bool is_lesser =
		p->kind == &part_infill || p->kind == &part_moulding || p->kind == &part_bracket;

	return is_lesser && p->size.width * scale < SLENDER ? PICTURE_LIGHT : PICTURE_BOLD;
}

/* ---- where the eye is ---- */

static struct frame eye_at(double turn, double tilt, enum which_side from)
{
	double y = from == ON_THE_RIGHT ? -1 : 1;
	struct vec3 w = vec3(-cos(turn) * cos(tilt), y * sin(turn) * cos(tilt), sin(tilt));
	struct vec3 u = vec3_unit(vec3_cross(vec3(0, 0, 1), w));

	return (struct frame){ .u = u, .v = vec3_cross(w, u), .w = w };
}

static struct vec point_seen(struct frame eye, struct vec3 p)
{
	return vec(vec3_dot(eye.u, p), vec3_dot(eye.v, p));
}

static struct box solid_box_seen(struct box b, const struct solid *s, struct frame place,
	struct frame eye)
{
	for (int i = 0; i < s->n; i++) {
		struct vec3 p = frame_place(place, s->a[i]), q = frame_place(place, s->b[i]);
		b = box_add(box_add(b, point_seen(eye, p)), point_seen(eye, q));
	}
	return b;
}

/* With the edge of the wall that is taken away. */
static struct box with_wall_gone(struct box b, const struct picture_wall *wall, struct frame eye)
{
	for (int i = 0; i < wall->n; i++)
		b = box_add(b, point_seen(eye, wall->at[i]));
	return b;
}

static struct box box_seen(const struct picture_room *house, struct frame eye)
{
	struct box b = with_wall_gone(box_empty(), &house->gone, eye);

	for (const struct part *p = house->first; p; p = p->next)
		for (int i = 0; i < p->count && is_in_picture(p, NULL); i++)
			for (const struct solid *s = p->solids; s; s = s->next)
				b = solid_box_seen(b, s, p->places[i], eye);
	return b;
}

static double scale_in(struct box b, struct box room)
{
	return fmin(box_width(room) / box_width(b), box_height(room) / box_height(b));
}

struct sight {
	struct frame eye;
	struct box room;
	double scale;
};

static struct sight sight_for(const struct picture_room *house, const struct box *rooms, int n,
	enum which_side from)
{
	struct sight best = { .scale = 0 };

	for (int turn = TURN_LEAST; turn <= TURN_MOST; turn += TURN_STEP) {
		struct frame eye = eye_at(turn * PI / 180, TILT * PI / 180, from);
		struct box seen = box_seen(house, eye);
		for (int i = 0; i < n; i++) {
			double scale = scale_in(seen, rooms[i]);
			if (scale > best.scale)
				best = (struct sight){ eye, rooms[i], scale };
		}
	}
	return best;
}

static int steps_open(const struct flight *f, enum which_side side)
{
	int n = 0;

	for (int i = 0; i < f->step_count; i++)
		n += side == ON_THE_RIGHT ? f->steps[i].open_right : f->steps[i].open_left;
	return n;
}

/* A guard up there, before a stair that is open on both sides, would stand in the way. */
static int runs_above(const struct job *job, enum which_side side)
{
	int n = 0;

	for (int i = 0; i < job->rail.level_run_count; i++)
		n += job->rail.level_runs[i].side == side;
	return n;
}

static enum which_side side_to_see(const struct stair *s)
{
	const struct flight *f = &s->flights[0];
	int left = steps_open(f, ON_THE_LEFT), right = steps_open(f, ON_THE_RIGHT);

	if (left != right)
		return left > right ? ON_THE_LEFT : ON_THE_RIGHT;
	return runs_above(s->job, ON_THE_LEFT) < runs_above(s->job, ON_THE_RIGHT) ? ON_THE_LEFT
										  : ON_THE_RIGHT;
}

struct frame picture_eye(const struct stair *s)
{
	return eye_at(TURN_KEY * PI / 180, TILT * PI / 180, side_to_see(s));
}

/* ---- on paper ---- */

static struct placing place_in(struct box b, struct box room)
{
	double scale = scale_in(b, room);
	struct vec middle = vec((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2);
	struct vec centre = vec((room.x0 + room.x1) / 2, (room.y0 + room.y1) / 2);

	return (struct placing){ vec_sub(centre, vec_scale(middle, scale)), scale };
}

static void draw_wall_gone(struct drawing *g, const struct picture_wall *wall, struct frame eye,
	struct placing at)
{
	struct vec *line = NEW_N(g->arena, struct vec, wall->n);

	for (int i = 0; i < wall->n; i++)
		line[i] = placing_at(at, point_seen(eye, wall->at[i]));
	if (wall->n > 0)
		draw_polyline(g, PEN_HIDDEN, line, wall->n);
}

void sheet_picture(struct sheet *s, const struct box *rooms, int n)
{
	struct arena *scratch = arena_new();
	enum which_side from = side_to_see(s->context->stair);
	struct picture_room house = picture_room(scratch, s->context, from);

	/* the stair's own parts go on after those of the room, which is not shown without them */
	house.last->next = (struct part *)s->context->parts;
	struct sight sight = sight_for(&house, rooms, n, from);
	struct picture picture = { sight.eye, shade_of };
	struct view_spec spec = { .picture = &picture, .shows = is_in_picture };
	struct view v = view_make(scratch, house.first, spec);
	struct placing at = place_in(with_wall_gone(v.box, &house.gone, sight.eye), sight.room);

	picture_draw(s->drawing, &v, at, line_of);
	draw_wall_gone(s->drawing, &house.gone, sight.eye, at);
	arena_free(scratch);
}
