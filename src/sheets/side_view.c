#include "sheets/side_view.h"

#include "draw/bounds.h"
#include "draw/dimension.h"
#include "draw/place.h"
#include "draw/table.h"
#include "sheets/words.h"

/* One side view being drawn. */
struct drafting {
	struct sheet *sheet;
	const struct side_view *what;
	const struct stair *stair;
	const struct flight *flight;
	struct slope_line nosing;
	double scale;
};

/* A point of the flight on paper: the stair climbs to the right seen from its right-hand side, to
 * the left seen from the other. */
static struct vec at(const struct drafting *d, double x, double z)
{
	struct vec3 p = frame_place(d->flight->frame, vec3(x, 0, z));

	return vec_scale(view_project(d->what->view.spec.from, p), d->scale);
}

static bool climbs_right(const struct drafting *d)
{
	return at(d, 1, 0).x > at(d, 0, 0).x;
}

static enum dim_side low_side(const struct drafting *d)
{
	return climbs_right(d) ? DIM_LEFT : DIM_RIGHT;
}

static enum dim_side high_side(const struct drafting *d)
{
	return climbs_right(d) ? DIM_RIGHT : DIM_LEFT;
}

/* The face of the top riser; the back of the last tread where that is flush with the floor. */
static double top_x(const struct drafting *d)
{
	return d->flight->total_run;
}

static double foot_x(const struct drafting *d)
{
	return -d->stair->job->treads.nosing;
}

/* ---- lines over the view ---- */

static void draw_nosing_line(const struct drafting *d)
{
	const struct flight *f = d->flight;
	double from = foot_x(d) - f->unit_run * 0.5, to = (f->risers - 1) * f->unit_run;

	draw_line(d->sheet->drawing, PEN_CENTRE, at(d, from, slope_at(d->nosing, from)),
		at(d, to, slope_at(d->nosing, to)));
}

/* Under the stringer, along the pitch: nothing else stands there.  Where the view is too small for
 * it, the table on the cover has it. */
static void draw_pitch(const struct drafting *d)
{
	struct hand h = d->sheet->hand;
	double angle = climbs_right(d) ? d->flight->pitch : -d->flight->pitch;
	double below = d->stair->unit_rise + 12 * MM_PER_INCH;
	struct spot spots[12];
	int n = 0;

	for (int i = 0; i < 12; i++) {
		double x = top_x(d) * (0.75 - 0.1 * (i % 3));
		double z = slope_at(d->nosing, x) - below - (1 + i / 3) * 2 * h.letter / d->scale;
		if (z * d->scale > 6 * h.letter)
			spots[n++] = (struct spot){ at(d, x, z), ALIGN_MIDDLE, angle };
	}
	place_text(h.g, h.measure, h.letter, spots, n,
		arena_printf(h.g->arena, "pitch %s", angle_letter(h.g->arena, d->flight->pitch)));
}

static const char *headroom_words(struct arena *a, const struct stair *s)
{
	const struct headroom *h = &s->headroom;

	if (h->state == HEADROOM_NOT_CHECKED)
		return "";
	return arena_printf(a, "headroom %s%s", length_words(a, s, h->least),
		h->state == HEADROOM_SHORT ? " SHORT" : "");
}

/* A plumb line from the nosing line to what is overhead, lettered near its top; the view's box with
 * it. */
static struct box draw_headroom(const struct drafting *d, struct box view)
{
	const struct headroom *h = &d->stair->headroom;
	struct hand hand = d->sheet->hand;
	const char *text = headroom_words(hand.g->arena, d->stair);
	struct vec low = at(d, h->x, h->nosing_z), high = at(d, h->x, h->overhead_z);
	double width = measure_width(hand.measure, LETTER_REGULAR, hand.letter, text);
	struct spot spots[12];

	if (h->state == HEADROOM_NOT_CHECKED)
		return view;
	for (int i = 0; i < 12; i++) {
		double y = high.y - hand.letter * (2.0 + 1.6 * (i / 2));
		double x = low.x + (i % 2 ? -1.5 - width : 1.5);
		spots[i] = (struct spot){ vec(x, y), ALIGN_LEFT, 0 };
	}
	draw_line(hand.g, PEN_DIM, low, high);
	draw_arrow_head(hand.g, low, vec(0, -1), hand.letter);
	draw_arrow_head(hand.g, high, vec(0, 1), hand.letter);
	view = box_add(box_add(view, low), high);
	int i = place_text(hand.g, hand.measure, hand.letter, spots, 12, text);
	if (i < 0)
		return view;
	return box_add(box_add(view, spots[i].at), vec_add(spots[i].at, vec(width, hand.letter)));
}

/* ---- dimensions ---- */

static struct dim_link link_between(double a, double b, double foot_a, double foot_b,
	const char *text)
{
	if (a <= b)
		return (struct dim_link){ a, b, foot_a, foot_b, text };
	return (struct dim_link){ b, a, foot_b, foot_a, text };
}

static void rise_dimensions(struct dims *dims, const struct drafting *d)
{
	const struct stair *s = d->stair;
	struct arena *a = dims->drawing->arena;
	double *ticks = NEW_N(a, double, s->risers + 1);
	double foot = at(d, foot_x(d), 0).x, head = at(d, top_x(d), 0).x;
	bool from_structure = s->job->floors.structural_rise > 0;
	const char *size = from_structure ? "structural_rise" : "total_rise";

	for (int i = 0; i <= s->risers; i++)
		ticks[i] = at(d, 0, i * s->unit_rise).y;
	struct dim_link all = { ticks[0], ticks[s->risers], foot, foot,
		steps_words(a, s, s->risers, s->unit_rise) };
	dims_steps(dims, low_side(d), all, ticks, s->risers + 1);
	all.text = arena_printf(a, "%s total rise%s", length_words(a, s, s->total_rise),
		from_structure || job_is_measured(s->job, size) ? "" : " VIF");
	all.foot_a = all.foot_b = head;
	dims_chain(dims, high_side(d), &all, 1);
	if (!from_structure)
		return;
	double low = at(d, 0, s->lower_structural).y, high = at(d, 0, s->upper_structural).y;
	struct dim_link structure = { low, high, head, head,
		arena_printf(a, "%s structure",
			measured_words(a, s, size, s->job->floors.structural_rise)) };
	dims_chain(dims, high_side(d), &structure, 1);
}

static bool shows_rail(const struct side_view *v)
{
	for (int i = 0; i < v->view.stroke_count; i++)
		if (v->view.strokes[i].part->kind == &part_rail)
			return true;
	return false;
}

/* The first step that is open on the side looked at: the rail begins there. */
static const struct step *first_open(const struct drafting *d)
{
	const struct flight *f = d->flight;

	for (int i = 0; i < f->step_count; i++)
		if (climbs_right(d) ? f->steps[i].open_right : f->steps[i].open_left)
			return &f->steps[i];
	return &f->steps[0];
}

static void rail_dimension(struct dims *dims, const struct drafting *d)
{
	const struct stair *s = d->stair;
	double rail = s->job->rail.height;
	const struct step *first = first_open(d);
	double x = first->nosing_x;
	struct vec low = at(d, x, first->level), high = at(d, x, first->level + rail);
	const struct dim_link l = { low.y, high.y, low.x, low.x,
		arena_printf(dims->drawing->arena, "rail %s",
			inches_words(dims->drawing->arena, s, rail)) };

	if (shows_rail(d->what))
		dims_chain(dims, low_side(d), &l, 1);
}

static void run_dimensions(struct dims *dims, const struct drafting *d)
{
	const struct stair *s = d->stair;
	const struct flight *f = d->flight;
	struct arena *a = dims->drawing->arena;
	int runs = (int)lround(f->total_run / f->unit_run);
	double *ticks = NEW_N(a, double, runs + 1);
	double floor = at(d, 0, 0).y;

	for (int i = 0; i <= runs; i++)
		ticks[i] = at(d, i * f->unit_run, 0).x;
	double from = ticks[0], to = ticks[runs];
	dims_steps(dims, DIM_BELOW,
		link_between(from, to, floor, at(d, 0, s->lower_structural).y,
			steps_words(a, s, runs, f->unit_run)),
		ticks, runs + 1);
}

static void opening_dimension(struct dims *dims, const struct drafting *d)
{
	const struct stair *s = d->stair;
	const struct headroom *h = &s->headroom;
	struct arena *a = dims->drawing->arena;
	double length = s->job->opening.length;

	if (length <= 0)
		return;
	double edge = at(d, h->edge_x, 0).x, header = at(d, h->edge_x + length, 0).x;
	double foot = at(d, 0, s->total_rise).y;
	struct dim_link l = link_between(edge, header, foot, foot,
		arena_printf(a, "opening %s", measured_words(a, s, "opening_length", length)));
	dims_chain(dims, DIM_ABOVE, &l, 1);
}

/* ---- levels ---- */

static struct box draw_levels(const struct drafting *d, struct box used)
{
	struct hand h = d->sheet->hand;
	struct arena *a = h.g->arena;
	const struct stair *s = d->stair;
	bool right = climbs_right(d);
	struct vec low = vec(right ? used.x1 : used.x0, at(d, 0, 0).y);
	struct vec high = vec(low.x, at(d, 0, s->total_rise).y);
	const char *upper = "Upper finished floor", *lower = "Lower finished floor";
	double wide = measure_width(h.measure, LETTER_REGULAR, h.letter, upper) + h.letter * 3.5;

	draw_level(h, low, right ? LEVEL_RIGHT : LEVEL_LEFT, lower,
		arena_printf(a, "±%s", length_words(a, s, 0)));
	draw_level(h, high, right ? LEVEL_RIGHT : LEVEL_LEFT, upper,
		arena_printf(a, "+%s", length_words(a, s, s->total_rise)));
	used = box_add(used, vec(low.x + (right ? wide : -wide), low.y - 2 * h.letter));
	return box_add(used, vec(high.x, high.y + 2 * h.letter));
}

/* ---- the whole ---- */

static struct box compose(struct sheet *s, const void *what, double scale)
{
	const struct side_view *v = what;
	struct drafting d = { s, v, v->context->stair, v->flight,
		flight_nosing_line(v->context->stair, v->flight), scale };
	struct box b = v->view.box;
	struct box around = { b.x0 * scale, b.y0 * scale, b.x1 * scale, b.y1 * scale };

	view_draw(s->drawing, &v->view, (struct placing){ .scale = scale }, NULL);
	draw_nosing_line(&d);
	around = draw_headroom(&d, around);
	struct dims dims = dims_begin(s->drawing, s->hand.measure, s->hand.letter, around);
	rise_dimensions(&dims, &d);
	rail_dimension(&dims, &d);
	run_dimensions(&dims, &d);
	opening_dimension(&dims, &d);
	struct box used = draw_levels(&d, dims_draw(&dims));
	draw_pitch(&d);
	return draw_view_foot(s->hand, used, v->title, scale, d.stair->job->about.units);
}

static struct composition composition(const struct side_view *v)
{
	return (struct composition){ compose, v, v->view.box, 0 };
}

/* ---- notes ---- */

/* Centre to centre along the run: the least distance between two of one row. */
static double baluster_spacing(const struct part *parts, double run)
{
	double least = run;

	for (const struct part *p = parts; p; p = p->next)
		for (const struct part *q = p; p->baluster && q; q = q->next)
			for (int i = 0; q->baluster && i < q->count; i++) {
				struct vec3 by = vec3_sub(q->places[i].origin, p->places[0].origin);
				double apart = fabs(by.x);
				if (fabs(by.y) < 1 && apart > 1 && apart < least)
					least = apart;
			}
	return least;
}

static const char *balustrade_words(struct arena *a, const struct side_view *v)
{
	const struct stair *s = v->context->stair;
	const struct job *job = s->job;
	double run = v->flight->unit_run, spacing = baluster_spacing(v->context->parts, run);

	if (!shows_rail(v))
		return "";
	return arena_printf(a,
		"Rail %s, its top %s plumb above the nosing line. Balusters %s square, %d a tread, "
		"%s centre to centre, %s clear; the first on each tread has its front in line with "
		"the riser face. Newels %s square.",
		section_words(a, s, job->rail.width, job->rail.depth),
		inches_words(a, s, job->rail.height), inches_words(a, s, job->balusters.section),
		(int)lround(run / spacing), inches_words(a, s, spacing),
		inches_words(a, s, spacing - job->balusters.section),
		inches_words(a, s, job->newels.section));
}

static const char *headroom_note(struct arena *a, const struct stair *s)
{
	const char *words = headroom_words(a, s);

	if (!*words)
		return "Headroom is not checked: no opening is given.";
	return arena_printf(a, "Least %s, plumb from the nosing line; wanted %s.", words,
		length_words(a, s, s->job->opening.headroom));
}

static void note_sheet(struct sheet *s, const struct side_view *v)
{
	const struct stair *st = v->context->stair;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Notes", general_words(a, st) },
		{ NULL, rounding_words(a, st) },
		{ NULL, headroom_note(a, st) },
		{ "Balustrade", balustrade_words(a, v) },
		{ "Taken where the job is silent", assumptions_text(a, st->job, SHOWN_ELEVATION) },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

/* ---- the sheet ---- */

/* Each rounded on its own from one zero, for marking a wall or a storey rod. */
static struct table steps_table(struct arena *a, const struct side_view *v)
{
	static const struct table_column columns[] = { { "Step", ALIGN_RIGHT, 0 },
		{ "Top of tread", ALIGN_RIGHT, 0 }, { "Riser face", ALIGN_RIGHT, 0 } };
	const struct stair *s = v->context->stair;
	const struct flight *f = v->flight;
	const char **cells = NEW_N(a, const char *, 3 * f->risers);

	for (int i = 0; i < f->risers; i++) {
		cells[3 * i] =
			i < f->step_count ? arena_printf(a, "%d", f->first_step + i) : "floor";
		cells[3 * i + 1] = inches_words(a, s, (i + 1) * s->unit_rise);
		cells[3 * i + 2] = inches_words(a, s, i * f->unit_run);
	}
	return (struct table){ "Running positions", columns, 3, cells, f->risers };
}

/* The table goes beside the view where it costs the view no scale. */
static struct composed compose_beside(struct sheet *s, const struct side_view *v)
{
	struct arena *a = s->drawing->arena;
	struct table steps = steps_table(a, v);
	struct box size = table_size(s->hand, &steps), room = s->room;
	struct sheet trial = sheet_begin(a, v->context, v->title);
	double whole = sheet_compose(&trial, composition(v), s->room, SET_CENTRED).ratio;

	trial = sheet_begin(a, v->context, v->title);
	room.x1 -= size.x1 + 8;
	bool fits = box_height(size) <= box_height(room) &&
		sheet_compose(&trial, composition(v), room, SET_CENTRED).ratio <= whole;
	if (fits)
		draw_table(s->hand, vec(s->room.x1 - size.x1, s->room.y1), &steps);
	return sheet_compose(s, composition(v), fits ? room : s->room, SET_CENTRED);
}

struct drawing *side_view_sheet(struct arena *a, const struct side_view *v)
{
	struct sheet s = sheet_begin(a, v->context, v->title);

	note_sheet(&s, v);
	struct composed done = compose_beside(&s, v);
	s.drawing->scale = scale_letter(a, done.ratio, v->context->stair->job->about.units);
	return s.drawing;
}
