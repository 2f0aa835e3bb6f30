#include "sheets/side_view.h"

#include "draw/bounds.h"
#include "sheets/floor_edges.h"
#include "sheets/reader.h"
#include "sheets/side_drafting.h"
#include "sheets/tables.h"
#include "sheets/words.h"

struct vec side_at(const struct drafting *d, double x, double z)
{
	struct vec3 p = frame_place(d->flight->frame, vec3(x, 0, z));

	return vec_scale(view_project(d->what->view.spec.from, p), d->scale);
}

static bool climbs_right(const struct drafting *d)
{
	return side_at(d, 1, 0).x > side_at(d, 0, 0).x;
}

enum dim_side side_low(const struct drafting *d)
{
	return climbs_right(d) ? DIM_LEFT : DIM_RIGHT;
}

enum dim_side side_high(const struct drafting *d)
{
	return climbs_right(d) ? DIM_RIGHT : DIM_LEFT;
}

bool side_step_is_open(const struct side_view *v, const struct step *step)
{
	return v->view.spec.from == VIEW_FROM_LEFT ? step->open_left : step->open_right;
}

bool side_shows_rail(const struct side_view *v)
{
	for (int i = 0; i < v->view.stroke_count; i++)
		if (v->view.strokes[i].part->kind == &part_rail)
			return true;
	return false;
}

/* Dashes are for the steps that a wall hides; behind a stringer they would only be in the way. */
static bool is_idle_dash(const struct side_view *v, const struct stroke *s)
{
	const struct flight *f = v->flight;
	double u = (s->a.x + s->b.x) / 2, x0 = f->frame.origin.x;
	double x = v->view.spec.from == VIEW_FROM_LEFT ? -u - x0 : u - x0;
	int i = (int)floor((x - f->steps[0].nosing_x) / f->unit_run);

	if (s->pen != PEN_HIDDEN)
		return false;
	return i < 0 || i >= f->step_count || side_step_is_open(v, &f->steps[i]);
}

static struct view without_idle_dashes(struct arena *a, const struct side_view *v)
{
	struct view shown = v->view;
	struct stroke *kept = NEW_N(a, struct stroke, shown.stroke_count + 1);

	shown.strokes = kept;
	shown.stroke_count = 0;
	for (int i = 0; i < v->view.stroke_count; i++)
		if (!is_idle_dash(v, &v->view.strokes[i]))
			kept[shown.stroke_count++] = v->view.strokes[i];
	return shown;
}

/* ---- the whole ---- */

/* Lines, chains, levels and the pitch, from the box round what is drawn on. */
static struct box draw_sizes(const struct drafting *d, struct box around)
{
	struct sheet *s = d->sheet;
	struct left_over left = { .n = 0 };

	around = side_draw_lines(d, around, &left);
	struct dims dims = dims_begin(s->drawing, s->hand.measure, s->hand.letter, around);
	side_add_dimensions(&dims, d, &left);
	struct box used = side_draw_levels(d, dims_draw(&dims));
	side_draw_pitch(d);
	return used;
}

static struct box compose(struct sheet *s, const void *what, double scale)
{
	const struct side_view *v = what;
	struct drafting d = { s, v, v->context->stair, v->flight,
		flight_nosing_line(v->context->stair, v->flight), scale };
	struct box around = box_scale(v->view.box, scale);

	struct view shown = without_idle_dashes(s->drawing->arena, v);

	view_draw(s->drawing, &shown, (struct placing){ .scale = scale }, NULL);
	if (sheet_says(v->context, SAYS_FLOORS))
		floor_edges_draw(s->drawing, d.stair, &v->view, scale, v->view.box);
	struct mark_run balloons = { s->drawing->tail, NULL };
	if (v->shows & SIDE_MARKS)
		around = side_draw_balloons(&d, &shown, around);
	balloons.to = s->drawing->tail;
	if (v->shows & SIDE_SIZES)
		around = draw_sizes(&d, around);
	drawing_raise(s->drawing, balloons);
	return draw_view_foot(s->hand, around, v->title, scale, d.stair->job->about.units);
}

static struct composition composition(const struct side_view *v)
{
	return (struct composition){ compose, v, v->view.box, 0 };
}

/* ---- notes ---- */

static const char *floors_note(const struct side_view *v)
{
	return sheet_says(v->context, SAYS_FLOORS) ? floor_edges_note(v->context->stair, &v->view)
						   : "";
}

static void note_sheet(struct sheet *s, const struct side_view *v, set_notes_fn *set)
{
	const struct stair *st = v->context->stair;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Notes", general_words(st) },
		{ NULL, rounding_words(a, st) },
		{ NULL, side_headroom_note(a, s->context) },
		{ NULL, side_steps_note(a, v->context) },
		{ NULL, floors_note(v) },
		{ NULL, header_words(v->context->parts) },
		{ NULL, not_met_words(a, v->context->findings) },
		{ "Balustrade", balustrade_words(a, v) },
		{ NULL, by_others_words(a, st->job) },
		{ "Taken where the job is silent", assumptions_text(a, st->job, SHOWN_ELEVATION) },
	};

	set(s, notes, sizeof(notes) / sizeof(*notes));
}

/* ---- the sheet ---- */

/* At 1:24 or larger on one sheet there is nothing to gain from a second one. */
#define LARGE_ENOUGH (24 * WORTH_A_SHEET)

/* Balloons among which a leader is lost are worth a sheet of their own. */
#define WORTH_NO_CROWD 1.4

/* Each rounded on its own from one zero, for marking a wall or a storey rod; the upper floor last.
 */
static struct table steps_table(struct arena *a, const struct side_view *v)
{
	static const struct table_column columns[] = { { "Step", ALIGN_RIGHT, 0 },
		{ "Top of tread", ALIGN_RIGHT, 0 }, { "Riser face", ALIGN_RIGHT, 0 } };
	const struct stair *s = v->context->stair;
	const struct flight *f = v->flight;
	const char **cells = NEW_N(a, const char *, 3 * (f->step_count + 1)), **row = cells;

	for (int i = 0; i <= f->step_count; i++, row += 3) {
		bool is_step = i < f->step_count;
		row[0] = is_step ? arena_printf(a, "%d", f->first_step + i) : "floor";
		row[1] = inches_words(a, s, is_step ? f->steps[i].level : s->total_rise);
		row[2] = inches_words(a, s, is_step ? f->steps[i].riser_x : f->total_run);
	}
	return (struct table){ "Running positions", columns, 3, cells, f->step_count + 1 };
}

/* Where the newels stand: fronts along from the first riser's face, right-hand faces across from
 * the right-hand limit of the stair, foot and top over the lower finished floor. */
static struct table newels_table(struct arena *a, const struct side_view *v)
{
	static const struct table_column columns[] = { { "Newel", ALIGN_LEFT, 0 },
		{ "From riser 1", ALIGN_RIGHT, 0 }, { "From right", ALIGN_RIGHT, 0 },
		{ "Foot", ALIGN_RIGHT, 0 }, { "Top", ALIGN_RIGHT, 0 } };
	const struct stair *s = v->context->stair;
	double section = s->job->newels.section;
	int most = 0, n = 0;

	for (const struct part *p = v->context->parts; p; p = p->next)
		most += p->newel ? p->count : 0;
	const char **cells = NEW_N(a, const char *, 5 * most + 1), **row = cells;
	for (const struct part *p = v->context->parts; p; p = p->next)
		for (int i = 0; p->newel && i < p->count; i++, n++, row += 5) {
			double half = p->size.width / 2;
			struct vec3 foot = frame_place(p->places[i], vec3(0, half, half));
			row[0] = p->mark;
			row[1] = inches_words(a, s, foot.x - section / 2);
			row[2] = inches_words(a, s, foot.y - section / 2);
			row[3] = inches_words(a, s, foot.z);
			row[4] = inches_words(a, s, foot.z + p->size.length);
		}
	return (struct table){ arena_printf(a, "Newels, %s square: downhill and right-hand face",
				       inches_words(a, s, section)),
		columns, 5, cells, n };
}

static struct table_list position_tables(struct arena *a, const struct side_view *v)
{
	struct table *tables = NEW_N(a, struct table, 2);

	if (!sheet_says(v->context, SAYS_POSITIONS))
		return (struct table_list){ NULL, 0 };
	tables[0] = steps_table(a, v);
	tables[1] = newels_table(a, v);
	return (struct table_list){ tables, side_shows_rail(v) ? 2 : 1 };
}

/* Would the tables cost the view its scale? */
static bool fits_beside(const struct sheet *s, const struct side_view *v, struct table_list tables)
{
	struct arena *a = s->drawing->arena;
	struct sheet plain = sheet_begin(a, v->context, v->title);
	struct sheet beside = sheet_begin(a, v->context, v->title);
	double whole = sheet_compose(&plain, composition(v), s->room, SET_CENTRED).ratio;

	beside.room = s->room;
	if (sheet_tables(&beside, tables, TABLES_RIGHT, box_width(s->room)).n ||
		box_width(beside.room) <= 0)
		return false;
	double ratio = sheet_compose(&beside, composition(v), beside.room, SET_CENTRED).ratio;
	return ratio <= whole && !beside.drawing->runs_over;
}

static double draw_view(struct sheet *s, const struct side_view *v)
{
	struct composed done = sheet_compose(s, composition(v), s->room, SET_CENTRED);

	s->drawing->scale = scale_words(s->drawing->arena, v->context->stair, done.ratio);
	return done.ratio;
}

/* The view with its notes, the tables beside it or on a sheet after it. */
static struct drawing *draw_together(struct arena *a, const struct side_view *v,
	set_notes_fn *set_notes, struct sheet *s)
{
	struct table_list tables = position_tables(a, v);
	const char *more = arena_printf(a, "%s, positions", v->title);

	note_sheet(s, v, set_notes);
	if (fits_beside(s, v, tables))
		tables = sheet_tables(s, tables, TABLES_RIGHT, box_width(s->room));
	s->drawing->next = sheets_of_tables(a, v->context, more, tables);
	return s->drawing;
}

/* A way to lay a view out on sheets, and what it costs: its ratio, and so much for every sheet. */
struct layout {
	struct drawing *first;
	double cost;
};

static struct layout weigh(struct drawing *first, double ratio)
{
	double cost = ratio;

	for (const struct drawing *g = first; g; g = g->next) {
		cost *= g->runs_over ? INFINITY : WORTH_A_SHEET;
		cost *= g->is_crowded ? WORTH_NO_CROWD : 1;
	}
	return (struct layout){ first, cost };
}

static struct layout cheaper(struct layout one, struct layout other)
{
	return other.cost < one.cost ? other : one;
}

/* With its notes on the sheet; the tables beside it or on a sheet after it. */
static struct layout lay_together(struct arena *a, const struct side_view *v,
	set_notes_fn *set_notes)
{
	struct sheet s = sheet_begin(a, v->context, v->title);
	struct drawing *first = draw_together(a, v, set_notes, &s);

	return weigh(first, draw_view(&s, v));
}

/* By itself, notes and tables on a sheet after it. */
static struct layout lay_alone(struct arena *a, const struct side_view *v)
{
	struct sheet alone = sheet_begin(a, v->context, v->title);
	struct sheet notes = sheet_begin(a, v->context, arena_printf(a, "%s, notes", v->title));
	const char *more = arena_printf(a, "%s, positions", v->title);

	struct table_list tables = position_tables(a, v), rest = tables;
	note_sheet(&notes, v, tables.n ? sheet_notes : sheet_of_notes);
	if (tables.n)
		rest = sheet_tables(&notes, tables, TABLES_LEFT, box_width(notes.room));
	notes.drawing->next = sheets_of_tables(a, v->context, more, rest);
	alone.drawing->next = notes.drawing;
	struct layout way = weigh(alone.drawing, draw_view(&alone, v));
	way.cost *= tables.n ? 1 : WORTH_NOTES / WORTH_A_SHEET;
	return way;
}

static struct layout lay_out(struct arena *a, const struct side_view *v)
{
	struct layout one = lay_together(a, v, sheet_notes);

	if (one.cost > LARGE_ENOUGH)
		one = cheaper(one, lay_together(a, v, sheet_notes_right));
	return one.cost > LARGE_ENOUGH ? cheaper(one, lay_alone(a, v)) : one;
}

/* The key to the parts: the view with nothing round it but balloons. */
static struct drawing *marks_sheet(struct arena *a, const struct side_view *v)
{
	struct side_view key = *v;
	const struct note notes[] = { { "Notes",
		"Marks as in the list of parts. Sizes are on the sheet before." } };

	key.title = arena_printf(a, "%s, marks", v->title);
	key.shows = SIDE_MARKS;
	struct sheet s = sheet_begin(a, v->context, key.title);
	sheet_notes(&s, notes, 1);
	draw_view(&s, &key);
	return s.drawing;
}

static struct layout with_key(struct arena *a, const struct side_view *v, struct layout bare)
{
	*drawings_end(&bare.first) = marks_sheet(a, v);
	bare.cost *= WORTH_A_SHEET;
	return bare;
}

struct drawing *side_view_sheets(struct arena *a, const struct side_view *v)
{
	struct side_view whole = *v, bare = *v;

	bare.shows = SIDE_SIZES;
	if (!sheet_says(v->context, SAYS_MARKS))
		return lay_out(a, &bare).first;
	whole.shows = SIDE_SIZES | SIDE_MARKS;
	struct layout one = lay_out(a, &whole);
	if (one.cost <= LARGE_ENOUGH)
		return one.first;
	return cheaper(one, with_key(a, v, lay_out(a, &bare))).first;
}
