/*
 * What client and shop agree on beside the drawings.
 */
#ifndef PITCHBOARD_JOB_AGREEMENT_H
#define PITCHBOARD_JOB_AGREEMENT_H

struct node;

struct job_agreement {
	const struct node *src;
	const char *const *not_included;
	const char *const *notes;
	int not_included_count, note_count;
};

#endif
