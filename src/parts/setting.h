/*
 * How balusters are set out along a stretch.
 *
 * On treads and on a stringer's edge the run is divided evenly, the first on
 * every tread with its front in line with the riser's face (as Hatfield sets
 * them: the first centre half its thickness from the riser); on a floor all
 * gaps from end to end are equal.
 *
 *        |   |   |   |   |
 *      __|__ |___|___|___|__
 *        |
 *      riser's face
 */
#ifndef PARTS_SETTING_H
#define PARTS_SETTING_H

#include "parts/stretch.h"

struct setting {
	const struct stretch *stretch;
	int per_tread; /* on a floor: to a unit */
	double section;
	double start, pitch; /* front of the first place, front to front */
	int count;           /* places; those on treads whose place a newel takes are left out */
};

/* Of no place after an error, which is in `d`. */
struct setting setting_make(struct arena *a, const struct stretch *s, struct diags *d);

double setting_front(const struct setting *s, int i);

/* Not where a newel stands, nor beyond the rail. */
bool setting_is_placed(const struct setting *s, int i);

#endif
