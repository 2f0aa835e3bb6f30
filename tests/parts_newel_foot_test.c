/*
 * Feet of newels: whatever one stands on and however it is made, something holds it against being
 * turned over, or the job is told.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "built.h"
#include "near.h"
#include "parts/solid.h"

#define ON(finish, right, stringers, more)                                                         \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 2700, lower_finish: " finish ", upper_finish: " finish "}\n"         \
	"opening: {length: 3000, width: 1100, floor_thickness: 300}\n"                             \
	"stair: {width: 900, left: wall, right: " right ", segments: [{risers: 15, run: 250}]}\n"  \
	"treads: {thickness: 30, nosing: 25" more "}\n"                                            \
	"stringers: {open: {kind: " stringers "}\n"

#define STAIR(right, stringers, more) ON("20", right, stringers, more)

/* Every way in which a newel stands. */
static const struct foot {
	const char *what, *job, *newels;
} feet[] = {
	{ "on a floor, before a mitred stringer", STAIR("open", "mitred}", ""), "" },
	{ "on a plate", STAIR("open", "mitred}", ""), ", floor_fixing: plate" },
	{ "on the finish", STAIR("open", "mitred}, foot: finished_floor", ""), "" },
	{ "let a little into the floor", STAIR("open", "mitred}", ""), ", let_in: 40" },
	{ "let into the floor", STAIR("open", "mitred}", ""), ", let_in: 120" },
	{ "before a closed string", STAIR("open", "housed, thickness: 40}", ""), "" },
	{ "on a starting step", STAIR("open", "mitred}", ", starting_step: right"), "" },
	{ "on a tread, beside a sawtooth stringer",
		STAIR("{side: open, from_step: 5}", "sawtooth, thickness: 38}", ""), "" },
	{ "on a tread, beside a mitred stringer",
		STAIR("{side: open, from_step: 5}", "mitred, thickness: 32}", ""), "" },
	{ "on the last tread", STAIR("open", "sawtooth, thickness: 38}, head: flush", ""), "" },
	{ "on a closed string", STAIR("{side: open, from_step: 5}", "housed, thickness: 40}", ""),
		"" },
	{ "on a gallery's floor",
		STAIR("open", "mitred}",
			"") "rail: {level_runs: [{side: right, direction: on, length: 700},\n"
			    "  {side: right, direction: out, length: 500, end: wall}]}\n",
		"" },
};

static const struct build {
	const char *what, *newels;
} builds[] = {
	{ "solid", "{section: 90" },
	{ "glued", "{section: 90, build: glued" },
	{ "panelled", "{section: 130, build: panelled, panels: {strip_width: 28}" },
	{ "slender", "{section: 80" },
};

static double thread_in(const struct built *b, const char *text)
{
	double deepest = 0;
	for (const struct part *p = b->parts; p; p = p->next)
		for (const struct bore *h = p->bores; p->kind != &part_newel && h; h = h->next)
			if (h->is_mate && strcmp(h->text, text) == 0)
				deepest = fmax(deepest, h->size.depth);
	return deepest;
}

/* 50 mm of thread in wood, 75 mm in what is under a floor's finish: common practice. */
static bool is_bolted(const struct built *b, const struct part *p)
{
	int across = 0;
	for (const struct bore *h = p->bores; h; h = h->next) {
		across += h->fixing == FIXING_BOLT;
		if (h->fixing != FIXING_NEWEL_BOLT)
			continue;
		double beyond = h->fixing_length - h->size.depth;
		if (h->mate.depth > 0 ? thread_in(b, h->text) >= 50 : beyond >= 75)
			return true;
	}
	return across >= 2;
}

static const char *unheld(const struct built *b)
{
	int newels = 0;
	for (const struct part *p = b->parts; p; p = p->next) {
		newels += p->newel != NULL;
		if (p->newel && !is_bolted(b, p))
			return p->mark;
	}
	return newels > 0 ? NULL : "no newel at all";
}

static void every_newel_is_bolted_to_what_it_stands_on(void **state)
{
	int wrong = 0;
	(void)state;
	for (size_t i = 0; i < sizeof(feet) / sizeof(*feet); i++)
		for (size_t k = 0; k < sizeof(builds) / sizeof(*builds); k++) {
			struct arena *a = arena_new();
			struct built b = built_from(arena_printf(a, "%snewels: %s%s}\n",
				feet[i].job, builds[k].newels, feet[i].newels));
			const char *which = b.parts ? unheld(&b) : built_complaint(&b);
			if (which)
				print_error("%s, %s: %s\n", builds[k].what, feet[i].what, which);
			wrong += which != NULL;
			arena_free(b.arena);
			arena_free(a);
		}
	assert_int_equal(wrong, 0);
}

/* The box round a hole, in the axes of its piece. */
static struct extent hole_box(const struct bore *b)
{
	struct extent e = { { INFINITY, INFINITY, INFINITY }, { -INFINITY, -INFINITY, -INFINITY } };
	for (int i = 0; i < 8; i++)
		extent_stretch(&e,
			frame_place(b->at,
				vec3((i & 1 ? 0.5 : -0.5) * b->size.length,
					(i & 2 ? 0.5 : -0.5) * b->size.width,
					i & 4 ? -b->size.depth : 0)));
	return e;
}

static bool holes_meet(const struct bore *one, const struct bore *other)
{
	struct extent a = hole_box(one), b = hole_box(other);
	return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y &&
		b.low.y < a.high.y && a.low.z < b.high.z && b.low.z < a.high.z;
}

/* An access hole leads to its bolt, and a plate has holes. */
static bool has_room_of_its_own(const struct bore *b)
{
	return b->fixing != FIXING_NONE && b->fixing != FIXING_PLATE && b->fixing != FIXING_PLUG;
}

static void holes_in_a_newel_keep_clear_of_each_other(void **state)
{
	int wrong = 0, pairs = 0;
	(void)state;
	for (size_t i = 0; i < sizeof(feet) / sizeof(*feet); i++) {
		struct arena *a = arena_new();
		struct built b = built_from(arena_printf(a, "%snewels: {section: 90%s}\n",
			feet[i].job, feet[i].newels));
		for (const struct part *p = b.parts; p; p = p->next)
			for (const struct bore *h = p->newel ? p->bores : NULL; h; h = h->next)
				for (const struct bore *k = h->next; k; k = k->next) {
					if (!has_room_of_its_own(h) || !has_room_of_its_own(k))
						continue;
					pairs++;
					if (!holes_meet(h, k))
						continue;
					print_error("%s, %s: %s and %s\n", feet[i].what, p->mark,
						h->text, k->text);
					wrong++;
				}
		arena_free(b.arena);
		arena_free(a);
	}
	assert_true(pairs > 50);
	assert_int_equal(wrong, 0);
}

static bool is_solid(const struct built *b, struct vec3 at)
{
	for (const struct part *p = b->parts; p; p = p->next)
		for (int i = 0; i < p->count; i++)
			if (solids_contain(p->solids, frame_place_back(p->places[i], at)))
				return true;
	return false;
}

/* It stands that far out over the header's face, beyond the end of the last riser. */
static bool is_out_over_the_riser(const struct built *b, struct vec3 at)
{
	const struct flight *f = &b->stair->flights[0];
	return at.x > f->total_run && at.x < f->header_x && at.y < 0;
}

/* A hair under its foot, all over it: 4 mm off its faces, clear of what a tread is given to fit. */
static struct vec3 void_under(const struct built *b, const struct part *newel, int place)
{
	double section = newel->newel->section;
	for (int i = 0; i <= 8; i++)
		for (int k = 0; k <= 8; k++) {
			struct vec3 at =
				vec3(-0.5, 4 + (section - 8) * i / 8, 4 + (section - 8) * k / 8);
			at = frame_place(newel->places[place], at);
			if (!is_solid(b, at) && !is_out_over_the_riser(b, at))
				return at;
		}
	return vec3(NAN, NAN, NAN);
}

/* Thinner than a tread, and thicker. */
static const char *const standing[] = {
	ON("0", "open", "mitred}", ""),
	ON("20", "open", "mitred}", ""),
	ON("95", "open", "mitred}", ""),
	ON("20", "open", "mitred}, foot: finished_floor", ""),
	ON("95", "open", "sawtooth, thickness: 38}, foot: finished_floor", ""),
	ON("0", "open", "housed, thickness: 40}", ""),
	ON("20", "open", "housed, thickness: 40}", ""),
	ON("95", "open", "housed, thickness: 40, width: 330}", ""),
	ON("95", "open", "housed, thickness: 40, width: 330}",
		"") "rail: {level_runs: [{side: right, "
		    "direction: on, length: 700}]}\n",
};

static void no_newel_stands_over_a_void(void **state)
{
	int wrong = 0, newels = 0;
	(void)state;
	for (size_t i = 0; i < sizeof(standing) / sizeof(*standing); i++) {
		struct arena *a = arena_new();
		struct built b =
			built_from(arena_printf(a, "%snewels: {section: 90}\n", standing[i]));
		for (const struct part *p = b.parts; p; p = p->next)
			for (int k = 0; p->newel && k < p->count; k++) {
				struct vec3 at = void_under(&b, p, k);
				newels++;
				if (isnan(at.x))
					continue;
				print_error("job %d, %s: a void at %.1f, %.1f, %.1f\n", (int)i,
					p->mark, at.x, at.y, at.z);
				wrong++;
			}
		arena_free(b.arena);
		arena_free(a);
	}
	assert_true(newels >= 2 * 9);
	assert_int_equal(wrong, 0);
}

/* From the finish of 95 the structure is at 2700 - 95. */
static void a_top_newel_stands_on_the_structure_and_the_last_riser_goes_round_it(void **state)
{
	struct built b = built_from(ON("95", "open", "mitred}", "") "newels: {section: 90}\n");
	(void)state;
	const struct part *riser = NULL;
	for (int i = 0; built_part(&b, "riser", i); i++)
		riser = built_part(&b, "riser", i);
	struct extent top = { { 0, 0, -INFINITY }, { 0, 0, 0 } };
	for (int i = 0; built_part(&b, "newel", i); i++)
		for (int k = 0; k < built_part(&b, "newel", i)->count; k++) {
			struct extent e = built_extent(built_part(&b, "newel", i), k);
			top = e.low.z > top.low.z ? e : top;
		}
	assert_near(top.low.z, 2700 - 95, 1e-9);
	assert_non_null(riser->note);
	assert_non_null(strstr(riser->note, "upper right corner cut out round the newel"));
	/* between the foot and the underside of the landing nosing: the newel, not the riser */
	struct vec3 in_both = vec3(top.low.x + 5, top.high.y - 5, 2700 - 30 - 10);
	assert_false(solids_contain(riser->solids,
		frame_place_back(riser->places[riser->count - 1], in_both)));
	arena_free(b.arena);
}

/* Between the strings, from the nosing back to the newels, 1 mm off everything. */
static void the_landing_nosing_closes_the_head_of_a_closed_stair(void **state)
{
	struct built b = built_from(
		ON("20", "open", "housed, thickness: 40}", "") "newels: {section: 90}\n");
	double front = 14 * 250 - 25, back = 14 * 250 + 18;
	(void)state;
	for (double x = front + 1; x < back; x += 3)
		for (double y = 41; y < 850; y += 3)
			assert_true(is_solid(&b, vec3(x, y, 2700 - 15)));
	/* and behind their front it is cut out round them */
	const struct part *nosing = built_part(&b, "landing nosing", 0);
	assert_true(nosing->outline.n == 6);
	assert_non_null(strstr(nosing->note, "corner cut out round the newel: 26 along"));
	arena_free(b.arena);
}

/* Nothing of it stands in front of the newels' faces, so there is nothing to cut out. */
static void without_nosing_and_risers_the_landing_nosing_lies_between_the_newels(void **state)
{
	struct built b = built_from(
		"pitchboard: 1\njob: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 2700}\n"
		"stair: {width: 900, left: wall, right: open, segments: [{risers: 15, run: 250}]}\n"
		"treads: {thickness: 30, nosing: 0, newel_fit: 2}\n"
		"risers: open\n"
		"stringers: {wall: {kind: housed, thickness: 40}, open: {kind: housed, thickness: "
		"40}}\n"
		"newels: {section: 90}\n");
	(void)state;
	const struct part *nosing = built_part(&b, "landing nosing", 0);
	assert_non_null(nosing);
	assert_int_equal(nosing->outline.n, 4);
	/* the newel's inner face is 20 + 45 from the limit; 40 of stringer at the wall */
	assert_near(nosing->size.length, 900 - 65 - 2 - 40, 1e-9);
	arena_free(b.arena);
}

static void the_finish_comes_up_to_the_first_riser_between_closed_strings(void **state)
{
	struct built b = built_from(ON("95", "open", "housed, thickness: 40, width: 330}",
		"") "newels: {section: 90}\n");
	(void)state;
	for (double x = -200; x < -0.5; x += 10)
		for (double y = 61; y < 850; y += 20)
			assert_true(is_solid(&b, vec3(x, y, -40)));
	arena_free(b.arena);
}

static const struct bore *bore_like(const struct part *p, const char *text)
{
	for (const struct bore *b = p->bores; b; b = b->next)
		if (b->text && strcmp(b->text, text) == 0)
			return b;
	return NULL;
}

/* 90 in the newel, 20 of finish, 90 in joist or blocking. */
static void a_bolt_is_longer_by_the_finish_that_a_newel_stands_on(void **state)
{
	struct built low = built_from(STAIR("open", "mitred}", "") "newels: {section: 90}\n");
	struct built high = built_from(
		STAIR("open", "mitred}, foot: finished_floor", "") "newels: {section: 90}\n");
	const char *bolt = "newel bolt, into joist or blocking";
	(void)state;
	assert_near(bore_like(built_part(&low, "newel", 0), bolt)->fixing_length, 180, 1e-9);
	assert_near(bore_like(built_part(&high, "newel", 0), bolt)->fixing_length, 200, 1e-9);
	arena_free(low.arena);
	arena_free(high.arena);
}

static const struct bore *drilled_for(const struct built *b, const char *name, const char *text)
{
	for (int i = 0; built_part(b, name, i); i++)
		if (bore_like(built_part(b, name, i), text))
			return bore_like(built_part(b, name, i), text);
	return NULL;
}

static void a_starting_step_is_bolted_through_its_block_and_into_the_stringer(void **state)
{
	struct built b = built_from(STAIR("open", "mitred, thickness: 32}",
		", starting_step: right") "newels: {section: 120}\n");
	const char *through = "newel bolt, up through riser block and tread";
	const char *lag = "newel bolt, through the tread into the stringer";
	(void)state;
	assert_non_null(drilled_for(&b, "starting tread", through));
	/* the rise of 180 less the tread of 30, and the finish of 20 that comes round it: all
	 * through the block */
	assert_near(drilled_for(&b, "riser block", through)->size.depth, 170, 1e-6);
	const struct bore *thread = drilled_for(&b, "mitred stringer, right hand", lag);
	assert_non_null(thread);
	/* a wood thread wants a smaller hole than the shank that passes the tread */
	assert_near(thread->size.width, 7, 1e-9);
	assert_near(drilled_for(&b, "starting tread", lag)->size.width, 10, 1e-9);
	arena_free(b.arena);
}

static void a_nut_under_a_plug_is_reached_in_a_panel_too(void **state)
{
	struct built b = built_from(STAIR("open", "mitred}",
		"") "newels: {section: 130, build: panelled, let_in: 0,\n"
		    "  panels: {strip_width: 20, rails: [{at: 0, height: 20}, {at: 1, height: "
		    "60}]}}\n"
		    "rail: {level_runs: [{side: right, direction: on, length: 700}]}\n");
	int cores = 0;
	(void)state;
	for (const struct part *p = b.parts; p; p = p->next)
		if (p->newel) {
			assert_non_null(bore_like(p, "to the bolt's nut, plugged"));
			cores++;
		}
	assert_true(cores >= 2);
	arena_free(b.arena);
}

static void a_newel_without_any_fixing_on_its_floor_is_told_of_once(void **state)
{
	struct built b = built_from(
		STAIR("open", "mitred}", "") "newels: {section: 90, floor_fixing: none}\n");
	(void)state;
	assert_int_equal(b.diags.warnings, 1);
	assert_string_equal(built_complaint(&b),
		"newels.floor_fixing: nothing is drilled that holds a newel to its floor");
	arena_free(b.arena);
}

/* A tread of 44 without an overhang, its edge a full round of 22: the newel of 62 stands with its
 * face over the face of the riser, and its dowel before the bolt would come out at 10 to 20 back.
 */
static void no_dowel_of_a_newel_comes_out_in_a_rounded_edge(void **state)
{
	static const char *const noses[] = { "full_round", "eased" };
	(void)state;
	for (int i = 0; i < 2; i++) {
		struct arena *a = arena_new();
		struct built b = built_from(arena_printf(a,
			"pitchboard: 1\njob: {name: Test, units: millimetres}\n"
			"floors: {total_rise: 2212}\n"
			"stair: {width: 1266, left: wall, right: {side: open, from_step: 2},\n"
			"  segments: [{risers: 14, run: 307}]}\n"
			"treads: {thickness: 44, nosing: 0, nosing_profile: %s}\n"
			"stringers: {wall: sawtooth, open: sawtooth}\n"
			"risers: {kind: open}\nnewels: {section: 62}\ninfill: {shoe: yes}\n",
			noses[i]));
		int dowels = 0;
		for (const struct bore *o = built_part(&b, "newel", 0)->bores; o; o = o->next)
			dowels += strcmp(o->text ? o->text : "", "dowel, newel to tread") == 0;
		assert_int_equal(dowels, i == 0 ? 0 : 2);
		arena_free(b.arena);
		arena_free(a);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(every_newel_is_bolted_to_what_it_stands_on),
		cmocka_unit_test(holes_in_a_newel_keep_clear_of_each_other),
		cmocka_unit_test(no_newel_stands_over_a_void),
		cmocka_unit_test(
			a_top_newel_stands_on_the_structure_and_the_last_riser_goes_round_it),
		cmocka_unit_test(the_landing_nosing_closes_the_head_of_a_closed_stair),
		cmocka_unit_test(
			without_nosing_and_risers_the_landing_nosing_lies_between_the_newels),
		cmocka_unit_test(the_finish_comes_up_to_the_first_riser_between_closed_strings),
		cmocka_unit_test(a_bolt_is_longer_by_the_finish_that_a_newel_stands_on),
		cmocka_unit_test(a_starting_step_is_bolted_through_its_block_and_into_the_stringer),
		cmocka_unit_test(a_nut_under_a_plug_is_reached_in_a_panel_too),
		cmocka_unit_test(a_newel_without_any_fixing_on_its_floor_is_told_of_once),
		cmocka_unit_test(no_dowel_of_a_newel_comes_out_in_a_rounded_edge),
	};
	return cmocka_run_group_tests(tests, NULL, NULL);
}
