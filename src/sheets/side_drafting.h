/*
 * A side view being drawn on its sheet: shared by the files that draw lines, dimensions and levels
 * over it.
 */
#ifndef SHEETS_SIDE_DRAFTING_H
#define SHEETS_SIDE_DRAFTING_H

#include "draw/dimension.h"
#include "draw/place.h"
#include "sheets/side_view.h"

struct drafting {
	struct sheet *sheet;
	const struct side_view *what;
	const struct stair *stair;
	const struct flight *flight;
	struct slope_line nosing;
	double scale;
};

/* A point of the flight on paper: the stair climbs to the right seen from its right-hand side, to
 * the left seen from the other. */
struct vec side_at(const struct drafting *d, double x, double z);

enum dim_side side_low(const struct drafting *d);  /* the side of the paper where the foot is */
enum dim_side side_high(const struct drafting *d); /* and where the head is */

/* Is a step open on the side looked at? */
bool side_step_is_open(const struct side_view *v, const struct step *step);

bool side_shows_rail(const struct side_view *v);

/* What could not be lettered in the view and wants a lane beside it. */
struct left_over {
	struct dim_link links[16]; /* headroom, rail, and as many guards as a job may have */
	int n;
};

/* A plumb line of the view, of which something is measured. */
struct plumb {
	struct vec low, high;
};

/* With arrows at its ends. */
void side_draw_plumb(struct hand h, struct vec low, struct vec high);

/* Would it run through lettering that stands there? */
bool side_plumb_strikes(struct hand h, struct vec low, struct vec high);

/* Spots to the right and the left of a plumb line, from its top down; how many. */
int side_spots_beside(struct spot *spots, int n, struct hand h, struct vec top, double width);

/* The view's box with a text in it, or beside it. */
struct box side_with_text(struct box view, struct hand h, struct vec at, const char *text);

struct dim_link side_plumb_link(struct vec low, struct vec high, const char *text);

/* The height of the rail over a nosing, and of each guard over the upper floor. */
struct box side_draw_rail_heights(const struct drafting *d, struct box view,
	struct left_over *rest);

/* Nosing line, headroom, height of the rail.  The view's box grows by what stands beside it. */
struct box side_draw_lines(const struct drafting *d, struct box view, struct left_over *rest);

/* The height of the rail and of the guards alone, and the headroom in these words ("": not it),
 * where there is a place for their figures in the view. */
struct box side_draw_heights(const struct drafting *d, const char *headroom, struct box view);

/* The line over the nosings that nothing may hang below, up to the top of the view, with its words;
 * for who holds the stair against limits. */
void side_draw_headroom_line(const struct drafting *d, struct box view);

/* How many of the spots, brought to the front, keep words of that width out of its way; all where
 * it strikes all.  The line grows with the view as the words make it higher. */
int side_spots_off_headroom_line(const struct drafting *d, struct box view, struct spot *spots,
	int n, double width);

/* The marks of what is shown, in balloons; the view's box with them. */
struct box side_draw_balloons(const struct drafting *d, const struct view *shown, struct box view);

/* The pitch, where there is room: when all else is drawn. */
void side_draw_pitch(const struct drafting *d);

void side_add_dimensions(struct dims *dims, const struct drafting *d, const struct left_over *rest);

/* The finished floors, outside of everything else; the box with them. */
struct box side_draw_levels(const struct drafting *d, struct box used);

/* Least headroom and where the balustrade's figures come from, as notes. */
const char *side_headroom_note(struct arena *a, const struct sheet_context *c);
/* Treads, nosings and risers in figures, for who does not get the shop's sheets; else "". */
const char *side_steps_note(struct arena *a, const struct sheet_context *c);
const char *balustrade_words(struct arena *a, const struct side_view *v);

#endif
