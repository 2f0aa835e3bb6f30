/*
 * The two doors through which inches and feet come and go.
 *
 * Inside the program every length is a double in millimetres.  `length_read`
 * takes what carpenters type; `length_letter` writes what they read.
 */
#ifndef PITCHBOARD_LENGTH_H
#define PITCHBOARD_LENGTH_H

#include "pitchboard/arena.h"

#define MM_PER_INCH 25.4

enum units { UNITS_INCHES, UNITS_MILLIMETRES };

/* How lengths are written on a drawing. */
struct lettering {
	enum units units;
	int fraction; /* inches: the largest denominator, 16 by default; millimetres: parts of 1 mm,
			 1, 2 or 10 */
	int finest;   /* a value that lies on this finer graduation is lettered exactly; 0: as
			 `fraction` */
};

struct length_result {
	double mm;
	const char *problem; /* NULL: it was read.  Else what is wrong, in words, in the arena */
	const char *hint;    /* the likely mend, or NULL */
};

/* Reads the whole of `text`: 7 5/8", 7-5/8, 5'-6 1/2", 5' 6, 66.5 in, 194 mm, 19.4 cm, 2.7 m,
 * vulgar fractions and typographic marks.  A bare number is in `bare`. */
struct length_result length_read(struct arena *a, const char *text, enum units bare);

/* A length as lettered: 7 5/8", 5'-6 1/2", 194, 19.5.  Inches run to 12 before feet are written
 * (11 15/16", 1'-0"); a value that lies on the finest graduation of the job is lettered exactly
 * even where its fraction is coarser, so that what was typed prints back as typed.
 * Millimetres carry no unit: the sheet's note says "millimetres". */
const char *length_letter(struct arena *a, struct lettering how, double mm);

/* The same in inches alone, never feet (145 1/4"): for running positions on a plank. */
const char *length_letter_inches(struct arena *a, struct lettering how, double mm);

/* How wide a bit or a cutter is: they are sold by 64ths and by tenths of a millimetre, and a pilot
 * hole 1/32 in too wide holds no screw. */
static inline struct lettering bit_lettering(struct lettering how)
{
	how.fraction = how.units == UNITS_INCHES ? 64 : 10;
	return how;
}

/* The same where no note tells the unit, as in a message: 7 5/8", 194 mm. */
static inline const char *length_say(struct arena *a, struct lettering how, double mm)
{
	const char *figure = length_letter(a, how, mm);
	return how.units == UNITS_INCHES ? figure : arena_printf(a, "%s mm", figure);
}

/* The coarsest graduation on which a length lies exactly, at most 64 to the inch or 10 to the
 * millimetre; 1 when it lies on none. */
int length_graduation(enum units units, double mm);

/* The value that the lettering stands for, in millimetres: what a reader would measure out. */
double length_lettered_value(struct lettering how, double mm);

/* The value itself where it lies on the graduation that is lettered, else the next one up (1) or
 * down
 * (-1): for a limit that must hold when it is measured out. */
double length_on_graduation(struct lettering how, double mm, int way);

/* A limit in words: one that still holds when it is measured out as lettered. */
static inline const char *length_say_least(struct arena *a, struct lettering how, double mm)
{
	return length_say(a, how, length_on_graduation(how, mm, 1));
}

static inline const char *length_say_most(struct arena *a, struct lettering how, double mm)
{
	return length_say(a, how, length_on_graduation(how, mm, -1));
}

/* An angle in degrees, to 0.1: 36.9°. */
const char *angle_letter(struct arena *a, double radians);

#endif
