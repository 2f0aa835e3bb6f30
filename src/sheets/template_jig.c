/*
 * Where blocks and clamps of a jig go.  All in the axes of the unit's face: x up the balusters, y
 * along the stair.
 */
#include "sheets/template_jig.h"

#include "draw/bounds.h"

/* Common practice: blocks of 3/4 in stuff, jaws of bar clamps with their pads. */
#define BLOCK_DEEP 19.0
#define BLOCK_LONG 60.0
#define CLAMP_WIDE 34.0
#define CLAMP_REACH 40.0
#define CLEAR 8.0 /* between block and clamp */
#define STEP 5.0  /* in which a free place is looked for */

/* A piece as it lies in the face. */
struct lying {
	const struct unit_piece *piece;
	struct vec *corner;
	int n;
	struct box box;
};

static struct lying lying(struct arena *a, const struct unit_face *f, int i)
{
	const struct unit_piece *p = &f->unit->pieces[i];
	struct outline o = p->part->outline;
	struct lying l = { p, NEW_N(a, struct vec, o.n), o.n, box_empty() };

	for (int k = 0; k < o.n; k++) {
		struct vec3 at = frame_place(p->at, vec3(o.corners[k].at.x, o.corners[k].at.y, 0));
		l.corner[k] = vec_add(vec(at.x, at.y), f->by);
		l.box = box_add(l.box, l.corner[k]);
	}
	return l;
}

/* A row of cross pieces: the line through their middles. */
struct row {
	struct vec at, along;
};

static struct row row_of(const struct unit_face *f, const struct unit_piece *p)
{
	struct part_size s = p->part->size;
	struct vec3 at = frame_place(p->at, vec3(s.length / 2, s.width / 2, 0));
	struct vec along = vec_unit(vec(p->at.u.x, p->at.u.y));

	return (struct row){ vec_add(vec(at.x, at.y), f->by),
		along.y < 0 ? vec_scale(along, -1) : along };
}

static bool is_in_row(struct row r, struct row other)
{
	return fabs(vec_cross(r.along, vec_sub(other.at, r.at))) < 1 &&
		fabs(vec_cross(r.along, other.along)) < 0.001;
}

/* Where the row crosses this level of y. */
static struct vec crossing(struct row r, double y)
{
	return vec_add(r.at, vec_scale(r.along, (y - r.at.y) / r.along.y));
}

struct jig_maker {
	struct arena *arena;
	struct jig jig;
	struct row *rows;
	int row_count;
	struct box balusters;
};

static bool is_baluster(const struct unit_piece *p)
{
	return p->part->baluster != NULL;
}

static void find_rows(struct jig_maker *m)
{
	const struct unit *u = m->jig.face.unit;

	for (int i = 0; i < u->piece_count; i++) {
		if (is_baluster(&u->pieces[i]))
			continue;
		struct row r = row_of(&m->jig.face, &u->pieces[i]);
		int k = 0;
		while (k < m->row_count && !is_in_row(m->rows[k], r))
			k++;
		if (k == m->row_count && r.along.y > 0.1)
			m->rows[m->row_count++] = r;
	}
}

/* From the outer face of an end baluster out to where the clamp's head turns. */
static void add_clamp(struct jig_maker *m, struct row r, double face, double out)
{
	struct vec from = crossing(r, face), to = crossing(r, face + out * CLAMP_REACH);
	struct vec half = vec(CLAMP_WIDE / 2, 0);

	m->jig.clamps[m->jig.clamp_count++] = (struct block){ { vec_sub(from, half),
		vec_add(from, half), vec_add(to, half), vec_sub(to, half) } };
}

static void add_clamps(struct jig_maker *m)
{
	for (int i = 0; i < m->row_count; i++) {
		add_clamp(m, m->rows[i], m->balusters.y0, -1);
		add_clamp(m, m->rows[i], m->balusters.y1, 1);
	}
}

/* Does a line square to this direction keep them so far apart, `one` before `other`? */
static bool is_before(const struct block *one, const struct block *other, struct vec along,
	double gap)
{
	double high = -INFINITY, low = INFINITY;

	for (int i = 0; i < 4; i++) {
		high = fmax(high, vec_dot(one->corner[i], along));
		low = fmin(low, vec_dot(other->corner[i], along));
	}
	return low >= high + gap - NEAR_ENOUGH;
}

/* Two convex shapes are apart when a line along an edge of either keeps them so. */
static bool is_apart(const struct block *one, const struct block *other, double gap)
{
	for (int i = 0; i < 4; i++) {
		struct vec edge = vec_sub(one->corner[(i + 1) % 4], one->corner[i]);
		struct vec square = vec_left(vec_unit(edge));
		if (is_before(one, other, square, gap) ||
			is_before(one, other, vec_scale(square, -1), gap))
			return true;
	}
	return false;
}

static bool is_clear(const struct jig_maker *m, const struct block *b, double gap)
{
	for (int i = 0; i < m->jig.clamp_count; i++)
		if (!is_apart(b, &m->jig.clamps[i], gap) && !is_apart(&m->jig.clamps[i], b, gap))
			return false;
	return true;
}

static struct block side_block(const struct jig_maker *m, double x)
{
	double y = m->balusters.y0;

	return (struct block){ { { x, y }, { x + BLOCK_LONG, y },
		{ x + BLOCK_LONG, y - BLOCK_DEEP }, { x, y - BLOCK_DEEP } } };
}

/* Along the outer edge of the first baluster, from this place on, where no clamp is in the way;
 * none when it runs past the half. */
static void add_side_block(struct jig_maker *m, double from, double step)
{
	double middle = (m->balusters.x0 + m->balusters.x1) / 2;

	for (double x = from; (x - middle) * step < 0; x += step) {
		struct block b = side_block(m, x);
		if (!is_clear(m, &b, CLEAR))
			continue;
		m->jig.blocks[m->jig.block_count++] = b;
		return;
	}
}

/* The edge of a baluster that lies farthest out along x, and a block against it. */
static struct block end_block(const struct lying *l, double out)
{
	int best = 0;
	double far = -INFINITY;

	for (int i = 0; i < l->n; i++) {
		struct vec p = l->corner[i], q = l->corner[(i + 1) % l->n];
		double reach = out * (p.x + q.x) / 2;
		if (reach <= far)
			continue;
		far = reach;
		best = i;
	}
	struct vec p = l->corner[best], q = l->corner[(best + 1) % l->n];
	struct vec away = vec_left(vec_unit(vec_sub(q, p)));
	if (away.x * out < 0)
		away = vec_scale(away, -1);
	away = vec_scale(away, BLOCK_DEEP);
	return (struct block){ { p, q, vec_add(q, away), vec_add(p, away) } };
}

/* But where a clamp has to reach. */
static void add_end_blocks(struct jig_maker *m)
{
	const struct unit_face *f = &m->jig.face;

	for (int i = 0; i < f->unit->piece_count; i++) {
		if (!is_baluster(&f->unit->pieces[i]))
			continue;
		struct lying l = lying(m->arena, f, i);
		for (int out = -1; out <= 1; out += 2) {
			struct block b = end_block(&l, out);
			if (is_clear(m, &b, 0))
				m->jig.blocks[m->jig.block_count++] = b;
		}
	}
}

/* The box round the balusters: their feet and shortest tops along x. */
static struct box baluster_box(struct arena *a, const struct unit_face *f)
{
	struct box b = box_empty();

	for (int i = 0; i < f->unit->piece_count; i++) {
		struct lying l = lying(a, f, i);
		if (is_baluster(l.piece))
			b = box_join(b, l.box);
	}
	return b;
}

/* Up the balusters, along the stair, to the left: so the first of them lies. */
static struct frame face_axes(const struct unit *u)
{
	for (int i = 0; i < u->piece_count; i++)
		if (is_baluster(&u->pieces[i]))
			return u->pieces[i].in_house;
	return u->pieces[0].in_house;
}

struct jig jig_make(struct arena *a, const struct unit *u, struct lettering l)
{
	static const struct face_names names = { "foot", "middle", "top", "downhill edge",
		"uphill edge" };
	struct jig_maker m = { .arena = a };
	int n = u->piece_count;

	m.jig.face = unit_face(a, unit_turned(a, u, face_axes(u)), FACES_ALL, l, &names);
	m.jig.blocks = NEW_N(a, struct block, 2 * n + 2);
	m.jig.clamps = NEW_N(a, struct block, 2 * n);
	m.rows = NEW_N(a, struct row, n);
	m.balusters = baluster_box(a, &m.jig.face);
	find_rows(&m);
	add_clamps(&m);
	double length = box_width(m.balusters);
	add_side_block(&m, m.balusters.x0 + length / 10, STEP);
	add_side_block(&m, m.balusters.x0 + length * 0.8 - BLOCK_LONG, -STEP);
	add_end_blocks(&m);
	return m.jig;
}
