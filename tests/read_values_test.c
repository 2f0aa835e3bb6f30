/* Keys that are unknown, values that are wrong in themselves. Messages are pinned whole: they are
 * part of what the user works with. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "read_said.h"

static const struct said_case cases[] = {
	/* clang-format off */
	{ "every mistake is reported in one run, in the order of the file",
		"pitchboard: 1\n"
		"job:\n"
		"  name: Test\n"
		"  date: 2026-02-30\n"
		"  colour: red\n"
		"floors:\n"
		"  total_rise: tall\n"
		"stair:\n"
		"  width: 36 mm\n"
		"  left: opne\n"
		"rail:\n"
		"  hieght: 36\"\n"
		"treads:\n"
		"  nosing: 75/8\n"
		"  thickness: 1 1/16\" #5/4 oak\n"
		"ballusters: {}\n",
		"job.yaml:4:9: error: job.date: \"2026-02-30\" is not a date\n"
		"    4 |   date: 2026-02-30\n"
		"      |         ^ a date looks like 2026-11-02: year, month, day\n"
		"job.yaml:5:3: error: unknown key \"colour\" in job\n"
		"    5 |   colour: red\n"
		"      |   ^ `pitchboard keys` prints those there are\n"
		"job.yaml:7:15: error: floors.total_rise: \"tall\" is not a length\n"
		"    7 |   total_rise: tall\n"
		"      |               ^ a length looks like 7 5/8\", 5'-6 1/2\" or 194 mm\n"
		"job.yaml:9:10: error: stair.width: \"36 mm\" was read as 1 7/16\"; it must "
		"be between 1'-0\" and 16'-4\"\n"
		"    9 |   width: 36 mm\n"
		"      |          ^\n"
		"job.yaml:10:9: error: stair.left.side: \"opne\" is not known here\n"
		"   10 |   left: opne\n"
		"      |         ^ did you mean \"open\"?\n"
		"job.yaml:12:3: error: unknown key \"hieght\" in rail\n"
		"   12 |   hieght: 36\"\n"
		"      |   ^ did you mean \"height\"?\n"
		"job.yaml:14:11: error: treads.nosing: \"75/8\" was read as 9 3/8\"\n"
		"   14 |   nosing: 75/8\n"
		"      |           ^ did you mean 7 5/8\"?\n"
		"job.yaml:15:14: warning: \"#5/4 oak\" is taken as a comment; the value is "
		"only \"1 1/16\"\"\n"
		"   15 |   thickness: 1 1/16\" #5/4 oak\n"
		"      |              ^ quote the whole value if \"#5/4 oak\" belongs to it\n"
		"job.yaml:16:1: error: unknown key \"ballusters\" in the file\n"
		"   16 | ballusters: {}\n"
		"      | ^ did you mean \"balusters\"?\n"
		"refused\n" },
	{ "a misspelt key",
		SOUND
		"rail:\n"
		"  hieght: 36\"\n",
		"job.yaml:8:3: error: unknown key \"hieght\" in rail\n"
		"    8 |   hieght: 36\"\n"
		"      |   ^ did you mean \"height\"?\n"
		"refused\n" },
	{ "case, hyphens and underlines make no other key",
		SOUND
		"treads:\n"
		"  Nosing-Radius: 1/2\"\n",
		"job.yaml:8:3: error: unknown key \"Nosing-Radius\" in treads\n"
		"    8 |   Nosing-Radius: 1/2\"\n"
		"      |   ^ did you mean \"nosing_radius\"?\n"
		"refused\n" },
	{ "another word of the trade",
		SOUND
		"stringers:\n"
		"  wall: housed\n"
		"handrail:\n"
		"  height: 36\"\n",
		"job.yaml:9:1: error: unknown key \"handrail\" in the file\n"
		"    9 | handrail:\n"
		"      | ^ did you mean \"rail\"?\n"
		"refused\n" },
	{ "another word of the trade for a kind",
		SOUND
		"stringers:\n"
		"  open: closed\n",
		"job.yaml:8:9: error: stringers.open.kind: \"closed\" is not known here\n"
		"    8 |   open: closed\n"
		"      |         ^ did you mean \"housed\"?\n"
		"refused\n" },
	{ "a key in the wrong group says where it belongs",
		SOUND
		"treads:\n"
		"  risers: 14\n"
		"  wedge_taper: 12\n",
		"job.yaml:8:3: error: unknown key \"risers\" in treads\n"
		"    8 |   risers: 14\n"
		"      |   ^ \"risers\" is a key of the top level, stair.segments, material\n"
		"job.yaml:9:3: error: unknown key \"wedge_taper\" in treads\n"
		"    9 |   wedge_taper: 12\n"
		"      |   ^ \"wedge_taper\" is a key of stringers\n"
		"refused\n" },
	{ "a key that resembles nothing",
		SOUND
		"rail:\n"
		"  qqqqqq: 1\n"
		"qqqqqqqqqq: 1\n",
		"job.yaml:8:3: error: unknown key \"qqqqqq\" in rail\n"
		"    8 |   qqqqqq: 1\n"
		"      |   ^ `pitchboard keys` prints those there are\n"
		"job.yaml:9:1: error: unknown key \"qqqqqqqqqq\" in the file\n"
		"    9 | qqqqqqqqqq: 1\n"
		"      | ^ `pitchboard keys` prints those there are\n"
		"refused\n" },
	{ "a size out of range says what it was read as",
		SOUND
		"rail:\n"
		"  height: 910\n",
		"job.yaml:8:11: error: rail.height: \"910\" was read as 75'-10\"; it must be "
		"between 1'-0\" and 4'-11\"\n"
		"    8 |   height: 910\n"
		"      |           ^ did you mean 910 mm?\n"
		"refused\n" },
	{ "and in millimetres",
		"pitchboard: 1\n"
		"job: {name: Test, units: millimetres}\n"
		"floors: {total_rise: 107}\n"
		"stair: {width: 36}\n",
		"job.yaml:3:22: error: floors.total_rise: \"107\" was read as 107 mm; it "
		"must be between 150 mm and 40000 mm\n"
		"    3 | floors: {total_rise: 107}\n"
		"      |                      ^ did you mean 107\"?\n"
		"job.yaml:4:16: error: stair.width: \"36\" was read as 36 mm; it must be "
		"between 300 mm and 5000 mm\n"
		"    4 | stair: {width: 36}\n"
		"      |                ^ did you mean 36\"?\n"
		"refused\n" },
	{ "a misspelt unit is complained of once",
		"pitchboard: 1\n"
		"job: {name: Test, units: milimeters}\n"
		"floors: {total_rise: 2718}\n"
		"stair: {width: 900}\n",
		"job.yaml:2:26: error: job.units: \"milimeters\" is not known here\n"
		"    2 | job: {name: Test, units: milimeters}\n"
		"      |                          ^ did you mean \"millimetres\"?\n"
		"refused\n" },
	{ "a size that is too large either way",
		SOUND
		"treads:\n"
		"  nosing: 2743\n",
		"job.yaml:8:11: error: treads.nosing: \"2743\" was read as 228'-7\"; it must "
		"be at most 3 1/8\"\n"
		"    8 |   nosing: 2743\n"
		"      |           ^\n"
		"refused\n" },
	{ "a missing space in a fraction",
		SOUND
		"floors_: 1\n"
		"treads:\n"
		"  nosing: 75/8\n",
		"job.yaml:7:1: error: unknown key \"floors_\" in the file\n"
		"    7 | floors_: 1\n"
		"      | ^ did you mean \"floors\"?\n"
		"job.yaml:9:11: error: treads.nosing: \"75/8\" was read as 9 3/8\"\n"
		"    9 |   nosing: 75/8\n"
		"      |           ^ did you mean 7 5/8\"?\n"
		"refused\n" },
	{ "counts are whole numbers",
		SOUND
		"balusters: {per_tread: 2.5}\n"
		"stringers: {middle_count: 0x2}\n"
		"stair_: 1\n",
		"job.yaml:7:24: error: balusters.per_tread: \"2.5\" is not a whole number\n"
		"    7 | balusters: {per_tread: 2.5}\n"
		"      |                        ^\n"
		"job.yaml:8:27: error: stringers.middle_count: \"0x2\" is not a whole number\n"
		"    8 | stringers: {middle_count: 0x2}\n"
		"      |                           ^\n"
		"job.yaml:9:1: error: unknown key \"stair_\" in the file\n"
		"    9 | stair_: 1\n"
		"      | ^ did you mean \"stair\"?\n"
		"refused\n" },
	{ "a count out of range",
		SOUND
		"balusters: {per_tread: 40}\n",
		"job.yaml:7:24: error: balusters.per_tread: 40 is out of range; it must be "
		"between 1 and 10\n"
		"    7 | balusters: {per_tread: 40}\n"
		"      |                        ^\n"
		"refused\n" },
	{ "numbers are plain decimals",
		SOUND
		"stringers: {wedge_taper: nan}\n",
		"job.yaml:7:26: error: stringers.wedge_taper: \"nan\" is not a number\n"
		"    7 | stringers: {wedge_taper: nan}\n"
		"      |                          ^\n"
		"refused\n" },
	{ "a printer that is too far out is refused",
		SOUND
		"sheets: {printer_x: 0.969, printer_y: 1.031}\n",
		"job.yaml:7:21: error: sheets.printer_x: 0.969 is out of range; it must be "
		"between 0.97 and 1.03\n"
		"    7 | sheets: {printer_x: 0.969, printer_y: 1.031}\n"
		"      |                     ^\n"
		"job.yaml:7:39: error: sheets.printer_y: 1.031 is out of range; it must be "
		"between 0.97 and 1.03\n"
		"    7 | sheets: {printer_x: 0.969, printer_y: 1.031}\n"
		"      |                                       ^\n"
		"refused\n" },
	{ "a date must exist",
		SOUND
		"revisions:\n"
		"  - {mark: A, date: 2026-02-29, text: first}\n"
		"  - {mark: B, date: 2028-02-29, text: leap year}\n"
		"  - {mark: C, date: 2.11.2026, text: other order}\n",
		"job.yaml:8:21: error: revisions.date: \"2026-02-29\" is not a date\n"
		"    8 |   - {mark: A, date: 2026-02-29, text: first}\n"
		"      |                     ^ a date looks like 2026-11-02: year, month, day\n"
		"job.yaml:10:21: error: revisions.date: \"2.11.2026\" is not a date\n"
		"   10 |   - {mark: C, date: 2.11.2026, text: other order}\n"
		"      |                     ^ a date looks like 2026-11-02: year, month, day\n"
		"refused\n" },
	{ "yes and no",
		SOUND
		"newels: {bottom: perhaps, top: no}\n",
		"job.yaml:7:18: error: newels.bottom: \"perhaps\" is neither yes nor no\n"
		"    7 | newels: {bottom: perhaps, top: no}\n"
		"      |                  ^ yes or no\n"
		"refused\n" },
	{ "a value where keys belong",
		SOUND
		"stringers: {thrust_block: 3}\n",
		"job.yaml:7:27: error: stringers.thrust_block: keys are expected here\n"
		"    7 | stringers: {thrust_block: 3}\n"
		"      |                           ^ its keys are thickness, width\n"
		"refused\n" },
	{ "keys where a value belongs",
		SOUND
		"rail: {height: {mm: 900}, width: [2\"]}\n",
		"job.yaml:7:8: error: rail.height: one value is expected, not further keys\n"
		"    7 | rail: {height: {mm: 900}, width: [2\"]}\n"
		"      |        ^ plumb, nosing line to top of rail\n"
		"job.yaml:7:27: error: rail.width: one value is expected, not a list\n"
		"    7 | rail: {height: {mm: 900}, width: [2\"]}\n"
		"      |                           ^ width of its section\n"
		"refused\n" },
	{ "keys where a list belongs",
		SOUND
		"revisions: {mark: A}\n",
		"job.yaml:7:1: error: revisions: a list is expected\n"
		"    7 | revisions: {mark: A}\n"
		"      | ^ each entry begins with a dash and a space\n"
		"refused\n" },
	{ "an empty value",
		SOUND
		"rail: {height: }\n",
		"job.yaml:7:16: error: rail.height: has no value\n"
		"    7 | rail: {height: }\n"
		"      |                ^ give a value, or delete the line\n"
		"refused\n" },
	{ "an empty text is a form not filled in",
		"pitchboard: 1\n"
		"job:\n"
		"  name: Test\n"
		"  client:\n"
		"floors: {total_rise: 107\"}\n"
		"stair: {width: 36\"}\n",
		"" },
	{ "an empty required text is not",
		"pitchboard: 1\n"
		"job:\n"
		"  name:\n"
		"floors: {total_rise: 107\"}\n"
		"stair: {width: 36\"}\n",
		"job.yaml:3:8: error: job.name: has no value\n"
		"    3 |   name:\n"
		"      |        ^ give a value, or delete the line\n"
		"refused\n" },
	{ "a text too long for its place",
		SOUND
		"material: {treads: a wood with quite an extraordinarily long name}\n",
		"job.yaml:7:20: error: material.treads: at most 40 characters fit, these are "
		"46\n"
		"    7 | material: {treads: a wood with quite an extraordinarily long name}\n"
		"      |                    ^\n"
		"refused\n" },
	{ "a text on two lines",
		SOUND
		"material:\n"
		"  finish: |\n"
		"    oil\n"
		"    and wax\n",
		"job.yaml:8:11: error: material.finish: a text stays on one line, without "
		"control characters\n"
		"    8 |   finish: |\n"
		"      |           ^\n"
		"refused\n" },
	{ "missing keys say what they are",
		"pitchboard: 1\n"
		"job: {}\n"
		"floors: {}\n"
		"stair: {}\n",
		"job.yaml:2:1: error: job.name is missing\n"
		"    2 | job: {}\n"
		"      | ^ name of the job, for the title block\n"
		"job.yaml:3:1: error: floors: total_rise is missing (or structural_rise with "
		"both finishes)\n"
		"    3 | floors: {}\n"
		"      | ^ finished floor to finished floor\n"
		"job.yaml:4:1: error: stair.width is missing\n"
		"    4 | stair: {}\n"
		"      | ^ between the two sides: finished wall, or outer face of the open "
		"stringer\n"
		"refused\n" },
	{ "missing groups too",
		"pitchboard: 1\n",
		"job.yaml:1:1: error: job is missing\n"
		"    1 | pitchboard: 1\n"
		"      | ^ what the title block says\n"
		"job.yaml:1:1: error: floors is missing\n"
		"    1 | pitchboard: 1\n"
		"      | ^ the height to climb\n"
		"job.yaml:1:1: error: stair is missing\n"
		"    1 | pitchboard: 1\n"
		"      | ^ the stair on plan\n"
		"refused\n" },
	{ "a later version of the format",
		"pitchboard: 2\n"
		"job: {name: Test}\n"
		"floors: {total_rise: 107\"}\n"
		"stair: {width: 36\"}\n",
		"job.yaml:1:13: error: pitchboard: this program reads version 1 of the "
		"format, not 2\n"
		"    1 | pitchboard: 2\n"
		"      |             ^\n"
		"refused\n" },
	/* clang-format on */
};

int main(void)
{
	return run_said_cases(cases, sizeof(cases) / sizeof(cases[0]));
}
