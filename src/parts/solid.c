#include "parts/solid.h"

/* Six times the volume of the cone from the origin over a face. */
static double cone_volume(const struct vec3 *p, int n)
{
	double v = 0;
	for (int i = 1; i + 1 < n; i++)
		v += vec3_dot(p[0], vec3_cross(p[i], p[i + 1]));
	return v;
}

/* Six times the enclosed volume, if `a` runs counter-clockwise seen from outside. */
static double volume(int n, const struct vec3 *a, const struct vec3 *b)
{
	double v = cone_volume(a, n) - cone_volume(b, n);
	for (int i = 0; i < n; i++) {
		int k = (i + 1) % n;
		struct vec3 side[4] = { a[k], a[i], b[i], b[k] };
		v += cone_volume(side, 4);
	}
	return v;
}

static unsigned char turned(unsigned char soft)
{
	unsigned s = soft & SOFT_SIDE;
	s |= soft & SOFT_A ? SOFT_B : 0u;
	s |= soft & SOFT_B ? SOFT_A : 0u;
	return (unsigned char)s;
}

static const unsigned char *all_turned(struct arena *a, const unsigned char *soft, int n)
{
	unsigned char *t = NEW_N(a, unsigned char, n);
	for (int i = 0; i < n; i++)
		t[i] = turned(soft[i]);
	return t;
}

struct solid *solid_join(struct arena *a, int n, struct vec3 *one, struct vec3 *other,
	const unsigned char *soft)
{
	struct solid *s = NEW(a, struct solid);
	bool as_given = volume(n, one, other) > 0;
	s->n = n;
	s->a = as_given ? one : other;
	s->b = as_given ? other : one;
	s->soft = as_given || !soft ? soft : all_turned(a, soft, n);
	return s;
}

struct solid *solid_prism(struct arena *a, struct profile f, double z0, double z1)
{
	struct vec3 *low = NEW_N(a, struct vec3, f.n), *high = NEW_N(a, struct vec3, f.n);
	for (int i = 0; i < f.n; i++) {
		low[i] = vec3(f.at[i].x, f.at[i].y, z0);
		high[i] = vec3(f.at[i].x, f.at[i].y, z1);
	}
	return solid_join(a, f.n, high, low, f.soft);
}

static double reach(struct end_plane e, struct vec p)
{
	return e.at + e.by_y * p.x + e.by_z * p.y;
}

struct solid *solid_strip(struct arena *a, struct profile f, struct end_plane from,
	struct end_plane to)
{
	struct vec3 *near = NEW_N(a, struct vec3, f.n), *far = NEW_N(a, struct vec3, f.n);
	for (int i = 0; i < f.n; i++) {
		near[i] = vec3(reach(from, f.at[i]), f.at[i].x, f.at[i].y);
		far[i] = vec3(reach(to, f.at[i]), f.at[i].x, f.at[i].y);
	}
	return solid_join(a, f.n, far, near, f.soft);
}

struct solid *solid_box(struct arena *a, struct vec3 from, struct vec3 to)
{
	struct outline o = outline_box(a, from.x, from.y, to.x, to.y);
	return solid_prism(a, profile_of(a, o), from.z, to.z);
}

static struct vec3 *points_moved(struct arena *a, const struct vec3 *p, int n, struct vec3 by)
{
	struct vec3 *moved = NEW_N(a, struct vec3, n);
	for (int i = 0; i < n; i++)
		moved[i] = vec3_add(p[i], by);
	return moved;
}

struct solid *solids_moved(struct arena *a, const struct solid *list, struct vec3 by)
{
	struct solid *first = NULL, **tail = &first;
	for (const struct solid *s = list; s; s = s->next) {
		*tail = NEW(a, struct solid);
		**tail = *s;
		(*tail)->a = points_moved(a, s->a, s->n, by);
		(*tail)->b = points_moved(a, s->b, s->n, by);
		tail = &(*tail)->next;
	}
	*tail = NULL;
	return first;
}

struct solid *solid_add(struct solid *list, struct solid *more)
{
	more->next = list;
	return more;
}

/* The solid angle under which a triangle is seen from the origin (Van Oosterom and Strackee, IEEE
 * Trans. Biomed. Eng. 30, 1983: from memory). */
static double solid_angle(struct vec3 a, struct vec3 b, struct vec3 c)
{
	double la = vec3_length(a), lb = vec3_length(b), lc = vec3_length(c);
	double det = vec3_dot(a, vec3_cross(b, c));
	double by = la * lb * lc + vec3_dot(a, b) * lc + vec3_dot(b, c) * la + vec3_dot(c, a) * lb;
	return 2 * atan2(det, by);
}

static double face_angle(const struct vec3 *f, int n, struct vec3 p)
{
	double sum = 0;
	for (int i = 1; i + 1 < n; i++)
		sum += solid_angle(vec3_sub(f[0], p), vec3_sub(f[i], p), vec3_sub(f[i + 1], p));
	return sum;
}

static bool is_beside(const struct solid *s, struct vec3 p)
{
	struct box3 b = box3_add_solid(box3_empty(), s);
	return p.x < b.low.x || p.x > b.high.x || p.y < b.low.y || p.y > b.high.y ||
		p.z < b.low.z || p.z > b.high.z;
}

/* All its faces together are seen under the whole sphere from inside, under nothing from outside.
 */
static bool solid_contains(const struct solid *s, struct vec3 p)
{
	if (is_beside(s, p))
		return false;
	double sum = face_angle(s->a, s->n, p) - face_angle(s->b, s->n, p);
	for (int i = 0; i < s->n; i++) {
		int k = (i + 1) % s->n;
		struct vec3 side[4] = { s->a[k], s->a[i], s->b[i], s->b[k] };
		sum += face_angle(side, 4, p);
	}
	return fabs(sum) > 2 * PI;
}

bool solids_contain(const struct solid *list, struct vec3 p)
{
	for (const struct solid *s = list; s; s = s->next)
		if (solid_contains(s, p))
			return true;
	return false;
}
