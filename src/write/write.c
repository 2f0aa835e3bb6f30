#include "pitchboard/write.h"

#include <stdbool.h>
#include <string.h>

#include "base/file.h"
#include "write/pdf.h"
#include "write/svg.h"

/* A run of write_drawings.  Every file goes to the disk as soon as it is made, so that no two of
 * them are in memory together; under its own name only when all of them are there. */
struct writing {
	struct arena *arena;
	const struct drawing *drawings;
	const struct imprint *imprint;
	const struct faces *faces;
	struct outlines *outlines;
	const char *dir;
	struct fileset *set;
	struct written *first, **tail;
	const char *problem; /* the first one: after it no more files are made */
};

static void keep(struct writing *w, const char *stem, const char *ending, struct output out)
{
	struct written *f = NEW(w->arena, struct written);

	f->path = arena_printf(w->arena, "%s/%s.%s", w->dir, stem, ending);
	*w->tail = f;
	w->tail = &f->next;
	if (out.problem)
		w->problem =
			arena_printf(w->arena, "%s: cannot be drawn: %s", f->path, out.problem);
	else
		w->problem = fileset_add(w->set, f->path, text_chars(out.text), out.text->length);
}

static bool same_file(const struct drawing *a, const struct drawing *b)
{
	return strcmp(a->file, b->file) == 0;
}

static bool is_first_of_file(const struct writing *w, const struct drawing *g)
{
	for (const struct drawing *before = w->drawings; before != g; before = before->next)
		if (same_file(before, g))
			return false;
	return true;
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
	for (const struct drawing *g = w->drawings; g && !w->problem; g = g->next) {
		if (is_first_of_file(w, g))
			make_pdf(w, g);
		if (g->svg && !w->problem)
			make_svg(w, g);
	}
}

struct write_result write_drawings(struct arena *a, const struct drawing *drawings,
	const struct imprint *imprint, const struct faces *faces, const char *dir)
{
	struct writing w = { a, drawings, imprint, faces, outlines_new(a, faces), dir,
		.tail = &w.first };

	w.problem = folder_make(a, dir);
	if (w.problem)
		return (struct write_result){ .problem = w.problem };
	w.set = fileset_open(a);
	make_files(&w);
	w.problem = fileset_close(w.set, w.problem);
	return (struct write_result){
		.files = w.problem ? NULL : w.first,
		.problem = w.problem,
	};
}
