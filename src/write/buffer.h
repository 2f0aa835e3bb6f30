/*
 * Bytes that grow: a file before it is written.
 */
#ifndef WRITE_BUFFER_H
#define WRITE_BUFFER_H

#include <stddef.h>

#include "pitchboard/arena.h"

struct buffer {
	struct arena *arena;
	char *bytes; /* always ends in a zero that is not counted */
	size_t size, room;
};

struct buffer *buffer_new(struct arena *a);
void buffer_add(struct buffer *b, const void *bytes, size_t size);
/* Room for so many more bytes, which the caller writes at bytes + size. */
void buffer_reserve(struct buffer *b, size_t size);
void buffer_byte(struct buffer *b, char c);
void buffer_text(struct buffer *b, const char *text);
void buffer_printf(struct buffer *b, const char *fmt, ...) __attribute__((format(printf, 2, 3)));

/* Thousandths as a decimal number: 1250 is written 1.25. */
void buffer_thousandths(struct buffer *b, long v);

#endif
