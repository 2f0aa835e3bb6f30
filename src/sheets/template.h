/*
 * Full-size templates of the stringers: what is taped to the stock and cut to.
 *
 *   template.c              every different stringer, and the files made of it
 *   template_pattern.c      what is drawn of a stringer, at true size in its own axes
 *   template_grooves.c      the lines to rout a housing to
 *   template_positions.c    every corner in figures
 *   template_tiling.c       how a pattern is spread over sheets of one size
 *   template_window.c       one sheet of it: its piece of the lines, joints and checks
 *   template_page.c         a page and the room for lettering on it
 *   template_pieces.c       a stringer parted into few short pieces
 *   template_words.c        what every template says
 *   template_cover.c        what comes before the template itself: words, positions in figures
 *   template_map.c          the assembly map
 *   template_roll.c template_tiles.c template_step.c template_calibration.c
 *
 * Nothing here knows where wood is: the part's outline is the template.
 */
#ifndef SHEETS_TEMPLATE_H
#define SHEETS_TEMPLATE_H

#include "pitchboard/sheet.h"

/* For each different stringer a roll, a tiled and a step file; tiles and steps on `tile_paper`. */
struct drawing *templates_draw(struct arena *a, const struct sheet_context *c,
	const struct paper *tile_paper);

/* The job file's name without folder and extension: files made from it begin so. */
const char *job_stem(struct arena *a, const struct job *job);

/* What the kinds of template need of one stringer. */
struct template_job {
	const struct sheet_context *context;
	const struct part *part;
	const struct paper *paper;
	int number; /* of the template, from 1 */
};

struct drawing *template_roll(struct arena *a, const struct template_job *t);
struct drawing *template_tiles(struct arena *a, const struct template_job *t);
struct drawing *template_step(struct arena *a, const struct template_job *t);
struct drawing *template_calibration(struct arena *a, const struct template_job *t,
	struct vec paper, const char *file);

#endif
