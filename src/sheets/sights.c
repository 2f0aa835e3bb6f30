#include "sheets/sights.h"

bool sight_is_seen(const struct stroke *s)
{
	return s->pen != PEN_HIDDEN && !part_is_existing(s->part);
}

static bool is_in_sight(const struct view *v, const char *mark)
{
	for (int i = 0; i < v->stroke_count; i++)
		if (v->strokes[i].part->mark == mark && sight_is_seen(&v->strokes[i]))
			return true;
	return false;
}

/* Strips and rings of a newel's panels are named on its detail: here they would hide the rest. */
static bool wants_balloon(const struct part *p)
{
	return p->kind != &part_newel || p->newel || p->cap;
}

static struct vec middle(const struct stroke *s)
{
	return vec((s->a.x + s->b.x) / 2, (s->a.y + s->b.y) / 2);
}

/* The middle of that edge of the part which is nearest to where one would like to point; a longer
 * edge is worth going a little further for. */
static struct vec point_on(const struct view *v, const char *mark, double wanted)
{
	struct vec best = { 0, 0 };
	double least = INFINITY;

	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *s = &v->strokes[i];
		if (s->part->mark != mark || !sight_is_seen(s))
			continue;
		double off = fabs(middle(s).x - wanted) - vec_length(vec_sub(s->a, s->b));
		if (off < least) {
			least = off;
			best = middle(s);
		}
	}
	return best;
}

struct sights sights_of(struct arena *a, const struct part *parts, const struct view *v,
	double scale)
{
	int n = 0;

	for (const struct part *p = parts; p; p = p->next)
		n++;
	struct sights s = { NEW_N(a, struct leader, n + 1), 0 };
	for (const struct part *p = parts; p; p = p->next)
		if (wants_balloon(p) && is_in_sight(v, p->mark))
			s.list[s.n++].text = p->mark;
	for (int i = 0; i < s.n; i++) {
		double wanted = v->box.x0 + (i + 0.5) / s.n * box_width(v->box);
		s.list[i].points_at = vec_scale(point_on(v, s.list[i].text, wanted), scale);
	}
	return s;
}
