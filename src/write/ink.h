/*
 * What a drawing is painted with.
 *
 * Painting knows paths, strokes, fills and runs of letters; an ink knows how one
 * format writes them.  Lengths are the drawing's: millimetres, y up.
 */
#ifndef WRITE_INK_H
#define WRITE_INK_H

#include "write/faces.h"

/* How light a shade is, 0 to 1. */
static inline double shade_grey(enum shade shade)
{
	static const double greys[] = {
		[SHADE_BLACK] = 0,
		[SHADE_GREY] = 0.6,
		[SHADE_MIDDLE] = 0.75,
		[SHADE_LIGHT] = 0.88,
		[SHADE_PALE] = 0.95,
		[SHADE_WHITE] = 1,
	};

	return greys[shade];
}

/* How a path is stroked. */
struct stroke {
	enum pen pen;
	double width;
	double dashes[MOST_DASHES]; /* dash, gap, dash, gap ... */
	int dash_count;             /* 0: a whole line */
};

/* Counter-clockwise, angles from the x axis. */
struct arc {
	struct vec centre;
	double radius, from, to;
};

/* One letter on a base line. */
struct glyph {
	unsigned id;
	double along; /* from the start of the run */
};

/* Letters of one face that follow each other. */
struct run {
	enum face_name face;
	double height; /* of a capital */
	double angle;  /* counter-clockwise */
	struct vec at;
	struct glyph *glyphs;
	int n;
};

struct ink;

struct ink_kind {
	void (*move)(struct ink *ink, struct vec to);
	void (*line)(struct ink *ink, struct vec to);
	void (*arc)(struct ink *ink, struct arc arc); /* from wherever it starts */
	void (*close)(struct ink *ink);
	/* These two end the path; a path of nothing leaves no trace. */
	void (*stroke)(struct ink *ink, struct stroke how);
	void (*fill)(struct ink *ink, enum shade shade);
	void (*letters)(struct ink *ink, struct run run);
};

/* The first member of every ink. */
struct ink {
	const struct ink_kind *kind;
};

#endif
