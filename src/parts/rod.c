#include "parts/rod.h"

struct pos rod_pos(const struct rod *r, const struct node *group, const char *key)
{
	return group ? node_pos(group, key) : node_pos(r->job->src, NULL);
}

bool side_open_at(const struct side *side, int step)
{
	return side->is_open && step >= side->from && step <= side->to;
}

bool side_shows_riser(const struct side *side, int step)
{
	return side->is_open && step >= side->seen_from && step <= side->seen_to;
}

bool side_has_wall(const struct rod *r, const struct side *side)
{
	return !side->is_open || side->from > 1 || side->to < r->steps;
}

bool rod_has_returns(const struct rod *r)
{
	bool any = false;
	for (int i = 0; i < 2; i++)
		any = any || (r->sides[i].is_open && r->sides[i].kind != STRINGER_HOUSED);
	return any && r->job->treads.side_overhang > NEAR_ENOUGH;
}

bool side_has_foot_newel(const struct side *side)
{
	return side->is_open && side->foot.kind == RAIL_END_NEWEL;
}

bool side_has_head_newel(const struct side *side)
{
	return side->is_open && side->head.kind == RAIL_END_NEWEL;
}

double rod_y(const struct rod *r, const struct side *side, double in)
{
	return side->hand == HAND_RIGHT ? in : r->width - in;
}

struct box rod_box(const struct rod *r, const struct side *side, struct box in)
{
	double y0 = rod_y(r, side, in.y0), y1 = rod_y(r, side, in.y1);
	return (struct box){ in.x0, fmin(y0, y1), in.x1, fmax(y0, y1) };
}

double rod_along(const struct rod *r, const struct side *side, double in)
{
	return side->hand == HAND_LEFT ? in : r->width - in;
}

double rod_wall_end(const struct rod *r, const struct side *side)
{
	bool butts = r->job->skirts.wall == SKIRT_PLAIN;
	return r->job->treads.scribe + (butts ? side->skirt : 0);
}

double rod_newel_inner(const struct rod *r, const struct side *side)
{
	return side->rail + r->job->newels.section / 2;
}

double rod_nosing_z(const struct rod *r, double x)
{
	return r->rise + (x + r->nosing) * r->slope;
}

double rod_housed_edge_z(const struct rod *r, double x)
{
	return rod_nosing_z(r, x) + r->job->stringers.margin / r->cosine;
}

double rod_first_riser(const struct rod *r)
{
	return r->rise - r->tread - r->foot;
}

double rod_landing_rabbet(const struct rod *r)
{
	double finish = r->job->floors.upper_finish;
	return finish > 0 && finish < r->tread ? finish : r->tread;
}

struct frame rod_flat(const struct rod *r, double along, double x, double z)
{
	struct frame f = { .u = { 0, -1, 0 }, .v = { 1, 0, 0 }, .w = { 0, 0, 1 } };
	f.origin = vec3(x, r->width - along, z);
	return frame_compose(r->flight->frame, f);
}

struct frame rod_upright(const struct rod *r, double along, double back_x, double z)
{
	struct frame f = { .u = { 0, -1, 0 }, .v = { 0, 0, 1 }, .w = { -1, 0, 0 } };
	f.origin = vec3(back_x, r->width - along, z);
	return frame_compose(r->flight->frame, f);
}

static struct rail_end newel_at(enum rail_end_kind kind, double rail_x, double front, double z)
{
	return (struct rail_end){ .kind = kind, .x = rail_x, .newel_x = front, .newel_z = z };
}

double rod_cap_overhang(const struct rod *r)
{
	const struct job_newel_cap *cap = &r->job->newels.cap;
	return cap->kind == CAP_NONE || cap->on == CAP_ON_TOP ? 0 : cap->overhang;
}

/* Where the rail of an open side begins. */
static struct rail_end foot_of(const struct rod *r, const struct side *side)
{
	double x = side->wall_end, section = r->job->newels.section;
	bool housed = side->kind == STRINGER_HOUSED;
	if (!r->job->newels.bottom)
		return (struct rail_end){ .kind = RAIL_END_PLUMB, .x = x };
	x += side->from > 1 ? rod_cap_overhang(r) : 0; /* its cap clears the wall */
	if (side->start > 0) {
		/* over the middle of the rounded end */
		double past = r->job->treads.return_past;
		double front = (r->run + past - r->nosing - section) / 2;
		return newel_at(RAIL_END_TREAD_NEWEL, front + section, front, r->rise);
	}
	if (side->from == 1) {
		double back = housed ? -r->nosing - HOUSED_FRONT : r->riser;
		return newel_at(RAIL_END_NEWEL, back, back - section,
			r->foot - r->job->newels.let_in);
	}
	if (housed)
		return newel_at(RAIL_END_STRING_NEWEL, x + section, x, rod_housed_edge_z(r, x));
	return newel_at(RAIL_END_TREAD_NEWEL, x + section, x, side->from * r->rise);
}

/* A top newel stands on the structure; where the finish is thinner than a tread, it is let into
 * that, down to the underside of the landing nosing. */
static double head_newel_foot(const struct rod *r)
{
	return fmin(r->top - r->tread, r->stair->upper_structural);
}

/* And where it ends. */
static struct rail_end head_of(const struct rod *r, const struct side *side)
{
	bool housed = side->kind == STRINGER_HOUSED;
	double x = (r->risers - 1) * r->run;
	if (side->to < r->steps) {
		double past = housed ? 0 : r->job->treads.return_past;
		return (struct rail_end){ .kind = RAIL_END_WALL, .x = side->to * r->run + past };
	}
	if (!r->job->newels.top)
		return (struct rail_end){ .kind = RAIL_END_PLUMB, .x = x };
	if (housed)
		return newel_at(RAIL_END_NEWEL, r->header_x, r->header_x, head_newel_foot(r));
	if (r->steps == r->risers)
		return newel_at(RAIL_END_TREAD_NEWEL, x, x, r->top);
	return newel_at(RAIL_END_NEWEL, x, x, head_newel_foot(r));
}

/* Of what stands on the treads: flush with the stringer's outer face. */
static double infill_thickness(const struct job *job)
{
	switch (job->infill.kind) {
	case INFILL_PLAIN:
	case INFILL_BRACED: return job->balusters.thickness;
	case INFILL_BARS:
	case INFILL_PANEL: break;
	}
	return job->infill.post;
}

/* As far as its radius when the job does not say; a half round when it gives no radius. */
static double start_of(const struct rod *r, const struct side *side)
{
	const struct job_starting *s = &r->job->treads.starting;
	double half = (r->nosing + r->run + r->job->treads.return_past) / 2;
	bool here = s->ends == START_BOTH ||
		s->ends == (side->hand == HAND_LEFT ? START_LEFT : START_RIGHT);
	if (!here)
		return 0;
	if (s->projection > 0)
		return s->projection;
	return s->radius > 0 ? s->radius : half;
}

/* A housed stringer is its own skirt; and a mitred one, which is flush with the wall where that
 * goes on, leaves room only for what is cut round the steps. */
static double wall_skirt_of(const struct rod *r, const struct side *side)
{
	enum skirt_kind kind = r->job->skirts.wall;
	if (side->kind == STRINGER_HOUSED || kind == SKIRT_NONE || !side_has_wall(r, side))
		return 0;
	bool flush = side->is_open && side->kind == STRINGER_MITRED;
	return flush && kind == SKIRT_PLAIN ? 0 : r->job->skirts.thickness;
}

/* The first open riser stands at the wall's end: with a board before the carriage it butts against
 * that, without one it is seen where the skirt ends in front of it.  The one behind the last open
 * step has its end seen where the wall begins behind it. */
static void find_seen_risers(const struct rod *r, struct side *side)
{
	double past = side->job->wall_past, behind = side->head.x - side->to * r->run;
	side->seen_from = side->from;
	side->seen_to = side->to + 1;
	if (side->plain <= 0)
		return;
	if (side->from > 1 && (side->board > 0 || past > NEAR_ENOUGH))
		side->seen_from++;
	if (side->to < r->steps && behind < fmax(r->riser, side->board) + NEAR_ENOUGH)
		side->seen_to--;
}

static struct side side_make(const struct rod *r, enum side_hand hand)
{
	const struct job_stair *stair = &r->job->stair;
	struct side side = { .hand = hand };
	side.job = hand == HAND_RIGHT ? &stair->right : &stair->left;
	side.is_open = side.job->kind == SIDE_OPEN;
	side.spec = side.is_open ? &r->job->stringers.open : &r->job->stringers.wall;
	side.kind = side.spec->kind;
	bool off_the_wall = !side.is_open && side.kind != STRINGER_HOUSED;
	side.board = side.is_open ? job_open_skirt(r->job) : 0;
	side.outer = off_the_wall ? r->job->stringers.wall_gap : 0;
	if (side.is_open)
		side.outer = job_open_inset(r->job, side.job);
	side.inner = side.outer + side.spec->thickness;
	side.start = start_of(r, &side);
	if (side.is_open) {
		side.from = side.job->from_step > 1 ? side.job->from_step : 1;
		side.to = side.job->to_step > 0 ? side.job->to_step : r->steps;
	}
	side.skirt = wall_skirt_of(r, &side);
	if (!side.is_open)
		return side;
	side.plain = r->job->skirts.wall == SKIRT_PLAIN ? side.skirt : 0;
	side.rail =
		(side.kind == STRINGER_HOUSED ? side.spec->thickness : infill_thickness(r->job)) /
		2;
	side.wall_end = (side.from - 1) * r->run + side.job->wall_past;
	side.foot = foot_of(r, &side);
	side.head = head_of(r, &side);
	find_seen_risers(r, &side);
	return side;
}

struct rod rod_make(const struct stair *s, const struct flight *f)
{
	const struct job *job = s->job;
	struct rod r = {
		.stair = s,
		.flight = f,
		.job = job,
		.risers = f->risers,
		.steps = f->step_count,
		.rise = s->unit_rise,
		.run = f->unit_run,
		.tread = job->treads.thickness,
		.nosing = job->treads.nosing,
		.riser = job->risers.kind == RISER_OPEN ? 0 : job->risers.thickness,
		.top = f->risers * s->unit_rise,
		.foot = job->stringers.foot == FOOT_STRUCTURAL ? s->lower_structural : 0,
		.pitch = f->pitch,
		.slope = s->unit_rise / f->unit_run,
		.cosine = cos(f->pitch),
		.header_x = f->header_x,
		.width = s->width,
	};
	r.sides[HAND_RIGHT] = side_make(&r, HAND_RIGHT);
	r.sides[HAND_LEFT] = side_make(&r, HAND_LEFT);
	return r;
}
