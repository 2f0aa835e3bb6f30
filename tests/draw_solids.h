/*
 * Solids for the tests of the views.
 */
#ifndef TESTS_DRAW_SOLIDS_H
#define TESTS_DRAW_SOLIDS_H

#include "draw/view.h"

/* Where test parts are made: a list of them, and the arena they live in. */
struct bench {
	struct arena *arena;
	struct part *first, **tail;
};

static inline void bench_open(struct bench *b)
{
	*b = (struct bench){ .arena = arena_new() };
	b->tail = &b->first;
}

static inline struct part *bench_part(struct bench *b, const char *mark, struct frame place)
{
	struct part *p = NEW(b->arena, struct part);
	struct frame *places = NEW(b->arena, struct frame);

	*places = place;
	*p = (struct part){ .mark = mark, .name = mark, .places = places, .count = 1 };
	*b->tail = p;
	b->tail = &p->next;
	return p;
}

/* Adds a solid to the part; the corners are used where they are. */
static inline struct solid *bench_solid(struct bench *b, struct part *p, int n,
	const struct vec3 *top, const struct vec3 *bottom)
{
	struct solid *s = NEW(b->arena, struct solid);

	*s = (struct solid){ (struct solid *)p->solids, n, top, bottom, NULL };
	p->solids = s;
	return s;
}

/* A prism: the profile, counter-clockwise, lies in u and v of the frame, and goes from w = 0 to
 * w = -depth. */
static inline struct solid *bench_prism(struct bench *b, struct part *p, struct frame f, int n,
	const struct vec *profile, double depth)
{
	struct vec3 *top = NEW_N(b->arena, struct vec3, n),
		    *bottom = NEW_N(b->arena, struct vec3, n);

	for (int i = 0; i < n; i++) {
		top[i] = frame_place(f, vec3(profile[i].x, profile[i].y, 0));
		bottom[i] = frame_place(f, vec3(profile[i].x, profile[i].y, -depth));
	}
	return bench_solid(b, p, n, top, bottom);
}

static inline struct solid *bench_box(struct bench *b, struct part *p, struct vec3 low,
	struct vec3 high)
{
	const struct vec profile[] = { { low.x, low.y }, { high.x, low.y }, { high.x, high.y },
		{ low.x, high.y } };
	return bench_prism(b, p, frame_at(0, 0, high.z), 4, profile, high.z - low.z);
}

/* Standing upright along x, seen from the right: u is x, v is z, and the depth goes to the left. */
static inline struct frame bench_upright(double y)
{
	return (struct frame){ { 0, y, 0 }, { 1, 0, 0 }, { 0, 0, 1 }, { 0, -1, 0 } };
}

static inline double bench_area(const struct vec *points, int n)
{
	double twice = 0;
	for (int i = 0; i < n; i++)
		twice += vec_cross(points[i], points[(i + 1) % n]);
	return twice / 2;
}

/* Length of all strokes of one pen. */
static inline double bench_length(const struct view *v, enum pen pen)
{
	double sum = 0;
	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *s = &v->strokes[i];
		if (s->pen == pen)
			sum += vec_length(vec_sub(s->b, s->a));
	}
	return sum;
}

/* Is there one stroke of this pen from one point to the other, either way? */
static inline bool bench_has(const struct view *v, enum pen pen, struct vec a, struct vec b)
{
	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *s = &v->strokes[i];
		double there = vec_length(vec_sub(s->a, a)) + vec_length(vec_sub(s->b, b));
		double back = vec_length(vec_sub(s->a, b)) + vec_length(vec_sub(s->b, a));
		if (s->pen == pen && fmin(there, back) < 1e-6)
			return true;
	}
	return false;
}

static inline int open_bench(void **state)
{
	static struct bench bench;
	bench_open(&bench);
	*state = &bench;
	return 0;
}

static inline int close_bench(void **state)
{
	struct bench *b = *state;
	arena_free(b->arena);
	return 0;
}

static inline struct part *box(struct bench *b, const char *mark, struct vec3 low, struct vec3 high)
{
	struct part *p = bench_part(b, mark, frame_house());
	bench_box(b, p, low, high);
	return p;
}

#endif
