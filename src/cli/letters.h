/*
 * Letters that no face holds.
 */
#ifndef CLI_LETTERS_H
#define CLI_LETTERS_H

#include "pitchboard/diag.h"
#include "pitchboard/write.h"

/* A warning of letters that cannot be drawn.  From which key they come is not known any more. */
void letters_tell_missing(struct missing m, struct diags *d);

#endif
