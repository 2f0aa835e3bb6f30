/*
 * The marks of all pieces that a side view shows, in balloons: on two lines along
 * the pitch, over the stair for what stands over the nosing line and under it for
 * the rest, and on a level one over the view for what stands on the upper floor.
 */
#include "draw/bounds.h"
#include "sheets/balloons.h"
#include "sheets/side_drafting.h"

/* From the view to its balloons, in heights of a capital. */
#define CLEAR 3.0

/* Posts and caps reach no higher than so much over the top of a raked rail, in the house. */
#define OVER_RAIL 350.0

/* What is seen of one part: pieces of its edges. */
struct sight {
	const struct part *part;
	int strokes;
};

/* The balloons of one line. */
struct line_of {
	struct leader *list;
	int n;
};

static bool is_seen(const struct stroke *s)
{
	return s->pen != PEN_HIDDEN && !part_is_existing(s->part);
}

static int count_strokes(const struct view *v, const struct part *p)
{
	int n = 0;

	for (int i = 0; i < v->stroke_count; i++)
		n += v->strokes[i].part == p && is_seen(&v->strokes[i]);
	return n;
}

struct sights {
	struct sight *list;
	int n;
};

/* Strips and rings of a newel's panels are named on its detail: here they would hide the rest. */
static bool wants_balloon(const struct part *p)
{
	return p->kind != &part_newel || p->newel || p->cap;
}

/* The parts with something to see, in the order of the list. */
static struct sights sights_of(struct arena *a, const struct side_view *v, const struct view *shown)
{
	int parts = 0;

	for (const struct part *p = v->context->parts; p; p = p->next)
		parts++;
	struct sights s = { NEW_N(a, struct sight, parts + 1), 0 };
	for (const struct part *p = v->context->parts; p; p = p->next) {
		int strokes = wants_balloon(p) ? count_strokes(shown, p) : 0;
		if (strokes > 0)
			s.list[s.n++] = (struct sight){ p, strokes };
	}
	return s;
}

static struct vec middle(const struct stroke *s)
{
	return vec((s->a.x + s->b.x) / 2, (s->a.y + s->b.y) / 2);
}

/* The middle of that edge of the part which is nearest to where one would like to point; a longer
 * edge is worth going a little further for. */
static struct vec point_on(const struct view *v, const struct part *p, double wanted)
{
	struct vec best = { 0, 0 };
	double least = INFINITY;

	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *s = &v->strokes[i];
		if (s->part != p || !is_seen(s))
			continue;
		double off = fabs(middle(s).x - wanted) - vec_length(vec_sub(s->a, s->b));
		if (off < least) {
			least = off;
			best = middle(s);
		}
	}
	return best;
}

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
		if (is_seen(s) && fmax(a, b) < room)
			most = fmax(most, fmax(a, b));
	}
	return most;
}

static struct vec pitch_direction(const struct drafting *d)
{
	double p = d->flight->pitch;

	return side_high(d) == DIM_RIGHT ? vec(cos(p), sin(p)) : vec(cos(p), -sin(p));
}

/* Over the stair or under it, beside what the view shows. */
static struct box draw_line_of(const struct drafting *d, struct line_of l, const struct view *shown,
	double way)
{
	double clear = CLEAR * d->sheet->hand.letter;
	struct vec along = pitch_direction(d), out = vec_scale(vec_left(along), way);
	struct vec nosing = side_at(d, 0, slope_at(d->nosing, 0));
	struct balloon_line line = { .along = along, .out = out };

	line.from = vec_add(nosing, vec_scale(out, reach(d, shown, way) + clear));
	line.length = vec_length(vec(box_width(shown->box), box_height(shown->box))) * d->scale;
	balloons_set(d->sheet->hand, l.list, l.n, line);
	return balloons_draw(d->sheet->hand, l.list, l.n);
}

/* Over the whole view, on the level. */
static struct box draw_line_over(const struct drafting *d, struct line_of l, double y)
{
	struct balloon_line line = { .from = vec(0, y), .along = vec(1, 0), .out = vec(0, 1) };

	balloons_set(d->sheet->hand, l.list, l.n, line);
	return balloons_draw(d->sheet->hand, l.list, l.n);
}

struct box side_draw_balloons(const struct drafting *d, const struct view *shown, struct box view)
{
	struct arena *a = d->sheet->drawing->arena;
	double clear = CLEAR * d->sheet->hand.letter;
	struct sights s = sights_of(a, d->what, shown);
	struct line_of over = { NEW_N(a, struct leader, s.n + 1), 0 };
	struct line_of under = { NEW_N(a, struct leader, s.n + 1), 0 };
	struct line_of level = { NEW_N(a, struct leader, s.n + 1), 0 };

	for (int i = 0; i < s.n; i++) {
		const struct part *p = s.list[i].part;
		double share = (i + 0.5) / s.n;
		double wanted = shown->box.x0 + share * box_width(shown->box);
		struct leader b = { .text = p->mark,
			.points_at = vec_scale(point_on(shown, p, wanted), d->scale) };
		double off = over_nosing(d, b.points_at);
		struct line_of *l = off > raked_room(d) ? &level : off > clear / 2 ? &over : &under;
		l->list[l->n++] = b;
	}
	struct box raked = draw_line_of(d, over, shown, 1);
	double top = fmax(shown->box.y1 * d->scale, raked.y1);
	view = box_join(view, raked);
	view = box_join(view, draw_line_over(d, level, top + clear));
	return box_join(view, draw_line_of(d, under, shown, -1));
}
