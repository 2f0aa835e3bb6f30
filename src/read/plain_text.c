#include "read/plain_text.h"

#include <string.h>

/* Each UTF-8 sequence is at least as long as what replaces it, but for the
 * fractions: they get a space in front, and 4 bytes come from 2. */
static const struct {
	const char *mark, *plain;
} marks[] = {
	{ "\u2018", "'" },
	{ "\u2019", "'" },
	{ "\u2032", "'" },
	{ "\u00b4", "'" },
	{ "\u201c", "\"" },
	{ "\u201d", "\"" },
	{ "\u2033", "\"" },
	{ "\u2010", "-" },
	{ "\u2011", "-" },
	{ "\u2012", "-" },
	{ "\u2013", "-" },
	{ "\u2014", "-" },
	{ "\u2212", "-" },
	{ "\u2044", "/" },
	{ "\u2215", "/" },
	{ "\u00a0", " " },
	{ "\u2007", " " },
	{ "\u2009", " " },
	{ "\u200a", " " },
	{ "\u202f", " " },
	{ "\t", " " },
	{ "\u00bd", " 1/2" },
	{ "\u00bc", " 1/4" },
	{ "\u00be", " 3/4" },
	{ "\u215b", " 1/8" },
	{ "\u215c", " 3/8" },
	{ "\u215d", " 5/8" },
	{ "\u215e", " 7/8" },
	{ "\u2153", " 1/3" },
	{ "\u2154", " 2/3" },
};

enum { MARKS = sizeof(marks) / sizeof(marks[0]), MOST_GROWTH = 2 };

static int mark_at(const char *p)
{
	for (int i = 0; i < MARKS; i++)
		if (strncmp(p, marks[i].mark, strlen(marks[i].mark)) == 0)
			return i;
	return -1;
}

const char *plain_text(struct arena *a, const char *text)
{
	char *out = NEW_N(a, char, strlen(text) * MOST_GROWTH + 1);
	char *end = out;

	while (*text) {
		int i = mark_at(text);
		if (i < 0) {
			*end++ = *text++;
			continue;
		}
		size_t n = strlen(marks[i].plain);
		memcpy(end, marks[i].plain, n);
		end += n;
		text += strlen(marks[i].mark);
	}
	return out;
}
