/*
 * Rods as they are gathered: those that are marked alike become one.
 */
#ifndef SHEETS_TEMPLATE_RODS_GATHER_H
#define SHEETS_TEMPLATE_RODS_GATHER_H

#include "sheets/rail_runs.h"
#include "sheets/template_rods.h"

#define ROD_PAST 20.0 /* of a rod beyond its last tick, where the work goes on */

struct rod_gatherer {
	struct arena *arena;
	const struct sheet_context *context;
	struct rail_runs runs;
	struct named_rod *first, **tail;
};

void rod_gather(struct rod_gatherer *g, struct named_rod rod);

/* The faces of a piece by its own axes. */
enum { FACE_UP_Y, FACE_DOWN_Y, FACE_UP_Z, FACE_DOWN_Z, FACE_UP_X, FACE_DOWN_X, FACES };

/* The one that looks most nearly this way. */
int rod_face_toward(struct vec3 w);

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

/* A tick for it, lettered as on the sheet of its piece. */
struct rod_tick rod_bore_tick(struct arena *a, struct lettering how, const struct bore *b,
	double at);

/* Joints and brackets along newels, infill and wall rails. */
void rods_gather_long(struct rod_gatherer *g);

/* What stands under each run of rail. */
void rods_gather_rails(struct rod_gatherer *g);

/* Up a newel: where rails come against it, on the faces so called, and the rings of cross rails
 * round its core. */
int rod_newel_tick_count(const struct rod_gatherer *g, const struct part *newel);
void rod_newel_ticks_add(const struct rod_gatherer *g, struct rod_ticks *t,
	const struct part *newel, const char *const *faces);

#endif
