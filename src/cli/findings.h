/*
 * What is drawn all the same, but has to be known before anything is cut.
 */
#ifndef CLI_FINDINGS_H
#define CLI_FINDINGS_H

#include "pitchboard/part.h"
#include "pitchboard/write.h"

/* Adds warnings at their place in the job file.  NULL stair or parts: nothing is added. */
void findings_tell(struct arena *a, const struct stair *s, const struct part *parts,
	struct diags *d);

/* A warning of letters that cannot be drawn.  From which key they come is not known any more. */
void findings_tell_letters(struct missing m, struct diags *d);

#endif
