#include "pitchboard/drawing.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

static const char *const pen_names[PEN_COUNT] = {
	[PEN_CUT] = "cut",
	[PEN_OUTLINE] = "outline",
	[PEN_FINE] = "fine",
	[PEN_EXISTING] = "existing",
	[PEN_HIDDEN] = "hidden",
	[PEN_ABOVE] = "above",
	[PEN_CENTRE] = "centre",
	[PEN_DIM] = "dim",
	[PEN_HATCH] = "hatch",
	[PEN_TABLE] = "table",
	[PEN_FRAME] = "frame",
	[PEN_TEMPLATE] = "template",
	[PEN_GUIDE] = "guide",
};

static const char *const align_names[] = { "left", "middle", "right" };
static const char *const shade_names[] = { "black", "grey", "light", "white" };

/* To a thousandth, and never "-0". */
static double tidy(double v)
{
	double r = round(v * 1000) / 1000;

	return r == 0 ? 0 : r;
}

static const char *points_text(struct arena *a, const struct vec *p, int n)
{
	char *s = arena_alloc(a, 1, (size_t)n * 40 + 1);
	size_t at = 0;

	for (int i = 0; i < n; i++)
		at += (size_t)snprintf(s + at, 40, " %.10g,%.10g", tidy(p[i].x), tidy(p[i].y));
	return s;
}

static const char *mark_text(struct arena *a, const struct mark *k)
{
	switch (k->kind) {
	case MARK_LINE:
		return arena_printf(a, "%s %s%s\n", k->line.closed ? "polygon" : "line",
			pen_names[k->line.pen], points_text(a, k->line.points, k->line.n));
	case MARK_ARC:
		return arena_printf(a, "arc %s %g,%g r %g from %g to %g\n", pen_names[k->arc.pen],
			tidy(k->arc.centre.x), tidy(k->arc.centre.y), tidy(k->arc.radius),
			tidy(k->arc.from), tidy(k->arc.to));
	case MARK_FILL:
		return arena_printf(a, "fill %s%s\n", shade_names[k->fill.shade],
			points_text(a, k->fill.points, k->fill.n));
	case MARK_TEXT:
		return arena_printf(a, "text %g,%g %g %s%s turned %g \"%s\"\n", tidy(k->text.at.x),
			tidy(k->text.at.y), tidy(k->text.height), align_names[k->text.align],
			k->text.style == LETTER_BOLD ? " bold" : "", tidy(k->text.angle),
			k->text.text);
	}
	return "";
}

const char *drawing_dump(struct arena *a, const struct drawing *g)
{
	const char **lines = NEW_N(a, const char *, g->mark_count + 1);
	size_t length = 0;
	int n = 0;

	for (const struct mark *k = g->first; k; k = k->next) {
		lines[n] = mark_text(a, k);
		length += strlen(lines[n++]);
	}
	const char *head = arena_printf(a, "drawing %s \"%s\" %g x %g\n", g->id ? g->id : "-",
		g->title ? g->title : "", tidy(g->width), tidy(g->height));
	char *text = arena_alloc(a, 1, strlen(head) + length + 1);
	char *at = stpcpy(text, head);
	for (int i = 0; i < n; i++)
		at = stpcpy(at, lines[i]);
	return text;
}
