/*
 * A list while it is being filled, row by row.
 */
#ifndef LISTS_TABLE_H
#define LISTS_TABLE_H

#include "pitchboard/list.h"

struct list_maker {
	struct arena *arena;
	struct lettering lettering;
	struct list list;
	struct list_cell *cells;
	int room; /* rows */
};

struct list_maker list_begin(struct arena *a, const struct stair *s, const char *name,
	const char *title, const struct list_column *columns, int column_count);

/* A new row, all cells empty. */
struct list_cell *list_row(struct list_maker *m);

struct list_cell cell_text(const char *text);
struct list_cell cell_count(struct arena *a, int n);
struct list_cell cell_length(const struct list_maker *m, double mm); /* never in feet */
struct list_cell cell_feet(const struct list_maker *m, double mm);   /* 10', 3'-6" */
struct list_cell cell_number(struct arena *a, double v, int places);
struct list_cell cell_none(void);

struct list_cell cell_nominal(const struct list_maker *m, const struct cut_group *g);

/* The lists, each in a file of its own. */
struct list list_cut(struct arena *a, const struct list_sources *from);
struct list list_lumber(struct arena *a, const struct stair *s, const struct cut_group *groups);
struct list list_mouldings(struct arena *a, const struct list_sources *from);
struct list list_hardware(struct arena *a, const struct stair *s, const struct part *parts);
struct list list_buying(struct arena *a, const struct stair *s, const struct cut_group *groups);
struct list list_cutting(struct arena *a, const struct stair *s, const struct cut_group *groups);
struct list list_setups(struct arena *a, const struct stair *s, const struct blank *blanks);

#endif
