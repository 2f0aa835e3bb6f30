/*
 * The drawings of one stem as one PDF.
 */
#ifndef WRITE_PDF_H
#define WRITE_PDF_H

#include "write/output.h"

/* Pages of one file, at least one. */
struct book {
	const struct drawing *const *pages;
	int n;
	const struct imprint *imprint;
	const struct faces *faces;
};

/* Every page is labelled and bookmarked with its sheet number, which is also
 * the name of a destination in it.  The bytes depend on nothing but the book. */
struct output pdf_make(struct arena *a, struct book book);

#endif
