/*
 * Ink for PDF.
 *
 * Lines and fills are written by hand: Cairo takes several times as long for
 * them, nearly all of it in printf() and in packing them harder than pays.
 * Letters go to Cairo, which embeds of each face what is used.  The two come
 * together in pdf_mend(), the lines under the letters.
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
	double height;        /* of the page */
	struct buffer *marks; /* lines and fills of the page */
	struct buffer *path;  /* being drawn */
	struct cut *cuts;
	struct shown { /* letters not yet handed to Cairo, n of one font */
		cairo_scaled_font_t *font;
		int n;
		struct buffer *glyphs; /* cairo_glyph_t */
	} shown;
};

struct ink_pdf *ink_pdf_new(struct arena *a, cairo_t *cr, const struct faces *faces);
/* A page begins, so high; its letters are all with Cairo, and these are its lines
 * and fills as a content stream of PDF, packed by zlib. */
void ink_pdf_begin_page(struct ink_pdf *ink, double height);
struct buffer *ink_pdf_end_page(struct ink_pdf *ink);
void ink_pdf_free(struct ink_pdf *ink);

#endif
