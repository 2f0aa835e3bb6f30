/*
 * What risers are besides boards.
 */
#ifndef PARTS_RISER_H
#define PARTS_RISER_H

#include "parts/piece.h"

/* The bars that open risers are narrowed with. */
void riser_bars_add(struct pieces *list, const struct rod *r, struct diags *d);

#endif
