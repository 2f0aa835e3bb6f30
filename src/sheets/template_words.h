/*
 * What every template says, whatever paper it is on.
 */
#ifndef SHEETS_TEMPLATE_WORDS_H
#define SHEETS_TEMPLATE_WORDS_H

#include "sheets/template.h"

struct template_words {
	const char *job;   /* number and name */
	const char *piece; /* mark, what it is, how many */
	const char *face;  /* which one is up */
	const char *edges; /* crown and grain */
	const char *work;  /* what the lines mean on this kind of stringer; "" on a plain one */
	const char *plank;
	const char *units; /* of the figures */
};

struct template_words template_words(struct arena *a, const struct template_job *t);

/* "T-1" */
const char *template_id(struct arena *a, const struct template_job *t);

/* The stem of its files: the job's, the mark, and the kind of template. */
const char *template_file(struct arena *a, const struct template_job *t, const char *kind);

/* "" when the printer needs no correction. */
const char *correction_words(struct arena *a, struct vec correction);

extern const char words_full_size[], words_print[], words_stop[], words_line[], words_govern[],
	words_figures_govern[];

#endif
