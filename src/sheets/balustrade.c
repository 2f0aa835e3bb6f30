/*
 * What is said of the balustrade in figures.
 */
#include "sheets/side_drafting.h"
#include "sheets/words.h"

/* Centre to centre along the run: the least distance between two of one row. */
static double baluster_spacing(const struct part *parts, double run)
{
	double least = run;

	for (const struct part *p = parts; p; p = p->next)
		for (const struct part *q = p; p->baluster && q; q = q->next)
			for (int i = 0; q->baluster && i < q->count; i++) {
				struct vec3 by = vec3_sub(q->places[i].origin, p->places[0].origin);
				double apart = fabs(by.x);
				if (fabs(by.y) < 1 && apart > 1 && apart < least)
					least = apart;
			}
	return least;
}

static const char *profile_words(enum rail_profile_kind kind)
{
	switch (kind) {
	case PROFILE_MOULDED: return "moulded";
	case PROFILE_FLAT_OVAL: return "flat oval";
	case PROFILE_ROUND: return "round";
	case PROFILE_SQUARE: return "square";
	}
	return "";
}

static const char *rail_words(struct arena *a, const struct stair *s)
{
	const struct job_rail *rail = &s->job->rail;

	return arena_printf(a, "Rail %s, %s", profile_words(rail->profile),
		section_words(a, s, rail->width, rail->depth));
}

const char *balustrade_words(struct arena *a, const struct side_view *v)
{
	const struct stair *s = v->context->stair;
	const struct job *job = s->job;
	double run = v->flight->unit_run, spacing = baluster_spacing(v->context->parts, run);

	if (!side_shows_rail(v))
		return "";
	if (job->stair.left.kind == SIDE_WALL && job->stair.right.kind == SIDE_WALL)
		return arena_printf(a, "%s, guards the upper floor. Newels %s square.",
			rail_words(a, s), inches_words(a, s, job->newels.section));
	return arena_printf(a,
		"%s, its top %s plumb above the nosing line. Balusters %s square, %d a tread, "
		"%s centre to centre, %s clear; the first on each tread has its front in line with "
		"the riser face. Newels %s square.",
		rail_words(a, s), inches_words(a, s, job->rail.height),
		inches_words(a, s, job->balusters.section), (int)lround(run / spacing),
		inches_words(a, s, spacing), inches_words(a, s, spacing - job->balusters.section),
		inches_words(a, s, job->newels.section));
}
