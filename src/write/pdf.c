/*
 * What Cairo 1.16 wants, each found by trial:
 *
 * - a "Document" tag round everything, or the cross references are damaged; opened
 *   after the first page has its size, which throws away what came before, and
 *   closed before the last page is shown, or 1.17 adds a blank page;
 * - version 1.4, because the classic cross reference table is needed to mend
 *   the file afterwards (pdf_mend.c);
 * - a creation date, or it takes the clock's; one that it cannot read leaves
 *   the key out.
 */
#include "write/pdf.h"

#include <assert.h>
#include <cairo-pdf.h>

#include "write/ink_pdf.h"
#include "write/paint.h"
#include "write/pdf_mend.h"

/* 200 inches: no reader has to take a larger page.  ISO 32000-1, annex C (from memory). */
#define LONGEST_PAGE 14400

static void set_metadata(struct arena *a, cairo_surface_t *surface, const struct imprint *i)
{
	const char *date = i->date && *i->date ? arena_printf(a, "%sT00:00:00Z", i->date) : "none";

	cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_TITLE, i->title);
	cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_AUTHOR, i->author);
	cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_SUBJECT, i->subject);
	cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_KEYWORDS, i->keywords);
	cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATOR, "pitchboard");
	cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATE_DATE, date);
}

/* Inside Cairo's attribute strings a backslash or a quote needs a backslash before it. */
static const char *quoted(struct arena *a, const char *s)
{
	struct buffer *b = buffer_new(a);

	for (; *s; s++) {
		if (*s == '\'' || *s == '\\')
			buffer_add(b, "\\", 1);
		buffer_add(b, s, 1);
	}
	return b->bytes;
}

static void name_page(struct arena *a, cairo_t *cr, const struct drawing *g)
{
	cairo_surface_t *surface = cairo_get_target(cr);
	const char *title = arena_printf(a, "%s %s", g->id, g->title);
	const char *name = quoted(a, g->id);

	cairo_pdf_surface_set_page_label(surface, g->id);
	cairo_pdf_surface_add_outline(surface, CAIRO_PDF_OUTLINE_ROOT, title,
		arena_printf(a, "dest='%s'", name), 0);
	cairo_tag_begin(cr, CAIRO_TAG_DEST, arena_printf(a, "name='%s' x=0 y=0", name));
	cairo_tag_end(cr, CAIRO_TAG_DEST);
}

static int add_page(struct arena *a, cairo_t *cr, struct ink_pdf *ink, struct book book, int i)
{
	const struct drawing *g = book.pages[i];
	double width = g->width * POINTS_PER_MM, height = g->height * POINTS_PER_MM;

	assert(width <= LONGEST_PAGE && height <= LONGEST_PAGE);
	cairo_pdf_surface_set_size(cairo_get_target(cr), width, height);
	if (i == 0)
		cairo_tag_begin(cr, "Document", NULL);
	name_page(a, cr, g);
	ink_pdf_begin_page(ink, g->height);
	cairo_tag_begin(cr, "Sect", NULL);
	int missing = paint_drawing((struct canvas){ &ink->base, g, book.faces, a });
	cairo_tag_end(cr, "Sect");
	if (i == book.n - 1)
		cairo_tag_end(cr, "Document");
	cairo_show_page(cr);
	return missing;
}

/* Full-size drawings ask to be printed at actual size. */
static enum pdf_printing printing(struct book book)
{
	switch (book.pages[0]->use) {
	case USE_SHEET: return PRINT_AS_LIKED;
	case USE_ROLL:
	case USE_TILES:
	case USE_STEP:
	case USE_CALIBRATION: break;
	}
	return PRINT_ACTUAL_SIZE;
}

struct output pdf_make(struct arena *a, struct book book)
{
	struct output out = { .buffer = buffer_new(a) };
	const struct buffer **content = NEW_N(a, const struct buffer *, book.n);
	cairo_surface_t *surface =
		cairo_pdf_surface_create_for_stream(output_stream, out.buffer, 1, 1);
	cairo_t *cr = cairo_create(surface);
	struct ink_pdf *ink = ink_pdf_new(a, cr, book.faces);

	cairo_pdf_surface_restrict_to_version(surface, CAIRO_PDF_VERSION_1_4);
	set_metadata(a, surface, book.imprint);
	for (int i = 0; i < book.n; i++) {
		out.missing += add_page(a, cr, ink, book, i);
		content[i] = ink_pdf_end_page(ink);
	}
	ink_pdf_free(ink);
	out.problem = output_finish(cr, surface);
	if (!out.problem)
		pdf_mend(out.buffer, (struct pdf_mending){ printing(book), content, book.n });
	return out;
}
