/*
 * Groups of boards in words, for lists and sheets alike.
 */
#ifndef LISTS_GROUP_WORDS_H
#define LISTS_GROUP_WORDS_H

#include "pitchboard/list.h"

/* "boards", "planks", "sheets" ... */
const char *stuff_words(enum stuff stuff);

/* Thickness, or section, or the moulding's name: what a group of boards is asked for by. */
const char *group_thickness(struct arena *a, struct lettering l, const struct cut_group *g);

/* "7 boards, proved the fewest", or the gap; "" where nothing is cut. */
const char *group_proof(struct arena *a, const struct cut_group *g);

/* What running a moulding here takes: what is listed is bought ready run, or has that besides. */
const char *moulding_note(struct arena *a, const struct job *job);

#endif
