/*
 * Stringers: what is cut out of which plank.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"

#define SAWN                                                                                       \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: inches}\n"                                                       \
	"stair: {width: 36\", left: wall, right: wall, segments: [{risers: 14, run: 10\"}]}\n"     \
	"treads: {thickness: 1\", nosing: 1\", nosing_radius: 1/2\"}\n"                            \
	"risers: {thickness: 3/4\"}\n"

#define OPEN                                                                                       \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"stair: {width: 900, left: wall, right: open, segments: [{risers: 10, run: 250}]}\n"       \
	"treads: {thickness: 30, nosing: 25, nosing_radius: 10}\n"                                 \
	"risers: {thickness: 18}\n"

/* Cut the tread's thickness off the bottom, and all finished rises are equal
 * (Carpenters' Guide, "Stairs"). 14 risers of 7 3/4 in. */
static void dropping_the_stringer_makes_all_rises_equal(void **state)
{
	struct built b = built_from(SAWN "floors: {total_rise: 108 1/2\"}\n"
					 "stringers: {foot: finished_floor}\n");
	(void)state;
	assert_non_null(b.parts);
	const struct stringer *g = built_part(&b, "sawtooth stringer", 0)->stringer;
	assert_near(g->drop / 25.4, 1, 1e-9);
	assert_near(g->first_rise_cut / 25.4, 6.75, 1e-9);
	assert_near(g->first_rise_finished / 25.4, 7.75, 1e-9);
	assert_near(g->last_rise_finished / 25.4, 7.75, 1e-9);
	arena_free(b.arena);
}

/* First notch = rise - tread + finish still to come (NAVEDTRA 14044's rule in its general form). */
static void a_stringer_on_the_structural_floor_is_cut_higher_by_the_finish(void **state)
{
	struct built b = built_from(SAWN "floors: {total_rise: 108 1/2\", lower_finish: 3/4\"}\n"
					 "stringers: {foot: structural_floor}\n");
	(void)state;
	const struct stringer *g = built_part(&b, "sawtooth stringer", 0)->stringer;
	assert_near(g->first_rise_cut / 25.4, 7.5, 1e-9);
	assert_near(g->drop / 25.4, 0.25, 1e-9);
	assert_near(g->foot_level / 25.4, -0.75, 1e-9);
	assert_near(g->first_rise_finished / 25.4, 7.75, 1e-9);
	arena_free(b.arena);
}

/* 2x12 (11 1/4) at 7 3/4 : 10 leaves 11.25 - 77.5 / sqrt(160.0625) = 5.124 in. */
static void a_two_by_twelve_keeps_its_throat(void **state)
{
	struct built b = built_from(SAWN "floors: {total_rise: 108 1/2\"}\n"
					 "stringers: {wall: {kind: sawtooth, width: 11 1/4\"}}\n");
	(void)state;
	const struct stringer *g = built_part(&b, "sawtooth stringer", 0)->stringer;
	assert_near(g->throat / 25.4, 5.124, 0.0005);
	assert_near(g->inner_corners[0].y, g->throat, 1e-9);
	assert_near(g->tread_corners[0].y / 25.4, 11.25, 1e-9);
	arena_free(b.arena);
}

static void the_narrowest_plank_that_keeps_the_throat_is_taken(void **state)
{
	struct built b = built_from(SAWN "floors: {total_rise: 108 1/2\"}\n"
					 "stringers: {least_throat: 3\"}\n");
	(void)state;
	/* a 2x10 keeps 9.25 - 6.126 = 3.124 in */
	assert_near(built_part(&b, "sawtooth stringer", 0)->stringer->plank_width / 25.4, 9.25,
		1e-9);
	arena_free(b.arena);
}

static void a_plank_that_leaves_too_little_is_drawn_with_what_is_missing(void **state)
{
	struct built b = built_from(SAWN "floors: {total_rise: 108 1/2\"}\n"
					 "stringers: {wall: {kind: sawtooth, width: 9 1/4\"}}\n");
	(void)state;
	/* 5 - 3.124 = 1.876 in: 1 7/8 to a sixteenth */
	assert_string_equal(built_complaint(&b),
		"a plank 9 1/4\" wide leaves a throat of 3 1/8\": 1 7/8\" less than least_throat, "
		"5\"");
	const struct part *p = built_part(&b, "sawtooth stringer", 0);
	assert_near(p->stringer->throat / 25.4, 3.124, 0.0005);
	assert_non_null(strstr(p->note, "the throat is less than least_throat asks"));
	arena_free(b.arena);
}

/* 6 1/8 in of depth go into the steps of this one. */
static void a_plank_that_is_cut_through_is_refused(void **state)
{
	struct built b = built_from(SAWN "floors: {total_rise: 108 1/2\"}\n"
					 "stringers: {wall: {kind: sawtooth, width: 7\"}}\n");
	(void)state;
	assert_null(b.parts);
	assert_non_null(strstr(built_complaint(&b), "a plank 7\" wide leaves a throat of 7/8\""));
	arena_free(b.arena);
}

static void running_positions_step_evenly_along_the_plank(void **state)
{
	struct built b = built_from(SAWN "floors: {total_rise: 108 1/2\"}\n");
	(void)state;
	const struct stringer *g = built_part(&b, "sawtooth stringer", 0)->stringer;
	double hypotenuse = sqrt(7.75 * 7.75 + 10 * 10);
	for (int i = 1; i < g->steps; i++) {
		double along = g->tread_corners[i].x - g->tread_corners[0].x;
		assert_near(along / 25.4, i * hypotenuse, 1e-6);
		assert_near(g->tread_corners[i].y, g->tread_corners[0].y, 1e-6);
	}
	arena_free(b.arena);
}

static void the_plank_is_the_shortest_one_with_waste_at_both_ends(void **state)
{
	struct built b = built_from(SAWN "floors: {total_rise: 108 1/2\"}\n");
	(void)state;
	const struct stringer *g = built_part(&b, "sawtooth stringer", 0)->stringer;
	/* offered 8', 10' ... 20' */
	assert_true(g->plank_length >= g->cut_length + 2 * 25.4);
	assert_true(g->plank_length - 24 * 25.4 < g->cut_length + 2 * 25.4);
	arena_free(b.arena);
}

static void a_foot_takes_the_thrust_block(void **state)
{
	struct built b = built_from(SAWN "floors: {total_rise: 108 1/2\"}\n"
					 "stringers: {thrust_block: {thickness: 1 1/2\", width: 3 "
					 "1/2\"}}\n");
	(void)state;
	const struct part *p = built_part(&b, "sawtooth stringer", 0);
	const struct part *block = built_part(&b, "thrust block", 0);
	assert_int_equal(p->features->kind, FEATURE_NOTCH);
	assert_string_equal(block->mark, "K1");
	assert_near(block->size.width / 25.4, 3.5, 1e-9);
	assert_near(built_extent(block, 0).low.x / 25.4, 0.75, 1e-9); /* behind the first riser */
	arena_free(b.arena);
}

static void outer_and_middle_carriages_that_are_equal_are_one_part(void **state)
{
	struct built b =
		built_from(SAWN "floors: {total_rise: 108 1/2\"}\nstringers: {middle_count: 2}\n");
	(void)state;
	assert_int_equal(built_part(&b, "sawtooth stringer", 0)->count, 4);
	assert_null(built_part(&b, "sawtooth stringer", 1));
	arena_free(b.arena);
}

/* Common practice: n = ceil((W - b) / s) + 1 carriages in all; 36 in less two gaps of 1 1/2 and
 * one thickness of 1 1/2 is 31 1/2 in, at 16 in: 3. */
/* 2700 / 13 = 207.7 on 240: cut 157 deep, and the widest stock is 295. */
static void a_job_without_the_group_to_blame_is_complained_of_as_a_whole(void **state)
{
	struct built b = built_from("pitchboard: 1\n"
				    "job: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 2700}\n"
				    "stair: {width: 900, segments: [{risers: 13, run: 240}]}\n");
	(void)state;
	assert_non_null(strstr(built_complaint(&b), "even the widest plank 295 mm wide"));
	assert_int_equal(b.diags.first->at.line, 1);
	arena_free(b.arena);
}

static void carriages_stand_no_further_apart_than_the_spacing(void **state)
{
	struct built b =
		built_from(SAWN "floors: {total_rise: 108 1/2\"}\nstringers: {spacing: 16\"}\n");
	(void)state;
	assert_int_equal(built_count(&b, "sawtooth stringer"), 3);
	arena_free(b.arena);
}

/* The far face's riser cuts lie one thickness further in, and the throat is the worse face's. */
static void a_mitred_stringer_is_cut_back_through_its_thickness(void **state)
{
	struct built b = built_from(OPEN "stringers: {open: {kind: mitred, thickness: 30}}\n"
					 "newels: {bottom: no}\n");
	(void)state;
	const struct part *p = built_part(&b, "mitred stringer, right hand", 0);
	const struct stringer *g = p->stringer;
	double hypotenuse = sqrt(180.0 * 180.0 + 250.0 * 250.0);
	assert_near(g->throat, g->plank_width - 180 * 250 / hypotenuse - 30 * 180 / hypotenuse,
		1e-9);
	assert_int_equal(g->far_face.n, p->outline.n);
	arena_free(b.arena);
}

/* Both lie in the plane that leaves the riser's face at the stringer's outer face at 45 degrees. */
static void the_mitres_of_riser_and_stringer_meet_in_one_plane(void **state)
{
	struct built b = built_from(OPEN "stringers: {open: {kind: mitred, thickness: 30}}\n");
	(void)state;
	const struct part *riser = built_part(&b, "riser", 1); /* of the second step */
	const struct part *stringer = built_part(&b, "mitred stringer, right hand", 0);
	int on_plane[2] = { 0, 0 };
	const struct part *parts[2] = { riser, stringer };
	for (int k = 0; k < 2; k++)
		for (int i = 0; i < parts[k]->solids->n; i++) {
			const struct vec3 ends[2] = { parts[k]->solids->a[i],
				parts[k]->solids->b[i] };
			for (int e = 0; e < 2; e++) {
				struct vec3 at = frame_place(parts[k]->places[0], ends[e]);
				on_plane[k] +=
					fabs(at.x - 250 - at.y) < 1e-6 && at.z > 149 && at.z < 331;
			}
		}
	assert_int_equal(on_plane[0], 4); /* the riser's end */
	assert_int_equal(on_plane[1], 4); /* the stringer's cut */
	arena_free(b.arena);
}

static void a_mitred_stringer_needs_riser_boards(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, right: open, segments: [{risers: 10, run: "
				    "250}]}\nstringers: {open: mitred}\nrisers: open\n");
	(void)state;
	assert_null(b.parts);
	assert_string_equal(built_complaint(&b),
		"a mitred stringer needs riser boards to be mitred to");
	arena_free(b.arena);
}

static void a_housed_stringer_keeps_its_margin_over_the_nosing_line(void **state)
{
	struct built b = built_from(OPEN "stringers: {open: housed, margin: 40}\n");
	(void)state;
	const struct part *p = built_part(&b, "housed stringer, right hand", 0);
	/* the nosing of step 3 is at x 475, z 540; square distance from the top edge, y = width */
	struct frame f = p->places[0];
	struct vec3 nosing = vec3_sub(vec3(475, 0, 540), f.origin);
	assert_near(p->stringer->plank_width - vec3_dot(nosing, f.v), 40, 1e-6);
	arena_free(b.arena);
}

/* With margin and housings it takes some 250; nothing is cut through it that a throat would be. */
static void a_housed_stringer_narrower_than_the_throat_asked_is_drawn_and_told(void **state)
{
	struct built b = built_from(OPEN
		"stringers: {open: {kind: housed, width: 320}, margin: 40, least_throat: 400}\n");
	(void)state;
	assert_near(built_part(&b, "housed stringer, right hand", 0)->size.width, 320, 1e-9);
	bool told = false;
	for (const struct diag *d = b.diags.first; d; d = d->next)
		told = told ||
			strcmp(d->text,
				"a housed stringer of 320 mm is narrower than least_throat, 400 "
				"mm") == 0;
	assert_true(told);
	arena_free(b.arena);
}

static void a_housed_stringer_has_a_groove_for_every_step(void **state)
{
	struct built b = built_from(OPEN "stringers: {open: housed, housing_depth: 12}\n");
	(void)state;
	int grooves = 0;
	for (const struct feature *f = built_part(&b, "housed stringer, right hand", 0)->features;
		f; f = f->next) {
		grooves += f->kind == FEATURE_GROOVE;
		assert_near(f->depth, 12, 1e-9);
	}
	assert_int_equal(grooves, 9);
	arena_free(b.arena);
}

/* Nine treads, ten risers of 180: the tenth has its face at 9 x 250 and goes up to the underside of
 * the floor's nosing piece, 30 thick, at 1770. */
static void the_last_riser_is_housed_along_the_head_cut(void **state)
{
	struct built b = built_from(OPEN "stringers: {open: housed}\n");
	const struct part *p = built_part(&b, "housed stringer, right hand", 0);
	struct vec3 top = frame_place_back(p->places[0], vec3(2250, p->places[0].origin.y, 1770));
	const struct feature *last = p->features;
	bool reaches = false;
	(void)state;
	while (last->next)
		last = last->next;
	for (int i = 0; i < last->at.n; i++)
		reaches |= vec_length(vec_sub(last->at.corners[i].at, vec(top.x, top.y))) < 1e-6;
	assert_true(reaches);
	assert_near(p->stringer->housing->last_riser, 1770 - 9 * 180, 1e-6);
	arena_free(b.arena);
}

/* Worked by hand: 1 in 12, rise 180, run 250, tread 30 and nosing 25, riser 18.
 * (250 + 25) / 12 = 22.917 under the tread's back, 180 / 12 = 15 behind the riser's lower edge.
 * Behind the riser the two slopes meet at x = (18 * 144 + 25) / 143 = 18.3007. */
static void housings_are_tight_at_one_end_and_wedged_at_the_other(void **state)
{
	struct built b = built_from(OPEN "stringers: {open: housed, wedge_taper: 12}\n");
	(void)state;
	const struct housing *h =
		built_part(&b, "housed stringer, right hand", 0)->stringer->housing;
	assert_near(h->tread_front, 30, 1e-9);
	assert_near(h->tread_back, 30 + 275.0 / 12, 1e-9);
	assert_near(h->riser_top, 18, 1e-9);
	assert_near(h->riser_bottom, 18 + 15, 1e-9);
	assert_near(h->tread_wedge.length, 250 - 18.3007, 1e-4);
	assert_near(h->tread_wedge.thin, 43.3007 / 12, 1e-4);
	assert_near(h->tread_wedge.thick, 275.0 / 12, 1e-9);
	/* it begins where it is 1.5 thick, 1.5 x 12 down */
	assert_near(h->riser_wedge.length, 180 - 18, 1e-4);
	assert_near(h->riser_wedge.thin, 1.5, 1e-4);
	assert_near(h->riser_wedge.thick, 15, 1e-9);
	arena_free(b.arena);
}

/* The slopes of tread 1 and riser 2 meet at x = (283 * 144 + 25) / 143 = 285.154, z = 124.154; the
 * nosing line there is 279.157 higher, which is 226.546 square to the pitch; with the margin of 40
 * that leaves 28.455 of a plank of 295. */
static void a_housed_plank_keeps_wood_under_its_deepest_housing(void **state)
{
	struct built b =
		built_from(OPEN "stringers: {open: housed, wedge_taper: 12, margin: 40}\n");
	(void)state;
	const struct stringer *g = built_part(&b, "housed stringer, right hand", 0)->stringer;
	assert_near(g->plank_width, 295, 1e-9);
	assert_near(g->housing->wood_left, 28.455, 0.001);
	arena_free(b.arena);
}

static void without_risers_nothing_is_wedged(void **state)
{
	struct built b = built_from("pitchboard: 1\njob: {name: Test, units: millimetres}\n"
				    "floors: {total_rise: 1800}\n"
				    "stair: {width: 900, right: open, segments: [{risers: 10, run: "
				    "250}]}\nstringers: {open: housed}\nrisers: open\n");
	(void)state;
	const struct housing *h =
		built_part(&b, "housed stringer, right hand", 0)->stringer->housing;
	assert_near(h->riser_bottom, 0, 0);
	assert_near(h->riser_wedge.length, 0, 0);
	assert_near(h->tread_wedge.length, 0, 0);
	assert_near(h->tread_back, 27, 0); /* as thick as the tread */
	arena_free(b.arena);
}

/* Steps are cut alike, so of 13 the corner behind the seventh is the one in the middle. */
static void the_throat_is_measured_under_the_middle_of_the_deepest_corners(void **state)
{
	struct built b = built_from(SAWN "floors: {total_rise: 108 1/2\"}\n");
	(void)state;
	const struct stringer *g = built_part(&b, "sawtooth stringer", 0)->stringer;
	assert_near(g->throat_at.x, g->inner_corners[6].x, 1e-9);
	assert_near(g->throat_at.y, 0, 0);
	arena_free(b.arena);
}

#define UP_TO(upper)                                                                               \
	"pitchboard: 1\njob: {name: Test, units: millimetres}\n"                                   \
	"floors: {total_rise: 1800, upper_finish: " upper "}\n"                                    \
	"stair: {width: 900, segments: [{risers: 10, run: 250}]}\n"                                \
	"treads: {thickness: 30}\n"

/* One rise of 180 and a tread of 30, less the finish of 20. */
static void the_head_is_set_out_from_the_upper_structural_floor(void **state)
{
	struct built b = built_from(UP_TO("20"));
	(void)state;
	assert_near(built_part(&b, "sawtooth stringer", 0)->stringer->head_under_structure,
		180 + 30 - 20, 1e-9);
	arena_free(b.arena);
}

/* The landing nosing, as thick as a tread, is let into the floor. */
static void without_a_finish_the_header_is_lower_by_the_landing_nosing(void **state)
{
	struct built bare = built_from(UP_TO("0")), laid = built_from(UP_TO("20"));
	(void)state;
	const struct stringer *g = built_part(&bare, "sawtooth stringer", 0)->stringer;
	assert_near(g->head_under_structure, 180 + 30, 1e-9);
	assert_near(g->header_low, 30, 1e-9);
	assert_near(built_part(&laid, "sawtooth stringer", 0)->stringer->header_low, 0, 1e-9);
	arena_free(bare.arena);
	arena_free(laid.arena);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(housings_are_tight_at_one_end_and_wedged_at_the_other),
		cmocka_unit_test(a_housed_plank_keeps_wood_under_its_deepest_housing),
		cmocka_unit_test(without_risers_nothing_is_wedged),
		cmocka_unit_test(the_throat_is_measured_under_the_middle_of_the_deepest_corners),
		cmocka_unit_test(the_head_is_set_out_from_the_upper_structural_floor),
		cmocka_unit_test(without_a_finish_the_header_is_lower_by_the_landing_nosing),
		cmocka_unit_test(dropping_the_stringer_makes_all_rises_equal),
		cmocka_unit_test(a_stringer_on_the_structural_floor_is_cut_higher_by_the_finish),
		cmocka_unit_test(a_two_by_twelve_keeps_its_throat),
		cmocka_unit_test(the_narrowest_plank_that_keeps_the_throat_is_taken),
		cmocka_unit_test(a_plank_that_leaves_too_little_is_drawn_with_what_is_missing),
		cmocka_unit_test(a_plank_that_is_cut_through_is_refused),
		cmocka_unit_test(running_positions_step_evenly_along_the_plank),
		cmocka_unit_test(the_plank_is_the_shortest_one_with_waste_at_both_ends),
		cmocka_unit_test(a_foot_takes_the_thrust_block),
		cmocka_unit_test(outer_and_middle_carriages_that_are_equal_are_one_part),
		cmocka_unit_test(a_job_without_the_group_to_blame_is_complained_of_as_a_whole),
		cmocka_unit_test(carriages_stand_no_further_apart_than_the_spacing),
		cmocka_unit_test(a_mitred_stringer_is_cut_back_through_its_thickness),
		cmocka_unit_test(the_mitres_of_riser_and_stringer_meet_in_one_plane),
		cmocka_unit_test(a_mitred_stringer_needs_riser_boards),
		cmocka_unit_test(a_housed_stringer_keeps_its_margin_over_the_nosing_line),
		cmocka_unit_test(
			a_housed_stringer_narrower_than_the_throat_asked_is_drawn_and_told),
		cmocka_unit_test(a_housed_stringer_has_a_groove_for_every_step),
		cmocka_unit_test(the_last_riser_is_housed_along_the_head_cut),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
