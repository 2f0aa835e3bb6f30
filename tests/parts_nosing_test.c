/*
 * The edges of treads: profiles, and the chamfer sawn before the router.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"
#include "parts/nosing.h"

#define IN(x) ((x)*25.4)

static struct nosing made(struct job_treads t, double thickness)
{
	return nosing_make(&t, thickness);
}

static struct nosing eased(double radius, double thickness, double margin)
{
	return made((struct job_treads){ .nosing_profile = NOSING_EASED,
			    .nosing_radius = radius,
			    .waste_margin = margin },
		thickness);
}

/* Twice the area inside a section, its rounds cut into many chords. */
static double twice_area(struct outline o)
{
	double sum = 0;
	for (int i = 0; i < o.n; i++) {
		struct corner c = o.corners[i];
		struct vec next = o.corners[(i + 1) % o.n].at, from = c.at;
		for (int k = 1; k <= 2000 && c.bulge != 0; k++) {
			struct vec to = corner_arc_point(corner_arc(c, next), k / 2000.0);
			sum += vec_cross(from, to);
			from = to;
		}
		sum += c.bulge != 0 ? 0 : vec_cross(from, next);
	}
	return sum;
}

static double area(const struct nosing *n, double depth)
{
	struct arena *a = arena_new();
	double sum = twice_area(nosing_outline(a, n, depth)) / 2;
	arena_free(a);
	return sum;
}

/* What a quarter round takes off a square corner is the square less a quarter of the circle. */
static void an_eased_edge_loses_two_quarter_rounds(void **state)
{
	struct nosing n = eased(10, 30, 1);
	(void)state;
	assert_near(area(&n, 60), 60 * 30 - 2 * (100 - 25 * PI), 1e-3);
}

static void a_full_round_is_half_a_circle_of_the_thickness(void **state)
{
	struct nosing n =
		made((struct job_treads){ .nosing_profile = NOSING_FULL_ROUND, .nosing_radius = 3 },
			27);
	(void)state;
	assert_near(n.radius, 13.5, 1e-12);
	assert_near(area(&n, 60), (60 - 13.5) * 27 + PI * 13.5 * 13.5 / 2, 1e-3);
}

static void a_half_round_is_square_below(void **state)
{
	struct nosing n = made((struct job_treads){ .nosing_profile = NOSING_HALF_ROUND,
				       .nosing_radius = 12 },
		30);
	(void)state;
	assert_near(nosing_under(&n), 0, 1e-12);
	assert_int_equal(n.waste.arrises, 1);
	assert_near(area(&n, 60), 60 * 30 - (144 - 36 * PI), 1e-3);
}

/* A sharp chamfer takes off two triangles of half the square of its leg. */
static void a_chamfer_takes_off_two_triangles(void **state)
{
	struct nosing n =
		made((struct job_treads){ .nosing_profile = NOSING_CHAMFER, .nosing_chamfer = 8 },
			30);
	(void)state;
	assert_near(area(&n, 60), 60 * 30 - 64, 1e-9);
}

/* A round of radius r in an angle of 135 degrees takes off r^2 (tan 22.5 - pi / 8). */
static void the_arrises_of_a_chamfer_are_rounded(void **state)
{
	struct nosing n = made((struct job_treads){ .nosing_profile = NOSING_CHAMFER,
				       .nosing_chamfer = 8,
				       .nosing_radius = 4 },
		30);
	(void)state;
	double rounds = 4 * 16 * (tan(PI / 8) - PI / 8);
	assert_near(n.reach, 8 + 4 * tan(PI / 8), 1e-12);
	assert_near(area(&n, 60), 60 * 30 - 64 - rounds, 1e-3);
}

static void rounds_that_the_wood_does_not_hold_are_made_smaller(void **state)
{
	struct nosing n = eased(14, 20, 1);
	(void)state;
	assert_near(n.radius, 10, 1e-12);
	assert_near(area(&n, 60), 50 * 20 + PI * 100 / 2, 1e-3);
}

/* Least distance from the sawn faces to points all along the edge, inside positive. */
static double least_clearance(const struct nosing *n)
{
	struct arena *a = arena_new();
	struct outline o = nosing_outline(a, n, 60);
	double least = INFINITY;
	for (int i = 0; i < o.n; i++)
		for (int k = 0; k <= 500; k++) {
			struct corner c = o.corners[i];
			struct vec next = o.corners[(i + 1) % o.n].at, p;
			p = c.bulge != 0 ? corner_arc_point(corner_arc(c, next), k / 500.0)
					 : vec_add(c.at, vec_scale(vec_sub(next, c.at), k / 500.0));
			/* the upper cut passes (0, T - leg) and (leg, T); the lower mirrors it */
			double upper = (p.x + n->thickness - p.y - n->waste.leg) / sqrt(2);
			double lower = (p.x + p.y - n->waste.leg) / sqrt(2);
			least = fmin(least, upper);
			if (n->waste.arrises > 1)
				least = fmin(least, lower);
		}
	arena_free(a);
	return least;
}

static void the_waste_chamfer_clears_every_profile_by_its_margin(void **state)
{
	static const double chamfers[] = { 0, 0, 0, 9 };
	(void)state;
	for (int kind = 0; kind < 4; kind++)
		for (double radius = 8; radius < 13; radius += 0.7) {
			struct nosing n = made((struct job_treads){ .nosing_profile = kind,
						       .nosing_radius = radius,
						       .nosing_chamfer = chamfers[kind],
						       .waste_margin = 0.8 },
				27);
			assert_true(n.waste.leg > 0);
			assert_near(least_clearance(&n), 0.8, 1e-4);
		}
}

/* By hand: the arris of a 1/2 in round stands 1/2 (sqrt 2 - 1) = 0.2071 in off it; less 1/32 in
 * leaves 0.1759 in under the arris, a flat of 0.3517 in and legs of 0.2487 in. */
static void the_waste_chamfer_of_a_half_inch_round(void **state)
{
	struct nosing n = eased(IN(0.5), IN(1.0625), IN(1.0 / 32));
	(void)state;
	assert_near(n.waste.angle, PI / 4, 1e-12);
	assert_near(n.waste.leg / 25.4, 0.2487, 5e-5);
	assert_near(n.waste.flat / 25.4, 0.3517, 5e-5);
}

static void a_small_round_needs_no_saw(void **state)
{
	struct arena *a = arena_new();
	struct job job = { .about.units = UNITS_MILLIMETRES };
	struct nosing n = eased(3, 27, 1);
	(void)state;
	assert_near(n.waste.leg, 0, 0);
	assert_null(nosing_note(a, &job, &n));
	arena_free(a);
}

#define JOB                                                                                        \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: inches}\n"                                                       \
	"floors: {total_rise: 70\"}\n"                                                             \
	"stair: {width: 36\", left: wall, right: open, segments: [{risers: 10, run: 10\"}]}\n"

static void strips_returns_and_the_landing_carry_the_same_edge(void **state)
{
	static const char *const names[] = { "tread front strip", "tread return",
		"tread return end", "landing nosing" };
	struct built b = built_from(JOB "treads: {nosing_profile: full_round}\n");
	(void)state;
	for (int i = 0; i < 4; i++) {
		const struct part *p = built_part(&b, names[i], 0);
		assert_non_null(p);
		assert_int_equal(p->nosing->kind, NOSING_FULL_ROUND);
		assert_true(p->section.n > 0);
		assert_near(outline_extent(p->section).x0, 0, 1e-9);
	}
	arena_free(b.arena);
}

static void the_note_says_how_the_waste_is_sawn_off(void **state)
{
	struct built b = built_from(JOB "treads: {nosing_radius: 1/2\"}\n");
	(void)state;
	/* legs of 0.2487 in, set to the 1/32 in below: 7/32, whose flat of 0.3094 is 5/16 */
	const struct feature *f = built_part(&b, "tread front strip", 1)->features;
	while (f && f->kind != FEATURE_WASTE)
		f = f->next;
	assert_string_equal(f ? f->text : "none",
		"before the router saw both arrises at 45 degrees, 7/32\" along each face (flat "
		"5/16\"): it clears the profile by at least 1/32\"");
	arena_free(b.arena);
}

static void a_housing_is_cut_to_the_profile(void **state)
{
	struct built b = built_from(JOB "stringers: {wall: housed}\n"
					"treads: {nosing_profile: half_round}\n");
	(void)state;
	const struct part *p = built_part(&b, "housed stringer, left hand", 0);
	int rounds = 0;
	for (const struct feature *f = p->features; f; f = f->next)
		for (int i = 0; i < f->at.n; i++)
			rounds += f->at.corners[i].bulge != 0;
	assert_int_equal(rounds, 9); /* one a tread: the upper arris */
	arena_free(b.arena);
}

static void a_full_round_of_another_radius_is_refused(void **state)
{
	struct built b =
		built_from(JOB "treads: {nosing_profile: full_round, nosing_radius: 1/4\"}\n");
	(void)state;
	assert_string_equal(built_complaint(&b),
		"treads.nosing_radius: a full round has half the thickness");
	arena_free(b.arena);
}

static void a_chamfer_belongs_to_a_chamfered_edge(void **state)
{
	struct built b = built_from(JOB "treads: {nosing_chamfer: 1/4\"}\n");
	(void)state;
	assert_string_equal(built_complaint(&b),
		"treads.nosing_chamfer: this profile has no chamfer");
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(an_eased_edge_loses_two_quarter_rounds),
		cmocka_unit_test(a_full_round_is_half_a_circle_of_the_thickness),
		cmocka_unit_test(a_half_round_is_square_below),
		cmocka_unit_test(a_chamfer_takes_off_two_triangles),
		cmocka_unit_test(the_arrises_of_a_chamfer_are_rounded),
		cmocka_unit_test(rounds_that_the_wood_does_not_hold_are_made_smaller),
		cmocka_unit_test(the_waste_chamfer_clears_every_profile_by_its_margin),
		cmocka_unit_test(the_waste_chamfer_of_a_half_inch_round),
		cmocka_unit_test(a_small_round_needs_no_saw),
		cmocka_unit_test(strips_returns_and_the_landing_carry_the_same_edge),
		cmocka_unit_test(the_note_says_how_the_waste_is_sawn_off),
		cmocka_unit_test(a_housing_is_cut_to_the_profile),
		cmocka_unit_test(a_full_round_of_another_radius_is_refused),
		cmocka_unit_test(a_chamfer_belongs_to_a_chamfered_edge),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
