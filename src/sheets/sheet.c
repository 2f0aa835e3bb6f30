/*
 * The table of sheets, and the set made of it.
 */
#include "pitchboard/sheet.h"

#include <string.h>

#include "base/text.h"
#include "sheets/client_sign.h"
#include "sheets/clouds.h"
#include "sheets/cover.h"
#include "sheets/frame.h"
#include "sheets/template.h"

static const struct sheet_kind *const kinds[] = { &sheet_cover, &sheet_plan, &sheet_elevation,
	&sheet_section, &sheet_rail_views, &sheet_stringer, &sheet_parts, &sheet_details,
	&sheet_pieces, &sheet_cutlist, &sheet_cutting, &sheet_setups, &sheet_code, &sheet_guard,
	&sheet_fixings, &sheet_general, &sheet_client_cover, &sheet_client_plan,
	&sheet_client_elevation, &sheet_client_choices, &sheet_client_notes };

#define KINDS ((int)(sizeof(kinds) / sizeof(*kinds)))

static const struct sheet_kind *find_kind(const char *name)
{
	for (int i = 0; i < KINDS; i++)
		if (!strcmp(kinds[i]->name, name))
			return kinds[i];
	return NULL;
}

/* Sheets of this series among those numbered before: several kinds may share one. */
static int numbered(const struct drawing *sheets, const char *series)
{
	size_t length = strlen(series);
	int n = 0;

	for (const struct drawing *g = sheets; g; g = g->next)
		n += strncmp(g->id, series, length) == 0;
	return n;
}

/* S-201, S-202 ... in the order drawn; the file and the SVG are named after the job. */
static void number(struct arena *a, const struct sheet_kind *kind, const char *stem,
	struct drawing *sheets, int n)
{
	for (struct drawing *g = sheets; g; g = g->next) {
		g->id = arena_printf(a, "%s%02d", kind->series, ++n);
		g->file = stem;
		g->svg = arena_printf(a, "%s-%s", stem, g->id);
	}
}

static int length_of(const struct drawing *list, const struct drawing *end)
{
	int n = 0;

	for (; list != end; list = list->next)
		n++;
	return n;
}

/* What a sheet is composed from, views and tables and the room round lettering, is several times
 * its marks: it ends with the kind of sheet. */
static struct drawing *draw_kind(struct arena *a, const struct sheet_kind *kind,
	const struct sheet_context *c)
{
	struct arena *scratch = arena_new();
	struct drawing *sheets = drawings_keep(a, kind->draw(scratch, c));

	arena_free(scratch);
	return sheets;
}

/* Stands in the index for a cover that is not drawn yet. */
static struct drawing *cover_to_be(struct arena *a, const struct sheet_context *c, const char *stem,
	struct drawing *others)
{
	struct drawing *g = drawing_new(a, USE_SHEET, c->paper->width, c->paper->height);

	g->title = COVER_TITLE;
	number(a, &sheet_cover, stem, g, 0);
	g->next = others;
	return g;
}

/* The cover lists all sheets, its own continuation among them, which grows with the list: drawn
 * again until both agree. */
static struct drawing *draw_cover(struct arena *a, const struct sheet_context *c, const char *stem,
	struct drawing *others)
{
	struct sheet_context with_index = *c;
	int listed, drawn = 1;

	with_index.sheets = cover_to_be(a, c, stem, others);
	do {
		struct drawing *cover = draw_kind(a, &sheet_cover, &with_index);
		number(a, &sheet_cover, stem, cover, 0);
		*drawings_end(&cover) = others;
		with_index.sheets = cover;
		listed = drawn;
		drawn = length_of(cover, others);
	} while (drawn > listed);
	return (struct drawing *)with_index.sheets;
}

/* Signatures and frames of these sheets, on sheets of their own. */
static struct drawing *draw_over(struct arena *a, const struct sheet_context *c,
	const struct drawing *sheets)
{
	struct drawing *first = NULL, **tail = &first;

	for (const struct drawing *g = sheets; g; g = g->next) {
		*tail = drawing_new(a, g->use, g->width, g->height);
		(*tail)->id = g->id;
		(*tail)->title = g->title;
		(*tail)->scale = g->scale;
		(*tail)->pens = g->pens;
		tail = &(*tail)->next;
	}
	client_sign(a, c, first);
	frames_draw(a, c, first);
	return first;
}

/* All that is printed makes the number of the set, and the number is printed: so what it stands in
 * is drawn twice, at first without it. */
static void finish_set(struct arena *a, struct sheet_context c, struct drawing *sheets)
{
	struct arena *scratch = arena_new();

	c.set_fingerprint = "";
	c.set_fingerprint = drawings_fingerprint(a, sheets, draw_over(scratch, &c, sheets));
	struct drawing *over = drawings_keep(a, draw_over(scratch, &c, sheets));
	arena_free(scratch);
	for (struct drawing *g = sheets; g; g = g->next, over = over->next) {
		drawing_take(g, over, vec(0, 0));
		g->set = c.set_fingerprint;
	}
}

/* A sheet sees those before it; the cover lists all others, so it is drawn when they are there and
 * put before them. */
static struct drawing *draw_set(struct arena *a, const struct sheet_context *c, const char *stem)
{
	const struct sheet_set *set = c->set;
	struct drawing *first = NULL, *cover;
	struct sheet_context with_index = *c;
	bool has_cover = false;

	for (int i = 0; i < set->n; i++) {
		const struct sheet_kind *kind = find_kind(set->sheets[i]);
		has_cover |= kind == &sheet_cover;
		if (kind == &sheet_cover)
			continue;
		with_index.sheets = first;
		struct drawing *sheets = draw_kind(a, kind, &with_index);
		number(a, kind, stem, sheets, numbered(first, kind->series));
		*drawings_end(&first) = sheets;
	}
	clouds_draw(a, c, first); /* the cover lists the changes in words */
	cover = has_cover ? draw_cover(a, c, stem, first) : first;
	finish_set(a, with_index, cover);
	return cover;
}

static const struct paper *job_paper(const struct stationery *st, const struct job *job,
	const char *key, const char *name, struct diags *d)
{
	const struct paper *paper = stationery_paper(st, name);

	if (!paper)
		diag_error(d, node_pos(job->sheets.src, key), NULL,
			"no paper \"%s\" in templates/papers.yaml", name);
	return paper;
}

/* A set may name only sheets that the table has: found out before anything is drawn. */
static bool is_sound(const struct job *job, const char *wanted, const struct sheet_set *set,
	struct diags *d)
{
	struct pos at = node_pos(job->sheets.src, "set");

	if (!set) {
		diag_error(d, at, NULL, "no set \"%s\" in templates/sets", wanted);
		return false;
	}
	for (int i = 0; i < set->n; i++) {
		if (find_kind(set->sheets[i]))
			continue;
		diag_error(d, at, NULL, "the set \"%s\" names a sheet \"%s\", which there is not",
			set->name, set->sheets[i]);
		return false;
	}
	return true;
}

/* One warning for all sheets that run over.  It is the paper's fault only where not even a bare
 * view goes on it: else what stands round the view wants more room than it got. */
static void warn_over(const struct job *job, const struct drawing *sheets, struct diags *d)
{
	const struct drawing *over = NULL;

	for (const struct drawing *g = sheets; g; g = g->next)
		if (g->runs_over && (!over || (g->is_too_small && !over->is_too_small)))
			over = g;
	if (!over)
		return;
	struct pos at = node_pos(job->sheets.src, "paper");
	if (over->is_too_small)
		diag_warning(d, at, "choose a larger one",
			"paper \"%s\" is too small for this stair: sheet %s runs over its frame",
			job->sheets.paper, over->id);
	else
		diag_warning(d, at, "a larger paper gives it more room",
			"sheet %s runs over its frame on paper \"%s\"", over->id,
			job->sheets.paper);
}

static void warn_stamp(const struct sheet_context *c, struct diags *d)
{
	const struct job *job = c->stair->job;

	if (frame_lacks_stamp(c))
		diag_warning(d, node_pos(job->sheets.src, "paper"), "choose a wider one",
			"paper \"%s\" has no room for the stamp that the %s keeps clear",
			job->sheets.paper, c->set->title);
}

/* A set is signed by somebody, somewhere, on some day: an empty field would be filled in by hand.
 */
static void warn_unsigned(struct arena *a, const struct sheet_context *c, struct diags *d)
{
	const struct job_about *job = &c->stair->job->about;
	struct text lacks = { .arena = a };
	const struct {
		const char *text, *key;
	} wanted[] = { { job_date(c->stair->job), "date" }, { job->client, "client" },
		{ job->site, "site" }, { job->shop, "shop" } };

	for (size_t i = 0; i < sizeof(wanted) / sizeof(*wanted); i++)
		if (!wanted[i].text || !*wanted[i].text)
			text_join(&lacks, ", ", wanted[i].key);
	if (c->set->reader == READER_CLIENT && lacks.length)
		diag_warning(d, node_pos(job->src, NULL), "name them under job",
			"the client's set, which is signed, says nothing of: %s",
			text_chars(&lacks));
}

/* A set that was asked for by name has files of its own beside those of the job's. */
static const char *issue_stem(struct arena *a, const struct job *job, const char *set)
{
	const char *stem = job_stem(a, job);

	return set ? arena_printf(a, "%s-%s", stem, set) : stem;
}

const struct drawing *sheets_draw(struct arena *a, const struct stair *s, const struct part *parts,
	struct issue issue, const struct stationery *st, struct measure m, struct diags *d)
{
	if (!s || !parts || !st || d->errors)
		return NULL;
	const struct job *job = s->job;
	const char *wanted = issue.set ? issue.set : job->sheets.set;
	const struct sheet_set *set = stationery_set(st, wanted);
	const struct paper *paper = job_paper(st, job, "paper", job->sheets.paper, d);
	const struct paper *tiles =
		job_paper(st, job, "template_paper", job->sheets.template_paper, d);

	if (!is_sound(job, wanted, set, d) || !paper || !tiles)
		return NULL;
	struct paper sheets_paper = *paper;

	sheets_paper.lettering *= set->lettering;
	struct sheet_context c = { .stair = s,
		.parts = parts,
		.stationery = st,
		.paper = &sheets_paper,
		.measure = m,
		.findings = issue.findings,
		.changes = issue.changes,
		.earlier = issue.earlier,
		.was = issue.was,
		.set = set,
		.blanks = blanks_make(a, s, parts) };
	c.cutting = cutting_make(a, s, c.blanks, d);
	if (set->templates)
		c.templates = templates_draw(a, &c, tiles);
	struct drawing *first = draw_set(a, &c, issue_stem(a, job, issue.set));
	warn_over(job, first, d);
	warn_stamp(&c, d);
	warn_unsigned(a, &c, d);
	*drawings_end(&first) = c.templates;
	return first;
}
