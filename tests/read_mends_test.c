/* What people type out of habit, and the mend that is offered for it. Messages are pinned whole:
 * they are part of what the user works with. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "read_said.h"

static const struct said_case cases[] = {
	/* clang-format off */
	{ "carriages are counted by middle_count",
		SOUND
		"stringers:\n"
		"  carriages: 1\n",
		"job.yaml:8:3: error: unknown key \"carriages\" in stringers\n"
		"    8 |   carriages: 1\n"
		"      |   ^ did you mean \"middle_count\"?\n"
		"refused\n" },
	{ "so they are at the top level",
		SOUND
		"carriages: 1\n",
		"job.yaml:7:1: error: unknown key \"carriages\" in the file\n"
		"    7 | carriages: 1\n"
		"      | ^ did you mean \"stringers.middle_count\"?\n"
		"refused\n" },
	{ "a stringer has its width in a group of its own",
		SOUND
		"stringers:\n"
		"  stringer_width: 11 1/4\"\n",
		"job.yaml:8:3: error: unknown key \"stringer_width\" in stringers\n"
		"    8 |   stringer_width: 11 1/4\"\n"
		"      |   ^ did you mean \"wall.width\"?\n"
		"refused\n" },
	{ "and its kind",
		SOUND
		"stringers:\n"
		"  kind: housed\n",
		"job.yaml:8:3: error: unknown key \"kind\" in stringers\n"
		"    8 |   kind: housed\n"
		"      |   ^ \"kind\" belongs under wall: or open:\n"
		"refused\n" },
	{ "caps are of the newels' wood",
		SOUND
		"material:\n"
		"  caps: oak\n",
		"job.yaml:8:3: error: unknown key \"caps\" in material\n"
		"    8 |   caps: oak\n"
		"      |   ^ did you mean \"newels\"?\n"
		"refused\n" },
	{ "and what fills the balustrade of the balusters'",
		SOUND
		"material:\n"
		"  infill: oak\n",
		"job.yaml:8:3: error: unknown key \"infill\" in material\n"
		"    8 |   infill: oak\n"
		"      |   ^ did you mean \"balusters\"?\n"
		"refused\n" },
	{ "a number where the middle carriages are described",
		SOUND
		"stringers:\n"
		"  middle: 1\n",
		"job.yaml:8:11: error: stringers.middle: keys are expected here\n"
		"    8 |   middle: 1\n"
		"      |           ^ how many there are is said by middle_count\n"
		"refused\n" },
	{ "a space inside a fraction",
		SOUND
		"treads: {nosing: 1 /8\"}\n",
		"job.yaml:7:18: error: treads.nosing: \"1 /8\"\": cannot read \"/8\"\"\n"
		"    7 | treads: {nosing: 1 /8\"}\n"
		"      |                  ^ no space before the stroke: 1/8\"\n"
		"refused\n" },
	{ "words behind a length",
		SOUND
		"stringers:\n"
		"  spacing: 16\" o.c.\n",
		"job.yaml:8:12: error: stringers.spacing: \"16\" o.c.\": cannot read "
		"\"o.c.\"\n"
		"    8 |   spacing: 16\" o.c.\n"
		"      |            ^ the length alone; behind a space and # you may say what "
		"you like\n"
		"refused\n" },
	{ "a comment as other languages write it",
		SOUND
		"treads:\n"
		"  nosing: 1 1/8\" // oak\n",
		"job.yaml:8:11: error: treads.nosing: \"1 1/8\" // oak\": cannot read \"// "
		"oak\"\n"
		"    8 |   nosing: 1 1/8\" // oak\n"
		"      |           ^ a comment begins with a space and #\n"
		"refused\n" },
	{ "a foot mark for an inch mark",
		SOUND
		"treads:\n"
		"  nosing: 1 1/8'\n",
		"job.yaml:8:11: error: treads.nosing: \"1 1/8'\" was read as 1'-1 1/2\"; it "
		"must be at most 3 1/8\"\n"
		"    8 |   nosing: 1 1/8'\n"
		"      |           ^ 1 1/8' is feet; did you mean 1 1/8\"?\n"
		"refused\n" },
	/* found by fuzzing: the pass behind it once asked a rise that was not there */
	{ "floors without a key that is known",
		"pitchboard: 1\n"
		"job: {name: Test}\n"
		"floors: {hight: 107\"}\n"
		"stair: {width: 36\"}\n"
		"opening: {ceiling_height: 8', floor_thickness: 11\"}\n",
		"job.yaml:3:1: error: floors: total_rise is missing (or structural_rise with both "
		"finishes)\n"
		"    3 | floors: {hight: 107\"}\n"
		"      | ^ finished floor to finished floor\n"
		"job.yaml:3:10: error: unknown key \"hight\" in floors\n"
		"    3 | floors: {hight: 107\"}\n"
		"      |          ^ its keys are total_rise, structural_rise, lower_finish, "
		"upper_finish\n"
		"refused\n" },
	/* clang-format on */
};

int main(void)
{
	return run_said_cases(cases, sizeof(cases) / sizeof(cases[0]));
}
