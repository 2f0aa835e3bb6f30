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
#include <string.h>

#include "draw/bounds.h"
#include "draw/dimension.h"
#include "draw/place.h"
#include "draw/view.h"
#include "sheets/compose.h"
#include "sheets/words.h"

/* Waist height, 4'-0" over the lower finished floor: common practice. */
#define WAIST 1220.0

/* The break line leans this far from square across the flight. */
#define BREAK_LEAN 0.35

struct plan {
	const struct sheet_context *context;
	const struct flight *flight;
	struct view cut;   /* what is below the cut */
	struct view whole; /* everything, as if nothing were cut */
};

/* A straight break: the near side is where the dot product is negative. */
struct break_line {
	struct vec through, normal;
};

static bool is_existing(const struct part *p)
{
	return !*p->mark;
}

/* The floors spread under everything and would only draw the edge of what is shown of them. */
static bool shows_in_cut(const struct part *p, const void *with)
{
	(void)with;
	return !is_existing(p) || strstr(p->name, "floor") == NULL;
}

static bool shows_above(const struct part *p, const void *with)
{
	(void)with;
	return !is_existing(p) || strstr(p->name, "upper floor") != NULL;
}

static bool is_riser(const struct part *p, const void *with)
{
	(void)with;
	return p->kind == &part_riser;
}

/* The cut goes through the middle of the riser nearest to waist height: through the thickness of a
 * tread it would show a slice of it. */
static double cut_height(const struct stair *s)
{
	return (floor(fmin(WAIST, s->total_rise) / s->unit_rise - 0.5) + 0.5) * s->unit_rise;
}

static struct break_line break_of(const struct plan *p)
{
	const struct stair *s = p->context->stair;
	struct slope_line nosing = flight_nosing_line(s, p->flight);
	double x = (cut_height(s) - nosing.z0) / nosing.slope;
	struct vec3 at = frame_place(p->flight->frame, vec3(x, s->width / 2, 0));
	struct vec3 along = frame_turn(p->flight->frame, vec3(1, BREAK_LEAN, 0));

	return (struct break_line){ vec(at.x, at.y), vec_unit(vec(along.x, along.y)) };
}

static double beyond(struct break_line b, struct vec p)
{
	return vec_dot(vec_sub(p, b.through), b.normal);
}

enum near_or_far { NEAR_SIDE = -1, FAR_SIDE = 1 };

/* The piece of a stroke on one side of the break. */
static struct stroke cut_stroke(struct break_line b, enum near_or_far side, struct stroke s)
{
	double da = side * beyond(b, s.a), db = side * beyond(b, s.b);

	if (da < 0 && db < 0)
		s.b = s.a;
	else if (da < 0)
		s.a = vec_add(s.a, vec_scale(vec_sub(s.b, s.a), da / (da - db)));
	else if (db < 0)
		s.b = vec_add(s.b, vec_scale(vec_sub(s.a, s.b), db / (db - da)));
	return s;
}

static void draw_stroke(struct drawing *g, enum pen pen, struct stroke s, double scale)
{
	if (vec_length(vec_sub(s.a, s.b)) * scale > 0.05)
		draw_line(g, pen, vec_scale(s.a, scale), vec_scale(s.b, scale));
}

/* Of a riser only its face is wanted dashed, not its back a hair behind it. */
static bool is_face(const struct plan *p, const struct stroke *s)
{
	double x = s->a.x - p->flight->frame.origin.x, run = p->flight->unit_run;

	return fabs(s->a.x - s->b.x) < NEAR_ENOUGH && fabs(x - round(x / run) * run) < 0.01;
}

static void draw_below(struct drawing *g, const struct plan *p, struct break_line b, double scale)
{
	for (int i = 0; i < p->cut.stroke_count; i++) {
		struct stroke s = p->cut.strokes[i];
		if (s.pen == PEN_HIDDEN && !is_face(p, &s))
			continue;
		if (!is_existing(s.part))
			s = cut_stroke(b, NEAR_SIDE, s);
		draw_stroke(g, s.pen, s, scale);
	}
}

/* Of the floor above only the rim of the opening: where the rest of it ends is nobody's business.
 */
static bool is_rim(const struct plan *p, const struct stroke *s)
{
	const struct headroom *h = &p->context->stair->headroom;
	double length = p->context->stair->job->opening.length, x0 = p->flight->frame.origin.x;
	double low = fmin(s->a.x, s->b.x) - x0, high = fmax(s->a.x, s->b.x) - x0;

	return length > 0 && low > h->edge_x - 1 && high < h->edge_x + length + 1;
}

static bool is_shown(const struct plan *p, const struct stroke *s)
{
	return !is_existing(s->part) || is_rim(p, s);
}

/* Of all that is drawn, in the house. */
static struct box shown_box(const struct plan *p)
{
	struct box b = p->cut.box;

	for (int i = 0; i < p->whole.stroke_count; i++)
		if (is_shown(p, &p->whole.strokes[i]))
			b = box_add(box_add(b, p->whole.strokes[i].a), p->whole.strokes[i].b);
	return b;
}

static void draw_beyond(struct drawing *g, const struct plan *p, struct break_line b, double scale)
{
	for (int i = 0; i < p->whole.stroke_count; i++) {
		struct stroke s = p->whole.strokes[i];
		if (!is_shown(p, &s))
			continue;
		if (!is_existing(s.part))
			s = cut_stroke(b, FAR_SIDE, s);
		draw_stroke(g, PEN_ABOVE, s, scale);
	}
}

static bool is_upright(const struct part *p)
{
	return is_existing(p) || p->kind == &part_newel || p->kind == &part_baluster;
}

/* What the plane cuts, hatched: walls and posts.  Step and stringer are broken off there. */
static void draw_cut_faces(struct drawing *g, const struct plan *p, double scale)
{
	struct view faces = p->cut;
	struct cut_face *kept = NEW_N(g->arena, struct cut_face, faces.cut_count);

	faces.stroke_count = faces.cut_count = 0;
	faces.cuts = kept;
	for (int i = 0; i < p->cut.cut_count; i++)
		if (is_upright(p->cut.cuts[i].part))
			kept[faces.cut_count++] = p->cut.cuts[i];
	view_draw(g, &faces, (struct placing){ .scale = scale }, NULL);
}

static void draw_break(struct drawing *g, const struct plan *p, struct break_line b, double scale)
{
	struct vec along = vec_left(b.normal);
	double half = p->context->stair->width / 2 / fabs(along.y) + 50;
	struct vec c = vec_scale(b.through, scale), n = vec_scale(b.normal, 1.6);
	struct vec kink = vec_scale(along, 2.2);
	const struct vec line[] = { vec_sub(c, vec_scale(along, half * scale)), vec_sub(c, kink),
		vec_add(vec_sub(c, vec_scale(kink, 0.4)), n),
		vec_sub(vec_add(c, vec_scale(kink, 0.4)), n), vec_add(c, kink),
		vec_add(c, vec_scale(along, half * scale)) };

	draw_polyline(g, PEN_DIM, line, 6);
}

/* ---- arrow and numbers ---- */

static struct vec at(const struct plan *p, double x, double y, double scale)
{
	struct vec3 v = frame_place(p->flight->frame, vec3(x, y, 0));

	return vec_scale(vec(v.x, v.y), scale);
}

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

static struct box draw_arrow(struct hand h, const struct plan *p, double scale)
{
	const struct stair *s = p->context->stair;
	struct arena *a = h.g->arena;
	double y = s->width / 2;
	struct vec from = at(p, 0, y, scale), to = at(p, p->flight->total_run, y, scale);
	struct vec words = at(p, -s->job->treads.nosing, y, scale);
	const char *up = up_words(a, p), *treads = tread_words(a, p);
	double w = fmax(measure_width(h.measure, LETTER_REGULAR, h.letter, up),
		measure_width(h.measure, LETTER_REGULAR, h.letter, treads));

	words.x -= 6;
	draw_line(h.g, PEN_CENTRE, from, to);
	draw_circle(h.g, PEN_OUTLINE, from, 0.9);
	draw_arrow_head(h.g, to, vec_sub(to, from), h.letter * 1.2);
	draw_text(h.g, vec(words.x, words.y + 0.9), h.letter, ALIGN_RIGHT, up);
	draw_text(h.g, vec(words.x, words.y - h.letter - 0.9), h.letter, ALIGN_RIGHT, treads);
	return (struct box){ words.x - w, words.y - 2 * h.letter, words.x, words.y + 2 * h.letter };
}

/* Beside the walking line, just behind each riser; every one, or every fifth where they crowd. */
static void draw_riser_numbers(struct hand h, const struct plan *p, double scale)
{
	const struct stair *s = p->context->stair;
	const struct flight *f = p->flight;
	struct arena *a = h.g->arena;
	double widest = measure_width(h.measure, LETTER_REGULAR, h.letter, "00");
	double nosing = s->job->treads.nosing * scale;
	bool all = f->unit_run * scale - nosing > widest + 1.2;

	for (int i = 0; i < f->risers; i++) {
		int number = f->first_step + i;
		if (!all && number % 5 && number != 1 && number != f->risers)
			continue;
		struct vec v = at(p, i * f->unit_run, s->width / 2, scale);
		struct spot spot = { vec(v.x + 0.8, v.y + 1.2), ALIGN_LEFT, 0 };
		const char *text = arena_printf(a, "%d", number);
		if (i < f->risers - 1)
			draw_text(h.g, spot.at, h.letter, spot.align, text);
		else /* the upper floor may be cut just behind the last one */
			place_text(h.g, h.measure, h.letter, &spot, 1, text);
	}
}

/* ---- dimensions ---- */

static void run_dimensions(struct dims *d, const struct plan *p, double scale)
{
	const struct stair *s = p->context->stair;
	const struct flight *f = p->flight;
	struct arena *a = d->drawing->arena;
	int runs = (int)lround(f->total_run / f->unit_run);
	double *ticks = NEW_N(a, double, runs + 1);
	double foot = at(p, 0, 0, scale).y;

	for (int i = 0; i <= runs; i++)
		ticks[i] = at(p, i * f->unit_run, 0, scale).x;
	struct dim_link all = { ticks[0], ticks[runs], foot, foot,
		steps_words(a, s, runs, f->unit_run) };
	dims_steps(d, DIM_BELOW, all, ticks, runs + 1);
}

static void opening_dimension(struct dims *d, const struct plan *p, double scale)
{
	const struct stair *s = p->context->stair;
	const struct headroom *h = &s->headroom;
	struct arena *a = d->drawing->arena;
	double length = s->job->opening.length, foot = at(p, 0, s->width, scale).y;

	if (length <= 0)
		return;
	const struct dim_link l = {
		at(p, h->edge_x, 0, scale).x, at(p, h->edge_x + length, 0, scale).x, foot, foot,
		arena_printf(a, "opening above %s", measured_words(a, s, "opening_length", length))
	};
	dims_chain(d, DIM_ABOVE, &l, 1);
}

static void width_dimension(struct dims *d, const struct plan *p, double scale)
{
	const struct stair *s = p->context->stair;
	struct arena *a = d->drawing->arena;
	struct vec low = at(p, p->flight->total_run, 0, scale);
	struct vec high = at(p, p->flight->total_run, s->width, scale);
	const struct dim_link l = { low.y, high.y, low.x, high.x,
		measured_words(a, s, "width", s->width) };

	dims_chain(d, DIM_RIGHT, &l, 1);
}

static struct box compose(struct sheet *s, const void *what, double scale)
{
	const struct plan *p = what;
	struct break_line b = break_of(p);
	struct box m = shown_box(p);
	struct box around = { m.x0 * scale, m.y0 * scale, m.x1 * scale, m.y1 * scale };
	struct hand h = s->hand;

	draw_cut_faces(h.g, p, scale);
	draw_below(h.g, p, b, scale);
	draw_beyond(h.g, p, b, scale);
	draw_break(h.g, p, b, scale);
	draw_riser_numbers(h, p, scale);
	around = box_join(around, draw_arrow(h, p, scale));
	struct dims d = dims_begin(h.g, h.measure, h.letter, around);
	run_dimensions(&d, p, scale);
	opening_dimension(&d, p, scale);
	width_dimension(&d, p, scale);
	struct box used = dims_draw(&d);
	return draw_view_foot(h, used, "Plan", scale, p->context->stair->job->about.units);
}

static void note_sheet(struct sheet *s, const struct plan *p)
{
	const struct stair *st = p->context->stair;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Notes", general_words(a, st) },
		{ NULL,
			arena_printf(a,
				"Cut at waist height, %s over the lower finished floor; dashed "
				"beyond the break: "
				"above the "
				"cut. The arrow points up. Nosings are whole lines, riser faces "
				"dashed. "
				"Orientation not given.",
				length_words(a, st, cut_height(st))) },
		{ NULL,
			"Width: a wall counts at its finished face, an open side at the outer face "
			"of its stringer." },
		{ "Taken where the job is silent", assumptions_text(a, st->job, SHOWN_PLAN) },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct view_spec below = { .from = VIEW_PLAN,
		.cut = true,
		.at = cut_height(c->stair),
		.shows = shows_in_cut,
		.hidden = is_riser };
	struct view_spec above = { .from = VIEW_PLAN, .shows = shows_above };
	struct plan p = { c, &c->stair->flights[0], view_make(a, c->parts, below),
		view_make(a, c->parts, above) };
	struct sheet s = sheet_begin(a, c, "Plan");

	note_sheet(&s, &p);
	struct composition what = { compose, &p, shown_box(&p), 0 };
	struct composed done = sheet_compose(&s, what, s.room, SET_CENTRED);
	s.drawing->scale = scale_letter(a, done.ratio, c->stair->job->about.units);
	return s.drawing;
}

const struct sheet_kind sheet_plan = { "plan", "S-1", draw };
