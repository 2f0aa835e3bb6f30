/*
 * The sheets before the template itself: what it is, how the sheets go together, and every
 * position in figures.
 */
#ifndef SHEETS_TEMPLATE_COVER_H
#define SHEETS_TEMPLATE_COVER_H

#include "sheets/template_map.h"
#include "sheets/template_sheets.h"

/* Heading, and the words every template begins with; how far down they reach. */
double cover_heading(const struct template_sheets *s, struct page *page, struct vec top,
	double width, const char *title);

/* The names of the printed sheets of each row, in the order of joining. */
const char *joining_order(struct arena *a, const struct tiling *t);

/* Tables of positions from number `first`, side by side in `room`, at most `rows` high; the index
 * of the first one that found no room. */
int draw_positions(struct page *page, struct box room, int rows, struct positions p, int first);

/* How wide those tables come out when none is higher than `rows`. */
double positions_width(const struct template_sheets *s, int rows, struct positions p);

#define POSITION_ROW (1.75 * TEMPLATE_LETTER) /* pitch of their rows */

/* Every position in what is left of the cover below y, or on pages of their own. */
struct drawing *cover_positions(const struct template_sheets *s, struct page *cover, double y);

#endif
