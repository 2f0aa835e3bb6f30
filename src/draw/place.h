/*
 * Finding room for lettering that may stand in more than one place.
 */
#ifndef DRAW_PLACE_H
#define DRAW_PLACE_H

#include "pitchboard/drawing.h"

/* What lettering stands on: the hatch under it is in its way, unless it is knocked out. */
enum spot_ground { SPOT_PLAIN, SPOT_KNOCKED_OUT };

/* One place a text may stand. */
struct spot {
	struct vec at;
	enum align align;
	double angle;
	enum spot_ground ground;
};

/* Letters `text` in the first free spot, or in the one that spoils least.  The one taken; -1 when
 * every spot has lettering or a heavy line in it: then nothing is drawn. */
int place_text(struct drawing *g, struct measure m, double height, const struct spot *spots, int n,
	const char *text);

/* Would a stroke so wide run through lettering that is drawn already? */
bool stroke_strikes_text(const struct drawing *g, struct measure m, struct vec from, struct vec to,
	double width);

/* Does a line that lettering must not cross run through the box? */
bool heavy_line_crosses(const struct drawing *g, struct box b);

/* Moves places apart until each is at least `gap` beyond the one before, every one as near as may
 * be to where it wants to stand (least squares; pool adjacent violators).  `at` is in rising
 * order and is changed. */
void spread(struct arena *a, double *at, int n, double gap);

/* Text broken into lines no wider than `width`; a word too long stands alone. */
struct lines {
	const char *const *line;
	int n;
};

struct lines wrap_text(struct arena *a, struct measure m, double height, double width,
	const char *text);

/* The same in bold, or another style of letters. */
struct lines wrap_text_styled(struct arena *a, struct measure m, enum letter_style style,
	double height, double width, const char *text);

#endif
