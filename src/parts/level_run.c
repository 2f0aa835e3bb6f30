#include "parts/level_run.h"
#include "parts/infill.h"

/*
 * Set out on plan.  A chain goes on from the stair's own newel where it leads away from the
 * opening; else it has a newel of its own behind the header, beside the opening.
 *
 *      ______________________________________
 *     |  back            from_edge           | out
 *     o======================o               o
 *      ----------------------   edge         |
 *       stair     opening    | header     -> N======o
 *                            |               on
 */

static struct vec way(enum run_direction d)
{
	switch (d) {
	case RUN_ON: return vec(1, 0);
	case RUN_BACK: return vec(-1, 0);
	case RUN_OUT: return vec(0, -1);
	case RUN_ACROSS: return vec(0, 1);
	}
	return vec(0, 0);
}

double level_run_edge(const struct rod *r, const struct side *side)
{
	const struct box *o = &r->stair->opening;
	if (r->job->opening.width <= 0)
		return -level_run_reach(r, side);
	return side->hand == HAND_RIGHT ? o->y0 : r->width - o->y1;
}

/* Of an opening without a length nobody knows where it ends. */
struct box level_run_opening(const struct rod *r, const struct side *side)
{
	const struct box *o = &r->stair->opening;
	const struct side *other = &r->sides[side->hand == HAND_RIGHT ? HAND_LEFT : HAND_RIGHT];
	double x0 = o->x1 > o->x0 ? o->x0 : -INFINITY;
	return (struct box){ x0, level_run_edge(r, side), o->x1,
		r->width - level_run_edge(r, other) };
}

/* The widest piece of infill, whose middle is the rail's. */
static double infill_width(const struct job *job)
{
	const struct job_infill *f = &job->infill;
	bool has_strips =
		f->kind == INFILL_PANEL || infill_has_shoe(job) || infill_has_subrail(job);
	bool has_posts = f->kind == INFILL_PANEL || f->kind == INFILL_BARS;

	return fmax(has_strips ? f->strip_width : 0, has_posts ? f->post : 0);
}

double level_run_reach(const struct rod *r, const struct side *side)
{
	const struct job *job = r->job;
	if (!side->is_open)
		return 0;
	double treads = side->kind == STRINGER_HOUSED ? 0 : job->treads.side_overhang;
	double rail = job->rail.width / 2 - side->rail;
	double newel = job->newels.section / 2 + rod_cap_overhang(r) - side->rail;
	double infill = infill_width(job) / 2 - side->rail;
	return fmax(fmax(treads, infill), fmax(rail, newel));
}

/* Does the chain begin at the newel that the raked rail ends at?  One that stands on the last tread
 * has floor only behind it. */
static bool begins_at_stair(const struct side *side, enum run_direction d)
{
	if (!side->is_open)
		return false;
	if (side->head.kind == RAIL_END_TREAD_NEWEL)
		return d == RUN_ON;
	return side_has_head_newel(side) && d != RUN_BACK;
}

static struct vec start_of(const struct rod *r, const struct side *side,
	const struct job_level_run *run)
{
	double half = r->job->newels.section / 2;
	double inset = run->from_edge > 0 ? run->from_edge : half;
	if (begins_at_stair(side, run->direction))
		return vec(side->head.newel_x + half, side->rail);
	return vec(r->header_x + half, level_run_edge(r, side) - inset);
}

static struct run_line line_of(const struct rod *r, const struct job_level_run *run,
	struct vec from)
{
	double half = r->job->newels.section / 2;
	double reach = half + run->length + (run->end == RUN_END_NEWEL ? half : 0);
	struct vec to = vec_add(from, vec_scale(way(run->direction), reach));
	return (struct run_line){ .run = run, .from = from, .to = to };
}

struct run_lines level_run_lines(struct arena *a, const struct rod *r, const struct side *side)
{
	const struct job_rail *rail = &r->job->rail;
	struct run_lines l = { NEW_N(a, struct run_line, rail->level_run_count + 1), 0 };
	for (int i = 0; i < rail->level_run_count; i++) {
		const struct job_level_run *run = &rail->level_runs[i];
		if ((int)run->side != (int)side->hand)
			continue;
		struct vec from = l.n ? l.line[l.n - 1].to : start_of(r, side, run);
		bool is_met = l.n > 0 || begins_at_stair(side, run->direction);
		l.line[l.n] = line_of(r, run, from);
		l.line[l.n++].is_met = is_met;
	}
	return l;
}

struct box level_run_box(const struct rod *r, const struct run_line *line)
{
	double half = r->job->newels.section / 2;
	struct vec back = vec_scale(way(line->run->direction), half);
	struct vec to = line->run->end == RUN_END_WALL ? vec_sub(line->to, back) : line->to;
	return (struct box){ fmin(line->from.x, to.x) - half, fmin(line->from.y, to.y) - half,
		fmax(line->from.x, to.x) + half, fmax(line->from.y, to.y) + half };
}

/* From the start of the line, x along it. */
static struct frame axes_of(const struct rod *r, const struct side *side,
	const struct run_line *line)
{
	double left = side->hand == HAND_RIGHT ? 1 : -1;
	struct vec u = way(line->run->direction);
	struct frame f = frame_at(line->from.x, rod_y(r, side, line->from.y), 0);
	f.u = vec3(u.x, left * u.y, 0);
	f.v = vec3(-f.u.y, f.u.x, 0);
	return frame_compose(r->flight->frame, f);
}

static struct stretch level_stretch(const struct rod *r, const struct side *side,
	const struct run_line *line)
{
	double section = r->job->newels.section, half = section / 2;
	struct stretch s = { .rod = r, .side = side, .run = line->run, .feet = FEET_ON_FLOOR };
	s.axes = axes_of(r, side, line);
	s.from = half;
	s.to = half + line->run->length;
	s.foot = (struct rail_end){ line->is_met ? RAIL_END_MET_NEWEL : RAIL_END_FLOOR_NEWEL,
		s.from, -half, r->top, 0 };
	s.head = (struct rail_end){ RAIL_END_FLOOR_NEWEL, s.to, s.to, r->top, 0 };
	if (line->run->end == RUN_END_WALL)
		s.head.kind = RAIL_END_WALL;
	s.cosine = 1;
	s.floor = r->top;
	s.rail_top = r->top + line->run->height;
	s.foot.rail_top = s.head.rail_top = s.rail_top;
	return s;
}

/* A newel is as high as the higher of the two rails that meet there asks for. */
static void settle_meeting(struct stretch *before, struct stretch *after)
{
	double top = fmax(before->head.rail_top, after->foot.rail_top);
	before->head.rail_top = after->foot.rail_top = top;
}

struct stretch **level_runs_add(struct arena *a, const struct rod *r, const struct side *side,
	struct stretch *raked, struct stretch **tail)
{
	struct run_lines l = level_run_lines(a, r, side);
	struct stretch *before = raked;
	for (int i = 0; i < l.n; i++) {
		*tail = NEW(a, struct stretch);
		**tail = level_stretch(r, side, &l.line[i]);
		if (before && l.line[i].is_met)
			settle_meeting(before, *tail);
		before = *tail;
		tail = &(*tail)->next;
	}
	return tail;
}
