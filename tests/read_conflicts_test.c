/* Keys that are fine alone and cannot be together. Messages are pinned whole: they are part of what
 * the user works with. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "read_said.h"

static const struct said_case cases[] = {
	/* clang-format off */
	{ "the rise is given once",
		"pitchboard: 1\n"
		"job: {name: Test}\n"
		"floors: {total_rise: 107\", structural_rise: 107\", lower_finish: 0, "
		"upper_finish: 0}\n"
		"stair: {width: 36\"}\n",
		"job.yaml:3:45: error: floors: total_rise and structural_rise cannot both be "
		"given\n"
		"    3 | floors: {total_rise: 107\", structural_rise: 107\", lower_finish: "
		"0, upper_finish: 0}\n"
		"      |                                             ^ keep the one you "
		"measured\n"
		"refused\n" },
	{ "a structural rise needs both finishes",
		"pitchboard: 1\n"
		"job: {name: Test}\n"
		"floors: {structural_rise: 107\"}\n"
		"stair: {width: 36\"}\n",
		"job.yaml:3:27: error: floors: structural_rise needs lower_finish too\n"
		"    3 | floors: {structural_rise: 107\"}\n"
		"      |                           ^ write 0 where nothing is laid on the "
		"structural floor\n"
		"job.yaml:3:27: error: floors: structural_rise needs upper_finish too\n"
		"    3 | floors: {structural_rise: 107\"}\n"
		"      |                           ^ write 0 where nothing is laid on the "
		"structural floor\n"
		"refused\n" },
	{ "a finish may be nothing",
		"pitchboard: 1\n"
		"job: {name: Test}\n"
		"floors: {structural_rise: 107\", lower_finish: 0, upper_finish: 3/4\"}\n"
		"stair: {width: 36\"}\n",
		"" },
	{ "an opening needs the thickness of the floor",
		SOUND
		"opening: {length: 10'}\n",
		"job.yaml:7:19: error: opening: floor_thickness or ceiling_height is missing\n"
		"    7 | opening: {length: 10'}\n"
		"      |                   ^ without it the headroom under the opening's "
		"edge cannot be found\n"
		"refused\n" },
	{ "ceiling and floor add up to the rise",
		SOUND
		"opening: {ceiling_height: 8', floor_thickness: 12\"}\n",
		"job.yaml:7:48: error: opening: ceiling_height and floor_thickness add up to "
		"9'-0\", the rise is 8'-11\"\n"
		"    7 | opening: {ceiling_height: 8', floor_thickness: 12\"}\n"
		"      |                                                ^ measure again, or "
		"give only one of the two\n"
		"refused\n" },
	{ "within what a tape shows",
		SOUND
		"opening: {ceiling_height: 8', floor_thickness: 10 15/16\"}\n",
		"" },
	{ "a ceiling lies below the floor over it",
		SOUND
		"opening: {ceiling_height: 9'}\n",
		"job.yaml:7:27: error: opening.ceiling_height: 9'-0\" is not below the upper "
		"floor at 8'-11\"\n"
		"    7 | opening: {ceiling_height: 9'}\n"
		"      |                           ^ it is measured from the lower finished floor, "
		"under the upper one\n"
		"refused\n" },
	{ "a stair fits into its opening",
		SOUND
		"opening: {width: 35\"}\n",
		"job.yaml:7:18: error: opening.width: 2'-11\" is narrower than the stair, "
		"3'-0\"\n"
		"    7 | opening: {width: 35\"}\n"
		"      |                  ^ measure again, or write opening.width: 3'-0\"\n"
		"refused\n" },
	{ "a wall has no open steps",
		"pitchboard: 1\n"
		"job: {name: Test}\n"
		"floors: {total_rise: 107\"}\n"
		"stair:\n"
		"  width: 36\"\n"
		"  right: {side: wall, from_step: 3}\n"
		"  left: {side: open, from_step: 9, to_step: 6}\n",
		"job.yaml:6:17: error: stair.right: a wall has no open steps\n"
		"    6 |   right: {side: wall, from_step: 3}\n"
		"      |                 ^ write side: open, with from_step and to_step for "
		"the open part\n"
		"job.yaml:7:45: error: stair.left: to_step 6 lies below from_step 9\n"
		"    7 |   left: {side: open, from_step: 9, to_step: 6}\n"
		"      |                                             ^ steps are counted from the "
		"bottom: write stair.left.to_step: 9\n"
		"refused\n" },
	{ "landings and winders are refused, not ignored",
		"pitchboard: 1\n"
		"job: {name: Test}\n"
		"floors: {total_rise: 107\"}\n"
		"stair:\n"
		"  width: 36\"\n"
		"  segments:\n"
		"    - kind: flight\n"
		"    - kind: landing\n"
		"    - kind: winder\n"
		"    - {risers: 5}\n",
		"job.yaml:8:13: error: stair.segments: a landing is drawn in a later version\n"
		"    8 |     - kind: landing\n"
		"      |             ^ this version draws one straight flight\n"
		"job.yaml:9:13: error: stair.segments: a winder is drawn in a later version\n"
		"    9 |     - kind: winder\n"
		"      |             ^ this version draws one straight flight\n"
		"job.yaml:10:7: error: stair.segments: a second flight is drawn in a later "
		"version\n"
		"   10 |     - {risers: 5}\n"
		"      |       ^ this version draws one straight flight\n"
		"refused\n" },
	{ "limits are in order",
		SOUND
		"comfort: {least_rise: 8\", step_wanted: 30\", most_run: 9\"}\n",
		"job.yaml:7:23: error: comfort: least_rise (8\") is more than most_rise (7 "
		"3/4\")\n"
		"    7 | comfort: {least_rise: 8\", step_wanted: 30\", most_run: 9\"}\n"
		"      |                       ^\n"
		"job.yaml:7:40: error: comfort: step_wanted (2'-6\") is more than step_most "
		"(2'-1 1/2\")\n"
		"    7 | comfort: {least_rise: 8\", step_wanted: 30\", most_run: 9\"}\n"
		"      |                                        ^\n"
		"job.yaml:7:55: error: comfort: least_run (10\") is more than most_run (9\")\n"
		"    7 | comfort: {least_rise: 8\", step_wanted: 30\", most_run: 9\"}\n"
		"      |                                                       ^\n"
		"refused\n" },
	{ "planks on offer ascend",
		SOUND
		"stringers:\n"
		"  stock_widths: [7 1/4\", 5 1/2\"]\n"
		"  stock_lengths: []\n",
		"job.yaml:8:3: error: stringers.stock_widths: 5 1/2\" comes after 7 1/4\"\n"
		"    8 |   stock_widths: [7 1/4\", 5 1/2\"]\n"
		"      |   ^ smallest first, each once\n"
		"job.yaml:9:3: error: stringers.stock_lengths: the list is empty\n"
		"    9 |   stock_lengths: []\n"
		"      |   ^\n"
		"refused\n" },
	/* 36 - 1 1/2 - 3/4 - 5/8 = 33 1/8 between the outer two */
	{ "so many carriages keep to the spacing",
		SOUND
		"stringers: {middle_count: 1, spacing: 16\"}\n",
		"job.yaml:7:27: warning: stringers: with middle_count 1 they stand 1'-4 9/16\" "
		"apart, more than spacing, 1'-4\"\n"
		"    7 | stringers: {middle_count: 1, spacing: 16\"}\n"
		"      |                           ^ write stringers.middle_count: 2\n" },
	{ "and may",
		SOUND
		"stringers: {middle_count: 1, spacing: 17\"}\n",
		"" },
	/* 36 - 1 1/4 = 34 3/4 from centre to centre, more than 750 mm */
	{ "open treads that nothing carries between closed stringers are thick",
		SOUND
		"stringers: {wall: housed, open: housed}\n"
		"risers: {kind: open}\n",
		"job.yaml:8:16: warning: treads: on open risers 1 1/16\" of wood span 2'-10 3/4\" "
		"from stringer to stringer, and nothing carries them between\n"
		"    8 | risers: {kind: open}\n"
		"      |                ^ make the treads 1 1/2\" or more (NBC 9.8.9.5, second "
		"hand), or write stringers.middle_count: 1\n" },
	{ "and may be",
		SOUND
		"stringers: {wall: housed, open: housed}\n"
		"risers: {kind: open}\n"
		"treads: {thickness: 1 1/2\"}\n",
		"" },
	{ "a mitred stringer stands at an open side",
		SOUND
		"stringers: {wall: mitred}\n",
		"job.yaml:7:19: error: stringers.wall: a mitred stringer belongs at an open "
		"side\n"
		"    7 | stringers: {wall: mitred}\n"
		"      |                   ^ sawtooth or housed; its mitres would face the "
		"wall\n"
		"refused\n" },
	{ "strips are as wide as the overhang",
		SOUND
		"treads: {strip_width: 1\"}\n",
		"job.yaml:7:23: error: treads: side_overhang (1 1/4\") is more than "
		"strip_width (1\")\n"
		"    7 | treads: {strip_width: 1\"}\n"
		"      |                       ^\n"
		"refused\n" },
	{ "a nosing is no rounder than its tread is thick",
		SOUND
		"treads: {thickness: 1\", nosing_radius: 9/16\"}\n",
		"job.yaml:7:40: error: treads.nosing_radius: 9/16\" is more than half the "
		"thickness of 1\"\n"
		"    7 | treads: {thickness: 1\", nosing_radius: 9/16\"}\n"
		"      |                                        ^ write "
		"treads.nosing_radius: 1/2\"\n"
		"refused\n" },
	{ "open risers have no thickness",
		SOUND
		"risers: {kind: open, thickness: 3/4\"}\n",
		"job.yaml:7:33: error: risers: open risers have no thickness\n"
		"    7 | risers: {kind: open, thickness: 3/4\"}\n"
		"      |                                 ^ leave it out, or write kind: board\n"
		"refused\n" },
	{ "a graduation that is on the rule",
		"pitchboard: 1\n"
		"job: {name: Test, fraction: 10}\n"
		"floors: {total_rise: 107\"}\n"
		"stair: {width: 36\"}\n",
		"job.yaml:2:29: error: job.fraction: 10 is no graduation of a rule\n"
		"    2 | job: {name: Test, fraction: 10}\n"
		"      |                             ^ 8, 16, 32 or 64 to the inch\n"
		"refused\n" },
	{ "and on the metric one",
		"pitchboard: 1\n"
		"job: {name: Test, units: millimetres, fraction: 16}\n"
		"floors: {total_rise: 2718}\n"
		"stair: {width: 900}\n",
		"job.yaml:2:49: error: job.fraction: 16 is no graduation of a rule\n"
		"    2 | job: {name: Test, units: millimetres, fraction: 16}\n"
		"      |                                                 ^ 1, 2 or 10 to the "
		"millimetre\n"
		"refused\n" },
	{ "a size said to be measured is in the job",
		SOUND
		"measured: {by: me, date: 2026-11-01, sizes: [width, opening_length, hight]}\n",
		"job.yaml:7:38: warning: measured.sizes: opening_length is not given in this "
		"job\n"
		"    7 | measured: {by: me, date: 2026-11-01, sizes: [width, opening_length, "
		"hight]}\n"
		"      |                                      ^\n"
		"job.yaml:7:69: error: measured.sizes: \"hight\" is not known here\n"
		"    7 | measured: {by: me, date: 2026-11-01, sizes: [width, opening_length, "
		"hight]}\n"
		"      |                                                                     "
		"^ one of all, total_rise, structural_rise, width, total_run, "
		"opening_length, opening_width, floor_thickness, ceiling_height, "
		"upper_ceiling_height, foot_landing_depth, foot_landing_width, "
		"head_landing_depth, head_landing_width or notches\n"
		"refused\n" },
	/* clang-format on */
};

int main(void)
{
	return run_said_cases(cases, sizeof(cases) / sizeof(cases[0]));
}
