#include "solve/opening.h"

/* The face against which the flight ends: a last tread that is flush with the floor comes up to it
 * itself, else there is a riser between. */
double opening_header_x(const struct job *job, double total_run)
{
	bool is_flush = job->stringers.head == HEAD_FLUSH;
	bool has_riser = job->risers.kind == RISER_BOARD && !is_flush;
	return total_run + (has_riser ? job->risers.thickness : 0);
}

/* That the two ways of saying it agree was seen to when the job was read. */
double opening_floor_depth(const struct job *job, double total_rise)
{
	const struct job_opening *o = &job->opening;
	if (o->floor_thickness > 0)
		return o->floor_thickness;
	return o->ceiling_height > 0 ? total_rise - o->ceiling_height : 0;
}

/* How much wider than the stair the opening is on its right: all of it beside a wall on the left,
 * nothing at a wall of its own, else half. */
static double over_right(const struct job_stair *stair, double over)
{
	if (stair->right.kind == SIDE_WALL)
		return 0;
	return stair->left.kind == SIDE_WALL ? over : over / 2;
}

static double over_left(const struct job_stair *stair, double over)
{
	if (stair->left.kind == SIDE_WALL)
		return 0;
	return stair->right.kind == SIDE_WALL ? over : over / 2;
}

struct box opening_find(const struct stair *s, const struct flight *f)
{
	const struct job_opening *o = &s->job->opening;
	double over = o->width > 0 ? o->width - s->width : 0;
	return (struct box){
		.x0 = f->header_x - o->length,
		.x1 = f->header_x,
		.y0 = -over_right(&s->job->stair, over),
		.y1 = s->width + over_left(&s->job->stair, over),
	};
}
