/*
 * By an incremental update (ISO 32000-1, 7.5.6): the file stays as it is, and
 * behind it come new versions of two objects, a table of where they are, and a
 * trailer that points back at the old table.
 *
 *     ...the file as Cairo wrote it...
 *     36 0 obj << ...catalog... >> endobj
 *     35 0 obj << ...date... >> endobj
 *     xref
 *     36 1 ...
 *     35 1 ...
 *     trailer << /Size 37 /Root 36 0 R /Info 35 0 R /Prev 4711 >>
 */
#include "write/pdf_mend.h"

#include <stdlib.h>
#include <string.h>

/* Length of an entry of the classic table of cross references, line end included. */
#define ENTRY 20

struct update {
	struct text *pdf;
	struct text *table;    /* the new cross references */
	const char *old_table; /* its first entry; NULL: there is none */
	long size;             /* objects in the file, numbered from 0 */
	long root, info, before;
};

/* The number after the last `what` in the file; -1: there is none. */
static long number_after(const struct text *pdf, const char *what)
{
	size_t length = strlen(what);

	for (size_t at = pdf->length; at-- > length;)
		if (memcmp(pdf->chars + at - length, what, length) == 0)
			return strtol(pdf->chars + at, NULL, 10);
	return -1;
}

static const char *next_line(const char *s)
{
	const char *end = s ? strchr(s, '\n') : NULL;

	return end ? end + 1 : NULL;
}

/* "xref", "0 37", and then an entry an object. */
static const char *find_table(const struct update *u)
{
	const struct text *pdf = u->pdf;

	if (u->before < 0 || (size_t)u->before >= pdf->length ||
		strncmp(pdf->chars + u->before, "xref\n", 5) != 0)
		return NULL;
	const char *table = next_line(next_line(pdf->chars + u->before));
	const char *end = pdf->chars + pdf->length;
	if (!table || u->size < 1 || end - table < u->size * ENTRY)
		return NULL;
	return arena_strndup(pdf->arena, table, ENTRY * (size_t)u->size);
}

static struct update update_begin(struct text *pdf)
{
	struct update u = {
		.pdf = pdf,
		.table = text_new(pdf->arena),
		.size = number_after(pdf, "/Size "),
		.root = number_after(pdf, "/Root "),
		.info = number_after(pdf, "/Info "),
		.before = number_after(pdf, "startxref\n"),
	};

	u.old_table = find_table(&u);
	return u;
}

/* An object as it was, from << to the >> that ends it, without that; NULL: it is not there. */
static const char *old_object(const struct update *u, long number)
{
	if (!u->old_table || number < 0 || number >= u->size)
		return NULL;
	long at = strtol(u->old_table + ENTRY * number, NULL, 10);
	if (at <= 0 || (size_t)at >= u->pdf->length)
		return NULL;
	const char *start = strstr(u->pdf->chars + at, "<<");
	const char *end = start ? strstr(start, ">>\nendobj") : NULL;
	if (!end)
		end = start ? strstr(start, ">>\n\nendobj") : NULL;
	return end ? arena_strndup(u->pdf->arena, start, (size_t)(end - start)) : NULL;
}

static void new_version(struct update *u, long number, const char *text)
{
	text_add(u->table, "%ld 1\n%010zu 00000 n \n", number, u->pdf->length);
	text_add(u->pdf, "%ld 0 obj\n%s>>\nendobj\n", number, text);
}

static void update_end(struct update *u)
{
	size_t table = u->pdf->length;

	text_put(u->pdf, "xref\n");
	text_put(u->pdf, text_chars(u->table));
	text_add(u->pdf,
		"trailer\n<< /Size %ld\n   /Root %ld 0 R\n   /Info %ld 0 R\n   /Prev %ld\n>>\n"
		"startxref\n%zu\n%%%%EOF\n",
		u->size, u->root, u->info, u->before, table);
}

/* Cairo 1.16 leaves out the D: that a date begins with. */
static const char *mended_date(struct arena *a, const char *info)
{
	static const char key[] = "/CreationDate (";
	const char *at = strstr(info, key);

	if (!at || strncmp(at + strlen(key), "D:", 2) == 0)
		return NULL;
	at += strlen(key);
	return arena_printf(a, "%.*sD:%s", (int)(at - info), info, at);
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

const char *pdf_mend(struct text *pdf, enum pdf_printing printing)
{
	struct update u = update_begin(pdf);
	const char *catalog = old_object(&u, u.root), *info = old_object(&u, u.info);

	if (!catalog || !info)
		return "this version of Cairo writes a kind of PDF that is not known here";
	const char *date = mended_date(pdf->arena, info);
	if (date)
		new_version(&u, u.info, date);
	new_version(&u, u.root, arena_printf(pdf->arena, "%s%s", catalog, catalog_keys(printing)));
	update_end(&u);
	return NULL;
}
