#include "sheets/clouds.h"

#include <stdlib.h>
#include <string.h>

#include "draw/annotate.h"
#include "draw/bounds.h"
#include "draw/place.h"

#define AROUND 0.8 /* from the lettering to the cloud */
#define PUFF 4.0   /* chord of one arc, about */
#define SWEEP (140 * PI / 180)

/* The lettering of a sheet, sorted; what has been met again is crossed off. */
struct vocabulary {
	const char **word;
	bool *met;
	int n;
};

static int compare_words(const void *one, const void *other)
{
	return strcmp(*(const char *const *)one, *(const char *const *)other);
}

static struct vocabulary vocabulary_of(struct arena *a, const struct drawing *g)
{
	struct vocabulary v = { NEW_N(a, const char *, g->mark_count + 1),
		NEW_N(a, bool, g->mark_count + 1), 0 };

	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT)
			v.word[v.n++] = k->text.text;
	qsort(v.word, (size_t)v.n, sizeof(*v.word), compare_words);
	return v;
}

/* Was this lettered before, and not yet met again? */
static bool was_there(struct vocabulary *v, const char *text)
{
	int low = 0, high = v->n;

	while (low < high) {
		int middle = (low + high) / 2;
		if (strcmp(v->word[middle], text) < 0)
			low = middle + 1;
		else
			high = middle;
	}
	while (low < v->n && strcmp(v->word[low], text) == 0 && v->met[low])
		low++;
	if (low == v->n || strcmp(v->word[low], text) != 0)
		return false;
	v->met[low] = true;
	return true;
}

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

/* ---- what to go round ---- */

struct boxes {
	struct box *box;
	int n;
};

static struct boxes changed_boxes(struct arena *a, const struct sheet_context *c,
	const struct drawing *g, const struct drawing *was)
{
	struct vocabulary v = vocabulary_of(a, was);
	struct boxes b = { NEW_N(a, struct box, g->mark_count + 1), 0 };

	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind != MARK_TEXT)
			continue;
		bool is_old = was_there(&v, k->text.text);
		if (is_old && !marks_changed_part(c->changes, k->text.text))
			continue;
		struct text_room room = text_room(k, c->measure);
		b.box[b.n++] = box_grow(room_box(&room), AROUND);
	}
	return b;
}

/* Those that touch become one, until none does. */
static void join_touching(struct boxes *b)
{
	for (int i = 0; i < b->n; i++)
		for (int k = i + 1; k < b->n; k++) {
			if (!box_touches(b->box[i], b->box[k]))
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

static void draw_side(struct drawing *g, struct vec p, struct vec q)
{
	double length = vec_length(vec_sub(q, p));
	int n = (int)fmax(1, floor(length / PUFF + 0.5));

	for (int i = 0; i < n; i++)
		draw_puff(g, vec_add(p, vec_scale(vec_sub(q, p), (double)i / n)),
			vec_add(p, vec_scale(vec_sub(q, p), (i + 1.0) / n)));
}

static void draw_cloud(struct drawing *g, struct box b)
{
	const struct vec corner[] = { { b.x0, b.y0 }, { b.x1, b.y0 }, { b.x1, b.y1 },
		{ b.x0, b.y1 } };

	for (int i = 0; i < 4; i++)
		draw_side(g, corner[i], corner[(i + 1) % 4]);
}

/* Beside the cloud where there is room, else nowhere: the cloud says enough. */
static void draw_triangle(struct hand h, struct box b, const char *mark)
{
	double half = h.letter * 1.15, low = h.letter * 0.45, high = h.letter * 1.75;
	double gap = half + PUFF / 3;
	const struct spot spots[] = {
		{ vec(b.x1 + gap, b.y1 - h.letter), ALIGN_MIDDLE, 0, SPOT_KNOCKED_OUT },
		{ vec(b.x0 - gap, b.y1 - h.letter), ALIGN_MIDDLE, 0, SPOT_KNOCKED_OUT },
		{ vec(b.x1 + gap, b.y0 + low), ALIGN_MIDDLE, 0, SPOT_KNOCKED_OUT },
		{ vec(b.x0 - gap, b.y0 + low), ALIGN_MIDDLE, 0, SPOT_KNOCKED_OUT },
	};
	int i = place_text(h.g, h.measure, h.letter, spots, 4, mark);

	if (i < 0)
		return;
	struct vec at = spots[i].at;
	const struct vec triangle[] = { vec(at.x - half, at.y - low), vec(at.x + half, at.y - low),
		vec(at.x, at.y + high) };
	draw_polygon(h.g, PEN_FINE, triangle, 3);
}

static const char *revision_mark(const struct job *job)
{
	return job->revision_count ? job->revisions[job->revision_count - 1].mark : "";
}

static void cloud_sheet(struct arena *a, const struct sheet_context *c, struct drawing *g,
	const struct drawing *was)
{
	struct hand h = { g, c->measure, c->paper->lettering };
	struct boxes b = changed_boxes(a, c, g, was);
	const char *mark = revision_mark(c->stair->job);

	join_touching(&b);
	for (int i = 0; i < b.n; i++)
		draw_cloud(g, b.box[i]);
	for (int i = 0; i < b.n && *mark; i++)
		draw_triangle(h, b.box[i], mark);
}

void clouds_draw(struct arena *a, const struct sheet_context *c, struct drawing *sheets)
{
	for (struct drawing *g = sheets; c->earlier && g; g = g->next) {
		const struct drawing *was = counterpart(c->earlier, sheets, g);
		if (was)
			cloud_sheet(a, c, g, was);
	}
}
