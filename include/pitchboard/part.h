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

#include "pitchboard/joinery.h"
#include "pitchboard/part_balustrade.h"
#include "pitchboard/part_stringer.h"
#include "pitchboard/part_treads.h"
#include "pitchboard/shape.h"
#include "pitchboard/stair.h"

/* How a piece is bought. */
enum stuff {
	STUFF_BOARD,    /* hardwood by the quarter, ripped and planed here */
	STUFF_PLANK,    /* construction lumber of standard section */
	STUFF_SHEET,    /* plywood */
	STUFF_MOULDING, /* by the running length, run here from wide stock or bought */
	STUFF_BOUGHT,   /* by the piece */
};

/* Which way the grain runs: along x, or as it comes. */
enum grain { GRAIN_ALONG, GRAIN_NONE };

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

/* How a piece that is longer than any board is made in lengths (parts/splice.c). */
enum splice {
	SPLICE_NONE,  /* not at all: it is whole, or is not made */
	SPLICE_SCARF, /* mitred through its thickness, and glued */
	SPLICE_BOLT,  /* square, drawn tight by a rail bolt, kept from turning by dowels */
};

/* Which length of such a piece a part is, counted from its start; count 0: it is whole. */
struct part_length {
	int number, count;
	const char *whole; /* the name of the piece */
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
	/* of its face, in its own x and y: this is the full-size template */
	struct outline outline;
	/* across its length: y of the part to the right, z up; empty: a rectangle */
	struct outline section;
	/* of a block that another piece is bent round: what it is sawn to, in its outline; empty:
	 * its outline */
	struct outline core;
	struct feature *features;
	struct bore *bores;
	struct fastening *fastenings; /* rows still to be drilled, while parts are made */
	struct end_cut start, end;
	enum splice splice;
	struct part_length length_of;
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

/* What it is called, whichever of its lengths it is. */
static inline const char *part_whole_name(const struct part *p)
{
	return p->length_of.count ? p->length_of.whole : p->name;
}

/* Does a part go on in the next length? */
static inline bool part_goes_on(const struct part *p)
{
	return p->length_of.number < p->length_of.count;
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
