/*
 * Which sizes were taken in the house, and which are still to be verified there.
 */
#include <stddef.h>
#include <string.h>

#include "read/job_passes.h"

static const struct {
	const char *size;
	size_t group; /* where the job keeps the node that has the key */
	const char *key;
} measurements[] = {
	{ "total_rise", offsetof(struct job, floors.src), "total_rise" },
	{ "structural_rise", offsetof(struct job, floors.src), "structural_rise" },
	{ "width", offsetof(struct job, stair.src), "width" },
	{ "total_run", offsetof(struct job, stair.segments), "total_run" },
	{ "opening_length", offsetof(struct job, opening.src), "length" },
	{ "opening_width", offsetof(struct job, opening.src), "width" },
	{ "floor_thickness", offsetof(struct job, opening.src), "floor_thickness" },
	{ "ceiling_height", offsetof(struct job, opening.src), "ceiling_height" },
	{ "upper_ceiling_height", offsetof(struct job, opening.src), "upper_ceiling_height" },
	{ "foot_landing_depth", offsetof(struct job, landings.at[LANDING_FOOT].src), "depth" },
	{ "foot_landing_width", offsetof(struct job, landings.at[LANDING_FOOT].src), "width" },
	{ "head_landing_depth", offsetof(struct job, landings.at[LANDING_HEAD].src), "depth" },
	{ "head_landing_width", offsetof(struct job, landings.at[LANDING_HEAD].src), "width" },
	{ "notches", offsetof(struct job, treads.src), "notches" },
};

enum { MEASUREMENTS = sizeof(measurements) / sizeof(measurements[0]) };

static bool has_some_wall(const struct job *job, const struct job_side *side)
{
	return side->kind == SIDE_WALL || side->from_step > 1 || job_side_ends(job, side);
}

/* The width of a stair that stands free is chosen, not measured. */
static bool width_is_found(const struct job *job)
{
	return has_some_wall(job, &job->stair.left) && has_some_wall(job, &job->stair.right);
}

static bool run_is_limited(const struct job *job)
{
	for (int i = 0; i < job->stair.segment_count; i++)
		if (job->stair.segments[i].total_run > 0)
			return true;
	return false;
}

static bool is_given(const struct job *job, int i)
{
	const char *size = measurements[i].size;

	if (strcmp(size, "total_run") == 0)
		return run_is_limited(job);
	const struct node *group =
		*(const struct node *const *)((const char *)job + measurements[i].group);
	return node_has(group, measurements[i].key);
}

bool job_size_is_given(const struct job *job, const char *size)
{
	if (strcmp(size, "all") == 0)
		return true;
	for (int i = 0; i < MEASUREMENTS; i++)
		if (strcmp(measurements[i].size, size) == 0)
			return is_given(job, i);
	return false;
}

static bool is_listed(const struct job_measured *m, const char *size)
{
	for (int i = 0; i < m->size_count; i++)
		if (strcmp(m->sizes[i], size) == 0 || strcmp(m->sizes[i], "all") == 0)
			return true;
	return false;
}

bool job_is_measured(const struct job *job, const char *size)
{
	if (strcmp(size, "width") == 0 && !width_is_found(job))
		return true;
	/* The finished rise follows from the structural one where that was measured. */
	if (strcmp(size, "total_rise") == 0 && job->floors.structural_rise > 0)
		size = "structural_rise";
	return is_listed(&job->measured, size);
}

int job_unmeasured(struct arena *a, const struct job *job, const char *const **names)
{
	const char **list = NEW_N(a, const char *, MEASUREMENTS);
	int n = 0;

	for (int i = 0; i < MEASUREMENTS; i++) {
		const char *size = measurements[i].size;
		if (strcmp(size, "width") == 0 && !width_is_found(job))
			continue;
		if (is_given(job, i) && !is_listed(&job->measured, size))
			list[n++] = size;
	}
	*names = list;
	return n;
}
