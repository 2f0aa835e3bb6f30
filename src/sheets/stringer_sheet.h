/*
 * The stringer sheets: the piece on the bench, its details in the house, its figures.
 */
#ifndef SHEETS_STRINGER_SHEET_H
#define SHEETS_STRINGER_SHEET_H

#include "draw/table.h"
#include "draw/view.h"
#include "sheets/compose.h"
#include "sheets/stringer_shape.h"

/* What a detail of a stringer shows. */
struct stringer_subject {
	const struct sheet_context *context;
	const struct part *part;
	const struct flight *flight;
	struct stringer_shape shape;
	struct view section; /* through the stringer, looking square to it */
};

/* The piece as it lies on the bench, upper edge away, with its running positions. */
struct composition stringer_on_bench(const struct stringer_subject *t);

/* Its two ends as they stand in the house, cut through its middle, and one step of it. */
struct composition stringer_foot(const struct stringer_subject *t);
struct composition stringer_head(const struct stringer_subject *t);
struct composition stringer_step(const struct stringer_subject *t);

/* Sizes, cuts and settings; positions of every corner. */
struct table stringer_facts(struct arena *a, const struct stringer_subject *t);
struct table stringer_positions(struct arena *a, const struct stringer_subject *t);

#endif
