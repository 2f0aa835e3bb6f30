/*
 * Rows of cross pieces between braced balusters: where they cross a gap.
 *
 *        |.'|        c.z[1]
 *        |  |.'|     c.z[0]: of its middle, at either baluster
 *        |  |  |
 *        |--|  |     a level row
 *       _|__|__|_
 */
#ifndef PARTS_BRACED_ROWS_H
#define PARTS_BRACED_ROWS_H

#include "parts/setting.h"

/* The clear space between two balusters of a unit, on plan. */
struct gap {
	const struct stretch *stretch;
	double from, to;
	double fronts[2]; /* of the balusters */
	double level;     /* of the tread or floor on which they stand */
};

/* One row as it crosses a gap: levels of its middle at either end, and the stretch along which it
 * lies. */
struct crossing {
	struct stretch along;
	double z[2];
	double half; /* plumb */
};

/* Where the two balusters beside a gap begin and end. */
struct opening {
	double foot[2], top[2];
};

/* Do a baluster and the next one stand in one unit? */
bool braced_in_one_unit(const struct setting *set, int i);

/* Between a baluster and the next one. */
struct gap braced_gap(const struct setting *set, int i);

struct crossing braced_crossing(const struct job_row *row, const struct gap *g);
struct opening braced_opening(const struct gap *g);

/* Two on the rake, as far over the nosings as under the rail. */
enum { BRACED_USUAL = 2 };
const struct job_row *braced_usual_rows(struct arena *a, const struct stretch *s);

/* What to write so that rows that run out of the balusters, or into each other, are met by all of
 * them whole; in words alone, where no heights do that. */
const char *braced_heights_mend(struct arena *a, const struct stretch *s);

#endif
