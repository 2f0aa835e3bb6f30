/*
 * In what a piece is made otherwise than the one that it was before, in words.
 */
#ifndef COMPARE_MADE_OTHERWISE_H
#define COMPARE_MADE_OTHERWISE_H

#include "pitchboard/part.h"

/* "; width was 10", now 10 1/2"; its grain runs otherwise". */
const char *made_otherwise_words(struct arena *a, struct lettering how, const struct part *was,
	const struct part *is);

#endif
