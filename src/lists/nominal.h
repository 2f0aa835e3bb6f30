/*
 * Sizes as bought and as they come out.
 */
#ifndef LISTS_NOMINAL_H
#define LISTS_NOMINAL_H

#include "pitchboard/length.h"
#include "pitchboard/vec.h"

struct nominal {
	double bought, finished; /* millimetres */
};

/* The thinnest sawn board that comes out so thick: by the quarter system in inches, by the usual
 * sawn sizes in millimetres.  `planing` is what comes off both faces; 0: what usually does.
 * bought 0: no board is so thick. */
struct nominal nominal_board(enum units units, double finished, double planing);

/* What planing both faces of a sawn board usually takes off. */
double nominal_planing(enum units units, double bought);

/* Construction lumber by its dressed size, PS 20; the size itself where it is none of those. */
double nominal_plank_thickness(enum units units, double dressed);
double nominal_plank_width(enum units units, double dressed);

/* 5/4 in jobs in inches, 32 in millimetres. */
const char *nominal_letter(struct arena *a, struct lettering how, double bought);

#endif
