#include "sheets/piece_cell.h"

#include "draw/bounds.h"
#include "draw/place.h"
#include "sheets/compose.h"
#include "sheets/piece_section.h"
#include "sheets/piece_sizes.h"
#include "sheets/piece_words.h"
#include "sheets/words.h"

#define PAD 3.0   /* round what is in a cell */
#define GAP 5.0   /* between views */
#define PITCH 1.5 /* of lines, of the height of a capital */

#define WORDS_BESIDE 70.0 /* room that words take beside a view */

/* A cell being filled, from the top down. */
struct filling {
	const struct cell_wish *wish;
	struct sheet *sheet; /* its drawing is the cell's */
	const struct part *part;
	double scale, width;
	struct piece_breaks breaks;
	double y;    /* what comes next hangs from here */
	double wide; /* how far anything reached to the right */
};

/* Something drawn by itself, not yet in its place. */
struct block {
	struct drawing *g;
	struct box box;
};

static struct drawing *scrap(const struct sheet *s)
{
	struct drawing *g = drawing_new(s->drawing->arena, s->drawing->use, s->drawing->width,
		s->drawing->height);

	g->pens = s->drawing->pens;
	return g;
}

static struct sheet with_drawing(const struct sheet *s, struct drawing *g)
{
	struct sheet other = *s;

	other.drawing = g;
	other.hand.g = g;
	return other;
}

/* ---- words ---- */

static void letter_lines(struct filling *f, double width, const char *text)
{
	struct hand h = f->sheet->hand;
	struct lines l = wrap_text(h.g->arena, h.measure, h.letter, width, text);

	for (int i = 0; i < l.n; i++) {
		f->y -= h.letter * PITCH;
		draw_text(h.g, vec(PAD, f->y), h.letter, ALIGN_LEFT, l.line[i]);
		f->wide = fmax(f->wide,
			PAD + measure_width(h.measure, LETTER_REGULAR, h.letter, l.line[i]));
	}
}

/* In large letters. */
static void letter_name(struct filling *f, double width, const char *name)
{
	struct hand h = f->sheet->hand;
	double big = h.letter * 1.4;
	struct lines l = wrap_text_styled(h.g->arena, h.measure, LETTER_BOLD, big, width, name);

	for (int i = 0; i < l.n; i++) {
		f->y -= i == 0 ? big : big * PITCH;
		draw_text_styled(h.g, vec(PAD, f->y), big, 0, ALIGN_LEFT, LETTER_BOLD, l.line[i]);
	}
}

/* Which lap of the piece is in this cell. */
static const char *lap_words(const struct filling *f)
{
	const struct stair *s = f->sheet->context->stair;
	struct arena *a = f->sheet->drawing->arena;
	double zero = f->wish->sides->zero.x, length = f->part->size.length;
	double from = fmax(f->breaks.from - zero, 0), to = fmin(f->breaks.to - zero, length);

	if (from <= 0 && to >= length)
		return "";
	return arena_printf(a, " From %s to %s along it.", inches_words(a, s, from),
		inches_words(a, s, to));
}

/* Beside the room for the key. */
static void draw_heading(struct filling *f)
{
	struct hand h = f->sheet->hand;
	struct arena *a = h.g->arena;
	const struct stair *s = f->sheet->context->stair;
	double text_width = f->width - box_width(f->wish->key->box) - 3 * PAD;
	bool begins = (f->wish->holds & CELL_FACE) && !isfinite(f->breaks.from);
	bool goes_on = !(f->wish->holds & CELL_WORDS);
	const char *heading = piece_heading(a, f->part);

	if (!begins)
		heading = arena_printf(a, "%s, continued", heading);
	f->y -= PAD;
	letter_name(f, text_width, heading);
	if (begins)
		letter_lines(f, text_width, piece_size_words(a, s, f->part));
	if (f->wish->holds & CELL_VIEWS)
		letter_lines(f, text_width,
			arena_printf(a, "Scale %s.%s%s", scale_words(a, s, 1 / f->scale),
				lap_words(f), goes_on ? " Continued in another cell." : ""));
	f->y = fmin(f->y - h.letter, -2 * PAD - box_height(f->wish->key->box));
}

/* ---- views ---- */

/* The zero of all figures. */
static void draw_datum(struct drawing *g, const struct piece_view *v, double scale)
{
	draw_circle(g, PEN_DIM, vec_scale(piece_point(v, v->zero), scale), 1.0);
}

#define GRAIN_HALF 6.0 /* of its line */
#define GRAIN_BARB 1.4

/* Wood all round it?  Somewhere each way there is an edge. */
static bool is_on_piece(const struct drawing *g, struct box piece, struct vec p)
{
	const struct box ways[] = { { piece.x0 - 1, p.y, p.x, p.y },
		{ p.x, p.y, piece.x1 + 1, p.y }, { p.x, piece.y0 - 1, p.x, p.y },
		{ p.x, p.y, p.x, piece.y1 + 1 } };

	for (int i = 0; i < 4; i++)
		if (!heavy_line_crosses(g, box_grow(ways[i], 0.05)))
			return false;
	return true;
}

/* Does any line run through it: an edge, a hole from behind, the line where a piece is broken? */
static bool is_crossed(const struct drawing *g, struct box b)
{
	const struct text_room room = { { { b.x0, b.y0 }, { b.x1, b.y0 }, { b.x1, b.y1 },
		{ b.x0, b.y1 } } };

	for (const struct mark *k = g->first; k; k = k->next)
		if (mark_crosses(k, &room, b))
			return true;
	return false;
}

/* Past the middle, or where nothing runs through it; else where at least no edge does. */
static struct vec grain_place(const struct drawing *g, struct box piece)
{
	static const struct vec shares[] = { { 0.65, 0.7 }, { 0.65, 0.3 }, { 0.5, 0.5 },
		{ 0.35, 0.7 }, { 0.35, 0.3 }, { 0.25, 0.5 }, { 0.75, 0.5 }, { 0.57, 0.7 },
		{ 0.43, 0.7 }, { 0.57, 0.3 }, { 0.43, 0.3 } };
	enum { PLACES = sizeof(shares) / sizeof(*shares) };
	struct vec at[PLACES];
	int off_edges = -1;

	for (int i = 0; i < PLACES; i++) {
		at[i] = vec(piece.x0 + shares[i].x * box_width(piece),
			piece.y0 + shares[i].y * box_height(piece));
		struct box b = { at[i].x - GRAIN_HALF, at[i].y - GRAIN_BARB, at[i].x + GRAIN_HALF,
			at[i].y + GRAIN_BARB };
		if (!is_on_piece(g, piece, at[i]) || heavy_line_crosses(g, b))
			continue;
		if (!is_crossed(g, b))
			return at[i];
		off_edges = off_edges < 0 ? i : off_edges;
	}
	return at[off_edges < 0 ? 0 : off_edges];
}

/* A line along the grain, with half an arrow head at either end. */
static void draw_grain(struct drawing *g, const struct piece_view *v, double scale)
{
	struct box piece = box_scale(v->box, scale);

	if (v->part->grain == GRAIN_NONE || box_width(piece) < 5 * GRAIN_HALF ||
		box_height(piece) < 4 * GRAIN_BARB)
		return;
	struct vec mid = grain_place(g, piece), half = vec(GRAIN_HALF, 0),
		   barb = vec(2 * GRAIN_BARB, GRAIN_BARB);
	struct vec from = vec_sub(mid, half), to = vec_add(mid, half);
	const struct vec line[] = { vec_add(from, barb), from, to, vec_sub(to, barb) };
	draw_polyline(g, PEN_DIM, line, 4);
}

static struct block view_block(struct filling *f, enum piece_side side, double scale)
{
	struct sheet s = with_drawing(f->sheet, scrap(f->sheet));
	struct piece_view v = piece_view(s.drawing->arena, f->wish->sides, side, f->breaks);
	struct box used = piece_view_draw(s.drawing, &v, scale);

	if (side == PIECE_FACE) {
		if (piece_view_has(&v, v.zero))
			draw_datum(s.drawing, &v, scale);
		draw_grain(s.drawing, &v, scale);
	}
	return (struct block){ s.drawing, box_join(used, piece_sizes_draw(&s, &v, scale)) };
}

static void name_block(struct filling *f, struct block *b, const char *name)
{
	struct hand h = f->sheet->hand;
	double wide = measure_width(h.measure, LETTER_REGULAR, h.letter, name);

	b->box.y0 -= h.letter * PITCH * 1.4;
	draw_text(b->g, vec(b->box.x0, b->box.y0), h.letter, ALIGN_LEFT, name);
	b->box.x1 = fmax(b->box.x1, b->box.x0 + wide);
}

static void put(struct filling *f, struct block b, struct vec left_top)
{
	drawing_take(f->sheet->drawing, b.g, vec(left_top.x - b.box.x0, left_top.y - b.box.y1));
	f->wide = fmax(f->wide, left_top.x + box_width(b.box));
}

/* Views along the piece hang one under the other, their starts in line. */
static void put_along(struct filling *f, struct block b, double start)
{
	drawing_take(f->sheet->drawing, b.g, vec(start, f->y - b.box.y1));
	f->wide = fmax(f->wide, start + b.box.x1);
	f->y -= box_height(b.box) + GAP;
}

/* Views across it stand side by side, as many as go into a row. */
struct row {
	double from, x, deep;
};

static void put_across(struct filling *f, struct row *row, struct block b)
{
	if (row->x > row->from && row->x + box_width(b.box) > f->width - PAD) {
		f->y -= row->deep + GAP;
		*row = (struct row){ row->from, row->from, 0 };
	}
	put(f, b, vec(row->x, f->y));
	row->x += box_width(b.box) + GAP;
	row->deep = fmax(row->deep, box_height(b.box));
}

static bool has_bore_on(const struct part *p, enum piece_side side)
{
	for (const struct bore *b = p->bores; b; b = b->next)
		if (piece_bore_side(p, b) == side)
			return true;
	return false;
}

/* An edge is drawn where the face and its thickness do not say all. */
unsigned cell_holds_all(const struct part *p)
{
	bool edge = has_bore_on(p, PIECE_EDGE) || fabs(p->start.bevel) > NEAR_ENOUGH ||
		fabs(p->end.bevel) > NEAR_ENOUGH;
	bool ends = p->section.n > 0 || has_bore_on(p, PIECE_START) || has_bore_on(p, PIECE_END);

	return CELL_FACE | (edge ? CELL_EDGE : 0) | (ends ? CELL_ENDS : 0) | CELL_WORDS;
}

/* ---- the section ---- */

/* The largest standard scale at which so much is drawn no larger than this. */
static double ratio_within(const struct cell_wish *w, double size, double most)
{
	const double *ratio = sheet_ratios(w->sheet->context);

	while (ratio[1] != 0 && size / *ratio > most)
		ratio++;
	return *ratio;
}

static double section_ratio(const struct cell_wish *w)
{
	struct box b = outline_extent(w->sides->part->section);

	return ratio_within(w, fmax(box_width(b), box_height(b)), fmin(w->width * 0.6, w->section));
}

/* An end is drawn large enough to drill by. */
static struct block end_block(struct filling *f, enum piece_side side, const char *name)
{
	const struct part_size *size = &f->part->size;
	struct vec cut = piece_stretch(f->part, side);
	double ratio =
		ratio_within(f->wish, fmax(size->width, size->thickness), f->wish->section / 2);
	struct block b = view_block(f, side, 1 / ratio);
	struct arena *a = b.g->arena;

	name_block(f, &b,
		arena_printf(a, "%s%s, %s", name,
			cut.x * cut.y > 1 + NEAR_ENOUGH ? ", square to its cut" : "",
			scale_words(a, f->sheet->context->stair, ratio)));
	return b;
}

static struct block section_block(struct filling *f)
{
	struct sheet s = with_drawing(f->sheet, scrap(f->sheet));
	double ratio = section_ratio(f->wish);
	struct block block = { s.drawing, piece_section_draw(&s, f->part->section, 1 / ratio) };

	name_block(f, &block,
		arena_printf(s.drawing->arena, "Section, %s",
			scale_words(s.drawing->arena, s.context->stair, ratio)));
	return block;
}

/* ---- the whole cell ---- */

/* What is done to it, beside the ends where there is room, else under them. */
static struct block words_block(struct filling *f, const struct row *row)
{
	struct sheet s = with_drawing(f->sheet, scrap(f->sheet));
	double beside = f->width - PAD - row->x, under = f->width - PAD - row->from;
	bool fits = row->x > row->from && beside >= WORDS_BESIDE;
	struct filling words = { .sheet = &s };

	letter_lines(&words, fits ? beside : under,
		piece_work_words(s.drawing->arena, s.context->stair, f->part));
	return (struct block){ s.drawing, { PAD, words.y, fmax(words.wide, PAD), 0 } };
}

static void put_ends(struct filling *f, struct row *row)
{
	if (f->part->section.n > 0)
		put_across(f, row, section_block(f));
	if (has_bore_on(f->part, PIECE_START))
		put_across(f, row, end_block(f, PIECE_START, "Left end"));
	if (has_bore_on(f->part, PIECE_END))
		put_across(f, row, end_block(f, PIECE_END, "Right end"));
}

/* Beside the views along the piece where those leave room, else under them. */
static void draw_across(struct filling *f, double top)
{
	double from = f->wide + 2 * GAP, under = f->y;
	bool beside = f->width - PAD - from >= WORDS_BESIDE;
	struct row row = { PAD, PAD, 0 };

	if (beside) {
		row.from = row.x = from;
		f->y = top;
	}
	if (f->wish->holds & CELL_ENDS)
		put_ends(f, &row);
	if (f->wish->holds & CELL_WORDS)
		put_across(f, &row, words_block(f, &row));
	f->y = fmin(f->y - row.deep, beside ? under + GAP : INFINITY);
}

static void draw_views(struct filling *f)
{
	bool has_face = f->wish->holds & CELL_FACE, has_edge = f->wish->holds & CELL_EDGE;
	struct block face = { .box = box_empty() }, edge = face;

	if (has_face)
		face = view_block(f, PIECE_FACE, f->scale);
	if (has_edge) {
		edge = view_block(f, PIECE_EDGE, f->scale);
		name_block(f, &edge, "From the near edge");
	}
	double start = PAD - fmin(face.box.x0, edge.box.x0);
	if (has_face)
		put_along(f, face, start);
	if (has_edge)
		put_along(f, edge, start);
}

struct cell cell_fill(const struct cell_wish *w, double ratio, struct piece_breaks breaks)
{
	struct sheet mine = with_drawing(w->sheet, scrap(w->sheet));
	struct filling f = { .wish = w,
		.sheet = &mine,
		.part = w->sides->part,
		.scale = 1 / ratio,
		.width = w->width,
		.breaks = breaks };

	draw_heading(&f);
	double top = f.y;
	draw_views(&f);
	if (w->holds & (CELL_ENDS | CELL_WORDS))
		draw_across(&f, top);
	return (struct cell){ f.part, mine.drawing, f.wide + PAD, -f.y + PAD, ratio };
}

void cell_draw_key(const struct cell *c, const struct cell_wish *w)
{
	struct box key = w->key->box;

	draw_key(c->drawing, w->key, vec(w->width - PAD - box_width(key), -PAD - box_height(key)),
		c->part);
}
