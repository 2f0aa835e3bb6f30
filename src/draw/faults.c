/*
 * What makes a sheet unreadable, counted: text on text, text under a heavy
 * line, a ring or a fill, a mark off the paper.
 */
#include "draw/bounds.h"

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

struct lettered {
	const struct mark *mark;
	struct text_room room;
	struct box box;
	int ground; /* number of the white fill that it stands on: what was drawn before that is
		       gone */
};

static struct lettered lettered(const struct mark *text, struct measure m)
{
	struct text_room room = text_room(text, m);

	return (struct lettered){ text, room, room_box(&room), 0 };
}

static bool stands_on(const struct lettered *t, const struct mark *fill)
{
	for (int i = 0; i < 4; i++)
		if (!fill_holds(fill, t->room.corner[i]))
			return false;
	return true;
}

/* The last white fill drawn before the text that it stands on whole. */
static void find_ground(const struct drawing *g, struct lettered *t)
{
	int number = 1;

	for (const struct mark *k = g->first; k && k != t->mark; k = k->next, number++)
		if (k->kind == MARK_FILL && k->fill.shade == SHADE_WHITE && stands_on(t, k))
			t->ground = number;
}

/* Lettering stands on top of every fill: on a black one it cannot be read, over the edge of a white
 * one it runs into what that was cleared for. */
static bool is_spoilt(const struct lettered *t, const struct mark *fill)
{
	switch (fill->fill.shade) {
	case SHADE_BLACK: return fill_touches(fill, &t->room, t->box);
	case SHADE_WHITE: return fill_touches(fill, &t->room, t->box) && !stands_on(t, fill);
	case SHADE_GREY:
	case SHADE_MIDDLE:
	case SHADE_LIGHT:
	case SHADE_PALE: break;
	}
	return false;
}

static void check_mark(struct checker *c, const struct lettered *t, const struct mark *k)
{
	if (k->kind == MARK_FILL && is_spoilt(t, k))
		fault(c, "a fill touches", t->mark->text.text, NULL);
	if (mark_is_heavy(k) && mark_crosses(k, &t->room, t->box))
		fault(c, k->kind == MARK_LINE ? "a line crosses" : "an arc crosses",
			t->mark->text.text, NULL);
}

/* Most marks spoil nothing, and those that may are far from most lettering. */
static void check_marks(struct checker *c, const struct lettered *texts, int n)
{
	int number = 1;

	for (const struct mark *k = c->drawing->first; k; k = k->next, number++) {
		if (k->kind != MARK_FILL && !mark_is_heavy(k))
			continue;
		struct box box = box_grow(mark_box(k, c->measure), GRACE);
		for (int i = 0; i < n; i++)
			if (number > texts[i].ground && box_touches(box, texts[i].box))
				check_mark(c, &texts[i], k);
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
	for (int i = 0; i < n; i++)
		find_ground(g, &texts[i]);
	check_marks(&c, texts, n);
	if (!box_is_empty(all) && off_the_paper(g, all))
		fault(&c, "marks off the paper", "", NULL);
	if (report)
		*report = c.report;
	return c.count;
}
