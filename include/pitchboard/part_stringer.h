/*
 * What only a stringer has: how it is laid out on its plank, and what is cut into it.  Millimetres
 * and radians; made by parts_make (part.h) with the piece itself.
 */
#ifndef PITCHBOARD_PART_STRINGER_H
#define PITCHBOARD_PART_STRINGER_H

#include "pitchboard/job.h"
#include "pitchboard/shape.h"

/* A sawtooth stringer is the same on either side; the others come in pairs. */
enum stringer_hand { STRINGER_EITHER_HAND, STRINGER_RIGHT_HAND, STRINGER_LEFT_HAND };

/* A wedge of a housed stringer, sawn out of stuff as thick as the housing is deep. */
struct wedge {
	double length, thin, thick;
};

/* How the housings of a housed stringer are laid out: every step alike, but for the first riser,
 * which stops at the floor, and the last tread, which runs out at the head.  Widths of a tread's
 * housing are plumb, of a riser's level; both are tight to the wood at one end and open by the
 * wedge at the other. */
struct housing {
	double depth;
	double taper;                   /* of the wedges: 1 in so many; infinite: none */
	double tread_front, tread_back; /* at the nosing, and at the face of the riser above */
	double riser_top, riser_bottom; /* under its tread, and at its lower edge; 0: no risers */
	double last_riser; /* its housing, along the head cut, up from the last tread; 0: none */
	struct wedge tread_wedge, riser_wedge;
	double wood_left; /* of the plank under the lowest point of a housing, square to its edge */
};

/* What only a stringer has. Positions are along (x) and across (y) the plank,
 * x from its lower end, y up from its lower edge: the plank as it lies on the
 * bench, upper edge away from you.  The part's outline is that of the outer
 * face: a right-hand stringer lies with it up, a left-hand one with it down, so
 * that its outline is seen through the plank. */
struct stringer {
	enum stringer_kind kind;
	enum stringer_hand hand;
	enum side_kind side;
	double pitch;
	double unit_rise, unit_run; /* as cut */
	int steps;                  /* treads it carries */
	double throat, least_throat;
	struct vec throat_at; /* under the corner that is cut deepest, on the lower edge; of several
				 the one nearest the middle.  Nothing is cut through a housed one */
	double plank_width, plank_length; /* stock to take; length is a standard one, 0: longer than
					     any on offer */
	double cut_length;                /* longest extent along the plank */
	double foot_level;                /* of the level foot cut, in the house */
	double head_under_structure; /* top of the upper structural floor down to the underside of
					the last tread, where its level cut meets the header */
	double header_low;           /* so much of it is above the header, for the landing nosing */
	double first_rise_cut;       /* level foot cut to first tread cut */
	double first_rise_finished;  /* and the rises that come out on the finished floors */
	double last_rise_finished;
	double drop; /* what came off the foot: tread thickness less the lower finish still to come
		      */
	double margin;                 /* housed */
	const struct housing *housing; /* NULL unless housed */
	struct outline far_face; /* where it differs from the part's outline (mitred), else empty */
	const struct vec *tread_corners; /* riser cut meets tread cut, one a step (outer corner) */
	const struct vec *inner_corners; /* tread cut meets next riser cut, one a step */
};

#endif
