/*
 * What a shop keeps in templates/ and may edit: papers, the title block, sets.
 */
#ifndef PITCHBOARD_STATIONERY_H
#define PITCHBOARD_STATIONERY_H

#include <stdbool.h>

#include "pitchboard/arena.h"
#include "pitchboard/diag.h"
#include "pitchboard/drawing.h"

/* An architect's scales or decimal ones; of the job, as its lengths are lettered. */
enum scale_family { SCALES_OF_JOB, SCALES_IMPERIAL, SCALES_METRIC };

/* Small papers have a block of fewer and longer rows. */
enum title_form { TITLE_USUAL, TITLE_SLIM };

struct paper {
	const char *name;     /* "Letter", "A3": as the job names it */
	double width, height; /* as drawn on: landscape but for Letter and A4 templates */
	double left, right, top, bottom; /* paper's edge to frame */
	enum pen_group pens;
	enum scale_family scales;
	enum title_form title;
	double lettering; /* height of a capital for figures and notes */
};

/* One box of the title block.  What it shows is job, shop, shop_address, client, site, drawn_by,
 * date, title, sheet, of, scale, revision, status, units, fingerprint, set, job_number, program or
 * initials, or words of its own. */
struct title_cell {
	const char *label; /* small, at the top of the cell; may be "" */
	const char *shows; /* a field by name, or literal text after "=" */
	double share;      /* of the row's width */
	double letter;     /* height of a capital */
};

struct title_row {
	double height;
	const struct title_cell *cells;
	int n;
};

struct title_block {
	double width; /* at most; as wide as the frame where the paper is narrower */
	const struct title_row *rows;
	int n;
};

/* Who reads a set: decides what a view says beside the stair itself (src/sheets/reader.c). */
enum set_reader { READER_SHOP, READER_DEPARTMENT, READER_CLIENT };

/* Which sheets a set holds, by the names in the table of src/sheets/sheet.c. */
struct sheet_set {
	const char *name;
	const char *title;
	enum set_reader reader;
	const char *says; /* in the margin of every sheet; "": nothing */
	double stamp;     /* width of the space kept clear for a stamp beside the title block */
	double lettering; /* times the paper's */
	bool templates;   /* do the full-size templates come with it? */
	const char *const *sheets;
	int n;
};

struct stationery {
	const struct paper *papers;
	int paper_count;
	struct title_block title, slim; /* slim: no rows where the shop has none */
	const struct sheet_set *sets;
	int set_count;
};

/* Reads papers.yaml, title-block.yaml and sets/NAME.yaml below `dir`.
 * NULL after an error, which is in `d` and names the file. */
const struct stationery *stationery_read(struct arena *a, const char *dir, struct diags *d);

/* By name, case and spaces not minded; NULL when there is none. */
const struct paper *stationery_paper(const struct stationery *s, const char *name);
/* The block that goes on this paper. */
const struct title_block *stationery_title(const struct stationery *s, const struct paper *p);
const struct sheet_set *stationery_set(const struct stationery *s, const char *name);

#endif
