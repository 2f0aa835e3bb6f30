/*
 * The jig in which a braced unit of balusters is glued up.
 *
 *          clamp  |   |
 *            _____|___|________
 *     [|]---|_________________/ [top blocks, on the rake]
 *       |      | |   | |
 *     [|]---|________________/
 *       |   [side blocks, clear of the clamps]
 *      foot blocks
 *
 * Blocks touch the unit and lie beside it; clamps run along the rows of cross
 * pieces and come out between the blocks.
 */
#ifndef SHEETS_TEMPLATE_JIG_H
#define SHEETS_TEMPLATE_JIG_H

#include "sheets/template_unit.h"

/* A block, corner by corner; the first two lie against the work. */
struct block {
	struct vec corner[4];
};

/* Where a clamp's jaw reaches the unit, on either side. */
struct jig {
	struct unit_face face;
	struct block *blocks;
	int block_count;
	struct block *clamps;
	int clamp_count;
};

struct jig jig_make(struct arena *a, const struct unit *u, struct lettering l);

/* One for each different braced unit; they share their files. */
struct template_group jig_templates(struct arena *a, const struct sheet_context *c,
	const struct unit *units);

#endif
