/*
 * Close-ups: windows of views with sizes, a ball and words, in rows on their sheets.
 *
 *   +-----------+ +-----------+ +-----------+
 *   |  |-----|  | |           | |           |
 *   |  |  o  |  | |           | |           |
 *   +-----------+ +-----------+ +-----------+
 *   Title  1:8    Title  1:8    Title  1:8
 *   words         words         words
 */
#ifndef SHEETS_CLOSEUP_H
#define SHEETS_CLOSEUP_H

#include "draw/dimension.h"
#include "draw/view.h"
#include "sheets/closeup_holes.h"
#include "sheets/compose.h"

/* A size in the view's own millimetres, drawn in a lane of its own beside the window. */
struct closeup_size {
	enum dim_side side;
	double from, to;
	double foot; /* across: where its extension lines start */
};

enum { MOST_SIZES = 6, MOST_WORDS = 14 };

struct closeup {
	const struct sheet_context *context;
	const char *title;
	struct view view;
	struct box window; /* of the view */
	struct closeup_size sizes[MOST_SIZES];
	int size_count;
	struct closeup_holes holes;
	struct vec ball; /* its middle, in the view */
	double diameter; /* 0: no ball */
	const char *words[MOST_WORDS];
	int word_count;
};

void closeup_size(struct closeup *c, struct closeup_size size);

/* A paragraph under it; none for "". */
void closeup_say(struct closeup *c, const char *words);

/* Drawn no larger than 1:`least_ratio`. */
struct composition closeup_composition(const struct closeup *c, double least_ratio);

/* Title and scale under a drawing, then paragraphs; the box of all. */
struct closeup_foot {
	const char *title;
	double scale;
	const char *const *words;
	int word_count;
};
struct box closeup_draw_foot(struct sheet *s, struct box used, struct closeup_foot foot);

struct closeup_page {
	const char *title;
	const struct composition *list;
	int n;
	const struct note *notes;
	int note_count;
};

/* As evenly over as many sheets as it takes; none for none. */
struct drawing *closeup_sheets(struct arena *a, const struct sheet_context *c,
	struct closeup_page page);

#endif
