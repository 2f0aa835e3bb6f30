#include "pitchboard/landing.h"

/* Does a wall go along the side where the landing meets it?  A side that is open to the last step
 * is open to the top. */
static bool is_walled(const struct stair *s, const struct job_side *side, enum landing_place place)
{
	if (side->kind == SIDE_WALL)
		return true;
	if (place == LANDING_FOOT)
		return side->from_step > 1;
	return side->to_step > 0 && side->to_step < s->treads;
}

/* How far the landing goes past the right-hand limit of the stair. */
static double past_right(const struct stair *s, enum landing_place place, double over)
{
	bool right = is_walled(s, &s->job->stair.right, place);
	bool left = is_walled(s, &s->job->stair.left, place);

	if (right == left)
		return over / 2;
	return right ? 0 : over;
}

/* x of the riser's face, and the way from there over the landing: 1 up the flight, -1 down. */
static double riser_of(const struct stair *s, enum landing_place place)
{
	return place == LANDING_FOOT ? 0 : s->flights[0].total_run;
}

static double away(enum landing_place place)
{
	return place == LANDING_FOOT ? -1 : 1;
}

struct box landing_box(const struct stair *s, enum landing_place place)
{
	const struct job_landing *l = &s->job->landings.at[place];
	double over = l->width > 0 ? l->width - s->width : 0;
	double right = -past_right(s, place, over);
	double face = riser_of(s, place), end = face + away(place) * l->depth;

	return (struct box){ fmin(face, end), right, fmax(face, end), right + s->width + over };
}

struct door_swing door_swing(const struct stair *s, enum landing_place place,
	const struct job_door *door)
{
	struct box b = landing_box(s, place);
	double face = riser_of(s, place), out = away(place);
	double back = door->lies == LEAF_NEARER ? -1 : 1;
	struct door_swing w = { .radius = door->leaf };

	switch (door->wall) {
	case LANDING_END:
		w.hinge = vec(out < 0 ? b.x0 : b.x1, b.y0 + door->hinge);
		w.closed = vec(0, back);
		w.opened = vec(-out, 0);
		break;
	case LANDING_RIGHT:
	case LANDING_LEFT:
		w.hinge = vec(face + out * door->hinge, door->wall == LANDING_RIGHT ? b.y0 : b.y1);
		w.closed = vec(out * back, 0);
		w.opened = vec(0, door->wall == LANDING_RIGHT ? 1 : -1);
		break;
	}
	if (door->opens == DOOR_OUT)
		w.opened = vec_scale(w.opened, -1);
	return w;
}

/* How far beside the hinge, on the side that the leaf turns over, the stair's width begins. */
static double beside(const struct stair *s, const struct door_swing *w)
{
	double way = w->closed.y + w->opened.y;
	double from = way > 0 ? -w->hinge.y : w->hinge.y - s->width;
	double to = way > 0 ? s->width - w->hinge.y : w->hinge.y;

	return to > 0 ? fmax(from, 0) : INFINITY;
}

double door_clear(const struct stair *s, enum landing_place place, const struct job_door *door)
{
	struct door_swing w = door_swing(s, place, door);
	double off = beside(s, &w), out = away(place);
	double hinge = (w.hinge.x - riser_of(s, place)) * out;
	bool turns_to_stair = (w.closed.x + w.opened.x) * out < 0;

	if (door->opens == DOOR_OUT || off >= w.radius)
		return INFINITY;
	return turns_to_stair ? hinge - sqrt(w.radius * w.radius - off * off) : hinge;
}
