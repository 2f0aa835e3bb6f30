/*
 * Wedges of housed stringers.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"
#include "pitchboard/list.h"

/* Nine treads of 30 on two housed stringers of 32, let in by 12; unit rise 180. */
#define JOB(more)                                                                                  \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: open, right: open, segments: [{risers: 10, run: 250}]}\n"       \
	"stringers: {open: {kind: housed, thickness: 32}, middle_count: 0, foot: finished_floor, " \
	"housing_depth: 12, wedge_taper: 12}\n"                                                    \
	"treads: {thickness: 30, nosing: 25}\n"                                                    \
	"newels: {bottom: no, top: no}\n" more

static void every_tread_has_two_and_every_riser_under_one(void **state)
{
	struct built b = built_from(JOB("risers: {thickness: 18}\n"));
	(void)state;
	assert_int_equal(built_count(&b, "tread wedge"), 2 * 9);
	/* the tenth riser stands against the header */
	assert_int_equal(built_count(&b, "riser wedge"), 2 * 9);
	arena_free(b.arena);
}

static void open_risers_have_none(void **state)
{
	struct built b = built_from(JOB("risers: open\n"));
	(void)state;
	assert_non_null(b.parts);
	assert_int_equal(built_count(&b, "tread wedge") + built_count(&b, "riser wedge"), 0);
	arena_free(b.arena);
}

static void a_wedge_grows_by_the_taper_and_is_as_thick_as_the_housing_is_deep(void **state)
{
	struct built b = built_from(JOB("risers: {thickness: 18}\n"));
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next) {
		if (p->kind != &part_wedge)
			continue;
		double thin = p->outline.corners[3].at.y;
		assert_near(p->size.width - thin, p->size.length / 12, 1e-9);
		assert_near(p->size.thickness, 12, 1e-9);
	}
	arena_free(b.arena);
}

static void a_treads_wedge_bears_under_it_up_to_its_back(void **state)
{
	struct built b = built_from(JOB("risers: {thickness: 18}\n"));
	(void)state;
	const struct part *p = built_part(&b, "tread wedge", 0);
	struct extent e = built_extent(p, 0);
	assert_near(e.high.z, 180 - 30, 1e-9);
	assert_near(e.high.x, 250, 1e-9); /* the face of the second riser */
	/* let in on the right from the inner face, 32 from the limit */
	assert_near(e.low.y, 32 - 12, 1e-9);
	assert_near(e.high.y, 32, 1e-9);
	arena_free(b.arena);
}

static void the_first_risers_wedge_goes_down_to_the_floor(void **state)
{
	struct built b = built_from(JOB("risers: {thickness: 18}\n"));
	(void)state;
	double lowest = INFINITY;
	for (const struct part *p = b.parts; p; p = p->next)
		for (int i = 0; p->kind == &part_wedge && i < p->count; i++)
			lowest = fmin(lowest, built_extent(p, i).low.z);
	assert_near(lowest, 0, 1e-9);
	arena_free(b.arena);
}

static void two_come_out_of_one_strip(void **state)
{
	struct built b = built_from(JOB("risers: {thickness: 18}\n"
					"stock: {kerf: 4, spare_every: 0}\n"));
	const struct part *p = built_part(&b, "tread wedge", 0);
	const struct blank *k = blanks_make(b.arena, b.stair, b.parts);
	(void)state;
	while (k && k->part != p)
		k = k->next;
	assert_non_null(k);
	assert_int_equal(blank_count(k), (p->count + 1) / 2);
	/* head to tail: thin and thick beside each other, and the kerf between them, to the next
	 * tenth of a millimetre */
	double strip = p->outline.corners[3].at.y + p->size.width + 4;
	assert_near(fmax(k->width, k->thickness), ceil(10 * strip - 1e-6) / 10, 1e-9);
	assert_near(fmin(k->width, k->thickness), 12, 1e-9);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(every_tread_has_two_and_every_riser_under_one),
		cmocka_unit_test(open_risers_have_none),
		cmocka_unit_test(a_wedge_grows_by_the_taper_and_is_as_thick_as_the_housing_is_deep),
		cmocka_unit_test(a_treads_wedge_bears_under_it_up_to_its_back),
		cmocka_unit_test(the_first_risers_wedge_goes_down_to_the_floor),
		cmocka_unit_test(two_come_out_of_one_strip),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
