/*
 * Tables set in columns down one side of a sheet.
 *
 *   +------------+--------+--------+
 *   |            | one    | two,   |
 *   |  views     | ------ | rest   |
 *   |            | two    | ------ |
 *   |            |        | three  |
 *   +------------+--------+--------+
 *
 * A long table runs on in the next column; under one as wide as the room narrower ones
 * stand side by side.  What no column has room for is given back, for another sheet.
 */
#ifndef SHEETS_TABLES_H
#define SHEETS_TABLES_H

#include "draw/table.h"
#include "sheets/frame.h"

struct table_list {
	const struct table *tables;
	int n;
};

/* At which side of the room the columns stand. */
enum table_side { TABLES_LEFT, TABLES_RIGHT };

/* Sets as many as go into columns no wider than `most` together and no deeper than the room, and
 * takes their width off the room.  Tables without rows are passed over. */
struct table_list sheet_tables(struct sheet *s, struct table_list list, enum table_side side,
	double most);

/* What a sheet had no room for, on as many further sheets as it takes; none for none. */
struct drawing *sheets_of_tables(struct arena *a, const struct sheet_context *c, const char *title,
	struct table_list rest);

#endif
