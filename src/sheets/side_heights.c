/*
 * Heights that stand plumb in a side view, from one of its points up to another: of the raked rail
 * over a nosing, of guards over the upper floor.  Each has more than one place where it may stand.
 */
#include <string.h>

#include "draw/bounds.h"
#include "draw/clip.h"
#include "draw/place.h"
#include "pitchboard/rail.h"
#include "sheets/reader.h"
#include "sheets/side_drafting.h"
#include "sheets/words.h"

void side_draw_plumb(struct hand h, struct vec low, struct vec high)
{
	draw_line(h.g, PEN_DIM, low, high);
	draw_arrow_head(h.g, low, vec(0, -1), h.letter);
	draw_arrow_head(h.g, high, vec(0, 1), h.letter);
}

struct box side_with_text(struct box view, struct hand h, struct vec at, const char *text)
{
	double width = measure_width(h.measure, LETTER_REGULAR, h.letter, text);

	return box_add(box_add(view, at), vec_add(at, vec(width, h.letter)));
}

int side_spots_beside(struct spot *spots, int n, struct hand h, struct vec top, double width)
{
	for (int i = 0; i < n; i++) {
		int row = i / 2;
		double y = top.y - h.letter * 1.6 * row;
		spots[i] = (struct spot){ vec(top.x + (i % 2 ? -1.5 - width : 1.5), y), ALIGN_LEFT,
			0, SPOT_PLAIN };
	}
	return n;
}

struct dim_link side_plumb_link(struct vec low, struct vec high, const char *text)
{
	return (struct dim_link){ low.y, high.y, low.x, high.x, text };
}

bool side_plumb_strikes(struct hand h, struct vec low, struct vec high)
{
	return stroke_strikes_text(h.g, h.measure, low, high, h.letter);
}

/* A height lettered beside its plumb line, which goes on over what it measures. */
struct height {
	const char *text;
	double over;                /* how far its line goes on, in heights of a capital */
	const struct plumb *places; /* where it may stand, from the best one on */
	int n;
};

static struct vec end_of(const struct drafting *d, const struct height *h, struct plumb p)
{
	return vec(p.high.x, p.high.y + h->over * d->sheet->hand.letter);
}

/* Over the upper floor the lines of the opening's size go up from its ends. */
static bool strikes_opening(const struct drafting *d, struct vec at, double width)
{
	const double ends[] = { d->stair->opening.x0, d->stair->opening.x1 };
	bool strikes = false;

	if (at.y + d->sheet->hand.letter < side_at(d, 0, d->stair->total_rise).y)
		return false;
	for (int i = 0; i < 2; i++) {
		double x = side_at(d, ends[i], 0).x;
		strikes |= x > at.x && x < at.x + width;
	}
	return strikes;
}

/* How many of the spots, brought to the front, are clear of those; all where none is. */
static int spots_off_opening(const struct drafting *d, struct spot *spots, int n, double width)
{
	int kept = 0;

	for (int i = 0; i < n; i++)
		if (!strikes_opening(d, spots[i].at, width))
			spots[kept++] = spots[i];
	return kept > 0 ? kept : n;
}

/* Draws it with its figure where there is room for both; whether there was. */
static bool place_height(const struct drafting *d, const struct height *height, struct plumb p,
	struct box *view)
{
	struct hand h = d->sheet->hand;
	double width = measure_width(h.measure, LETTER_REGULAR, h.letter, height->text);
	struct vec end = end_of(d, height, p);
	struct spot spots[6];
	int n = side_spots_beside(spots, 6, h, vec(end.x, end.y - h.letter), width);

	if (side_plumb_strikes(h, p.low, end))
		return false;
	n = spots_off_opening(d, spots, n, width);
	n = side_spots_off_headroom_line(d, *view, spots, n, width);
	int i = place_text(h.g, h.measure, h.letter, spots, n, height->text);
	if (i < 0)
		return false;
	side_draw_plumb(h, p.low, p.high);
	draw_line(h.g, PEN_DIM, p.high, end);
	*view = side_with_text(*view, h, spots[i].at, height->text);
	return true;
}

/* At the first of its places that has room; else its figure goes into a lane beside the view, and
 * its line stands where it strikes no lettering. */
static struct box draw_height(const struct drafting *d, const struct height *height,
	struct box view, struct left_over *rest)
{
	struct hand h = d->sheet->hand;
	int clear = 0;

	for (int i = 0; i < height->n; i++)
		if (place_height(d, height, height->places[i], &view))
			return view;
	if (!rest)
		return view;
	while (clear < height->n &&
		side_plumb_strikes(h, height->places[clear].low, height->places[clear].high))
		clear++;
	struct plumb p = height->places[clear < height->n ? clear : 0];
	if (clear < height->n)
		side_draw_plumb(h, p.low, p.high);
	rest->links[rest->n++] = side_plumb_link(p.low, p.high, height->text);
	return view;
}

/* How far a part shows across the view; empty: nowhere. */
static struct box shown_of(const struct side_view *v, const struct part *p)
{
	struct box b = box_empty();

	for (int i = 0; i < v->view.stroke_count; i++) {
		const struct stroke *s = &v->view.strokes[i];
		if (s->part == p && s->pen != PEN_HIDDEN)
			b = box_add(box_add(b, s->a), s->b);
	}
	return b;
}

/* Does an edge of the part show within a millimetre of there, or does something stand before it? */
static bool shows_at(const struct drafting *d, const struct part *p, struct vec on_paper)
{
	struct vec at = vec_scale(on_paper, 1 / d->scale);
	struct box near = box_grow(box_add(box_empty(), at), 1);

	for (int i = 0; i < d->what->view.stroke_count; i++) {
		const struct stroke *s = &d->what->view.strokes[i];
		if (s->part == p && s->pen != PEN_HIDDEN && clip_segment(near, s->a, s->b).some)
			return true;
	}
	return false;
}

/* Brings those that end on a top to be seen before the others, else in the order they have: up to
 * a rail behind the floor a height seems to be that of the ceiling. */
static void shown_first(const struct drafting *d, const struct part *rail, struct plumb *places,
	int n)
{
	int shown = 0;

	for (int i = 0; i < n; i++) {
		struct plumb p = places[i];
		if (!shows_at(d, rail, p.high))
			continue;
		memmove(places + shown + 1, places + shown, (size_t)(i - shown) * sizeof(*places));
		places[shown++] = p;
	}
}

/* The raked rail that shows for longest, of a balustrade or along a wall; NULL: none does. */
static const struct part *longest_rail(const struct drafting *d)
{
	const struct part *longest = NULL;
	double most = 0;

	for (const struct part *p = d->what->context->parts; p; p = p->next) {
		struct box b = p->rail && p->rail->pitch > 0 ? shown_of(d->what, p) : box_empty();
		if (box_is_empty(b) || box_width(b) <= most)
			continue;
		most = box_width(b);
		longest = p;
	}
	return longest;
}

/* The step whose nosing is under the middle of it. */
static const struct step *step_under(const struct drafting *d, const struct part *rail)
{
	struct box b = shown_of(d->what, rail);
	const struct flight *f = d->flight;
	const struct step *nearest = f->steps;
	double middle = (b.x0 + b.x1) / 2 * d->scale, least = INFINITY;

	for (int i = 0; i < f->step_count; i++) {
		double off = fabs(side_at(d, f->steps[i].nosing_x, 0).x - middle);
		if (off >= least)
			continue;
		least = off;
		nearest = &f->steps[i];
	}
	return nearest;
}

/* In inches as the trade says it; to a client in one form on all sheets. */
static const char *height_words(const struct drafting *d, double mm)
{
	struct arena *a = d->sheet->drawing->arena;
	const struct sheet_set *set = d->what->context->set;

	return set && set->reader == READER_CLIENT ? length_words(a, d->stair, mm)
						   : inches_words(a, d->stair, mm);
}

static struct plumb rail_over(const struct drafting *d, const struct part *rail,
	const struct step *step)
{
	return (struct plumb){ side_at(d, step->nosing_x, step->level),
		side_at(d, step->nosing_x, step->level + rail->rail->height) };
}

/* From the nosing under the middle of what is seen of it, and from its neighbours in turn. */
static int rail_places(const struct drafting *d, const struct part *rail, struct plumb *places)
{
	struct box shown = box_scale(shown_of(d->what, rail), d->scale);
	const struct flight *f = d->flight;
	int middle = (int)(step_under(d, rail) - f->steps), n = 0;

	for (int i = 0; i < 2 * f->step_count; i++) {
		int at = middle + (i + 1) / 2 * (i % 2 ? -1 : 1);
		if (at < 0 || at >= f->step_count)
			continue;
		struct plumb p = rail_over(d, rail, &f->steps[at]);
		if (i == 0 || (p.high.x > shown.x0 && p.high.x < shown.x1))
			places[n++] = p;
	}
	shown_first(d, rail, places, n);
	return n;
}

/* From a nosing plumb up to the top of the rail. */
static struct box draw_rail_height(const struct drafting *d, struct box view,
	struct left_over *rest)
{
	struct arena *a = d->sheet->drawing->arena;
	const struct part *rail = longest_rail(d);
	struct plumb *places = NEW_N(a, struct plumb, d->flight->step_count + 1);

	if (!rail)
		return view;
	struct height height = { .over = 3, .places = places, .n = rail_places(d, rail, places) };
	height.text = arena_printf(a, "rail %s", height_words(d, rail->rail->height));
	return draw_height(d, &height, view, rest);
}

/* ---- the guard of the upper floor ---- */

/* Is there a longer one of this height, or one that comes before it? */
static bool is_told_by_another(const struct drafting *d, const struct part *p, double width)
{
	bool before = true;

	for (const struct part *q = d->what->context->parts; q; q = q->next) {
		before = before && q != p;
		if (q == p || !q->rail || q->rail->pitch > 0 ||
			!near_enough(q->rail->height, p->rail->height))
			continue;
		struct box b = shown_of(d->what, q);
		double other = box_is_empty(b) ? 0 : box_width(b);
		if (other > width + NEAR_ENOUGH || (before && other > width - NEAR_ENOUGH))
			return true;
	}
	return false;
}

/* From the upper floor to the top of a level rail, beside its middle or farther from it. */
static struct box draw_guard(const struct drafting *d, const struct part *p, struct box view,
	struct left_over *rest)
{
	static const double shares[] = { 0.37, 0.63, 0.5, 0.25, 0.75, 0.12, 0.88 };
	enum { PLACES = sizeof(shares) / sizeof(*shares) };
	struct box b = shown_of(d->what, p);
	double top = p->rail->foot.top;
	struct plumb places[PLACES];

	if (box_is_empty(b) || is_told_by_another(d, p, box_width(b)))
		return view;
	for (int i = 0; i < PLACES; i++) {
		double u = b.x0 + shares[i] * box_width(b);
		places[i] = (struct plumb){ vec_scale(vec(u, top - p->rail->height), d->scale),
			vec_scale(vec(u, top), d->scale) };
	}
	shown_first(d, p, places, PLACES);
	struct height height = { .over = 4, .places = places, .n = PLACES };
	height.text = arena_printf(d->sheet->drawing->arena, "guard %s",
		height_words(d, p->rail->height));
	return draw_height(d, &height, view, rest);
}

static struct box draw_guards(const struct drafting *d, struct box view, struct left_over *rest)
{
	for (const struct part *p = d->what->context->parts; p; p = p->next)
		if (p->rail && p->rail->pitch <= 0)
			view = draw_guard(d, p, view, rest);
	return view;
}

struct box side_draw_rail_heights(const struct drafting *d, struct box view, struct left_over *rest)
{
	return draw_guards(d, draw_rail_height(d, view, rest), rest);
}
