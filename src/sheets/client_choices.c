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
#include <string.h>

#include "base/text.h"
#include "draw/bounds.h"
#include "sheets/client.h"
#include "sheets/client_sign.h"
#include "sheets/tables.h"

/* ---- when a choice is there to be made ---- */

static bool has_open_side(const struct sheet_context *c)
{
	const struct job_stair *s = &c->stair->job->stair;

	return s->left.kind == SIDE_OPEN || s->right.kind == SIDE_OPEN;
}

static bool has_wall_side(const struct sheet_context *c)
{
	const struct job_stair *s = &c->stair->job->stair;

	return s->left.kind == SIDE_WALL || s->right.kind == SIDE_WALL;
}

static bool has_risers(const struct sheet_context *c)
{
	return c->stair->job->risers.kind == RISER_BOARD;
}

static bool has_open_risers(const struct sheet_context *c)
{
	return !has_risers(c);
}

static bool has_newels(const struct sheet_context *c)
{
	return client_has(c, &part_newel);
}

static bool has_caps(const struct sheet_context *c)
{
	return has_newels(c) && c->stair->job->newels.cap.kind != CAP_NONE;
}

static bool has_rail(const struct sheet_context *c)
{
	return client_has(c, &part_rail);
}

static bool has_wall_rail(const struct sheet_context *c)
{
	return c->stair->job->wall_rail_count > 0;
}

static bool has_balusters(const struct sheet_context *c)
{
	enum infill_name kind = c->stair->job->infill.kind;

	return client_has(c, &part_infill) && (kind == INFILL_PLAIN || kind == INFILL_BRACED);
}

static bool has_other_infill(const struct sheet_context *c)
{
	return client_has(c, &part_infill) && !has_balusters(c);
}

static bool has_open_string(const struct sheet_context *c, enum stringer_kind kind)
{
	return has_open_side(c) && c->stair->job->stringers.open.kind == kind;
}

static bool has_sawtooth(const struct sheet_context *c)
{
	return has_open_string(c, STRINGER_SAWTOOTH);
}

static bool has_mitred(const struct sheet_context *c)
{
	return has_open_string(c, STRINGER_MITRED);
}

static bool has_housed(const struct sheet_context *c)
{
	return has_open_string(c, STRINGER_HOUSED);
}

/* ---- what was chosen ---- */

/* Words with the values of keys in braces, as the tables of keys say them. */
static const struct choice_row {
	const char *label, *words;
	bool (*is_there)(const struct sheet_context *c); /* NULL: always */
} choices[] = {
	{ "Treads", "{material.treads}, {treads.thickness} thick", NULL },
	{ "Edge of the treads", "{treads.nosing_profile}, {treads.nosing} over the step below",
		NULL },
	{ "Moulding under the edge", "{mouldings.under_nosing}", NULL },
	{ "Risers", "closed: {material.risers}", has_risers },
	{ "Risers", "open: one sees between the steps", has_open_risers },
	{ "Stringers", "{material.stringers}", NULL },
	{ "Stringer, open side", "{stringers.open.kind}: cut to the steps", has_sawtooth },
	{ "Stringer, open side", "{stringers.open.kind}: cut to the steps, risers mitred to it",
		has_mitred },
	{ "Stringer, open side", "{stringers.open.kind}: closed, the steps let into it",
		has_housed },
	{ "Skirt boards on the walls", "{skirts.wall}", has_wall_side },
	{ "Rail", "{material.rail}, {rail.profile}, {rail.width} x {rail.depth}", has_rail },
	{ "Height of the rail", "{rail.height} over the edges of the treads", has_rail },
	{ "Wall rail", "{material.rail}, {wall_rails[1].profile}, {wall_rails[1].width} x {wall_rails[1].depth}",
		has_wall_rail },
	{ "Newel posts", "{material.newels}, {newels.build}, {newels.section} square",
		has_newels },
	{ "Caps of the newels", "{newels.cap.kind}, {newels.cap.build}", has_caps },
	{ "Balusters",
		"{infill.kind}: {material.balusters}, {balusters.shape}, {balusters.section}",
		has_balusters },
	{ "Between rail and steps", "{infill.kind}: {material.balusters}", has_other_infill },
	{ "Finish", "{material.finish}", NULL },
};

#define CHOICES ((int)(sizeof(choices) / sizeof(*choices)))

static const char *fill_words(struct arena *a, const struct job *job, const char *words)
{
	struct text t = { .arena = a };

	while (*words) {
		size_t plain = strcspn(words, "{");
		text_add(&t, "%.*s", (int)plain, words);
		words += plain;
		if (!*words)
			break;
		size_t key = strcspn(words, "}");
		text_add(&t, "%s", job_value_words(a, job, arena_strndup(a, words + 1, key - 1)));
		words += key + 1;
	}
	return text_chars(&t);
}

static struct table choices_table(struct arena *a, const struct sheet_context *c,
	const struct table_column *columns)
{
	const char **cells = NEW_N(a, const char *, 2 * CHOICES);
	int n = 0;

	for (int i = 0; i < CHOICES; i++) {
		if (choices[i].is_there && !choices[i].is_there(c))
			continue;
		cells[2 * n] = choices[i].label;
		cells[2 * n++ + 1] = fill_words(a, c->stair->job, choices[i].words);
	}
	return (struct table){ "What is chosen", columns, 2, cells, n };
}

/* ---- the page ---- */

enum { AGREED = 2 };

/* What the page had no room for. */
struct rest {
	struct table_list chosen, agreed;
};

/* Choices at the left, the rest beside them. */
static struct rest draw_tables(struct sheet *s)
{
	struct arena *a = s->drawing->arena;
	const struct job_agreement *agreed = &s->context->stair->job->agreement;
	struct table_column *columns = NEW_N(a, struct table_column, 3);
	struct table *tables = NEW_N(a, struct table, 1 + AGREED);
	struct rest rest;

	columns[1].most = columns[2].most = 30 * s->hand.letter;
	for (int i = 0; i < 3; i++)
		columns[i].head = "";
	tables[0] = choices_table(a, s->context, columns);
	tables[1] = (struct table){ "Not included, unless agreed in writing", columns + 2, 1,
		agreed->not_included, agreed->not_included_count };
	tables[2] =
		(struct table){ "Also agreed", columns + 2, 1, agreed->notes, agreed->note_count };
	rest.chosen =
		sheet_tables(s, (struct table_list){ tables, 1 }, TABLES_LEFT, box_width(s->room));
	rest.agreed = sheet_tables(s, (struct table_list){ tables + 1, AGREED }, TABLES_LEFT,
		box_width(s->room));
	return rest;
}

static struct sheet page_begin(struct arena *a, const struct sheet_context *c, int letter)
{
	struct sheet s = sheet_begin(a, c, "Choices, to be signed");

	s.room.y0 += client_sign_height(a, c) + 2 * s.hand.letter;
	s.hand.letter = client_letter(&s, letter);
	return s;
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct sheet s;
	struct rest rest;

	for (int i = 0; i < CLIENT_LETTERS; i++) {
		s = page_begin(a, c, i);
		rest = draw_tables(&s);
		if (rest.chosen.n + rest.agreed.n == 0)
			return s.drawing;
	}
	s = page_begin(a, c, CLIENT_LETTERS_PLAIN);
	rest = draw_tables(&s);
	struct drawing **tail = &s.drawing->next;
	*tail = sheets_of_tables(a, c, "Choices, continued", rest.chosen);
	while (*tail)
		tail = &(*tail)->next;
	*tail = sheets_of_tables(a, c, "Choices, continued", rest.agreed);
	return s.drawing;
}

const struct sheet_kind sheet_client_choices = { "client-choices", CLIENT_SIGNED_SERIES, draw };
