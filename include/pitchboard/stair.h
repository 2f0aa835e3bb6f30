/*
 * The solved stair: steps and lines, no wood.
 *
 * A chain of flights on plan.  Each flight has its own frame (origin at the
 * foot of its first riser face, midway is not assumed: y = 0 is the right-hand
 * limit of the stair, y = width the left-hand one; x along its travel, z up),
 * so nothing here assumes one flight or one direction.
 *
 *                       nosing line
 *                    .'|
 *              ____.'  | unit rise
 *             |  .'    |
 *        _____|.'______|
 *       |    .'  unit run
 */
#ifndef PITCHBOARD_STAIR_H
#define PITCHBOARD_STAIR_H

#include "pitchboard/job.h"
#include "pitchboard/vec.h"

/* One tread's place: what a foot lands on, without thickness. */
struct step {
	int number;      /* 1 at the bottom of the stair */
	double level;    /* top of tread over the lower finished floor */
	double riser_x;  /* face of the riser under its nosing, in the flight's frame */
	double nosing_x; /* front of the nosing */
	double back_x;   /* face of the riser above */
	bool open_left, open_right;
};

struct flight {
	const struct job_segment *src;
	struct frame frame; /* in the house */
	int first_step;     /* number of its first step */
	int risers;
	int step_count; /* risers − 1, or risers when the last tread is flush with the floor */
	const struct step *steps;
	double unit_run;
	double pitch;     /* radians */
	double total_run; /* first riser face to last riser face; to the back of the last tread when
			     flush */
	double header_x;  /* face of the existing work that its head comes against */
};

/* A straight line plumb over the flight's x: z = z0 + slope * x. */
struct slope_line {
	double z0, slope;
};

/* One of the layouts weighed when the program chose risers or run. */
struct layout_option {
	int risers;
	double unit_rise, unit_run, total_run, pitch;
	double step_sum; /* twice rise plus run */
	double sum;      /* rise plus run */
	bool chosen;
	const char *verdict; /* why it won or lost, in words */
};

enum headroom_state { HEADROOM_NOT_CHECKED, HEADROOM_ENOUGH, HEADROOM_SHORT };

struct headroom {
	enum headroom_state state;
	double least; /* plumb from the nosing line */
	double x;     /* where, in the first flight's frame */
	double nosing_z, overhead_z;
	double ceiling_z; /* at the lower edge of the opening */
};

struct stair {
	const struct job *job;
	int risers, treads;
	double total_rise; /* finished to finished */
	double unit_rise;  /* total_rise / risers, never rounded */
	double width;
	double lower_structural, upper_structural; /* levels */
	double floor_depth; /* upper finished floor down to its finished ceiling; 0: not known */
	struct box opening; /* in the upper floor, on plan, in the first flight's frame: x0 at its
			       lower edge, x1 at the header; as long as nothing (x0 = x1) when the
			       job gives no length */
	const struct flight *flights;
	int flight_count;
	const struct vec *walking_line; /* on plan, in the house */
	int walking_line_count;
	double walking_length;
	const struct layout_option *options; /* none when the job gave both risers and run */
	int option_count;
	struct headroom headroom;
};

/* NULL in, NULL out; NULL after an error, which is in `d`. */
const struct stair *stair_solve(struct arena *a, const struct job *job, struct diags *d);

/* The line that touches every nosing of the flight. */
struct slope_line flight_nosing_line(const struct stair *s, const struct flight *f);

static inline double slope_at(struct slope_line l, double x)
{
	return l.z0 + l.slope * x;
}

/* Both as text, for goldens, bug reports and `--dump`. */
const char *stair_dump(struct arena *a, const struct stair *s);

/* The table of options that were weighed, as the terminal shows it; "" when nothing was chosen. */
const char *stair_options_text(struct arena *a, const struct stair *s);

#endif
