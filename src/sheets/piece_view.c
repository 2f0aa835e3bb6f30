#include "sheets/piece_view.h"

#include "draw/bounds.h"

/* How far the middle of a hole is crossed beyond its rim, on paper. */
#define CROSS 1.2

/* Corners of either half of a mouth as drawn. */
enum { HALF = 12 };

static enum view_from view_from(enum piece_side side)
{
	switch (side) {
	case PIECE_FACE: return VIEW_PLAN;
	case PIECE_EDGE: return VIEW_FROM_RIGHT;
	case PIECE_START: return VIEW_FRONT;
	case PIECE_END:
	case PIECE_SIDES: break;
	}
	return VIEW_BACK;
}

static bool runs_along(enum piece_side side)
{
	return side == PIECE_FACE || side == PIECE_EDGE;
}

/* The piece by itself, at the house's origin. */
static const struct part *alone(struct arena *a, const struct part *p)
{
	struct part *copy = NEW(a, struct part);
	struct frame *place = NEW(a, struct frame);

	*place = frame_house();
	*copy = *p;
	copy->next = NULL;
	copy->places = place;
	copy->count = 1;
	return copy;
}

/* One that is cut aslant both ways is seen along the piece. */
struct vec piece_stretch(const struct part *p, enum piece_side side)
{
	struct end_cut cut = side == PIECE_START ? p->start : p->end;
	bool is_mitred = fabs(cut.mitre) > NEAR_ENOUGH, is_bevelled = fabs(cut.bevel) > NEAR_ENOUGH;

	if (runs_along(side) || (is_mitred && is_bevelled))
		return vec(1, 1);
	return vec(1 / cos(cut.mitre), 1 / cos(cut.bevel));
}

static struct vec stretched(struct vec p, struct vec by)
{
	return vec(p.x * by.x, p.y * by.y);
}

static void stretch_strokes(struct arena *a, struct piece_view *v)
{
	struct stroke *strokes = NEW_N(a, struct stroke, v->view.stroke_count + 1);

	for (int i = 0; i < v->view.stroke_count; i++) {
		strokes[i] = v->view.strokes[i];
		strokes[i].a = stretched(strokes[i].a, v->stretch);
		strokes[i].b = stretched(strokes[i].b, v->stretch);
	}
	v->view.strokes = strokes;
}

static void take_breaks_out(struct arena *a, struct piece_view *v)
{
	struct stroke *strokes = NEW_N(a, struct stroke, v->view.stroke_count + 1);

	for (int i = 0; i < v->view.stroke_count; i++) {
		strokes[i] = v->view.strokes[i];
		strokes[i].a.x = breaks_drawn_at(&v->breaks, strokes[i].a.x);
		strokes[i].b.x = breaks_drawn_at(&v->breaks, strokes[i].b.x);
	}
	v->view.strokes = strokes;
}

struct vec3 piece_zero(const struct part *p)
{
	struct vec3 low = vec3(INFINITY, INFINITY, INFINITY);

	for (const struct solid *s = p->solids; s; s = s->next)
		for (int i = 0; i < s->n; i++) {
			struct vec3 a = s->a[i], b = s->b[i];
			low = vec3(fmin(low.x, fmin(a.x, b.x)), fmin(low.y, fmin(a.y, b.y)),
				fmin(low.z, fmin(a.z, b.z)));
		}
	return low;
}

struct piece_sides piece_sides(struct arena *a, const struct part *p)
{
	struct piece_sides s = { .part = p, .zero = piece_zero(p) };
	const struct part *piece = alone(a, p);

	for (int i = 0; i < PIECE_SIDES; i++)
		s.view[i] = view_make(a, piece, (struct view_spec){ .from = view_from(i) });
	return s;
}

struct piece_view piece_view(struct arena *a, const struct piece_sides *sides, enum piece_side side,
	struct piece_breaks breaks)
{
	struct piece_view v = { .part = sides->part, .side = side, .breaks = breaks };

	v.zero = sides->zero;
	v.view = sides->view[side];
	v.stretch = piece_stretch(sides->part, side);
	v.box = v.view.box;
	if (!runs_along(side)) {
		stretch_strokes(a, &v);
		v.box = (struct box){ v.box.x0 * v.stretch.x, v.box.y0 * v.stretch.y,
			v.box.x1 * v.stretch.x, v.box.y1 * v.stretch.y };
		return v;
	}
	take_breaks_out(a, &v);
	v.box.x0 = breaks_drawn_at(&breaks, fmax(v.box.x0, breaks.from));
	v.box.x1 = breaks_drawn_at(&breaks, fmin(v.box.x1, breaks.to));
	return v;
}

struct vec piece_point(const struct piece_view *v, struct vec3 p)
{
	struct vec at = view_project(v->view.spec.from, p);

	if (runs_along(v->side))
		at.x = breaks_drawn_at(&v->breaks, at.x);
	return stretched(at, v->stretch);
}

struct vec piece_figured(const struct piece_view *v, struct vec3 p)
{
	struct vec3 from_zero = vec3_sub(p, v->zero);

	switch (v->side) {
	case PIECE_FACE: return vec(from_zero.x, from_zero.y);
	case PIECE_EDGE: return vec(from_zero.x, from_zero.z);
	case PIECE_START:
	case PIECE_END:
	case PIECE_SIDES: break;
	}
	return stretched(vec(from_zero.y, from_zero.z), v->stretch);
}

bool piece_view_has(const struct piece_view *v, struct vec3 p)
{
	return !runs_along(v->side) || is_in_lap(&v->breaks, p.x);
}

static bool is_square_to(struct end_cut cut, double x)
{
	const double hair = 1e-3;

	return fabs(x - cos(cut.mitre) * cos(cut.bevel)) < hair;
}

enum piece_side piece_bore_side(const struct part *p, const struct bore *b)
{
	struct vec3 w = b->at.w, a = vec3(fabs(w.x), fabs(w.y), fabs(w.z));

	if (is_square_to(w.x < 0 ? p->start : p->end, a.x) || a.x > fmax(a.y, a.z))
		return w.x < 0 ? PIECE_START : PIECE_END;
	return a.z > a.y ? PIECE_FACE : PIECE_EDGE;
}

int piece_bore_faces(const struct piece_view *v, const struct bore *b)
{
	double to_eye = vec3_dot(b->at.w, view_frame(v->view.spec.from).w);

	if (piece_bore_side(v->part, b) != v->side)
		return 0;
	return to_eye > 0 ? 1 : -1;
}

/* Its direction on the view's plane. */
static struct vec project_direction(const struct piece_view *v, struct vec3 d)
{
	return view_project(v->view.spec.from, d);
}

/* The mouth: round, or a slot with round ends along u. */
static void draw_mouth(struct drawing *g, const struct piece_view *v, const struct bore *b,
	double scale, enum pen pen)
{
	struct vec at = vec_scale(piece_point(v, b->at.origin), scale);
	struct vec u = vec_unit(stretched(project_direction(v, b->at.u), v->stretch));
	struct vec w = vec_left(u), ring[2 * HALF];
	double radius = b->size.width / 2 * scale;
	double straight = (b->size.length - b->size.width) / 2 * scale;

	for (int i = 0; i < HALF; i++) {
		double angle = -PI / 2 + PI * i / (HALF - 1.0);
		struct vec out = vec_scale(u, straight + radius * cos(angle));
		struct vec round = vec_add(out, vec_scale(w, radius * sin(angle)));
		ring[i] = vec_add(at, round);
		ring[HALF + i] = vec_sub(at, round);
	}
	draw_polygon(g, pen, ring, 2 * HALF);
	double long_arm = straight + radius + CROSS, short_arm = radius + CROSS;
	draw_line(g, PEN_DIM, vec_sub(at, vec_scale(u, long_arm)),
		vec_add(at, vec_scale(u, long_arm)));
	draw_line(g, PEN_DIM, vec_sub(at, vec_scale(w, short_arm)),
		vec_add(at, vec_scale(w, short_arm)));
}

/* Seen from the side: as wide as it is that way, as deep as it goes. */
static void draw_depth(struct drawing *g, const struct piece_view *v, const struct bore *b,
	double scale)
{
	struct vec at = vec_scale(piece_point(v, b->at.origin), scale);
	struct vec in = vec_scale(project_direction(v, b->at.w), -b->size.depth * scale);
	struct vec along_u = project_direction(v, b->at.u);
	bool shows_length = vec_length(along_u) > 0.5;
	double half = (shows_length ? b->size.length : b->size.width) / 2 * scale;
	struct vec side = vec_scale(shows_length ? vec_unit(along_u)
						 : vec_unit(project_direction(v, b->at.v)),
		half);
	const struct vec hole[] = { vec_add(at, side), vec_add(vec_add(at, side), in),
		vec_add(vec_sub(at, side), in), vec_sub(at, side) };

	draw_polyline(g, PEN_HIDDEN, hole, 4);
}

static void draw_bores(struct drawing *g, const struct piece_view *v, double scale)
{
	for (const struct bore *b = v->part->bores; b; b = b->next) {
		int faces = piece_bore_faces(v, b);
		if (!piece_view_has(v, b->at.origin))
			continue;
		if (faces != 0)
			draw_mouth(g, v, b, scale, faces > 0 ? PEN_OUTLINE : PEN_HIDDEN);
		else if (runs_along(v->side))
			draw_depth(g, v, b, scale);
	}
}

/* A line across the piece with a kink in the middle. */
static void kinked(struct vec line[6], double x, double y0, double y1)
{
	const double kink = 1.3, over = 1.5, middle = (y0 + y1) / 2;

	line[0] = vec(x, y0 - over);
	line[1] = vec(x, middle - kink);
	line[2] = vec(x + kink, middle - kink / 3);
	line[3] = vec(x - kink, middle + kink / 3);
	line[4] = vec(x, middle + kink);
	line[5] = vec(x, y1 + over);
}

/* Two of them, white in between. */
static void draw_break(struct drawing *g, double x, double y0, double y1)
{
	const double apart = 0.8;
	struct vec left[6], right[6], hole[12];

	kinked(left, x - apart, y0, y1);
	kinked(right, x + apart, y0, y1);
	for (int i = 0; i < 6; i++) {
		hole[i] = left[i];
		hole[11 - i] = right[i];
	}
	draw_fill(g, SHADE_WHITE, hole, 12);
	draw_polyline(g, PEN_DIM, left, 6);
	draw_polyline(g, PEN_DIM, right, 6);
}

/* Where a lap ends and the next one begins. */
static void draw_lap_end(struct drawing *g, const struct piece_view *v, double x, double scale)
{
	struct vec line[6];

	if (!isfinite(x))
		return;
	kinked(line, x * scale, v->box.y0 * scale, v->box.y1 * scale);
	draw_polyline(g, PEN_DIM, line, 6);
}

static void draw_breaks(struct drawing *g, const struct piece_view *v, double scale)
{
	if (!runs_along(v->side))
		return;
	draw_lap_end(g, v, v->breaks.from, scale);
	draw_lap_end(g, v, v->breaks.to, scale);
	for (int i = 0; i < v->breaks.n; i++) {
		const struct plain_stretch *s = &v->breaks.stretch[i];
		double x = breaks_drawn_at(&v->breaks, (s->from + s->to) / 2) * scale;
		draw_break(g, x, v->box.y0 * scale, v->box.y1 * scale);
	}
}

struct box piece_view_draw(struct drawing *g, const struct piece_view *v, double scale)
{
	const struct box lap = { v->box.x0, v->box.y0 - 1, v->box.x1, v->box.y1 + 1 };

	view_draw(g, &v->view, (struct placing){ .scale = scale },
		piece_is_whole(&v->breaks) ? NULL : &lap);
	draw_bores(g, v, scale);
	draw_breaks(g, v, scale);
	return box_scale(v->box, scale);
}
