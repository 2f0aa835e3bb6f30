/*
 * By an incremental update (ISO 32000-1, 7.5.6): the file stays as it is, and
 * behind it come new versions of some objects and new objects, a table of where
 * they are, and a trailer that points back at the old table.
 *
 *     ...the file as Cairo wrote it...
 *     36 0 obj << ...catalog... >> endobj
 *     37 0 obj << ...lines of a page... >> stream ... endstream endobj
 *     xref
 *     36 1 ...
 *     37 1 ...
 *     trailer << /Size 38 /Root 36 0 R /Info 35 0 R /Prev 4711 >>
 */
#include "write/pdf_mend.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

struct update {
	struct buffer *pdf;
	struct buffer *table;  /* the new cross references */
	const char *old_table; /* its first entry */
	long size;             /* objects in the file, numbered from 0 */
	long root, info, before;
};

/* The last place of `what`; it is there, because Cairo wrote it. */
static const char *last(const struct buffer *pdf, const char *what)
{
	size_t length = strlen(what);

	for (const char *p = pdf->bytes + pdf->size - length; p > pdf->bytes; p--)
		if (memcmp(p, what, length) == 0)
			return p;
	assert(!"Cairo writes a classic trailer");
	return pdf->bytes;
}

static long number_after(const struct buffer *pdf, const char *what)
{
	return strtol(last(pdf, what) + strlen(what), NULL, 10);
}

static const char *next_line(const char *s)
{
	return strchr(s, '\n') + 1;
}

static struct update update_begin(struct buffer *pdf)
{
	struct update u = {
		.pdf = pdf,
		.table = buffer_new(pdf->arena),
		.size = number_after(pdf, "/Size "),
		.root = number_after(pdf, "/Root "),
		.info = number_after(pdf, "/Info "),
		.before = number_after(pdf, "startxref\n"),
	};

	/* "xref", "0 37", and then 20 bytes an object */
	const char *table = next_line(next_line(pdf->bytes + u.before));
	u.old_table = arena_strndup(pdf->arena, table, 20 * (size_t)u.size);
	return u;
}

/* An object as it was, from << to the >> that ends it, without that. */
static const char *old_object(const struct update *u, long number)
{
	const char *object = u->pdf->bytes + strtol(u->old_table + 20 * number, NULL, 10);
	const char *start = strstr(object, "<<"), *end = strstr(start, "\nendobj");

	while (end[-1] != '>')
		end--;
	return arena_strndup(u->pdf->arena, start, (size_t)(end - start) - 2);
}

static void begin_object(struct update *u, long number)
{
	buffer_printf(u->table, "%ld 1\n%010zu 00000 n \n", number, u->pdf->size);
	buffer_printf(u->pdf, "%ld 0 obj\n", number);
}

static void new_version(struct update *u, long number, const char *text)
{
	begin_object(u, number);
	buffer_text(u->pdf, text);
	buffer_text(u->pdf, ">>\nendobj\n");
}

static void update_end(struct update *u)
{
	size_t table = u->pdf->size;

	buffer_text(u->pdf, "xref\n");
	buffer_text(u->pdf, u->table->bytes);
	buffer_printf(u->pdf,
		"trailer\n<< /Size %ld\n   /Root %ld 0 R\n   /Info %ld 0 R\n   /Prev %ld\n>>\n"
		"startxref\n%zu\n%%%%EOF\n",
		u->size, u->root, u->info, u->before, table);
}

/* Cairo 1.16 leaves out the D: that a date begins with. */
static void mend_date(struct update *u)
{
	static const char key[] = "/CreationDate (";
	const char *info = old_object(u, u->info);
	const char *at = strstr(info, key);

	if (!at || strncmp(at + strlen(key), "D:", 2) == 0)
		return;
	at += strlen(key);
	new_version(u, u->info,
		arena_printf(u->pdf->arena, "%.*sD:%s", (int)(at - info), info, at));
}

static const char *catalog_keys(enum pdf_printing printing)
{
	switch (printing) {
	case PRINT_AS_LIKED:
		return "   /Lang (en-US)\n"
		       "   /ViewerPreferences << /DisplayDocTitle true >>\n";
	case PRINT_ACTUAL_SIZE:
		return "   /Lang (en-US)\n"
		       "   /Version /1.7\n"
		       "   /ViewerPreferences << /DisplayDocTitle true /PrintScaling /None\n"
		       "      /Duplex /Simplex /PickTrayByPDFSize true >>\n";
	}
	return "";
}

static void mend_catalog(struct update *u, enum pdf_printing printing)
{
	new_version(u, u->root,
		arena_printf(u->pdf->arena, "%s%s", old_object(u, u->root),
			catalog_keys(printing)));
}

static void add_stream(struct update *u, const struct buffer *packed)
{
	begin_object(u, u->size++);
	buffer_printf(u->pdf, "<< /Length %zu /Filter /FlateDecode >>\nstream\n", packed->size);
	buffer_add(u->pdf, packed->bytes, packed->size);
	buffer_text(u->pdf, "\nendstream\nendobj\n");
}

/* /Contents 8 0 R  becomes  /Contents [ 37 0 R 8 0 R ] */
static void mend_page(struct update *u, long number, const struct buffer *packed)
{
	static const char key[] = "/Contents ";
	const char *page = old_object(u, number);
	const char *before = strstr(page, key) + strlen(key);
	long letters = strtol(before, NULL, 10);
	const char *after = strchr(before, 'R') + 1;

	new_version(u, number,
		arena_printf(u->pdf->arena, "%.*s[ %ld 0 R %ld 0 R ]%s", (int)(before - page), page,
			u->size, letters, after));
	add_stream(u, packed);
}

static void mend_pages(struct update *u, struct pdf_mending m)
{
	static const char pages[] = "/Pages ", kids[] = "/Kids [";
	const char *catalog = old_object(u, u->root);
	long tree = strtol(strstr(catalog, pages) + strlen(pages), NULL, 10);
	const char *kid = strstr(old_object(u, tree), kids) + strlen(kids);

	for (int i = 0; i < m.pages; i++) {
		mend_page(u, strtol(kid, NULL, 10), m.content[i]);
		kid = strchr(kid, 'R') + 1;
	}
}

void pdf_mend(struct buffer *pdf, struct pdf_mending m)
{
	struct update u = update_begin(pdf);

	mend_date(&u);
	mend_catalog(&u, m.printing);
	mend_pages(&u, m);
	update_end(&u);
}
