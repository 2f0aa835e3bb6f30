#include <string.h>

#include "sheets/client.h"
#include "sheets/words.h"

bool client_has(const struct sheet_context *c, const struct part_kind *kind)
{
	for (const struct part *p = c->parts; p; p = p->next)
		if (p->kind == kind)
			return true;
	return false;
}

/* With its unit: millimetres say that they are. */
static const char *say(struct arena *a, const struct stair *s, double mm)
{
	return length_say(a, job_lettering(s->job), mm);
}

/* A rounded figure is said to be one. */
static const char *about(struct arena *a, const struct stair *s, double mm)
{
	double lettered = length_lettered_value(job_lettering(s->job), mm);

	return arena_printf(a, "%s%s", fabs(lettered - mm) > NEAR_ENOUGH ? "about " : "",
		say(a, s, mm));
}

const char *client_steps(struct arena *a, const struct stair *s)
{
	const struct flight *f = &s->flights[0];

	return arena_printf(a,
		"%d steps up. Each rises %s and brings you %s forward; the edge of each tread "
		"stands %s over the step below it.",
		s->risers, about(a, s, s->unit_rise), about(a, s, f->unit_run),
		say(a, s, s->job->treads.nosing));
}

static const char *size_words(struct arena *a, const struct stair *s)
{
	return arena_printf(a,
		"One straight flight, %s from finished floor to finished floor, %s wide, %s long "
		"from the first step to the upper floor.",
		say(a, s, s->total_rise), say(a, s, s->width), say(a, s, s->flights[0].total_run));
}

static const char *wood_words(struct arena *a, const struct sheet_context *c)
{
	const struct job_material *m = &c->stair->job->material;

	if (client_has(c, &part_riser) && c->stair->job->risers.kind == RISER_BOARD)
		return arena_printf(a, "Treads of %s, closed with risers of %s. Finish: %s.",
			m->treads, m->risers, m->finish);
	return arena_printf(a, "Treads of %s, open between them. Finish: %s.", m->treads,
		m->finish);
}

static const char *open_side(struct arena *a, const struct job_side *side, const char *name)
{
	if (side->kind != SIDE_OPEN)
		return NULL;
	return side->from_step > 1
		? arena_printf(a, "on the %s from step %d on", name, side->from_step)
		: arena_printf(a, "on the %s", name);
}

static const char *balustrade_words(struct arena *a, const struct sheet_context *c)
{
	const struct job *job = c->stair->job;
	const char *right = open_side(a, &job->stair.right, "right");
	const char *left = open_side(a, &job->stair.left, "left");

	if (!client_has(c, &part_rail) || (!right && !left))
		return "";
	return arena_printf(a,
		"Balustrade, %s, %s%s%s, going up; the top of its rail is %s over the edges of "
		"the treads.",
		balustrade_species(a, &job->material, "of "), right ? right : "",
		right && left ? " and " : "", left ? left : "", say(a, c->stair, job->rail.height));
}

static const char *wall_rail_words(const struct sheet_context *c)
{
	return client_has(c, &part_wall_rail) ? "A rail on brackets along the wall." : "";
}

static const char *headroom_words(struct arena *a, const struct stair *s)
{
	if (s->headroom.state == HEADROOM_NOT_CHECKED)
		return "";
	return arena_printf(a, "Where it is lowest there is %s%s of headroom over the steps.",
		s->headroom.state == HEADROOM_SHORT ? "ONLY " : "", say(a, s, s->headroom.least));
}

const char *const *client_proposal(struct arena *a, const struct sheet_context *c)
{
	const char *const said[] = { size_words(a, c->stair), client_steps(a, c->stair),
		wood_words(a, c), balustrade_words(a, c), wall_rail_words(c),
		headroom_words(a, c->stair) };
	const char **kept = NEW_N(a, const char *, sizeof(said) / sizeof(*said) + 1);
	int n = 0;

	for (size_t i = 0; i < sizeof(said) / sizeof(*said); i++)
		if (*said[i])
			kept[n++] = said[i];
	return kept;
}

const char *client_status(struct arena *a, const struct job *job)
{
	const char *open = unverified_words(a, job);

	if (*open)
		return arena_printf(a,
			"NOT YET VERIFIED ON SITE: %s. Nothing is made before this is measured, "
			"and what is measured may change these drawings.",
			open);
	return arena_printf(a, "Verified on site%s%s%s%s: every size taken in the house.",
		job->measured.by && *job->measured.by ? " by " : "",
		job->measured.by ? job->measured.by : "",
		job->measured.date && *job->measured.date ? ", " : "",
		job->measured.date ? job->measured.date : "");
}
