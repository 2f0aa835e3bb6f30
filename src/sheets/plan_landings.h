/*
 * What lies round the stair on its plan: the floors at its foot and head with their doors, the
 * walls on the opening's edge, and where north is.
 */
#ifndef SHEETS_PLAN_LANDINGS_H
#define SHEETS_PLAN_LANDINGS_H

#include "draw/annotate.h"
#include "sheets/plan_lines.h"

/* Of all that is drawn, in the house; empty when nothing is. */
struct box plan_landings_box(const struct plan *p);

void plan_landings_draw(struct drawing *g, const struct plan *p, double scale);

/* Their depths below, their widths at the ends. */
void plan_add_landings(struct dims *d, const struct plan *p, double scale);

/* A circle with an arrow, left of the view; the box of both. */
struct box plan_draw_north(struct hand h, const struct plan *p, struct box used);

/* What is known of them, and what not. */
const char *plan_landings_words(struct arena *a, const struct plan *p);

#endif
