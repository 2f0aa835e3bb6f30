/*
 * What skirt boards are besides those on walls.
 */
#ifndef PARTS_SKIRT_H
#define PARTS_SKIRT_H

#include "parts/piece.h"

/* The finished board in front of the rough carriage of an open side. */
void open_skirt_add(struct pieces *list, const struct rod *r, enum hand hand);

/* Can the job have it, when it asks for one? */
bool open_skirt_fits(const struct rod *r, struct diags *d);

#endif
