/*
 * A pattern being drawn: lines, labels, and the lines that prove it.
 */
#ifndef SHEETS_TEMPLATE_DRAFT_H
#define SHEETS_TEMPLATE_DRAFT_H

#include "pitchboard/length.h"
#include "sheets/template_pattern.h"

struct draft {
	struct arena *arena;
	struct lettering lettering;
	struct pattern pattern;
	struct pattern_line **line_tail;
	struct pattern_label **label_tail;
	struct box region; /* what is outside is left out */
	double datum;      /* figures along the work are measured from here */
};

struct draft *draft_begin(struct arena *a, struct lettering lettering, struct box region);

void draft_chain(struct draft *d, enum pen pen, struct chain whole);
void draft_segment(struct draft *d, enum pen pen, struct vec from, struct vec to);
void draft_label(struct draft *d, struct pattern_label label);

/* A position along the work as it is lettered. */
const char *draft_figure(const struct draft *d, double x);

/* Running positions from one end to the other, 2 in or 50 mm up from the lower edge. */
void draft_base_line(struct draft *d, struct box extent);

/* Straight from the lower left to the upper right of what is there to cut. */
void draft_check_line(struct draft *d);

/* The other way round, for a face that is seen from behind. */
void draft_mirror(struct draft *d);

struct box chain_box(struct chain c);

#endif
