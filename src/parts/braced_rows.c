#include "parts/braced_rows.h"

#include "parts/baluster.h"
#include "parts/fixing.h"
#include "parts/infill.h"

/* On a floor, the floor. */
static double nosing_line(const struct stretch *s, double x)
{
	if (s->feet == FEET_ON_FLOOR)
		return s->floor;
	return stretch_rail_top(s, x) - s->rod->job->rail.height;
}

static double tread_level(const struct stretch *s, double x)
{
	if (s->feet == FEET_ON_FLOOR)
		return s->floor;
	return (floor(x / s->rod->run + NEAR_ENOUGH) + 1) * s->rod->rise;
}

bool braced_in_one_unit(const struct setting *set, int i)
{
	return i + 1 < set->count && i / set->per_tread == (i + 1) / set->per_tread &&
		setting_is_placed(set, i) && setting_is_placed(set, i + 1);
}

struct gap braced_gap(const struct setting *set, int i)
{
	double flat = baluster_flat(set->stretch->rod->job);
	double front = setting_front(set, i), next = setting_front(set, i + 1);
	struct gap g = { set->stretch, front + set->section - flat, next + flat,
		{ front + flat, next + flat }, 0 };
	g.level = tread_level(set->stretch, setting_front(set, i - i % set->per_tread));
	return g;
}

struct crossing braced_crossing(const struct job_row *row, const struct gap *g)
{
	struct crossing c = { .along = *g->stretch };
	const double x[2] = { g->from, g->to };
	if (row->lie == ROW_LEVEL) {
		c.along.slope = c.along.pitch = 0;
		c.along.cosine = 1;
	}
	for (int i = 0; i < 2; i++)
		c.z[i] = row->height +
			(row->lie == ROW_LEVEL ? g->level : nosing_line(g->stretch, x[i]));
	c.half = g->stretch->rod->job->infill.cross_width / 2 / c.along.cosine;
	return c;
}

struct opening braced_opening(const struct gap *g)
{
	const struct stretch *s = g->stretch;
	const struct job *job = s->rod->job;
	const double x[2] = { g->from, g->to };
	struct opening o;
	for (int i = 0; i < 2; i++) {
		o.foot[i] = infill_has_shoe(job) ? infill_bottom(s, x[i]) : infill_foot(s, x[i]);
		o.top[i] = infill_top(s, x[i]);
		if (job->balusters.top == BALUSTER_TOP_SQUARE)
			o.top[i] = fmin(o.top[i], infill_head(s, g->fronts[i]));
	}
	return o;
}

const struct job_row *braced_usual_rows(struct arena *a, const struct stretch *s)
{
	const struct job *job = s->rod->job;
	double in = round_size(job->about.units, 6, 150);
	struct job_row *rows = NEW_N(a, struct job_row, BRACED_USUAL);
	rows[0].height = in;
	rows[1].height = infill_top(s, 0) - nosing_line(s, 0) - in;
	return rows;
}
