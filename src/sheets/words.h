/*
 * Wording that several sheets share, so that nothing is said twice with different words.
 */
#ifndef SHEETS_WORDS_H
#define SHEETS_WORDS_H

#include "pitchboard/sheet.h"

/* The job's way of lettering a length; in inches alone. */
const char *length_words(struct arena *a, const struct stair *s, double mm);
const char *inches_words(struct arena *a, const struct stair *s, double mm);
const char *radius_words(struct arena *a, const struct stair *s, double mm);
const char *bit_words(struct arena *a, const struct stair *s, double mm);

/* A site measurement, flagged "VIF" (verify in field) while it is not marked as measured. */
const char *measured_words(struct arena *a, const struct stair *s, const char *size, double mm);

/* The site sizes still to be verified, in words: "floor thickness, width"; "" when none is. */
const char *unverified_words(struct arena *a, const struct job *job);

/* 13 @ 10" = 10'-10"; 14 @ 7 5/8"± = 8'-11" where the even step is not the lettered one. */
const char *steps_words(struct arena *a, const struct stair *s, int n, double each);

/* What is lost or gained when the lettered step is repeated, or "" when nothing that matters:
 * 14 risers at 7 5/8" make 1/4" less than the total rise. */
const char *rounding_words(struct arena *a, const struct stair *s);

/* Plank 1 1/4" x 13 1/4": thickness and width, never in feet. */
const char *section_words(struct arena *a, const struct stair *s, double one, double other);

/* How the header and the floor behind it receive the landing nosing; "" when nothing is cut. */
const char *header_words(const struct part *parts);

/* "on the right", "on both sides": where the guard of an open side is made by others; "" nowhere.
 */
const char *by_others_where(const struct job *job);

/* The same as a note. */
const char *by_others_words(struct arena *a, const struct job *job);

/* The notes that stand on every dimensioned sheet. */
const char *general_words(const struct stair *s);

/* What the code asks and this stair does not have, as a note; "" when there is nothing of it. */
const char *not_met_words(struct arena *a, const struct finding *list);

/* IRC 2021: 2 NOT MET, 1 near, 23 met as entered, 8 not checked here; or that no code was named.
 */
const char *code_words(struct arena *a, const struct finding *list);

/* "balustrade red oak", the first word given; where its trades differ "newels of ash, rail of red
 * oak, balusters of poplar". */
const char *balustrade_species(struct arena *a, const struct job_material *m, const char *before);

/* A view's scale, by its ratio, as the job's units have it: 1/2" = 1'-0", 1:24. */
const char *scale_words(struct arena *a, const struct stair *s, double ratio);

/* The setting of a framing square: rise on the tongue, run on the blade. */
const char *square_words(struct arena *a, const struct stair *s, double rise, double run);

#endif
