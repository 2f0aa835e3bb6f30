#include "sheets/template_joined.h"

#define TANGENT 0.05 /* sine of a turn that is none: from facet to facet of a round */

struct edge {
	struct vec a, b;
};

static struct edge edge_of(const struct chain *c, int i)
{
	return (struct edge){ c->points[i], c->points[(i + 1) % c->n] };
}

/* A stretch of an edge, from and to along it. */
struct stretch_of_edge {
	double from, to;
};

/* As far as the other edge lies against this one; the two run in opposite directions. */
static struct stretch_of_edge shared(struct edge e, struct edge other)
{
	struct vec run = vec_sub(e.b, e.a), along = vec_unit(run);
	struct vec p = vec_sub(other.b, e.a), q = vec_sub(other.a, e.a);
	struct stretch_of_edge none = { 0, 0 };

	if (fabs(vec_cross(along, p)) > PATTERN_ALIKE || fabs(vec_cross(along, q)) > PATTERN_ALIKE)
		return none;
	double from = fmax(0, vec_dot(p, along)), to = fmin(vec_length(run), vec_dot(q, along));
	return to - from > PATTERN_ALIKE ? (struct stretch_of_edge){ from, to } : none;
}

/* The first stretch, from this far along the edge on, that another piece lies against. */
static struct stretch_of_edge next_shared(const struct chain *faces, const struct chain *own,
	struct edge e, double from)
{
	struct stretch_of_edge next = { INFINITY, INFINITY };

	for (const struct chain *c = faces; c; c = c->next)
		for (int i = 0; c != own && i < c->n; i++) {
			struct stretch_of_edge s = shared(e, edge_of(c, i));
			if (s.to <= from + PATTERN_ALIKE || s.from >= next.from)
				continue;
			next = (struct stretch_of_edge){ fmax(s.from, from), s.to };
		}
	return next;
}

struct joiner {
	struct arena *arena;
	struct joined joined;
	struct chain **cut_tail, **joint_tail;
	struct vec *run; /* of the line being drawn */
	int n;
};

static void end_run(struct joiner *j)
{
	if (j->n > 1) {
		struct chain *c = NEW(j->arena, struct chain);
		struct vec *points = NEW_N(j->arena, struct vec, j->n);
		for (int i = 0; i < j->n; i++)
			points[i] = j->run[i];
		*c = (struct chain){ NULL, points, j->n, false };
		*j->cut_tail = c;
		j->cut_tail = &c->next;
	}
	j->n = 0;
}

static void add_cut(struct joiner *j, struct vec from, struct vec to)
{
	if (j->n == 0)
		j->run[j->n++] = from;
	j->run[j->n++] = to;
}

/* Two pieces have the joint: it is drawn for the one that comes first. */
static void add_joint(struct joiner *j, struct vec from, struct vec to)
{
	for (const struct chain *c = j->joined.joint; c; c = c->next)
		if (pattern_same_point(c->points[0], to) && pattern_same_point(c->points[1], from))
			return;
	struct chain *c = NEW(j->arena, struct chain);
	struct vec *points = NEW_N(j->arena, struct vec, 2);
	points[0] = from;
	points[1] = to;
	*c = (struct chain){ NULL, points, 2, false };
	*j->joint_tail = c;
	j->joint_tail = &c->next;
}

static void walk_edge(struct joiner *j, const struct chain *faces, const struct chain *own,
	struct edge e)
{
	struct vec along = vec_unit(vec_sub(e.b, e.a));
	double length = vec_length(vec_sub(e.b, e.a)), at = 0;

	while (at < length - PATTERN_ALIKE) {
		struct stretch_of_edge s = next_shared(faces, own, e, at);
		struct vec from = vec_add(e.a, vec_scale(along, at));
		if (s.from > length)
			s.from = length;
		struct vec begin = vec_add(e.a, vec_scale(along, s.from));
		if (s.from > at + PATTERN_ALIKE)
			add_cut(j, from, s.from < length ? begin : e.b);
		if (s.from >= length)
			return;
		end_run(j);
		add_joint(j, begin, vec_add(e.a, vec_scale(along, s.to)));
		at = s.to;
	}
}

struct joined chains_join(struct arena *a, const struct chain *faces)
{
	struct joiner j = { .arena = a };
	int most = 0;

	j.cut_tail = &j.joined.cut;
	j.joint_tail = &j.joined.joint;
	for (const struct chain *c = faces; c; c = c->next)
		most = c->n > most ? c->n : most;
	j.run = NEW_N(a, struct vec, 2 * most + 2);
	for (const struct chain *c = faces; c; c = c->next) {
		for (int i = 0; i < c->n; i++)
			walk_edge(&j, faces, c, edge_of(c, i));
		end_run(&j);
	}
	return j.joined;
}

struct turning cut_turns(const struct joined *j, struct vec at)
{
	struct vec sides[2];
	int n = 0;

	for (const struct chain *c = j->cut; c; c = c->next)
		for (int i = 0; i + 1 < c->n; i++) {
			struct vec p = c->points[i], q = c->points[i + 1];
			bool begins = pattern_same_point(p, at);
			if (!begins && !pattern_same_point(q, at))
				continue;
			if (n < 2)
				sides[n] = vec_unit(begins ? vec_sub(q, p) : vec_sub(p, q));
			n++;
		}
	if (n != 2 || fabs(vec_cross(sides[0], sides[1])) < TANGENT)
		return (struct turning){ false, { 0, 0 } };
	return (struct turning){ true, vec_unit(vec_add(sides[0], sides[1])) };
}

/* Faces that lie this near to one another in height are one face of the unit. */
#define FLUSH 1.0

static bool lies_flat(const struct unit_piece *p)
{
	return fabs(p->at.w.z) > 1 - NEAR_ENOUGH && p->part->outline.n > 2;
}

static double top_of(const struct unit_piece *p)
{
	return p->at.origin.z + fmax(0, p->at.w.z) * p->part->size.thickness;
}

static double highest(const struct unit *u)
{
	double z = -INFINITY;

	for (int i = 0; i < u->piece_count; i++)
		if (lies_flat(&u->pieces[i]))
			z = fmax(z, top_of(&u->pieces[i]));
	return z;
}

static bool is_wanted(const struct unit *u, const struct unit_piece *p, enum faces which)
{
	return lies_flat(p) && (which == FACES_ALL || top_of(p) > highest(u) - FLUSH);
}

static struct vec on_face(const struct unit_piece *p, struct vec at)
{
	struct vec3 q = frame_place(p->at, vec3(at.x, at.y, 0));

	return vec(q.x, q.y);
}

/* Counter-clockwise, so that edges which lie against each other run in opposite directions. */
static bool runs_clockwise(const struct vec *points, int n)
{
	double sum = 0;

	for (int i = 0; i < n; i++)
		sum += vec_cross(points[i], points[(i + 1) % n]);
	return sum < 0;
}

static void turn_round(struct vec *points, int n)
{
	for (int i = 0; i < n / 2; i++) {
		struct vec kept = points[i];
		points[i] = points[n - 1 - i];
		points[n - 1 - i] = kept;
	}
}

static struct chain *face_of(struct arena *a, const struct unit_piece *p)
{
	struct chain own = outline_chain(a, p->part->outline), *face = NEW(a, struct chain);
	struct vec *points = NEW_N(a, struct vec, own.n);

	for (int i = 0; i < own.n; i++)
		points[i] = on_face(p, own.points[i]);
	if (runs_clockwise(points, own.n))
		turn_round(points, own.n);
	*face = (struct chain){ NULL, points, own.n, true };
	return face;
}

struct chain *unit_faces(struct arena *a, const struct unit *u, enum faces which)
{
	struct chain *list = NULL, **tail = &list;

	for (int i = 0; i < u->piece_count; i++) {
		if (!is_wanted(u, &u->pieces[i], which))
			continue;
		*tail = face_of(a, &u->pieces[i]);
		tail = &(*tail)->next;
	}
	return list;
}

struct outline unit_corners(struct arena *a, const struct unit *u, enum faces which)
{
	struct corner *corners;
	int n = 0;

	for (int i = 0; i < u->piece_count; i++)
		n += u->pieces[i].part->outline.n;
	corners = NEW_N(a, struct corner, n + 1);
	n = 0;
	for (int i = 0; i < u->piece_count; i++) {
		const struct unit_piece *p = &u->pieces[i];
		for (int k = 0; is_wanted(u, p, which) && k < p->part->outline.n; k++)
			corners[n++].at = on_face(p, p->part->outline.corners[k].at);
	}
	return (struct outline){ corners, n };
}

struct unit *unit_turned(struct arena *a, const struct unit *u, struct frame axes)
{
	struct unit *turned = NEW(a, struct unit);
	struct unit_piece *pieces = NEW_N(a, struct unit_piece, u->piece_count);

	for (int i = 0; i < u->piece_count; i++) {
		pieces[i] = u->pieces[i];
		pieces[i].at = frame_within(axes, pieces[i].in_house);
	}
	*turned = *u;
	turned->pieces = pieces;
	return turned;
}

struct unit *unit_of_part(struct arena *a, const struct part *p)
{
	struct unit *u = NEW(a, struct unit);
	struct unit_piece *piece = NEW(a, struct unit_piece);

	piece->part = p;
	piece->at = frame_house();
	piece->in_house = p->places[0];
	*u = (struct unit){ .mark = p->mark,
		.kind = p->kind,
		.pieces = piece,
		.piece_count = 1,
		.places = p->places,
		.count = p->count };
	return u;
}
