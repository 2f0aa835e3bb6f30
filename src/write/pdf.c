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
	struct text *b = text_new(a);

	for (; *s; s++) {
		if (*s == '\'' || *s == '\\')
			text_put_bytes(b, "\\", 1);
		text_put_bytes(b, s, 1);
	}
	return text_chars(b);
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

/* A book while it is made. */
struct making {
	struct arena *arena;
	struct book book;
	cairo_t *cr;
	struct ink_pdf *ink;
};

static void paint_page(struct making *m, int i)
{
	const struct drawing *g = m->book.pages[i];

	cairo_tag_begin(m->cr, "Sect", NULL);
	ink_pdf_begin_page(m->ink, g->height);
	paint_drawing((struct canvas){ &m->ink->base, g, m->book.faces, m->arena });
	ink_pdf_end_page(m->ink);
	cairo_tag_end(m->cr, "Sect");
}

static void add_page(struct making *m, int i)
{
	const struct drawing *g = m->book.pages[i];
	double width = g->width * POINTS_PER_MM, height = g->height * POINTS_PER_MM;

	assert(width <= LONGEST_PAGE && height <= LONGEST_PAGE);
	cairo_pdf_surface_set_size(cairo_get_target(m->cr), width, height);
	if (i == 0)
		cairo_tag_begin(m->cr, "Document", NULL);
	name_page(m->arena, m->cr, g);
	paint_page(m, i);
	if (i == m->book.n - 1)
		cairo_tag_end(m->cr, "Document");
	cairo_show_page(m->cr);
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
	struct text *pdf = text_new(a);
	cairo_surface_t *surface = cairo_pdf_surface_create_for_stream(output_stream, pdf, 1, 1);
	struct making m = {
		.arena = a,
		.book = book,
		.cr = cairo_create(surface),
	};

	cairo_pdf_surface_restrict_to_version(surface, CAIRO_PDF_VERSION_1_4);
	set_metadata(a, surface, book.imprint);
	m.ink = ink_pdf_new(a, m.cr, book.faces);
	for (int i = 0; i < book.n; i++)
		add_page(&m, i);
	ink_pdf_free(m.ink);
	const char *problem = output_finish(m.cr, surface);
	if (!problem)
		problem = pdf_mend(pdf, printing(book));
	return (struct output){ pdf, problem };
}
