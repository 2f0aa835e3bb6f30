/*
 * What makes a sheet unreadable, counted: text on text, text under a heavy
 * line, a mark off the paper.
 *
 * Texts are rectangles, turned or not; two of them are apart when some side of
 * one has the other wholly beyond it.  Lines are the same with a rectangle of
 * no width.
 */
#include "draw/bounds.h"

/* Rectangles may share this much before it counts: letters have air around them. */
#define GRACE 0.05

struct checker {
	struct arena *arena;
	const struct drawing *drawing;
	struct measure measure;
	const char *report;
	int count;
};

static void fault(struct checker *c, const char *what, const char *one, const char *two)
{
	c->count++;
	c->report = arena_printf(c->arena, "%s%s: %s: \"%s\"%s%s%s\n", c->report,
		c->drawing->id ? c->drawing->id : "?", what, one, two ? " and \"" : "",
		two ? two : "", two ? "\"" : "");
}

static bool beyond_a_side(const struct vec *sides, int n, const struct vec *others, int m)
{
	for (int i = 0; i < n; i++) {
		struct vec from = sides[i], along = vec_unit(vec_sub(sides[(i + 1) % n], from));
		double nearest = INFINITY;
		for (int j = 0; j < m; j++)
			nearest = fmin(nearest, vec_cross(vec_sub(others[j], from), along));
		if (nearest > -GRACE)
			return true;
	}
	return false;
}

static bool rooms_touch(const struct text_room *a, const struct text_room *b)
{
	return !beyond_a_side(a->corner, 4, b->corner, 4) &&
		!beyond_a_side(b->corner, 4, a->corner, 4);
}

static bool line_crosses(const struct text_room *t, struct vec a, struct vec b)
{
	const struct vec ends[2] = { a, b };

	return !beyond_a_side(t->corner, 4, ends, 2) && !beyond_a_side(ends, 2, t->corner, 4);
}

struct lettered {
	const struct mark *mark;
	struct text_room room;
	struct box box;
};

static struct lettered lettered(const struct mark *text, struct measure m)
{
	struct lettered l = { text, text_room(text, m), box_empty() };

	for (int i = 0; i < 4; i++)
		l.box = box_add(l.box, l.room.corner[i]);
	return l;
}

static void check_line(struct checker *c, const struct lettered *t, const struct mark *line)
{
	int pieces = line->line.n - 1 + (line->line.closed ? 1 : 0);

	for (int i = 0; i < pieces; i++) {
		struct vec a = line->line.points[i], b = line->line.points[(i + 1) % line->line.n];
		struct box piece = box_grow(box_add(box_add(box_empty(), a), b), GRACE);
		if (!box_touches(t->box, piece) || !line_crosses(&t->room, a, b))
			continue;
		fault(c, "a line crosses", t->mark->text.text, NULL);
		return;
	}
}

static void check_texts(struct checker *c, const struct lettered *texts, int n)
{
	for (int i = 0; i < n; i++)
		for (int j = i + 1; j < n; j++)
			if (box_touches(texts[i].box, texts[j].box) &&
				rooms_touch(&texts[i].room, &texts[j].room))
				fault(c, "texts touch", texts[i].mark->text.text,
					texts[j].mark->text.text);
}

static bool off_the_paper(const struct drawing *g, struct box b)
{
	return b.x0 < -GRACE || b.y0 < -GRACE || b.x1 > g->width + GRACE ||
		b.y1 > g->height + GRACE;
}

int drawing_faults(struct arena *a, const struct drawing *g, struct measure m, const char **report)
{
	struct checker c = { .arena = a, .drawing = g, .measure = m, .report = "" };
	struct lettered *texts = NEW_N(a, struct lettered, g->mark_count + 1);
	struct box all = drawing_bounds(g, m);
	int n = 0;

	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT)
			texts[n++] = lettered(k, m);
	check_texts(&c, texts, n);
	for (const struct mark *k = g->first; k; k = k->next)
		for (int i = 0; k->kind == MARK_LINE && pen_is_heavy(k->line.pen) && i < n; i++)
			check_line(&c, &texts[i], k);
	if (!box_is_empty(all) && off_the_paper(g, all))
		fault(&c, "marks off the paper", "", NULL);
	if (report)
		*report = c.report;
	return c.count;
}
