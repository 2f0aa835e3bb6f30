/*
 * What is said of one piece in words.
 */
#ifndef SHEETS_PIECE_WORDS_H
#define SHEETS_PIECE_WORDS_H

#include "pitchboard/sheet.h"

/* "T1  tread body" and "Make 4; red oak; 1 1/16" x 10" x 35 7/8", grain along". */
const char *piece_heading(struct arena *a, const struct part *p);
const char *piece_size_words(struct arena *a, const struct stair *s, const struct part *p);

/* Everything else a maker must know, a line a thing. */
const char *piece_work_words(struct arena *a, const struct stair *s, const struct part *p);

#endif
