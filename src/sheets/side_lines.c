#include "draw/bounds.h"
#include "draw/place.h"
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

	if (h->state == HEADROOM_NOT_CHECKED || (!rest && side_plumb_strikes(hand, low, high)))
		return view;
	int n = side_spots_beside(spots, 12, hand, vec(high.x, high.y - hand.letter * 2), width);
	n = side_spots_off_headroom_line(d, view, spots, n, width);
	int i = place_text(hand.g, hand.measure, hand.letter, spots, n, text);
	if (i < 0 && !rest)
		return view;
	side_draw_plumb(hand, low, high);
	if (sheet_says(d->what->context, SAYS_LIMITS))
		draw_circle(hand.g, PEN_DIM, high, 1.2);
	view = draw_upper_ceiling(d, box_add(box_add(view, low), high));
	if (i >= 0)
		return side_with_text(view, hand, spots[i].at, text);
	rest->links[rest->n++] = side_plumb_link(low, high, text);
	return view;
}

struct box side_draw_lines(const struct drafting *d, struct box view, struct left_over *rest)
{
	draw_nosing_line(d);
	view = draw_headroom(d, headroom_words(d->sheet->drawing->arena, d->stair), view, rest);
	view = side_draw_rail_heights(d, view, rest);
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
	return side_draw_rail_heights(d, view, NULL);
}

const char *side_headroom_note(struct arena *a, const struct sheet_context *c)
{
	const struct stair *s = c->stair;
	const char *words = headroom_words(a, s);

	if (!*words)
		return "Headroom is not checked: no opening is given.";
	return arena_printf(a, "Least %s, plumb from the nosing line; wanted %s%s.", words,
		length_words(a, s, s->job->opening.headroom),
		sheet_says(c, SAYS_LIMITS) ? ": the dash-dot line so far over it" : "");
}
