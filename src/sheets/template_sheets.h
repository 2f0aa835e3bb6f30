/*
 * The sheets of one template file: all of one size, with the same margins.
 *
 *   +---------------------------------+
 *   | +-----------------------------+ |
 *   | | frame: the pattern shows    |b|   b: bars of 100 mm and 4 in along y
 *   | | here, at true size          |b|
 *   | +-----------------------------+ |
 *   | words: job, piece, when to stop |
 *   | bbbbbbbb  name                  |   bars along x
 *   +---------------------------------+
 */
#ifndef SHEETS_TEMPLATE_SHEETS_H
#define SHEETS_TEMPLATE_SHEETS_H

#include "draw/annotate.h"
#include "sheets/template.h"
#include "sheets/template_window.h"

enum paper_turn { PAPER_AS_GIVEN, PAPER_TURNED };

struct template_sheets {
	struct arena *arena;
	const struct template_job *job;
	enum drawing_use use;
	const char *file;
	struct vec paper;
	struct window_place place;
	const char *small_print; /* beside the bars */
};

struct template_sheets template_sheets(struct arena *a, const struct template_job *t,
	enum drawing_use use, const char *kind, enum paper_turn turn);

/* A page with nothing on it yet, named as belonging to the file. */
struct page template_page(const struct template_sheets *s, const char *id, const char *title);

/* Where words begin on a page without a frame. */
struct vec sheet_top(const struct template_sheets *s);

/* One sheet of a tiled pattern. */
struct drawing *sheet_of_tile(const struct template_sheets *s, const struct tiling *t,
	struct tile at);

/* All printed sheets of a tiled pattern, row by row. */
struct drawing *sheets_of_tiling(const struct template_sheets *s, const struct tiling *t);

/* The bars and the small print, below and beside the frame. */
void sheet_checks(const struct template_sheets *s, struct page *page, const char *name);

#endif
