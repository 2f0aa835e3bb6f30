#include "parts/fixing.h"
#include "parts/wall_rail.h"

/*
 * Brackets under a wall rail, bought by the piece: rose, arm and saddle.
 *
 *    wall |      ______   saddle, screwed up into the rail
 *         ||       |
 *         ||       |      far enough down for a hand to pass
 *         ||_______|      arm
 *         ||
 *        rose, screwed to the wall
 *
 * Own axes: x along the wall, y out from it, z up; origin on the wall behind the arm.
 */

#define ROSE 64.0 /* across; the sizes of a common one of 2 1/2 in (common practice) */
#define ROSE_THICK 6.0
#define ROSE_FACETS 32
#define ARM 12.0
#define SADDLE_LONG 60.0
#define SADDLE_WIDE 25.0
#define SADDLE_THICK 3.0
#define ROSE_SCREWS 3
#define ROSE_SCREW_OUT 23.0 /* from the middle of the rose */
#define SADDLE_SCREW_OUT 20.0

/* Numbers of its screws, and their lengths (common practice). */
#define WALL_SCREW 10
#define RAIL_SCREW 8
#define IN_STUD 76.5 /* 3 in: through rose and plaster */
#define IN_RAIL 25.4 /* 1 in: through the saddle */

double bracket_half(void)
{
	return ROSE / 2;
}

double bracket_reach(const struct job_wall_rail *w)
{
	return ARM / 2 + w->bracket_drop + ROSE / 2;
}

struct bracket {
	struct arena *arena;
	double slope;  /* of the rail's underside along x */
	double middle; /* of the rail, out from the wall */
	double under;  /* of the rail over the arm's middle */
	enum units units;
};

static struct solid *rose(const struct bracket *b)
{
	struct arena *a = b->arena;
	struct vec3 *back = NEW_N(a, struct vec3, ROSE_FACETS);
	struct vec3 *front = NEW_N(a, struct vec3, ROSE_FACETS);
	unsigned char *soft = NEW_N(a, unsigned char, ROSE_FACETS);
	for (int i = 0; i < ROSE_FACETS; i++) {
		double t = 2 * PI * (i + 0.5) / ROSE_FACETS;
		back[i] = vec3(ROSE / 2 * cos(t), 0, ROSE / 2 * sin(t));
		front[i] = vec3(back[i].x, ROSE_THICK, back[i].z);
		soft[i] = SOFT_SIDE;
	}
	return solid_join(a, ROSE_FACETS, front, back, soft);
}

/* A plate or post with plumb ends whose top (and bottom, where it has one) follows the rake: from
 * -x to x, between two heights at x = 0. */
static struct solid *raked(const struct bracket *b, double x, struct vec y, struct vec z,
	double bottom_slope)
{
	struct vec3 *in = NEW_N(b->arena, struct vec3, 4), *out = NEW_N(b->arena, struct vec3, 4);
	const struct vec at[4] = { { -x, z.x - x * bottom_slope }, { x, z.x + x * bottom_slope },
		{ x, z.y + x * b->slope }, { -x, z.y - x * b->slope } };
	for (int i = 0; i < 4; i++) {
		in[i] = vec3(at[i].x, y.x, at[i].y);
		out[i] = vec3(at[i].x, y.y, at[i].y);
	}
	return solid_join(b->arena, 4, in, out, NULL);
}

static double cosine(const struct bracket *b)
{
	return 1 / hypot(1, b->slope);
}

static struct solid *solids(const struct bracket *b)
{
	double half = ARM / 2, plate = b->under - SADDLE_THICK / cosine(b);
	struct vec post = vec(b->middle - half, b->middle + half);
	struct vec saddle = vec(b->middle - SADDLE_WIDE / 2, b->middle + SADDLE_WIDE / 2);
	struct solid *s = rose(b);
	s = solid_add(s,
		solid_box(b->arena, vec3(-half, ROSE_THICK, -half), vec3(half, post.x, half)));
	s = solid_add(s, raked(b, half, post, vec(-half, plate), 0));
	return solid_add(s,
		raked(b, SADDLE_LONG / 2 * cosine(b), saddle, vec(plate, b->under), b->slope));
}

static void rose_screws_add(const struct bracket *b, struct part *p)
{
	for (int i = 0; i < ROSE_SCREWS; i++) {
		double t = PI / 2 + 2 * PI * i / ROSE_SCREWS;
		struct bore s = fastener_bore(fastener_screw_within(WALL_SCREW, IN_STUD, b->units),
			ROSE_THICK);
		s.at = (struct frame){ vec3(ROSE_SCREW_OUT * cos(t), 0, ROSE_SCREW_OUT * sin(t)),
			{ 1, 0, 0 }, { 0, 0, 1 }, { 0, -1, 0 } };
		s.text = "screw, bracket to wall";
		piece_bore(b->arena, p, s);
	}
}

static void saddle_screws_add(const struct bracket *b, struct part *p, double depth)
{
	double c = cosine(b), sine = b->slope * c;
	struct fastener screw = fastener_screw_within(RAIL_SCREW, IN_RAIL, b->units);
	for (int i = -1; i <= 1; i += 2) {
		double along = i * SADDLE_SCREW_OUT;
		struct bore s = fastener_bore(screw, SADDLE_THICK);
		s.at = (struct frame){ vec3(along * c, b->middle, b->under + along * sine),
			{ c, 0, sine }, { 0, -1, 0 }, { -sine, 0, c } };
		s.mate = bore_round(screw.pilot, fmin(screw.length - SADDLE_THICK, depth * 0.6));
		s.text = "screw, bracket to rail";
		piece_bore(b->arena, p, s);
	}
}

/* At a place along the rail.  Its y points out from the wall, so on a left-hand wall its x runs
 * down the stair. */
static void bracket_add(struct pieces *list, const struct rod *r, const struct wall_run *run,
	double along)
{
	double wall = wall_run_wall(run), x = run->start + along * r->cosine;
	struct bracket b = { list->arena, -wall * r->slope, run->middle,
		ARM / 2 + run->spec->bracket_drop, r->job->about.units };
	struct frame f =
		frame_at(x, rod_y(r, run->side, 0), run->under + along * sin(r->pitch) - b.under);
	f.u = vec3(-wall, 0, 0);
	f.v = vec3(0, -wall, 0);
	struct part *p =
		piece_add(list, "rail bracket", "metal", frame_compose(r->flight->frame, f));
	p->size = (struct part_size){ ROSE, run->middle + SADDLE_WIDE / 2, b.under + ROSE / 2 };
	p->stuff = STUFF_BOUGHT;
	p->grain = GRAIN_NONE;
	p->solids = solids(&b);
	p->note = "into a stud or backing";
	rose_screws_add(&b, p);
	saddle_screws_add(&b, p, run->spec->depth);
}

/* Evenly from one end to the other, no farther apart and no farther in than the job says. */
static void brackets_add(struct pieces *list, const struct rod *r, const struct wall_run *run)
{
	double in = fmin(run->spec->bracket_from_end, run->length / 4);
	double room = run->length - 2 * in;
	int gaps = (int)fmax(1, ceil(room / run->spec->bracket_spacing - NEAR_ENOUGH));
	for (int i = 0; i <= gaps; i++)
		bracket_add(list, r, run, in + room * i / gaps);
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_bracket };
	struct rod r = rod_make(s, f);
	struct wall_runs runs = wall_runs_make(a, &r, NULL);
	(void)d;
	for (int i = 0; i < runs.n; i++)
		brackets_add(&list, &r, &runs.run[i]);
	return list.first;
}

const struct part_kind part_bracket = { "rail bracket", "G", make };
