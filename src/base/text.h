/*
 * Text that grows line by line: dumps and tables.
 */
#ifndef BASE_TEXT_H
#define BASE_TEXT_H

#include "pitchboard/arena.h"

struct text {
	struct arena *arena;
	char *chars; /* NUL-terminated; NULL before the first line */
	size_t length, room;
};

void text_add(struct text *t, const char *fmt, ...) __attribute__((format(printf, 2, 3)));

/* What has been added so far; "" when nothing has. */
const char *text_chars(const struct text *t);

/* To a thousandth, and never the minus that a rounded zero would show. */
double text_tidy(double v);

#endif
