/*
 * The page that is signed: what was chosen, what is not included, and the
 * signatures.
 *
 *   +-----------------+--------------+
 *   | what is chosen  | not included |
 *   |                 | also agreed  |
 *   +--------+--------+--------------+
 *   | words, | for the | for the     |
 *   | name   | client  | shop        |
 *   +--------+---------+-------------+
 */
#include "draw/bounds.h"
#include "sheets/client_facts.h"
#include "sheets/client_sign.h"
#include "sheets/tables.h"
#include "sheets/words.h"

/* ---- the tables ---- */

enum { LABEL, WORDS, FINISH, CHANGED, COLUMNS };

/* With and without a column for what has changed; widths in heights of a capital. */
static struct table choices_table(struct arena *a, const struct sheet_context *c,
	struct client_page page)
{
	const double widest[COLUMNS] = { page.label, page.words, page.finish, 8 };
	static const char *const heads[COLUMNS] = { "Piece", "What it is", "Finish", "Changed" };
	struct table_column *columns = NEW_N(a, struct table_column, COLUMNS);
	struct fact facts[MOST_FACTS], was[MOST_FACTS];
	int n = client_facts(a, c, facts), before = client_facts_before(a, c, was), rows = 0;
	int wide = before ? COLUMNS : CHANGED;
	const char **cells = NEW_N(a, const char *, COLUMNS *n);
	const struct job *job = c->stair->job;
	const char *mark =
		job->revision_count ? job->revisions[job->revision_count - 1].mark : "yes";

	for (int i = 0; i < COLUMNS; i++)
		columns[i] = (struct table_column){ heads[i], ALIGN_LEFT, widest[i] * page.letter };
	for (int i = 0; i < n; i++) {
		const struct fact *old = client_fact_before(was, before, &facts[i]);
		const char *row[COLUMNS] = { facts[i].label, facts[i].words, facts[i].finish,
			client_fact_differs(old, &facts[i]) ? mark : "" };
		if (!facts[i].is_chosen)
			continue;
		for (int k = 0; k < wide; k++)
			cells[rows * wide + k] = row[k];
		rows++;
	}
	return (struct table){ "What is chosen", columns, wide, cells, rows };
}

/* Two beside each other: a list of many short things is half as high so. */
enum { ABREAST = 2 };

static struct table list_table(struct arena *a, const char *title, const char *const *items, int n,
	double letter)
{
	struct table_column *columns = NEW_N(a, struct table_column, ABREAST);
	int rows = (n + ABREAST - 1) / ABREAST;
	const char **cells = NEW_N(a, const char *, ABREAST *rows);

	for (int i = 0; i < ABREAST; i++)
		columns[i] = (struct table_column){ "", ALIGN_LEFT, 26 * letter };
	for (int i = 0; i < ABREAST * rows; i++)
		cells[i] = i < n ? items[i] : "";
	return (struct table){ title, columns, n < ABREAST ? n : ABREAST, cells, rows };
}

/* What the shop leaves out always, and what it leaves out upstairs. */
static struct table exclusions_table(struct arena *a, const struct sheet_context *c, double letter)
{
	const struct job_agreement *agreed = &c->stair->job->agreement;
	const char **cells = NEW_N(a, const char *, agreed->not_included_count + 2);
	const char *others = by_others_where(c->stair->job);
	int n = 0;

	if (*others)
		cells[n++] = arena_printf(a, "rail and guard of the stair %s", others);

	if (*client_edge_words(a, c))
		cells[n++] = "guards around the opening upstairs, where these drawings show none";
	for (int i = 0; i < agreed->not_included_count; i++)
		cells[n++] = agreed->not_included[i];
	return list_table(a, "Not included, unless agreed in writing", cells, n, letter);
}

enum { TABLES = 3 };

/* Choices at the left, the rest beside them; what the page had no room for. */
static struct table_list draw_tables(struct sheet *s, struct client_page page)
{
	struct arena *a = s->drawing->arena;
	const struct job_agreement *agreed = &s->context->stair->job->agreement;
	struct table *tables = NEW_N(a, struct table, TABLES);

	tables[0] = choices_table(a, s->context, page);
	tables[1] = exclusions_table(a, s->context, page.letter);
	tables[2] = list_table(a, "Also agreed", agreed->notes, agreed->note_count, page.letter);
	return sheet_tables(s, (struct table_list){ tables, TABLES }, TABLES_LEFT,
		box_width(s->room));
}

/* ---- the page ---- */

static struct sheet page_begin(struct arena *a, const struct sheet_context *c,
	struct client_page page)
{
	struct sheet s = sheet_begin(a, c, "Choices, to be signed");

	s.room.y0 += client_sign_height(a, c, page.letter) + 2 * page.letter;
	s.hand.letter = page.letter;
	return s;
}

/* Narrow columns are easier to read, wide ones take fewer lines; of the narrowest a small paper has
 * room for two tables beside each other. */
static const struct client_page columns[] = {
	{ .label = 13, .words = 26, .finish = 16 },
	{ .label = 13, .words = 34, .finish = 16 },
	{ .label = 13, .words = 42, .finish = 16 },
	{ .label = 11, .words = 19, .finish = 11 },
};

enum { WAYS = sizeof(columns) / sizeof(*columns) };

/* All goes on the page; or the choices do, and the lists beside them on another. */
enum fit { FITS_ALL, FITS_CHOICES };

static bool fits(struct arena *a, const struct sheet_context *c, struct client_page page,
	enum fit wanted)
{
	struct sheet trial = page_begin(a, c, page);
	struct table_list rest = draw_tables(&trial, page);

	return rest.n == 0 || (wanted == FITS_CHOICES && rest.tables[0].column_count <= ABREAST);
}

struct client_page client_choices_page(struct arena *a, const struct sheet_context *c)
{
	struct sheet s = sheet_begin(a, c, "");
	struct client_page page = columns[0];

	for (int wanted = FITS_ALL; wanted <= FITS_CHOICES; wanted++)
		for (int i = 0; i < WAYS * (CLIENT_LETTERS - CLIENT_LETTERS_PLAIN); i++) {
			page = columns[i % WAYS];
			page.letter = client_letter(&s, CLIENT_LETTERS_PLAIN + i / WAYS);
			if (fits(a, c, page, (enum fit)wanted))
				return page;
		}
	return page;
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct client_page page = client_choices_page(a, c);
	struct sheet s = page_begin(a, c, page);
	struct table_list rest = draw_tables(&s, page);

	s.drawing->next = sheets_of_tables(a, c, "Choices, continued", rest);
	return client_told(s.drawing);
}

const struct sheet_kind sheet_client_choices = { "client-choices", CLIENT_SIGNED_SERIES, draw };
