/*
 * What pieces are and what they are made of, in words beside a view: a heading,
 * a few short lines under it, and a leader to the piece.
 */
#ifndef SHEETS_LABELS_H
#define SHEETS_LABELS_H

#include "sheets/leaders.h"

struct label {
	const char *head, *words, *more; /* each begins a line; words and more may be "" */
	struct vec points_at;            /* on paper */
};

enum label_side { LABELS_LEFT, LABELS_RIGHT, LABELS_ABOVE, LABELS_BELOW };

/* A column of labels: its edge towards the view, and how far up and down it may reach. */
struct label_column {
	enum label_side side;
	double x, low, high;
};

/* As near as may be to what they point at, leaders uncrossed; the box of the words. */
struct box labels_draw(struct hand h, const struct label *list, int n, struct label_column column);

/* A row of labels over or under the view: its edge towards it, and how far it may reach. */
struct label_row {
	enum label_side side;
	double y, low, high;
};

struct box label_row_draw(struct hand h, const struct label *list, int n, struct label_row row);

#endif
