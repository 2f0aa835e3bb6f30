/*
 * A drawing as text, a mark a line: for goldens, bug reports and `--dump`.
 */
#include "pitchboard/drawing.h"

#include "base/text.h"

static const char *const align_names[] = { "left", "middle", "right" };
static const char *const shade_names[] = { "black", "grey", "middle", "light", "pale", "white" };

static void add_points(struct text *t, const struct vec *p, int n)
{
	for (int i = 0; i < n; i++)
		text_add(t, " %.10g,%.10g", text_tidy(p[i].x), text_tidy(p[i].y));
	text_put(t, "\n");
}

static void add_arc(struct text *t, const struct mark *k)
{
	text_add(t, "arc %s %g,%g r %g from %g to %g\n", pen_name(k->arc.pen),
		text_tidy(k->arc.centre.x), text_tidy(k->arc.centre.y), text_tidy(k->arc.radius),
		text_tidy(k->arc.from), text_tidy(k->arc.to));
}

static void add_text(struct text *t, const struct mark *k)
{
	text_add(t, "text %g,%g %g %s%s turned %g \"%s\"\n", text_tidy(k->text.at.x),
		text_tidy(k->text.at.y), text_tidy(k->text.height), align_names[k->text.align],
		k->text.style == LETTER_BOLD ? " bold" : "", text_tidy(k->text.angle),
		k->text.text);
}

static void add_mark(struct text *t, const struct mark *k)
{
	switch (k->kind) {
	case MARK_LINE:
		text_add(t, "%s %s", k->line.closed ? "polygon" : "line", pen_name(k->line.pen));
		add_points(t, k->line.points, k->line.n);
		return;
	case MARK_ARC: add_arc(t, k); return;
	case MARK_FILL:
		text_add(t, "fill %s", shade_names[k->fill.shade]);
		add_points(t, k->fill.points, k->fill.n);
		return;
	case MARK_TEXT: add_text(t, k); return;
	}
}

const char *drawing_dump(struct arena *a, const struct drawing *g)
{
	struct text t = { .arena = a };

	text_add(&t, "drawing %s \"%s\" %g x %g\n", g->id ? g->id : "-", g->title ? g->title : "",
		text_tidy(g->width), text_tidy(g->height));
	for (const struct mark *k = g->first; k; k = k->next)
		add_mark(&t, k);
	return text_chars(&t);
}
