/*
 * Parts: real pieces of wood, each placed in the house.
 *
 * One solid model, and every view, list and template comes from it.  A part is
 * made once in axes of its own (x along its length, y across its face, z through
 * its thickness) and placed as often as it occurs; equal pieces are one part
 * with several placements.
 *
 * Existing work (floors, walls, header) is in the model too, so that views hide
 * what it hides; its family has no mark and is never listed.
 */
#ifndef PITCHBOARD_PART_H
#define PITCHBOARD_PART_H

#include "pitchboard/stair.h"

/* A solid with two faces of equally many corners, joined corner to corner by
 * flat sides.  Square prism, mitred strip, raked baluster, bevelled stringer:
 * all are this.  Corner i of `a` is joined to corner i of `b`; seen from
 * outside, `a` runs counter-clockwise and `b` clockwise.  Sides must be flat.
 *
 * `soft` says which lines are not edges of the piece (a facet of a round, or a
 * seam inside one piece): bit SOFT_SIDE of soft[i] for the line a[i]-b[i],
 * SOFT_A for a[i]-a[i+1], SOFT_B for b[i]-b[i+1].  A soft line is drawn only
 * where it is the solid's outline in the view.  NULL: none is soft. */
enum { SOFT_SIDE = 1, SOFT_A = 2, SOFT_B = 4 };

struct solid {
	struct solid *next;
	int n;
	const struct vec3 *a, *b;
	const unsigned char *soft;
};

/* An outline is a closed chain: each corner, and how the chain goes on from it.
 * bulge is tan(quarter of the swept angle), counter-clockwise positive; 0 is straight. */
struct corner {
	struct vec at;
	double bulge;
};

struct outline {
	const struct corner *corners;
	int n;
};

/* The arc by which a chain goes on from a corner with a bulge: a circle, and the angles at which it
 * begins and ends; `to` is more than `from` when it runs counter-clockwise, else less. */
struct corner_arc {
	struct vec centre;
	double radius, from, to;
};

/* `next` is the corner after it; the bulge must not be 0. */
struct corner_arc corner_arc(struct corner c, struct vec next);

/* The point of an arc at a share of its way, 0 to 1. */
struct vec corner_arc_point(struct corner_arc arc, double share);

/* The box round an outline, its arcs with it. */
struct box outline_extent(struct outline o);

/* Does a round run smoothly through corner i, so that there is no arris? */
bool outline_is_smooth(struct outline o, int i);

/* What is done to a piece beside its outline. */
enum feature_kind {
	FEATURE_GROOVE,
	FEATURE_NOTCH,
	FEATURE_MITRE,
	FEATURE_ROUND,
	FEATURE_CHAMFER,
	FEATURE_TAPER, /* of one edge against the other, on a jig */
	FEATURE_WASTE, /* sawn off before the router: struct waste */
	FEATURE_SAWN,  /* along the saw's fence: struct sawn */
};

/* A cut along the fence of a table saw.  Of a long edge it is made while the piece is long, to its
 * arris; of a block, after it is cut to its square size. */
struct sawn {
	double tilt;      /* of the blade, from plumb */
	double fence;     /* to the blade, at the table; 0: a long edge */
	double height;    /* of the blade over the table, plumb */
	int cuts;         /* each piece */
	const char *lies; /* the piece on the saw: "underside against the fence" */
};

struct feature {
	struct feature *next;
	enum feature_kind kind;
	struct outline at; /* in the face plane; may be empty */
	double angle;      /* mitre: from square, radians */
	double depth;      /* groove: into the face; notch: through; chamfer, waste: along
			    either face */
	double radius;     /* round; of a chamfer's own arrises */
	struct sawn sawn;
	const char *text; /* for people */
};

/* A hole, by its mouth. */
enum bore_kind {
	BORE_HOLE,    /* round */
	BORE_SLOT,    /* oblong with round ends, so that what goes in can move along it */
	BORE_MORTISE, /* the same shape, filled */
};

/* What goes into a hole, and is counted with the hardware. */
enum fixing {
	FIXING_NONE, /* an access hole, a recess */
	FIXING_LOOSE_TENON,
	FIXING_DOWEL,
	FIXING_DOWEL_SCREW,
	FIXING_RAIL_BOLT,
	FIXING_NEWEL_BOLT, /* up the middle of a newel's foot, out of what it stands on */
	FIXING_BOLT,       /* through, with nut and washers */
	FIXING_SCREW,
	FIXING_PLUG, /* over the head of a screw */
	FIXING_BRAD,
	FIXING_BRACKET,
	FIXING_PLATE, /* steel, under a newel's foot */
	FIXING_COUNT
};

const char *fixing_name(enum fixing fixing); /* "loose tenon" */

struct bore;

/* As it is asked for in a shop: 3/8" x 2", #8 x 2 1/2", 18 gauge x 1 1/4"; in millimetres 4 x 60.
 */
const char *fixing_size(struct arena *a, struct lettering how, const struct bore *b);

/* Of a round hole length and width are both its diameter. */
struct bore_size {
	enum bore_kind kind;
	double length, width, depth;
};

/* `at`: origin in the middle of the mouth, u along the longer side, w square out of the wood, in
 * the part's axes.  A family drills its own piece and says what the piece on the other side of the
 * joint gets; parts_make finds that piece and drills it, so the two halves of a joint meet. */
struct bore {
	struct bore *next;
	struct frame at;
	struct bore_size size;
	struct bore_size mate; /* in the neighbour; depth 0: nothing */
	enum fixing fixing;
	double fixing_length,
		fixing_width; /* as bought: 2 x 3/8 dowel; 0: by the size of the hole */
	double driven;    /* how deep it bites into the piece behind the bottom of this hole, where
			     nothing is drilled beforehand; 0: it does not */
	double thread;    /* diameter of a mate that holds a thread, where it goes on in the wood
			     behind; 0: as wide as in front */
	bool is_mate;     /* drilled for another part's sake; its fixing is counted there */
	bool goes_on;     /* from a hole that comes through the piece in front of it; a mate */
	const char *text; /* for people: "dowel, baluster foot" */
};

/* How a piece is bought. */
enum stuff {
	STUFF_BOARD,    /* hardwood by the quarter, ripped and planed here */
	STUFF_PLANK,    /* construction lumber of standard section */
	STUFF_SHEET,    /* plywood */
	STUFF_MOULDING, /* by the running length, run here from wide stock or bought */
	STUFF_BOUGHT,   /* by the piece */
};

/* Which way the grain runs. */
enum grain { GRAIN_ALONG, GRAIN_ACROSS, GRAIN_NONE };

/* How a piece is glued up before it is cut to shape, or sawn out of one blank with others like it;
 * zero: it is one board. */
struct makeup {
	int boards; /* edge to edge across the width */
	double board_width;
	int plies; /* face to face through the thickness */
	double ply_thickness;
	int gang; /* so many side by side out of one blank, kerfs counted in its width */
	double gang_width;
};

/* The cut at one end of a long piece: the angle from square across the face,
 * the bevel through the thickness, radians. */
struct end_cut {
	double mitre, bevel;
};

struct part_size {
	double length, width, thickness; /* finished */
};

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

/* What only a baluster has. */
struct baluster {
	double long_point,
		short_point; /* lengths along the two faces that the rake makes unequal */
	double rake;         /* of the top cut, from level */
	double foot_rake;    /* 0: square foot */
};

/* A chamfer sawn off before the router takes the rest, outside the finished edge by a margin. */
struct waste {
	int arrises;   /* one, or both alike */
	double angle;  /* to the faces */
	double leg;    /* along either face; 0: not worth the saw */
	double flat;   /* width of the sawn face */
	double margin; /* least between it and the finished edge */
};

/* The moulded edge of a piece of a tread. */
struct nosing {
	enum nosing_kind kind;
	double thickness;
	double radius;  /* of its rounds; 0: square */
	double chamfer; /* along either face; 0: there is none */
	double reach;   /* in from the edge, where both faces are whole */
	struct waste waste;
};

/* A ring of cross rails round a panelled newel, up from its foot; at a foot cut to the rake, from
 * its highest point. */
struct newel_ring {
	double from, to;
	double spacer; /* block that keeps it off the ring below, or off the foot; 0: it stands on
			  the foot */
};

/* What only the post of a newel has, or the core of a panelled one. */
struct newel {
	enum newel_build build;
	double section;             /* over all */
	double height;              /* over all, without the cap */
	double core;                /* side of the core; the section when there are no panels */
	double rail_low, rail_high; /* where the rail meets it, up from its lower end */
	double leg;                 /* that hangs down beside the string it stands on; 0: none */
	const struct newel_ring *rings;
	int ring_count;
};

/* What only a cap has: its shape, and how a saw is set for it.  Angles are from level, of a blade
 * from plumb, of a mitre gauge from square. */
struct cap {
	enum cap_kind kind;
	enum cap_build build;
	double width;     /* square, over all */
	double edge;      /* height of its square edge */
	double height;    /* over all: a block planed to this, the slopes meet in one point */
	double slope;     /* of the faces */
	double rise;      /* edge to point */
	double slant;     /* foot of a face to the point, along its middle */
	double hip;       /* corner to point, along the arris */
	double hip_slope; /* of that arris */
	double dihedral;  /* between two faces */
	/* A block, its underside against the fence, a side on the table: */
	double blade_tilt, blade_height; /* over the table, plumb: half the width, and no less */
	double fence;    /* to the blade, at the table; for the shoulder cuts the same, blade square
			  */
	double shoulder; /* blade's height for the shoulder cuts, which come first; 0: none */
	double step;     /* plumb over the ledge */
	/* Four pieces, face down, foot against the mitre gauge: */
	double mitre_gauge, mitre_tilt;
	double foot_tilt; /* to bevel the foot: on edge, its face against the fence */
	double board;     /* their thickness */
};

/* Which existing work a part is. */
enum existing_kind {
	EXISTING_NONE, /* it is new */
	EXISTING_LOWER_FLOOR,
	EXISTING_UPPER_FLOOR,
	EXISTING_HEADER,
	EXISTING_WALL,
};

struct part_kind;
struct fastening; /* parts/fastening.h */
struct rail;      /* pitchboard/rail.h */

struct part {
	struct part *next;
	const struct part_kind *kind;
	const char *mark; /* pencilled on it: T3.  "" for existing work */
	enum existing_kind existing;
	const char *name; /* "tread body" */
	const char *material;
	struct part_size size;
	double bent; /* length beyond its solid that is bent round another piece: sawn with it */
	struct outline
		outline; /* of its face, in its own x and y: this is the full-size template */
	struct outline section; /* across its length: y of the part to the right, z up; empty: a
				   rectangle */
	struct feature *features;
	struct bore *bores;
	struct fastening *fastenings; /* rows still to be drilled, while parts are made */
	struct end_cut start, end;
	enum stuff stuff;
	enum grain grain;
	struct makeup makeup;
	const struct solid *solids; /* in the part's axes */
	const struct frame *places; /* in the house */
	const int *units; /* beside every place: the number, within its family, of the unit it is
			     joined into in the shop; 0: none */
	int count;
	const char *note;                /* anything a maker must know, or NULL */
	const struct stringer *stringer; /* NULL unless it is one */
	const struct baluster *baluster;
	const struct nosing *nosing;
	const struct rail *rail;
	const struct newel *newel;
	const struct cap *cap;
};

/* Is it there already?  Then it has no mark. */
static inline bool part_is_existing(const struct part *p)
{
	return !p->mark || !p->mark[0];
}

/* As long as it is sawn: what is bent round another piece afterwards with it. */
static inline double part_sawn_length(const struct part *p)
{
	return p->size.length + p->bent;
}

/* A family of parts lives whole in src/parts/NAME.c and ends in one row. */
struct part_kind {
	const char *name;   /* "tread" */
	const char *prefix; /* of the mark; "" for existing work */
	/* Adds its parts for one flight; the problems it finds go into `d`. */
	struct part *(*make)(struct arena *a, const struct stair *s, const struct flight *f,
		struct diags *d);
};

/* Name of the existing work that treads are cut out for. */
#define WALL_IN_TREAD "wall in a tread"

extern const struct part_kind part_existing, part_stringer, part_wedge, part_block, part_riser,
	part_tread, part_landing, part_moulding, part_skirt, part_newel, part_rail, part_wall_rail,
	part_bracket, part_infill;

/* All parts of the stair, in the order of the table, marks given.
 * NULL in, NULL out; NULL after an error. */
const struct part *parts_make(struct arena *a, const struct stair *s, struct diags *d);

/* Pieces that are joined in the shop and carried in as one: a tread glued up of body and strips, a
 * newel with its cap, balusters with their cross pieces.  Its axes are those of its first piece. */
struct unit_piece {
	const struct part *part;
	struct frame at;       /* in the unit's axes */
	struct frame in_house; /* of the unit's first place */
};

struct unit {
	struct unit *next;
	const char *mark; /* "TU1": after the family's letter */
	const struct part_kind *kind;
	const struct unit_piece *pieces;
	int piece_count;
	const struct frame *places; /* in the house */
	const int *numbers;         /* beside every place: as its family counted them */
	int count;
};

/* Equal units become one with several places. */
const struct unit *units_make(struct arena *a, const struct part *parts);

const char *parts_dump(struct arena *a, const struct part *parts);

#endif
