#include "pitchboard/write.h"

#include <string.h>

#include "base/file.h"
#include "write/pdf.h"
#include "write/svg.h"

/* A run of write_drawings: all files are made in memory before the first is written. */
struct writing {
	struct arena *arena;
	const struct drawing *drawings;
	const struct imprint *imprint;
	const struct faces *faces;
	struct outlines *outlines;
	const char *dir;
	struct file *first, **tail;
	const char *problem;
};

/* What it took to make a file is given back before the next one is made. */
static void keep(struct writing *w, const char *stem, const char *ending, struct output out)
{
	struct file *f = NEW(w->arena, struct file);

	f->path = arena_printf(w->arena, "%s/%s.%s", w->dir, stem, ending);
	f->size = out.text->length;
	f->bytes = memcpy(NEW_N(w->arena, char, f->size), text_chars(out.text), f->size);
	*w->tail = f;
	w->tail = &f->next;
	if (out.problem && !w->problem)
		w->problem =
			arena_printf(w->arena, "%s: cannot be drawn: %s", f->path, out.problem);
}

static int same_file(const struct drawing *a, const struct drawing *b)
{
	return strcmp(a->file, b->file) == 0;
}

static int is_first_of_file(const struct writing *w, const struct drawing *g)
{
	for (const struct drawing *before = w->drawings; before != g; before = before->next)
		if (same_file(before, g))
			return 0;
	return 1;
}

static void make_pdf(struct writing *w, const struct drawing *first)
{
	struct book book = { .imprint = w->imprint, .faces = w->faces };
	const struct drawing **pages = NULL;

	for (const struct drawing *g = first; g; g = g->next)
		book.n += same_file(g, first);
	book.pages = pages = NEW_N(w->arena, const struct drawing *, book.n);
	for (const struct drawing *g = first; g; g = g->next)
		if (same_file(g, first))
			*pages++ = g;
	struct arena *scratch = arena_new();
	keep(w, first->file, "pdf", pdf_make(scratch, book));
	arena_free(scratch);
}

static void make_svg(struct writing *w, const struct drawing *g)
{
	struct arena *scratch = arena_new();

	keep(w, g->svg, "svg", svg_make(scratch, g, w->imprint, w->outlines));
	arena_free(scratch);
}

static void make_files(struct writing *w)
{
	for (const struct drawing *g = w->drawings; g; g = g->next) {
		if (is_first_of_file(w, g))
			make_pdf(w, g);
		if (g->svg)
			make_svg(w, g);
	}
}

static const struct written *paths(struct arena *a, const struct file *files)
{
	struct written *first = NULL, **tail = &first;

	for (const struct file *f = files; f; f = f->next) {
		*tail = NEW(a, struct written);
		(*tail)->path = f->path;
		tail = &(*tail)->next;
	}
	return first;
}

struct write_result write_drawings(struct arena *a, const struct drawing *drawings,
	const struct imprint *imprint, const struct faces *faces, const char *dir)
{
	struct writing w = { a, drawings, imprint, faces, outlines_new(a, faces), dir,
		.tail = &w.first };

	make_files(&w);
	if (!w.problem)
		w.problem = folder_make(a, dir);
	if (!w.problem)
		w.problem = files_write(a, w.first);
	return (struct write_result){
		.files = w.problem ? NULL : paths(a, w.first),
		.problem = w.problem,
	};
}
