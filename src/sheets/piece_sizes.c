#include "sheets/piece_sizes.h"

#include "draw/bounds.h"
#include "draw/dimension.h"
#include "draw/running.h"
#include "sheets/words.h"

/* Positions nearer than this are one. */
#define SAME 0.01

/* More lanes than this across a piece are no help to anybody. */
#define MOST_LANES 7

/* Positions to be figured, in rising order, each once. */
struct sizes {
	double *at;
	int n;
};

static struct sizes sizes_begin(struct arena *a, const struct part *p)
{
	int room = 4 + 2 * p->outline.n;

	for (const struct bore *b = p->bores; b; b = b->next)
		room++;
	for (const struct solid *s = p->solids; s; s = s->next)
		room += 2 * s->n;
	return (struct sizes){ NEW_N(a, double, room), 0 };
}

static void add(struct sizes *s, double at)
{
	int i = s->n;

	while (i > 0 && s->at[i - 1] > at + SAME)
		i--;
	if (i > 0 && fabs(s->at[i - 1] - at) <= SAME)
		return;
	for (int k = s->n; k > i; k--)
		s->at[k] = s->at[k - 1];
	s->at[i] = at;
	s->n++;
}

/* The two axes of the piece that lie in the view: on an end, across it. */
static struct vec in_plane(const struct piece_view *v, struct vec3 p)
{
	switch (v->side) {
	case PIECE_FACE: return vec(p.x, p.y);
	case PIECE_EDGE: return vec(p.x, p.z);
	case PIECE_START:
	case PIECE_END:
	case PIECE_SIDES: break;
	}
	return vec(p.y, p.z);
}

/* A point of the piece, in its axes; a cell that shows one lap of it figures what lies there. */
static void add_point(struct sizes *right, struct sizes *up, const struct piece_view *v,
	struct vec3 p)
{
	struct vec at = in_plane(v, p);

	if (!piece_view_has(v, p))
		return;
	add(right, at.x);
	add(up, at.y);
}

static void add_corner(struct sizes *along, struct sizes *across, const struct piece_view *v,
	struct vec at)
{
	add_point(along, across, v, vec3(at.x, at.y, 0));
}

/* Where an arc runs on smoothly there is no corner to mark out: it is figured at its centre. */
static void add_corners(struct sizes *along, struct sizes *across, const struct piece_view *v)
{
	const struct outline *o = &v->part->outline;
	struct box all = outline_extent(*o);

	for (int i = 0; i < o->n; i++) {
		struct corner c = o->corners[i];
		struct vec next = o->corners[(i + 1) % o->n].at;
		if (c.bulge != 0)
			add_corner(along, across, v, corner_arc(c, next).centre);
		if (!outline_is_smooth(*o, i))
			add_corner(along, across, v, c.at);
	}
	if (o->n == 0)
		return;
	add_corner(along, across, v, vec(all.x1, all.y1));
	add(across, all.y1);
}

static struct box run_along(struct sheet *s, const struct piece_view *v, const struct sizes *sizes,
	double scale)
{
	struct arena *a = s->drawing->arena;
	struct running_mark *m = NEW_N(a, struct running_mark, sizes->n + 1);
	double low = v->box.y0 * scale;

	if (sizes->n < 1 || (sizes->n < 2 && piece_view_has(v, v->zero)))
		return box_empty();
	for (int i = 0; i < sizes->n; i++)
		m[i] = (struct running_mark){ breaks_drawn_at(&v->breaks, sizes->at[i]) * scale,
			low, inches_words(a, s->context->stair, sizes->at[i] - v->zero.x) };
	return draw_running(s->hand, DIM_BELOW, low, m, sizes->n);
}

/* A lane for each, from the first. */
static void lanes(struct dims *d, struct sheet *s, enum dim_side side, const struct sizes *sizes,
	double foot, double scale)
{
	double zero = sizes->n > 0 ? sizes->at[0] : 0;

	for (int i = 1; i < sizes->n && i <= MOST_LANES; i++) {
		double at = sizes->at[i];
		const struct dim_link link[] = { { zero * scale, at * scale, foot, foot,
			inches_words(d->drawing->arena, s->context->stair, at - zero) } };
		dims_chain(d, side, link, 1);
	}
}

static struct box draw_across(struct sheet *s, const struct piece_view *v,
	const struct sizes *sizes, double scale)
{
	struct box used = box_scale(v->box, scale);
	struct dims d = dims_begin(s->drawing, s->hand.measure, s->hand.letter, used);

	/* below stands the first of the running positions */
	d.lowest = used.y0;
	lanes(&d, s, DIM_LEFT, sizes, used.x0, scale);
	return dims_draw(&d);
}

/* The holes whose mouths are seen, from the front or through the wood. */
static void add_bores(struct sizes *right, struct sizes *up, const struct piece_view *v)
{
	for (const struct bore *b = v->part->bores; b; b = b->next)
		if (piece_bore_faces(v, b) != 0)
			add_point(right, up, v, b->at.origin);
}

static struct box size_long_side(struct sheet *s, const struct piece_view *v, double scale)
{
	struct arena *a = s->drawing->arena;
	struct sizes along = sizes_begin(a, v->part), across = sizes_begin(a, v->part);
	struct vec zero = in_plane(v, v->zero);

	add(&across, zero.y);
	add_point(&along, &across, v, v->zero);
	if (v->side == PIECE_FACE)
		add_corners(&along, &across, v);
	else
		add(&across, zero.y + v->part->size.thickness);
	add_bores(&along, &across, v);
	struct box used = run_along(s, v, &along, scale);
	return box_join(used, draw_across(s, v, &across, scale));
}

/* On an end both directions are across the piece: y in the view runs to the left on the start. */
static struct box size_end(struct sheet *s, const struct piece_view *v, double scale)
{
	struct arena *a = s->drawing->arena;
	double way = v->side == PIECE_START ? -1 : 1;
	struct sizes across = sizes_begin(a, v->part), up = sizes_begin(a, v->part);
	struct box used = box_scale(v->box, scale);
	struct dims d = dims_begin(s->drawing, s->hand.measure, s->hand.letter, used);

	add(&up, v->zero.z);
	add(&up, v->zero.z + v->part->size.thickness);
	add_bores(&across, &up, v);
	add(&across, v->zero.y + v->part->size.width);
	for (int i = 0; i < across.n && i <= MOST_LANES; i++) {
		double zero = v->zero.y * way * scale, at = across.at[i] * way * scale;
		if (across.at[i] < v->zero.y + SAME)
			continue;
		const struct dim_link link[] = { { fmin(zero, at), fmax(zero, at), used.y0, used.y0,
			inches_words(a, s->context->stair, across.at[i] - v->zero.y) } };
		dims_chain(&d, DIM_BELOW, link, 1);
	}
	lanes(&d, s, DIM_LEFT, &up, used.x0, scale);
	return dims_draw(&d);
}

struct box piece_sizes_draw(struct sheet *s, const struct piece_view *v, double scale)
{
	switch (v->side) {
	case PIECE_FACE:
	case PIECE_EDGE: return size_long_side(s, v, scale);
	case PIECE_START:
	case PIECE_END: return size_end(s, v, scale);
	case PIECE_SIDES: break;
	}
	return box_empty();
}
