#include "sheets/side_view.h"

#include "draw/bounds.h"
#include "draw/table.h"
#include "sheets/side_drafting.h"
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

static struct box compose(struct sheet *s, const void *what, double scale)
{
	const struct side_view *v = what;
	struct drafting d = { s, v, v->context->stair, v->flight,
		flight_nosing_line(v->context->stair, v->flight), scale };
	struct box around = box_scale(v->view.box, scale);

	struct view shown = without_idle_dashes(s->drawing->arena, v);
	struct left_over left = { .n = 0 };

	view_draw(s->drawing, &shown, (struct placing){ .scale = scale }, NULL);
	around = side_draw_lines(&d, around, &left);
	struct dims dims = dims_begin(s->drawing, s->hand.measure, s->hand.letter, around);
	side_add_dimensions(&dims, &d, &left);
	struct box used = side_draw_levels(&d, dims_draw(&dims));
	side_draw_pitch(&d);
	return draw_view_foot(s->hand, used, v->title, scale, d.stair->job->about.units);
}

static struct composition composition(const struct side_view *v)
{
	return (struct composition){ compose, v, v->view.box, 0 };
}

/* ---- notes ---- */

static void note_sheet(struct sheet *s, const struct side_view *v)
{
	const struct stair *st = v->context->stair;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Notes", general_words(a, st) },
		{ NULL, rounding_words(a, st) },
		{ NULL, side_headroom_note(a, st) },
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
