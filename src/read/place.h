/*
 * Places in a text, counted in characters as editors count them.
 */
#ifndef READ_PLACE_H
#define READ_PLACE_H

#include <stddef.h>

#include "pitchboard/diag.h"

/* The text behind a byte order mark, if it has one. */
const char *text_start(const char *text);

/* The next character of UTF-8; stays at the end of the text. */
const char *next_character(const char *p);

/* The character that stands at a place; the end of the text beyond its last line. */
const char *text_at(const char *text, struct pos at);

/* The place of a byte, counted from the start of the text. */
struct pos place_of_byte(const char *text, size_t offset);

#endif
