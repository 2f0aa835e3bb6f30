/*
 * The picture of the stair: from which side it is seen, and what of the house is shown with it.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"
#include "pitchboard/sheet.h"
#include "sheets/picture_room.h"
#include "six_tenths.h"

/* 15 risers of 180 mm and 14 treads of 260 mm, 900 mm wide. */
#define STAIR(sides, more)                                                                         \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 2700}\n"                                                             \
	"opening: {length: 3300, width: 1000, floor_thickness: 300}\n"                             \
	"stair: {width: 900, " sides ", segments: [{kind: flight, risers: 15, run: 260}]}\n" more

struct house {
	struct built built;
	struct picture_room room;
};

static struct house house_of(const char *yaml, enum which_side from)
{
	struct house h = { .built = built_from(yaml) };
	const struct sheet_context c = { .stair = h.built.stair, .parts = h.built.parts };

	assert_non_null(h.built.parts);
	h.room = picture_room(h.built.arena, &c, from);
	return h;
}

static const struct part *wall_of(const struct house *h, int n)
{
	for (const struct part *p = h->room.first; p; p = p->next)
		if (p->existing == EXISTING_WALL && n-- == 0)
			return p;
	return NULL;
}

/* Highest point of a wall plumb over x; its profile is the face at its right. */
static double top_at(const struct part *wall, double x)
{
	const struct solid *s = wall->solids;
	double top = -INFINITY;

	for (int i = 0; i < s->n; i++) {
		struct vec3 a = s->a[i], b = s->a[(i + 1) % s->n];
		if (fmin(a.x, b.x) > x || fmax(a.x, b.x) < x || a.x == b.x)
			continue;
		top = fmax(top, a.z + (b.z - a.z) * (x - a.x) / (b.x - a.x));
	}
	return top;
}

static void a_wall_behind_the_stair_stands_over_its_rail(void **state)
{
	(void)state;
	struct house h = house_of(STAIR("left: wall, right: open", ""), ON_THE_RIGHT);
	const struct stair *s = h.built.stair;
	struct slope_line nosing = flight_nosing_line(s, &s->flights[0]);

	for (double x = 100; x < 3000; x += 100)
		assert_true(top_at(wall_of(&h, 0), x) >
			fmin(slope_at(nosing, x) + s->job->rail.height, s->total_rise + 299));
	arena_free(h.built.arena);
}

static void a_wall_before_the_stair_is_cut_off_along_its_steps(void **state)
{
	(void)state;
	struct house h = house_of(STAIR("left: wall, right: wall", ""), ON_THE_RIGHT);
	const struct flight *f = &h.built.stair->flights[0];
	const struct part *wall = wall_of(&h, 0);

	if (built_extent(wall, 0).low.y > 0)
		wall = wall_of(&h, 1);
	assert_near(built_extent(wall, 0).high.y, 0, 1e-9);
	for (int i = 0; i < f->step_count; i++)
		assert_near(top_at(wall, f->steps[i].riser_x + 100), f->steps[i].level, 1e-9);
	arena_free(h.built.arena);
}

static void a_wall_taken_away_is_outlined_only_where_a_rail_hangs_on_it(void **state)
{
	(void)state;
	struct house without = house_of(STAIR("left: wall, right: wall", ""), ON_THE_RIGHT);
	struct house with =
		house_of(STAIR("left: wall, right: wall", "wall_rails: [{side: right}]\n"),
			ON_THE_RIGHT);
	struct house behind =
		house_of(STAIR("left: wall, right: wall", "wall_rails: [{side: right}]\n"),
			ON_THE_LEFT);

	assert_int_equal(without.room.gone.n, 0);
	assert_true(with.room.gone.n > 3);
	assert_int_equal(behind.room.gone.n, 0);
	arena_free(without.built.arena);
	arena_free(with.built.arena);
	arena_free(behind.built.arena);
}

/* Nearest to the foot of the stair that the floor above comes. */
static double floor_above_from(const struct house *h)
{
	double x = INFINITY;

	for (const struct part *p = h->room.first; p; p = p->next) {
		if (p->existing != EXISTING_UPPER_FLOOR || !p->solids ||
			built_extent(p, 0).high.z < 2000)
			continue;
		x = fmin(x, built_extent(p, 0).low.x);
	}
	return x;
}

static void the_floor_over_the_foot_is_shown_only_under_a_guard(void **state)
{
	(void)state;
	struct house without = house_of(STAIR("left: wall, right: open", ""), ON_THE_RIGHT);
	struct house with = house_of(STAIR("left: wall, right: open",
					     "rail: {level_runs: ["
					     "{side: right, direction: out, length: 200}, "
					     "{side: right, direction: back, length: 3300}]}\n"),
		ON_THE_RIGHT);

	assert_true(floor_above_from(&without) > 3000);
	assert_true(floor_above_from(&with) < 600);
	arena_free(without.built.arena);
	arena_free(with.built.arena);
}

static void a_wall_behind_does_not_go_up_through_the_guard_that_stands_over_it(void **state)
{
	(void)state;
	struct house h = house_of(STAIR("left: wall, right: wall",
					  "rail: {level_runs: [{side: right, direction: back, "
					  "length: 2700, from_edge: 60}]}\n"),
		ON_THE_LEFT);

	for (int i = 0; wall_of(&h, i); i++)
		if (built_extent(wall_of(&h, i), 0).low.y < 0)
			assert_true(built_extent(wall_of(&h, i), 0).high.z <=
				h.built.stair->total_rise);
	arena_free(h.built.arena);
}

/* ---- on the sheet ---- */

static const struct drawing *cover_of(struct built *b)
{
	const struct stationery *st = stationery_read(b->arena, "templates", &b->diags);
	const struct drawing *g = sheets_draw(b->arena, b->stair, b->parts,
		(struct issue){ .set = "client" }, st, six_tenths(), &b->diags);

	assert_non_null(g);
	return g;
}

/* The dark edge of the wall behind the stair: seen from the right, its cut end is at the left. */
static double middle_of_cuts(const struct drawing *g)
{
	double sum = 0;
	int n = 0;

	for (const struct mark *m = g->first; m; m = m->next)
		for (int i = 0; m->kind == MARK_FILL && i < m->fill.n; i++)
			if (m->fill.shade == SHADE_MIDDLE) {
				sum += m->fill.points[i].x;
				n++;
			}
	assert_true(n > 0);
	return sum / n;
}

static double middle_of_lines(const struct drawing *g)
{
	double low = INFINITY, high = -INFINITY;

	for (const struct mark *m = g->first; m; m = m->next)
		for (int i = 0; m->kind == MARK_FILL && i < m->fill.n; i++) {
			low = fmin(low, m->fill.points[i].x);
			high = fmax(high, m->fill.points[i].x);
		}
	return (low + high) / 2;
}

static void it_is_seen_from_the_open_side(void **state)
{
	(void)state;
	struct built right = built_from(STAIR("left: wall, right: open", ""));
	struct built left = built_from(STAIR("left: open, right: wall", ""));
	const struct drawing *from_right = cover_of(&right), *from_left = cover_of(&left);

	assert_true(middle_of_cuts(from_right) < middle_of_lines(from_right));
	assert_true(middle_of_cuts(from_left) > middle_of_lines(from_left));
	arena_free(right.arena);
	arena_free(left.arena);
}

/* Two stairs that mirror each other make two pictures that do. */
static void the_picture_of_a_mirrored_stair_is_as_large(void **state)
{
	(void)state;
	const char *const yaml[] = { STAIR("left: wall, right: open", ""),
		STAIR("left: open, right: wall", "") };
	double width[2];

	for (int i = 0; i < 2; i++) {
		struct built b = built_from(yaml[i]);
		double low = INFINITY, high = -INFINITY;
		for (const struct mark *m = cover_of(&b)->first; m; m = m->next)
			for (int k = 0; m->kind == MARK_FILL && k < m->fill.n; k++) {
				low = fmin(low, m->fill.points[k].x);
				high = fmax(high, m->fill.points[k].x);
			}
		width[i] = high - low;
		arena_free(b.arena);
	}
	assert_near(width[0], width[1], 0.5);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_wall_behind_the_stair_stands_over_its_rail),
		cmocka_unit_test(a_wall_before_the_stair_is_cut_off_along_its_steps),
		cmocka_unit_test(a_wall_taken_away_is_outlined_only_where_a_rail_hangs_on_it),
		cmocka_unit_test(the_floor_over_the_foot_is_shown_only_under_a_guard),
		cmocka_unit_test(
			a_wall_behind_does_not_go_up_through_the_guard_that_stands_over_it),
		cmocka_unit_test(it_is_seen_from_the_open_side),
		cmocka_unit_test(the_picture_of_a_mirrored_stair_is_as_large),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
