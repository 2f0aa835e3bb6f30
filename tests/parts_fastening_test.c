/*
 * Rows of screws and brads.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include <string.h>

#include "built.h"
#include "near.h"

/* Nine treads of 30 on sawtooth carriages; riser boards of 18, unit run 250. */
#define JOB(sides, treads, more)                                                                   \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, " sides ", segments: [{risers: 10, run: 250}]}\n"                     \
	"stringers: {open: sawtooth}\n"                                                            \
	"risers: {thickness: 18}\n"                                                                \
	"newels: {bottom: no, top: no}\n"                                                          \
	"treads: {thickness: 30, nosing: 25, strip_width: 30, " treads "}\n" more

#define WALLS "left: wall, right: wall"

/* Of this kind, drilled for the part's own sake. */
static int count(const struct part *p, enum fixing fixing)
{
	int n = 0;
	for (const struct bore *b = p->bores; b; b = b->next)
		n += b->fixing == fixing && !b->is_mate;
	return n;
}

static int count_all(const struct built *b, enum fixing fixing)
{
	int n = 0;
	for (const struct part *p = b->parts; p; p = p->next)
		n += count(p, fixing) * p->count;
	return n;
}

static const struct bore *nth(const struct part *p, enum fixing fixing, int n)
{
	for (const struct bore *b = p->bores; b; b = b->next)
		if (b->fixing == fixing && !b->is_mate && n-- == 0)
			return b;
	fail();
	return NULL;
}

static void every_tread_has_two_screws_on_every_carriage(void **state)
{
	struct built b = built_from(JOB(WALLS, "scribe: 3", ""));
	(void)state;
	int carriages = built_count(&b, "sawtooth stringer");
	assert_true(carriages >= 3);
	assert_int_equal(count_all(&b, FIXING_SCREW), 9 * carriages * 2);
	assert_int_equal(count_all(&b, FIXING_PLUG), 9 * carriages * 2);
	arena_free(b.arena);
}

static void they_stand_over_the_middle_of_the_carriage(void **state)
{
	struct built b = built_from(JOB(WALLS, "scribe: 3", ""));
	const struct part *tread = built_part(&b, "tread body", 0);
	(void)state;
	for (int i = 0; i < count(tread, FIXING_SCREW); i++) {
		double y = frame_place(tread->places[0], nth(tread, FIXING_SCREW, i)->at.origin).y;
		int over = 0;
		for (const struct part *p = b.parts; p; p = p->next)
			for (int k = 0; p->stringer && k < p->count; k++) {
				struct extent e = built_extent(p, k);
				over += fabs((e.low.y + e.high.y) / 2 - y) < 1e-6;
			}
		assert_int_equal(over, 1);
	}
	arena_free(b.arena);
}

/* The bearing runs from the back of the riser below, 18 behind its face, to the face of the riser
 * above, at 250; the body begins 30 - 25 behind the face. */
static void the_outer_ones_are_as_far_from_the_risers_as_asked(void **state)
{
	struct built b = built_from(JOB(WALLS, "screws: {first: 50, per_bearing: 3}", ""));
	const struct part *tread = built_part(&b, "tread body", 0);
	const double wanted[] = { 18 + 50, (18 + 250) / 2.0, 250 - 50 };
	(void)state;
	for (int i = 0; i < 3; i++)
		assert_near(nth(tread, FIXING_SCREW, i)->at.origin.y + 5, wanted[i], 1e-9);
	arena_free(b.arena);
}

static void a_screw_is_sunk_under_its_plug_and_bites_with_the_rest(void **state)
{
	struct built b =
		built_from(JOB(WALLS, "screws: {length: 60, plug: 10, plug_depth: 8}", ""));
	const struct part *tread = built_part(&b, "tread body", 0);
	const struct bore *screw = nth(tread, FIXING_SCREW, 0), *plug = nth(tread, FIXING_PLUG, 0);
	(void)state;
	assert_near(screw->size.depth, 30, 1e-9);
	assert_near(screw->driven, 60 - (30 - 8), 1e-9);
	assert_near(plug->size.width, 10, 1e-9);
	assert_near(plug->size.depth, 8, 1e-9);
	assert_near(vec3_length(vec3_sub(plug->at.origin, screw->at.origin)), 0, 1e-9);
	arena_free(b.arena);
}

static void plugs_and_screws_can_be_done_without(void **state)
{
	struct built bare = built_from(JOB(WALLS, "screws: {plug: 0}", ""));
	struct built none = built_from(JOB(WALLS, "screws: no", ""));
	(void)state;
	assert_true(count_all(&bare, FIXING_SCREW) > 0);
	assert_int_equal(count_all(&bare, FIXING_PLUG), 0);
	assert_non_null(none.parts);
	assert_int_equal(count_all(&none, FIXING_SCREW), 0);
	arena_free(bare.arena);
	arena_free(none.arena);
}

/* On plan: 5 of wood between any two round holes in the face. */
static void screws_keep_clear_of_dowels(void **state)
{
	struct built b = built_from(JOB("left: wall, right: open", "side_overhang: 30",
		"balusters: {section: 32, per_tread: 3}\nrail: {height: 900}\n"));
	int met = 0;
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		for (const struct bore *s = p->bores; s; s = s->next)
			for (const struct bore *o = p->bores; s->fixing == FIXING_PLUG && o;
				o = o->next) {
				if (o->fixing != FIXING_DOWEL)
					continue;
				double apart = vec3_length(vec3_sub(s->at.origin, o->at.origin));
				assert_true(apart >= (s->size.width + o->size.width) / 2 + 5);
				met++;
			}
	assert_true(met > 0);
	arena_free(b.arena);
}

static void brads_of_a_strip_begin_where_asked_and_keep_their_pitch(void **state)
{
	struct built b =
		built_from(JOB(WALLS, "scribe: 3, tenons: no, brads: {first: 47, pitch: 190}", ""));
	const struct part *strip = built_part(&b, "tread front strip", 0);
	(void)state;
	/* 894 long: 800 between the outer two, in five */
	assert_int_equal(count(strip, FIXING_BRAD), 6);
	double low = INFINITY, high = -INFINITY;
	for (int i = 0; i < 6; i++) {
		double x = nth(strip, FIXING_BRAD, i)->at.origin.x;
		low = fmin(low, x);
		high = fmax(high, x);
	}
	assert_near(low, 47, 1e-9);
	assert_near(high, 47 + 800, 1e-9);
	arena_free(b.arena);
}

static void brads_keep_clear_of_tenons(void **state)
{
	struct built b = built_from(JOB(WALLS,
		"scribe: 3, tenons: {first: 47, pitch: 200, width: 20}, brads: {first: 47, pitch: "
		"200}",
		""));
	const struct part *strip = built_part(&b, "tread front strip", 0);
	(void)state;
	assert_int_equal(count(strip, FIXING_BRAD), 5);
	for (const struct bore *s = strip->bores; s; s = s->next)
		for (const struct bore *o = strip->bores; s->fixing == FIXING_BRAD && o;
			o = o->next)
			if (o->fixing == FIXING_LOOSE_TENON)
				assert_true(fabs(s->at.origin.x - o->at.origin.x) >= 20 / 2.0 + 5);
	arena_free(b.arena);
}

/* 18 gauge brads are sold up to 50 mm: 9 must be left to bite. */
static void a_strip_too_wide_for_a_brad_has_none(void **state)
{
	struct built b = built_from(JOB(WALLS, "brads: yes", ""));
	struct built wide = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				       "floors: {total_rise: 1800}\n"
				       "stair: {width: 900, left: wall, right: wall,\n"
				       "  segments: [{risers: 10, run: 250}]}\n"
				       "treads: {strip_width: 45}\n");
	(void)state;
	assert_true(count_all(&b, FIXING_BRAD) > 0);
	assert_non_null(wide.parts);
	assert_int_equal(count_all(&wide, FIXING_BRAD), 0);
	arena_free(b.arena);
	arena_free(wide.arena);
}

static void shoe_and_subrail_are_screwed_through_their_ploughs(void **state)
{
	struct built b = built_from(
		"pitchboard: 1\njob: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 1800}\n"
		"stair: {width: 900, left: open, right: open, segments: [{risers: 10, run: 250}]}\n"
		"stringers: {open: {kind: housed, thickness: 40}, middle_count: 0}\n"
		"infill: {kind: plain, shoe: yes, subrail: yes, shoe_depth: 25, subrail_depth: "
		"20,\n"
		"  plough: 10, screws: {pitch: 300, first: 75}}\n");
	const char *const names[] = { "shoe", "subrail" };
	const double deep[] = { 25, 20 };
	(void)state;
	for (int i = 0; i < 2; i++) {
		const struct part *p = built_part(&b, names[i], 0);
		assert_non_null(p);
		int n = count(p, FIXING_SCREW);
		assert_true(n >= (p->size.length - 2 * 75 - 40) / 300);
		const struct bore *screw = nth(p, FIXING_SCREW, 0);
		assert_near(screw->size.depth, deep[i] - 10, 1e-9);
		assert_near(screw->driven, screw->fixing_length - (deep[i] - 10), 1e-9);
		assert_near(screw->at.origin.y, i == 0 ? 25 - 10 : 10, 1e-9);
	}
	arena_free(b.arena);
}

#define OPEN_RISERS(sides, stringers)                                                              \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, " sides ", segments: [{risers: 10, run: 250}]}\n"                     \
	"stringers: {" stringers ", housing_depth: 12, middle_count: 0}\n"                         \
	"risers: open\n"                                                                           \
	"newels: {bottom: no, top: no}\n"                                                          \
	"treads: {thickness: 36, screws: {plug_depth: 8, number: 10}}\n"

static int screws_through(const struct built *b, const char *name)
{
	const struct part *p = built_part(b, name, 0);
	return p ? count(p, FIXING_SCREW) : 0;
}

/* String 40: 28 behind the housing, of which the plug takes 8; 80 is the longest that leaves no
 * more than 60 in the tread. */
static void open_treads_are_screwed_through_the_string_into_their_ends(void **state)
{
	struct built b = built_from(
		OPEN_RISERS("left: open, right: open", "open: {kind: housed, thickness: 40}"));
	const struct part *string = built_part(&b, "housed stringer, right hand", 0);
	(void)state;
	assert_non_null(string);
	assert_int_equal(count(string, FIXING_SCREW), 9 * 2);
	assert_int_equal(count(string, FIXING_PLUG), 9 * 2);
	const struct bore *screw = nth(string, FIXING_SCREW, 0);
	assert_near(screw->size.depth, 28, 1e-9);
	assert_near(screw->fixing_length, 80, 1e-9);
	assert_near(screw->driven, 80 - 20, 1e-9);
	arena_free(b.arena);
}

static void they_meet_the_middle_of_the_tread(void **state)
{
	struct built b = built_from(
		OPEN_RISERS("left: open, right: open", "open: {kind: housed, thickness: 40}"));
	const struct part *string = built_part(&b, "housed stringer, left hand", 0);
	(void)state;
	for (int i = 0; i < count(string, FIXING_SCREW); i++) {
		double z =
			frame_place(string->places[0], nth(string, FIXING_SCREW, i)->at.origin).z;
		assert_near(remainder(z + 18, 180), 0, 1e-9);
	}
	arena_free(b.arena);
}

/* Its other end lies on a cut stringer: then the string stands against its wall already. */
static void a_string_at_a_wall_is_screwed_through_only_before_it_is_stood_up(void **state)
{
	struct built apart = built_from(OPEN_RISERS("left: wall, right: wall", "wall: housed"));
	struct built in_place = built_from(OPEN_RISERS("left: wall, right: open",
		"wall: housed, open: {kind: sawtooth, thickness: 40}"));
	const char *name = "housed stringer, left hand";
	(void)state;
	assert_int_equal(screws_through(&apart, name), 18);
	assert_int_equal(count(built_part(&apart, name, 0), FIXING_PLUG), 0);
	assert_non_null(built_part(&in_place, name, 0));
	assert_int_equal(screws_through(&in_place, name), 0);
	arena_free(apart.arena);
	arena_free(in_place.arena);
}

/* Strip 30 wide: the pin goes in at half of it and meets the mitre as deep. */
static void a_pin_goes_across_the_mitre_of_every_return(void **state)
{
	struct built b = built_from(JOB("left: wall, right: open", "side_overhang: 30", ""));
	int pins = 0;
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		for (const struct bore *k = p->bores; k; k = k->next)
			if (k->text && strstr(k->text, "across the mitre")) {
				assert_string_equal(p->name, "tread return");
				struct vec3 at = frame_place(p->places[0], k->at.origin);
				assert_near(at.y, -30, 1e-9);
				assert_near(remainder(at.x + 25 - 15, 250), 0, 1e-6);
				assert_near(k->size.depth, 15, 1e-9);
				pins += p->count;
			}
	assert_int_equal(pins, 9);
	arena_free(b.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(every_tread_has_two_screws_on_every_carriage),
		cmocka_unit_test(they_stand_over_the_middle_of_the_carriage),
		cmocka_unit_test(the_outer_ones_are_as_far_from_the_risers_as_asked),
		cmocka_unit_test(a_screw_is_sunk_under_its_plug_and_bites_with_the_rest),
		cmocka_unit_test(plugs_and_screws_can_be_done_without),
		cmocka_unit_test(screws_keep_clear_of_dowels),
		cmocka_unit_test(brads_of_a_strip_begin_where_asked_and_keep_their_pitch),
		cmocka_unit_test(brads_keep_clear_of_tenons),
		cmocka_unit_test(a_strip_too_wide_for_a_brad_has_none),
		cmocka_unit_test(open_treads_are_screwed_through_the_string_into_their_ends),
		cmocka_unit_test(they_meet_the_middle_of_the_tread),
		cmocka_unit_test(a_string_at_a_wall_is_screwed_through_only_before_it_is_stood_up),
		cmocka_unit_test(a_pin_goes_across_the_mitre_of_every_return),
		cmocka_unit_test(shoe_and_subrail_are_screwed_through_their_ploughs),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
