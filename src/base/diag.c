#include "pitchboard/diag.h"

#include <stdbool.h>
#include <string.h>

void diags_init(struct diags *d, struct arena *a, const char *file, const char *source)
{
	*d = (struct diags){ .arena = a, .file = file, .source = source };
}

static bool before(struct pos a, struct pos b)
{
	return a.line < b.line || (a.line == b.line && a.col < b.col);
}

static bool is_same(const struct diag *a, const struct diag *b)
{
	return a->level == b->level && a->at.line == b->at.line && a->at.col == b->at.col &&
		strcmp(a->text, b->text) == 0;
}

/* What is found once a side, or once a stretch, is told once; it counts every time, for a pass asks
 * by the count whether it found anything itself. */
static void add(struct diags *d, struct diag diag)
{
	struct diag **at = &d->first;

	for (; *at && !before(diag.at, (*at)->at); at = &(*at)->next)
		if (is_same(*at, &diag))
			return;
	diag.next = *at;
	*at = NEW(d->arena, struct diag);
	**at = diag;
}

void diag_error(struct diags *d, struct pos at, const char *hint, const char *fmt, ...)
{
	va_list ap;

	va_start(ap, fmt);
	const char *text = arena_vprintf(d->arena, fmt, ap);
	va_end(ap);
	add(d, (struct diag){ .level = DIAG_ERROR, .at = at, .hint = hint, .text = text });
	d->errors++;
}

void diag_warning(struct diags *d, struct pos at, const char *hint, const char *fmt, ...)
{
	va_list ap;

	va_start(ap, fmt);
	const char *text = arena_vprintf(d->arena, fmt, ap);
	va_end(ap);
	add(d, (struct diag){ .level = DIAG_WARNING, .at = at, .hint = hint, .text = text });
	d->warnings++;
}

/* The first byte of line `n`, or NULL when the text has no such line. */
static const char *find_line(const char *text, int n)
{
	while (text && --n > 0) {
		text = strchr(text, '\n');
		if (text)
			text++;
	}
	return text;
}

/* Spaces up to column `col` of `line`, tabs kept so that the caret stands under
 * its character however wide the terminal sets a tab. */
static void print_indent(const char *line, int col, FILE *to)
{
	for (int i = 1; i < col; i++) {
		bool in_line = *line && *line != '\n';
		fputc(in_line && *line == '\t' ? '\t' : ' ', to);
		if (!in_line)
			continue;
		line++;
		while (((unsigned char)*line & 0xC0) == 0x80)
			line++;
	}
}

static void print_source(const struct diags *d, const struct diag *diag, FILE *to)
{
	const char *line = find_line(d->source, diag->at.line);

	if (!line)
		return;
	size_t length = strcspn(line, "\r\n");
	fprintf(to, "%5d | %.*s\n      | ", diag->at.line, (int)length, line);
	print_indent(line, diag->at.col, to);
	fprintf(to, "^%s%s\n", diag->hint ? " " : "", diag->hint ? diag->hint : "");
}

static void print_one(const struct diags *d, const struct diag *diag, FILE *to)
{
	const char *level = diag->level == DIAG_ERROR ? "error" : "warning";

	if (diag->at.line < 1) {
		fprintf(to, "%s: %s: %s\n", d->file, level, diag->text);
		if (diag->hint)
			fprintf(to, "      | %s\n", diag->hint);
		return;
	}
	fprintf(to, "%s:%d:%d: %s: %s\n", d->file, diag->at.line, diag->at.col, level, diag->text);
	print_source(d, diag, to);
}

void diags_print(const struct diags *d, FILE *to)
{
	for (const struct diag *diag = d->first; diag; diag = diag->next)
		print_one(d, diag, to);
}
