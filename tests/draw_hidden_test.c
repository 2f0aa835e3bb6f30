/*
 * Hidden edges against the plainest way to find them: from many points on every edge, look toward
 * the eye, face by face.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "draw_random.h"
#include "near.h"

/* Points this near the rim of a face are left out: there it may go either way. */
#define UNSURE 0.01

/* A face as the test sees it. */
struct flat_face {
	struct vec3 at[16];
	int n, solid;
	struct vec3 normal;
};

struct flat_edge {
	struct vec3 a, b;
	int left, right; /* numbers of faces */
};

struct model {
	struct flat_face faces[1000];
	struct flat_edge edges[2000];
	int face_count, edge_count, solid_count;
	double cut; /* what is nearer the eye is taken away */
};

static void face_close(struct flat_face *f)
{
	struct vec3 sum = { 0 };
	for (int i = 0; i < f->n; i++) {
		struct vec3 p = f->at[i], q = f->at[(i + 1) % f->n];
		sum = vec3_add(sum, vec3_cross(p, q));
	}
	f->normal = vec3_unit(sum);
}

static void model_add(struct model *m, const struct solid *s, struct frame place, struct frame view)
{
	struct flat_face *first = &m->faces[m->face_count];
	int n = s->n, caps = m->face_count, sides = caps + 2;
	struct vec3 a[16], b[16];

	for (int i = 0; i < n; i++) {
		struct vec3 p = frame_place(place, s->a[i]), q = frame_place(place, s->b[i]);
		a[i] = vec3(vec3_dot(p, view.u), vec3_dot(p, view.v), vec3_dot(p, view.w));
		b[i] = vec3(vec3_dot(q, view.u), vec3_dot(q, view.v), vec3_dot(q, view.w));
		first[0].at[i] = a[i];
		first[1].at[n - 1 - i] = b[i];
	}
	first[0].n = first[1].n = n;
	for (int i = 0; i < n; i++) {
		int next = (i + 1) % n, before = (i + n - 1) % n;
		struct flat_edge *e = &m->edges[m->edge_count];
		first[2 + i] = (struct flat_face){ .at = { a[next], a[i], b[i], b[next] }, .n = 4 };
		e[0] = (struct flat_edge){ a[i], a[next], caps, sides + i };
		e[1] = (struct flat_edge){ b[i], b[next], sides + i, caps + 1 };
		e[2] = (struct flat_edge){ a[i], b[i], sides + i, sides + before };
		m->edge_count += 3;
	}
	for (int i = 0; i < n + 2; i++) {
		first[i].solid = m->solid_count;
		face_close(&first[i]);
	}
	m->face_count += n + 2;
	m->solid_count++;
}

static double distance(struct vec p, struct vec a, struct vec b)
{
	struct vec d = vec_sub(b, a);
	double t = vec_dot(vec_sub(p, a), d) / fmax(vec_dot(d, d), 1e-12);
	return vec_length(vec_sub(p, vec_add(a, vec_scale(d, fmin(fmax(t, 0), 1)))));
}

enum answer { NOT_BEFORE, BEFORE, PERHAPS, TAKEN_AWAY };

static double depth_at(const struct flat_face *f, struct vec3 p)
{
	struct vec3 d = vec3_sub(p, f->at[0]);
	return f->at[0].z - (f->normal.x * d.x + f->normal.y * d.y) / f->normal.z;
}

/* Is the face between the point and the eye?  By counting crossings of its outline. */
static enum answer face_before(const struct flat_face *f, struct vec3 p, double cut)
{
	bool in = false;
	if (fabs(f->normal.z) < 1e-9)
		return NOT_BEFORE;
	double depth = depth_at(f, p);
	if (depth < p.z - UNSURE)
		return NOT_BEFORE;
	for (int i = 0; i < f->n; i++) {
		struct vec3 q = f->at[i], r = f->at[(i + 1) % f->n];
		if (distance(vec(p.x, p.y), vec(q.x, q.y), vec(r.x, r.y)) < UNSURE)
			return PERHAPS;
		if ((q.y > p.y) != (r.y > p.y) &&
			p.x < q.x + (r.x - q.x) * (p.y - q.y) / (r.y - q.y))
			in = !in;
	}
	if (!in)
		return NOT_BEFORE;
	if (fabs(depth - cut) < UNSURE || depth < p.z + UNSURE)
		return PERHAPS;
	return depth < cut ? BEFORE : TAKEN_AWAY;
}

/* A solid with an odd number of its faces taken away is cut just there. */
static enum answer point_hidden(const struct model *m, const struct flat_edge *e, struct vec3 p)
{
	enum answer all = NOT_BEFORE;
	bool cut[40] = { false };

	for (int i = 0; i < m->face_count; i++) {
		if (i == e->left || i == e->right)
			continue;
		enum answer one = face_before(&m->faces[i], p, m->cut);
		if (one == BEFORE)
			return BEFORE;
		if (one == PERHAPS)
			all = PERHAPS;
		if (one == TAKEN_AWAY)
			cut[m->faces[i].solid] = !cut[m->faces[i].solid];
	}
	for (int i = 0; i < m->solid_count && all == NOT_BEFORE; i++)
		all = cut[i] ? BEFORE : NOT_BEFORE;
	return all;
}

static bool drawn_at(const struct view *v, struct vec p)
{
	for (int i = 0; i < v->stroke_count; i++) {
		if (distance(p, v->strokes[i].a, v->strokes[i].b) < 1e-6)
			return true;
	}
	return false;
}

/* Of the points looked at: how many were seen, hidden, and could not be told. */
struct tally {
	int seen, hidden, unsure;
};

static void compare_edge(const struct model *m, const struct flat_edge *e, const struct view *v,
	struct tally *t)
{
	double left = m->faces[e->left].normal.z, right = m->faces[e->right].normal.z;
	bool toward = left > 1e-9 || right > 1e-9;

	/* an edge of the far side, exactly under one of the near side */
	if (!toward && (fabs(left) < 1e-9 || fabs(right) < 1e-9))
		return;
	for (int i = 0; i < 7; i++) {
		double k = (i + 0.37) / 7.1;
		struct vec3 p = vec3_add(e->a, vec3_scale(vec3_sub(e->b, e->a), k));
		if (p.z > m->cut - UNSURE)
			continue;
		enum answer hidden = toward ? point_hidden(m, e, p) : BEFORE;
		if (hidden == PERHAPS) {
			t->unsure++;
			continue;
		}
		assert_int_equal(drawn_at(v, vec(p.x, p.y)), hidden == NOT_BEFORE);
		t->seen += hidden == NOT_BEFORE;
		t->hidden += hidden == BEFORE;
	}
}

static struct tally compare(const struct bench *b, struct view_spec spec)
{
	struct view v = view_make(b->arena, b->first, spec);
	struct model *m = NEW(b->arena, struct model);
	struct tally t = { 0 };

	m->cut = spec.cut ? spec.at : INFINITY;
	for (const struct part *p = b->first; p; p = p->next)
		model_add(m, p->solids, p->places[0], view_eye(&spec));
	for (int i = 0; i < m->edge_count; i++)
		compare_edge(m, &m->edges[i], &v, &t);
	return t;
}

static void lofts_at_random_hide_what_they_hide(void **state)
{
	(void)state;
	struct tally all = { 0 };

	for (uint64_t seed = 1; seed <= 24; seed++) {
		uint64_t run = seed * 7919;
		struct bench b;
		bench_open(&b);
		for (int i = 0; i < 9; i++)
			add_loft(&b, &run);
		struct tally t =
			compare(&b, (struct view_spec){ .from = (enum view_from)(seed % 6) });
		arena_free(b.arena);
		all.seen += t.seen;
		all.hidden += t.hidden;
		all.unsure += t.unsure;
	}
	assert_true(all.seen > 3000 && all.hidden > 3000 && all.unsure < all.seen / 20);
}

static enum shade no_shade(const struct part *p, struct vec3 normal)
{
	(void)p;
	(void)normal;
	return SHADE_WHITE;
}

static void lofts_seen_from_anywhere_hide_what_they_hide(void **state)
{
	(void)state;
	struct tally all = { 0 };

	for (uint64_t seed = 1; seed <= 24; seed++) {
		uint64_t run = seed * 6151;
		struct bench b;
		bench_open(&b);
		for (int i = 0; i < 9; i++)
			add_loft(&b, &run);
		struct picture picture = { any_frame(&run), no_shade };
		struct tally t = compare(&b, (struct view_spec){ .picture = &picture });
		arena_free(b.arena);
		all.seen += t.seen;
		all.hidden += t.hidden;
	}
	assert_true(all.seen > 3000 && all.hidden > 3000);
}

static void lofts_cut_at_random_hide_what_is_left_to_hide(void **state)
{
	(void)state;
	struct tally all = { 0 };

	for (uint64_t seed = 1; seed <= 24; seed++) {
		uint64_t run = seed * 15485863 % 2147483647;
		struct bench b;
		bench_open(&b);
		for (int i = 0; i < 9; i++)
			add_loft(&b, &run);
		struct view_spec spec = { .from = (enum view_from)(seed % 6),
			.cut = true,
			.at = chance(&run, -60, 120) };
		struct tally t = compare(&b, spec);
		arena_free(b.arena);
		all.seen += t.seen;
		all.hidden += t.hidden;
	}
	assert_true(all.seen > 1500 && all.hidden > 1500);
}

/* Every face seen on edge, every edge along the axes of the view. */
static void boxes_at_random_hide_what_they_hide(void **state)
{
	(void)state;
	struct tally all = { 0 };

	for (uint64_t seed = 1; seed <= 24; seed++) {
		uint64_t run = seed * 104729;
		struct bench b;
		bench_open(&b);
		for (int i = 0; i < 25; i++)
			add_box(&b, &run);
		struct tally t =
			compare(&b, (struct view_spec){ .from = (enum view_from)(seed % 6) });
		arena_free(b.arena);
		all.seen += t.seen;
		all.hidden += t.hidden;
	}
	assert_true(all.seen > 3000 && all.hidden > 3000);
}

/*
 * As many treads, risers and posts as are asked for, on two sawtooth stringers, with a rail as
 * long as the stair and a wall behind it.
 */
static void add_stair(struct bench *b, int risers)
{
	double rise = 190, run = 250;
	struct vec *saw = NEW_N(b->arena, struct vec, 2 * risers + 3);
	int n = 0;

	saw[n++] = vec(300, 0);
	saw[n++] = vec(risers * run, (risers - 1) * rise);
	for (int i = risers; i > 0; i--) {
		saw[n++] = vec(i * run, i * rise - 30);
		saw[n++] = vec((i - 1) * run, i * rise - 30);
	}
	saw[n++] = vec(0, 0);
	for (int side = 0; side < 2; side++) {
		struct part *p = bench_part(b, "S", frame_house());
		bench_prism(b, p, bench_upright(side * 860), n, saw, 40);
	}
	for (int i = 0; i < risers; i++) {
		struct part *p = bench_part(b, "T", frame_at(i * run, 0, i * rise));
		bench_box(b, p, vec3(-30, -30, rise - 30), vec3(run, 900, rise));
		p = bench_part(b, "R", frame_at(i * run, 0, i * rise));
		bench_box(b, p, vec3(-20, 0, 0), vec3(0, 900, rise - 30));
		for (int k = 0; k < 2; k++) {
			p = bench_part(b, "B", frame_at(i * run + k * run / 2, 0, (i + 1) * rise));
			bench_box(b, p, vec3(0, 10, 0), vec3(30, 40, 850));
		}
	}
	const struct vec rail[] = { { 0, 0 }, { risers * run, risers * rise },
		{ risers * run, risers * rise + 60 }, { 0, 60 } };
	bench_prism(b, bench_part(b, "H", frame_at(0, 0, 1060)), bench_upright(0), 4, rail, 60);
	bench_box(b, bench_part(b, "", frame_house()), vec3(-500, 900, 0),
		vec3(risers * run + 500, 1000, risers * rise + 2400));
}

static long steps_for(int risers, enum view_from from)
{
	struct bench b;
	bench_open(&b);
	add_stair(&b, risers);
	long steps = view_make(b.arena, b.first, (struct view_spec){ .from = from }).steps;
	arena_free(b.arena);
	return steps;
}

static void ten_times_the_stair_is_at_most_eleven_times_the_work(void **state)
{
	(void)state;
	for (int from = VIEW_PLAN; from <= VIEW_PICTORIAL; from++) {
		long few = steps_for(15, (enum view_from)from);
		long many = steps_for(150, (enum view_from)from);
		assert_true(few > 0 && many <= 11 * few);
	}
}

/* Of every pen the length that is drawn through a window, and so far as each line is from its
 * middle: alike only where the lines are. */
struct drawn {
	double length[PEN_COUNT], moment;
	int strokes; /* in the view */
};

static struct drawn drawn_through(struct bench *b, struct view_spec spec, struct box window)
{
	struct view v = view_make(b->arena, b->first, spec);
	struct drawing *g = drawing_new(b->arena, USE_SHEET, 1000, 1000);
	struct drawn d = { .strokes = v.stroke_count };

	view_draw(g, &v, (struct placing){ .scale = 1 }, &window);
	for (const struct mark *m = g->first; m; m = m->next) {
		struct vec from = m->line.points[0], to = m->line.points[1];
		double length = vec_length(vec_sub(to, from));
		assert_int_equal(m->kind, MARK_LINE);
		d.length[m->line.pen] += length;
		d.moment += length * (vec_length(from) + vec_length(to));
	}
	return d;
}

static void what_shows_in_a_window_is_the_same_without_what_lies_beside_it(void **state)
{
	(void)state;
	const struct box window = { -60, -40, 70, 90 };
	int left_out = 0;
	double seen = 0;

	for (uint64_t seed = 1; seed <= 40; seed++) {
		uint64_t run = seed;
		struct bench b;
		bench_open(&b);
		for (int i = 0; i < 12; i++)
			add_loft(&b, &run);
		struct view_spec spec = { .from = (enum view_from)(seed % (VIEW_PICTORIAL + 1)),
			.cut = seed % 3 == 0 };
		struct drawn whole = drawn_through(&b, spec, window);
		spec.window = window;
		struct drawn part = drawn_through(&b, spec, window);
		for (int pen = 0; pen < PEN_COUNT; pen++)
			assert_near(part.length[pen], whole.length[pen], 1e-6);
		assert_near(part.moment, whole.moment, 1e-3);
		seen += whole.length[PEN_OUTLINE];
		left_out += whole.strokes - part.strokes;
		arena_free(b.arena);
	}
	assert_true(seen > 0 && left_out > 0);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(lofts_at_random_hide_what_they_hide),
		cmocka_unit_test(lofts_seen_from_anywhere_hide_what_they_hide),
		cmocka_unit_test(lofts_cut_at_random_hide_what_is_left_to_hide),
		cmocka_unit_test(boxes_at_random_hide_what_they_hide),
		cmocka_unit_test(what_shows_in_a_window_is_the_same_without_what_lies_beside_it),
		cmocka_unit_test(ten_times_the_stair_is_at_most_eleven_times_the_work),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
