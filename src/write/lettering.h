/*
 * Texts as runs of letters.
 */
#ifndef WRITE_LETTERING_H
#define WRITE_LETTERING_H

#include "write/paint.h"

/* All texts of the drawing. */
void lettering_paint(struct canvas c);

#endif
