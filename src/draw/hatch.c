#include "draw/hatch.h"

#include <stdlib.h>

#include "draw/bounds.h"
#include "draw/clip.h"

/* Less than this on paper is left white (millimetres). */
#define THIN 1.5

/* A hatch line shorter than this on paper is a blot in a corner. */
#define BLOT 0.2

/* Pieces nearer than this touch (millimetres of the house). */
#define TOUCHING 0.5

enum slope { RISING, FALLING };

struct style {
	enum slope slope;
	double spacing; /* on paper; never under 0.7, the least clear space of a copied drawing */
};

/* The first that no touching piece has is taken. */
enum { NEW_STYLES = 4, STYLES = 6 };
static const struct style styles[STYLES] = {
	{ RISING, 2 },
	{ FALLING, 2 },
	{ RISING, 3 },
	{ FALLING, 3 },
	{ FALLING, 4.5 }, /* existing work */
	{ RISING, 4.5 },
};

/* A cut face on its way from left to right through the view. */
struct face_box {
	const struct cut_face *face;
	struct box box;
	int order, style;
};

static struct face_box face_box(const struct cut_face *f, int order)
{
	struct box b = box_empty();
	for (int i = 0; i < f->n; i++)
		b = box_add(b, f->points[i]);
	return (struct face_box){ f, box_grow(b, TOUCHING / 2), order, 0 };
}

static int compare_face_boxes(const void *a, const void *b)
{
	const struct face_box *p = a, *q = b;
	if (p->box.x0 != q->box.x0)
		return p->box.x0 < q->box.x0 ? -1 : 1;
	return p->order - q->order;
}

/* The faces to the left that reach as far as the one at hand. */
struct reaching {
	const struct face_box **at;
	int n;
};

static void reaching_drop(struct reaching *r, double x)
{
	int n = 0;
	for (int i = 0; i < r->n; i++) {
		if (r->at[i]->box.x1 > x)
			r->at[n++] = r->at[i];
	}
	r->n = n;
}

static int style_for(const struct face_box *f, const struct reaching *r)
{
	const struct part *part = f->face->part;
	bool existing = part_is_existing(part);
	int first = existing ? NEW_STYLES : 0, end = existing ? STYLES : NEW_STYLES;
	bool taken[STYLES] = { false };

	for (int i = 0; i < r->n; i++) {
		if (box_touches(f->box, r->at[i]->box))
			taken[r->at[i]->style] = true;
	}
	for (int i = first; i < end; i++) {
		if (!taken[i])
			return i;
	}
	return first;
}

/* Gives each face its style, all faces of one piece the same. */
static void choose_styles(struct arena *a, struct face_box *faces, int n)
{
	struct reaching reaching = { NEW_N(a, const struct face_box *, n), 0 };
	int pieces = 0;

	for (int i = 0; i < n; i++)
		pieces = faces[i].face->piece >= pieces ? faces[i].face->piece + 1 : pieces;
	int *style_of = NEW_N(a, int, pieces); /* counted from 1; 0: none yet */
	for (int i = 0; i < n; i++) {
		int *style = &style_of[faces[i].face->piece];
		reaching_drop(&reaching, faces[i].box.x0);
		if (!*style)
			*style = style_for(&faces[i], &reaching) + 1;
		faces[i].style = *style - 1;
		reaching.at[reaching.n++] = &faces[i];
	}
}

static struct vec longest_side(const struct cut_face *faces, int n)
{
	struct vec longest = { 0 };
	for (int i = 0; i < n; i++) {
		const struct cut_face *f = &faces[i];
		for (int k = 0; k < f->n; k++) {
			struct vec d = vec_sub(f->points[(k + 1) % f->n], f->points[k]);
			if (vec_length(d) > vec_length(longest))
				longest = d;
		}
	}
	return longest;
}

/* Of all n faces of one piece together, measured across the longest side. */
static double thickness(const struct cut_face *faces, int n)
{
	struct vec across = vec_left(vec_unit(longest_side(faces, n)));
	double low = INFINITY, high = -INFINITY;
	for (int i = 0; i < n; i++) {
		for (int k = 0; k < faces[i].n; k++) {
			low = fmin(low, vec_dot(faces[i].points[k], across));
			high = fmax(high, vec_dot(faces[i].points[k], across));
		}
	}
	return high - low;
}

/* The lines of one hatch, numbered from the house's origin, and where they meet the outline. */
struct ruling {
	struct vec along, across;
	double spacing;
	int first, n;     /* lines that may meet the face */
	int *starts;      /* n + 1: where each line's meetings begin in `meetings` */
	double *meetings; /* positions along the line */
};

struct range {
	int from, to;
};

/* The lines that an edge meets; one through a corner belongs to the edge that leaves it upward. */
static struct range range_of(const struct ruling *r, struct vec p, struct vec q)
{
	double a = vec_dot(p, r->across) / r->spacing, b = vec_dot(q, r->across) / r->spacing;
	return (struct range){ (int)ceil(fmin(a, b)), (int)ceil(fmax(a, b)) };
}

static double meeting(const struct ruling *r, struct vec p, struct vec q, int line)
{
	double a = vec_dot(p, r->across), b = vec_dot(q, r->across);
	double t = (line * r->spacing - a) / (b - a);
	return vec_dot(vec_add(p, vec_scale(vec_sub(q, p), t)), r->along);
}

static struct ruling ruling_for(const struct cut_face *f, const struct style *s, double scale)
{
	double half = sqrt(0.5);
	struct ruling r = { .spacing = s->spacing / scale };

	r.along = s->slope == RISING ? vec(half, half) : vec(half, -half);
	r.across = vec_left(r.along);
	struct range all = range_of(&r, f->points[0], f->points[0]);
	for (int i = 0; i < f->n; i++) {
		struct range e = range_of(&r, f->points[i], f->points[(i + 1) % f->n]);
		all.from = e.from < all.from ? e.from : all.from;
		all.to = e.to > all.to ? e.to : all.to;
	}
	r.first = all.from;
	r.n = all.to - all.from;
	return r;
}

/* Counts the meetings of each line, then writes them down line by line: the work is that of the
 * lines drawn, however many corners the face has. */
static void ruling_meet(struct arena *a, struct ruling *r, const struct cut_face *f)
{
	int *filled = NEW_N(a, int, r->n + 1);

	r->starts = NEW_N(a, int, r->n + 1);
	for (int i = 0; i < f->n; i++) {
		struct range e = range_of(r, f->points[i], f->points[(i + 1) % f->n]);
		for (int k = e.from; k < e.to; k++)
			r->starts[k - r->first + 1]++;
	}
	for (int k = 0; k < r->n; k++)
		r->starts[k + 1] += r->starts[k];
	r->meetings = NEW_N(a, double, r->starts[r->n] + 1);
	for (int i = 0; i < f->n; i++) {
		struct vec p = f->points[i], q = f->points[(i + 1) % f->n];
		struct range e = range_of(r, p, q);
		for (int k = e.from; k < e.to; k++) {
			int line = k - r->first;
			r->meetings[r->starts[line] + filled[line]++] = meeting(r, p, q, k);
		}
	}
}

static struct vec ruling_at(const struct ruling *r, int line, double along)
{
	struct vec across = vec_scale(r->across, (r->first + line) * r->spacing);
	return vec_add(across, vec_scale(r->along, along));
}

static void ruling_draw(struct drawing *g, const struct ruling *r, int line, struct placing at,
	struct box window)
{
	double *m = r->meetings + r->starts[line];
	int n = r->starts[line + 1] - r->starts[line];

	qsort(m, (size_t)n, sizeof(*m), number_by_size);
	for (int i = 0; i + 1 < n; i += 2) {
		if ((m[i + 1] - m[i]) * at.scale < BLOT)
			continue;
		struct vec from = ruling_at(r, line, m[i]), to = ruling_at(r, line, m[i + 1]);
		struct clipped s = clip_segment(window, from, to);
		if (s.some)
			draw_line(g, PEN_HATCH, placing_at(at, s.a), placing_at(at, s.b));
	}
}

static void hatch_face(struct drawing *g, const struct face_box *f, struct placing at,
	struct box window)
{
	struct ruling r = ruling_for(f->face, &styles[f->style], at.scale);
	ruling_meet(g->arena, &r, f->face);
	for (int line = 0; line < r.n; line++)
		ruling_draw(g, &r, line, at, window);
}

/* The faces of the cuts that are not thin; those of one piece follow each other. */
static int faces_to_hatch(const struct view *v, double scale, struct face_box *out)
{
	int n = 0, count = 1;
	for (int i = 0; i < v->cut_count; i += count) {
		const struct cut_face *f = &v->cuts[i];
		for (count = 1; i + count < v->cut_count && f[count].piece == f->piece; count++)
			;
		bool thin = thickness(f, count) * scale < THIN;
		for (int k = 0; k < count && !thin; k++)
			out[n++] = face_box(&f[k], i + k);
	}
	return n;
}

void hatch_cuts(struct drawing *g, const struct view *v, struct placing at, struct box window)
{
	if (v->cut_count == 0)
		return;
	struct face_box *faces = NEW_N(g->arena, struct face_box, v->cut_count);
	int n = faces_to_hatch(v, at.scale, faces);
	qsort(faces, (size_t)n, sizeof(*faces), compare_face_boxes);
	choose_styles(g->arena, faces, n);
	for (int i = 0; i < n; i++)
		hatch_face(g, &faces[i], at, window);
}
