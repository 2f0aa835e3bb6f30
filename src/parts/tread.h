/*
 * A tread on plan, and the pieces it is glued up from.
 *
 * Places on a tread are measured as with a tape: `in` from the limit of a side
 * (outside it negative), `back` from the front of the nosing.
 *
 *                     gap at the back
 *                ________     __________________
 *               |        |___|               |  |
 *     wall    __|  body                      |  | return
 *      gap   |__                             |  |
 *               |____________________________|  |
 *               |  front strip                 \_|__ newel
 *               |_______________________________|   gap
 */
#ifndef PARTS_TREAD_H
#define PARTS_TREAD_H

#include "parts/bands.h"
#include "parts/piece.h"

enum { MOST_NOTCHES = 3, MOST_GAPS = MOST_NOTCHES + 2 }; /* at one edge */

/* A rectangle kept clear of at an edge of the tread, the allowance in it: from outside that edge
 * it reaches in so far.  At an end `from` and `to` are measured back from the front; at the back
 * `in` is measured forward from the back edge and the others along from the left-hand limit. */
struct gap {
	double in, from, to;
	const char *around; /* "the newel" */
	bool is_existing;   /* a wall; not a piece of this stair */
};

struct gaps {
	struct gap at[MOST_GAPS];
	int n;
};

struct tread_end {
	const struct side *side;
	double body;     /* where the body ends, in from the limit, but for gaps */
	double strip;    /* where the front strip ends: its long point when it is mitred */
	double overhang; /* of the return strip beyond the outer face; 0: there is none */
	double width;    /* of the return strip */
	struct gaps gaps;
};

struct tread_plan {
	const struct rod *rod;
	int step;
	double depth;             /* front of the nosing to the back edge */
	struct tread_end ends[2]; /* by hand */
	struct gaps back;
};

struct tread_plan tread_plan_make(const struct rod *r, int step);

/* The number of the unit that all its pieces are joined into. */
int tread_unit(const struct tread_plan *t);

/* Glued up from the fewest boards that are no wider than the job allows, all alike. */
struct makeup tread_makeup(const struct job *job, double width);

/* How far in a gap takes the end at a place between front and back; -INFINITY: none is there. */
double tread_end_gap(const struct tread_end *e, double back);

/* Where mitre or square cut would end the front strip there, were it not for gaps. */
double tread_end_mitre(const struct tread_end *e, double back);

/* The same places in the flight's axes: x of the front of the nosing. */
double tread_front(const struct tread_plan *t);

/* What gaps take from a piece, as features and in the words of its note; `part` is the box that
 * the piece fills, along from the left-hand limit and back from the front, its axes at the lower
 * corner. */
void tread_notches_add(struct arena *a, struct part *p, const struct tread_plan *t,
	struct box part);

/* The wall that a notch is for, in the flight's axes. */
struct notch_wall {
	const struct job_notch *notch;
	struct vec3 low, high;
	bool passes; /* it takes the whole depth of its tread, or goes on past the back of it: a
			chimney breast, up from the floor */
	int last;    /* step whose tread it ends in */
};

struct notch_wall notch_wall_make(const struct rod *r, const struct job_notch *n);

/* Does it stand in this tread?  Then as which gap, and in which box. */
bool notch_takes(const struct tread_plan *t, const struct job_notch *n, struct gap *g);
struct box notch_box(const struct tread_plan *t, const struct job_notch *n, const struct gap *g);

/* The side of one that is not at the back. */
enum side_hand notch_hand(const struct job_notch *n);

/* How far in from a side walls stand that come up from the floor and pass this riser; 0: none does.
 */
double notch_beside_riser(const struct rod *r, const struct side *side, int step);

/* Complains of notches of the job that cannot be. */
void tread_notches_check(struct arena *a, const struct rod *r, struct diags *d);

/* The gaps that the job's notches make in a tread: its own, and those of walls in the tread below
 * that go on up through its nosing. */
void tread_notches_find(struct tread_plan *t);

/* The return strip at this end, and the little piece that closes its back. */
void return_add(struct pieces *list, const struct tread_plan *t, const struct tread_end *e);

#endif
