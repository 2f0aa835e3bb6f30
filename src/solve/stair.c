#include "pitchboard/stair.h"

#include <assert.h>

#include "solve/headroom.h"
#include "solve/layout.h"
#include "solve/opening.h"

static bool is_open(const struct job_side *side, int step)
{
	bool past = side->to_step > 0 && step > side->to_step;
	return side->kind == SIDE_OPEN && step >= side->from_step && !past;
}

/* Do the steps between which a side is open exist? */
static void side_check(struct arena *a, const struct job_side *side, const char *name, int steps,
	struct diags *d)
{
	if (side->kind != SIDE_OPEN)
		return;
	if (side->from_step > steps)
		diag_error(d, node_pos(side->src, "from_step"),
			arena_printf(a, "write stair.%s.from_step: %d", name, steps),
			"the %s side is open from step %d, but the last step is %d", name,
			side->from_step, steps);
	if (side->to_step > steps)
		diag_error(d, node_pos(side->src, "to_step"),
			arena_printf(a, "write stair.%s.to_step: %d", name, steps),
			"the %s side is open to step %d, but the last step is %d", name,
			side->to_step, steps);
}

static const struct step *steps_make(struct arena *a, const struct stair *s, const struct flight *f)
{
	struct step *steps = NEW_N(a, struct step, f->step_count);
	for (int i = 0; i < f->step_count; i++) {
		int number = f->first_step + i;
		steps[i] = (struct step){
			.number = number,
			.level = s->total_rise * number / s->risers,
			.riser_x = i * f->unit_run,
			.nosing_x = i * f->unit_run - s->job->treads.nosing,
			.back_x = (i + 1) * f->unit_run,
			.open_left = is_open(&s->job->stair.left, number),
			.open_right = is_open(&s->job->stair.right, number),
		};
	}
	return steps;
}

static const struct flight *flight_make(struct arena *a, const struct stair *s,
	const struct job_segment *seg, const struct layout *l)
{
	struct flight *f = NEW(a, struct flight);
	f->src = seg;
	f->frame = frame_house();
	f->first_step = 1;
	f->risers = l->taken.risers;
	f->step_count = layout_treads(s->job, f->risers);
	f->unit_run = l->taken.unit_run;
	f->pitch = atan2(s->unit_rise, f->unit_run);
	f->total_run = f->step_count * f->unit_run;
	f->header_x = opening_header_x(s->job, f->total_run);
	f->steps = steps_make(a, s, f);
	return f;
}

/* People walk up the middle of a straight flight (common practice). */
static const struct vec *walking_line(struct arena *a, const struct stair *s)
{
	const struct flight *f = &s->flights[0];
	struct vec *line = NEW_N(a, struct vec, 2);
	struct vec3 from = frame_place(f->frame, vec3(0, s->width / 2, 0));
	struct vec3 to = frame_place(f->frame, vec3(f->total_run, s->width / 2, 0));
	line[0] = vec(from.x, from.y);
	line[1] = vec(to.x, to.y);
	return line;
}

static void floors_check(struct arena *a, const struct job *job, double rise, struct diags *d)
{
	struct lettering l = job_lettering(job);
	if (rise <= 0)
		diag_error(d, node_pos(job->floors.src, "structural_rise"),
			"measure again: from structural floor to structural floor",
			"with finishes of %s below and %s above nothing is left to climb",
			length_say(a, l, job->floors.lower_finish),
			length_say(a, l, job->floors.upper_finish));
}

/* A step must be higher than its tread is thick. */
static void step_check(struct arena *a, const struct stair *s, const struct layout *l,
	struct diags *d)
{
	const struct job *job = s->job;
	struct lettering how = job_lettering(job);
	const struct node *src = job->stair.segments[0].src;
	double rise = l->taken.unit_rise, thickness = job->treads.thickness;
	if (rise < thickness + 1)
		diag_error(d, node_pos(src, "risers"),
			job->stair.segments[0].risers > 0
				? arena_printf(a, "write stair.segments[1].risers: %d",
					  (int)fmax(s->total_rise / (thickness + 1), 2))
				: NULL,
			"%d risers make each %s high: not more than the tread, %s", l->taken.risers,
			length_say(a, how, rise), length_say(a, how, thickness));
}

static void stair_fill(struct arena *a, struct stair *s, const struct layout *l, struct diags *d)
{
	const struct job *job = s->job;
	s->risers = l->taken.risers;
	s->unit_rise = s->total_rise / s->risers;
	s->width = job->stair.width;
	s->lower_structural = -job->floors.lower_finish;
	s->upper_structural = s->total_rise - job->floors.upper_finish;
	s->flights = flight_make(a, s, &job->stair.segments[0], l);
	s->flight_count = 1;
	s->treads = s->flights[0].step_count;
	s->walking_line = walking_line(a, s);
	s->walking_line_count = 2;
	s->walking_length = vec_length(vec_sub(s->walking_line[1], s->walking_line[0]));
	s->options = l->options;
	s->option_count = l->option_count;
	s->floor_depth = opening_floor_depth(job, s->total_rise);
	s->opening = opening_find(s, &s->flights[0]);
	s->headroom = headroom_find(job, s->total_rise, &l->taken, 0);
	side_check(a, &job->stair.left, "left", s->treads, d);
	side_check(a, &job->stair.right, "right", s->treads, d);
}

const struct stair *stair_solve(struct arena *a, const struct job *job,
	const struct layout_limits *limits, struct diags *d)
{
	if (!job)
		return NULL;
	assert(job->stair.segment_count == 1 && job->stair.segments[0].kind == SEGMENT_FLIGHT);
	int before = d->errors;
	struct stair *s = NEW(a, struct stair);
	s->job = job;
	s->total_rise = job_total_rise(job);
	floors_check(a, job, s->total_rise, d);
	if (d->errors > before)
		return NULL;
	struct layout l = layout_choose(a, job, &job->stair.segments[0], limits, s->total_rise, d);
	if (l.taken.risers == 0)
		return NULL;
	step_check(a, s, &l, d);
	stair_fill(a, s, &l, d);
	return d->errors > before ? NULL : s;
}

struct slope_line flight_nosing_line(const struct stair *s, const struct flight *f)
{
	double slope = s->unit_rise / f->unit_run;
	double first = s->unit_rise * f->first_step;
	return (struct slope_line){ first + slope * s->job->treads.nosing, slope };
}
