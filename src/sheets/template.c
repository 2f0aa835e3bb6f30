#include "sheets/template.h"

#include "sheets/template_jig.h"
#include "sheets/template_rods.h"
#include "sheets/template_sheets.h"
#include "sheets/template_skirt.h"
#include "sheets/template_small.h"
#include "sheets/template_stringer.h"
#include "sheets/template_tread.h"

/* The drawings so far, and the number of the next template. */
struct folder {
	struct arena *arena;
	const struct sheet_context *context;
	const struct paper *paper; /* of sheets to be joined */
	struct drawing *list;
	int next;
};

static void add_stringers(struct folder *f)
{
	for (const struct part *p = f->context->parts; p; p = p->next) {
		if (!p->stringer || p->outline.n < 3)
			continue;
		const struct template_job t =
			stringer_template(f->arena, f->context, p, f->paper, f->next++);
		*drawings_end(&f->list) = template_roll(f->arena, &t);
		*drawings_end(&f->list) =
			template_tiles(f->arena, (struct template_group){ &t, 1 });
		*drawings_end(&f->list) = template_step(f->arena, &t);
	}
}

/* All of a group on rolls, in one file, and in sheets, in another. */
static void add_group(struct folder *f, struct template_group g)
{
	if (g.n == 0)
		return;
	for (int i = 0; i < g.n; i++)
		*drawings_end(&f->list) = template_roll(f->arena, &g.jobs[i]);
	*drawings_end(&f->list) = template_tiles(f->arena, g);
	f->next += g.n;
}

static void add_skirts(struct folder *f)
{
	for (const struct part *p = f->context->parts; p; p = p->next) {
		if (!skirt_needs_template(f->arena, p))
			continue;
		const struct template_job t =
			skirt_template(f->arena, f->context, p, f->paper, f->next);
		add_group(f, (struct template_group){ &t, 1 });
	}
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
	add_group(&f, tread_templates(a, c, units, tile_paper, f.next));
	add_group(&f, jig_templates(a, c, units, tile_paper, f.next));
	*drawings_end(&f.list) = small_draw(a, c, small_patterns(a, c), tile_paper, f.next++);
	*drawings_end(&f.list) = rods_draw(a, c, rods_make(a, c, units), tile_paper, f.next++);
	return f.list;
}
