/*
 * The marks of all pieces that a side view shows, in balloons: on two lines along
 * the pitch, over the stair for what stands over the nosing line and under it for
 * the rest, and on a level one over the view for what stands on the upper floor.
 */
#include "draw/bounds.h"
#include "sheets/balloons.h"
#include "sheets/side_drafting.h"
#include "sheets/sights.h"

/* From the view to its balloons, in heights of a capital. */
#define CLEAR 3.0

/* Posts and caps reach no higher than so much over the top of a raked rail, in the house. */
#define OVER_RAIL 350.0

/* How far a point of the view stands over the nosing line, square to it. */
static double over_nosing(const struct drafting *d, struct vec p)
{
	double x = p.x / d->scale, along = side_high(d) == DIM_RIGHT ? x : -x;

	return (p.y / d->scale - slope_at(d->nosing, along - d->flight->frame.origin.x)) *
		cos(d->flight->pitch) * d->scale;
}

/* On paper, over the nosing line: what is farther off stands on the upper floor. */
static double raked_room(const struct drafting *d)
{
	return (d->stair->job->rail.height + OVER_RAIL) * cos(d->flight->pitch) * d->scale;
}

/* On paper: the farthest that anything on the rake reaches over the nosing line, or under it. */
static double reach(const struct drafting *d, const struct view *v, double way)
{
	double most = 0, room = raked_room(d);

	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *s = &v->strokes[i];
		double a = way * over_nosing(d, vec_scale(s->a, d->scale));
		double b = way * over_nosing(d, vec_scale(s->b, d->scale));
		if (sight_is_seen(s) && fmax(a, b) < room)
			most = fmax(most, fmax(a, b));
	}
	return most;
}

static struct vec pitch_direction(const struct drafting *d)
{
	double p = d->flight->pitch;

	return side_high(d) == DIM_RIGHT ? vec(cos(p), sin(p)) : vec(cos(p), -sin(p));
}

/* How they stand: the lines along the pitch as long as they like, or no longer than what they name,
 * so that none comes to stand before what is on the upper floor; or all that is not under the stair
 * on the level. */
enum arrangement { ALONG_PITCH, KEPT_ALONG_PITCH, ON_THE_LEVEL, ARRANGEMENTS };

/* All balloons of a view, in the order in which they are drawn. */
struct balloons {
	const struct view *shown;
	struct leader *list; /* over the stair, on the upper floor, under the stair */
	int over, level, under;
};

/* Between what is first named and what is last. */
static void keep_along(struct balloon_line *line, const struct leader *list, int n, double room)
{
	double low = INFINITY, high = -INFINITY;

	for (int i = 0; i < n; i++) {
		double along = vec_dot(vec_sub(list[i].points_at, line->from), line->along);
		low = fmin(low, along);
		high = fmax(high, along);
	}
	line->low = low - room;
	line->high = high + room;
}

/* Over the stair or under it, beside what the view shows. */
static void set_raked(const struct drafting *d, const struct balloons *b, struct leader *list,
	int n, double way, enum arrangement how)
{
	struct hand h = d->sheet->hand;
	struct vec along = pitch_direction(d), out = vec_scale(vec_left(along), way);
	struct vec nosing = side_at(d, 0, slope_at(d->nosing, 0));
	struct balloon_line line = { .along = along, .out = out };

	if (n == 0)
		return;
	line.from = vec_add(nosing, vec_scale(out, reach(d, b->shown, way) + CLEAR * h.letter));
	line.length =
		vec_length(vec(box_width(b->shown->box), box_height(b->shown->box))) * d->scale;
	if (how == KEPT_ALONG_PITCH)
		keep_along(&line, list, n, balloon_radius(h));
	balloons_set(h, list, n, line);
}

/* Over the whole view, on the level. */
static void set_level(const struct drafting *d, struct leader *list, int n, double over,
	double length)
{
	struct hand h = d->sheet->hand;
	struct balloon_line line = { .from = vec(0, over + CLEAR * h.letter),
		.along = vec(1, 0),
		.out = vec(0, 1),
		.length = length };

	balloons_set(h, list, n, line);
}

static double top_of(const struct leader *list, int n, double radius)
{
	double top = -INFINITY;

	for (int i = 0; i < n; i++)
		top = fmax(top, list[i].at.y + radius);
	return top;
}

/* How many of them are in each other's way then. */
static int set_all(const struct drafting *d, const struct balloons *b, enum arrangement how)
{
	struct hand h = d->sheet->hand;
	struct leader *level = b->list + b->over, *under = level + b->level;
	double top = b->shown->box.y1 * d->scale;

	if (how == ON_THE_LEVEL) {
		set_level(d, b->list, b->over + b->level, top, box_width(b->shown->box) * d->scale);
	} else {
		set_raked(d, b, b->list, b->over, 1, how);
		top = fmax(top, top_of(b->list, b->over, balloon_radius(h)));
		set_level(d, level, b->level, top, 0);
	}
	set_raked(d, b, under, b->under, -1, how == ALONG_PITCH ? ALONG_PITCH : KEPT_ALONG_PITCH);
	return balloons_crowd(h, b->list, b->over + b->level + b->under);
}

/* The first that leaves the fewest in each other's way. */
static void set_best(const struct drafting *d, const struct balloons *b)
{
	enum arrangement best = ALONG_PITCH;
	int least = set_all(d, b, best);

	for (int i = KEPT_ALONG_PITCH; i < ARRANGEMENTS && least > 0; i++) {
		int crowd = set_all(d, b, (enum arrangement)i);
		if (crowd < least) {
			least = crowd;
			best = (enum arrangement)i;
		}
	}
	set_all(d, b, best);
}

/* On which of the lines it stands: over the stair, on the upper floor, under the stair. */
static int line_of(const struct drafting *d, const struct leader *l)
{
	double off = over_nosing(d, l->points_at);

	if (off > raked_room(d))
		return 1;
	return off > CLEAR * d->sheet->hand.letter / 2 ? 0 : 2;
}

static struct balloons gather(const struct drafting *d, const struct view *shown)
{
	struct arena *a = d->sheet->drawing->arena;
	struct sights s = sights_of(a, d->what->context->parts, shown, d->scale);
	struct balloons b = { .shown = shown, .list = NEW_N(a, struct leader, s.n + 1) };
	int count[3] = { 0 }, n = 0;

	for (int line = 0; line < 3; line++)
		for (int i = 0; i < s.n; i++)
			if (line_of(d, &s.list[i]) == line) {
				b.list[n++] = s.list[i];
				count[line]++;
			}
	b.over = count[0];
	b.level = count[1];
	b.under = count[2];
	return b;
}

struct box side_draw_balloons(const struct drafting *d, const struct view *shown, struct box view)
{
	struct balloons b = gather(d, shown);

	set_best(d, &b);
	return box_join(view, balloons_draw(d->sheet->hand, b.list, b.over + b.level + b.under));
}
