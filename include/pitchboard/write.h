/*
 * Drawings to files.  The only room that knows Cairo and FreeType.
 *
 * Every file is written beside its target under a temporary name, closed,
 * checked and renamed: a failure leaves the earlier drawing as it was.
 */
#ifndef PITCHBOARD_WRITE_H
#define PITCHBOARD_WRITE_H

#include "pitchboard/drawing.h"

/* What goes into the properties of a PDF and the head of an SVG. */
struct imprint {
	const char *title, *author, *subject, *keywords; /* keywords carry the job's fingerprint */
	const char *date; /* 2026-11-02, from the job, never from the clock; "" leaves it out */
};

/* The faces that sheets are lettered in, loaded from files in `dir`/fonts. */
struct faces;

/* NULL and a message in `problem` when a file is missing or is not the pinned one. */
struct faces *faces_load(struct arena *a, const char *dir, const char **problem);
void faces_free(struct faces *f); /* NULL is fine */
struct measure faces_measure(const struct faces *f);

/* Letters that no face holds, or that cannot be set one by one (Arabic, Hebrew, Devanagari ...):
 * each of them is drawn as U+FFFD, for all to see. */
struct missing {
	int letters;      /* on all sheets together */
	unsigned code;    /* of the first, as Unicode counts */
	const char *text; /* in which it stands; NULL: none is missing */
};

struct missing faces_missing(const struct faces *f, const struct drawing *drawings);

/* One written file. */
struct written {
	struct written *next;
	const char *path;
};

struct write_result {
	const struct written *files; /* in the order written */
	const char *problem; /* NULL: all is well.  Else what the machine refused, on which file */
};

/* All drawings into `dir` (made if missing): a PDF for every stem, an SVG for every sheet. */
struct write_result write_drawings(struct arena *a, const struct drawing *drawings,
	const struct imprint *imprint, const struct faces *faces, const char *dir);

#endif
