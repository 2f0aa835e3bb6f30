/* What a carpenter types, and what each slip of the pen is told. Messages are pinned whole: they
 * are part of what the user works with. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include <string.h>

#include "read_said.h"

static const struct {
	const char *what, *yaml, *said;
} cases[] = {
	/* clang-format off */
	{ "an unquoted length with an inch mark is fine",
		SOUND
		"treads:\n"
		"  nosing: 1 1/8\"\n",
		"" },
	{ "so are feet and inches, in a list and between braces",
		SOUND
		"opening: {length: 10'-6 1/2\", floor_thickness: 11\"}\n"
		"stringers: {stock_lengths: [8', 10'-6\"]}\n",
		"" },
	{ "an inch mark closes the quote, and a later one opens another",
		SOUND
		"treads:\n"
		"  nosing: \"1 1/8\"\"\n"
		"  thickness: \"1 1/16\"\n",
		"job.yaml:8:18: error: the inch mark closed the quote\n"
		"    8 |   nosing: \"1 1/8\"\"\n"
		"      |                  ^ leave the outer quotes out: 1 1/8\"\n"
		"refused\n" },
	{ "an inch mark closes the quote, and nothing ever closes the next",
		SOUND
		"treads:\n"
		"  nosing: \"1 1/8\"\"\n",
		"job.yaml:8:18: error: the inch mark closed the quote\n"
		"    8 |   nosing: \"1 1/8\"\"\n"
		"      |                  ^ leave the outer quotes out: 1 1/8\"\n"
		"refused\n" },
	{ "a foot mark closes the quote",
		SOUND
		"opening:\n"
		"  length: '10'-6 1/2\"'\n",
		"job.yaml:8:15: error: the foot mark closed the quote\n"
		"    8 |   length: '10'-6 1/2\"'\n"
		"      |               ^ leave the outer quotes out: 10'-6 1/2\"\n"
		"refused\n" },
	{ "a foot mark doubled, or an inch mark behind a backslash, is fine",
		SOUND
		"opening:\n"
		"  length: '10''-6 1/2\"'\n"
		"  floor_thickness: \"11\\\"\"\n",
		"" },
	{ "text behind # is lost from a length",
		SOUND
		"rail:\n"
		"  height: 3'-0\" #2 pine\n",
		"job.yaml:8:11: warning: \"#2 pine\" is taken as a comment; the value is "
		"only \"3'-0\"\"\n"
		"    8 |   height: 3'-0\" #2 pine\n"
		"      |           ^ quote the whole value if \"#2 pine\" belongs to it\n" },
	{ "a real comment is not complained of",
		SOUND
		"rail:\n"
		"  height: 3'-0\" # over the nosing line\n",
		"" },
	{ "a value that looks like a comment",
		SOUND
		"material:\n"
		"  treads: #2 pine\n",
		"job.yaml:8:10: error: material.treads: has no value\n"
		"    8 |   treads: #2 pine\n"
		"      |          ^ \"#2 pine\" looks like a comment; quote it: '#2 pine'\n"
		"refused\n" },
	{ "a required value that looks like a comment",
		"pitchboard: 1\n"
		"job:\n"
		"  name: #7 Elm Street\n"
		"floors: {total_rise: 107\"}\n"
		"stair: {width: 36\"}\n",
		"job.yaml:3:8: error: job.name: has no value\n"
		"    3 |   name: #7 Elm Street\n"
		"      |        ^ \"#7 Elm Street\" looks like a comment; quote it: '#7 Elm "
		"Street'\n"
		"refused\n" },
	{ "a text with a colon in it",
		SOUND
		"material:\n"
		"  treads: Tread: oak\n",
		"job.yaml:8:16: error: a text with a colon and a space in it must be quoted\n"
		"    8 |   treads: Tread: oak\n"
		"      |                ^ quote it: 'Tread: oak'\n"
		"refused\n" },
	{ "a text that begins with an at sign",
		SOUND
		"material:\n"
		"  treads: @ 16\" o.c.\n",
		"job.yaml:8:11: error: a value cannot begin with @\n"
		"    8 |   treads: @ 16\" o.c.\n"
		"      |           ^ quote it: '@ 16\" o.c.'\n"
		"refused\n" },
	{ "a text that begins with a per cent sign",
		SOUND
		"material:\n"
		"  finish: % of gloss: any\n",
		"job.yaml:8:11: error: a value cannot begin with %\n"
		"    8 |   finish: % of gloss: any\n"
		"      |           ^ quote it: '% of gloss: any'\n"
		"refused\n" },
	{ "a text that begins with a backquote",
		SOUND
		"material:\n"
		"  treads: `oak`\n",
		"job.yaml:8:11: error: a value cannot begin with `\n"
		"    8 |   treads: `oak`\n"
		"      |           ^ quote it: '`oak`'\n"
		"refused\n" },
	{ "text behind a closing quote",
		SOUND
		"newels:\n"
		"  section: \"A\"-type newel\n",
		"job.yaml:8:15: error: text goes on behind its closing quote\n"
		"    8 |   section: \"A\"-type newel\n"
		"      |               ^ quote it: '\"A\"-type newel'\n"
		"refused\n" },
	{ "an apostrophe between single quotes",
		SOUND
		"material:\n"
		"  finish: 'the client's own'\n",
		"job.yaml:8:23: error: text goes on behind its closing quote\n"
		"    8 |   finish: 'the client's own'\n"
		"      |                       ^ leave the outer quotes out: the client's own\n"
		"refused\n" },
	{ "a text that begins with a greater sign",
		SOUND
		"material:\n"
		"  finish: > 36\"\n",
		"job.yaml:8:11: error: a value cannot begin with >\n"
		"    8 |   finish: > 36\"\n"
		"      |           ^ quote it: '> 36\"'\n"
		"refused\n" },
	{ "an alias",
		SOUND
		"material:\n"
		"  treads: *star\n",
		"job.yaml:8:11: error: a value cannot begin with * (a YAML alias)\n"
		"    8 |   treads: *star\n"
		"      |           ^ quote the value if the mark belongs to it\n"
		"refused\n" },
	{ "an anchor",
		SOUND
		"material:\n"
		"  treads: &x oak\n",
		"job.yaml:8:11: error: a value cannot begin with & (a YAML anchor)\n"
		"    8 |   treads: &x oak\n"
		"      |           ^ quote the value if the mark belongs to it\n"
		"refused\n" },
	{ "a tag",
		SOUND
		"material:\n"
		"  treads: !x oak\n",
		"job.yaml:8:11: error: a value cannot begin with ! (a YAML tag)\n"
		"    8 |   treads: !x oak\n"
		"      |           ^ quote the value if the mark belongs to it\n"
		"refused\n" },
	{ "a dash with a space before a figure",
		SOUND
		"treads:\n"
		"  nosing: - 3\n",
		"job.yaml:8:11: error: a dash and a space begin a list entry, which cannot "
		"stand here\n"
		"    8 |   nosing: - 3\n"
		"      |           ^ put list entries on lines of their own; quote a text "
		"that begins with a dash\n"
		"refused\n" },
	{ "a dash without one",
		SOUND
		"treads:\n"
		"  nosing: -3\n",
		"job.yaml:8:11: error: treads.nosing: \"-3\" is negative\n"
		"    8 |   nosing: -3\n"
		"      |           ^ a length here is never below zero\n"
		"refused\n" },
	{ "vulgar fractions and curly marks are fine",
		SOUND
		"treads:\n"
		"  nosing: 1\342\205\233\342\200\235\n"
		"opening: {length: 10\342\200\231 6\342\200\235, floor_thickness: "
		"11\342\200\263}\n",
		"" },
	{ "a backslash between double quotes",
		SOUND
		"material:\n"
		"  finish: \"C:\\stairs\"\n",
		"job.yaml:8:14: error: inside \" \" a backslash has a meaning of its own\n"
		"    8 |   finish: \"C:\\stairs\"\n"
		"      |              ^ use single quotes: ' '\n"
		"refused\n" },
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
		"job.yaml:9:12: error: line 8 has no colon with a space after it, so this "
		"one runs on from it\n"
		"    9 |   thickness: 1\"\n"
		"      |            ^ a key, a colon, a space, then the value\n"
		"refused\n" },
	{ "a colon without its space",
		SOUND
		"treads:\n"
		"  nosing:1\"\n"
		"  thickness: 1\"\n",
		"job.yaml:9:12: error: line 8 has no colon with a space after it, so this "
		"one runs on from it\n"
		"    9 |   thickness: 1\"\n"
		"      |            ^ a key, a colon, a space, then the value\n"
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

enum { CASES = sizeof(cases) / sizeof(cases[0]) };

static void says_it(void **state)
{
	size_t i = (size_t)(uintptr_t)*state;
	char *said = said_of(cases[i].yaml);

	assert_string_equal(said, cases[i].said);
	free(said);
}

static char *nested(int depth)
{
	char *yaml = calloc(1, sizeof(SOUND) + (size_t)depth * 2 + 16);

	strcpy(yaml, SOUND "treads: ");
	for (int i = 0; i < depth; i++)
		strcat(yaml, "[");
	for (int i = 0; i < depth; i++)
		strcat(yaml, "]");
	return strcat(yaml, "\n");
}

static void nesting_is_bounded(void **state)
{
	char *yaml = nested(300);
	char *said = said_of(yaml);

	(void)state;
	assert_non_null(strstr(said, "error: groups and lists are nested too deeply\n"));
	free(said);
	free(yaml);
}

static void size_is_bounded(void **state)
{
	size_t size = (1 << 20) + 1;
	char *yaml = malloc(size + 1);

	(void)state;
	memset(yaml, '#', size);
	yaml[size] = '\0';
	char *said = said_of(yaml);
	assert_non_null(strstr(said, "error: the file is larger than 1 MiB\n"));
	free(said);
	free(yaml);
}

/* A hundred thousand keys would take a minute to compare with each other. */
static void the_number_of_keys_is_bounded(void **state)
{
	enum { KEYS = 100000, LONGEST = 10 };
	char *yaml = malloc(KEYS * LONGEST);
	char *end = yaml;

	(void)state;
	for (int i = 0; i < KEYS; i++)
		end += sprintf(end, "k%d:\n", i);
	char *said = said_of(yaml);
	assert_non_null(strstr(said, "error: this is more than a job can hold\n"));
	free(said);
	free(yaml);
}

int main(void)
{
	struct CMUnitTest tests[CASES + 3] = {
		[CASES] = cmocka_unit_test(nesting_is_bounded),
		[CASES + 1] = cmocka_unit_test(size_is_bounded),
		[CASES + 2] = cmocka_unit_test(the_number_of_keys_is_bounded),
	};

	for (size_t i = 0; i < CASES; i++)
		tests[i] = (struct CMUnitTest){ cases[i].what, says_it, NULL, NULL,
			(void *)(uintptr_t)i };
	return cmocka_run_group_tests(tests, NULL, NULL);
}
