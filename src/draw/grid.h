/*
 * A grid to look up the screens that a line may pass behind.
 *
 * Screens are as small as a facet and as long as the stair, and a stair lies slanting in its view,
 * so that one grid of equal cells would waste either cells or searches.  Every screen goes into
 * the grid whose cells are about as wide and about as high as itself: it lies in four cells at
 * most, and a search looks through all grids in use.  Cells are made only where something lies.
 */
#ifndef DRAW_GRID_H
#define DRAW_GRID_H

#include "draw/scene.h"

struct grid;

struct grid *grid_make(struct arena *a, struct screen *screens, int count);

/* The screens in the cells that the line from a to b crosses, each once, chained by `found`; valid
 * until the next search. */
struct screen *grid_search(struct grid *g, struct vec a, struct vec b);

/* The same of the cells that a box touches. */
struct screen *grid_cover(struct grid *g, struct box b);

/* Depth of what is seen at a point; -INFINITY: nothing. */
double grid_nearest(struct grid *g, struct vec p);

/* Cells and screens looked at so far: the measure of how the work grows. */
long grid_steps(const struct grid *g);

#endif
