/*
 * What templates say.
 */
#ifndef SHEETS_TEMPLATE_WORDS_H
#define SHEETS_TEMPLATE_WORDS_H

#include "pitchboard/job.h"
#include "pitchboard/vec.h"

struct template_words {
	const char *job;   /* number and name */
	const char *piece; /* mark, what it is, how many */
	const char *face;  /* which one is up; "" where there is none */
	const char *edges; /* crown and grain; "" */
	const char *work;  /* what is peculiar to this kind of work; "" on a plain one */
	const char *stock; /* what it is cut from; "" */
	const char *units; /* of the figures */
	const char *line;  /* what to do with the lines: words_cut */
	const char *from;  /* how positions are measured: "along the plank from its lower end" */
	const char *doubt; /* what to do when the check line is out */
	const char *surer; /* the way with less error */
};

/* The words that follow from the job alone; `line` is words_cut. */
struct template_words template_words(struct arena *a, const struct job *job);

/* "S1  sawtooth carriage, make 2 alike" */
const char *piece_words(struct arena *a, const char *mark, const char *what, int count);

/* "B1, B2, B3, B5" as "B1 to B3, B5" */
const char *marks_words(struct arena *a, const char *marks);

/* One by one, ended by NULL. */
const char *const *marks_list(struct arena *a, const char *marks);

/* A mark more, unless it is among them. */
const char *marks_with(struct arena *a, const char *marks, const char *mark);

struct template_job;

/* "T-1" */
const char *template_id(struct arena *a, const struct template_job *t);

/* The stem of its files: the job's, its name, and the kind of template. */
const char *template_file(struct arena *a, const struct template_job *t, const char *kind);

/* "" when the printer needs no correction. */
const char *correction_words(struct arena *a, struct vec correction);

/* "Figures govern ..." with how they are measured. */
const char *figures_words(struct arena *a, const struct template_words *w);

extern const char words_full_size[], words_print[], words_stop[], words_cut[], words_govern[];

#endif
