/*
 * What is marked with rods: levels of the steps, balusters on treads; along long pieces
 * (template_rods_long.c), up newels (template_rods_newel.c), and along rails
 * (template_rods_rails.c).
 */
#include "sheets/joint_words.h"
#include "sheets/template_rods_gather.h"
#include "sheets/template_tread.h"

#define ABREAST 1.0 /* holes that stand in one row */

/* --- storey rod --- */

static const char *storey_note(struct arena *a, const struct job *job)
{
	if (job->floors.lower_finish <= 0)
		return "";
	return arena_printf(a, "; until that is laid, on a block %s thick",
		length_letter(a, job_lettering(job), job->floors.lower_finish));
}

static void add_storey_rod(struct rod_gatherer *g)
{
	const struct stair *s = g->context->stair;
	int n = 1;

	for (int i = 0; i < s->flight_count; i++)
		n += s->flights[i].step_count;
	struct rod_tick *ticks = NEW_N(g->arena, struct rod_tick, n);
	n = 0;
	for (int i = 0; i < s->flight_count; i++)
		for (int k = 0; k < s->flights[i].step_count; k++) {
			const struct step *step = &s->flights[i].steps[k];
			ticks[n++] = (struct rod_tick){ .at = step->level,
				.name = arena_printf(g->arena, "top of tread %d", step->number),
				.brief = arena_printf(g->arena, "%d", step->number) };
		}
	if (n == 0 || ticks[n - 1].at < s->total_rise - PATTERN_ALIKE)
		ticks[n++] = (struct rod_tick){ .at = s->total_rise,
			.name = "upper finished floor",
			.brief = "top" };
	rod_gather(g,
		(struct named_rod){
			.rod = { .end = s->total_rise, .ticks = ticks, .n = n },
			.what = "storey rod, levels of the treads",
			.on = "upright",
			.from = "stood on the finished lower floor",
			.note = storey_note(g->arena, s->job),
		});
}

/* --- treads --- */

/* A plug is where its screw is. */
static bool is_in_row(const struct unit_bore *b, double x)
{
	return b->bore->fixing != FIXING_PLUG && b->side != BORE_IN_EDGE &&
		fabs(b->at.origin.x - x) < ABREAST;
}

/* It is no screw, and no hole before this one opened the row. */
static bool opens_row(struct unit_bores b, int i)
{
	enum fixing fixing = b.bore[i].bore->fixing;

	if (fixing == FIXING_SCREW || fixing == FIXING_PLUG)
		return false;
	for (int k = 0; k < i; k++)
		if (is_in_row(&b.bore[k], b.bore[i].at.origin.x))
			return false;
	return b.bore[i].side != BORE_IN_EDGE;
}

static void add_tread_row(struct rod_gatherer *g, const struct unit_face *f,
	const struct unit_bore *first)
{
	struct arena *a = g->arena;
	double x = first->at.origin.x;
	struct rod_ticks t = rod_ticks_begin(a, f->bores.n + 1); /* and the riser */

	for (int i = 0; i < f->bores.n; i++)
		if (is_in_row(&f->bores.bore[i], x))
			rod_ticks_add(&t,
				rod_bore_tick(a, f->lettering, f->bores.bore[i].bore,
					f->bores.bore[i].at.origin.y + f->by.y));
	if (t.n < 2)
		return;
	double end = fmin(t.list[t.n - 1].at + ROD_PAST, f->extent.y1);
	const struct step *step = tread_step(g->context->stair, f->unit);
	if (step)
		rod_ticks_add(&t,
			(struct rod_tick){ .at = step->riser_x - step->nosing_x,
				.name = "face of the riser below" });
	rod_gather(g,
		(struct named_rod){
			.rod = rod_of_ticks(t, end),
			.what = arena_printf(a, "holes %s from the left-hand end",
				bore_place_letter(a, f->lettering, first->bore, x + f->by.x)),
			.on = f->unit->mark,
			.from = "back from the front edge",
			.note = "",
		});
}

static void add_tread_rods(struct rod_gatherer *g, const struct unit *units)
{
	for (const struct unit *u = units; u; u = u->next) {
		if (u->kind != &part_tread)
			continue;
		struct unit_face f = tread_face(g->arena, g->context->stair, u);
		for (int i = 0; i < f.bores.n; i++)
			if (opens_row(f.bores, i))
				add_tread_row(g, &f, &f.bores.bore[i]);
	}
}

struct named_rod *rods_make(struct arena *a, const struct sheet_context *c,
	const struct unit *units)
{
	struct rod_gatherer g = { .arena = a,
		.context = c,
		.runs = rail_runs(a, c->parts, &part_rail) };

	g.tail = &g.first;
	add_storey_rod(&g);
	add_tread_rods(&g, units);
	rods_gather_long(&g);
	rods_gather_rails(&g);
	return g.first;
}
