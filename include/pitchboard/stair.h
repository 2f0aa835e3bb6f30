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
	double headroom; /* the least; 0: not known */
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

/*
 * What the edition of a code asks of a layout, for the solver to choose by.  It
 * is read from the rows of the edition before the stair is solved
 * (rules_for_layout); what else they ask is measured on the stair when it is made.
 */
enum layout_measure {
	MEASURE_RISE,
	MEASURE_RUN,
	MEASURE_PACE, /* twice rise plus run */
	MEASURE_PITCH,
	MEASURE_NOSING,
	MEASURE_OPEN_RISERS,       /* 1 or 0 */
	MEASURE_HEADROOM,          /* plumb from the nosings, and from the floor before them */
	MEASURE_HEADROOM_TO_FLOOR, /* the line of the nosings goes on, a tread before the first */
};

struct layout_bounds {
	enum layout_measure measure;
	double least, most; /* both counted in; -INFINITY and INFINITY: no such limit */
};

enum { MOST_LAYOUT_CONDITIONS = 2 };

struct layout_limit {
	struct layout_bounds bounds;
	struct layout_bounds where[MOST_LAYOUT_CONDITIONS]; /* it counts only there */
	int where_count;
	const char *from; /* "IRC 2018, R311.7.2" */
};

struct layout_limits {
	const struct layout_limit *limits;
	int n;
};

/* NULL in, NULL out; NULL after an error, which is in `d`.  No limits: none is named. */
const struct stair *stair_solve(struct arena *a, const struct job *job,
	const struct layout_limits *limits, struct diags *d);

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
