#include "parts/riser.h"

#include "parts/start.h"

/*
 * Risers: each stands behind the back edge of the tread below and under the
 * front of the tread above; the last one under the upper floor's nosing piece.
 */

/* One end of a riser: in from the limit of its side at the face, and how far it runs back (1: a
 * mitre of 45 degrees, long point at the face). */
struct riser_end {
	double in;
	double lean;
};

/* A wall that the tread over it is cut out for stands in its way too. */
static double beside_wall(const struct rod *r, const struct side *side, int step)
{
	double end = rod_wall_end(r, side);
	if (step > r->steps)
		return end;
	struct tread_plan t = tread_plan_make(r, step);
	return fmax(end, tread_end_gap(&t.ends[side->hand], r->nosing + r->riser / 2));
}

static struct riser_end riser_end(const struct rod *r, const struct side *side, int step)
{
	if (side->kind == STRINGER_HOUSED)
		return (struct riser_end){ side->inner - r->job->stringers.housing_depth, 0 };
	if (step == 1 && side_has_foot_newel(side))
		return (struct riser_end){ rod_newel_inner(r, side), 0 };
	if (step == 1 && side_starts(side))
		return (struct riser_end){ 0, 0 };
	bool at_floor = step > r->steps;
	bool seen = at_floor ? side_open_at(side, r->steps) : side_shows_riser(side, step);
	if (!seen)
		return (struct riser_end){ beside_wall(r, side, step), 0 };
	/* the last riser stands against the header, above the stringer's last cut */
	bool mitred = (side->kind == STRINGER_MITRED || side->board > 0) && !at_floor;
	return (struct riser_end){ 0, mitred ? 1 : 0 };
}

static void add_end_mitre(struct arena *a, struct part *p, struct riser_end e, const char *to)
{
	if (e.lean > 0)
		piece_feature(a, p,
			(struct feature){ .kind = FEATURE_MITRE,
				.angle = PI / 4,
				.text = arena_printf(a,
					"end mitred 45 degrees to the %s, long point at the face",
					to) });
}

/* Beyond the side where a starting step reaches out past the stringer. */
static void bend_on(struct arena *a, struct part *p, const struct rod *r)
{
	for (int i = 0; i < 2; i++)
		if (side_starts(&r->sides[i]))
			p->bent += start_bent_length(r, &r->sides[i]);
	if (p->bent > 0)
		p->note = arena_printf(a, "drawn without the %s that go on round the block",
			length_say(a, job_lettering(r->job), p->bent));
}

static void riser_add(struct pieces *list, const struct rod *r, int step)
{
	struct riser_end left = riser_end(r, &r->sides[HAND_LEFT], step);
	struct riser_end right = riser_end(r, &r->sides[HAND_RIGHT], step);
	double bottom = step > 1 ? (step - 1) * r->rise - r->tread : r->foot;
	double height = step > 1 ? r->rise : r->rise - r->tread - r->foot;
	double x0 = rod_along(r, &r->sides[HAND_LEFT], left.in);
	double length = rod_along(r, &r->sides[HAND_RIGHT], right.in) - x0;
	double back = (step - 1) * r->run + r->riser;
	struct part *p =
		piece_add(list, "riser", r->job->material.risers, rod_upright(r, x0, back, bottom));
	p->size = (struct part_size){ length, height, r->riser };
	p->outline = outline_box(list->arena, 0, 0, length, height);
	p->start.bevel = left.lean * PI / 4;
	p->end.bevel = right.lean * PI / 4;
	struct outline section = outline_box(list->arena, 0, 0, height, r->riser);
	/* z is 0 at the back, where a mitred end is short by the thickness */
	p->solids = solid_strip(list->arena, profile_of(list->arena, section),
		(struct end_plane){ left.lean * r->riser, 0, -left.lean },
		(struct end_plane){ length - right.lean * r->riser, 0, right.lean });
	const char *to = job_open_skirt(r->job) > 0 ? "skirt" : "stringer";
	add_end_mitre(list->arena, p, left, to);
	add_end_mitre(list->arena, p, right, to);
	if (step == 1)
		bend_on(list->arena, p, r);
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_riser };
	struct rod r = rod_make(s, f);
	for (int i = 1; r.riser > 0 && i <= r.risers; i++)
		riser_add(&list, &r, i);
	for (int i = 0; i < 2; i++)
		if (r.riser > 0 && side_starts(&r.sides[i]))
			start_block_add(&list, &r, &r.sides[i]);
	riser_bars_add(&list, &r, d);
	return list.first;
}

const struct part_kind part_riser = { "riser", "R", make };
