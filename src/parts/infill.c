#include "parts/infill.h"

#include "parts/rail_joint.h"
#include "parts/shoe.h"

/* By enum infill_name. */
static const struct infill_kind *const kinds[] = {
	[INFILL_PLAIN] = &infill_plain,
	[INFILL_BRACED] = &infill_braced,
	[INFILL_BARS] = &infill_bars,
	[INFILL_PANEL] = &infill_panel,
};

static bool panel_is_in_rails(const struct job_infill *f)
{
	return f->kind == INFILL_PANEL && f->panel_held != PANEL_IN_ENDS;
}

bool infill_has_shoe(const struct job *job)
{
	return job->infill.shoe || panel_is_in_rails(&job->infill);
}

bool infill_on_treads(const struct stretch *s)
{
	return s->feet == FEET_ON_TREADS && !infill_has_shoe(s->rod->job);
}

bool infill_has_subrail(const struct job *job)
{
	return job->infill.subrail || panel_is_in_rails(&job->infill);
}

double infill_base(const struct stretch *s, double x)
{
	const struct job *job = s->rod->job;
	switch (s->feet) {
	case FEET_ON_TREADS:
		return stretch_rail_top(s, x) - job->rail.height +
			(infill_has_shoe(job) ? job->infill.shoe_lift : 0);
	case FEET_ON_EDGE:
	case FEET_ON_FLOOR: break;
	}
	return stretch_foot(s, x);
}

double infill_bottom(const struct stretch *s, double x)
{
	const struct job *job = s->rod->job;
	double shoe = infill_has_shoe(job) ? job->infill.shoe_depth / s->cosine : 0;
	return infill_base(s, x) + shoe;
}

double infill_foot(const struct stretch *s, double x)
{
	const struct job *job = s->rod->job;
	if (infill_has_shoe(job))
		return infill_bottom(s, x) - job->infill.plough / s->cosine;
	return stretch_foot(s, x);
}

bool infill_foot_is_raked(const struct stretch *s)
{
	bool on_slope = s->feet == FEET_ON_EDGE || infill_has_shoe(s->rod->job);
	return on_slope && s->slope > NEAR_ENOUGH;
}

double infill_top(const struct stretch *s, double x)
{
	const struct job *job = s->rod->job;
	double subrail = infill_has_subrail(job) ? job->infill.subrail_depth / s->cosine : 0;
	return stretch_rail_under(s, x) - subrail;
}

double infill_head(const struct stretch *s, double x)
{
	const struct job *job = s->rod->job;
	double plough = infill_has_subrail(job) ? job->infill.plough / s->cosine : 0;
	return infill_top(s, x) + plough;
}

/* Least wood under a dowel: common practice. */
#define UNDER_DOWEL 6.0

static double room_in_depth(const struct stretch *s, enum infill_end end)
{
	const struct job *job = s->rod->job;
	const struct job_infill *f = &job->infill;
	double plough = f->kind == INFILL_BARS ? 0 : f->plough;
	if (end == INFILL_FOOT && infill_has_shoe(job))
		return 0.7 * (f->shoe_depth - plough);
	if (end == INFILL_TOP && infill_has_subrail(job))
		return 0.7 * (f->subrail_depth - plough);
	if (end == INFILL_TOP)
		return job->rail.depth / 2;
	return s->feet == FEET_ON_TREADS ? s->rod->tread - UNDER_DOWEL : INFINITY;
}

double infill_dowel_room(const struct stretch *s, enum infill_end end, double x, double slope)
{
	double depth = room_in_depth(s, end);
	/* leaning back towards the foot of the rail, or on towards its head */
	double along = end == INFILL_TOP ? x - s->from : s->to - x;
	if (slope < NEAR_ENOUGH)
		return depth;
	return fmin(depth, (along - UNDER_DOWEL) / sin(atan(slope)));
}

bool infill_meets_newel(const struct stretch *s, struct rail_end e)
{
	return rail_end_has_newel(e) && s->rod->job->newels.build != NEWEL_PANELLED;
}

struct frame infill_post(const struct stretch *s, double x, double z, double thickness)
{
	struct frame f = { .u = { 0, 0, 1 }, .v = { 1, 0, 0 }, .w = { 0, 1, 0 } };
	f.origin = vec3(x, -thickness / 2, z);
	return frame_compose(s->axes, f);
}

const char *infill_letter(const struct stretch *s, struct arena *a, double mm)
{
	return length_say(a, job_lettering(s->rod->job), mm);
}

/* What is wrong on both sides is said once. */
static struct part *make(struct arena *a, const struct stair *st, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_infill };
	struct rod r = rod_make(st, f);
	int before = d->errors;
	for (const struct stretch *s = stretches_make(a, &r); s; s = s->next) {
		if (!stretch_is_made(s))
			continue;
		if (d->errors == before)
			shoe_make(&list, s, d);
		if (d->errors == before)
			kinds[st->job->infill.kind]->make(&list, s, d);
	}
	return list.first;
}

const struct part_kind part_infill = { "infill", "B", make };
