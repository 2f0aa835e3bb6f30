/*
 * Rods as they are gathered: those that are marked alike become one.
 */
#ifndef SHEETS_TEMPLATE_RODS_GATHER_H
#define SHEETS_TEMPLATE_RODS_GATHER_H

#include "sheets/template_rods.h"

#define ROD_PAST 20.0 /* of a rod beyond its last tick, where the work goes on */

struct rod_gatherer {
	struct arena *arena;
	const struct sheet_context *context;
	struct named_rod *first, **tail;
};

void rod_gather(struct rod_gatherer *g, struct named_rod rod);

/* Ticks being collected in rising order. */
struct rod_ticks {
	struct arena *arena;
	struct rod_tick *list;
	int n;
};

struct rod_ticks rod_ticks_begin(struct arena *a, int room);
void rod_ticks_add(struct rod_ticks *t, struct rod_tick tick);

/* Numbered in order, and so named where there is no room for more. */
struct marking_rod rod_of_ticks(struct rod_ticks t, double end);

/* What a hole is called on a rod. */
const char *rod_bore_name(const struct bore *b);

/* A tick for it, lettered as on the sheet of its piece. */
struct rod_tick rod_bore_tick(struct arena *a, struct lettering how, const struct bore *b,
	double at);

/* Joints and brackets along newels, infill and wall rails. */
void rods_gather_long(struct rod_gatherer *g);

#endif
