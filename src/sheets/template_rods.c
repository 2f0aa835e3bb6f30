/*
 * What is marked with rods: levels of the steps, balusters on treads, joints on long pieces.
 */
#include "sheets/template_rods.h"

#include <string.h>

#include "sheets/template_tread.h"

#define PAST 20.0   /* of a rod beyond its last tick, where the work goes on */
#define ABREAST 1.0 /* holes that stand in one row */

struct gatherer {
	struct arena *arena;
	const struct sheet_context *context;
	struct named_rod *first, **tail;
};

static bool ticks_are_alike(const struct marking_rod *one, const struct marking_rod *other)
{
	if (one->n != other->n || !pattern_alike(one->end, other->end))
		return false;
	for (int i = 0; i < one->n; i++)
		if (!pattern_alike(one->ticks[i].at, other->ticks[i].at) ||
			strcmp(one->ticks[i].name, other->ticks[i].name) != 0)
			return false;
	return true;
}

static bool is_like(const struct named_rod *one, const struct named_rod *other)
{
	return !strcmp(one->what, other->what) && !strcmp(one->from, other->from) &&
		ticks_are_alike(&one->rod, &other->rod);
}

static void add(struct gatherer *g, struct named_rod rod)
{
	for (struct named_rod *r = g->first; r; r = r->next)
		if (is_like(r, &rod)) {
			r->on = arena_printf(g->arena, "%s, %s", r->on, rod.on);
			return;
		}
	*g->tail = NEW(g->arena, struct named_rod);
	**g->tail = rod;
	g->tail = &(*g->tail)->next;
}

/* Ticks being collected in rising order. */
struct ticks {
	struct arena *arena;
	struct rod_tick *list;
	int n;
};

static void add_tick(struct ticks *t, double at, const char *name)
{
	int i = t->n++;

	for (; i > 0 && t->list[i - 1].at > at; i--)
		t->list[i] = t->list[i - 1];
	t->list[i] = (struct rod_tick){ at, name, "" };
}

/* Numbered in order, and so named where there is no room for more. */
static struct marking_rod rod_of(struct ticks t, double end)
{
	for (int i = 0; i < t.n; i++) {
		t.list[i].brief = arena_printf(t.arena, "%d", i + 1);
		t.list[i].name = arena_printf(t.arena, "%d %s", i + 1, t.list[i].name);
	}
	return (struct marking_rod){ .end = end, .ticks = t.list, .n = t.n };
}

/* --- storey rod --- */

static const char *storey_note(struct arena *a, const struct job *job)
{
	if (job->floors.lower_finish <= 0)
		return "";
	return arena_printf(a, "; until that is laid, on a block %s thick",
		length_letter(a, job_lettering(job), job->floors.lower_finish));
}

static void add_storey_rod(struct gatherer *g)
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
			ticks[n++] = (struct rod_tick){ step->level,
				arena_printf(g->arena, "top of tread %d", step->number),
				arena_printf(g->arena, "%d", step->number) };
		}
	if (n == 0 || ticks[n - 1].at < s->total_rise - PATTERN_ALIKE)
		ticks[n++] = (struct rod_tick){ s->total_rise, "upper finished floor", "top" };
	add(g,
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

static const char *bore_name(const struct bore *b)
{
	return b->text ? b->text : fixing_name(b->fixing);
}

static void add_tread_row(struct gatherer *g, const struct unit_face *f, double x)
{
	struct arena *a = g->arena;
	struct ticks t = { a, NEW_N(a, struct rod_tick, f->bores.n + 1), 0 };

	for (int i = 0; i < f->bores.n; i++)
		if (is_in_row(&f->bores.bore[i], x))
			add_tick(&t, f->bores.bore[i].at.origin.y + f->by.y,
				bore_name(f->bores.bore[i].bore));
	if (t.n < 2)
		return;
	double end = fmin(t.list[t.n - 1].at + PAST, f->extent.y1);
	const struct step *step = tread_step(g->context->stair, f->unit);
	if (step)
		add_tick(&t, step->riser_x - step->nosing_x, "face of the riser below");
	add(g,
		(struct named_rod){
			.rod = rod_of(t, end),
			.what = arena_printf(a, "holes %s from the left-hand end",
				length_letter_inches(a, f->lettering, x + f->by.x)),
			.on = f->unit->mark,
			.from = "back from the front edge",
			.note = "",
		});
}

static void add_tread_rods(struct gatherer *g, const struct unit *units)
{
	for (const struct unit *u = units; u; u = u->next) {
		if (u->kind != &part_tread)
			continue;
		struct unit_face f = tread_face(g->arena, g->context->stair, u);
		for (int i = 0; i < f.bores.n; i++)
			if (opens_row(f.bores, i))
				add_tread_row(g, &f, f.bores.bore[i].at.origin.x);
	}
}

/* --- long pieces --- */

enum { FACE_UP_Y, FACE_DOWN_Y, FACE_UP_Z, FACE_DOWN_Z, FACES };

/* Whether each face of a piece has a rod of its own. */
enum rod_faces { ROD_FOR_EACH_FACE, ROD_FOR_ALL_FACES };

/* What is marked along its length, and what its faces are called. */
struct marked_kind {
	const struct part_kind *kind;
	enum rod_faces rods;
	enum fixing only; /* holes for this; FIXING_NONE: all */
	const char *from;
	const char *faces[FACES];
};

static const struct marked_kind marked[] = {
	{ &part_newel, ROD_FOR_ALL_FACES, FIXING_NONE, "from its foot",
		{ "uphill face", "downhill face", "left-hand face", "right-hand face" } },
	{ &part_infill, ROD_FOR_EACH_FACE, FIXING_NONE, "from its foot",
		{ "uphill face", "downhill face", "left-hand face", "right-hand face" } },
	{ &part_wall_rail, ROD_FOR_EACH_FACE, FIXING_SCREW, "from its lower end",
		{ "one side", "other side", "top", "underside" } },
};

static const struct marked_kind *marked_kind(const struct part_kind *kind)
{
	for (int i = 0; i < (int)(sizeof(marked) / sizeof(*marked)); i++)
		if (marked[i].kind == kind)
			return &marked[i];
	return NULL;
}

/* The face that a hole goes into; FACES for one in an end. */
static int face_of(const struct bore *b)
{
	struct vec3 w = b->at.w;

	if (fabs(w.x) > fmax(fabs(w.y), fabs(w.z)))
		return FACES;
	if (fabs(w.y) > fabs(w.z))
		return w.y > 0 ? FACE_UP_Y : FACE_DOWN_Y;
	return w.z > 0 ? FACE_UP_Z : FACE_DOWN_Z;
}

static int bore_count(const struct part *p)
{
	int n = 0;

	for (const struct bore *b = p->bores; b; b = b->next)
		n++;
	return n;
}

static bool is_marked(const struct marked_kind *m, const struct bore *b)
{
	return face_of(b) != FACES && (m->only == FIXING_NONE || b->fixing == m->only);
}

static void add_long_rod(struct gatherer *g, const struct marked_kind *m, const struct part *p,
	struct ticks t, const char *face)
{
	/* one position is measured with a tape */
	if (t.n < 2)
		return;
	double end = fmin(t.list[t.n - 1].at + PAST, p->size.length);
	add(g,
		(struct named_rod){
			.rod = rod_of(t, end),
			.what = *face ? arena_printf(g->arena, "%s, %s", p->name, face) : p->name,
			.on = p->mark,
			.from = m->from,
			.note = "",
		});
}

static void add_rod_for_all(struct gatherer *g, const struct marked_kind *m, const struct part *p)
{
	struct arena *a = g->arena;
	struct ticks t = { a, NEW_N(a, struct rod_tick, bore_count(p) + 1), 0 };

	for (const struct bore *b = p->bores; b; b = b->next)
		if (is_marked(m, b))
			add_tick(&t, b->at.origin.x,
				arena_printf(a, "%s, %s", bore_name(b), m->faces[face_of(b)]));
	add_long_rod(g, m, p, t, "");
}

static void add_rods_by_face(struct gatherer *g, const struct marked_kind *m, const struct part *p)
{
	struct arena *a = g->arena;

	for (int face = 0; face < FACES; face++) {
		struct ticks t = { a, NEW_N(a, struct rod_tick, bore_count(p) + 1), 0 };
		for (const struct bore *b = p->bores; b; b = b->next)
			if (is_marked(m, b) && face_of(b) == face)
				add_tick(&t, b->at.origin.x, bore_name(b));
		add_long_rod(g, m, p, t, m->faces[face]);
	}
}

static void add_long_rods(struct gatherer *g)
{
	for (const struct part *p = g->context->parts; p; p = p->next) {
		const struct marked_kind *m = marked_kind(p->kind);
		if (!m)
			continue;
		switch (m->rods) {
		case ROD_FOR_ALL_FACES: add_rod_for_all(g, m, p); break;
		case ROD_FOR_EACH_FACE: add_rods_by_face(g, m, p); break;
		}
	}
}

struct named_rod *rods_make(struct arena *a, const struct sheet_context *c,
	const struct unit *units)
{
	struct gatherer g = { .arena = a, .context = c };

	g.tail = &g.first;
	add_storey_rod(&g);
	add_tread_rods(&g, units);
	add_long_rods(&g);
	return g.first;
}
