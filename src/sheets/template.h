/*
 * Full-size templates: what is taped to the stock and cut to, and what is laid on it and marked
 * from.
 *
 *   template.c              every template of a stair, and the files made of them
 *   template_pattern.h      what is drawn at true size, whatever it is of
 *   template_draft.c        drawing a pattern, and the lines that prove it
 *   template_stringer*.c    a stringer: its pattern, its words; its grooves; parted into few pieces
 *   template_unit.c         pieces joined edge to edge: their outline, joints and holes
 *   template_joined.c template_bores.c
 *   template_tread.c template_skirt.c template_jig*.c
 *   template_small*.c       profiles and cut ends, several to a sheet
 *   template_rods*.c        what is marked with rods; rail_runs.c: straight runs of rail
 *   template_rod.c          a marking rod: a strip with running positions
 *   template_tiling.c       how a pattern is spread over sheets of one size
 *   template_window.c       one sheet of it: its piece of the lines, joints and checks
 *   template_strips.c       long strips, one under the other on sheets
 *   template_page.c         a page and the room for lettering on it
 *   template_words.c        what every template says
 *   template_cover.c        what comes before the template itself: words, positions in figures
 *   template_map.c          the assembly map
 *   template_roll.c template_tiles.c template_calibration.c
 *
 * Nothing here knows where wood is: outlines and holes of the parts are the template.
 */
#ifndef SHEETS_TEMPLATE_H
#define SHEETS_TEMPLATE_H

#include "pitchboard/sheet.h"
#include "sheets/template_pattern.h"
#include "sheets/template_words.h"

/* The templates that the job asks for; those in sheets on `tile_paper`. */
struct drawing *templates_draw(struct arena *a, const struct sheet_context *c,
	const struct paper *tile_paper);

/* The job file's name without folder and extension: files made from it begin so. */
const char *job_stem(struct arena *a, const struct job *job);

/* What of the work is drawn over sheets: all of it, or only where there is something to mark. */
struct template_part {
	const char *name; /* "right-hand end"; "": all of it */
	struct pattern pattern;
};

/* What the kinds of template need of one piece of work. */
struct template_job {
	const struct sheet_context *context;
	const struct paper *paper; /* of the sheets to be joined: like the number, whoever asked for
				      the template fills it in */
	int number;                /* of the template, from 1 */
	const char *mark;          /* of the work: "S1" */
	const char *name; /* of its files: its mark, or that of the group it shares them with */
	struct template_words words;
	struct pattern pattern;            /* of all of it */
	const struct template_part *parts; /* NULL: all of it in one */
	int part_count;
	struct positions positions;
	const struct part *stringer; /* NULL unless it is one */
	const char *const *shows;    /* marks of the pieces it is of, for the cut list */
};

/* What follows from the piece alone: words, pattern and positions are still to come.  A part has
 * its files to itself, a unit shares those of `group`. */
struct template_job template_of_part(struct arena *a, const struct sheet_context *c,
	const struct part *p);
struct template_job template_of_unit(struct arena *a, const struct sheet_context *c,
	const struct unit *u, const char *group);

/* Templates that share a file, one after another. */
struct template_group {
	struct template_job *jobs;
	int n;
};

struct drawing *template_roll(struct arena *a, const struct template_job *t);
struct drawing *template_tiles(struct arena *a, struct template_group g);
struct drawing *template_step(struct arena *a, const struct template_job *t);
struct drawing *template_calibration(struct arena *a, struct measure measure, struct vec paper,
	const char *file);

#endif
