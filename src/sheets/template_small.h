/*
 * Small patterns, several to a sheet: profiles, and the ends of pieces that are cut to the rake.
 *
 *   +-------------------------------+
 *   | +------+  +-----------+ +---+ |
 *   | |  /|  |  |   ___     | |   | |
 *   | | | |  |  |  (___)    | | L | |
 *   | +------+  +-----------+ +---+ |
 *   | B1 to B7  H1 rail       C1    |
 *   |  words, bars                  |
 *   +-------------------------------+
 */
#ifndef SHEETS_TEMPLATE_SMALL_H
#define SHEETS_TEMPLATE_SMALL_H

#include "sheets/template.h"

struct small {
	struct small *next;
	const char *marks; /* of all pieces that are alike here */
	const char *what;  /* "baluster, top" */
	const char *sizes; /* check sizes, angles */
	struct pattern pattern;
};

struct small *small_patterns(struct arena *a, const struct sheet_context *c);

/* On sheets of `paper`, as template number `number`. */
struct drawing *small_draw(struct arena *a, const struct sheet_context *c, const struct small *list,
	const struct paper *paper, int number);

#endif
