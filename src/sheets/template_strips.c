#include "sheets/template_strips.h"

#define NARROWEST 200.0 /* its name and what it marks stand on it */
#define BEYOND 90.0     /* the lettering of a tick at its end */

/* A strip that is in one piece is no longer than what is on it. */
struct tiling strip_tiling(struct arena *a, const struct template_sheets *s,
	const struct pattern *p, const char *prefix)
{
	double height = box_height(p->box) + 2 * TILE_EDGE;
	double length = fmax(box_width(p->box) + 2 * TILE_EDGE + BEYOND, NARROWEST);
	struct vec window = vec(fmin(length, window_size(s->place).x), height);
	struct tiling t = tiling_make(a, p, window, TILE_LAP);

	t.names = TILES_IN_A_ROW;
	t.prefix = prefix;
	return t;
}

static double strip_height(const struct template_sheets *s, const struct strip *t)
{
	return t->tiling->window.y / s->place.correction.y;
}

/* How many of them stand on one sheet, from this one on. */
static int strips_that_fit(const struct template_sheets *s, struct strips l, int first)
{
	double room = box_height(s->place.frame) + STRIP_GAP;
	int n = 0;

	while (first + n < l.n) {
		room -= strip_height(s, &l.strip[first + n]) + STRIP_GAP;
		if (room < 0 && n > 0)
			break;
		n++;
	}
	return n;
}

int strips_a_sheet(const struct template_sheets *s, struct strips l)
{
	return strips_that_fit(s, l, 0);
}

/* Hanging from `top`. */
static struct window_place strip_place(const struct template_sheets *s, const struct strip *t,
	double top)
{
	struct window_place place = s->place;

	place.frame.x1 = place.frame.x0 + t->tiling->window.x / place.correction.x;
	place.frame.y1 = top;
	place.frame.y0 = top - strip_height(s, t);
	return place;
}

static struct drawing *strip_sheet(const struct template_sheets *s, struct strips l, int first,
	const char *prefix)
{
	struct arena *a = s->arena;
	int after = first + strips_that_fit(s, l, first);
	double top = s->place.frame.y1;
	const char *name = arena_printf(a, "%s %d to %d", prefix, first + 1, after);
	struct page page = template_page(s, arena_printf(a, "%s/%s", template_id(a, s->job), name),
		arena_printf(a, "Template %s, %s", s->job->mark, name));

	sheet_checks(s, &page, arena_printf(a, "%s  %s", s->job->mark, name));
	for (int i = first; i < after; i++) {
		const struct strip *t = &l.strip[i];
		const struct wording heading[] = { { t->name, TEMPLATE_LETTER, LETTER_BOLD },
			{ t->title, TEMPLATE_LETTER, LETTER_REGULAR } };
		window_draw(&page, strip_place(s, t, top), t->tiling, t->at, heading,
			t->title ? 2 : 1);
		top -= strip_height(s, t) + STRIP_GAP;
	}
	return page.drawing;
}

struct drawing *strips_draw(const struct template_sheets *s, struct strips l, const char *prefix)
{
	struct drawing *list = NULL;

	for (int first = 0; first < l.n; first += strips_that_fit(s, l, first))
		*drawings_end(&list) = strip_sheet(s, l, first, prefix);
	return list;
}
