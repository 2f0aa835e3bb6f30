/*
 * For which jobs the keys of the wood matter.
 */
#include "read/keys_wood.h"

static bool side_is_open(const struct job_side *side)
{
	return side->kind == SIDE_OPEN;
}

/* Sides on which some step is open. */
static int open_sides(const struct job *job)
{
	return side_is_open(&job->stair.left) + side_is_open(&job->stair.right);
}

bool has_open_side(const struct job *job)
{
	return open_sides(job) > 0;
}

bool has_wall_side(const struct job *job)
{
	return open_sides(job) < 2;
}

static bool uses_stringer(const struct job *job, enum stringer_kind kind)
{
	return (has_wall_side(job) && job->stringers.wall.kind == kind) ||
		(has_open_side(job) && job->stringers.open.kind == kind);
}

bool has_housed(const struct job *job)
{
	return uses_stringer(job, STRINGER_HOUSED);
}

bool has_carriages(const struct job *job)
{
	return job_carriages(job) > 0;
}

bool has_spaced_carriages(const struct job *job)
{
	return has_carriages(job) && job->stringers.middle_count < 0 && !job_treads_span(job);
}

bool has_housed_span(const struct job *job)
{
	return job_treads_span(job) && job->risers.kind == RISER_BOARD;
}

bool has_cut(const struct job *job)
{
	return has_carriages(job) || uses_stringer(job, STRINGER_SAWTOOTH) ||
		uses_stringer(job, STRINGER_MITRED);
}

bool has_wall_carriage(const struct job *job)
{
	return has_wall_side(job) && job->stringers.wall.kind == STRINGER_SAWTOOTH;
}

bool has_returns(const struct job *job)
{
	return has_open_side(job) && job->stringers.open.kind != STRINGER_HOUSED;
}

bool has_newels(const struct job *job)
{
	return has_open_side(job) && (job->newels.bottom || job->newels.top);
}

bool has_guard(const struct job *job)
{
	return job_has_guard(job, GUARD_HERE) || job->rail.level_run_count > 0;
}

bool has_riser_bars(const struct job *job)
{
	return job->risers.bar > 0;
}

bool has_boards(const struct job *job)
{
	return job->risers.kind == RISER_BOARD;
}
