/*
 * Words in columns: headings and paragraphs, as notes on a sheet and on pages that are read.
 */
#ifndef SHEETS_PROSE_H
#define SHEETS_PROSE_H

#include "draw/annotate.h"

#define PROSE_GAP 6.0 /* between columns */

/* A paragraph.  It is wrapped; a heading is set bold. */
struct note {
	const char *heading; /* NULL: continues under the last one */
	const char *text;    /* NULL or "": it is passed over */
};

struct set_line;

/* Paragraphs broken into lines. */
struct prose {
	const struct set_line *lines;
	int n;
};

struct prose prose_set(struct hand h, const struct note *notes, int n, double width);

/* How many columns it takes in an area, filled from the left, top down. */
int prose_columns(struct hand h, struct prose p, struct box area, double width);

/* The area in which its columns are of one length: no last line left over at the head of one. */
struct box prose_balance(struct hand h, struct prose p, struct box area, double width);

/* How deep it is in a single column. */
double prose_depth(struct hand h, struct prose p);

void prose_draw(struct hand h, struct prose p, struct box area, double width);

#endif
