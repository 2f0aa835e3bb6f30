/*
 * What is refused, and what its message says to write instead: each does away with the message.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "refused.h"

#define JOB                                                                                        \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 2600}\n"

#define OPEN JOB "stair: {width: 900, right: open, segments: [{risers: 14, run: 250}]}\n"
#define SHORT JOB "stair: {width: 900, right: open, segments: [{risers: 14, run: 110}]}\n"

/* The rest of a job, and a word or two of what is said of it. */
struct refusal {
	const char *what, *yaml, *said;
};

static const struct refusal cases[] = {
	/* clang-format off */
	{ "steps of a side counted from above",
		JOB "stair: {width: 900, right: {side: open, from_step: 9, to_step: 3},\n"
		    "  segments: [{risers: 14, run: 250}]}\n",
		"lies below from_step" },
	{ "more carriages than there is room for",
		OPEN "stringers: {middle_count: 20, middle: {thickness: 60}}\n",
		"there is no room for 20 stringers" },
	{ "wedges that leave no wood between housings",
		JOB "stair: {width: 900, segments: [{risers: 8, run: 100}]}\n"
		    "treads: {nosing: 20}\nrisers: {thickness: 40}\n"
		    "stringers: {wall: {kind: housed, width: 600}, wedge_taper: 6}\n",
		"of wood between housings" },
	{ "a starting step at the wall",
		OPEN "treads: {starting_step: {ends: left}}\nstringers: {open: sawtooth}\n",
		"is not open at step 1" },
	{ "a rail too low for balusters",
		OPEN "rail: {height: 300, depth: 200, recess: 10}\n"
		     "infill: {shoe: yes, shoe_depth: 60, shoe_lift: 60}\n",
		"leaves no room for balusters" },
	{ "a run longer than there is room for",
		JOB "stair: {width: 900, segments: [{risers: 14, run: 250, total_run: 3000}]}\n",
		"more than total_run" },
	{ "a side that opens past the last step",
		JOB "stair: {width: 900, right: {side: open, from_step: 20},\n"
		    "  segments: [{risers: 14, run: 250}]}\n",
		"is open from step" },
	{ "a side that is open past the last step",
		JOB "stair: {width: 900, right: {side: open, to_step: 20},\n"
		    "  segments: [{risers: 14, run: 250}]}\n",
		"is open to step" },
	{ "steps lower than a tread is thick",
		JOB "stair: {width: 900, segments: [{risers: 70, run: 250}]}\n"
		     "treads: {thickness: 40}\n",
		"not more than the tread" },
	{ "an opening narrower than its stair",
		OPEN "opening: {length: 3000, width: 800, floor_thickness: 300}\n",
		"narrower than the stair" },
	{ "a nosing radius of more than half the thickness",
		OPEN "treads: {thickness: 30, nosing_radius: 18}\n", "more than half" },
	{ "a chamfer that leaves nothing of an edge",
		OPEN "treads: {thickness: 30, nosing_profile: chamfer, nosing_chamfer: 16}\n",
		"leave nothing" },
	{ "a round that goes back behind the riser",
		OPEN "treads: {thickness: 44, nosing: 0, nosing_profile: full_round}\n",
		"leaves nothing over the riser" },
	{ "a nosing strip narrower than its round",
		OPEN "treads: {thickness: 60, strip_width: 25, side_overhang: 25,\n"
		     "  nosing_profile: full_round}\n",
		"treads.strip_width" },
	{ "a side overhang that does not hold the round",
		OPEN "treads: {thickness: 60, side_overhang: 20, nosing_profile: full_round}\n",
		"treads.side_overhang" },
	{ "a wall that leaves no room for a newel",
		JOB "stair: {width: 900, right: {side: open, from_step: 3, wall_past: 200},\n"
		    "  segments: [{risers: 14, run: 250}]}\n",
		"leaves no room on step" },
	{ "a moulding too wide for its nosing",
		OPEN "mouldings: {under_nosing: cove, under_width: 20}\n"
		     "treads: {nosing: 30, side_overhang: 30, nosing_radius: 12}\n",
		"does not fit under the nosing" },
	{ "a moulding where there is no nosing to speak of",
		OPEN "mouldings: {under_nosing: cove, under_width: 12}\n"
		     "treads: {nosing: 14, side_overhang: 25, nosing_radius: 12}\n",
		"does not fit under the nosing" },
	{ "mouldings before open risers",
		OPEN "risers: {kind: open}\nmouldings: {under_nosing: cove, back: cove}\n",
		"open risers leave nothing" },
	{ "a scotia as wide as high",
		OPEN "mouldings: {under_nosing: scotia, under_width: 12, under_height: 12}\n",
		"higher than it is wide" },
	{ "a dowel in the round of a nosing",
		OPEN "treads: {thickness: 30, nosing: 0, nosing_profile: full_round}\n"
		     "balusters: {section: 20, dowel: 12}\n",
		"into the nosing's round" },
	{ "the dowel of a post in the round of a nosing",
		OPEN "treads: {thickness: 40, nosing: 0, nosing_profile: full_round}\n"
		     "risers: {thickness: 25}\nstringers: {open: sawtooth}\nnewels: {bottom: no}\n"
		     "infill: {kind: panel, panel_held: ends, post: 38, shoe: no}\n",
		"the dowel of a post on a tread" },
	{ "a dowel nearly as thick as its baluster",
		OPEN "balusters: {section: 18, dowel: 16}\n", "leaves too little of a baluster" },
	{ "balusters that run into the nosing above",
		OPEN "balusters: {section: 70, per_tread: 4}\n", "into the nosing above" },
	{ "cross pieces too thick for round balusters",
		OPEN "balusters: {shape: round, section: 32}\n"
		     "infill: {kind: braced, cross_thickness: 25}\n",
		"too thick for round balusters" },
	{ "two rows of cross pieces in one place",
		OPEN "infill: {kind: braced, rows: [{height: 200}, {height: 210}, "
		     "{height: 300}]}\n",
		"run into each other" },
	{ "a row of cross pieces over the rail",
		OPEN "infill: {kind: braced, rows: [{height: 1000}]}\n",
		"runs out of the balusters" },
	{ "a row of cross pieces in the treads",
		OPEN "infill: {kind: braced, shoe: yes, rows: [{height: 20, lie: level}]}\n",
		"runs out of the balusters" },
	{ "a level row over a raked shoe, under others that cannot go as far up",
		OPEN "rail: {height: 850, depth: 76}\n"
		     "infill: {kind: braced, shoe: yes, shoe_depth: 48, shoe_lift: 43,\n"
		     "  rows: [{height: 125, lie: level}, {height: 250}, {height: 470}]}\n",
		"runs out of the balusters" },
	{ "a shoe wider than its newels",
		OPEN "newels: {section: 60}\ninfill: {shoe: yes, strip_width: 80}\n",
		"wider than the newels" },
	{ "a plough through a shoe",
		OPEN "infill: {shoe: yes, shoe_depth: 25, plough: 24}\n", "goes through" },
	{ "a shoe as wide as its balusters",
		OPEN "balusters: {section: 40}\ninfill: {shoe: yes, strip_width: 42}\n",
		"leaves no wood beside a plough" },
	{ "a panel that drops out of its plough",
		OPEN "infill: {kind: panel, shoe: yes, subrail: yes, plough: 8, panel_gap: 6}\n",
		"drops out" },
	{ "more bars than there is room for",
		OPEN "infill: {kind: bars, bars: 50, bar_width: 40}\n", "do not fit under" },
	{ "a post that does not stand on a tread",
		SHORT "treads: {nosing: 35}\nnewels: {section: 60}\n"
		      "infill: {kind: bars, post: 80, post_spacing: 600}\n",
		"does not stand on a tread" },
	{ "a newel that does not stand on a tread",
		JOB "stair: {width: 900, right: {side: open, from_step: 3},\n"
		    "  segments: [{risers: 14, run: 120}]}\nnewels: {section: 110}\n",
		"newel" },
	{ "a rail too thin for what ends at it",
		OPEN "rail: {profile: round, width: 40, depth: 40}\nbalusters: {section: 40}\n",
		"its underside is flat for" },
	{ "a finger recess that leaves no neck",
		OPEN "rail: {width: 50, recess: 20}\n", "rail.recess" },
	{ "edges eased more than a moulded foot has",
		OPEN "rail: {edge_radius: 8}\nwall_rails: [{side: left, edge_radius: 8}]\n",
		"rail.edge_radius" },
	{ "a bolt over the wood of its rail",
		OPEN "rail: {depth: 90, joint: bolt, bolt: {height: 80}}\n", "its bolts come out" },
	{ "a bolt in a rail where no height that is lettered has wood",
		OPEN "rail: {depth: 41.4, joint: bolt, bolt: {height: 80}}\n",
		"its bolts come out" },
	{ "a bolt in a rail too shallow for any",
		OPEN "rail: {profile: flat_oval, depth: 25, joint: bolt}\n", "its bolts come out" },
	{ "a bolt too long for its newel",
		OPEN "newels: {section: 60}\nrail: {bolt: {length: 150}}\n",
		"does not find room for its half" },
	{ "a quarter-round beyond its cap",
		OPEN "newels: {cap: {kind: flat, overhang: 5, quarter_round: 12}}\n",
		"shows beyond the overhang" },
	{ "a chamfer as deep as its cap",
		OPEN "newels: {cap: {kind: chamfered, thickness: 15, chamfer: 20}}\n",
		"leaves nothing of an edge" },
	{ "a rail that runs into a cap",
		OPEN "newels: {above_rail: 2, cap: {kind: flat, overhang: 15, "
		     "quarter_round: 15}}\n",
		"the rail runs into the cap" },
	{ "strips that leave no face of a newel",
		OPEN "newels: {section: 90, build: panelled, panels: {strip_width: 44}}\n",
		"two strips of" },
	{ "strips that leave no core",
		OPEN "newels: {section: 70, build: panelled, panels: {strip_width: 20, "
		     "strip_thickness: 30}}\n",
		"leave a core of" },
	{ "a riser bar as high as the gap",
		OPEN "risers: {kind: open, bar: 160}\n", "fills the gap" },
	{ "a riser bar thicker than its nosing is flat",
		OPEN "risers: {kind: open, bar: 40, bar_thickness: 22}\n",
		"stands out from under" },
	{ "a plank that is cut through",
		OPEN "stringers: {open: {kind: sawtooth, width: 150}}\n", "leaves a throat" },
	{ "a plank too narrow for housings",
		OPEN "stringers: {wall: {kind: housed, width: 150}}\n", "too narrow for margin" },
	{ "housings through a stringer",
		OPEN "stringers: {wall: {kind: housed, thickness: 20}, housing_depth: 25}\n",
		"go through a stringer" },
	{ "a thrust block under a low step",
		OPEN "stringers: {foot: finished_floor, thrust_block: {thickness: 98, width: 80}}\n"
		     "treads: {thickness: 90}\n",
		"does not go under the first tread" },
	{ "a skirt thicker than the gap behind its carriage",
		OPEN "stringers: {wall_gap: 10}\nskirts: {wall: plain, thickness: 20}\n",
		"behind the stringer there is" },
	{ "a mitred skirt without risers",
		OPEN "risers: {kind: open}\nskirts: {open: mitred}\n", "nothing to mitre it to" },
	{ "a level run over its opening",
		OPEN "opening: {length: 3000, width: 1100, floor_thickness: 300}\n"
		     "rail: {level_runs: [{side: right, direction: back, length: 2000},\n"
		     "  {side: right, direction: across, length: 700}]}\n",
		"stands over the opening" },
	{ "a level run that bars the one before it",
		OPEN "rail: {level_runs: [{side: right, direction: on, length: 900},\n"
		     "  {side: right, direction: back, length: 700}]}\n",
		"goes back over the one before it" },
	{ "a level run into the wall on the other side",
		OPEN "opening: {length: 3000, floor_thickness: 300}\n"
		     "rail: {level_runs: [{side: right, direction: back, length: 4000},\n"
		     "  {side: right, direction: across, length: 1500}]}\n",
		"goes into the wall" },
	{ "a cap on a level run that reaches into the raked rail beside it",
		OPEN "risers: {thickness: 12}\nstringers: {open: housed}\n"
		     "newels: {section: 62, above_rail: 38, top: no, "
		     "cap: {kind: flat, on: top, overhang: 14}}\n"
		     "rail: {height: 932, level_runs: [{side: right, direction: back, "
		     "length: 1720, height: 859}]}\n",
		"runs into the raked rail" },
	{ "a starting step that reaches out too little",
		OPEN "treads: {nosing: 30, starting_step: {ends: right, radius: 32}}\n"
		     "stringers: {open: sawtooth}\n",
		"leaves no block" },
	{ "a notch in a step that is not there",
		OPEN "treads: {notches: [{step: 20, at: back, from: 200, along: 50, "
		     "across: 30}]}\n",
		"there is no step" },
	{ "a notch longer than its tread is wide",
		OPEN "treads: {notches: [{step: 5, at: left, along: 600, across: 30}]}\n"
		     "stringers: {wall: sawtooth}\n",
		"too long for the tread" },
	{ "a notch deeper than its tread",
		OPEN "treads: {notches: [{step: 5, at: left, along: 60, across: 260}]}\n"
		     "stringers: {wall: sawtooth}\n",
		"too deep for the tread" },
	/* clang-format on */
};

static void mended_by_what_is_said(void **state)
{
	const struct refusal *c = *state;
	struct arena *a = arena_new();
	struct refused r = refused_try(a, c->yaml);
	struct diags d = complaints(a, c->yaml);
	bool said = false;
	for (const struct diag *e = d.first; e; e = e->next)
		said = said || (e->level == DIAG_ERROR && strstr(e->text, c->said));
	if (!said || r.why || r.mended < r.messages)
		print_message("%s: %s\n", r.why ? r.why : "not said, or without a mend",
			d.first ? d.first->text : "drawn");
	assert_true(said);
	assert_null(r.why);
	assert_int_equal(r.mended, r.messages);
	arena_free(a);
}

int main(void)
{
	enum { N = sizeof(cases) / sizeof(cases[0]) };
	struct CMUnitTest tests[N];
	for (int i = 0; i < N; i++)
		tests[i] = (struct CMUnitTest){ cases[i].what, mended_by_what_is_said, NULL, NULL,
			(void *)&cases[i] };
	return cmocka_run_group_tests(tests, NULL, NULL);
}
