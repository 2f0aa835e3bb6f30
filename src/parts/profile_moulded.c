#include "parts/profile.h"

/*
 * A head with a crown, a finger recess on both sides, and a foot for the balusters.
 *
 *            ___.---.___        crown
 *          .'           '.      shoulder
 *         |               |     widest
 *          '-.         .-'      roll, then hollow: together as high as the recess is deep
 *             |       |         neck
 *            .'       '.        hollow
 *           |           |       foot, its edges eased
 *           '-----------'
 *
 * With a from the middle to the centre of the shoulder k, m from the widest part up to the crown,
 * the crown R follows from  a^2 + (R - m)^2 = (R - k)^2.  The shares are our own: with them a rail
 * of 2 1/4 by 2 3/8 in has its recess begin 5/8 in under the crown and go on past 1 3/4.
 */

#define HEAD 0.263      /* widest part to crown, of the depth ... */
#define HEAD_WIDE 0.4   /* ... but no more than this of the width */
#define FOOT 0.21       /* height of the foot, of the depth */
#define FOOT_IN 0.4     /* the foot is narrower than the head: a side by this much of the recess */
#define SHOULDER 0.6    /* its radius, of the head's height */
#define MOST_RECESS 0.3 /* of the width, a side */

/* Of the right-hand half. */
struct moulding {
	double wide, neck, foot; /* half widths */
	double head, crown, shoulder;
	double widest;     /* level of the widest part */
	double foot_level; /* top of the foot */
	double roll, hollow, foot_hollow, eased;
};

static struct moulding moulding_of(struct profile_sizes z)
{
	struct moulding m = { .wide = z.width / 2, .eased = z.edge_radius };
	m.neck = m.wide - z.recess;
	m.foot = m.wide - FOOT_IN * z.recess;
	m.head = fmin(HEAD * z.depth, HEAD_WIDE * z.width);
	m.shoulder = SHOULDER * m.head;
	double a = m.wide - m.shoulder;
	m.crown = (a * a + m.head * m.head - m.shoulder * m.shoulder) / (2 * (m.head - m.shoulder));
	m.widest = z.depth - m.head;
	m.foot_level = FOOT * z.depth;
	m.roll = m.hollow = z.recess / 2;
	m.foot_hollow = m.foot - m.eased - m.neck;
	return m;
}

static struct profile_fault fault(struct profile_sizes z)
{
	struct moulding m = moulding_of(z);
	double straight = m.widest - z.recess - m.foot_level - fmax(m.foot_hollow, 0);
	double most_eased = fmin((1 - FOOT_IN) * z.recess * 0.75, m.foot_level / 2);
	if (z.recess > MOST_RECESS * z.width)
		return (struct profile_fault){ "recess",
			"so deep on both sides it leaves no neck to the rail",
			MOST_RECESS * z.width };
	if (straight < 0)
		return (struct profile_fault){ "recess",
			"there is no depth of rail for head, recess and foot",
			z.recess + straight > 0 ? z.recess + straight : 0 };
	if (z.edge_radius > most_eased)
		return (struct profile_fault){ "edge_radius",
			"it does not go with the foot of a moulded rail", most_eased };
	return (struct profile_fault){ 0 };
}

/* From the underside up to the widest part, on the right. */
static void strike_up(struct path *p, const struct moulding *m)
{
	double e = m->eased, under_roll = m->widest - m->roll;
	path_to(p, m->foot - e, 0);
	path_round_to(p, m->foot, e);
	path_to(p, m->foot, m->foot_level - e);
	path_round_to(p, m->foot - e, m->foot_level);
	path_hollow_to(p, m->neck, m->foot_level + m->foot_hollow);
	path_to(p, m->neck, under_roll - m->hollow);
	path_hollow_to(p, m->neck + m->hollow, under_roll);
	path_round_to(p, m->wide, m->widest);
}

static void strike_down(struct path *p, const struct moulding *m)
{
	double e = m->eased, under_roll = m->widest - m->roll;
	path_round_to(p, -m->neck - m->hollow, under_roll);
	path_hollow_to(p, -m->neck, under_roll - m->hollow);
	path_to(p, -m->neck, m->foot_level + m->foot_hollow);
	path_hollow_to(p, -m->foot + e, m->foot_level);
	path_round_to(p, -m->foot, m->foot_level - e);
	path_to(p, -m->foot, e);
	path_round_to(p, -m->foot + e, 0);
}

static struct outline strike(struct arena *a, struct profile_sizes z)
{
	struct moulding m = moulding_of(z);
	double to = m.wide - m.shoulder, up = m.crown - m.head;
	double turn = atan2(up, to); /* of the shoulder */
	struct vec touch = vec(to + m.shoulder * cos(turn), m.widest + m.shoulder * sin(turn));
	struct path p = path_begin(a, 24);
	strike_up(&p, &m);
	path_sweep_to(&p, touch.x, touch.y, turn);
	path_sweep_to(&p, 0, z.depth, PI / 2 - turn);
	path_sweep_to(&p, -touch.x, touch.y, PI / 2 - turn);
	path_sweep_to(&p, -m.wide, m.widest, turn);
	strike_down(&p, &m);
	return path_close(p);
}

const struct profile_kind profile_moulded = { fault, strike };
