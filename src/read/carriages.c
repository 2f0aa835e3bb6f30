/*
 * How many carriages stand between the outer two stringers.
 */
#include <math.h>

#include "pitchboard/job.h"
#include "pitchboard/vec.h"

double job_open_skirt(const struct job *job)
{
	const struct job_skirts *s = &job->skirts;
	bool rough = job->stringers.open.kind == STRINGER_SAWTOOTH;

	return s->open != OPEN_SKIRT_NONE && rough ? s->thickness : 0;
}

/* From the limit of a side to the middle of its stringer: a sawtooth one keeps off its wall, and
 * behind its skirt. */
static double centre_in(const struct job *job, const struct job_side *side)
{
	const struct job_stringers *all = &job->stringers;
	const struct job_stringer *spec = side->kind == SIDE_OPEN ? &all->open : &all->wall;
	bool keeps_off = side->kind == SIDE_WALL && spec->kind != STRINGER_HOUSED;

	double off = keeps_off ? all->wall_gap : 0;

	if (side->kind == SIDE_OPEN)
		off = job_open_skirt(job);
	return off + spec->thickness / 2;
}

/* Centre to centre of the outer two. */
static double span(const struct job *job)
{
	return job->stair.width - centre_in(job, &job->stair.left) -
		centre_in(job, &job->stair.right);
}

int job_carriages_by_spacing(const struct job *job)
{
	double spacing = job->stringers.spacing;

	if (!(spacing > 0) || span(job) <= spacing)
		return 0;
	return (int)ceil(span(job) / spacing - NEAR_ENOUGH) - 1;
}

int job_carriages(const struct job *job)
{
	int given = job->stringers.middle_count;

	return given >= 0 ? given : job_carriages_by_spacing(job);
}

double job_carriage_spacing(const struct job *job)
{
	return span(job) / (job_carriages(job) + 1);
}
