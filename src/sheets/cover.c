/*
 * The first sheet: what the job is, what was chosen, what must be measured, cautions.
 */
#include "sheets/cover.h"

#include "draw/bounds.h"
#include "sheets/picture.h"
#include "sheets/tables.h"
#include "sheets/words.h"

/* The tables leave the picture at least this share of the sheet. */
#define PICTURE 0.36

static const struct table_column pair_columns[] = { { "", ALIGN_LEFT, 0 }, { "", ALIGN_LEFT, 62 } };

/* ---- tables ---- */

static struct table stair_table(struct arena *a, const struct sheet_context *c)
{
	const struct stair *s = c->stair;
	const struct flight *f = &s->flights[0];
	const char *headroom = s->headroom.state == HEADROOM_NOT_CHECKED
		? "not checked: no opening given"
		: arena_printf(a, "%s%s, wanted %s", length_words(a, s, s->headroom.least),
			  s->headroom.state == HEADROOM_SHORT ? " SHORT" : "",
			  length_words(a, s, s->job->opening.headroom));
	const char *rows[] = {
		"Total rise, finished floors",
		length_words(a, s, s->total_rise),
		"Risers",
		arena_printf(a, "%d of %s", s->risers, length_words(a, s, s->unit_rise)),
		"Treads",
		arena_printf(a, "%d of %s", s->treads, length_words(a, s, f->unit_run)),
		"Total run",
		length_words(a, s, f->total_run),
		"Pitch",
		angle_letter(a, f->pitch),
		"Twice rise plus run",
		inches_words(a, s, 2 * s->unit_rise + f->unit_run),
		"Width",
		length_words(a, s, s->width),
		"Least headroom",
		headroom,
		"Building code",
		code_words(a, c->findings),
	};
	const char **cells = NEW_N(a, const char *, sizeof(rows) / sizeof(*rows));

	for (size_t i = 0; i < sizeof(rows) / sizeof(*rows); i++)
		cells[i] = rows[i];
	return (struct table){ "The stair", pair_columns, 2, cells,
		(int)(sizeof(rows) / sizeof(*rows) / 2) };
}

/* With a column of headroom where the job says enough to know it. */
static struct table options_table(struct arena *a, const struct stair *s)
{
	static const struct table_column columns[] = { { "Risers", ALIGN_RIGHT, 0 },
		{ "Rise", ALIGN_RIGHT, 0 }, { "Run", ALIGN_RIGHT, 0 },
		{ "Total run", ALIGN_RIGHT, 0 }, { "2 rise + run", ALIGN_RIGHT, 0 },
		{ "Why", ALIGN_LEFT, 62 } };
	static const struct table_column with_headroom[] = { { "Risers", ALIGN_RIGHT, 0 },
		{ "Rise", ALIGN_RIGHT, 0 }, { "Run", ALIGN_RIGHT, 0 },
		{ "Total run", ALIGN_RIGHT, 0 }, { "2 rise + run", ALIGN_RIGHT, 0 },
		{ "Headroom", ALIGN_RIGHT, 0 }, { "Why", ALIGN_LEFT, 62 } };
	bool is_known = s->headroom.state != HEADROOM_NOT_CHECKED;
	const char **cells = NEW_N(a, const char *, 7 * s->option_count + 1);
	int n = 0;

	for (int i = 0; i < s->option_count; i++) {
		const struct layout_option *o = &s->options[i];
		cells[n++] = arena_printf(a, "%d", o->risers);
		cells[n++] = length_words(a, s, o->unit_rise);
		cells[n++] = length_words(a, s, o->unit_run);
		cells[n++] = length_words(a, s, o->total_run);
		cells[n++] = inches_words(a, s, o->step_sum);
		if (is_known)
			cells[n++] = length_words(a, s, o->headroom);
		cells[n++] = o->verdict;
	}
	return (struct table){ "Layouts weighed", is_known ? with_headroom : columns,
		is_known ? 7 : 6, cells, s->option_count };
}

static struct table revision_table(struct arena *a, const struct job *job)
{
	static const struct table_column columns[] = { { "Rev", ALIGN_LEFT, 0 },
		{ "Date", ALIGN_LEFT, 0 }, { "By", ALIGN_LEFT, 0 }, { "What", ALIGN_LEFT, 62 } };
	const char **cells = NEW_N(a, const char *, 4 * job->revision_count + 1);

	for (int i = 0; i < job->revision_count; i++) {
		const struct revision *r = &job->revisions[i];
		const char *row[] = { r->mark, r->date, r->by, r->text };
		for (int k = 0; k < 4; k++)
			cells[4 * i + k] = row[k] ? row[k] : "";
	}
	return (struct table){ "Revisions", columns, 4, cells, job->revision_count };
}

/* Since the earlier job that this one was compared with. */
static struct table changes_table(struct arena *a, const struct change *changes)
{
	static const struct table_column columns[] = { { "Changed", ALIGN_LEFT, 96 } };
	int n = 0, i = 0;

	for (const struct change *c = changes; c; c = c->next)
		n++;
	const char **cells = NEW_N(a, const char *, n + 1);
	for (const struct change *c = changes; c; c = c->next)
		cells[i++] = c->text;
	return (struct table){ "Changes since the last issue", columns, 1, cells, n };
}

static struct table index_table(struct arena *a, const struct drawing *sheets)
{
	static const struct table_column columns[] = { { "Sheet", ALIGN_LEFT, 0 },
		{ "Title", ALIGN_LEFT, 0 }, { "Scale", ALIGN_LEFT, 0 } };
	int n = 0, i = 0;

	for (const struct drawing *g = sheets; g; g = g->next)
		n++;
	const char **cells = NEW_N(a, const char *, 3 * n + 1);
	for (const struct drawing *g = sheets; g; g = g->next) {
		cells[i++] = g->id;
		cells[i++] = g->title;
		cells[i++] = g->scale ? g->scale : "";
	}
	return (struct table){ "Sheets", columns, 3, cells, n };
}

/* ---- notes ---- */

static const char *measured_text(struct arena *a, const struct job *job)
{
	const char *open = unverified_words(a, job);

	if (!*open)
		return "Every site size that was given is marked as measured.";
	return arena_printf(a, "To be verified in the field (VIF) before anything is made: %s.",
		open);
}

static const char *material_text(struct arena *a, const struct job *job)
{
	const struct job_material *m = &job->material;

	return arena_printf(a, "Treads %s; risers %s; stringers %s; %s. Finish: %s.", m->treads,
		m->risers, m->stringers, balustrade_species(a, m, "balustrade "), m->finish);
}

static void note_sheet(struct sheet *s)
{
	const struct stair *st = s->context->stair;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Site sizes", measured_text(a, st->job) },
		{ "Material", material_text(a, st->job) },
		{ "Cautions", general_words(st) },
		{ NULL,
			"Codes differ by place; the authority having jurisdiction decides. "
			"Structure is by a licensed designer where one is required." },
		{ NULL,
			"Before cutting into existing work find wiring, pipes and bearing "
			"members, shore, and keep a safe way up. Mind dust, kickback and short "
			"pieces." },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct sheet s = sheet_begin(a, c, COVER_TITLE);
	const struct stair *st = c->stair;
	const struct table tables[] = { stair_table(a, c), options_table(a, st),
		index_table(a, c->sheets), revision_table(a, st->job),
		changes_table(a, c->changes) };

	note_sheet(&s);
	struct table_list rest = sheet_tables(&s, (struct table_list){ tables, 5 }, TABLES_RIGHT,
		box_width(s.room) * (1 - PICTURE));
	sheet_picture(&s, &s.room, 1);
	s.drawing->next = sheets_of_tables(a, c, "Job, continued", rest);
	return s.drawing;
}

const struct sheet_kind sheet_cover = { "cover", "S-0", draw };
