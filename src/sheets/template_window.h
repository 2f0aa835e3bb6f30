/*
 * One sheet of a tiled pattern: its piece of the lines, the joints with the
 * sheets beside it, and the checks that show a wrong print before stock is cut.
 */
#ifndef SHEETS_TEMPLATE_WINDOW_H
#define SHEETS_TEMPLATE_WINDOW_H

#include "sheets/template_page.h"
#include "sheets/template_tiling.h"

/* Keeps clear of what printers leave white, and of a Letter sheet fed where A4 was meant. */
#define TEMPLATE_MARGIN 10.0

/* Where on the paper a pattern shows.  The frame is on paper as it is drawn; a printer that
 * draws x 1.004 times too long is met by drawing everything measured 1.004 times too short. */
struct window_place {
	struct box frame;
	struct vec correction; /* measured over nominal */
};

/* What of a pattern a frame of this place holds. */
struct vec window_size(struct window_place place);

/* Lines, joints, corner labels, and `heading` in free room; drawn on `page`. */
void window_draw(struct page *page, struct window_place place, const struct tiling *t,
	struct tile at, const struct wording *heading, int headings);

/* Two bars of 100 mm and 4 in from `at`, along x or y; in corrected millimetres. */
void calibration_bars(struct page *page, struct vec at, enum turn turn, struct vec correction);

#define BARS_ROOM 12.0 /* how far the two bars and their figures reach across */

#endif
