/*
 * Fastenings: rows of screws and brads that hold one piece on another.
 *
 *        first            pitch
 *     |<------>|<------------------->|
 *      ________|_____________________|__________
 *     |        |                     |          |   the piece, `through` thick
 *     |________|_____________________|__________|
 *              |                     |              what it is held on: not drilled before
 *              '                     '
 *
 * A family says where its rows run; they are set out when all else is drilled, each fastener in
 * the place nearest to an even division where it has wood about it and meets no other hole.
 */
#ifndef PARTS_FASTENING_H
#define PARTS_FASTENING_H

#include "parts/assembly.h"
#include "parts/fixing.h"

struct fastening {
	struct fastening *next;
	struct fastener fastener;
	struct frame at; /* in the piece's axes: where the row begins on the face that it is driven
			    through; u along the row, w out of the wood */
	double length;   /* of the row, from end to end */
	double first;    /* least from either end */
	double pitch;    /* at most; 0: by count */
	int count;
	double through; /* of the piece, square to that face */
	double slope;   /* of the joint behind it, off that face: a mitre of 45 degrees is 1 */
	double beside;  /* least wood beside the shank, in the piece */
	double sunk;    /* the head lies so deep */
	double plug;    /* diameter of what covers it; 0: nothing does */
	const char *text;
};

/* The piece is held by this row too. */
void piece_fasten(struct arena *a, struct part *p, struct fastening f);

/* Sets one row out; of a row by count, says how many of it found no place. */
int fastening_drill(struct arena *a, const struct assembly *all, struct part *p,
	const struct fastening *f);

/* Sets out the rows of all pieces. */
void fastenings_drill(struct arena *a, const struct assembly *all);

/* Screws that hold treads on what is cut out for them; warns of stringers that hold one by none. */
void tread_screws_drill(struct arena *a, const struct stair *s, const struct assembly *all,
	struct diags *d);

/* Brads of their strips, clear of those and of the tenons. */
void tread_brads_drill(struct arena *a, const struct stair *s, const struct assembly *all);

#endif
