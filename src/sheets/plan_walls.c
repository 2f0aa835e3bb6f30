#include "sheets/plan_walls.h"

#include "sheets/words.h"

/*
 * Chimney breasts, piers and plinths: on the plan they are hatched with the walls,
 * here are the sizes by which they are found again on site.
 */

static const char *measured(struct arena *a, const struct stair *s, double mm)
{
	return measured_words(a, s, "notches", mm);
}

/* Its front, from the front of a nosing; in a back corner it ends at the riser. */
static const char *place_words(struct arena *a, const struct stair *s, const struct job_notch *n)
{
	if (!node_has(n->src, "from"))
		return arena_printf(a, "in the back corner of step %d", n->step);
	if (n->from < NEAR_ENOUGH)
		return arena_printf(a, "from the nosing of step %d on", n->step);
	return arena_printf(a, "from %s behind the nosing of step %d on", measured(a, s, n->from),
		n->step);
}

static const char *wall_words(struct arena *a, const struct stair *s, const struct job_notch *n)
{
	return arena_printf(a, "%s, %s out and %s along the stair, %s",
		n->at == NOTCH_LEFT ? "left" : "right", measured(a, s, n->along),
		measured(a, s, n->across), place_words(a, s, n));
}

static const char *scribed_words(struct arena *a, const struct stair *s)
{
	double scribe = s->job->treads.scribe;

	return arena_printf(a, " Treads and risers are scribed to their faces%s.%s",
		scribe > 0 ? arena_printf(a, "; their sizes leave %s there",
				     length_words(a, s, scribe))
			   : "",
		s->job->skirts.wall == SKIRT_PLAIN
			? " No skirt is on those: the skirts of their wall end there."
			: "");
}

const char *plan_walls_words(struct arena *a, const struct stair *s)
{
	const struct job_treads *t = &s->job->treads;
	const char *all = "";

	for (int i = 0; i < t->notch_count; i++)
		if (t->notches[i].at != NOTCH_BACK)
			all = arena_printf(a, "%s%s%s", all, *all ? "; " : "",
				wall_words(a, s, &t->notches[i]));
	return *all ? arena_printf(a, "Walls in the steps: %s.%s", all, scribed_words(a, s)) : "";
}
