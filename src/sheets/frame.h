/*
 * The frame of a sheet: border, title block, notes; and what is left for views.
 *
 *   +--------------------------------------+
 *   |                                      |
 *   |               views                  |
 *   |                                      |
 *   | notes                                |
 *   |---------------------+----------------|
 *   | notes               |  title block   |
 *   +---------------------+----------------+
 */
#ifndef SHEETS_FRAME_H
#define SHEETS_FRAME_H

#include "draw/annotate.h"
#include "pitchboard/sheet.h"
#include "sheets/prose.h"

/* A sheet being drawn. */
struct sheet {
	const struct sheet_context *context;
	struct drawing *drawing;
	struct hand hand;
	struct box room; /* for views; shrinks as notes and tables are put on */
	double top;      /* of the room when nothing was on the sheet */
	double bottom;   /* and its foot */
};

struct sheet sheet_begin(struct arena *a, const struct sheet_context *c, const char *title);

/* Down to the border, left of the title block and its stamp; for a sheet without notes. */
struct box sheet_room_beside(const struct sheet *s);

/* A way to set notes on a sheet. */
typedef void set_notes_fn(struct sheet *s, const struct note *notes, int n);

/* Paragraphs in columns beside the title block, rising above it only when there are too many. */
void sheet_notes(struct sheet *s, const struct note *notes, int n);

/* The same in one column at the right of the room, for a view that is as high as the sheet. */
void sheet_notes_right(struct sheet *s, const struct note *notes, int n);

/* The same on a sheet that has little else: in columns that fill the room from its top, in letters
 * as large as there is room for. */
void sheet_of_notes(struct sheet *s, const struct note *notes, int n);

/* The job's assumptions that belong on this kind of sheet as one paragraph, "" when there are none.
 */
const char *assumptions_text(struct arena *a, const struct job *job, unsigned shown);

/* Frame and title block of every sheet in the list, numbered "n of N".  Called once, when all are
 * drawn. */
void frames_draw(struct arena *a, const struct sheet_context *c, struct drawing *sheets);

/* Is the paper too narrow for title block and stamp beside each other? */
bool frame_lacks_stamp(const struct sheet_context *c);

#endif
