/* Indentation, brackets, missing colons. Messages are pinned whole: they are part of what the user
 * works with. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "read_said.h"

static const struct said_case cases[] = {
	/* clang-format off */
	{ "a value that runs into the next line",
		SOUND
		"treads:\n"
		"  nosing: 1\n"
		"    1/8\"\n",
		"job.yaml:8:11: error: treads.nosing: \"1 1/8\"\" runs over two lines\n"
		"    8 |   nosing: 1\n"
		"      |           ^ it was joined with the next line: check the indentation "
		"there\n"
		"refused\n" },
	{ "a tab before a key",
		SOUND
		"treads:\n"
		"\tnosing: 1\"\n",
		"job.yaml:8:1: error: a tab cannot indent a line\n"
		"    8 | \tnosing: 1\"\n"
		"      | ^ use spaces\n"
		"refused\n" },
	{ "a bracket that is never closed",
		SOUND
		"stringers:\n"
		"  stock_widths: [7 1/4\", 9 1/4\"\n",
		"job.yaml:8:17: error: this [ is never closed\n"
		"    8 |   stock_widths: [7 1/4\", 9 1/4\"\n"
		"      |                 ^ close it with ]\n"
		"refused\n" },
	{ "a brace that is never closed",
		SOUND
		"treads: {nosing: 1 1/8\"\n"
		"rail: {height: 36\"}\n",
		"job.yaml:7:9: error: this { is never closed\n"
		"    7 | treads: {nosing: 1 1/8\"\n"
		"      |         ^ close it with }\n"
		"refused\n" },
	{ "a line indented deeper than its group",
		SOUND
		"treads:\n"
		"  nosing: 1\"\n"
		"   thickness: 1\"\n",
		"job.yaml:9:13: error: this line is indented deeper than the key above it, "
		"which has its value\n"
		"    9 |    thickness: 1\"\n"
		"      |             ^ keys of one group stand exactly under each other\n"
		"refused\n" },
	{ "a line indented less than its group",
		SOUND
		"treads:\n"
		"   nosing: 1\"\n"
		"  thickness: 1\"\n",
		"job.yaml:9:3: error: this line's indentation fits no group above it\n"
		"    9 |   thickness: 1\"\n"
		"      |   ^ keys of one group stand exactly under each other\n"
		"refused\n" },
	{ "a key without its colon",
		SOUND
		"treads:\n"
		"  nosing 1\"\n"
		"  thickness: 1\"\n",
		"job.yaml:8:3: error: this line has no colon with a space after it\n"
		"    8 |   nosing 1\"\n"
		"      |   ^ a key, a colon, a space, then the value\n"
		"refused\n" },
	{ "a colon without its space",
		SOUND
		"treads:\n"
		"  nosing:1\"\n"
		"  thickness: 1\"\n",
		"job.yaml:8:3: error: this line has no colon with a space after it\n"
		"    8 |   nosing:1\"\n"
		"      |   ^ a space is missing: nosing: 1\"\n"
		"refused\n" },
	{ "a colon without its space, blank lines below it",
		SOUND
		"treads:\n"
		"  nosing:1\"\n"
		"\n"
		"  thickness: 1\"\n",
		"job.yaml:8:3: error: this line has no colon with a space after it\n"
		"    8 |   nosing:1\"\n"
		"      |   ^ a space is missing: nosing: 1\"\n"
		"refused\n" },
	{ "a last key without its colon",
		SOUND
		"treads\n",
		"job.yaml:7:1: error: this line has no colon with a space after it\n"
		"    7 | treads\n"
		"      | ^ a key, a colon, a space, then the value\n"
		"refused\n" },
	{ "a list entry among keys",
		SOUND
		"- oak\n",
		"job.yaml:7:1: error: a list entry stands where a key was expected\n"
		"    7 | - oak\n"
		"      | ^ indent the list under its key\n"
		"refused\n" },
	{ "a closing bracket too many",
		SOUND
		"treads: [1]]\n",
		"job.yaml:7:12: error: this bracket was never opened\n"
		"    7 | treads: [1]]\n"
		"      |            ^\n"
		"refused\n" },
	{ "a second document",
		SOUND
		"---\n"
		"pitchboard: 1\n",
		"job.yaml:7:1: error: a second document begins here\n"
		"    7 | ---\n"
		"      | ^ one file holds one job\n"
		"refused\n" },
	{ "text behind the end of the document",
		SOUND
		"...\n"
		"treads: 1\n",
		"job.yaml:8:1: error: the job ended above this line\n"
		"    8 | treads: 1\n"
		"      | ^ one file holds one job\n"
		"refused\n" },
	{ "a byte that is not UTF-8",
		SOUND
		"material:\n"
		"  treads: ch\352ne\n",
		"job.yaml:8:14: error: this character is not UTF-8\n"
		"    8 |   treads: ch\352ne\n"
		"      |              ^ save the file as UTF-8\n"
		"refused\n" },
	{ "a control character",
		SOUND
		"material:\n"
		"  treads: oak\007\n",
		"job.yaml:8:14: error: an invisible control character stands here\n"
		"    8 |   treads: oak\007\n"
		"      |              ^ delete it\n"
		"refused\n" },
	{ "an empty file",
		"",
		"job.yaml:1:1: error: the file is empty\n"
		"    1 | \n"
		"      | ^ `pitchboard new` prints a job to begin from\n"
		"refused\n" },
	{ "a file of comments",
		"# nothing yet\n",
		"job.yaml:2:1: error: the file is empty\n"
		"    2 | \n"
		"      | ^ `pitchboard new` prints a job to begin from\n"
		"refused\n" },
	{ "a file that is a list",
		"- pitchboard: 1\n",
		"job.yaml:1:1: error: the file: keys are expected here\n"
		"    1 | - pitchboard: 1\n"
		"      | ^ `pitchboard keys` prints those there are\n"
		"refused\n" },
	{ "a file that is one word",
		"stairs\n",
		"job.yaml:1:1: error: the file: keys are expected here\n"
		"    1 | stairs\n"
		"      | ^ `pitchboard keys` prints those there are\n"
		"refused\n" },
	{ "a key that is a list",
		SOUND
		"[a, b]: 1\n",
		"job.yaml:7:1: error: a key must be a word\n"
		"    7 | [a, b]: 1\n"
		"      | ^\n"
		"refused\n" },
	{ "a key given twice names both lines",
		SOUND
		"rail:\n"
		"  height: 36\"\n"
		"  width: 2\"\n"
		"  height: 38\"\n",
		"job.yaml:10:3: error: \"height\" is given twice, in lines 8 and 10\n"
		"   10 |   height: 38\"\n"
		"      |   ^ keep one of the two\n"
		"refused\n" },
	{ "a group given twice names both lines",
		SOUND
		"stair:\n"
		"  width: 37\"\n",
		"job.yaml:7:1: error: \"stair\" is given twice, in lines 5 and 7\n"
		"    7 | stair:\n"
		"      | ^ keep one of the two\n"
		"refused\n" },
	/* clang-format on */
};

int main(void)
{
	return run_said_cases(cases, sizeof(cases) / sizeof(cases[0]));
}
