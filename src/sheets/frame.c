#include "sheets/frame.h"

#include <string.h>

#include "draw/bounds.h"
#include "draw/place.h"
#include "sheets/words.h"

#define ROOM_MARGIN 5.0     /* frame to the nearest view or note */
#define COLUMN_LETTERS 26.4 /* width of a column of notes, in heights of a capital */

/* Of a column: where it is narrower, nothing stands beside the title block. */
#define LEAST_BESIDE 0.7

static struct box frame_box(const struct paper *p)
{
	return (struct box){ p->left, p->bottom, p->width - p->right, p->height - p->top };
}

static const struct title_block *title_of(const struct sheet_context *c)
{
	return stationery_title(c->stationery, c->paper);
}

static double title_width(const struct sheet_context *c)
{
	return fmin(title_of(c)->width, box_width(frame_box(c->paper)));
}

/* On a paper too narrow for both there is none. */
static double stamp_width(const struct sheet_context *c)
{
	double left = box_width(frame_box(c->paper)) - title_width(c);

	return c->set && c->set->stamp <= left ? c->set->stamp : 0;
}

static double title_height(const struct title_block *t)
{
	double h = 0;

	for (int i = 0; i < t->n; i++)
		h += t->rows[i].height;
	return h;
}

struct sheet sheet_begin(struct arena *a, const struct sheet_context *c, const char *title)
{
	struct drawing *g = drawing_new(a, USE_SHEET, c->paper->width, c->paper->height);
	struct box frame = frame_box(c->paper);

	g->title = title;
	g->pens = c->paper->pens;
	frame.y0 += title_height(title_of(c));
	return (struct sheet){ .context = c,
		.drawing = g,
		.hand = { g, c->measure, c->paper->lettering },
		.room = box_grow(frame, -ROOM_MARGIN),
		.top = frame.y1 - ROOM_MARGIN,
		.bottom = frame.y0 + ROOM_MARGIN };
}

struct box sheet_room_beside(const struct sheet *s)
{
	const struct sheet_context *c = s->context;
	struct box b = box_grow(frame_box(c->paper), -ROOM_MARGIN);

	b.x1 = fmax(b.x0, b.x1 - title_width(c) - stamp_width(c));
	return b;
}

/* Where notes stand: columns in an area that is as deep as they need. */
struct notes_place {
	struct box area;
	int columns;
	double width;
};

static double column_width(struct hand h)
{
	return COLUMN_LETTERS * h.letter;
}

static int columns_in(struct hand h, double wide)
{
	return (int)fmax(1, floor((wide + PROSE_GAP) / (column_width(h) + PROSE_GAP)));
}

/* Width of one of so many columns. */
static double share_of(double wide, int columns)
{
	return (wide - (columns - 1) * PROSE_GAP) / columns;
}

static struct notes_place place_notes(struct sheet *s, struct prose p, struct box area)
{
	int columns = columns_in(s->hand, box_width(area));
	double width = share_of(box_width(area), columns);

	while (prose_columns(s->hand, p, area, width) > columns)
		area.y1 += s->hand.letter / 2;
	return (struct notes_place){ prose_balance(s->hand, p, area, width), columns, width };
}

/* Beside the title block where that costs the views no more room than over it. */
void sheet_notes(struct sheet *s, const struct note *notes, int n)
{
	const struct sheet_context *c = s->context;
	struct box frame = frame_box(c->paper), beside = box_grow(frame, -ROOM_MARGIN * 0.7);
	struct box over = beside;
	double title = title_height(title_of(c));

	beside.x1 = frame.x1 - title_width(c) - stamp_width(c) - PROSE_GAP;
	beside.y1 = frame.y0 + title - ROOM_MARGIN * 0.5;
	over.y0 = frame.y0 + title + ROOM_MARGIN * 0.5;
	over.y1 = over.y0 + s->hand.letter;
	double column = column_width(s->hand);
	bool is_room = box_width(beside) > column * LEAST_BESIDE;
	double narrow = is_room ? fmin(box_width(beside), column) : column;
	struct prose p = prose_set(s->hand, notes, n, narrow);
	struct notes_place low = place_notes(s, p, over), place = low;
	if (is_room) {
		place = place_notes(s, p, beside);
		if (place.area.y1 > low.area.y1)
			place = low;
	}
	prose_draw(s->hand, p, place.area, place.width);
	s->room.y0 = fmax(s->room.y0, place.area.y1 + 2 * s->hand.letter);
}

void sheet_notes_right(struct sheet *s, const struct note *notes, int n)
{
	double width = column_width(s->hand);
	struct box area = s->room;
	struct prose p = prose_set(s->hand, notes, n, width);

	area.x0 = area.x1 - width;
	if (prose_columns(s->hand, p, area, width) > 1)
		s->drawing->runs_over = true;
	prose_draw(s->hand, p, area, width);
	s->room.x1 = area.x0 - PROSE_GAP;
}

/* Words on a page of their own, in one size of letters. */
struct page_of_notes {
	struct prose prose;
	double width; /* of a column */
	bool fits;
};

static struct page_of_notes set_page(const struct sheet *s, struct hand h, const struct note *notes,
	int n)
{
	int columns = columns_in(h, box_width(s->room));
	double width = share_of(box_width(s->room), columns);
	struct prose p = prose_set(h, notes, n, width);

	return (struct page_of_notes){ p, width, prose_columns(h, p, s->room, width) <= columns };
}

void sheet_of_notes(struct sheet *s, const struct note *notes, int n)
{
	static const double larger[] = { 1.4, 1.2, 1 };
	struct hand h = s->hand;
	struct page_of_notes page = { .fits = false };

	for (int i = 0; i < 3 && !page.fits; i++) {
		h.letter = s->hand.letter * larger[i];
		page = set_page(s, h, notes, n);
	}
	if (!page.fits)
		s->drawing->runs_over = true;
	prose_draw(h, page.prose, prose_balance(h, page.prose, s->room, page.width), page.width);
}

const char *assumptions_text(struct arena *a, const struct job *job, unsigned shown)
{
	const char *text = "";

	for (const struct assumption *s = job->assumptions; s; s = s->next)
		if (s->shown & shown)
			text = arena_printf(a, "%s%s%s %s", text, *text ? "; " : "", s->label,
				s->value);
	return *text ? arena_printf(a, "%s.", text) : "";
}

/* ---- title block ---- */

struct title_page {
	const struct sheet_context *context;
	const struct drawing *sheet;
	int number, of;
};

static const char *newest_revision(const struct job *job)
{
	return job->revision_count ? job->revisions[job->revision_count - 1].mark : "-";
}

static bool is_for_client(const struct sheet_context *c)
{
	return c->set && c->set->reader == READER_CLIENT;
}

static const char *status_text(struct arena *a, const struct sheet_context *c)
{
	const struct job *job = c->stair->job;

	if (*unverified_words(a, job))
		return is_for_client(c) ? "SITE SIZES NOT ALL VERIFIED" : "NOT FOR FABRICATION";
	return arena_printf(a, "%ssite sizes verified, %s, %s",
		c->stair->headroom.state == HEADROOM_SHORT ? "HEADROOM SHORT; " : "",
		job->measured.by, job->measured.date);
}

static const char *units_text(struct arena *a, const struct job *job)
{
	if (job->about.units == UNITS_MILLIMETRES)
		return "millimetres";
	return arena_printf(a, "feet, inches, 1/%d\"", job->about.fraction);
}

static const char *field_text(struct arena *a, const struct title_page *p, const char *name)
{
	const struct job *job = p->context->stair->job;
	const struct {
		const char *name, *text;
	} fields[] = {
		{ "job", job->about.name },
		{ "job_number", job->about.number },
		{ "client", job->about.client },
		{ "site", job->about.site },
		{ "drawn_by", job->about.drawn_by },
		{ "shop", job->about.shop },
		{ "shop_address", job->about.shop_address },
		{ "date", job_date(job) },
		{ "title", p->sheet->title },
		{ "sheet", p->sheet->id },
		{ "of", arena_printf(a, "%d of %d", p->number, p->of) },
		{ "scale", p->sheet->scale ? p->sheet->scale : "none" },
		{ "revision", newest_revision(job) },
		{ "status", status_text(a, p->context) },
		{ "units", units_text(a, job) },
		{ "fingerprint", *p->context->set_fingerprint ? job->fingerprint : "" },
		{ "set", p->context->set_fingerprint },
		{ "program", "pitchboard" },
		{ "initials", "" },
	};

	if (name[0] == '=')
		return name + 1;
	for (size_t i = 0; i < sizeof(fields) / sizeof(*fields); i++)
		if (!strcmp(fields[i].name, name))
			return fields[i].text ? fields[i].text : "";
	return "";
}

#define LABEL_HEIGHT 2.5 /* nothing is lettered smaller */

/* A long title is lettered smaller, down to the label beside it. */
static double fit_letter(struct hand h, double height, double width, const char *text)
{
	double wide = measure_width(h.measure, LETTER_BOLD, height, text);

	return wide > width ? fmax(LABEL_HEIGHT, height * width / wide) : height;
}

/* As many letters as fit, the rest as an ellipsis: a title block has no second line. */
static const char *fit_text(struct arena *a, struct hand h, double height, enum letter_style style,
	double width, const char *text)
{
	size_t n = strlen(text);
	const char *fitted = text;

	while (n > 0 && measure_width(h.measure, style, height, fitted) > width) {
		do
			n--;
		while (n > 0 && ((unsigned char)text[n] & 0xC0) == 0x80);
		fitted = arena_printf(a, "%.*s...", (int)n, text);
	}
	return fitted;
}

/* Label and value stand on one line, the value bold. */
static void draw_cell(struct arena *a, struct hand h, struct box b, const struct title_cell *cell,
	const char *text)
{
	double x = b.x0 + 1.5, base = b.y0 + (box_height(b) - cell->letter) / 2;
	double label = measure_width(h.measure, LETTER_REGULAR, LABEL_HEIGHT, cell->label);

	draw_text(h.g, vec(x, base), LABEL_HEIGHT, ALIGN_LEFT, cell->label);
	if (*cell->label)
		x += label + 2;
	double letter = fit_letter(h, cell->letter, b.x1 - x - 1, text);
	draw_text_styled(h.g, vec(x, base), letter, 0, ALIGN_LEFT, LETTER_BOLD,
		fit_text(a, h, letter, LETTER_BOLD, b.x1 - x - 1, text));
}

static void draw_title_row(struct arena *a, const struct title_page *p, struct hand h,
	const struct title_row *row, struct box b)
{
	double shares = 0, x = b.x0;

	for (int i = 0; i < row->n; i++)
		shares += row->cells[i].share;
	for (int i = 0; i < row->n; i++) {
		double w = box_width(b) * row->cells[i].share / shares;
		struct box cell = { x, b.y0, x + w, b.y1 };
		if (i > 0)
			draw_line(h.g, PEN_TABLE, vec(x, b.y0), vec(x, b.y1));
		draw_cell(a, h, cell, &row->cells[i], field_text(a, p, row->cells[i].shows));
		x += w;
	}
	draw_line(h.g, PEN_TABLE, vec(b.x0, b.y1), vec(b.x1, b.y1));
}

static void draw_title_block(struct arena *a, const struct title_page *p, struct hand h)
{
	const struct title_block *t = title_of(p->context);
	struct box frame = frame_box(p->context->paper);
	double x = frame.x1 - title_width(p->context), y = frame.y0 + title_height(t);

	draw_line(h.g, PEN_FRAME, vec(x, frame.y0), vec(x, y));
	draw_line(h.g, PEN_FRAME, vec(x, y), vec(frame.x1, y));
	for (int i = 0; i < t->n; i++) {
		struct box row = { x, y - t->rows[i].height, frame.x1, y };
		draw_title_row(a, p, h, &t->rows[i], row);
		y = row.y0;
	}
}

/* In the margin over the frame, so that it spoils nothing and cannot be overlooked. */
static void draw_warning(struct arena *a, const struct title_page *p, struct hand h)
{
	struct box frame = frame_box(p->context->paper);
	const char *open = unverified_words(a, p->context->stair->job);
	bool client = is_for_client(p->context);
	const char *text = arena_printf(a, "%s: %s",
		client ? "Not to be built from. Not yet measured in your house"
		       : "NOT FOR FABRICATION: verify in field",
		open);
	double big = h.letter * 1.2;

	if (!*open)
		return;
	if (measure_width(h.measure, LETTER_BOLD, big, text) > box_width(frame))
		text = client
			? "Not to be built from. Some sizes are not yet measured in your house"
			: "NOT FOR FABRICATION: sizes to be verified in field, see the first sheet";
	draw_text_styled(h.g, vec((frame.x0 + frame.x1) / 2, frame.y1 + 2), big, 0, ALIGN_MIDDLE,
		LETTER_BOLD, text);
}

/* What the set is for, under the frame. */
static void draw_says(const struct title_page *p, struct hand h)
{
	struct box frame = frame_box(p->context->paper);

	if (p->context->set)
		draw_text_styled(h.g, vec((frame.x0 + frame.x1) / 2, frame.y0 - 2 - h.letter),
			h.letter, 0, ALIGN_MIDDLE, LETTER_BOLD, p->context->set->says);
}

/* The space kept clear for a stamp, beside the title block on every sheet; nothing is in it, the
 * words for it stand over it. */
static void draw_stamp_space(const struct title_page *p, struct hand h)
{
	const struct sheet_context *c = p->context;
	struct box frame = frame_box(c->paper);
	double x = frame.x1 - title_width(c), top = frame.y0 + title_height(title_of(c));
	double wide = stamp_width(c), strip = 2 * h.letter;

	if (wide <= 0)
		return;
	draw_box(h.g, PEN_TABLE, (struct box){ x - wide, frame.y0, x, top - strip });
	draw_box(h.g, PEN_TABLE, (struct box){ x - wide, top - strip, x, top });
	draw_text(h.g, vec(x - wide + 1.5, top - 1.5 * h.letter), h.letter, ALIGN_LEFT,
		"kept clear for the department's stamp");
}

bool frame_lacks_stamp(const struct sheet_context *c)
{
	return c->set->stamp > 0 && stamp_width(c) <= 0;
}

void frames_draw(struct arena *a, const struct sheet_context *c, struct drawing *sheets)
{
	struct title_page p = { .context = c };

	for (struct drawing *g = sheets; g; g = g->next)
		p.of++;
	for (struct drawing *g = sheets; g; g = g->next) {
		struct hand h = { g, c->measure, c->paper->lettering };
		p.sheet = g;
		p.number++;
		draw_box(g, PEN_FRAME, frame_box(c->paper));
		draw_title_block(a, &p, h);
		draw_stamp_space(&p, h);
		draw_warning(a, &p, h);
		draw_says(&p, h);
	}
}
