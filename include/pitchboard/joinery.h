/*
 * What is done to a piece of wood beside its outline: edges and grooves worked, ends mitred, holes
 * drilled, and what goes into them.  Millimetres and radians, in the axes of the piece.
 */
#ifndef PITCHBOARD_JOINERY_H
#define PITCHBOARD_JOINERY_H

#include "pitchboard/length.h"
#include "pitchboard/shape.h"

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
	bool goes_round;     /* an edge that is worked across the grain too, which comes first */
	const char *text;    /* for people */
	const char *setting; /* of the machine; NULL: the figures say it */
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
	/* as bought: 2 x 3/8 dowel; 0: by the size of the hole */
	double fixing_length, fixing_width;
	double driven;    /* how deep it bites into the piece behind the bottom of this hole, where
			     nothing is drilled beforehand; 0: it does not */
	double thread;    /* diameter of a mate that holds a thread, where it goes on in the wood
			     behind; 0: as wide as in front */
	bool is_mate;     /* drilled for another part's sake; its fixing is counted there */
	bool goes_on;     /* from a hole that comes through the piece in front of it; a mate */
	const char *text; /* for people: "dowel, baluster foot" */
};

/* What a hole is for: as its family says it, else by what goes into it. */
static inline const char *bore_purpose(const struct bore *b)
{
	return b->text ? b->text : fixing_name(b->fixing);
}

/* As it is asked for in a shop: 3/8" x 2", #8 x 2 1/2", 18 gauge x 1 1/4"; in millimetres 4 x 60.
 */
const char *fixing_size(struct arena *a, struct lettering how, const struct bore *b);

#endif
