#include "sheets/template.h"

#include "sheets/template_block.h"
#include "sheets/template_jig.h"
#include "sheets/template_rods.h"
#include "sheets/template_sheets.h"
#include "sheets/template_skirt.h"
#include "sheets/template_small.h"
#include "sheets/template_stringer.h"
#include "sheets/template_tread.h"

/* The drawings so far, and the number of the next template.  A pattern and the room for lettering
 * round it are several times the marks that come of them: they end with what they are drawn for. */
struct folder {
	struct arena *arena; /* of what is kept */
	const struct sheet_context *context;
	const struct paper *paper; /* of sheets to be joined */
	struct drawing *list;
	int next;
};

struct template_job template_of_part(struct arena *a, const struct sheet_context *c,
	const struct part *p)
{
	const char **shows = NEW_N(a, const char *, 2);

	shows[0] = p->mark;
	return (struct template_job){ .context = c,
		.mark = p->mark,
		.name = p->mark,
		.shows = shows };
}

struct template_job template_of_unit(struct arena *a, const struct sheet_context *c,
	const struct unit *u, const char *group)
{
	const char **shows = NEW_N(a, const char *, u->piece_count + 1);

	for (int i = 0; i < u->piece_count; i++)
		shows[i] = u->pieces[i].part->mark;
	return (struct template_job){ .context = c,
		.mark = u->mark,
		.name = group,
		.shows = shows };
}

/* One file's drawings. */
static void keep(struct folder *f, const struct drawing *drawings)
{
	*drawings_end(&f->list) = drawings_keep(f->arena, drawings);
}

static void add_roll(struct folder *f, const struct template_job *t)
{
	struct arena *scratch = arena_new();

	keep(f, template_roll(scratch, t));
	arena_free(scratch);
}

static void add_tiles(struct folder *f, struct template_group g)
{
	struct arena *scratch = arena_new();

	keep(f, template_tiles(scratch, g));
	arena_free(scratch);
}

static void add_step(struct folder *f, const struct template_job *t)
{
	struct arena *scratch = arena_new();

	keep(f, template_step(scratch, t));
	arena_free(scratch);
}

static struct template_job numbered(struct folder *f, struct template_job t)
{
	t.paper = f->paper;
	t.number = f->next++;
	return t;
}

static void add_stringer(struct folder *f, const struct part *p)
{
	struct arena *scratch = arena_new();
	struct template_job t = numbered(f, stringer_template(scratch, f->context, p));

	add_roll(f, &t);
	add_tiles(f, (struct template_group){ &t, 1 });
	add_step(f, &t);
	arena_free(scratch);
}

static void add_stringers(struct folder *f)
{
	for (const struct part *p = f->context->parts; p; p = p->next)
		if (p->stringer && p->outline.n >= 3)
			add_stringer(f, p);
}

/* All of a group on rolls, in one file, and in sheets, in another. */
static void add_group(struct folder *f, struct template_group g)
{
	if (g.n == 0)
		return;
	for (int i = 0; i < g.n; i++) {
		g.jobs[i] = numbered(f, g.jobs[i]);
		add_roll(f, &g.jobs[i]);
	}
	add_tiles(f, g);
}

static void add_one(struct folder *f, struct template_job t)
{
	add_group(f, (struct template_group){ &t, 1 });
}

static void add_skirts(struct folder *f)
{
	struct arena *scratch = arena_new();

	for (const struct part *p = f->context->parts; p; p = p->next)
		if (skirt_needs_template(scratch, p))
			add_one(f, skirt_template(scratch, f->context, p));
	arena_free(scratch);
}

static void add_blocks(struct folder *f)
{
	struct arena *scratch = arena_new();

	for (const struct part *p = f->context->parts; p; p = p->next)
		if (is_riser_block(p))
			add_one(f, block_template(scratch, f->context, p));
	arena_free(scratch);
}

static void add_treads(struct folder *f, const struct unit *units)
{
	struct arena *scratch = arena_new();

	add_group(f, tread_templates(scratch, f->context, units));
	arena_free(scratch);
}

static void add_jigs(struct folder *f, const struct unit *units)
{
	struct arena *scratch = arena_new();

	add_group(f, jig_templates(scratch, f->context, units));
	arena_free(scratch);
}

static void add_small(struct folder *f)
{
	struct arena *scratch = arena_new();
	const struct small *patterns = small_patterns(scratch, f->context);

	keep(f, small_draw(scratch, f->context, patterns, f->paper, f->next++));
	arena_free(scratch);
}

static void add_rods(struct folder *f, const struct unit *units)
{
	struct arena *scratch = arena_new();
	const struct named_rod *rods = rods_make(scratch, f->context, units);

	keep(f, rods_draw(scratch, f->context, rods, f->paper, f->next++));
	arena_free(scratch);
}

struct drawing *templates_draw(struct arena *a, const struct sheet_context *c,
	const struct paper *tile_paper)
{
	struct folder f = { a, c, tile_paper, NULL, 1 };
	enum templates_kind wanted = c->stair->job->sheets.templates;

	if (wanted == TEMPLATES_NONE)
		return NULL;
	add_stringers(&f);
	if (wanted == TEMPLATES_STRINGERS)
		return f.list;
	const struct unit *units = units_make(a, c->parts);
	add_skirts(&f);
	add_blocks(&f);
	add_treads(&f, units);
	add_jigs(&f, units);
	add_small(&f);
	add_rods(&f, units);
	return f.list;
}
