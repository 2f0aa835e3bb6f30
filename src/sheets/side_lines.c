#include "draw/bounds.h"
#include "draw/place.h"
#include "pitchboard/rail.h"
#include "sheets/reader.h"
#include "sheets/side_drafting.h"
#include "sheets/words.h"

/* How much of the ceiling over the upper floor is drawn, either way. */
#define UPPER_CEILING 450.0

static void draw_nosing_line(const struct drafting *d)
{
	const struct flight *f = d->flight;
	double from = d->flight->steps[0].nosing_x - f->unit_run * 0.5,
	       to = (f->risers - 1) * f->unit_run;

	draw_line(d->sheet->drawing, PEN_CENTRE, side_at(d, from, slope_at(d->nosing, from)),
		side_at(d, to, slope_at(d->nosing, to)));
}

/* Under the stringer, along the pitch: nothing else stands there.  Where the view is too small for
 * it, the table on the cover has it. */
void side_draw_pitch(const struct drafting *d)
{
	struct hand h = d->sheet->hand;
	double angle = side_high(d) == DIM_RIGHT ? d->flight->pitch : -d->flight->pitch;
	double below = d->stair->unit_rise + 12 * MM_PER_INCH;
	struct spot spots[12];
	int n = 0;

	for (int i = 0; i < 12; i++) {
		int column = i % 3, row = i / 3;
		double x = d->flight->total_run * (0.75 - 0.1 * column);
		double z = slope_at(d->nosing, x) - below - (1 + row) * 2 * h.letter / d->scale;
		if (z * d->scale > 6 * h.letter)
			spots[n++] =
				(struct spot){ side_at(d, x, z), ALIGN_MIDDLE, angle, SPOT_PLAIN };
	}
	place_text(h.g, h.measure, h.letter, spots, n,
		arena_printf(h.g->arena, "pitch %s", angle_letter(h.g->arena, d->flight->pitch)));
}

static const char *headroom_words(struct arena *a, const struct stair *s)
{
	const struct headroom *h = &s->headroom;

	if (h->state == HEADROOM_NOT_CHECKED)
		return "";
	return arena_printf(a, "headroom %s%s%s", length_words(a, s, h->least),
		h->overhead_z > s->total_rise ? " to the upper ceiling" : "",
		h->state == HEADROOM_SHORT ? " SHORT" : "");
}

/* A plumb line between two points of the view, arrows at its ends. */
static void draw_plumb(struct hand h, struct vec low, struct vec high)
{
	draw_line(h.g, PEN_DIM, low, high);
	draw_arrow_head(h.g, low, vec(0, -1), h.letter);
	draw_arrow_head(h.g, high, vec(0, 1), h.letter);
}

static struct box with_text(struct box view, struct hand h, struct vec at, const char *text)
{
	double width = measure_width(h.measure, LETTER_REGULAR, h.letter, text);

	return box_add(box_add(view, at), vec_add(at, vec(width, h.letter)));
}

/* Spots to the right and the left of a plumb line, from its top down. */
static int spots_beside(struct spot *spots, int n, struct hand h, struct vec top, double width)
{
	for (int i = 0; i < n; i++) {
		int row = i / 2;
		double y = top.y - h.letter * 1.6 * row;
		spots[i] = (struct spot){ vec(top.x + (i % 2 ? -1.5 - width : 1.5), y), ALIGN_LEFT,
			0, SPOT_PLAIN };
	}
	return n;
}

/* Those that the headroom line does not strike; all where it strikes all. */
static int spots_not_struck(const struct drafting *d, struct box view, struct spot *spots, int n,
	double width)
{
	int kept = 0;

	for (int i = 0; i < n; i++) {
		struct vec at = spots[i].at, end = vec_add(at, vec(width, d->sheet->hand.letter));
		struct box words = box_add(box_add(box_empty(), at), end);
		if (!side_headroom_line_strikes(d, view, words))
			spots[kept++] = spots[i];
	}
	return kept > 0 ? kept : n;
}

static struct dim_link plumb_link(struct vec low, struct vec high, const char *text)
{
	return (struct dim_link){ low.y, high.y, low.x, high.x, text };
}

/* Of the ceiling over the upper floor, which is no part of the view, as much as says what is
 * measured up to; the view's box with it. */
static struct box draw_upper_ceiling(const struct drafting *d, struct box view)
{
	const struct headroom *h = &d->stair->headroom;
	struct vec from = side_at(d, h->x - UPPER_CEILING, h->overhead_z);
	struct vec to = side_at(d, h->x + UPPER_CEILING, h->overhead_z);

	if (h->overhead_z <= d->stair->total_rise)
		return view;
	draw_line(d->sheet->drawing, PEN_EXISTING, from, to);
	return box_add(box_add(view, from), to);
}

/* From the nosing line to what is overhead, lettered near its top; in a lane where that fails. */
static struct box draw_headroom(const struct drafting *d, const char *text, struct box view,
	struct left_over *rest)
{
	const struct headroom *h = &d->stair->headroom;
	struct hand hand = d->sheet->hand;
	struct vec low = side_at(d, h->x, h->nosing_z), high = side_at(d, h->x, h->overhead_z);
	double width = measure_width(hand.measure, LETTER_REGULAR, hand.letter, text);
	struct spot spots[12];

	if (h->state == HEADROOM_NOT_CHECKED)
		return view;
	int n = spots_beside(spots, 12, hand, vec(high.x, high.y - hand.letter * 2), width);
	n = spots_not_struck(d, view, spots, n, width);
	int i = place_text(hand.g, hand.measure, hand.letter, spots, n, text);
	if (i < 0 && !rest)
		return view;
	draw_plumb(hand, low, high);
	if (sheet_says(d->what->context, SAYS_LIMITS))
		draw_circle(hand.g, PEN_DIM, high, 1.2);
	view = draw_upper_ceiling(d, box_add(box_add(view, low), high));
	if (i >= 0)
		return with_text(view, hand, spots[i].at, text);
	rest->links[rest->n++] = plumb_link(low, high, text);
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

/* A height plumb between two points of the view, lettered beside its line, which goes on over the
 * rail; in a lane where there is no room for that. */
struct rail_height {
	struct vec low, high;
	const char *text;
	double over; /* how far its line goes on, in heights of a capital */
};

/* Draws it with its figure where there is a place for that; whether there was. */
static bool place_rail_height(const struct drafting *d, struct rail_height r, struct box *view)
{
	struct hand h = d->sheet->hand;
	double width = measure_width(h.measure, LETTER_REGULAR, h.letter, r.text);
	struct vec top = vec(r.high.x, r.high.y + (r.over - 1) * h.letter);
	struct spot spots[6];
	int n = spots_beside(spots, 6, h, top, width);
	int i = place_text(h.g, h.measure, h.letter, spots, n, r.text);

	if (i < 0)
		return false;
	draw_plumb(h, r.low, r.high);
	draw_line(h.g, PEN_DIM, r.high, vec(r.high.x, r.high.y + r.over * h.letter));
	*view = with_text(*view, h, spots[i].at, r.text);
	return true;
}

static struct box letter_rail_height(const struct drafting *d, struct rail_height r,
	struct box view, struct left_over *rest)
{
	if (place_rail_height(d, r, &view) || !rest)
		return view;
	draw_plumb(d->sheet->hand, r.low, r.high);
	rest->links[rest->n++] = plumb_link(r.low, r.high, r.text);
	return view;
}

/* In inches as the trade says it; to a client in one form on all sheets. */
static const char *height_words(const struct drafting *d, double mm)
{
	struct arena *a = d->sheet->drawing->arena;
	const struct sheet_set *set = d->what->context->set;

	return set && set->reader == READER_CLIENT ? length_words(a, d->stair, mm)
						   : inches_words(a, d->stair, mm);
}

static struct rail_height rail_height_at(const struct drafting *d, const struct part *rail,
	const struct step *step)
{
	double height = rail->rail->height;

	return (struct rail_height){ .low = side_at(d, step->nosing_x, step->level),
		.high = side_at(d, step->nosing_x, step->level + height),
		.text = arena_printf(d->sheet->drawing->arena, "rail %s", height_words(d, height)),
		.over = 3 };
}

/* From a nosing plumb up to the top of the rail: under the middle of what is seen of it, or as near
 * there as its figure has a place. */
static struct box draw_rail_height(const struct drafting *d, struct box view,
	struct left_over *rest)
{
	const struct part *rail = longest_rail(d);
	const struct flight *f = d->flight;

	if (!rail)
		return view;
	struct box shown = box_scale(shown_of(d->what, rail), d->scale);
	int middle = (int)(step_under(d, rail) - f->steps);
	for (int i = 0; i < 2 * f->step_count; i++) {
		int at = middle + (i + 1) / 2 * (i % 2 ? -1 : 1);
		if (at < 0 || at >= f->step_count)
			continue;
		struct rail_height r = rail_height_at(d, rail, &f->steps[at]);
		if (r.high.x > shown.x0 && r.high.x < shown.x1 && place_rail_height(d, r, &view))
			return view;
	}
	return letter_rail_height(d, rail_height_at(d, rail, &f->steps[middle]), view, rest);
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

/* From the upper floor to the top of a level rail, beside its middle. */
static struct box draw_guard(const struct drafting *d, const struct part *p, struct box view,
	struct left_over *rest)
{
	struct arena *a = d->sheet->drawing->arena;
	struct box b = shown_of(d->what, p);
	double top = p->rail->foot.top, u = b.x0 + 0.37 * box_width(b);

	if (box_is_empty(b) || is_told_by_another(d, p, box_width(b)))
		return view;
	struct rail_height r = { .low = vec_scale(vec(u, top - p->rail->height), d->scale),
		.high = vec_scale(vec(u, top), d->scale),
		.over = 4 };
	r.text = arena_printf(a, "guard %s", height_words(d, p->rail->height));
	return letter_rail_height(d, r, view, rest);
}

static struct box draw_guards(const struct drafting *d, struct box view, struct left_over *rest)
{
	for (const struct part *p = d->what->context->parts; p; p = p->next)
		if (p->rail && p->rail->pitch <= 0)
			view = draw_guard(d, p, view, rest);
	return view;
}

struct box side_draw_lines(const struct drafting *d, struct box view, struct left_over *rest)
{
	draw_nosing_line(d);
	view = draw_rail_height(d,
		draw_headroom(d, headroom_words(d->sheet->drawing->arena, d->stair), view, rest),
		rest);
	view = draw_guards(d, view, rest);
	side_draw_headroom_line(d, view);
	return view;
}

/* Is the step under the lowest place seen in this view? */
static bool shows_headroom(const struct drafting *d)
{
	const struct flight *f = d->flight;

	for (int i = 0; i < f->step_count; i++)
		if (f->steps[i].back_x >= d->stair->headroom.x)
			return d->what->view.spec.cut || side_step_is_open(d->what, &f->steps[i]);
	return true;
}

struct box side_draw_heights(const struct drafting *d, const char *headroom, struct box view)
{
	if (*headroom && shows_headroom(d))
		view = draw_headroom(d, headroom, view, NULL);
	return draw_guards(d, draw_rail_height(d, view, NULL), NULL);
}

const char *side_headroom_note(struct arena *a, const struct stair *s)
{
	const char *words = headroom_words(a, s);

	if (!*words)
		return "Headroom is not checked: no opening is given.";
	return arena_printf(a, "Least %s, plumb from the nosing line; wanted %s.", words,
		length_words(a, s, s->job->opening.headroom));
}
