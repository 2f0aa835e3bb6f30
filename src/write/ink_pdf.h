/*
 * Ink for PDF: Cairo.  All lines of one pen reach it as one path, and letters of
 * one size in one go, because it takes longest over the number of times it is asked.
 */
#ifndef WRITE_INK_PDF_H
#define WRITE_INK_PDF_H

#include "write/ink.h"

#define POINTS_PER_MM (72 / 25.4)

/* A face at one size and angle. */
struct cut;

struct ink_pdf {
	struct ink base;
	struct arena *arena;
	const struct faces *faces;
	cairo_t *cr;
	double height; /* of the page */
	struct cut *cuts;
	struct shown { /* letters not yet handed to Cairo, n of one font */
		cairo_scaled_font_t *font;
		cairo_glyph_t *glyphs;
		int n, room;
	} shown;
};

struct ink_pdf *ink_pdf_new(struct arena *a, cairo_t *cr, const struct faces *faces);
/* A page begins, so high; at its end all of it is with Cairo. */
void ink_pdf_begin_page(struct ink_pdf *ink, double height);
void ink_pdf_end_page(struct ink_pdf *ink);
void ink_pdf_free(struct ink_pdf *ink);

#endif
