/*
 * Infill: what stands between the rail and the steps.
 *
 * A family of infill is made for one stretch of balustrade at a time, between
 * two lines that rise with the rail, and ends in one row.
 *
 *            .'  rail
 *          .' .'  subrail, where there is one, ploughed from below
 *        .' .'
 *      top  :        bottom and top: the faces of shoe and subrail, or what
 *       :   :        they would lie on
 *      bottom        foot and head: what a baluster stands on and under, in
 *      .' .'         their ploughs
 *    .' .'  shoe, where there is one: over open stringers it lies on the
 *     .'    nosing line and leaves the triangle of tread and riser open
 */
#ifndef PARTS_INFILL_H
#define PARTS_INFILL_H

#include "parts/piece.h"
#include "parts/stretch.h"

struct infill_kind {
	const char *name;
	/* Adds its pieces for one stretch; the problems it finds go into `d`. */
	void (*make)(struct pieces *list, const struct stretch *s, struct diags *d);
};

extern const struct infill_kind infill_plain, infill_braced, infill_bars, infill_panel;

bool infill_has_shoe(const struct job *job);
bool infill_has_subrail(const struct job *job);

/* Does it stand on the treads themselves, with no shoe between? */
bool infill_on_treads(const struct stretch *s);

/* Plumb over x: the line on which shoe or lowest gap begin, the shoe's top, what balusters stand
 * on. */
double infill_base(const struct stretch *s, double x);
double infill_bottom(const struct stretch *s, double x);
double infill_foot(const struct stretch *s, double x);

/* Do balusters stand on a slope? */
bool infill_foot_is_raked(const struct stretch *s);

/* Plumb over x: the subrail's underside, or the rail's; and what tops of balusters meet. */
double infill_top(const struct stretch *s, double x);
double infill_head(const struct stretch *s, double x);

/* How deep a dowel, square to a cut with this slope, may go into what stands at that end over x:
 * the strip under its plough, rail, edge, tread or floor, and not out of its end. */
enum infill_end { INFILL_FOOT, INFILL_TOP };
double infill_dowel_room(const struct stretch *s, enum infill_end end, double x, double slope);

/* Does the stretch end against a newel with wood behind its whole face?  A panelled one has none.
 */
bool infill_meets_newel(const struct stretch *s, struct rail_end e);

/* A place for a post of this thickness, its front at x: x up, y along, z to the left. */
struct frame infill_post(const struct stretch *s, double x, double z, double thickness);

const char *infill_letter(const struct stretch *s, struct arena *a, double mm);

#endif
