#include "draw/clip.h"
#include "draw/place.h"
#include "sheets/reader.h"
#include "sheets/side_drafting.h"
#include "sheets/words.h"

enum { PLACES = 17, SPOTS = 2 * PLACES };

/* The stretch of it that is drawn, along the flight. */
struct stretch_shown {
	struct slope_line line;
	double from, to;
};

/* Along the line, over it and under it, from its middle outwards, the words nowhere past its ends:
 * how many spots there are. */
static int spots_along(const struct drafting *d, struct stretch_shown s, double wide,
	struct spot spots[SPOTS])
{
	double letter = d->sheet->hand.letter, pitch = d->flight->pitch;
	double angle = side_high(d) == DIM_RIGHT ? pitch : -pitch;
	double half = (wide / 2 + 2 * letter) * cos(pitch) / d->scale;
	int n = 0;

	for (int i = 0; i < SPOTS; i++) {
		int place = i / 2, away = (place + 1) / 2;
		double off = 0.05 * away * (place % 2 ? -1 : 1);
		double x = s.from + (s.to - s.from) * (0.5 + off);
		double lift = i % 2 ? -1.6 * letter : 0.6 * letter;
		double z = slope_at(s.line, x) + lift / d->scale / cos(pitch);
		if (x - half > s.from && x + half < s.to)
			spots[n++] =
				(struct spot){ side_at(d, x, z), ALIGN_MIDDLE, angle, SPOT_PLAIN };
	}
	return n;
}

/* In full where there is a place for that, else as short as may be; false: there is none. */
static bool letter_line(const struct drafting *d, struct stretch_shown s)
{
	struct hand h = d->sheet->hand;
	struct arena *a = h.g->arena;
	const char *wanted = length_words(a, d->stair, d->stair->job->opening.headroom);
	const char *const words[] = {
		arena_printf(a, "headroom line, %s over the nosing line", wanted),
		arena_printf(a, "headroom line, %s", wanted),
		"headroom line",
	};
	struct spot spots[SPOTS];

	for (int i = 0; i < 3; i++) {
		double wide = measure_width(h.measure, LETTER_REGULAR, h.letter, words[i]);
		int n = spots_along(d, s, wide, spots);
		if (place_text(h.g, h.measure, h.letter, spots, n, words[i]) >= 0)
			return true;
	}
	return false;
}

/* The longer side of where the headroom is measured: its plumb line strikes what crosses it. */
static struct stretch_shown beside_plumb(const struct drafting *d, struct stretch_shown s)
{
	double plumb = d->stair->headroom.x;

	if (plumb < (s.from + s.to) / 2)
		s.from = fmax(s.from, plumb);
	else
		s.to = fmin(s.to, plumb);
	return s;
}

/* Nothing of it: from is not before to. */
static struct stretch_shown stretch(const struct drafting *d, struct box view)
{
	const struct flight *f = d->flight;
	struct stretch_shown s = { .line = d->nosing };

	if (!sheet_says(d->what->context, SAYS_LIMITS))
		return s;
	s.line.z0 += d->stair->job->opening.headroom;
	s.from = f->steps[0].nosing_x - f->unit_run * 0.5;
	s.to = fmin((view.y1 / d->scale - s.line.z0) / s.line.slope, f->total_run);
	return s;
}

static struct vec point_at(const struct drafting *d, struct stretch_shown s, double x)
{
	return side_at(d, x, slope_at(s.line, x));
}

static bool strikes(const struct drafting *d, struct box view, struct box words)
{
	struct stretch_shown s = stretch(d, box_join(view, words));

	return s.from < s.to &&
		clip_segment(words, point_at(d, s, s.from), point_at(d, s, s.to)).some;
}

int side_spots_off_headroom_line(const struct drafting *d, struct box view, struct spot *spots,
	int n, double width)
{
	int kept = 0;

	for (int i = 0; i < n; i++) {
		struct vec at = spots[i].at, end = vec_add(at, vec(width, d->sheet->hand.letter));
		if (!strikes(d, view, box_add(box_add(box_empty(), at), end)))
			spots[kept++] = spots[i];
	}
	return kept > 0 ? kept : n;
}

void side_draw_headroom_line(const struct drafting *d, struct box view)
{
	struct stretch_shown s = stretch(d, view);

	if (s.from >= s.to)
		return;
	draw_line(d->sheet->drawing, PEN_CENTRE, point_at(d, s, s.from), point_at(d, s, s.to));
	if (!letter_line(d, beside_plumb(d, s)))
		letter_line(d, s);
}
