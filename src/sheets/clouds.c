#include "sheets/clouds.h"

#include <string.h>

#include "draw/annotate.h"
#include "draw/bounds.h"
#include "draw/place.h"
#include "sheets/kept_words.h"

#define AROUND 0.8 /* from the lettering to the cloud */
#define PUFF 4.0   /* chord of one arc, about */
#define LEAST_PUFF 1.0
#define TOGETHER 4.0    /* what is so near to each other goes into one cloud, */
#define MOSTLY_FULL 1.6 /* unless that were so much larger than what it goes round */
#define SWEEP (140 * PI / 180)

enum side { SIDE_UNDER, SIDE_RIGHT, SIDE_OVER, SIDE_LEFT };

static bool marks_changed_part(const struct change *changes, const char *text)
{
	for (; changes; changes = changes->next)
		if (changes->part && strcmp(changes->part->mark, text) == 0)
			return true;
	return false;
}

/* The same sheet of the earlier job; of several alike, the one as far along. */
static const struct drawing *counterpart(const struct drawing *earlier,
	const struct drawing *sheets, const struct drawing *of)
{
	int skip = 0;

	for (const struct drawing *g = sheets; g != of; g = g->next)
		skip += strcmp(g->title, of->title) == 0;
	for (const struct drawing *g = earlier; g; g = g->next)
		if (g->use == USE_SHEET && strcmp(g->title, of->title) == 0 && skip-- == 0)
			return g;
	return NULL;
}

static bool show_one_piece(const struct drawing *a, const struct drawing *b)
{
	for (int i = 0; a->shows && a->shows[i]; i++)
		if (drawing_shows(b, a->shows[i]))
			return true;
	return false;
}

/* "S-8" of "S-801". */
static bool are_of_one_series(const struct drawing *a, const struct drawing *b)
{
	size_t digit = strcspn(a->id, "0123456789") + 1;

	return strlen(a->id) >= digit && strncmp(a->id, b->id, digit) == 0;
}

/* Where its lettering may have been before.  Pieces, and rows of lists, move from one sheet to
 * another where there are more or fewer of them. */
static struct earlier_sheets sheets_before(struct arena *a, const struct drawing *earlier,
	const struct drawing *sheets, const struct drawing *g)
{
	const struct drawing *same = counterpart(earlier, sheets, g);
	const struct drawing **list;
	int n = 0, most = 1;

	for (const struct drawing *e = earlier; e; e = e->next)
		most++;
	list = NEW_N(a, const struct drawing *, most);
	for (const struct drawing *e = earlier; e; e = e->next)
		if (e == same || show_one_piece(g, e) ||
			(e->use == USE_SHEET && !g->shows && same && are_of_one_series(g, e)))
			list[n++] = e;
	return (struct earlier_sheets){ list, n };
}

/* ---- what to go round ---- */

struct boxes {
	struct box *box;
	int n;
};

/* All lettering of the sheet, and of each whether it is to go into a cloud. */
struct lettered {
	struct box *room;
	bool *has_changed;
	int n;
};

static struct lettered lettered_of(struct arena *a, const struct sheet_context *c,
	const struct drawing *g, struct earlier_sheets was)
{
	struct lettered l = { NEW_N(a, struct box, g->mark_count + 1),
		NEW_N(a, bool, g->mark_count + 1), 0 };
	const bool *kept = words_kept(a, was, g);

	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind != MARK_TEXT)
			continue;
		struct text_room room = text_room(k, c->measure);
		l.has_changed[l.n] = !kept[l.n] || marks_changed_part(c->changes, k->text.text);
		l.room[l.n++] = room_box(&room);
	}
	return l;
}

/* How far from one side of a box the next text is that is not to go into the cloud. */
static double gap_beside(const struct lettered *l, struct box b, enum side side)
{
	double gap = INFINITY;

	for (int i = 0; i < l->n; i++) {
		const struct box *t = &l->room[i];
		bool across = t->x0 < b.x1 + PUFF && t->x1 > b.x0 - PUFF;
		bool along = t->y0 < b.y1 + PUFF && t->y1 > b.y0 - PUFF;
		if (l->has_changed[i] || box_touches(*t, b))
			continue;
		switch (side) {
		case SIDE_RIGHT:
			gap = along && t->x0 >= b.x1 ? fmin(gap, t->x0 - b.x1) : gap;
			break;
		case SIDE_LEFT: gap = along && t->x1 <= b.x0 ? fmin(gap, b.x0 - t->x1) : gap; break;
		case SIDE_OVER:
			gap = across && t->y0 >= b.y1 ? fmin(gap, t->y0 - b.y1) : gap;
			break;
		case SIDE_UNDER:
			gap = across && t->y1 <= b.y0 ? fmin(gap, b.y0 - t->y1) : gap;
			break;
		}
	}
	return gap;
}

/* A little air round what changed: less where a neighbour is near. */
static struct box with_air(const struct lettered *l, struct box b)
{
	struct box air = b;

	air.x1 += fmin(AROUND, 0.3 * gap_beside(l, b, SIDE_RIGHT));
	air.x0 -= fmin(AROUND, 0.3 * gap_beside(l, b, SIDE_LEFT));
	air.y1 += fmin(AROUND, 0.3 * gap_beside(l, b, SIDE_OVER));
	air.y0 -= fmin(AROUND, 0.3 * gap_beside(l, b, SIDE_UNDER));
	return air;
}

static struct boxes changed_boxes(struct arena *a, const struct lettered *l)
{
	struct boxes b = { NEW_N(a, struct box, l->n + 1), 0 };

	for (int i = 0; i < l->n; i++)
		if (l->has_changed[i])
			b.box[b.n++] = with_air(l, l->room[i]);
	return b;
}

/* Does it cover text that has not changed? */
static bool covers_kept(const struct lettered *l, struct box b)
{
	for (int i = 0; i < l->n; i++)
		if (!l->has_changed[i] && box_touches(l->room[i], b))
			return true;
	return false;
}

static double area(struct box b)
{
	return box_width(b) * box_height(b);
}

/* Two clouds that would run into each other: cells of a table, lines of a note. */
static bool is_one_cloud(const struct lettered *l, struct box a, struct box b)
{
	if (box_touches(a, b))
		return true;
	struct box both = box_join(a, b);
	return box_touches(box_grow(a, TOGETHER / 2), box_grow(b, TOGETHER / 2)) &&
		area(both) < MOSTLY_FULL * (area(a) + area(b)) && !covers_kept(l, both);
}

static void join_neighbours(const struct lettered *l, struct boxes *b)
{
	for (int i = 0; i < b->n; i++)
		for (int k = i + 1; k < b->n; k++) {
			if (!is_one_cloud(l, b->box[i], b->box[k]))
				continue;
			b->box[i] = box_join(b->box[i], b->box[k]);
			b->box[k] = b->box[--b->n];
			i = -1;
			break;
		}
}

/* ---- the cloud ---- */

/* From p to q, swelling to the right. */
static void draw_puff(struct drawing *g, struct vec p, struct vec q)
{
	struct vec chord = vec_sub(q, p), middle = vec_scale(vec_add(p, q), 0.5);
	double radius = vec_length(chord) / 2 / sin(SWEEP / 2);
	struct vec in = vec_scale(vec_left(vec_unit(chord)), radius * cos(SWEEP / 2));
	struct vec centre = vec_add(middle, in), out = vec_sub(p, centre);
	double from = atan2(out.y, out.x);

	draw_arc(g, PEN_FINE, centre, radius, from, from + SWEEP);
}

/* Arcs of about that chord. */
static void draw_side(struct drawing *g, struct vec p, struct vec q, double chord)
{
	double length = vec_length(vec_sub(q, p));
	int n = (int)fmax(1, ceil(length / chord - 0.5));

	for (int i = 0; i < n; i++)
		draw_puff(g, vec_add(p, vec_scale(vec_sub(q, p), (double)i / n)),
			vec_add(p, vec_scale(vec_sub(q, p), (i + 1.0) / n)));
}

/* Puffs swell by a part of their chord, and no further than to the neighbour. */
static double chord_for(double gap)
{
	return fmin(PUFF, fmax(LEAST_PUFF, 0.8 * gap / (tan(SWEEP / 4) / 2)));
}

/* Counter-clockwise, so that all swell outward. */
static void draw_cloud(struct drawing *g, const struct lettered *l, struct box b)
{
	static const enum side sides[] = { SIDE_UNDER, SIDE_RIGHT, SIDE_OVER, SIDE_LEFT };
	const struct vec corner[] = { { b.x0, b.y0 }, { b.x1, b.y0 }, { b.x1, b.y1 },
		{ b.x0, b.y1 } };

	for (int i = 0; i < 4; i++)
		draw_side(g, corner[i], corner[(i + 1) % 4], chord_for(gap_beside(l, b, sides[i])));
}

/* ---- the mark of the revision ---- */

/* Of the letter's height: the triangle's half width, and how far it reaches under the base line and
 * over it. */
#define HALF 1.15
#define LOW 0.45
#define HIGH 1.75

/* Clear of all lettering, and within the frame? */
static bool has_room(const struct lettered *l, const struct paper *p, struct box b)
{
	if (b.x0 < p->left || b.x1 > p->width - p->right)
		return false;
	for (int i = 0; i < l->n; i++)
		if (box_touches(l->room[i], b))
			return false;
	return true;
}

static struct box triangle_box(struct vec at, double letter)
{
	return (struct box){ at.x - HALF * letter, at.y - LOW * letter, at.x + HALF * letter,
		at.y + HIGH * letter };
}

enum { CORNERS = 4 };

/* Beside the cloud at one of its corners; the number of those with room. */
static int triangle_spots(struct hand h, const struct lettered *l, const struct paper *paper,
	struct box b, struct spot spots[CORNERS])
{
	double gap = HALF * h.letter + PUFF / 3, over = b.y1 - h.letter,
	       under = b.y0 + LOW * h.letter;
	const struct vec at[CORNERS] = { { b.x1 + gap, over }, { b.x0 - gap, over },
		{ b.x1 + gap, under }, { b.x0 - gap, under } };
	int n = 0;

	for (int i = 0; i < CORNERS; i++)
		if (has_room(l, paper, triangle_box(at[i], h.letter)))
			spots[n++] = (struct spot){ at[i], ALIGN_MIDDLE, 0, SPOT_KNOCKED_OUT };
	return n;
}

/* Where there is no room, nowhere: the cloud says enough. */
static void draw_triangle(struct hand h, const struct lettered *l, const struct paper *paper,
	struct box b, const char *mark)
{
	struct spot spots[CORNERS];
	int n = triangle_spots(h, l, paper, b, spots);
	int i = place_text(h.g, h.measure, h.letter, spots, n, mark);

	if (i < 0)
		return;
	struct box t = triangle_box(spots[i].at, h.letter);
	const struct vec triangle[] = { { t.x0, t.y0 }, { t.x1, t.y0 }, { spots[i].at.x, t.y1 } };
	draw_polygon(h.g, PEN_FINE, triangle, 3);
}

static const char *revision_mark(const struct job *job)
{
	return job->revision_count ? job->revisions[job->revision_count - 1].mark : "";
}

static void cloud_sheet(struct arena *a, const struct sheet_context *c, struct drawing *g,
	struct earlier_sheets was)
{
	struct hand h = { g, c->measure, c->paper->lettering };
	struct lettered l = lettered_of(a, c, g, was);
	struct boxes b = changed_boxes(a, &l);
	const char *mark = revision_mark(c->stair->job);

	join_neighbours(&l, &b);
	for (int i = 0; i < b.n; i++)
		draw_cloud(g, &l, b.box[i]);
	for (int i = 0; i < b.n && *mark; i++)
		draw_triangle(h, &l, c->paper, b.box[i], mark);
}

void clouds_draw(struct arena *a, const struct sheet_context *c, struct drawing *sheets)
{
	for (struct drawing *g = sheets; c->earlier && g; g = g->next) {
		struct earlier_sheets was = sheets_before(a, c->earlier, sheets, g);
		if (was.n > 0 && !g->tells_changes)
			cloud_sheet(a, c, g, was);
	}
}
