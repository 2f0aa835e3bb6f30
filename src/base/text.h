/*
 * Text that grows, or any bytes that do: dumps, tables, files before they are written.
 *
 *     struct text t = { .arena = a };
 *     for (int i = 0; i < n; i++)
 *             text_join(&t, ", ", names[i]);
 *     return text_chars(&t);
 */
#ifndef BASE_TEXT_H
#define BASE_TEXT_H

#include "pitchboard/arena.h"

struct text {
	struct arena *arena;
	char *chars; /* ends in a zero that is not counted; NULL before anything is added */
	size_t length, room;
};

struct text *text_new(struct arena *a);

void text_add(struct text *t, const char *fmt, ...) __attribute__((format(printf, 2, 3)));
void text_put(struct text *t, const char *words);
void text_put_char(struct text *t, char c);
void text_put_bytes(struct text *t, const void *bytes, size_t n);
void text_put_number(struct text *t, long v);
/* Thousandths as a decimal number: 1250 is written 1.25. */
void text_put_thousandths(struct text *t, long v);

/* One more word of a list; `between` stands before every word but the first: "a, b, c". */
void text_join(struct text *t, const char *between, const char *word);

/* A key as it is said: "floor thickness", of floor_thickness. */
const char *text_spoken(struct arena *a, const char *key);

/* The columns that a terminal gives it: the bytes that go on with a character (10xxxxxx) are not
 * counted.
 */
int text_columns(const char *words);
void text_put_blanks(struct text *t, int n);

/* What has been added so far; "" when nothing has. */
const char *text_chars(const struct text *t);

/* To a thousandth, and never the minus that a rounded zero would show. */
double text_tidy(double v);

#endif
