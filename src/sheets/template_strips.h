/*
 * Long strips cut into lengths, one under the other on sheets.
 *
 *   +--------------------+
 *   | [ strip 1/1      ] |
 *   | [ strip 1/2      ] |
 *   | [ strip 2/1 ]      |
 *   | words              |
 *   +--------------------+
 */
#ifndef SHEETS_TEMPLATE_STRIPS_H
#define SHEETS_TEMPLATE_STRIPS_H

#include "sheets/template_rod.h"
#include "sheets/template_sheets.h"

#define STRIP_GAP 3.0 /* from strip to strip */

/* One length of a strip: a tile of its tiling, and what is lettered on it. */
struct strip {
	const struct tiling *tiling;
	struct tile at;
	const char *name;  /* lettered on it: "S1 rod 3" */
	const char *title; /* under it, where there is room; NULL: none */
};

struct strips {
	const struct strip *strip;
	int n;
};

/* A strip spread over lengths as wide as a sheet; their names begin with `prefix`. */
struct tiling strip_tiling(struct arena *a, const struct template_sheets *s,
	const struct pattern *p, const char *prefix);

/* How many strips stand on the first sheet: on every one, where they are equally high. */
int strips_a_sheet(const struct template_sheets *s, struct strips l);

/* All of them on as many sheets as it takes; a sheet's name begins with `prefix`. */
struct drawing *strips_draw(const struct template_sheets *s, struct strips l, const char *prefix);

#endif
