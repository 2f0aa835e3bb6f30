#include "sheets/piece_cell.h"

#include "draw/bounds.h"
#include "draw/clip.h"
#include "draw/dimension.h"
#include "draw/place.h"
#include "sheets/compose.h"
#include "sheets/piece_sizes.h"
#include "sheets/piece_words.h"
#include "sheets/words.h"

#define PAD 3.0   /* round what is in a cell */
#define GAP 5.0   /* between views */
#define PITCH 1.5 /* of lines, of the height of a capital */

/* Scales worth having (1 to so much). */
#define WHOLE_MOST 12
#define BROKEN_MOST 10

/* A piece less than this across on paper is slender, unless it is drawn larger than 1 to 4. */
#define SLENDER 7.0
#define SLENDER_DRILLED 12.0
#define SLENDER_RATIO 4

#define LEAST_SECTION 10.0 /* on paper; smaller than this it tells nothing */

#define BROKEN_HIGH 40.0  /* a broken piece is drawn no wider across, on paper */
#define FIGURES_ROOM 34.0 /* beside a view, for what is figured across it */
#define WORDS_BESIDE 70.0 /* room that words take beside a view */
#define SHOWN_BREAK 10.0  /* of each stretch that is broken out, at least so much, on paper */

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

static void draw_heading(struct filling *f)
{
	struct hand h = f->sheet->hand;
	struct arena *a = h.g->arena;
	const struct stair *s = f->sheet->context->stair;
	double big = h.letter * 1.4, text_width = f->width - box_width(f->wish->key->box) - 3 * PAD;

	draw_key(h.g, f->wish->key,
		vec(f->width - PAD - box_width(f->wish->key->box),
			-PAD - box_height(f->wish->key->box)),
		f->part);
	f->y -= PAD + big;
	draw_text_styled(h.g, vec(PAD, f->y), big, 0, ALIGN_LEFT, LETTER_BOLD,
		piece_heading(a, f->part));
	letter_lines(f, text_width, piece_size_words(a, s, f->part));
	letter_lines(f, text_width,
		arena_printf(a, "Scale %s.", scale_letter(a, 1 / f->scale, s->job->about.units)));
	f->y = fmin(f->y - h.letter, -2 * PAD - box_height(f->wish->key->box));
}

/* ---- views ---- */

/* The zero of all figures. */
static void draw_datum(struct drawing *g, const struct piece_view *v, double scale)
{
	draw_circle(g, PEN_DIM, vec_scale(piece_point(v, v->zero), scale), 1.0);
}

/* A line along the grain, with half an arrow head at either end. */
static void draw_grain(struct drawing *g, const struct piece_view *v, double scale)
{
	double room_x = box_width(v->box) * scale, room_y = box_height(v->box) * scale;
	bool across = v->part->grain == GRAIN_ACROSS;
	double half = 6, barb = 1.4;
	struct vec mid = vec((v->box.x0 * 0.35 + v->box.x1 * 0.65) * scale,
		(v->box.y0 * 0.3 + v->box.y1 * 0.7) * scale);
	struct vec d = across ? vec(0, 1) : vec(1, 0), side = vec_left(d);

	if (v->part->grain == GRAIN_NONE || (across ? room_y : room_x) < 5 * half ||
		(across ? room_x : room_y) < 4 * barb)
		return;
	struct vec from = vec_sub(mid, vec_scale(d, half)), to = vec_add(mid, vec_scale(d, half));
	const struct vec line[] = { vec_add(from,
					    vec_add(vec_scale(d, 2 * barb), vec_scale(side, barb))),
		from, to, vec_sub(to, vec_add(vec_scale(d, 2 * barb), vec_scale(side, barb))) };
	draw_polyline(g, PEN_DIM, line, 4);
}

static struct block view_block(struct filling *f, enum piece_side side, double scale)
{
	struct sheet s = with_drawing(f->sheet, scrap(f->sheet));
	struct piece_view v = piece_view(s.drawing->arena, f->part, side, f->breaks);
	struct box used = piece_view_draw(s.drawing, &v, scale);

	if (side == PIECE_FACE) {
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

static bool has_bore_out_of(const struct part *p, struct vec3 way)
{
	for (const struct bore *b = p->bores; b; b = b->next)
		if (vec3_dot(b->at.w, way) > 0.7)
			return true;
	return false;
}

/* An edge is drawn where the face and its thickness do not say all. */
static bool needs_edge(const struct part *p)
{
	return has_bore_out_of(p, vec3(0, 1, 0)) || has_bore_out_of(p, vec3(0, -1, 0)) ||
		fabs(p->start.bevel) > NEAR_ENOUGH || fabs(p->end.bevel) > NEAR_ENOUGH;
}

/* ---- the section ---- */

/* The largest standard scale at which so much is drawn no larger than this. */
static double ratio_within(const struct cell_wish *w, double size, double most)
{
	const double *ratio = sheet_ratios(w->sheet->context->paper);

	while (ratio[1] != 0 && size / *ratio > most)
		ratio++;
	return *ratio;
}

static double section_ratio(const struct cell_wish *w)
{
	struct box b = outline_extent(w->part->section);

	return ratio_within(w, fmax(box_width(b), box_height(b)), fmin(w->width * 0.6, w->section));
}

/* An end is drawn large enough to drill by. */
static struct block end_block(struct filling *f, enum piece_side side, const char *name)
{
	const struct part_size *size = &f->part->size;
	double ratio =
		ratio_within(f->wish, fmax(size->width, size->thickness), f->wish->section / 2);
	struct block b = view_block(f, side, 1 / ratio);
	struct arena *a = b.g->arena;

	name_block(f, &b,
		arena_printf(a, "%s, %s", name,
			scale_letter(a, ratio, f->sheet->context->stair->job->about.units)));
	return b;
}

static struct block section_block(struct filling *f)
{
	struct sheet s = with_drawing(f->sheet, scrap(f->sheet));
	struct arena *a = s.drawing->arena;
	const struct stair *stair = s.context->stair;
	double ratio = section_ratio(f->wish);
	struct chain c = outline_chain(a, f->part->section);
	struct vec *paper = NEW_N(a, struct vec, c.n);
	struct box b = outline_extent(f->part->section), used = box_scale(b, 1 / ratio);

	for (int i = 0; i < c.n; i++)
		paper[i] = vec_scale(c.points[i], 1 / ratio);
	draw_polygon(s.drawing, PEN_CUT, paper, c.n);
	struct dims d = dims_begin(s.drawing, s.hand.measure, s.hand.letter, used);
	const struct dim_link wide[] = { { used.x0, used.x1, used.y0, used.y0,
		inches_words(a, stair, box_width(b)) } };
	const struct dim_link high[] = { { used.y0, used.y1, used.x0, used.x0,
		inches_words(a, stair, box_height(b)) } };
	dims_chain(&d, DIM_BELOW, wide, 1);
	dims_chain(&d, DIM_LEFT, high, 1);
	struct block block = { s.drawing, dims_draw(&d) };
	name_block(f, &block,
		arena_printf(a, "Section, %s", scale_letter(a, ratio, stair->job->about.units)));
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

/* Beside the views along the piece where those leave room, else under them. */
static void draw_ends(struct filling *f, double top)
{
	double from = f->wide + 2 * GAP, under = f->y;
	bool beside = f->width - PAD - from >= WORDS_BESIDE;
	struct row row = { PAD, PAD, 0 };

	if (beside) {
		row.from = row.x = from;
		f->y = top;
	}
	if (f->part->section.n > 0)
		put_across(f, &row, section_block(f));
	if (has_bore_out_of(f->part, vec3(-1, 0, 0)))
		put_across(f, &row, end_block(f, PIECE_START, "Left end"));
	if (has_bore_out_of(f->part, vec3(1, 0, 0)))
		put_across(f, &row, end_block(f, PIECE_END, "Right end"));
	put_across(f, &row, words_block(f, &row));
	f->y = fmin(f->y - row.deep, beside ? under + GAP : INFINITY);
}

static void draw_views(struct filling *f)
{
	struct block face = view_block(f, PIECE_FACE, f->scale);
	double start = PAD - face.box.x0;

	if (!needs_edge(f->part)) {
		put_along(f, face, start);
		return;
	}
	struct block edge = view_block(f, PIECE_EDGE, f->scale);
	name_block(f, &edge, "From the near edge");
	start = PAD - fmin(face.box.x0, edge.box.x0);
	put_along(f, face, start);
	put_along(f, edge, start);
}

static struct cell fill(const struct cell_wish *w, double ratio, struct piece_breaks breaks)
{
	struct sheet mine = with_drawing(w->sheet, scrap(w->sheet));
	struct filling f = { .wish = w, .sheet = &mine, .part = w->part, .scale = 1 / ratio };

	f.width = w->width;
	f.breaks = breaks;
	draw_heading(&f);
	double top = f.y;
	draw_views(&f);
	draw_ends(&f, top);
	return (struct cell){ w->part, mine.drawing, f.wide + PAD, -f.y + PAD, ratio };
}

static bool goes_in(const struct cell *c, const struct cell_wish *w)
{
	return c->width <= w->width + NEAR_ENOUGH && c->height <= w->height + NEAR_ENOUGH;
}

static struct cell none(const struct cell_wish *w)
{
	return (struct cell){ w->part, NULL, 0, 0, 0 };
}

/* The largest scale at which it goes in, down to 1:most. */
static struct cell whole(const struct cell_wish *w, double most)
{
	const double *ratio = sheet_ratios(w->sheet->context->paper);

	for (; *ratio != 0 && *ratio <= most; ratio++) {
		if (w->part->size.length / *ratio > w->width)
			continue;
		struct cell c = fill(w, *ratio, piece_unbroken());
		if (goes_in(&c, w))
			return c;
	}
	return none(w);
}

/* What is broken out of the piece so that it fills the width, both in millimetres of the piece. */
static struct piece_breaks breaks_to_fill(struct arena *a, const struct part *p, double width,
	double ratio)
{
	double shown = SHOWN_BREAK * ratio;
	struct piece_breaks b = piece_breaks(a, p, shown);
	double left = width - breaks_drawn_at(&b, p->size.length);

	return b.n > 0 && left > 0 ? piece_breaks(a, p, shown + left / b.n) : b;
}

/* Broken so as to take this share of the width: half of it leaves room for the ends beside. */
static struct cell broken_to(const struct cell_wish *w, double share)
{
	const double *ratio = sheet_ratios(w->sheet->context->paper);
	const struct part *p = w->part;
	double room = w->width * share - FIGURES_ROOM;

	for (; *ratio != 0 && *ratio <= BROKEN_MOST; ratio++) {
		if (p->size.width / *ratio > BROKEN_HIGH)
			continue;
		struct piece_breaks b =
			breaks_to_fill(w->sheet->drawing->arena, p, room * *ratio, *ratio);
		if (b.n == 0 || breaks_drawn_at(&b, p->size.length) / *ratio > room + NEAR_ENOUGH)
			continue;
		struct cell c = fill(w, *ratio, b);
		if (goes_in(&c, w))
			return c;
	}
	return none(w);
}

static struct cell broken(const struct cell_wish *w)
{
	struct cell c = broken_to(w, 1);

	return c.drawing ? c : broken_to(w, 0.5);
}

/* A piece so slender that nothing could be told at the scale at which it goes in whole. */
static bool is_slender(const struct cell *c)
{
	double least = c->part->bores ? SLENDER_DRILLED : SLENDER;

	return c->ratio > SLENDER_RATIO && c->part->size.width / c->ratio < least;
}

struct cell cell_make(const struct cell_wish *wish)
{
	struct cell c = whole(wish, WHOLE_MOST);

	if (c.drawing && !is_slender(&c))
		return c;
	struct cell large = broken(wish);
	return large.drawing ? large : c;
}

struct cell cell_make_anyhow(const struct cell_wish *wish)
{
	struct cell_wish w = *wish;

	for (; w.section > LEAST_SECTION; w.section /= 2) {
		struct cell c = cell_make(&w);
		if (!c.drawing)
			c = whole(&w, INFINITY);
		if (c.drawing)
			return c;
	}
	return fill(wish, BROKEN_MOST, piece_unbroken());
}
