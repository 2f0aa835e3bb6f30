/*
 * How a pattern is spread over sheets of one size.
 *
 *      A1          B1          C1            columns are lettered, rows numbered
 *   +-------+---+-------+---+--------        from the top; neighbours share a lap,
 *   |       :   |       :   |                and the joint line runs along its
 *   |       :   |       :   |                middle (:).  The sheet on the left is
 *   +-------+---+-------+---+--------        trimmed there and laid on the right
 *   |       :   |       :   |                one; the upper on the lower.
 *      A2          B2          C2
 *
 * A sheet on which nothing of the pattern falls is blank, and not printed.
 */
#ifndef SHEETS_TEMPLATE_TILING_H
#define SHEETS_TEMPLATE_TILING_H

#include "sheets/template_pattern.h"

#define TILE_LAP 12.0 /* mm: room for tape or paste on both sides of the joint line */

#define TILE_EDGE 4.0 /* kept clear round the pattern */

enum tile_names {
	TILES_LETTERED, /* A1, B1 ... */
	TILES_IN_A_ROW, /* 1, 2 ... */
};

struct tiling {
	const struct pattern *pattern;
	struct vec window; /* what one sheet shows, millimetres of the pattern */
	double lap;
	struct vec corner; /* upper left corner of the first window, on the pattern */
	int columns, rows;
	const unsigned char *printed; /* by row, then column */
	enum tile_names names;
	const char *prefix; /* of the names */
};

struct tile {
	int column, row;
};

enum tile_side { TILE_LEFT, TILE_RIGHT, TILE_TOP, TILE_BOTTOM };

struct tiling tiling_make(struct arena *a, const struct pattern *p, struct vec window, double lap);

int tiling_count(const struct tiling *t);                     /* of printed sheets */
bool tile_is_printed(const struct tiling *t, struct tile at); /* false off the grid too */
const char *tile_grid_name(struct arena *a, const struct tiling *t, struct tile at); /* "A1" */
const char *tile_name(struct arena *a, const struct tiling *t,
	struct tile at); /* with the prefix */

struct box tile_window(const struct tiling *t, struct tile at);
/* Its own part of the pattern, from joint line to joint line. */
struct box tile_own(const struct tiling *t, struct tile at);
/* The sheet in whose own part the point is. */
struct tile tile_of(const struct tiling *t, struct vec at);
struct tile tile_beside(struct tile at, enum tile_side side);

/* A joint: the line two sheets share, and the two crosses on it, a quarter of it from each end. */
struct joint {
	struct vec from, to;
	struct vec cross[2];
};

struct joint tile_joint(const struct tiling *t, struct tile at, enum tile_side side);

#endif
