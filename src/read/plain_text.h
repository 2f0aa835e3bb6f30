/*
 * Typographic marks made plain, so that a length copied from a letter or a
 * drawing reads like one typed on the keyboard.
 */
#ifndef READ_PLAIN_TEXT_H
#define READ_PLAIN_TEXT_H

#include "pitchboard/arena.h"

/* Curly and prime marks to ' and ", dashes to -, wide spaces to a space, 1/2 and its like to
 * figures.  What it does not know stays as it is. */
const char *plain_text(struct arena *a, const char *text);

#endif
