/* Quotes, inch marks and other signs that mean something to YAML. Messages are pinned whole: they
 * are part of what the user works with. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "read_said.h"

static const struct said_case cases[] = {
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
	{ "an inch mark closes the quote between braces",
		SOUND
		"treads: {nosing: \"1 1/8\"\", thickness: 1\"}\n"
		"rail: {height: 36\"}\n",
		"job.yaml:7:25: error: the inch mark closed the quote\n"
		"    7 | treads: {nosing: \"1 1/8\"\", thickness: 1\"}\n"
		"      |                         ^ leave the outer quotes out: 1 1/8\"\n"
		"refused\n" },
	{ "and in a list",
		SOUND
		"stringers:\n"
		"  stock_widths: [7 1/4\", \"9\" 1/4]\n",
		"job.yaml:8:30: error: the inch mark closed the quote\n"
		"    8 |   stock_widths: [7 1/4\", \"9\" 1/4]\n"
		"      |                              ^ leave the outer quotes out: 9\" 1/4\n"
		"refused\n" },
	{ "a mark that means something between braces",
		SOUND
		"material: {treads: @oak, risers: pine}\n",
		"job.yaml:7:20: error: a value cannot begin with @\n"
		"    7 | material: {treads: @oak, risers: pine}\n"
		"      |                    ^ quote it: '@oak'\n"
		"refused\n" },
	{ "a comma left out between two keys",
		SOUND
		"rail: {height: 36\" width: 2\"}\n",
		"job.yaml:7:25: error: a colon cannot stand here\n"
		"    7 | rail: {height: 36\" width: 2\"}\n"
		"      |                         ^ put a comma between two entries; quote a "
		"text with a colon in it\n"
		"refused\n" },
	{ "a dash inside a text with a colon",
		SOUND
		"material:\n"
		"  treads: oak - stain: dark\n",
		"job.yaml:8:22: error: a text with a colon and a space in it must be quoted\n"
		"    8 |   treads: oak - stain: dark\n"
		"      |                      ^ quote it: 'oak - stain: dark'\n"
		"refused\n" },
	{ "a quote that is never closed",
		SOUND
		"material:\n"
		"  finish: \"oil\n"
		"rail: {height: 36\"}\n",
		"job.yaml:8:11: error: this quote is closed only in line 9\n"
		"    8 |   finish: \"oil\n"
		"      |           ^ close it on the same line\n"
		"refused\n" },
	{ "a backslash between double quotes",
		SOUND
		"material:\n"
		"  finish: \"C:\\stairs\"\n",
		"job.yaml:8:14: error: inside \" \" a backslash has a meaning of its own\n"
		"    8 |   finish: \"C:\\stairs\"\n"
		"      |              ^ use single quotes: ' '\n"
		"refused\n" },
	/* clang-format on */
};

int main(void)
{
	return run_said_cases(cases, sizeof(cases) / sizeof(cases[0]));
}
