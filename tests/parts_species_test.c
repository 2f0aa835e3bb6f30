/*
 * Species: each trade's pieces are of the wood that the job names for it.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"

#define JOB(material)                                                                              \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"       \
	"stringers: {open: mitred, middle_count: 1}\n"                                             \
	"newels: {cap: pyramid}\n"                                                                 \
	"mouldings: {under_nosing: cove}\n"                                                        \
	"skirts: {wall: cut_round}\n"                                                              \
	"wall_rails: [{side: left}]\n"                                                             \
	"material: {" material "}\n"

static const char *wood_of(const struct built *b, const char *name)
{
	const struct part *p = built_part(b, name, 0);
	assert_non_null(p);
	return p->material;
}

static void each_trade_may_have_a_wood_of_its_own(void **state)
{
	struct built b = built_from(JOB("treads: oak, risers: poplar, stringers: ash, "
					"balustrade: beech, newels: walnut, rail: cherry, "
					"balusters: maple, carriages: fir, skirts: pine, "
					"mouldings: elm"));
	(void)state;
	assert_string_equal(wood_of(&b, "newel"), "walnut");
	assert_string_equal(wood_of(&b, "newel cap"), "walnut");
	assert_string_equal(wood_of(&b, "rail"), "cherry");
	assert_string_equal(wood_of(&b, "wall rail"), "cherry");
	assert_string_equal(wood_of(&b, "baluster"), "maple");
	assert_string_equal(wood_of(&b, "sawtooth stringer"), "fir");
	assert_string_equal(wood_of(&b, "mitred stringer, right hand"), "ash");
	assert_string_equal(wood_of(&b, "wall skirt, cut round the steps"), "pine");
	assert_string_equal(wood_of(&b, "cove under the nosing"), "elm");
	assert_string_equal(wood_of(&b, "riser"), "poplar");
	arena_free(b.arena);
}

static void a_wood_that_is_not_named_is_that_of_its_neighbours(void **state)
{
	struct built b = built_from(
		JOB("treads: oak, risers: poplar, stringers: ash, balustrade: beech, rail: "
		    "cherry"));
	(void)state;
	assert_string_equal(wood_of(&b, "newel"), "beech");
	assert_string_equal(wood_of(&b, "baluster"), "beech");
	assert_string_equal(wood_of(&b, "rail"), "cherry");
	assert_string_equal(wood_of(&b, "sawtooth stringer"), "ash");
	assert_string_equal(wood_of(&b, "wall skirt, cut round the steps"), "poplar");
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(each_trade_may_have_a_wood_of_its_own),
		cmocka_unit_test(a_wood_that_is_not_named_is_that_of_its_neighbours),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
