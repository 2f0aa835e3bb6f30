/*
 * The code table: what the edition asks, what this stair has, and what came of it.
 */
#include <string.h>

#include "draw/bounds.h"
#include "sheets/limits.h"
#include "sheets/tables.h"
#include "sheets/words.h"

enum {
	LIMIT_COLUMNS = 7,
	HOW_COLUMNS = 2,
	MEND_COLUMNS = 2,
	OPEN_COLUMNS = 4,
	AMENDED_COLUMNS = 4
};

static const struct table_column limit_columns[LIMIT_COLUMNS] = {
	{ "Result", ALIGN_LEFT, 0 },
	{ "Measured", ALIGN_LEFT, 56 },
	{ "Asked", ALIGN_LEFT, 40 },
	{ "Provided", ALIGN_LEFT, 34 },
	{ "Section", ALIGN_LEFT, 0 },
	{ "Where", ALIGN_LEFT, 44 },
	{ "Limit from", ALIGN_LEFT, 44 },
};

/* On a wide paper the last column of the table of limits, else the last of a table of its own. */
static const struct table_column how_columns[HOW_COLUMNS] = {
	{ "What", ALIGN_LEFT, 56 },
	{ "How it is measured", ALIGN_LEFT, 180 },
};

#define LEAST_HOW 70.0 /* as a column of the table of limits */

static const struct table_column mend_columns[MEND_COLUMNS] = {
	{ "What", ALIGN_LEFT, 50 },
	{ "What would mend it", ALIGN_LEFT, 140 },
};

static const struct table_column open_columns[OPEN_COLUMNS] = {
	{ "What", ALIGN_LEFT, 50 },
	{ "Asked", ALIGN_LEFT, 50 },
	{ "Section", ALIGN_LEFT, 0 },
	{ "Why", ALIGN_LEFT, 70 },
};

/* The same on a wide paper. */
static const struct table_column wide_open_columns[OPEN_COLUMNS] = {
	{ "What", ALIGN_LEFT, 80 },
	{ "Asked", ALIGN_LEFT, 80 },
	{ "Section", ALIGN_LEFT, 0 },
	{ "Why", ALIGN_LEFT, 140 },
};

static const struct table_column amended_columns[AMENDED_COLUMNS] = {
	{ "What", ALIGN_LEFT, 50 },
	{ "Here", ALIGN_LEFT, 40 },
	{ "Section", ALIGN_LEFT, 0 },
	{ "Who said so, and when", ALIGN_LEFT, 80 },
};

/* ---- rows ---- */

/* Fills the cells of one row; false: the finding does not belong in the table. */
typedef bool row_fn(const struct finding *f, enum finding_state state, const char **cells);

/* In short: a note says what is carried over, a table who amended what. */
static const char *source_of(const struct finding *f)
{
	return f->rule->amends ? "amended, see below" : f->source_in_short;
}

static bool limit_row(const struct finding *f, enum finding_state state, const char **cells)
{
	const char *row[LIMIT_COLUMNS] = { result_words(f->state), f->what, f->asked, f->provided,
		f->rule->section, f->place, source_of(f) };

	memcpy(cells, row, sizeof(row));
	return f->state == state;
}

static bool limit_and_how_row(const struct finding *f, enum finding_state state, const char **cells)
{
	cells[LIMIT_COLUMNS] = f->rule->how;
	return limit_row(f, state, cells);
}

static bool how_row(const struct finding *f, enum finding_state state, const char **cells)
{
	const char *row[HOW_COLUMNS] = { f->what, f->rule->how };

	memcpy(cells, row, sizeof(row));
	return f->state == state && *f->rule->how;
}

static bool mend_row(const struct finding *f, enum finding_state state, const char **cells)
{
	const char *row[MEND_COLUMNS] = { f->what, f->mend };

	memcpy(cells, row, sizeof(row));
	return f->state == state;
}

static bool open_row(const struct finding *f, enum finding_state state, const char **cells)
{
	const char *row[OPEN_COLUMNS] = { f->what, f->asked, f->rule->section, f->reason };

	memcpy(cells, row, sizeof(row));
	return f->state == state;
}

static bool amended_row(const struct finding *f, enum finding_state state, const char **cells)
{
	const char *row[AMENDED_COLUMNS] = { f->what, f->asked, f->rule->section, f->source };

	(void)state;
	memcpy(cells, row, sizeof(row));
	return f->rule->amends != NULL;
}

/* Adds rows of one state behind those that are there. */
static int add_rows(const struct finding *list, enum finding_state state, row_fn *row, int columns,
	const char **cells)
{
	int n = 0;

	for (; list; list = list->next)
		n += row(list, state, cells + n * columns);
	return n;
}

static const char **cells_for(struct arena *a, const struct finding *list, int columns)
{
	int n = 1;

	for (; list; list = list->next)
		n++;
	return NEW_N(a, const char *, n *columns);
}

/* ---- tables ---- */

/* What is not met first, then what is near, then what is met: rows of what was measured. */
static int add_measured(const struct finding *list, row_fn *row, int columns, const char **cells)
{
	static const enum finding_state order[] = { FINDING_NOT_MET, FINDING_NEAR, FINDING_MET };
	int n = 0;

	for (int i = 0; i < 3; i++)
		n += add_rows(list, order[i], row, columns, cells + n * columns);
	return n;
}

static struct table limits_table(struct arena *a, const struct finding *list)
{
	const char **cells = cells_for(a, list, LIMIT_COLUMNS);
	int n = add_measured(list, limit_row, LIMIT_COLUMNS, cells);

	return (struct table){ list->rules->title, limit_columns, LIMIT_COLUMNS, cells, n };
}

/* With a last column, so wide. */
static struct table limits_and_how_table(struct arena *a, const struct finding *list, double wide)
{
	enum { COLUMNS = LIMIT_COLUMNS + 1 };
	struct table_column *columns = NEW_N(a, struct table_column, COLUMNS);
	const char **cells = cells_for(a, list, COLUMNS);
	int n = add_measured(list, limit_and_how_row, COLUMNS, cells);

	memcpy(columns, limit_columns, sizeof(limit_columns));
	columns[LIMIT_COLUMNS] = how_columns[1];
	columns[LIMIT_COLUMNS].most = fmin(wide, how_columns[1].most);
	return (struct table){ list->rules->title, columns, COLUMNS, cells, n };
}

static struct table how_table(struct arena *a, const struct finding *list)
{
	const char **cells = cells_for(a, list, HOW_COLUMNS);
	int n = add_measured(list, how_row, HOW_COLUMNS, cells);

	return (struct table){ "How it is measured", how_columns, HOW_COLUMNS, cells, n };
}

static struct table state_table(struct arena *a, const struct finding *list, const char *title,
	enum finding_state state, const struct table_column *columns)
{
	const char **cells = cells_for(a, list, OPEN_COLUMNS);
	int n = add_rows(list, state, open_row, OPEN_COLUMNS, cells);

	return (struct table){ title, columns, OPEN_COLUMNS, cells, n };
}

static struct table mend_table(struct arena *a, const struct finding *list)
{
	const char **cells = cells_for(a, list, MEND_COLUMNS);
	int n = add_rows(list, FINDING_NOT_MET, mend_row, MEND_COLUMNS, cells);

	return (struct table){ "Not met", mend_columns, MEND_COLUMNS, cells, n };
}

static struct table amended_table(struct arena *a, const struct finding *list)
{
	const char **cells = cells_for(a, list, AMENDED_COLUMNS);
	int n = add_rows(list, FINDING_MET, amended_row, AMENDED_COLUMNS, cells);

	return (struct table){ "Amended for this place", amended_columns, AMENDED_COLUMNS, cells,
		n };
}

static const char *near_words(struct arena *a, const struct sheet_context *c)
{
	return arena_printf(a,
		"Met: the stair as drawn meets the limit as entered. Near: it does by less than "
		"%s, "
		"and built work is never perfect. What the job does not show is not checked.",
		length_say(a, job_lettering(c->stair->job), c->stair->job->code.tolerance));
}

static void note_sheet(struct sheet *s)
{
	const struct sheet_context *c = s->context;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Code", near_words(a, c) },
		{ NULL, c->findings->rules->note },
		{ NULL,
			"Limits are as entered in the file of the edition: read in the text, known "
			"second hand or from memory, as the table says; what was read in another "
			"edition is carried over from memory. Codes differ by place; the authority "
			"having jurisdiction decides." },
		{ NULL, general_words(c->stair) },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	if (!c->findings)
		return NULL;
	struct sheet s = sheet_begin(a, c, "Code table");
	struct table limits = limits_table(a, c->findings), how = how_table(a, c->findings);
	double beside =
		box_width(s.room) - box_width(table_size(s.hand, &limits)) - 2 * s.hand.letter;

	const struct table_column *open = open_columns;
	if (beside >= LEAST_HOW) {
		open = wide_open_columns;
		limits = limits_and_how_table(a, c->findings, beside);
		how.row_count = 0;
	}
	const struct table tables[] = { mend_table(a, c->findings), limits, how,
		amended_table(a, c->findings),
		state_table(a, c->findings, "Not checked here", FINDING_NOT_CHECKED, open),
		state_table(a, c->findings, "Does not apply to this stair", FINDING_NOT_APPLICABLE,
			open) };

	note_sheet(&s);
	struct table_list rest =
		sheet_tables(&s, (struct table_list){ tables, sizeof(tables) / sizeof(*tables) },
			TABLES_LEFT, box_width(s.room));
	s.drawing->next = sheets_of_tables(a, c, "Code table, continued", rest);
	return s.drawing;
}

const struct sheet_kind sheet_code = { "code", "S-9", draw };
