/*
 * Points, directions and frames, in millimetres; angles in radians.
 *
 * House axes: x along the first flight, in the direction of travel going up;
 * y to the left when going up; z up from the finished lower floor.
 * Everything is passed and returned by value.
 */
#ifndef PITCHBOARD_VEC_H
#define PITCHBOARD_VEC_H

#include <math.h>
#include <stdbool.h>

#define PI 3.14159265358979323846

/* Two lengths nearer than this are the same length: far below a saw cut, far
 * above the rounding of doubles. */
#define NEAR_ENOUGH 1e-6

static inline bool near_enough(double a, double b)
{
	return a == b || fabs(a - b) <= NEAR_ENOUGH; /* the first for what is endless */
}

struct vec {
	double x, y;
};

struct vec3 {
	double x, y, z;
};

/* A place in the house: an origin and three unit axes at right angles. */
struct frame {
	struct vec3 origin, u, v, w;
};

struct box {
	double x0, y0, x1, y1;
};

/* A box in space, its sides along the axes. */
struct box3 {
	struct vec3 low, high;
};

static inline struct vec vec(double x, double y)
{
	return (struct vec){ x, y };
}

static inline struct vec vec_add(struct vec a, struct vec b)
{
	return (struct vec){ a.x + b.x, a.y + b.y };
}

static inline struct vec vec_sub(struct vec a, struct vec b)
{
	return (struct vec){ a.x - b.x, a.y - b.y };
}

static inline struct vec vec_scale(struct vec a, double k)
{
	return (struct vec){ a.x * k, a.y * k };
}

static inline double vec_dot(struct vec a, struct vec b)
{
	return a.x * b.x + a.y * b.y;
}

static inline double vec_cross(struct vec a, struct vec b)
{
	return a.x * b.y - a.y * b.x;
}

static inline double vec_length(struct vec a)
{
	return sqrt(a.x * a.x + a.y * a.y);
}

/* Is it the same place? */
static inline bool vec_near(struct vec a, struct vec b)
{
	return near_enough(a.x, b.x) && near_enough(a.y, b.y);
}

static inline struct vec vec_unit(struct vec a)
{
	double n = vec_length(a);
	return n > 0 ? vec_scale(a, 1 / n) : a;
}

/* A quarter turn counter-clockwise. */
static inline struct vec vec_left(struct vec a)
{
	return (struct vec){ -a.y, a.x };
}

static inline struct vec vec_rotate(struct vec a, double angle)
{
	double c = cos(angle), s = sin(angle);
	return (struct vec){ a.x * c - a.y * s, a.x * s + a.y * c };
}

/* For qsort: from left to right, of those as far along from below upwards. */
static inline int vec_by_place(const void *one, const void *other)
{
	const struct vec *p = one, *q = other;

	if (fabs(p->x - q->x) > NEAR_ENOUGH)
		return p->x < q->x ? -1 : 1;
	return (p->y > q->y) - (p->y < q->y);
}

/* For qsort: numbers that rise. */
static inline int number_by_size(const void *one, const void *other)
{
	double p = *(const double *)one, q = *(const double *)other;

	return (p > q) - (p < q);
}

static inline struct box box_empty(void)
{
	return (struct box){ INFINITY, INFINITY, -INFINITY, -INFINITY };
}

static inline bool box_is_empty(struct box b)
{
	return b.x1 < b.x0 || b.y1 < b.y0;
}

static inline struct box box_add(struct box b, struct vec p)
{
	return (struct box){ fmin(b.x0, p.x), fmin(b.y0, p.y), fmax(b.x1, p.x), fmax(b.y1, p.y) };
}

static inline struct box box_join(struct box a, struct box b)
{
	return (struct box){ fmin(a.x0, b.x0), fmin(a.y0, b.y0), fmax(a.x1, b.x1),
		fmax(a.y1, b.y1) };
}

static inline struct box box_grow(struct box b, double by)
{
	return (struct box){ b.x0 - by, b.y0 - by, b.x1 + by, b.y1 + by };
}

static inline struct box box_about(struct vec middle, double by)
{
	return (struct box){ middle.x - by, middle.y - by, middle.x + by, middle.y + by };
}

/* From the house to paper. */
static inline struct box box_scale(struct box b, double by)
{
	return (struct box){ b.x0 * by, b.y0 * by, b.x1 * by, b.y1 * by };
}

static inline bool box_touches(struct box a, struct box b)
{
	return a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;
}

static inline double box_width(struct box b)
{
	return b.x1 - b.x0;
}

static inline double box_height(struct box b)
{
	return b.y1 - b.y0;
}

static inline struct vec3 vec3(double x, double y, double z)
{
	return (struct vec3){ x, y, z };
}

static inline struct vec3 vec3_add(struct vec3 a, struct vec3 b)
{
	return (struct vec3){ a.x + b.x, a.y + b.y, a.z + b.z };
}

static inline struct vec3 vec3_sub(struct vec3 a, struct vec3 b)
{
	return (struct vec3){ a.x - b.x, a.y - b.y, a.z - b.z };
}

static inline struct vec3 vec3_scale(struct vec3 a, double k)
{
	return (struct vec3){ a.x * k, a.y * k, a.z * k };
}

static inline double vec3_dot(struct vec3 a, struct vec3 b)
{
	return a.x * b.x + a.y * b.y + a.z * b.z;
}

static inline struct vec3 vec3_cross(struct vec3 a, struct vec3 b)
{
	return (struct vec3){ a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x };
}

static inline double vec3_length(struct vec3 a)
{
	return sqrt(vec3_dot(a, a));
}

static inline bool vec3_near(struct vec3 a, struct vec3 b)
{
	return near_enough(a.x, b.x) && near_enough(a.y, b.y) && near_enough(a.z, b.z);
}

static inline struct vec3 vec3_unit(struct vec3 a)
{
	double n = vec3_length(a);
	return n > 0 ? vec3_scale(a, 1 / n) : a;
}

static inline struct box3 box3_empty(void)
{
	return (struct box3){ { INFINITY, INFINITY, INFINITY },
		{ -INFINITY, -INFINITY, -INFINITY } };
}

static inline struct box3 box3_add(struct box3 b, struct vec3 p)
{
	return (struct box3){
		{ fmin(b.low.x, p.x), fmin(b.low.y, p.y), fmin(b.low.z, p.z) },
		{ fmax(b.high.x, p.x), fmax(b.high.y, p.y), fmax(b.high.z, p.z) },
	};
}

/* Do they touch, or stand less than a gap apart? */
static inline bool box3_near(struct box3 a, struct box3 b, double gap)
{
	return a.low.x < b.high.x + gap && b.low.x < a.high.x + gap && a.low.y < b.high.y + gap &&
		b.low.y < a.high.y + gap && a.low.z < b.high.z + gap && b.low.z < a.high.z + gap;
}

/* The house itself as a frame. */
static inline struct frame frame_house(void)
{
	return (struct frame){ .u = { 1, 0, 0 }, .v = { 0, 1, 0 }, .w = { 0, 0, 1 } };
}

/* A direction given in the frame's axes, in the axes the frame stands in. */
static inline struct vec3 frame_turn(struct frame f, struct vec3 d)
{
	return vec3_add(vec3_add(vec3_scale(f.u, d.x), vec3_scale(f.v, d.y)), vec3_scale(f.w, d.z));
}

/* A point given in the frame's axes, in the axes the frame stands in. */
static inline struct vec3 frame_place(struct frame f, struct vec3 p)
{
	return vec3_add(f.origin, frame_turn(f, p));
}

/* `inner` is given in the axes of `outer`: the same frame in the axes that `outer` stands in. */
static inline struct frame frame_compose(struct frame outer, struct frame inner)
{
	return (struct frame){
		.origin = frame_place(outer, inner.origin),
		.u = frame_turn(outer, inner.u),
		.v = frame_turn(outer, inner.v),
		.w = frame_turn(outer, inner.w),
	};
}

/* A point, and a direction, of the axes the frame stands in, in the frame's own axes. */
static inline struct vec3 frame_turn_back(struct frame f, struct vec3 d)
{
	return (struct vec3){ vec3_dot(f.u, d), vec3_dot(f.v, d), vec3_dot(f.w, d) };
}

static inline struct vec3 frame_place_back(struct frame f, struct vec3 p)
{
	return frame_turn_back(f, vec3_sub(p, f.origin));
}

/* A frame of the house in the axes of another one: the opposite of frame_compose. */
static inline struct frame frame_within(struct frame outer, struct frame f)
{
	return (struct frame){
		.origin = frame_place_back(outer, f.origin),
		.u = frame_turn_back(outer, f.u),
		.v = frame_turn_back(outer, f.v),
		.w = frame_turn_back(outer, f.w),
	};
}

/* A frame that only moves. */
static inline struct frame frame_at(double x, double y, double z)
{
	struct frame f = frame_house();
	f.origin = vec3(x, y, z);
	return f;
}

#endif
