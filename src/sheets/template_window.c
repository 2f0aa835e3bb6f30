#include "sheets/template_window.h"

#include "pitchboard/length.h"

#define CROSS 5.0       /* half of an arm */
#define NEAR_LABEL 18.0 /* how far a label may stand from its point */
#define JOINT_WORDS 8.0 /* how far from a joint its words stand */
#define BAR_TICK 2.0

static const enum tile_side sides[] = { TILE_LEFT, TILE_RIGHT, TILE_TOP, TILE_BOTTOM };

/* A pattern seen through one sheet. */
struct view_through {
	struct page *page;
	struct window_place place;
	const struct tiling *tiling;
	struct tile tile;
	struct box window; /* on the pattern */
	struct box own;    /* on paper: what stays visible when the sheets are joined */
};

struct vec window_size(struct window_place place)
{
	return vec(box_width(place.frame) * place.correction.x,
		box_height(place.frame) * place.correction.y);
}

static struct vec on_paper(const struct view_through *v, struct vec p)
{
	return vec(v->place.frame.x0 + (p.x - v->window.x0) / v->place.correction.x,
		v->place.frame.y0 + (p.y - v->window.y0) / v->place.correction.y);
}

static void draw_line_through(struct view_through *v, const struct pattern_line *l)
{
	struct arena *a = v->page->arena;

	for (struct chain *c = clip_chain(a, v->window, l->chain); c; c = c->next) {
		struct vec *points = NEW_N(a, struct vec, c->n);
		for (int i = 0; i < c->n; i++)
			points[i] = on_paper(v, c->points[i]);
		page_chain(v->page, l->pen, (struct chain){ NULL, points, c->n, c->closed });
	}
}

static void draw_lines(struct view_through *v)
{
	for (const struct pattern_line *l = v->tiling->pattern->lines; l; l = l->next)
		if (box_touches(l->box, v->window))
			draw_line_through(v, l);
}

static void draw_cross(struct view_through *v, struct vec at)
{
	struct vec p = on_paper(v, at);

	page_line(v->page, PEN_GUIDE, vec(p.x - CROSS, p.y), vec(p.x + CROSS, p.y));
	page_line(v->page, PEN_GUIDE, vec(p.x, p.y - CROSS), vec(p.x, p.y + CROSS));
}

static const char *joint_words(const struct view_through *v, enum tile_side side)
{
	struct arena *a = v->page->arena;
	const char *other = tile_name(a, v->tiling, tile_beside(v->tile, side));

	switch (side) {
	case TILE_LEFT: return arena_printf(a, "← goes under %s", other);
	case TILE_RIGHT: return arena_printf(a, "→ trim here, lay on %s", other);
	case TILE_TOP: return arena_printf(a, "↑ goes under %s", other);
	case TILE_BOTTOM: return arena_printf(a, "↓ trim here, lay on %s", other);
	}
	return "";
}

/* The words stand on the sheet's own side of the joint line, half way along it. */
static struct vec joint_words_at(enum tile_side side, struct vec middle)
{
	const double off = 3;

	switch (side) {
	case TILE_LEFT: return vec(middle.x + off, middle.y);
	case TILE_RIGHT: return vec(middle.x - off, middle.y);
	case TILE_TOP: return vec(middle.x, middle.y - off);
	case TILE_BOTTOM: return vec(middle.x, middle.y + off);
	}
	return middle;
}

static bool is_upright(enum tile_side side)
{
	return side == TILE_LEFT || side == TILE_RIGHT;
}

/* Along the joint, no farther in than lettering needs. */
static struct box beside_joint(const struct view_through *v, enum tile_side side)
{
	struct box b = v->own;

	switch (side) {
	case TILE_LEFT: b.x1 = b.x0 + JOINT_WORDS; break;
	case TILE_RIGHT: b.x0 = b.x1 - JOINT_WORDS; break;
	case TILE_TOP: b.y0 = b.y1 - JOINT_WORDS; break;
	case TILE_BOTTOM: b.y1 = b.y0 + JOINT_WORDS; break;
	}
	return b;
}

/* Half way along the joint if it may be; where lines cross all of it, somewhere on the sheet. */
static void letter_joint(struct view_through *v, enum tile_side side)
{
	struct joint j = tile_joint(v->tiling, v->tile, side);
	struct vec from = on_paper(v, j.from), to = on_paper(v, j.to);
	struct vec middle = vec_scale(vec_add(from, to), 0.5);
	struct wording words = { joint_words(v, side), TEMPLATE_LETTER, LETTER_BOLD };
	struct wish wish = { joint_words_at(side, middle), vec_length(vec_sub(to, from)) / 2,
		beside_joint(v, side) };
	enum turn turn = is_upright(side) ? TURN_UPWARD : TURN_LEVEL;

	if (!box_is_empty(page_words(v->page, wish, turn, &words, 1)))
		return;
	wish.within = v->own;
	page_words(v->page, wish, turn, &words, 1);
}

static bool is_trimmed(enum tile_side side)
{
	return side == TILE_RIGHT || side == TILE_BOTTOM;
}

/* The joint line is drawn only where it is trimmed: on the sheet beneath it would be one line more
 * to mistake. */
static void draw_joint(struct view_through *v, enum tile_side side)
{
	struct joint j = tile_joint(v->tiling, v->tile, side);
	struct vec from = on_paper(v, j.from), to = on_paper(v, j.to);
	struct box f = v->place.frame;

	draw_cross(v, j.cross[0]);
	draw_cross(v, j.cross[1]);
	if (!is_trimmed(side))
		return;
	if (is_upright(side))
		page_line(v->page, PEN_GUIDE, vec(from.x, f.y0), vec(from.x, f.y1));
	else
		page_line(v->page, PEN_GUIDE, vec(f.x0, to.y), vec(f.x1, to.y));
}

static bool is_joined(const struct view_through *v, enum tile_side side)
{
	return tile_is_printed(v->tiling, tile_beside(v->tile, side));
}

/* From the lettering to the point it names, when it stands too far off to be sure. */
static void draw_leader(struct view_through *v, struct box words, struct vec at)
{
	struct vec near =
		vec(fmin(fmax(at.x, words.x0), words.x1), fmin(fmax(at.y, words.y0), words.y1));
	struct vec run = vec_sub(at, near), along = vec_unit(run);

	if (vec_length(run) < 4)
		return;
	struct vec from = vec_add(near, vec_scale(along, 0.6));
	struct vec to = vec_sub(at, vec_scale(along, 1.2));
	if (page_line_is_free(v->page, from, to))
		page_line(v->page, PEN_GUIDE, from, to);
}

static struct box letter_label(struct view_through *v, struct vec at, struct vec toward,
	const char *text)
{
	struct wording words = { text, TEMPLATE_LETTER, LETTER_REGULAR };
	double w = measure_width(v->page->measure, words.style, words.height, text);
	double off = fabs(toward.x) * w / 2 + fabs(toward.y) * words.height / 2 + 2;
	struct wish wish = { vec_add(at, vec_scale(toward, off)), NEAR_LABEL, v->own };

	return page_words(v->page, wish, TURN_LEVEL, &words, 1);
}

static void draw_label(struct view_through *v, const struct pattern_label *l)
{
	struct tile owner = tile_of(v->tiling, l->at);

	if (owner.column != v->tile.column || owner.row != v->tile.row)
		return;
	struct vec at = on_paper(v, l->at);
	for (int i = 0; i < LABEL_WAYS && l->ways[i]; i++) {
		struct box words = letter_label(v, at, l->toward, l->ways[i]);
		if (box_is_empty(words) && l->side == LABEL_ON_EITHER_SIDE)
			words = letter_label(v, at, vec_scale(l->toward, -1), l->ways[i]);
		if (box_is_empty(words))
			continue;
		draw_leader(v, words, at);
		return;
	}
}

static struct box box_on_paper(const struct view_through *v, struct box b)
{
	struct vec low = on_paper(v, vec(b.x0, b.y0)), high = on_paper(v, vec(b.x1, b.y1));

	return (struct box){ low.x, low.y, high.x, high.y };
}

void window_draw(struct page *page, struct window_place place, const struct tiling *t,
	struct tile at, const struct wording *heading, int headings)
{
	struct view_through v = { page, place, t, at, tile_window(t, at), box_empty() };

	v.own = box_on_paper(&v, tile_own(t, at));
	page_box(page, PEN_GUIDE, place.frame);
	draw_lines(&v);
	for (int i = 0; i < 4; i++)
		if (is_joined(&v, sides[i]))
			draw_joint(&v, sides[i]);
	for (int i = 0; i < 4; i++)
		if (is_joined(&v, sides[i]))
			letter_joint(&v, sides[i]);
	for (const struct pattern_label *l = t->pattern->labels; l; l = l->next)
		draw_label(&v, l);
	struct vec middle = vec((v.own.x0 + v.own.x1) / 2, (v.own.y0 + v.own.y1) / 2);
	for (int n = headings; n > 0; n--)
		if (!box_is_empty(page_words(page,
			    (struct wish){ middle, fmax(box_width(v.own), box_height(v.own)) / 2,
				    v.own },
			    TURN_LEVEL, heading, n)))
			return;
}

static void bar(struct page *page, struct vec at, enum turn turn, double length, const char *text)
{
	struct vec along = turn == TURN_LEVEL ? vec(1, 0) : vec(0, 1);
	struct vec up = vec_left(along), end = vec_add(at, vec_scale(along, length));
	struct wording words = { text, TEMPLATE_LETTER, LETTER_REGULAR };

	page_line(page, PEN_GUIDE, at, end);
	page_line(page, PEN_GUIDE, vec_add(at, vec_scale(up, BAR_TICK)),
		vec_sub(at, vec_scale(up, BAR_TICK)));
	page_line(page, PEN_GUIDE, vec_add(end, vec_scale(up, BAR_TICK)),
		vec_sub(end, vec_scale(up, BAR_TICK)));
	page_text(page, vec_add(vec_add(at, vec_scale(along, length / 2)), vec_scale(up, 1)),
		ALIGN_MIDDLE, turn, words);
}

void calibration_bars(struct page *page, struct vec at, enum turn turn, struct vec correction)
{
	double by = turn == TURN_LEVEL ? correction.x : correction.y;
	struct vec up = turn == TURN_LEVEL ? vec(0, 1) : vec(-1, 0);

	bar(page, vec_add(at, vec_scale(up, BAR_TICK)), turn, 100 / by, "100 mm");
	bar(page, vec_add(at, vec_scale(up, BAR_TICK + 6)), turn, 4 * MM_PER_INCH / by, "4 in");
}
