/*
 * Rods along rails: where the uprights of the infill stand, from the newel's face.
 *
 * Uprights are plumb, and rail, shoe and string rise alike: the same marks along the rake serve
 * under the rail and on what they stand on.
 */
#include <string.h>

#include "sheets/joint_words.h"
#include "sheets/template_rods_gather.h"

#define LEVEL 0.01

/* What stands under one run. */
struct stand {
	struct rod_gatherer *gatherer;
	const struct rail_run *run;
	const char *from[RUN_ENDS]; /* the newels' marks, NULL where there is none */
	struct rod_ticks ticks;
	const char *what; /* "baluster" */
	bool on_treads;
};

static bool is_upright(const struct part *p)
{
	return p->kind == &part_infill && p->places[0].u.z > 1 - NEAR_ENOUGH;
}

/* Posts and stiles of panels are set out as balusters are; the panels are what is between. */
static bool is_set_out(const struct part *p)
{
	return is_upright(p) && p->size.length > p->size.width;
}

static const char *newel_at(const struct stand *s, enum rail_run_end end)
{
	for (const struct part *p = s->gatherer->context->parts; p; p = p->next)
		for (int i = 0; p->newel && i < p->count; i++)
			if (rail_run_meets(s->run, end, p, i))
				return p->mark;
	return NULL;
}

/* A square foot on a rake is on a tread. */
static bool stands_on_tread(const struct rail_run *r, const struct part *p)
{
	return fabs(r->at.u.z) > LEVEL && fabs(p->start.mitre) < NEAR_ENOUGH;
}

/* A hole in its end that meets one where the rod is laid; NULL when it is nailed. */
static const struct bore *joint_of(const struct rail_run *r, const struct part *p)
{
	const struct bore *b = p->bores;
	double lowest = stands_on_tread(r, p) ? 0 : -1;

	while (b && !(fabs(b->at.w.x) > sqrt(0.5) && b->at.w.x >= lowest && bore_is_of_joint(b)))
		b = b->next;
	return b;
}

static bool is_from_the_high_end(const struct stand *s)
{
	return !s->from[RUN_LOW_END] && s->from[RUN_HIGH_END];
}

static void add_upright(struct stand *s, const struct part *p, int place)
{
	struct lettering l = job_lettering(s->gatherer->context->stair->job);
	double at = rail_run_upright(s->run, p, place);
	const struct bore *joint = joint_of(s->run, p);

	if (at < 0)
		return;
	if (is_from_the_high_end(s))
		at = s->run->length - at;
	s->what = s->what && strcmp(s->what, p->name) != 0 ? "upright" : p->name;
	s->on_treads = stands_on_tread(s->run, p);
	rod_ticks_add(&s->ticks,
		(struct rod_tick){ .at = at,
			.name = p->name,
			.figure = joint ? bore_place_letter(s->gatherer->arena, l, joint, at)
					: NULL });
}

/* On the rake alike stretches share a rod, whatever their newels are called. */
static const char *from_words(const struct stand *s)
{
	bool is_level = fabs(s->run->at.u.z) < LEVEL;
	const char *low = s->from[RUN_LOW_END], *high = s->from[RUN_HIGH_END];

	if (!low && !high)
		return is_level ? "level, from the rail's left-hand end, as its sheet shows it"
				: "up the rake from the rail's lower end";
	if (is_level)
		return arena_printf(s->gatherer->arena, "level from the face of %s",
			low ? low : high);
	return low ? "up the rake from the face of the lower newel"
		   : "down the rake from the face of the upper newel";
}

static const char *note_words(const struct stand *s)
{
	if (fabs(s->run->at.u.z) < LEVEL)
		return "; under the rail and on what they stand on alike";
	return s->on_treads ? "; under the rail, the treads have rods of their own"
			    : "; under the rail and along shoe or string alike, both on the rake";
}

static int upright_count(const struct part *parts)
{
	int n = 0;

	for (const struct part *p = parts; p; p = p->next)
		n += is_set_out(p) ? p->count : 0;
	return n;
}

static void add_run(struct rod_gatherer *g, const struct rail_run *r)
{
	const struct part *parts = g->context->parts;
	struct stand s = { .gatherer = g, .run = r };

	s.ticks = rod_ticks_begin(g->arena, upright_count(parts));
	for (int end = 0; end < RUN_ENDS; end++)
		s.from[end] = newel_at(&s, end);
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; is_set_out(p) && i < p->count; i++)
			add_upright(&s, p, i);
	if (s.ticks.n < 2)
		return;
	rod_gather(g,
		(struct named_rod){
			.rod = rod_of_ticks(s.ticks, r->length),
			.what = arena_printf(g->arena, "%ss along the rail, their middles", s.what),
			.on = r->marks,
			.from = from_words(&s),
			.note = note_words(&s),
		});
}

void rods_gather_rails(struct rod_gatherer *g)
{
	for (int i = 0; i < g->runs.n; i++)
		add_run(g, &g->runs.run[i]);
}
