/*
 * What each pen looks like: the one place to change the house style.
 *
 * Widths step by the square root of two as in the ISO 128 series (0.13 0.18
 * 0.25 0.35 0.5 0.7, from memory), so that a sheet copied one size smaller
 * lands on the next pen.  Dashes are given in line widths there (dash 12, gap
 * 3, dot 0.5, long dash 24); here they are a little shorter, in millimetres,
 * because the views of a stair are full of short edges.
 */
#include "pitchboard/drawing.h"

struct pen_style {
	const char *name;
	double width[2]; /* PENS_SMALL, PENS_LARGE */
	double dashes[MOST_DASHES];
};

static const struct pen_style pens[PEN_COUNT] = {
	[PEN_CUT] = { "cut", { 0.50, 0.70 }, { 0 } },
	[PEN_OUTLINE] = { "outline", { 0.25, 0.35 }, { 0 } },
	[PEN_FINE] = { "fine", { 0.13, 0.18 }, { 0 } },
	[PEN_EXISTING] = { "existing", { 0.18, 0.25 }, { 0 } },
	[PEN_HIDDEN] = { "hidden", { 0.13, 0.18 }, { 1.8, 0.9 } },
	[PEN_ABOVE] = { "above", { 0.18, 0.25 }, { 3.6, 1.2 } },
	[PEN_CENTRE] = { "centre", { 0.13, 0.18 }, { 6.0, 1.0, 1.0, 1.0 } },
	[PEN_DIM] = { "dimension", { 0.13, 0.18 }, { 0 } },
	[PEN_HATCH] = { "hatch", { 0.09, 0.13 }, { 0 } },
	[PEN_TABLE] = { "table", { 0.13, 0.18 }, { 0 } },
	[PEN_FRAME] = { "frame", { 0.50, 0.70 }, { 0 } },
	[PEN_TEMPLATE] = { "template", { 0.25, 0.25 }, { 0 } },
	[PEN_GUIDE] = { "guide", { 0.13, 0.13 }, { 0 } },
};

const char *pen_name(enum pen pen)
{
	return pens[pen].name;
}

double pen_width(enum pen pen, enum pen_group group)
{
	return pens[pen].width[group];
}

const double *pen_dashes(enum pen pen)
{
	return pens[pen].dashes;
}
