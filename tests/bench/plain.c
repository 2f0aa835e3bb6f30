/*
 * What the writer is measured against: the display lists of some jobs, replayed
 * by Cairo in the plainest way, each mark a stroke or a text of its own, into
 * the same files.  Reading and solving are not timed here.
 *
 *     plain COUNT FOLDER JOB...    prints the milliseconds of processor time of the quickest replay
 */
#include <cairo-pdf.h>
#include <cairo-svg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <time.h>

#include "base/file.h"
#include "pitchboard/sheet.h"
#include "pitchboard/write.h"
#include "write/faces.h"

#define POINTS (72 / 25.4)

static struct faces *faces;

static double now(void)
{
	struct timespec t;

	clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
	return (double)t.tv_sec * 1e3 + (double)t.tv_nsec / 1e6;
}

static void set_pen(cairo_t *cr, const struct drawing *g, enum pen pen)
{
	const double *pattern = pen_dashes(pen);
	double dashes[MOST_DASHES];
	int n = 0;

	for (; pattern[n] > 0; n++)
		dashes[n] = pattern[n] * POINTS;
	cairo_set_source_rgb(cr, 0, 0, 0);
	cairo_set_line_width(cr, pen_width(pen, g->pens) * POINTS);
	cairo_set_dash(cr, dashes, n, 0);
}

static void path(cairo_t *cr, const struct drawing *g, const struct vec *points, int n)
{
	for (int i = 0; i < n; i++)
		cairo_line_to(cr, points[i].x * POINTS, (g->height - points[i].y) * POINTS);
}

static void line(cairo_t *cr, const struct drawing *g, const struct mark *m)
{
	set_pen(cr, g, m->line.pen);
	path(cr, g, m->line.points, m->line.n);
	if (m->line.closed)
		cairo_close_path(cr);
	cairo_stroke(cr);
}

static void arc(cairo_t *cr, const struct drawing *g, const struct mark *m)
{
	set_pen(cr, g, m->arc.pen);
	cairo_arc_negative(cr, m->arc.centre.x * POINTS, (g->height - m->arc.centre.y) * POINTS,
		m->arc.radius * POINTS, -m->arc.from, -m->arc.to);
	cairo_stroke(cr);
}

static void fill(cairo_t *cr, const struct drawing *g, const struct mark *m)
{
	static const double greys[] = { 0, 0.6, 0.88, 1 };
	double grey = greys[m->fill.shade];

	cairo_set_source_rgb(cr, grey, grey, grey);
	path(cr, g, m->fill.points, m->fill.n);
	cairo_fill(cr);
}

static void text(cairo_t *cr, const struct drawing *g, const struct mark *m)
{
	enum face_name face = m->text.style == LETTER_BOLD ? FACE_BOLD : FACE_REGULAR;
	double width =
		measure_width(faces_measure(faces), m->text.style, m->text.height, m->text.text);

	cairo_save(cr);
	cairo_set_source_rgb(cr, 0, 0, 0);
	cairo_set_font_face(cr, faces_cairo(faces, face));
	cairo_set_font_size(cr, m->text.height * POINTS * faces_em(faces, face));
	cairo_translate(cr, m->text.at.x * POINTS, (g->height - m->text.at.y) * POINTS);
	cairo_rotate(cr, -m->text.angle);
	cairo_move_to(cr, -width * POINTS * m->text.align / 2, 0); /* left, middle, right */
	cairo_show_text(cr, m->text.text);
	cairo_restore(cr);
}

static void replay(cairo_t *cr, const struct drawing *g)
{
	for (const struct mark *m = g->first; m; m = m->next)
		switch (m->kind) {
		case MARK_LINE: line(cr, g, m); break;
		case MARK_ARC: arc(cr, g, m); break;
		case MARK_FILL: fill(cr, g, m); break;
		case MARK_TEXT: text(cr, g, m); break;
		}
	cairo_show_page(cr);
}

static void finish(cairo_t *cr, cairo_surface_t *s)
{
	cairo_destroy(cr);
	cairo_surface_finish(s);
	if (cairo_surface_status(s))
		fprintf(stderr, "plain: %s\n", cairo_status_to_string(cairo_surface_status(s)));
	cairo_surface_destroy(s);
}

static int is_first_of_file(const struct drawing *all, const struct drawing *g)
{
	for (; all != g; all = all->next)
		if (strcmp(all->file, g->file) == 0)
			return 0;
	return 1;
}

static void write_pdf(struct arena *a, const char *dir, const struct drawing *first)
{
	const char *name = arena_printf(a, "%s/%s.pdf", dir, first->file);
	cairo_surface_t *s = cairo_pdf_surface_create(name, 1, 1);
	cairo_t *cr = cairo_create(s);

	for (const struct drawing *g = first; g; g = g->next) {
		if (strcmp(g->file, first->file) != 0)
			continue;
		cairo_pdf_surface_set_size(s, g->width * POINTS, g->height * POINTS);
		replay(cr, g);
	}
	finish(cr, s);
}

static void write_svg(struct arena *a, const char *dir, const struct drawing *g)
{
	cairo_surface_t *s = cairo_svg_surface_create(arena_printf(a, "%s/%s.svg", dir, g->svg),
		g->width * POINTS, g->height * POINTS);
	cairo_t *cr = cairo_create(s);

	replay(cr, g);
	finish(cr, s);
}

static void write_all(struct arena *a, const char *dir, const struct drawing *drawings)
{
	for (const struct drawing *g = drawings; g; g = g->next) {
		if (is_first_of_file(drawings, g))
			write_pdf(a, dir, g);
		if (g->svg)
			write_svg(a, dir, g);
	}
}

static const struct drawing *drawings_of(struct arena *a, const char *path)
{
	struct file_result r = file_read(a, path);
	struct diags d;

	if (r.problem)
		return NULL;
	const char *yaml = arena_strndup(a, (const char *)r.file->bytes, r.file->size);
	diags_init(&d, a, path, yaml);
	const struct stationery *stationery = stationery_read(a, "templates", &d);
	const struct stair *stair = stair_solve(a, job_read(a, yaml, &d), NULL, &d);
	const struct drawing *drawings = sheets_draw(a, stair, parts_make(a, stair, &d),
		(struct issue){ .findings = NULL }, stationery, faces_measure(faces), &d);
	if (!drawings)
		diags_print(&d, stderr);
	return drawings;
}

int main(int argc, char **argv)
{
	struct arena *a = arena_new();
	const char *problem;
	double best = -1;

	faces = faces_load(a, "templates", &problem);
	if (!faces || argc < 4)
		return 2;
	mkdir(argv[2], 0777);
	const struct drawing **jobs = NEW_N(a, const struct drawing *, argc);
	for (int i = 3; i < argc; i++) {
		jobs[i] = drawings_of(a, argv[i]);
		if (!jobs[i])
			return 2;
	}
	for (int run = 0; run < atoi(argv[1]); run++) {
		double start = now();
		for (int i = 3; i < argc; i++)
			write_all(a, argv[2], jobs[i]);
		best = best < 0 ? now() - start : best < now() - start ? best : now() - start;
	}
	printf("%.2f\n", best);
	faces_free(faces);
	arena_free(a);
	return 0;
}
