/*
 * The cut at an end of a piece in words, for lists and sheets alike.
 */
#ifndef LISTS_END_WORDS_H
#define LISTS_END_WORDS_H

#include "pitchboard/part.h"

/* "43.6°, bevel 12.6°", "bevel 30.0°", "35.2°"; "square".  Of angles from square; which way it
 * leans the drawing shows. */
const char *end_words(struct arena *a, struct end_cut cut);

#endif
