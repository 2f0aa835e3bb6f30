#include "sheets/template_page.h"

#include <stdlib.h>

#include "draw/place.h"

#define AIR 0.8      /* over and under lettering */
#define AIR_ENDS 1.6 /* before and after it: words must not run on into others, or into a cross */
#define LINE_AIR 0.9 /* between lines of words */
#define RINGS 16     /* of places tried round a wish */

enum obstacle_kind { OBSTACLE_LINE, OBSTACLE_LETTERING };

/* A line of the page as far as it runs in one strip, or lettering that touches it. */
struct obstacle {
	struct obstacle *next;
	enum obstacle_kind kind;
	struct vec a, b; /* of a line */
	struct box box;  /* of either */
};

/* Pages are parted into strips this wide, or room would be looked for among all marks of a roll. */
#define STRIP 60.0

struct page page_begin(struct arena *a, enum drawing_use use, struct vec paper,
	struct measure measure)
{
	int strips = (int)ceil(paper.x / STRIP) + 1;

	return (struct page){ a, drawing_new(a, use, paper.x, paper.y), measure,
		NEW_N(a, struct obstacle *, strips), strips };
}

static int strip_at(const struct page *p, double x)
{
	return (int)fmin(fmax(floor(x / STRIP), 0), p->strip_count - 1);
}

static void remember(struct page *p, int strip, struct obstacle what)
{
	struct obstacle *o = NEW(p->arena, struct obstacle);

	*o = what;
	o->next = p->strips[strip];
	p->strips[strip] = o;
}

static void remember_line(struct page *p, struct vec a, struct vec b)
{
	int last = strip_at(p, fmax(a.x, b.x));

	for (int i = strip_at(p, fmin(a.x, b.x)); i <= last; i++) {
		struct box strip = { i * STRIP, -INFINITY, (i + 1) * STRIP, INFINITY };
		struct clipped c = clip_segment(strip, a, b);
		if (c.some)
			remember(p, i,
				(struct obstacle){ NULL, OBSTACLE_LINE, c.a, c.b,
					box_grow(box_add(box_add(box_empty(), c.a), c.b),
						NEAR_ENOUGH) });
	}
}

static void remember_lettering(struct page *p, struct box b)
{
	for (int i = strip_at(p, b.x0); i <= strip_at(p, b.x1); i++)
		remember(p, i, (struct obstacle){ .kind = OBSTACLE_LETTERING, .box = b });
}

void page_line(struct page *p, enum pen pen, struct vec a, struct vec b)
{
	draw_line(p->drawing, pen, a, b);
	remember_line(p, a, b);
}

void page_chain(struct page *p, enum pen pen, struct chain c)
{
	if (c.closed)
		draw_polygon(p->drawing, pen, c.points, c.n);
	else
		draw_polyline(p->drawing, pen, c.points, c.n);
	for (int i = 0; i < c.n - (c.closed ? 0 : 1); i++)
		remember_line(p, c.points[i], c.points[(i + 1) % c.n]);
}

void page_box(struct page *p, enum pen pen, struct box b)
{
	const struct vec corners[4] = { { b.x0, b.y0 }, { b.x1, b.y0 }, { b.x1, b.y1 },
		{ b.x0, b.y1 } };

	page_chain(p, pen, (struct chain){ NULL, corners, 4, true });
}

void page_text(struct page *p, struct vec at, enum align align, enum turn turn,
	struct wording words)
{
	struct mark mark = { .kind = MARK_TEXT };
	double angle = turn == TURN_LEVEL ? 0 : PI / 2;
	struct box b = box_empty();

	draw_text_styled(p->drawing, at, words.height, angle, align, words.style, words.text);
	mark.text.at = at;
	mark.text.height = words.height;
	mark.text.angle = angle;
	mark.text.align = align;
	mark.text.style = words.style;
	mark.text.text = words.text;
	struct text_room room = text_room(&mark, p->measure);
	for (int i = 0; i < 4; i++)
		b = box_add(b, room.corner[i]);
	remember_lettering(p, b);
}

static bool is_hit(const struct obstacle *o, struct box b)
{
	if (!box_touches(o->box, b))
		return false;
	switch (o->kind) {
	case OBSTACLE_LINE: return clip_segment(b, o->a, o->b).some;
	case OBSTACLE_LETTERING: return true;
	}
	return true;
}

/* What stands near a wish: looked up once for all the places tried. */
struct nearby {
	const struct obstacle **list;
	int n;
};

static struct nearby obstacles_near(const struct page *p, struct box b)
{
	struct nearby near = { .n = 0 };
	int first = strip_at(p, b.x0), last = strip_at(p, b.x1), all = 0;

	for (int i = first; i <= last; i++)
		for (const struct obstacle *o = p->strips[i]; o; o = o->next)
			all += box_touches(o->box, b);
	near.list = NEW_N(p->arena, const struct obstacle *, all);
	for (int i = first; i <= last; i++)
		for (const struct obstacle *o = p->strips[i]; o; o = o->next)
			if (box_touches(o->box, b))
				near.list[near.n++] = o;
	return near;
}

static bool is_free(struct nearby near, struct box within, struct box b)
{
	if (b.x0 < within.x0 || b.x1 > within.x1 || b.y0 < within.y0 || b.y1 > within.y1)
		return false;
	for (int i = 0; i < near.n; i++)
		if (is_hit(near.list[i], b))
			return false;
	return true;
}

static struct box box_round(struct vec middle, struct vec size)
{
	return (struct box){ middle.x - size.x / 2, middle.y - size.y / 2, middle.x + size.x / 2,
		middle.y + size.y / 2 };
}

/* The free places of one square ring round the wish: the one nearest to its middle. */
static struct box room_in_ring(struct nearby near, struct wish wish, struct vec size, int ring,
	double step)
{
	struct box best = box_empty();
	double least = INFINITY;

	for (int i = -ring; i <= ring; i++) {
		for (int j = -ring; j <= ring; j += abs(i) == ring || ring == 0 ? 1 : 2 * ring) {
			struct vec off = vec(i * step, j * step);
			struct box b = box_round(vec_add(wish.at, off), size);
			if (vec_length(off) >= least || !is_free(near, wish.within, b))
				continue;
			best = b;
			least = vec_length(off);
		}
	}
	return best;
}

static struct box find_room(const struct page *p, struct wish wish, struct vec size)
{
	double step = fmax(0.5, wish.reach / RINGS);
	struct vec farthest = vec(size.x + 2 * wish.reach, size.y + 2 * wish.reach);
	struct nearby near = obstacles_near(p, box_round(wish.at, farthest));

	for (int ring = 0; ring * step <= wish.reach; ring++) {
		struct box b = room_in_ring(near, wish, size, ring, step);
		if (!box_is_empty(b))
			return b;
	}
	return box_empty();
}

/* From base line to base line of two lines of words, which may differ in height. */
static double line_pitch(struct wording above, struct wording below)
{
	return above.height * DESCENDER + below.height + LINE_AIR;
}

static struct vec words_size(struct measure m, const struct wording *lines, int n)
{
	struct vec size = vec(0, 0);

	for (int i = 0; i < n; i++) {
		double w = measure_width(m, lines[i].style, lines[i].height, lines[i].text);
		size.x = fmax(size.x, w);
		size.y += i + 1 < n ? line_pitch(lines[i], lines[i + 1]) : 0;
	}
	size.y += lines[0].height + lines[n - 1].height * DESCENDER;
	return vec(size.x + 2 * AIR_ENDS, size.y + 2 * AIR);
}

struct box page_words(struct page *p, struct wish wish, enum turn turn, const struct wording *lines,
	int n)
{
	struct vec size = words_size(p->measure, lines, n);
	struct box b = find_room(p, wish, turn == TURN_LEVEL ? size : vec(size.y, size.x));
	double down = 0;

	if (box_is_empty(b))
		return b;
	for (int i = 0; i < n; i++) {
		down += i == 0 ? lines[i].height + AIR : line_pitch(lines[i - 1], lines[i]);
		page_text(p,
			turn == TURN_LEVEL ? vec(b.x0 + AIR_ENDS, b.y1 - down)
					   : vec(b.x0 + down, b.y0 + AIR_ENDS),
			ALIGN_LEFT, turn, lines[i]);
	}
	return b;
}

double page_paragraph(struct page *p, struct vec top, double width, const char *text)
{
	struct lines l = wrap_text(p->arena, p->measure, TEMPLATE_LETTER, width, text);

	for (int i = 0; i < l.n; i++)
		page_text(p, vec(top.x, top.y - TEMPLATE_LETTER - i * TEMPLATE_PITCH), ALIGN_LEFT,
			TURN_LEVEL, (struct wording){ l.line[i], TEMPLATE_LETTER, LETTER_REGULAR });
	return top.y - l.n * TEMPLATE_PITCH;
}

bool page_line_is_free(const struct page *p, struct vec a, struct vec b)
{
	int last = strip_at(p, fmax(a.x, b.x));

	for (int i = strip_at(p, fmin(a.x, b.x)); i <= last; i++)
		for (const struct obstacle *o = p->strips[i]; o; o = o->next)
			if (o->kind == OBSTACLE_LETTERING && clip_segment(o->box, a, b).some)
				return false;
	return true;
}
