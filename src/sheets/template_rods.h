/*
 * The marking rods of a stair: running positions to be laid on the work.
 */
#ifndef SHEETS_TEMPLATE_RODS_H
#define SHEETS_TEMPLATE_RODS_H

#include "sheets/template.h"
#include "sheets/template_rod.h"

/* A rod, and how it is used. */
struct named_rod {
	struct named_rod *next;
	struct marking_rod rod;
	const char *what; /* "storey rod" */
	const char *on;   /* what it is laid on: "TU1, TU2" */
	const char *from; /* and from where */
	const char *note; /* "" or what else the hand must know */
};

/* All of them; what is marked alike is marked with one rod. */
struct named_rod *rods_make(struct arena *a, const struct sheet_context *c,
	const struct unit *units);

/* In sheets of `paper`, and one under the other on a roll, as template number `number`. */
struct drawing *rods_draw(struct arena *a, const struct sheet_context *c,
	const struct named_rod *rods, const struct paper *paper, int number);

#endif
