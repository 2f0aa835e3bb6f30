/*
 * A pattern: what is drawn of one stringer at true size, in the plank's own axes
 * (x along the plank from its lower end, y up from its lower edge).
 *
 * Beside the line to cut it holds what proves that sheets were joined well: a
 * base line parallel to the nosing line, with running positions on it, and one
 * straight check line from end to end whose length is figured.  Both are chain
 * lines, and what lies on the far face is broken, so that nothing is cut to by
 * mistake.
 */
#ifndef SHEETS_TEMPLATE_PATTERN_H
#define SHEETS_TEMPLATE_PATTERN_H

#include "draw/clip.h"
#include "pitchboard/drawing.h"
#include "pitchboard/part.h"

struct pattern_line {
	struct pattern_line *next;
	enum pen pen;
	struct chain chain;
	struct box box; /* round it */
};

#define LABEL_WAYS 3

/* Lettering that belongs to a point of the pattern. */
struct pattern_label {
	struct pattern_label *next;
	struct vec at;
	struct vec toward;            /* unit: on which side of the point it would like to stand */
	const char *ways[LABEL_WAYS]; /* of saying it, the shorter where there is no room; NULL:
					 left out */
};

struct pattern {
	const struct part *part;
	struct box box; /* round the lines */
	struct pattern_line *lines;
	struct pattern_label *labels;
	double check_length; /* of the check line; 0: it has none */
};

/* One corner of the outline as it is listed. */
struct position {
	int number; /* lettered beside the corner */
	struct vec at;
	const char *what;           /* "front of tread 3", or "" */
	const char *along, *across; /* as lettered */
};

struct positions {
	const struct position *position;
	int n;
};

struct positions pattern_positions(struct arena *a, const struct part *part,
	struct lettering lettering);

/* From where the figures beside corners and on the base line are measured. */
enum figures {
	FIGURES_FROM_PLANK_END,
	FIGURES_FROM_PIECE_END, /* of a piece that is used in many places */
};

/* What of the stringer is inside `region`; all of it when the region holds it. */
struct pattern pattern_make(struct arena *a, const struct part *part, struct lettering lettering,
	struct box region, enum figures figures);

/* The lines a groove is routed to: its outline without the sides where it runs into another. */
struct chain *groove_lines(struct arena *a, const struct part *part, const struct feature *groove);

/* The rod: a strip on which every corner is ticked at its running position. */
struct pattern pattern_rod(struct arena *a, const struct part *part, struct lettering lettering);

/* Round the whole outline, before any mirroring. */
struct box pattern_extent(struct arena *a, const struct part *part);

#endif
