#include "sheets/closeup.h"

#include "draw/bounds.h"
#include "draw/place.h"
#include "sheets/words.h"

#define GAP 6.0

/* Width of the words under a close-up, and the least room for one, in heights of a capital. */
#define WORDS 36.0
#define LEAST_WIDE 42.0
#define TIGHT 36.0 /* as wide: where that saves a sheet */
#define LEAST_HIGH 34.0

enum { MOST_ACROSS = 4, MOST_DOWN = 3 };

void closeup_size(struct closeup *c, struct closeup_size size)
{
	c->sizes[c->size_count++] = size;
}

void closeup_say(struct closeup *c, const char *words)
{
	if (*words)
		c->words[c->word_count++] = words;
}

/* ---- one of them ---- */

static void add_sizes(struct dims *d, const struct closeup *c, double scale)
{
	const struct stair *s = c->context->stair;

	for (int i = 0; i < c->size_count; i++) {
		const struct closeup_size *z = &c->sizes[i];
		double from = fmin(z->from, z->to), to = fmax(z->from, z->to);
		const struct dim_link link = { from * scale, to * scale, z->foot * scale,
			z->foot * scale, inches_words(d->drawing->arena, s, to - from) };
		dims_chain(d, z->side, &link, 1);
	}
}

static void draw_ball(struct hand h, const struct closeup *c, double scale)
{
	struct vec at = vec_scale(c->ball, scale);
	double radius = c->diameter / 2 * scale, cross = fmin(radius * 0.4, h.letter * 0.6);

	if (c->diameter <= 0)
		return;
	draw_circle(h.g, PEN_OUTLINE, at, radius);
	draw_line(h.g, PEN_DIM, vec(at.x - cross, at.y), vec(at.x + cross, at.y));
	draw_line(h.g, PEN_DIM, vec(at.x, at.y - cross), vec(at.x, at.y + cross));
}

/* Title and scale, no wider than the words under them: a longer title takes more lines. */
static struct box draw_title(struct hand h, struct box used, const char *title, const char *scale)
{
	double big = VIEW_TITLE * h.letter;
	double beside = 4 + measure_width(h.measure, LETTER_REGULAR, h.letter, scale);
	struct lines l = wrap_text_styled(h.g->arena, h.measure, LETTER_BOLD, big,
		WORDS * h.letter - beside, title);

	used.y0 -= h.letter * 3;
	for (int i = 0; i + 1 < l.n; i++) {
		draw_text_styled(h.g, vec(used.x0, used.y0), big, 0, ALIGN_LEFT, LETTER_BOLD,
			l.line[i]);
		double wide = measure_width(h.measure, LETTER_BOLD, big, l.line[i]);
		used.x1 = fmax(used.x1, used.x0 + wide);
		used.y0 -= big * 1.4;
	}
	double w = draw_view_title(h, vec(used.x0, used.y0), l.line[l.n - 1], scale);
	used.x1 = fmax(used.x1, used.x0 + w);
	used.y0 -= h.letter * 0.9;
	return used;
}

struct box closeup_draw_foot(struct sheet *s, struct box used, struct closeup_foot foot)
{
	struct hand h = s->hand;
	struct arena *a = s->drawing->arena;

	used = draw_title(h, used, foot.title, scale_words(a, s->context->stair, 1 / foot.scale));
	for (int i = 0; i < foot.word_count; i++) {
		struct lines l = wrap_text(a, h.measure, h.letter, WORDS * h.letter, foot.words[i]);
		used.y0 -= h.letter * 0.3;
		for (int k = 0; k < l.n; k++) {
			used.y0 -= h.letter * 1.45;
			draw_text(h.g, vec(used.x0, used.y0), h.letter, ALIGN_LEFT, l.line[k]);
			double wide = measure_width(h.measure, LETTER_REGULAR, h.letter, l.line[k]);
			used.x1 = fmax(used.x1, used.x0 + wide);
		}
	}
	used.y0 -= h.letter * 0.5;
	return used;
}

static struct box compose(struct sheet *s, const void *what, double scale)
{
	const struct closeup *c = what;
	struct box used = box_scale(c->window, scale);

	view_draw(s->drawing, &c->view, (struct placing){ .scale = scale }, &c->window);
	closeup_holes_draw(s->drawing, c->holes, c->window, scale);
	draw_ball(s->hand, c, scale);
	struct dims d = dims_begin(s->drawing, s->hand.measure, s->hand.letter, used);
	add_sizes(&d, c, scale);
	used = dims_draw(&d);
	return closeup_draw_foot(s, used,
		(struct closeup_foot){ c->title, scale, c->words, c->word_count });
}

struct composition closeup_composition(const struct closeup *c, double least_ratio)
{
	return (struct composition){ compose, c, c->window, least_ratio };
}

/* ---- their sheets ---- */

struct raster {
	int across, down;
};

static struct raster raster_for(const struct sheet *s, int n, double least_wide)
{
	double letter = s->hand.letter;
	int across = (int)((box_width(s->room) + GAP) / (least_wide * letter + GAP));
	int down = (int)((box_height(s->room) + GAP) / (LEAST_HIGH * letter + GAP));

	across = across < 1 ? 1 : across > MOST_ACROSS ? MOST_ACROSS : across;
	down = down < 1 ? 1 : down > MOST_DOWN ? MOST_DOWN : down;
	while (down > 1 && across * (down - 1) >= n)
		down--;
	while (across > 1 && (across - 1) * down >= n)
		across--;
	return (struct raster){ across, down };
}

static struct box cell(const struct sheet *s, struct raster r, int i)
{
	double wide = (box_width(s->room) - (r.across - 1) * GAP) / r.across;
	double high = (box_height(s->room) - (r.down - 1) * GAP) / r.down;
	int column = i % r.across, row = i / r.across;
	double x = s->room.x0 + column * (wide + GAP), y = s->room.y1 - row * (high + GAP);

	return (struct box){ x, y - high, x + wide, y };
}

static struct sheet begin(struct arena *a, const struct sheet_context *c,
	const struct closeup_page *page)
{
	struct sheet s = sheet_begin(a, c, page->title);

	sheet_notes(&s, page->notes, page->note_count);
	s.drawing->scale = "as noted";
	return s;
}

static int sheets_for(const struct sheet *s, int n, double least_wide)
{
	struct raster r = raster_for(s, n, least_wide);
	int full = r.across * r.down;

	return (n + full - 1) / full;
}

/* A sheet with some of the close-ups, and how much smaller than life they came out on it, as the
 * sum of the logarithms of their ratios. */
struct filled {
	struct drawing *drawing;
	double smallness;
};

static struct filled fill(struct arena *a, const struct sheet_context *c,
	const struct closeup_page *page, const struct composition *list, int n, struct raster r)
{
	struct sheet s = begin(a, c, page);
	double smallness = 0;

	for (int i = 0; i < n; i++)
		smallness += log(sheet_compose(&s, list[i], cell(&s, r, i), SET_CENTRED).ratio);
	return (struct filled){ s.drawing, s.drawing->runs_over ? INFINITY : smallness };
}

/* In fewer rows of more where they come out larger so. */
static struct drawing *fill_best(struct arena *a, const struct sheet_context *c,
	const struct closeup_page *page, const struct composition *list, int n, double least_wide)
{
	struct sheet trial = begin(a, c, page);
	struct raster r = raster_for(&trial, n, least_wide);
	int most = raster_for(&trial, n * MOST_DOWN, TIGHT).across;
	struct filled best = fill(a, c, page, list, n, r);

	for (int down = r.down - 1; down > 0; down--) {
		const struct raster flat = { (n + down - 1) / down, down };
		if (flat.across > most)
			break;
		struct filled f = fill(a, c, page, list, n, flat);
		if (f.smallness < best.smallness - NEAR_ENOUGH)
			best = f;
	}
	return best.drawing;
}

struct drawing *closeup_sheets(struct arena *a, const struct sheet_context *c,
	struct closeup_page page)
{
	struct drawing *first = NULL, **tail = &first;
	struct sheet trial = begin(a, c, &page);
	int roomy = sheets_for(&trial, page.n, LEAST_WIDE),
	    sheets = sheets_for(&trial, page.n, TIGHT);
	double least_wide = sheets < roomy ? TIGHT : LEAST_WIDE;

	for (int i = 0, at = 0; i < sheets; i++) {
		int here = (page.n - at + sheets - i - 1) / (sheets - i);
		*tail = fill_best(a, c, &page, page.list + at, here, least_wide);
		tail = &(*tail)->next;
		at += here;
	}
	return first;
}
