/*
 * The plan: the stair cut at waist height, looking down.
 *
 * Before the break line it is drawn as it is cut; beyond the break, where the
 * flight rises over the cut, dashed.  The arrow points up, always.
 *
 *     _____________ /________
 *     | 1 | 2 | 3 |/ ¦ ¦ ¦ ¦
 *     o-----------/----------->
 *     |___|___|__/___¦_¦_¦_¦
 */
#include "draw/bounds.h"
#include "draw/dimension.h"
#include "draw/place.h"
#include "sheets/compose.h"
#include "sheets/limits.h"
#include "sheets/plan_landings.h"
#include "sheets/plan_walls.h"
#include "sheets/reader.h"
#include "sheets/stands.h"
#include "sheets/words.h"

/* ---- arrow and numbers ---- */

static const char *up_words(struct arena *a, const struct plan *p)
{
	const struct stair *s = p->context->stair;

	return arena_printf(a, "UP %dR @ %s", s->risers, length_words(a, s, s->unit_rise));
}

static const char *tread_words(struct arena *a, const struct plan *p)
{
	const struct stair *s = p->context->stair;

	return arena_printf(a, "%dT @ %s", s->treads, length_words(a, s, p->flight->unit_run));
}

/* Under the words of the arrow: what stands before the stair. */
static const char *foot_words(const struct plan *p)
{
	const struct job_landing *l = &p->context->stair->job->landings.at[LANDING_FOOT];

	return sheet_says(p->context, SAYS_FLOORS) && l->depth <= 0 ? "landing not known" : "";
}

/* White, under words that stand on the landing: the swing of a door may go there. */
static void draw_ground(struct hand h, struct box b)
{
	const struct vec corners[] = { { b.x0, b.y0 }, { b.x1, b.y0 }, { b.x1, b.y1 },
		{ b.x0, b.y1 } };

	draw_fill(h.g, SHADE_WHITE, corners, 4);
}

/* Does anything but walls and floor lie in the box? */
static bool is_drawn_on(const struct view *v, struct box b, double scale)
{
	for (int i = 0; i < v->stroke_count; i++) {
		struct box s = box_add(box_add(box_empty(), v->strokes[i].a), v->strokes[i].b);
		if (box_touches(b, box_grow(box_scale(s, scale), 0.5)))
			return true;
	}
	return false;
}

/* Room for the words of the arrow, `wide` to the left of where they end: two lines, and a third one
 * for those under them. */
static struct box words_room(struct hand h, struct vec end, double wide, const char *foot)
{
	double lines = *foot ? 3 : 1.4;

	return (struct box){ end.x - wide, end.y - lines * h.letter - 0.9, end.x,
		end.y + 1.2 * h.letter + 0.9 };
}

/* The right-hand end of the words between their two lines: before the start of the walking line;
 * where a gallery's rail runs there or a wall's face through them, outside of all, with a line from
 * there to the start. */
static struct vec words_place(struct hand h, const struct plan *p, struct vec start, double wide,
	double scale)
{
	double x = start.x - p->context->stair->job->treads.nosing * scale - 6;
	struct box words = { x - wide, start.y - 4 * h.letter, x, start.y + 2 * h.letter };
	struct box lines = words_room(h, vec(x, start.y), wide, foot_words(p));
	double out = plan_box(p).x0 * scale - 4;

	if ((!is_drawn_on(&p->guard, words, scale) && !heavy_line_crosses(h.g, lines)) || out > x)
		return vec(x, start.y);
	draw_line(h.g, PEN_DIM, vec(out - wide, start.y), vec(start.x - 0.9, start.y));
	return vec(out, start.y);
}

/* Along the walking line, the words before its start; the box of the words. */
static struct box draw_arrow(struct hand h, const struct plan *p, double scale)
{
	const struct stair *s = p->context->stair;
	struct arena *a = h.g->arena;
	int n = s->walking_line_count;
	struct vec *line = NEW_N(a, struct vec, n);
	const char *up = up_words(a, p), *treads = tread_words(a, p), *foot = foot_words(p);
	double w = fmax(measure_width(h.measure, LETTER_REGULAR, h.letter, up),
		measure_width(h.measure, LETTER_REGULAR, h.letter, treads));

	w = fmax(w, measure_width(h.measure, LETTER_REGULAR, h.letter, foot));

	for (int i = 0; i < n; i++)
		line[i] = vec_scale(s->walking_line[i], scale);
	struct vec words = words_place(h, p, vec(line[0].x, line[0].y), w, scale);
	draw_polyline(h.g, PEN_CENTRE, line, n);
	draw_circle(h.g, PEN_OUTLINE, line[0], 0.9);
	draw_arrow_head(h.g, line[n - 1], vec_sub(line[n - 1], line[n - 2]), h.letter * 1.2);
	draw_ground(h, words_room(h, words, w, foot));
	draw_text(h.g, vec(words.x, words.y + 0.9), h.letter, ALIGN_RIGHT, up);
	draw_text(h.g, vec(words.x, words.y - h.letter - 0.9), h.letter, ALIGN_RIGHT, treads);
	if (*foot)
		draw_text(h.g, vec(words.x, words.y - 2.6 * h.letter - 0.9), h.letter, ALIGN_RIGHT,
			foot);
	return (struct box){ words.x - w, words.y - 4 * h.letter, words.x, words.y + 2 * h.letter };
}

/* Base line of the riser numbers: over the walking line, and over a carriage that runs there where
 * the stair is wide enough for that. */
static double number_base(struct arena *a, const struct plan *p, double letter, double scale)
{
	struct stands stands = list_stands(a, p->context->parts);
	double beside = plan_at(p, 0, p->context->stair->width / 2, scale).y + 1.2;

	for (int i = 0; i < stands.n; i++) {
		struct stringer_stand w = stands.at[i];
		double over = w.high * scale + 1.2, next = p->context->stair->width * scale;
		if (i + 1 < stands.n)
			next = stands.at[i + 1].low * scale;
		if (w.low * scale < beside + letter + 0.5 && w.high * scale > beside - 0.5)
			return over + letter + 0.5 < next ? over : beside;
	}
	return beside;
}

/* Places just behind a riser, one over the other: the floor's number may go past its nosing. */
enum { STEP_PLACES = 8, FLOOR_PLACES = 14 };

/* Beside the walking line, just behind each riser; every one, or every fifth where they crowd.  The
 * box they took: the floor's number stands beyond the stair. */
static struct box draw_riser_numbers(struct hand h, const struct plan *p, double scale)
{
	struct box used = box_empty();
	const struct stair *s = p->context->stair;
	const struct flight *f = p->flight;
	struct arena *a = h.g->arena;
	double widest = measure_width(h.measure, LETTER_REGULAR, h.letter, "00");
	double nosing = s->job->treads.nosing * scale;
	bool all = f->unit_run * scale - nosing > widest + 1.2;
	double base = number_base(a, p, h.letter, scale);

	for (int i = 0; i < f->risers; i++) {
		int number = f->first_step + i;
		if (!all && number % 5 && number != 1 && number != f->risers)
			continue;
		struct vec v = plan_at(p, i * f->unit_run, s->width / 2, scale);
		/* a wall may stand there that a tread wraps, the opening's edge run through, or
		 * one be cut behind the last step */
		struct spot spots[FLOOR_PLACES];
		int places = number == f->risers ? FLOOR_PLACES : STEP_PLACES;
		for (int k = 0; k < places; k++) {
			int column = k / 2;
			spots[k] = (struct spot){ vec(v.x + 1.3 + 1.5 * column,
							  k % 2 ? v.y - 1.2 - h.letter : base),
				ALIGN_LEFT, 0, SPOT_PLAIN };
		}
		int taken = place_text(h.g, h.measure, h.letter, spots, places,
			arena_printf(a, "%d", number));
		if (taken < 0)
			continue;
		used = box_add(used, spots[taken].at);
		used = box_add(used, vec_add(spots[taken].at, vec(widest, h.letter)));
	}
	return used;
}

/* ---- stringers and section ---- */

/* From a stringer to its mark: past a rail that stands over it. */
#define CLEAR 2.0

/* A rail along its wall covers the stringer. */
static void widen_by_covers(const struct plan *p, struct stringer_stand *w)
{
	for (int i = 0; i < p->cover_count; i++) {
		const struct box *b = &p->covers[i];
		if (b->y0 > w->high || b->y1 < w->low)
			continue;
		w->high = fmax(w->high, b->y1);
		w->low = fmin(w->low, b->y0);
	}
}

enum { SPOTS_A_SIDE = 4 };

/* Beside a stringer's dashed lines, a tread each: first those on the stair, then those outside of
 * it, where a wall may be, or a floor's edge. */
static void spots_beside(const struct hand *h, const struct plan *p, struct stringer_stand w,
	double scale, struct spot spots[2 * SPOTS_A_SIDE])
{
	widen_by_covers(p, &w);
	double above = w.high * scale + CLEAR, below = w.low * scale - h->letter - CLEAR;
	bool is_left = w.low + w.high > p->context->stair->width;

	for (int k = 0; k < 2 * SPOTS_A_SIDE; k++) {
		int tread = k % SPOTS_A_SIDE, last = p->flight->step_count - 1;
		double x = (0.445 + (tread < last ? tread : last)) * p->flight->unit_run;
		bool inside = k < SPOTS_A_SIDE;
		double y = inside == is_left ? below : above;
		spots[k] = (struct spot){ vec(plan_at(p, x, 0, scale).x, y), ALIGN_MIDDLE, 0,
			SPOT_PLAIN };
	}
}

/* One between the outer two has the stair on both sides. */
enum stringer_side { STRINGER_OUTER, STRINGER_BETWEEN };

/* With its thickness, where a tread is wide enough for both. */
static void letter_stringer(struct hand h, const struct plan *p, struct stringer_stand w,
	enum stringer_side where, double scale)
{
	struct arena *a = h.g->arena;
	const char *thickness = inches_words(a, p->context->stair, w.high - w.low);
	const char *both = arena_printf(a, "%s, %s", w.part->mark, thickness);
	struct spot spots[2 * SPOTS_A_SIDE];

	int n = where == STRINGER_BETWEEN ? 2 * SPOTS_A_SIDE : SPOTS_A_SIDE;

	spots_beside(&h, p, w, scale, spots);
	for (const struct spot *beside = spots; beside < spots + 2 * SPOTS_A_SIDE; beside += n)
		if (place_text(h.g, h.measure, h.letter, beside, n, both) >= 0 ||
			place_text(h.g, h.measure, h.letter, beside, n, w.part->mark) >= 0)
			return;
}

static void letter_stringers(struct hand h, const struct plan *p, double scale)
{
	struct stands stands = list_stands(h.g->arena, p->context->parts);

	for (int i = 0; i < stands.n; i++)
		letter_stringer(h, p, stands.at[i],
			i > 0 && i < stands.n - 1 ? STRINGER_BETWEEN : STRINGER_OUTER, scale);
}

/* The cutting plane of the section at one end: a thick dash, an arrow the way it looks, its letter.
 * It looks to the left-hand side, as the section is seen from the right. */
static void draw_cutting_plane(struct hand h, struct vec end, double inward)
{
	struct vec tip = vec(end.x, end.y + h.letter * 1.8);

	draw_line(h.g, PEN_CUT, end, vec(end.x + inward * h.letter * 3, end.y));
	draw_line(h.g, PEN_DIM, end, tip);
	draw_arrow_head(h.g, tip, vec(0, 1), h.letter);
	draw_text_styled(h.g, vec(end.x - inward * h.letter, end.y), h.letter * 1.4, 0,
		ALIGN_MIDDLE, LETTER_BOLD, "A");
}

static struct box draw_section_marks(struct hand h, const struct plan *p, struct box around,
	double scale)
{
	double y = plan_at(p, 0, section_y(h.g->arena, p->context), scale).y;
	double x0 = around.x0 - h.letter * 4, x1 = around.x1 + h.letter * 4;

	if (!has_section(p->context))
		return around;
	draw_cutting_plane(h, vec(x0, y), 1);
	draw_cutting_plane(h, vec(x1, y), -1);
	around.x0 = x0 - h.letter * 2;
	around.x1 = x1 + h.letter * 2;
	return around;
}

static struct box compose(struct sheet *s, const void *what, double scale)
{
	const struct plan *p = what;
	struct box around = box_scale(box_join(plan_box(p), plan_landings_box(p)), scale);
	struct hand h = s->hand;

	plan_draw(h.g, p, scale);
	plan_landings_draw(h.g, p, scale);
	around = box_join(around, draw_arrow(h, p, scale));
	around = box_join(around, draw_riser_numbers(h, p, scale));
	around = draw_section_marks(h, p, around, scale);
	struct dims d = dims_begin(h.g, h.measure, h.letter, around);
	plan_add_dimensions(&d, p, scale);
	struct box used = plan_draw_north(h, p, dims_draw(&d));
	if (sheet_says(p->context, SAYS_STRINGERS))
		letter_stringers(h, p, scale);
	return draw_view_foot(h, used, "Plan", scale, p->context->stair->job->about.units);
}

static const char *cut_words(struct arena *a, const struct plan *p)
{
	const struct stair *s = p->context->stair;

	if (!p->has_break)
		return "Walls are cut at waist height; the stair is lower and drawn whole.";
	return arena_printf(a,
		"Cut at waist height, %s over the lower finished floor; dashed beyond the break: "
		"above the cut.",
		length_words(a, s, p->cut_height));
}

static const char *landings_words(struct arena *a, const struct plan *p)
{
	return sheet_says(p->context, SAYS_FLOORS) ? plan_landings_words(a, p) : "";
}

static const char *lines_words(struct arena *a, const struct stair *s)
{
	return arena_printf(a,
		"The arrow points up. Nosings are whole lines, riser faces and stringers "
		"dashed.%s",
		node_has(s->job->stair.src, "north") ? "" : " Orientation not given.");
}

static void note_sheet(struct sheet *s, const struct plan *p, set_notes_fn *set)
{
	const struct stair *st = p->context->stair;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Notes", general_words(st) },
		{ NULL, cut_words(a, p) },
		{ NULL, lines_words(a, st) },
		{ NULL,
			"Width: a wall counts at its finished face, an open side at the outer face "
			"of its stringer." },
		{ NULL, plan_walls_words(a, st) },
		{ NULL, landings_words(a, p) },
		{ NULL, opening_guard_words(a, p->context) },
		{ NULL, by_others_words(a, st->job) },
		{ NULL, not_met_words(a, p->context->findings) },
		{ "Taken where the job is silent", assumptions_text(a, st->job, SHOWN_PLAN) },
	};

	set(s, notes, sizeof(notes) / sizeof(*notes));
}

static double draw_view(struct sheet *s, const struct plan *p)
{
	struct composition what = { compose, p, box_join(plan_box(p), plan_landings_box(p)), 0 };
	struct composed done = sheet_compose(s, what, s->room, SET_CENTRED);

	s->drawing->scale = scale_words(s->drawing->arena, p->context->stair, done.ratio);
	return done.ratio;
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct plan p = plan_make(a, c);
	struct sheet s = sheet_begin(a, c, "Plan");

	note_sheet(&s, &p, sheet_notes);
	double ratio = draw_view(&s, &p);
	if (!sheet_is_cramped(&s))
		return s.drawing;
	struct sheet alone = sheet_begin(a, c, "Plan"), notes = sheet_begin(a, c, "Plan, notes");
	if (draw_view(&alone, &p) * WORTH_NOTES > ratio && !s.drawing->runs_over)
		return s.drawing;
	note_sheet(&notes, &p, sheet_of_notes);
	alone.drawing->next = notes.drawing;
	return alone.drawing;
}

const struct sheet_kind sheet_plan = { "plan", "S-1", draw };
