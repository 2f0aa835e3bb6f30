/*
 * The signatures, over the title block of the first page of its series.
 */
#ifndef SHEETS_CLIENT_SIGN_H
#define SHEETS_CLIENT_SIGN_H

#include "pitchboard/sheet.h"

#define CLIENT_SIGNED_SERIES "C-8"

/* How that page is set (client_choices.c). */
struct client_page {
	double letter;               /* height of a capital, of tables and signatures */
	double label, words, finish; /* most width of the columns of choices, in such heights */
};

/* Tables and signatures in letters of one size: the largest with which all goes on one page, and no
 * larger than those of the drawings; where none do, the smallest, and the tables go on. */
struct client_page client_choices_page(struct arena *a, const struct sheet_context *c);

/* What the page keeps clear for them, in letters of this height. */
double client_sign_height(struct arena *a, const struct sheet_context *c, double letter);

/* Draws them over a sheet, where the set has that page: `over` are drawn over all sheets of the
 * set, when its number is known, which they name. */
void client_sign(struct arena *a, const struct sheet_context *c, struct drawing *over);

#endif
