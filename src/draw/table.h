/*
 * A ruled table, each column as wide as its widest cell.
 */
#ifndef DRAW_TABLE_H
#define DRAW_TABLE_H

#include "draw/annotate.h"

struct table_column {
	const char *head;
	enum align align;
	double most; /* longer text is broken at this width; 0: never */
};

struct table {
	const char *title; /* NULL: none */
	const struct table_column *columns;
	int column_count;
	const char *const *cells; /* row by row */
	int row_count;
};

/* The size it would take, as a box at the origin. */
struct box table_size(struct hand h, const struct table *t);

/* Draws it with its upper left corner at `at`; the box it took. */
struct box draw_table(struct hand h, struct vec at, const struct table *t);

#endif
