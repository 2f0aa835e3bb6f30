/*
 * Sheets that fill with cells, in columns.
 *
 *   +----------+ +----------+ +---------------------+
 *   |  T1      | |  F1      | |  N1                 |
 *   |          | |          | |                     |
 *   |          | |          | |                     |
 *   +----------+ |          | +---------------------+
 *   +----------+ |          | +---------------------+
 *   |  R1      | +----------+ |  N1, continued      |
 *   +----------+              +---------------------+
 *
 * A cell stands under what is already in its columns on the first sheet with room for it; it never
 * runs on to another sheet.  A piece of several cells has them on one sheet where they go on one,
 * and else those that go on after those that they continue.
 */
#ifndef SHEETS_PIECE_FILING_H
#define SHEETS_PIECE_FILING_H

#include "sheets/piece_cell.h"

enum { MOST_COLUMNS = 8 };

/* A sheet as it fills. */
struct open_sheet {
	struct open_sheet *next;
	struct sheet sheet;
	double used[MOST_COLUMNS]; /* of each column, from the top */
	const struct part **pieces;
	int piece_count;
};

/* A cell, what was wished of it, and over how many columns it came out. */
struct fitted_cell {
	struct cell_wish wish;
	struct cell cell;
	int span;
};

struct filing {
	const struct sheet_context *context;
	struct arena *arena;
	struct open_sheet *first;
	int columns;
	double column_width, height;
};

/* With one sheet, as the others will be divided. */
struct filing filing_begin(struct arena *a, const struct sheet_context *c);

double filing_width(const struct filing *f, int span);

/* The cells of one piece: on one sheet, or as many of them on each as an empty one takes. */
void file_cells(struct filing *f, const struct fitted_cell *c, int n);

#endif
