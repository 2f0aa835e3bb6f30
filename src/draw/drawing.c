#include "pitchboard/drawing.h"

#include <string.h>

struct drawing *drawing_new(struct arena *a, enum drawing_use use, double width, double height)
{
	struct drawing *g = NEW(a, struct drawing);

	*g = (struct drawing){ .arena = a, .use = use, .width = width, .height = height };
	g->tail = &g->first;
	return g;
}

static void add(struct drawing *g, struct mark mark)
{
	struct mark *m = NEW(g->arena, struct mark);

	*m = mark;
	*g->tail = m;
	g->tail = &m->next;
	g->mark_count++;
}

static const struct vec *keep(struct drawing *g, const struct vec *points, int n)
{
	struct vec *copy = NEW_N(g->arena, struct vec, n);

	memcpy(copy, points, sizeof(*points) * (size_t)n);
	return copy;
}

void draw_line(struct drawing *g, enum pen pen, struct vec from, struct vec to)
{
	draw_polyline(g, pen, (const struct vec[]){ from, to }, 2);
}

/* With points of its own; fewer than two are no line. */
static void add_line(struct drawing *g, struct mark m)
{
	if (m.line.n < 2)
		return;
	m.kind = MARK_LINE;
	m.line.points = keep(g, m.line.points, m.line.n);
	add(g, m);
}

void draw_polyline(struct drawing *g, enum pen pen, const struct vec *points, int n)
{
	add_line(g, (struct mark){ .line = { pen, points, n, false } });
}

void draw_polygon(struct drawing *g, enum pen pen, const struct vec *points, int n)
{
	add_line(g, (struct mark){ .line = { pen, points, n, true } });
}

void draw_box(struct drawing *g, enum pen pen, struct box b)
{
	const struct vec corners[] = { { b.x0, b.y0 }, { b.x1, b.y0 }, { b.x1, b.y1 },
		{ b.x0, b.y1 } };

	draw_polygon(g, pen, corners, 4);
}

void draw_arc(struct drawing *g, enum pen pen, struct vec centre, double radius, double from,
	double to)
{
	struct mark m = { .kind = MARK_ARC };

	m.arc.pen = pen;
	m.arc.centre = centre;
	m.arc.radius = radius;
	m.arc.from = from;
	m.arc.to = to;
	add(g, m);
}

void draw_circle(struct drawing *g, enum pen pen, struct vec centre, double radius)
{
	draw_arc(g, pen, centre, radius, 0, 2 * PI);
}

void draw_fill(struct drawing *g, enum shade shade, const struct vec *points, int n)
{
	struct mark m = { .kind = MARK_FILL };

	m.fill.shade = shade;
	m.fill.points = keep(g, points, n);
	m.fill.n = n;
	add(g, m);
}

void draw_text(struct drawing *g, struct vec at, double height, enum align align, const char *text)
{
	draw_text_styled(g, at, height, 0, align, LETTER_REGULAR, text);
}

void draw_text_styled(struct drawing *g, struct vec at, double height, double angle,
	enum align align, enum letter_style style, const char *text)
{
	struct mark m = { .kind = MARK_TEXT };

	if (!text || !*text)
		return;
	m.text.at = at;
	m.text.height = height;
	m.text.angle = angle;
	m.text.align = align;
	m.text.style = style;
	m.text.text = arena_strdup(g->arena, text);
	add(g, m);
}

static void shift_points(const struct vec *points, int n, struct vec by)
{
	/* every list of points on a drawing is a copy that the drawing owns (see keep) */
	struct vec *own = (struct vec *)points;

	for (int i = 0; i < n; i++)
		own[i] = vec_add(own[i], by);
}

static void shift(struct mark *k, struct vec by)
{
	switch (k->kind) {
	case MARK_LINE: shift_points(k->line.points, k->line.n, by); break;
	case MARK_ARC: k->arc.centre = vec_add(k->arc.centre, by); break;
	case MARK_FILL: shift_points(k->fill.points, k->fill.n, by); break;
	case MARK_TEXT: k->text.at = vec_add(k->text.at, by); break;
	}
}

void drawing_take(struct drawing *g, struct drawing *from, struct vec by)
{
	for (struct mark *k = from->first; k; k = k->next)
		shift(k, by);
	if (!from->first)
		return;
	*g->tail = from->first;
	g->tail = from->tail;
	g->mark_count += from->mark_count;
	from->first = NULL;
	from->tail = &from->first;
	from->mark_count = 0;
}

void drawing_raise(struct drawing *g, struct mark_run run)
{
	struct mark *first = *run.from;

	if (run.from == run.to || run.to == g->tail)
		return;
	*run.from = *run.to;
	*g->tail = first;
	g->tail = run.to;
	*g->tail = NULL;
}

static struct mark *mark_keep(struct drawing *g, struct mark m)
{
	struct mark *kept = NEW(g->arena, struct mark);

	m.next = NULL;
	switch (m.kind) {
	case MARK_LINE: m.line.points = keep(g, m.line.points, m.line.n); break;
	case MARK_FILL: m.fill.points = keep(g, m.fill.points, m.fill.n); break;
	case MARK_TEXT: m.text.text = arena_strdup(g->arena, m.text.text); break;
	case MARK_ARC: break;
	}
	*kept = m;
	return kept;
}

static const char *word_keep(struct arena *a, const char *word)
{
	return word ? arena_strdup(a, word) : NULL;
}

static const char *const *words_keep(struct arena *a, const char *const *words)
{
	int n = 0;

	while (words && words[n])
		n++;
	const char **kept = NEW_N(a, const char *, n + 1);
	for (int i = 0; i < n; i++)
		kept[i] = arena_strdup(a, words[i]);
	return words ? kept : NULL;
}

static struct drawing *drawing_keep(struct arena *a, const struct drawing *g)
{
	struct drawing *kept = NEW(a, struct drawing);

	*kept = *g;
	kept->arena = a;
	kept->id = word_keep(a, g->id);
	kept->title = word_keep(a, g->title);
	kept->scale = word_keep(a, g->scale);
	kept->set = word_keep(a, g->set);
	kept->file = word_keep(a, g->file);
	kept->svg = word_keep(a, g->svg);
	kept->shows = words_keep(a, g->shows);
	kept->tail = &kept->first;
	for (const struct mark *m = g->first; m; m = m->next) {
		*kept->tail = mark_keep(kept, *m);
		kept->tail = &(*kept->tail)->next;
	}
	return kept;
}

bool drawing_shows(const struct drawing *g, const char *mark)
{
	for (int i = 0; g->shows && g->shows[i]; i++)
		if (strcmp(g->shows[i], mark) == 0)
			return true;
	return false;
}

struct drawing **drawings_end(struct drawing **list)
{
	while (*list)
		list = &(*list)->next;
	return list;
}

struct drawing *drawings_keep(struct arena *a, const struct drawing *list)
{
	struct drawing *first = NULL, **tail = &first;

	for (; list; list = list->next) {
		*tail = drawing_keep(a, list);
		tail = &(*tail)->next;
	}
	*tail = NULL;
	return first;
}
