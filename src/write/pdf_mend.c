/*
 * By an incremental update (ISO 32000-1, 7.5.6): the file stays as it is, and
 * behind it come new versions of two objects, a table of where they are, and a
 * trailer that points back at the old table.
 *
 *     ...the file as Cairo wrote it...
 *     36 0 obj << ...catalog... >> endobj
 *     35 0 obj << ...information... >> endobj
 *     xref
 *     35 2 ...
 *     trailer << /Size 37 /Root 36 0 R /Info 35 0 R /Prev 4711 >>
 */
#include "write/pdf_mend.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

/* An object of the file: its number, and its dictionary without the closing >>. */
struct object {
	long number;
	const char *text;
	size_t at; /* where its new version is */
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

/* Entries of the table are 20 bytes each, after the line "0 37". */
static const char *object_start(const struct buffer *pdf, long number)
{
	const char *table = pdf->bytes + number_after(pdf, "startxref\n");
	const char *entries = strchr(strchr(table, '\n') + 1, '\n') + 1;

	return pdf->bytes + strtol(entries + 20 * number, NULL, 10);
}

static struct object object_find(const struct buffer *pdf, const char *named)
{
	long number = number_after(pdf, named);
	const char *start = strstr(object_start(pdf, number), "<<");
	const char *end = strstr(start, "\nendobj");

	while (end[-1] != '>')
		end--;
	return (struct object){
		.number = number,
		.text = arena_strndup(pdf->arena, start, (size_t)(end - start) - 2),
	};
}

static void object_add(struct buffer *pdf, struct object *o, const char *more)
{
	o->at = pdf->size;
	buffer_printf(pdf, "%ld 0 obj\n%s%s>>\nendobj\n", o->number, o->text, more);
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

/* Cairo 1.16 leaves out the D: that a date begins with. */
static void mend_date(struct arena *a, struct object *info)
{
	static const char key[] = "/CreationDate (";
	char *at = strstr(info->text, key);

	if (!at || strncmp(at + strlen(key), "D:", 2) == 0)
		return;
	at += strlen(key);
	info->text = arena_printf(a, "%.*sD:%s", (int)(at - info->text), info->text, at);
}

static void add_entry(struct buffer *pdf, const struct object *o)
{
	buffer_printf(pdf, "%ld 1\n%010zu 00000 n \n", o->number, o->at);
}

void pdf_mend(struct buffer *pdf, enum pdf_printing printing)
{
	long before = number_after(pdf, "startxref\n"), size = number_after(pdf, "/Size ");
	struct object catalog = object_find(pdf, "/Root ");
	struct object info = object_find(pdf, "/Info ");

	mend_date(pdf->arena, &info);
	object_add(pdf, &info, "");
	object_add(pdf, &catalog, catalog_keys(printing));
	size_t table = pdf->size;
	buffer_text(pdf, "xref\n");
	add_entry(pdf, &info);
	add_entry(pdf, &catalog);
	buffer_printf(pdf,
		"trailer\n<< /Size %ld\n   /Root %ld 0 R\n   /Info %ld 0 R\n   /Prev %ld\n>>\n"
		"startxref\n%zu\n%%%%EOF\n",
		size, catalog.number, info.number, before, table);
}
