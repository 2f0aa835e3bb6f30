/*
 * Ink for SVG.
 *
 * Written by hand and not by Cairo, which sets every letter by itself, outlines
 * it anew for every size, and takes ten times as long.  Here a unit is a
 * millimetre, the letters of a word share one placing, and an outline is there
 * once, in the font's own units.
 */
#ifndef WRITE_INK_SVG_H
#define WRITE_INK_SVG_H

#include "write/ink.h"
#include "write/outlines.h"

struct ink_svg {
	struct ink base;
	struct outlines *outlines;
	struct text *glyphs;  /* outlines of the letters used, to stand before the marks */
	struct text *marks;   /* lines and fills */
	struct text *letters; /* to stand over them */
	struct text *path;    /* being drawn */
	double height;        /* of the page: SVG counts y downwards */
	long x, y;            /* where the path is, in micrometres: steps are whole, and add up */
	unsigned char *defined[FACE_COUNT]; /* has this glyph its outline in here yet? */
};

struct ink_svg *ink_svg_new(struct arena *a, double height, struct outlines *outlines);

#endif
