#include "parts/cap.h"
#include "parts/rail_joint.h"

/*
 * Whether a cap's sizes go together, and it with what is round it.
 */

/* A point of this much is left of the four pieces' undersides, at least. */
#define LEAST_HOLLOW 3.0

/* One thing that has to hold, and the complaint when it does not. */
struct demand {
	bool holds;
	const char *key, *hint;
	const char *fault;
};

static bool all_hold(const struct post *p, const struct demand *demands, int n, struct diags *d)
{
	const struct job_newels *k = &p->rod->job->newels;
	int before = d->errors;
	for (int i = 0; i < n; i++)
		if (!demands[i].holds)
			diag_error(d,
				rod_pos(p->rod, k->cap.src ? k->cap.src : k->src, demands[i].key),
				demands[i].hint, "newels.cap: %s", demands[i].fault);
	return d->errors == before;
}

static const char *letter(struct arena *a, const struct post *p, double mm)
{
	return length_say(a, job_lettering(p->rod->job), mm);
}

static bool pyramid_fits(struct arena *a, const struct post *p, const struct cap *c,
	struct diags *d)
{
	const struct job_newel_cap *k = &p->rod->job->newels.cap;
	bool mitred = c->build == CAP_MITRED;
	bool both = node_has(k->src, "slope") && k->rise > 0;
	double hollow = c->width / 2 - k->board / sin(c->slope);
	const struct demand demands[] = {
		{ !both, "rise", "keep one of them", "slope and rise cannot both be given" },
		{ c->slope <= STEEPEST_CAP + NEAR_ENOUGH, "rise",
			arena_printf(a, "at most %s here, 60 degrees",
				letter(a, p, c->width / 2 * tan(STEEPEST_CAP))),
			arena_printf(a,
				"a rise of %s on a cap %s wide slopes %.0f degrees: too steep "
				"for the block",
				letter(a, p, c->rise), letter(a, p, c->width),
				c->slope * 180 / PI) },
		{ mitred || c->shoulder <= c->width / 4, "shoulder",
			job_write_most(a, p->rod->job, "newels.cap.shoulder", c->width / 4),
			arena_printf(a, "a shoulder of %s leaves no pyramid on a cap %s wide",
				letter(a, p, c->shoulder), letter(a, p, c->width)) },
		{ !mitred || hollow >= LEAST_HOLLOW, "board",
			"take thinner boards or a steeper slope",
			arena_printf(a,
				"four pieces of %s, mitred at %.0f degrees, do not fit on a "
				"cap %s wide",
				letter(a, p, k->board), c->slope * 180 / PI,
				letter(a, p, c->width)) },
	};
	return all_hold(p, demands, 4, d);
}

/* Rising from the newel's face it must not run into cap or moulding. */
static double above_rail_needed(const struct post *p)
{
	const struct job_newel_cap *k = &p->rod->job->newels.cap;
	double slope = p->is_bottom ? p->stretch->slope : 0;
	return fmax(k->overhang * slope, k->quarter_round * (1 + slope));
}

/* No newel stands so far from another; a size that can be lettered. */
#define ALONE 100000.0

/* The newel nearest to another, face to face, and which it is. */
struct neighbour {
	double room;
	const struct stretch *of;
	enum stretch_end end;
};

/* As high as each other somewhere?  The other's top is taken a little high. */
static bool is_level_with(const struct post *p, const struct rail_end *e)
{
	const struct job_newels *k = &p->rod->job->newels;
	double top = e->rail_top + k->above_rail + k->section;
	return top > p->end.newel_z && e->newel_z < p->end.newel_z + p->height + k->section;
}

static struct neighbour nearest_newel(const struct post *p)
{
	struct neighbour n = { .room = ALONE };
	double half = p->section / 2;
	for (const struct stretch *s = p->all; s; s = s->next) {
		const struct rail_end ends[2] = { s->foot, s->head };
		for (int i = 0; i < 2; i++) {
			struct vec3 at = vec3(ends[i].newel_x + half, 0, 0);
			struct vec3 on = frame_place_back(p->place, frame_place(s->axes, at));
			double off = fmax(fabs(on.y - half), fabs(on.z - half));
			if (rail_end_has_newel(ends[i]) && is_level_with(p, &ends[i]) && off > 1 &&
				off - p->section < n.room)
				n = (struct neighbour){ off - p->section, s,
					i == 0 ? STRETCH_FOOT : STRETCH_HEAD };
		}
	}
	return n;
}

static const char *newel_words(struct arena *a, const struct stretch *s, enum stretch_end end)
{
	bool at_foot = end == STRETCH_FOOT;
	const char *hand = hand_word(s->side->hand);
	if (s->run)
		return arena_printf(a, "at the %s of a level run, on the %s",
			at_foot ? "beginning" : "end", hand);
	return arena_printf(a, "at the %s of the raked rail, on the %s", at_foot ? "foot" : "head",
		hand);
}

/* Which keys set two newels apart: the length of a run moves the one at its end only. */
static const char *apart_words(const struct stretch *one, enum stretch_end end,
	const struct neighbour *other)
{
	bool ends =
		(one->run && end == STRETCH_HEAD) || (other->of->run && other->end == STRETCH_HEAD);
	if (!one->run && !other->of->run)
		return "";
	return ends ? ", by from_edge or length of the level run"
		    : ", by from_edge of the level run";
}

/* What an overhang may be, or, where there is room for next to none, how far apart. */
static struct demand keeps_off(struct arena *a, const struct post *p)
{
	double overhang = p->rod->job->newels.cap.overhang;
	struct neighbour n = nearest_newel(p);
	struct lettering l = job_lettering(p->rod->job);
	struct demand d = { n.room / 2 >= overhang - NEAR_ENOUGH, "overhang", NULL, NULL };
	if (d.holds)
		return d;
	double most = length_on_graduation(l, fmax(0, n.room / 2), -1);
	enum stretch_end end =
		p->end.newel_x <= p->stretch->foot.newel_x ? STRETCH_FOOT : STRETCH_HEAD;
	d.hint = arena_printf(a, "%s, or set the newels %s further apart%s",
		most > 0 ? arena_printf(a, "take at most %s", letter(a, p, most)) : "kind: none",
		letter(a, p, length_on_graduation(l, 2 * overhang - n.room, 1)),
		apart_words(p->stretch, end, &n));
	d.fault = arena_printf(a,
		"with an overhang of %s the caps of the newels %s and %s run into each other: "
		"there is room for %s",
		letter(a, p, overhang), newel_words(a, p->stretch, end),
		newel_words(a, n.of, n.end), letter(a, p, most));
	return d;
}

/* Between the faces of a newel and a raked rail that goes by as high as the cap, on plan; the cap's
 * own reach says which length of the rail that is. */
static double room_beside(const struct post *p, const struct cap *c, const struct stretch *s)
{
	const struct job *job = p->rod->job;
	double reach = job->newels.cap.overhang, low = p->height - job->newels.cap.quarter_round;
	struct box3 newel = box3_empty();
	struct vec3 foot = frame_place_back(s->axes, p->place.origin);
	for (int i = 0; i < 4; i++) {
		struct vec3 corner = vec3(0, (i & 1) * p->section, (i >> 1) * p->section);
		newel = box3_add(newel, frame_place_back(s->axes, frame_place(p->place, corner)));
	}
	double from = fmax(newel.low.x - reach, s->from), to = fmin(newel.high.x + reach, s->to);
	if (from >= to || foot.z + low >= stretch_rail_top(s, to) ||
		foot.z + p->height + c->height <= stretch_rail_under(s, from))
		return ALONE;
	double half = job->rail.width / 2;
	double along = fmax(s->from - newel.high.x, newel.low.x - s->to);
	return fmax(along, fmax(newel.low.y - half, -half - newel.high.y));
}

/* The rail that goes up beside a level run, whose newel stands by itself. */
static struct demand clears_rail(struct arena *a, const struct post *p, const struct cap *c)
{
	double overhang = p->rod->job->newels.cap.overhang, room = ALONE;
	for (const struct stretch *s = p->all; s && p->stretch->run; s = s->next)
		if (!s->run)
			room = fmin(room, room_beside(p, c, s));
	struct demand d = { room >= overhang - NEAR_ENOUGH, "overhang", NULL, NULL };
	if (d.holds)
		return d;
	room = length_on_graduation(job_lettering(p->rod->job), fmax(0, room), -1);
	d.hint = room > 0 ? arena_printf(a, "%s, or give the level run a from_edge",
				    job_write_most(a, p->rod->job, "newels.cap.overhang", room))
			  : "write newels.cap.kind: none, or give the level run a from_edge";
	d.fault = arena_printf(a,
		"with an overhang of %s a cap on a level run, on the %s, runs into the raked rail: "
		"there is room for %s",
		letter(a, p, overhang), hand_word(p->side->hand), letter(a, p, room));
	return d;
}

bool cap_fits(struct arena *a, const struct post *p, const struct cap *c, struct diags *d)
{
	const struct rod *r = p->rod;
	const struct job_newel_cap *k = &r->job->newels.cap;
	double chamfer = c->kind == CAP_CHAMFERED ? k->chamfer : 0, above = above_rail_needed(p);
	const struct demand demands[] = {
		keeps_off(a, p),
		clears_rail(a, p, c),
		{ k->quarter_round <= k->overhang + NEAR_ENOUGH, "quarter_round",
			arena_printf(a, "%s, or take more overhang",
				job_write_most(a, r->job, "newels.cap.quarter_round", k->overhang)),
			arena_printf(a, "a quarter-round of %s shows beyond the overhang of %s",
				letter(a, p, k->quarter_round), letter(a, p, k->overhang)) },
		{ chamfer < fmin(k->thickness, c->width / 4) - NEAR_ENOUGH, "chamfer",
			job_write_most(a, r->job, "newels.cap.chamfer",
				fmin(k->thickness, c->width / 4) - 1),
			arena_printf(a, "a chamfer of %s leaves nothing of an edge of %s",
				letter(a, p, chamfer), letter(a, p, k->thickness)) },
	};
	bool fits = all_hold(p, demands, 4, d);
	if (r->job->newels.above_rail < above - NEAR_ENOUGH) {
		diag_error(d, rod_pos(r, r->job->newels.src, "above_rail"),
			job_write_least(a, r->job, "newels.above_rail", above),
			"newels.above_rail: with %s the rail runs into the cap",
			letter(a, p, r->job->newels.above_rail));
		return false;
	}
	return fits && (c->kind != CAP_PYRAMID || pyramid_fits(a, p, c, d));
}
