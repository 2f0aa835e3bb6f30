/*
 * The assembly map of a template in many sheets.
 *
 *   +----+----+----+----+
 *   | A1/|\B1 | C1/|\D1 |   A long map is parted into bands, one under the other.
 *   +----+----+----+----+   A sheet that is blank, and not printed, is crossed out.
 *   | A2 | B2 | C2 | D2 |
 *   +----+----+----+----+
 */
#ifndef SHEETS_TEMPLATE_MAP_H
#define SHEETS_TEMPLATE_MAP_H

#include "sheets/template_page.h"
#include "sheets/template_tiling.h"

/* A piece of the work, and how it is spread over sheets. */
struct mapped {
	const char *name; /* "": it needs none */
	struct tiling tiling;
};

/* Maps side by side, hanging from the top of the room, each under its name; how far down they
 * reach. */
double draw_maps(struct page *page, struct box room, const struct mapped *maps, int n);

#endif
