/*
 * Figures of holes that must meet holes of another piece.
 *
 * Each of the two pieces is figured from its own datum, and the way between the two data is
 * whatever the stair makes it: were each half rounded to 1/16 in, they could miss by that.  So the
 * place of such a hole is lettered to the job's fraction where that says it to 1/128 in, else to
 * 1/32 or 1/64; in millimetres to the half.  Two halves laid out from their sheets meet within
 * joint_miss.
 */
#ifndef SHEETS_JOINT_WORDS_H
#define SHEETS_JOINT_WORDS_H

#include "pitchboard/part.h"

/* Each way, in millimetres: 1/64 in, or half a millimetre. */
double joint_miss(enum units units);

/* Does the hole have another half, that is not drilled through it on site? */
bool bore_is_of_joint(const struct bore *b);

/* How such a place is lettered, and what is then measured out. */
const char *joint_words(struct arena *a, const struct stair *s, double mm);
double joint_lettered(const struct job *job, double mm);

/* The same of any hole: the place of one without another half as every other size. */
const char *bore_place_words(struct arena *a, const struct stair *s, const struct bore *b,
	double mm);

/* And where the job's way of lettering is at hand, as on a template. */
const char *bore_place_letter(struct arena *a, struct lettering how, const struct bore *b,
	double mm);

#endif
