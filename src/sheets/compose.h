/*
 * The largest standard scale at which a view with all its dimensions fits.
 */
#ifndef SHEETS_COMPOSE_H
#define SHEETS_COMPOSE_H

#include "sheets/frame.h"

/* Draws `what` at `scale` with the view's own origin at (0, 0) of s->drawing, anywhere, and gives
 * the box that everything took. */
struct composition {
	struct box (*compose)(struct sheet *s, const void *what, double scale);
	const void *what;
	struct box model;   /* of the view in the house: scales too large for it are not tried */
	double least_ratio; /* it is drawn no larger than this: 4 for 1:4; 0: as large as fits */
};

/* Which part of the room a composition is set in. */
enum setting { SET_CENTRED, SET_TOP, SET_TOP_LEFT, SET_BOTTOM_LEFT };

/* The ratio it was drawn at (24 for 1:24), and the box it took on the sheet. */
struct composed {
	double ratio;
	struct box box;
};

/* The standard scales for the job's units as ratios, the largest scale first, ended by 0; a paper
 * may ask for others. */
const double *sheet_ratios(const struct sheet_context *c);

/* Might the notes have to make room for the view: on a small paper, or where it does not fit? */
bool sheet_is_cramped(const struct sheet *s);

/* Notes get a sheet of their own where the view then comes out so many times as large. */
#define WORTH_A_SHEET 1.3
#define WORTH_NOTES 1.45 /* where nothing but they would be on it */

struct composed sheet_compose(struct sheet *s, struct composition c, struct box room,
	enum setting setting);

#endif
