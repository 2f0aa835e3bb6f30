/*
 * The cutting diagram: every board, to scale, with the pieces that come out of it.
 *
 * Widths may be drawn larger than lengths, so that narrow strips can be lettered;
 * both scales stand over each group.
 */
#include "base/text.h"
#include "draw/bounds.h"
#include "draw/place.h"
#include "lists/group_words.h"
#include "sheets/compose.h"
#include "sheets/cutting_board.h"
#include "sheets/words.h"

#define COLUMN_GAP 8.0
#define TWO_COLUMNS 330.0 /* of room */
#define HEAD_LINE 1.5

/* Sheets filled from the left, column by column. */
struct flow {
	struct arena *arena;
	const struct sheet_context *context;
	struct drawing *first, **tail;
	struct sheet sheet;
	int columns, column;
	double width; /* of a column */
	double used;  /* of its depth */
};

static void note_sheet(struct sheet *s)
{
	const struct stair *st = s->context->stair;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Notes", general_words(st) },
		{ NULL,
			"Rough sizes. Rip first, over the whole length, into the strips figured at "
			"the left; then cut each strip to length; a narrower piece is ripped once "
			"more. Shaded: trim, offcuts, and what is left over for knots and splits, "
			"which may fall anywhere." },
		{ NULL,
			"Fewest, cheapest: of all ways to cut in this order. One edge of every "
			"board is taken to be straight." },
		{ "Taken where the job is silent", assumptions_text(a, st->job, SHOWN_CUTTING) },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

static void next_sheet(struct flow *f)
{
	f->sheet = sheet_begin(f->arena, f->context,
		f->first ? "Cutting, continued" : "Cutting diagram");
	if (!f->first)
		note_sheet(&f->sheet);
	f->columns = box_width(f->sheet.room) > TWO_COLUMNS ? 2 : 1;
	f->width = (box_width(f->sheet.room) - (f->columns - 1) * COLUMN_GAP) / f->columns;
	f->column = 0;
	f->used = 0;
	f->sheet.drawing->scale = "as noted";
	*f->tail = f->sheet.drawing;
	f->tail = &f->sheet.drawing->next;
}

/* A place for something so deep, taller than a whole column or not. */
static struct vec place(struct flow *f, double depth)
{
	struct box room = f->sheet.room;

	if (f->used > 0 && f->used + depth > box_height(room)) {
		f->used = 0;
		if (++f->column == f->columns)
			next_sheet(f);
	}
	room = f->sheet.room;
	struct vec at = vec(room.x0 + f->column * (f->width + COLUMN_GAP), room.y1 - f->used);
	f->used += depth;
	return at;
}

/* ---- scales ---- */

static double longest_board(const struct cut_group *groups)
{
	double most = 0;

	for (const struct cut_group *g = groups; g; g = g->next)
		for (int i = 0; i < g->board_count; i++)
			most = fmax(most, g->boards[i].length);
	return most;
}

static double along_ratio(const struct flow *f)
{
	const double *ratio = sheet_ratios(f->context);
	double room = f->width - board_margin(f->sheet.hand);

	while (ratio[1] > 0 && longest_board(f->context->cutting) / *ratio > room)
		ratio++;
	return *ratio;
}

/* The smallest scale at which the narrowest strip can be lettered, if the widest board still goes
 * on the sheet; never smaller than that of the lengths. */
static double across_ratio(const struct flow *f, const struct cut_group *g, double along)
{
	const double *ratio = sheet_ratios(f->context);
	double narrow = INFINITY, wide = 0, letter = f->sheet.hand.letter;

	for (int i = 0; i < g->board_count; i++) {
		wide = fmax(wide, g->boards[i].width);
		for (int k = 0; k < g->boards[i].strip_count; k++)
			narrow = fmin(narrow, g->boards[i].strips[k].width);
	}
	double best = along;
	for (; *ratio > 0 && *ratio < along; ratio++)
		if (narrow / *ratio >= 1.6 * letter &&
			wide / *ratio < box_height(f->sheet.room) / 2)
			best = *ratio;
	return narrow / along >= 1.6 * letter ? along : best;
}

/* ---- groups ---- */

static struct board_view board_view(const struct flow *f, const struct cut_group *g,
	const struct cut_board *b)
{
	const struct job *job = f->context->stair->job;
	double along = along_ratio(f);
	struct board_view v = { .stair = f->context->stair, .group = g, .board = b };

	v.kerf = job->stock.kerf;
	v.end_trim = b->end_trim;
	v.along = 1 / along;
	v.across = 1 / across_ratio(f, g, along);
	v.width = f->width;
	return v;
}

static const char *head_words(const struct flow *f, const struct cut_group *g)
{
	struct arena *a = f->arena;
	double along = along_ratio(f), across = across_ratio(f, g, along);
	const char *scales = along == across
		? arena_printf(a, "1:%.0f", along)
		: arena_printf(a, "Lengths 1:%.0f, widths 1:%.0f", along, across);

	return arena_printf(a, "%s %s, %s. %s", g->species,
		group_thickness(a, job_lettering(f->context->stair->job), g), group_proof(a, g),
		scales);
}

static void draw_lines(struct flow *f, struct lines lines, enum letter_style style, struct vec at)
{
	struct hand h = f->sheet.hand;

	for (int i = 0; i < lines.n; i++)
		draw_text_styled(h.g, vec(at.x, at.y - h.letter * (1.2 + i * HEAD_LINE)), h.letter,
			0, ALIGN_LEFT, style, lines.line[i]);
}

static struct lines wrap(const struct flow *f, const char *words)
{
	/* bold is a little wider than what is measured here */
	return wrap_text(f->arena, f->sheet.hand.measure, f->sheet.hand.letter, f->width * 0.9,
		words);
}

static double lines_depth(const struct flow *f, struct lines lines)
{
	return lines.n * HEAD_LINE * f->sheet.hand.letter;
}

/* What fits no board on offer. */
static void draw_misfits(struct flow *f, const struct cut_group *g)
{
	struct text t = { .arena = f->arena };

	if (!g->misfit_count)
		return;
	for (int i = 0; i < g->misfit_count; i++)
		text_join(&t, ", ",
			arena_printf(f->arena, "%d %s", g->misfits[i].count,
				g->misfits[i].blank->part->mark));
	const char *words = arena_printf(f->arena, "%s %s: no board on offer holds %s.", g->species,
		group_thickness(f->arena, job_lettering(f->context->stair->job), g),
		text_chars(&t));
	struct lines lines = wrap(f, words);
	struct vec at = place(f, lines_depth(f, lines) + f->sheet.hand.letter);
	draw_lines(f, lines, LETTER_BOLD, at);
}

/* The heading stays with the first board. */
static void draw_group(struct flow *f, const struct cut_group *g)
{
	for (int i = 0; i < g->board_count; i++) {
		struct board_view v = board_view(f, g, &g->boards[i]);
		struct lines head = { NULL, 0 };
		if (i == 0)
			head = wrap(f, head_words(f, g));
		double down = lines_depth(f, head);
		struct vec at = place(f, down + board_depth(f->sheet.hand, &v));
		draw_lines(f, head, LETTER_BOLD, at);
		draw_board(f->sheet.hand, &v, vec(at.x, at.y - down));
	}
	draw_misfits(f, g);
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct flow f = { .arena = a, .context = c };

	f.tail = &f.first;
	next_sheet(&f);
	for (const struct cut_group *g = c->cutting; g; g = g->next)
		draw_group(&f, g);
	return f.first;
}

const struct sheet_kind sheet_cutting = { "cutting", "S-8", draw };
