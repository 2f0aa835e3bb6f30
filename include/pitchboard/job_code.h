/*
 * What a job says of the building code.
 */
#ifndef PITCHBOARD_JOB_CODE_H
#define PITCHBOARD_JOB_CODE_H

struct node;

/* A row of the edition that applies otherwise in this place. */
struct job_amendment {
	const struct node *src;
	const char *row;
	const char *least, *most; /* as typed; "" is not given */
	const char *by, *date, *text;
};

/* The building code that the stair is checked against. */
struct job_code {
	const struct node *src;
	const char *edition; /* a file of templates/rules; "": none */
	double tolerance;    /* what a built size may be off the drawn one */
	const struct job_amendment *amendments;
	int amendment_count;
};

#endif
