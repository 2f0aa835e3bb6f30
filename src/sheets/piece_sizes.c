#include "sheets/piece_sizes.h"

#include "draw/bounds.h"
#include "draw/dimension.h"
#include "draw/running.h"
#include "sheets/joint_words.h"
#include "sheets/words.h"

/* Positions nearer than this are one. */
#define SAME 0.01

/* More lanes than this side by side are a thicket. */
#define MOST_LANES 2

/* How closely a position is lettered. */
enum closeness { AS_CUT, AS_JOINT };

/* From zero. */
struct size {
	double at;
	enum closeness closeness;
};

/* Positions to be figured, in rising order, each once. */
struct sizes {
	struct size *size;
	int n;
};

static struct sizes sizes_begin(struct arena *a, const struct part *p)
{
	int room = 4 + 2 * p->outline.n;

	for (const struct bore *b = p->bores; b; b = b->next)
		room++;
	for (const struct solid *s = p->solids; s; s = s->next)
		room += 2 * s->n;
	return (struct sizes){ NEW_N(a, struct size, room), 0 };
}

static void add(struct sizes *s, double at, enum closeness closeness)
{
	int i = s->n;

	while (i > 0 && s->size[i - 1].at > at + SAME)
		i--;
	if (i > 0 && fabs(s->size[i - 1].at - at) <= SAME) {
		if (closeness == AS_JOINT)
			s->size[i - 1].closeness = AS_JOINT;
		return;
	}
	for (int k = s->n; k > i; k--)
		s->size[k] = s->size[k - 1];
	s->size[i] = (struct size){ at, closeness };
	s->n++;
}

static const char *size_words(const struct sheet *s, struct size z)
{
	struct arena *a = s->drawing->arena;
	const struct stair *stair = s->context->stair;

	return z.closeness == AS_JOINT ? joint_words(a, stair, z.at) : inches_words(a, stair, z.at);
}

/* A point of the piece, in its axes; a cell that shows one lap of it figures what lies there. */
static void add_point(struct sizes *right, struct sizes *up, const struct piece_view *v,
	struct vec3 p, enum closeness closeness)
{
	struct vec at = piece_figured(v, p);

	if (!piece_view_has(v, p))
		return;
	add(right, at.x, closeness);
	add(up, at.y, closeness);
}

static void add_corner(struct sizes *along, struct sizes *across, const struct piece_view *v,
	struct vec at)
{
	add_point(along, across, v, vec3(at.x, at.y, 0), AS_CUT);
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
	add(across, all.y1 - v->zero.y, AS_CUT);
}

static struct box run_along(struct sheet *s, const struct piece_view *v, const struct sizes *sizes,
	double scale)
{
	struct arena *a = s->drawing->arena;
	struct running_mark *m = NEW_N(a, struct running_mark, sizes->n + 1);
	double low = v->box.y0 * scale;

	if (sizes->n < 1 || (sizes->n < 2 && piece_view_has(v, v->zero)))
		return box_empty();
	for (int i = 0; i < sizes->n; i++) {
		double x = breaks_drawn_at(&v->breaks, v->zero.x + sizes->size[i].at);
		m[i] = (struct running_mark){ x * scale, low, size_words(s, sizes->size[i]) };
	}
	return draw_running(s->hand, DIM_BELOW, low, m, sizes->n);
}

/* Where the zero of some figures lies on paper, and how long one of them is there. */
struct axis {
	double zero, scale;
};

/* From zero to each of them, in a lane of its own. */
static void lanes(struct dims *d, const struct sheet *s, enum dim_side side,
	const struct sizes *sizes, struct axis axis)
{
	double foot = side == DIM_LEFT ? d->around.x0 : d->around.y0;

	for (int i = 0; i < sizes->n; i++) {
		double at = axis.zero + sizes->size[i].at * axis.scale;
		if (sizes->size[i].at < SAME)
			continue;
		const struct dim_link link[] = { { fmin(axis.zero, at), fmax(axis.zero, at), foot,
			foot, size_words(s, sizes->size[i]) } };
		dims_chain(d, side, link, 1);
	}
}

/* Running positions, each at the end of its own line. */
static struct box run_across(struct sheet *s, enum dim_side side, double edge,
	const struct sizes *sizes, struct axis axis)
{
	struct running_mark *m = NEW_N(s->drawing->arena, struct running_mark, sizes->n + 1);

	for (int i = 0; i < sizes->n; i++) {
		struct size z = sizes->size[axis.scale > 0 ? i : sizes->n - 1 - i];
		m[i] = (struct running_mark){ axis.zero + z.at * axis.scale, edge,
			size_words(s, z) };
	}
	return draw_running(s->hand, side, edge, m, sizes->n);
}

/* Is there room in its lane for the figure of a size, between the ticks? */
static bool fits_lane(const struct sheet *s, struct size z, double scale)
{
	double wide =
		measure_width(s->hand.measure, LETTER_REGULAR, s->hand.letter, size_words(s, z));

	return wide + s->hand.letter < z.at * fabs(scale);
}

/* Across the piece one size is a lane, and so are two where their figures stand in them; others are
 * positions from zero. */
static bool are_many(const struct sheet *s, const struct sizes *sizes, double scale)
{
	bool all_fit = true;
	int n = 0;

	for (int i = 0; i < sizes->n; i++) {
		if (sizes->size[i].at < SAME)
			continue;
		all_fit &= fits_lane(s, sizes->size[i], scale);
		n++;
	}
	return n > MOST_LANES || (n > 1 && !all_fit);
}

/* Up the left of a view. */
static struct box draw_across(struct sheet *s, const struct piece_view *v,
	const struct sizes *sizes, double scale)
{
	struct box used = box_scale(v->box, scale);
	struct dims d = dims_begin(s->drawing, s->hand.measure, s->hand.letter, used);
	struct axis axis = { piece_point(v, v->zero).y * scale, scale };

	if (are_many(s, sizes, scale))
		return box_join(used, run_across(s, DIM_LEFT, used.x0, sizes, axis));
	/* below stands the first of the running positions */
	d.lowest = used.y0;
	lanes(&d, s, DIM_LEFT, sizes, axis);
	return dims_draw(&d);
}

/* The holes whose mouths are seen, from the front or through the wood. */
static void add_bores(struct sizes *right, struct sizes *up, const struct piece_view *v)
{
	for (const struct bore *b = v->part->bores; b; b = b->next)
		if (piece_bore_faces(v, b) != 0)
			add_point(right, up, v, b->at.origin,
				bore_is_of_joint(b) ? AS_JOINT : AS_CUT);
}

static struct box size_long_side(struct sheet *s, const struct piece_view *v, double scale)
{
	struct arena *a = s->drawing->arena;
	struct sizes along = sizes_begin(a, v->part), across = sizes_begin(a, v->part);

	add_point(&along, &across, v, v->zero, AS_CUT);
	if (v->side == PIECE_FACE)
		add_corners(&along, &across, v);
	else
		add(&across, v->part->size.thickness, AS_CUT);
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
	struct vec zero = vec_scale(piece_point(v, v->zero), scale);
	const struct axis right = { zero.x, way * scale }, over = { zero.y, scale };

	add_point(&across, &up, v, v->zero, AS_CUT);
	add_bores(&across, &up, v);
	add(&across, v->part->size.width * v->stretch.x, AS_CUT);
	add(&up, v->part->size.thickness * v->stretch.y, AS_CUT);
	if (are_many(s, &across, scale)) {
		used = box_join(used, run_across(s, DIM_BELOW, used.y0, &across, right));
		d.lowest = d.around.y0;
	} else {
		lanes(&d, s, DIM_BELOW, &across, right);
	}
	if (are_many(s, &up, scale))
		used = box_join(used, run_across(s, DIM_LEFT, d.around.x0, &up, over));
	else
		lanes(&d, s, DIM_LEFT, &up, over);
	return box_join(used, dims_draw(&d));
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
