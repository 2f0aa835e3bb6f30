/*
 * How many carriages stand between the outer two stringers.
 */
#include <math.h>

#include "pitchboard/job.h"
#include "pitchboard/vec.h"
#include "read/node.h"

double job_open_skirt(const struct job *job)
{
	const struct job_skirts *s = &job->skirts;
	bool rough = job->stringers.open.kind == STRINGER_SAWTOOTH;

	return s->open != OPEN_SKIRT_NONE && rough ? s->thickness : 0;
}

/* The last tread of a stair whose risers the job counts; 0: it leaves them to the program. */
static int last_step(const struct job *job)
{
	const struct job_stair *s = &job->stair;
	int risers = s->segment_count == 1 ? s->segments[0].risers : 0;

	return risers > 0 && job->stringers.head == HEAD_BELOW_FLOOR ? risers - 1 : risers;
}

bool job_side_ends(const struct job *job, const struct job_side *side)
{
	int last = last_step(job);

	return side->to_step > 0 && (last == 0 || side->to_step < last);
}

double job_open_inset(const struct job *job, const struct job_side *side)
{
	const struct job_skirts *s = &job->skirts;
	bool runs_on = side->from_step > 1 || job_side_ends(job, side);
	bool behind_wall_skirt =
		s->wall == SKIRT_PLAIN && runs_on && job->stringers.open.kind == STRINGER_SAWTOOTH;

	return behind_wall_skirt ? s->thickness : job_open_skirt(job);
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
		off = job_open_inset(job, side);
	return off + spec->thickness / 2;
}

/* Centre to centre of the outer two. */
static double span(const struct job *job)
{
	return job->stair.width - centre_in(job, &job->stair.left) -
		centre_in(job, &job->stair.right);
}

static bool is_housed(const struct job *job, const struct job_side *side)
{
	const struct job_stringers *all = &job->stringers;

	return (side->kind == SIDE_OPEN ? all->open : all->wall).kind == STRINGER_HOUSED;
}

bool job_treads_span(const struct job *job)
{
	const struct job_stringers *s = &job->stringers;
	bool is_said = s->middle_count >= 0 || node_has(s->src, "spacing");

	return !is_said && is_housed(job, &job->stair.left) && is_housed(job, &job->stair.right);
}

/* Without riser boards a carriage would stand in view: such treads are made thick enough to do
 * without (common practice). */
static double most_apart(const struct job *job)
{
	if (!job_treads_span(job))
		return job->stringers.spacing;
	return job->risers.kind == RISER_OPEN ? INFINITY : job->stringers.housed_span;
}

int job_carriages_by_spacing(const struct job *job)
{
	double spacing = most_apart(job);

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
