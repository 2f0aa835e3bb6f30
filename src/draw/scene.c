/*
 * From placed solids to the faces that hide and the edges that may be seen.
 */
#include "draw/scene.h"

#include "draw/bounds.h"

/* A face whose normal makes less than this with the paper is seen on edge. */
#define ON_EDGE 1e-6

/* So far beside a window lines may still be united with those in it. */
#define BESIDE_WINDOW 1.0

/* Two faces that meet as flat as this make no line. */
#define FLAT 1e-9

static struct vec3 in_view(struct frame view, struct frame place, struct vec3 p)
{
	struct vec3 q = frame_place(place, p);
	return vec3(vec3_dot(view.u, q), vec3_dot(view.v, q), vec3_dot(view.w, q));
}

static int loop_of_a(struct body *b)
{
	for (int i = 0; i < b->n; i++)
		b->loop[i] = (struct loop_corner){ b->a[i], i };
	return b->n;
}

static int loop_of_b(struct body *b)
{
	for (int i = 0; i < b->n; i++) {
		int k = b->n - 1 - i;
		int before = k > 0 ? k - 1 : b->n - 1;
		b->loop[i] = (struct loop_corner){ b->b[k], b->n + before };
	}
	return b->n;
}

/*
 *      a[i+1] ----edge i---- a[i]
 *        |                    |
 *   edge 2n+i+1           edge 2n+i
 *        |                    |
 *      b[i+1] ---edge n+i--- b[i]
 */
static int loop_of_side(struct body *b, int i)
{
	int next = (i + 1) % b->n;
	b->loop[0] = (struct loop_corner){ b->a[next], i };
	b->loop[1] = (struct loop_corner){ b->a[i], 2 * b->n + i };
	b->loop[2] = (struct loop_corner){ b->b[i], b->n + i };
	b->loop[3] = (struct loop_corner){ b->b[next], 2 * b->n + next };
	return 4;
}

int body_loop(struct body *b, int f)
{
	if (f == 0)
		return loop_of_a(b);
	if (f == 1)
		return loop_of_b(b);
	return loop_of_side(b, f - 2);
}

/* Newell's sum: twice the area along each axis, whatever the shape. */
static struct vec3 loop_normal(const struct loop_corner *loop, int n)
{
	struct vec3 sum = { 0 };
	for (int i = 2; i < n; i++) {
		struct vec3 p = vec3_sub(loop[i - 1].at, loop[0].at);
		struct vec3 q = vec3_sub(loop[i].at, loop[0].at);
		sum = vec3_add(sum, vec3_cross(p, q));
	}
	return sum;
}

static struct plane plane_through(struct vec3 at, struct vec3 normal)
{
	struct plane p = { -normal.x / normal.z, -normal.y / normal.z, 0 };
	p.z = at.z - p.dx * at.x - p.dy * at.y;
	return p;
}

static struct face face_of(const struct loop_corner *loop, int n)
{
	struct face f = { 0 };
	struct vec3 sum = loop_normal(loop, n);
	if (vec3_length(sum) < NEAR_ENOUGH)
		return f;
	f.normal = vec3_unit(sum);
	if (fabs(f.normal.z) < ON_EDGE)
		return f;
	f.facing = f.normal.z > 0 ? FACING_EYE : FACING_AWAY;
	f.plane = plane_through(loop[0].at, f.normal);
	return f;
}

/* By the light in the house, from wherever it is looked at. */
static void body_shade(struct body *b, const struct picture *picture, const struct part *part)
{
	for (int f = 0; f < b->n + 2; f++) {
		struct face *face = &b->faces[f];
		face->shade = SHADE_WHITE;
		if (face->facing == FACING_EYE)
			face->shade = picture->shade(part, frame_turn(picture->eye, face->normal));
	}
}

static struct body body_make(struct scene *s, const struct solid *solid, struct frame view,
	struct frame place)
{
	struct arena *a = s->arena;
	int n = solid->n;
	struct body b = { .n = n, .soft = solid->soft, .piece = s->piece_count - 1 };

	b.a = NEW_N(a, struct vec3, 2 * n);
	b.b = b.a + n;
	for (int i = 0; i < n; i++) {
		b.a[i] = in_view(view, place, solid->a[i]);
		b.b[i] = in_view(view, place, solid->b[i]);
	}
	b.loop = NEW_N(a, struct loop_corner, n > 4 ? n : 4);
	b.faces = NEW_N(a, struct face, n + 2);
	for (int f = 0; f < n + 2; f++) {
		int corners = body_loop(&b, f);
		b.faces[f] = face_of(b.loop, corners);
	}
	if (s->spec->picture)
		body_shade(&b, s->spec->picture, s->pieces[b.piece].part);
	return b;
}

static bool flat(const struct face *f, const struct face *g)
{
	return vec3_length(vec3_cross(f->normal, g->normal)) < FLAT;
}

static bool end_on(const struct edge *e)
{
	return vec_length(vec(e->b.x - e->a.x, e->b.y - e->a.y)) < SHORTEST;
}

static enum pen pen_of(const struct part *p)
{
	bool existing = part_is_existing(p);
	return existing ? PEN_EXISTING : PEN_OUTLINE;
}

static int faces_toward_eye(const struct edge *e)
{
	return (e->left->facing == FACING_EYE) + (e->right->facing == FACING_EYE);
}

/* A hard edge is seen from any side that sees one of its faces, a soft one only where the solid
 * turns away from the eye.  Where it does not, a solid beside it may: the soft lines of a piece
 * built up of several are kept until it is known what lies on either side of them. */
static bool edge_shows(const struct edge *e, const struct piece *piece)
{
	int toward = faces_toward_eye(e);
	if (toward == 2)
		return !e->soft || piece->built_up;
	return toward == 1 || (piece->hidden_too && !e->soft);
}

static void edge_add(struct scene *s, const struct body *b, struct edge e)
{
	const struct piece *piece = &s->pieces[b->piece];

	e.soft = e.soft || flat(e.left, e.right);
	if (!edge_shows(&e, piece))
		return;
	if (s->spec->cut && !section_clip_edge(s->spec->at, &e))
		return;
	if (end_on(&e))
		return;
	e.pen = faces_toward_eye(&e) > 0 ? pen_of(piece->part) : PEN_HIDDEN;
	e.piece = b->piece;
	struct edge *kept = NEW(s->arena, struct edge);
	*kept = e;
	*s->edge_tail = kept;
	s->edge_tail = &kept->next;
}

static void body_edges(struct scene *s, const struct body *b)
{
	const struct face *a_face = &b->faces[0], *b_face = &b->faces[1];

	for (int i = 0; i < b->n; i++) {
		int next = (i + 1) % b->n;
		int before = i > 0 ? i - 1 : b->n - 1;
		const struct face *side = &b->faces[2 + i], *last = &b->faces[2 + before];
		unsigned soft = b->soft ? b->soft[i] : 0;
		edge_add(s, b,
			(struct edge){ .a = b->a[i],
				.b = b->a[next],
				.left = a_face,
				.right = side,
				.soft = soft & SOFT_A });
		edge_add(s, b,
			(struct edge){ .a = b->b[i],
				.b = b->b[next],
				.left = side,
				.right = b_face,
				.soft = soft & SOFT_B });
		edge_add(s, b,
			(struct edge){ .a = b->a[i],
				.b = b->b[i],
				.left = side,
				.right = last,
				.soft = soft & SOFT_SIDE });
	}
}

static void face_screens(struct scene *s, struct body *b, int f, enum side_of_cut side)
{
	const struct face *face = &b->faces[f];
	int n = body_loop(b, f);
	struct vec3 *kept = NEW_N(s->arena, struct vec3, 2 * n);
	struct vec *flat_points = NEW_N(s->arena, struct vec, 2 * n);

	if (side == BODY_CUT) {
		n = section_clip_loop(s->spec->at, b->loop, n, kept);
	} else {
		for (int i = 0; i < n; i++)
			kept[i] = b->loop[i].at;
	}
	for (int i = 0; i < n; i++)
		flat_points[i] = vec(kept[i].x, kept[i].y);
	screen_polygon(s, face, face->plane, flat_points, n);
}

/* Beside the window it neither shows there nor hides anything; what is cut is kept, for wood is
 * hatched by what lies beside it, on every sheet alike. */
static bool is_beside_window(const struct scene *s, const struct body *b)
{
	struct box window = s->spec->window, box = box_empty();

	if (box_width(window) <= 0)
		return false;
	for (int i = 0; i < 2 * b->n; i++)
		box = box_add(box, vec(b->a[i].x, b->a[i].y));
	return !box_touches(box, box_grow(window, BESIDE_WINDOW));
}

static void body_add(struct scene *s, struct body *b)
{
	enum side_of_cut side = section_side(s->spec, b);

	if (side == BODY_TAKEN_AWAY)
		return;
	if (!is_beside_window(s, b)) {
		for (int f = 0; f < b->n + 2; f++)
			if (b->faces[f].facing == FACING_EYE)
				face_screens(s, b, f, side);
		body_edges(s, b);
	}
	if (side == BODY_CUT)
		section_cut(s, b);
}

static bool shown(const struct view_spec *spec, const struct part *p)
{
	return !spec->shows || spec->shows(p, spec->with);
}

static void part_add(struct scene *s, const struct part *p)
{
	struct frame view = view_eye(s->spec);
	bool hidden_too = s->spec->hidden && s->spec->hidden(p, s->spec->with);
	bool built_up = p->solids && p->solids->next;

	for (int i = 0; i < p->count; i++) {
		s->pieces[s->piece_count++] = (struct piece){ p, hidden_too, built_up };
		for (const struct solid *solid = p->solids; solid; solid = solid->next) {
			struct body b = body_make(s, solid, view, p->places[i]);
			body_add(s, &b);
		}
	}
}

struct scene *scene_make(struct arena *a, const struct part *parts, const struct view_spec *spec)
{
	struct scene *s = NEW(a, struct scene);
	int places = 0;

	s->arena = a;
	s->spec = spec;
	s->edge_tail = &s->edges;
	s->screen_tail = &s->screens;
	s->cut_tail = &s->cuts;
	s->cut_face = (struct face){ .facing = FACING_EYE,
		.normal = { 0, 0, 1 },
		.plane = { 0, 0, spec->at } };
	for (const struct part *p = parts; p; p = p->next)
		places += p->count;
	s->pieces = NEW_N(a, struct piece, places + 1);
	for (const struct part *p = parts; p; p = p->next) {
		if (shown(spec, p))
			part_add(s, p);
	}
	return s;
}
