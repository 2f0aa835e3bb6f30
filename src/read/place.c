#include "read/place.h"

#include <string.h>

const char *text_start(const char *text)
{
	return strncmp(text, "\xef\xbb\xbf", 3) == 0 ? text + 3 : text;
}

const char *next_character(const char *p)
{
	if (!*p)
		return p;
	p++;
	while (((unsigned char)*p & 0xc0) == 0x80)
		p++;
	return p;
}

const char *text_at(const char *text, struct pos at)
{
	const char *p = text_start(text);

	for (int line = 1; line < at.line; line++) {
		const char *end = strchr(p, '\n');
		if (!end)
			return p + strlen(p);
		p = end + 1;
	}
	for (int col = 1; col < at.col && *p && *p != '\n'; col++)
		p = next_character(p);
	return p;
}

struct pos place_of_byte(const char *text, size_t offset)
{
	struct pos at = { 1, 1 };
	const char *start = text_start(text);

	for (const char *p = start; p < start + offset && *p; p = next_character(p)) {
		at.col++;
		if (*p == '\n')
			at = (struct pos){ at.line + 1, 1 };
	}
	return at;
}
