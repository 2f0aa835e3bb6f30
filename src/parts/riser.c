#include "parts/riser.h"

#include "parts/bands.h"
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
	double passing = notch_beside_riser(r, side, step);
	if (passing > 0)
		end = fmax(end, passing + r->job->treads.scribe);
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

/* Up from the lower edge of the last riser: where a top newel stands that goes down beside its end,
 * to the structure; the height of the riser when none does. */
static double newel_foot(const struct rod *r, int step, double bottom, double height)
{
	double low = height;
	for (int i = 0; i < 2 && step == r->risers; i++) {
		const struct side *side = &r->sides[i];
		if (side_has_head_newel(side) && side->kind != STRINGER_HOUSED)
			low = fmin(low, side->head.newel_z - bottom);
	}
	return low;
}

/* In front of a newel that stands in its way it is cut short. */
static double beside_newel(const struct rod *r, const struct side *side, double end)
{
	if (!side->is_open || side->kind == STRINGER_HOUSED || side->head.kind != RAIL_END_NEWEL)
		return end;
	return fmax(end, rod_newel_inner(r, side) + r->job->treads.newel_fit);
}

/* Across its height: all along, and beside the newels shorter. */
static struct bands bands_of(const struct rod *r, const struct riser_end *ends, double low,
	double height)
{
	const struct side *left = &r->sides[HAND_LEFT], *right = &r->sides[HAND_RIGHT];
	double x0 = rod_along(r, left, ends[HAND_LEFT].in);
	double length = rod_along(r, right, ends[HAND_RIGHT].in) - x0;
	/* z is 0 at the back, where a mitred end is short by the thickness */
	double lean0 = ends[HAND_LEFT].lean, lean1 = ends[HAND_RIGHT].lean;
	struct end_plane near = { lean0 * r->riser, 0, -lean0 };
	struct end_plane far = { length - lean1 * r->riser, 0, lean1 };
	struct bands b = { .n = 0 };
	bands_add(&b, (struct band){ 0, low, near, far });
	if (low > height - NEAR_ENOUGH)
		return b;
	near.at = rod_along(r, left, beside_newel(r, left, ends[HAND_LEFT].in)) - x0;
	far.at = rod_along(r, right, beside_newel(r, right, ends[HAND_RIGHT].in)) - x0;
	bands_add(&b, (struct band){ low, height, near, far });
	return b;
}

/* Of its upper corners. */
static void add_newel_notches(struct arena *a, struct part *p, const struct rod *r,
	const struct bands *b)
{
	struct lettering l = job_lettering(r->job);
	if (b->n < 2)
		return;
	double left = b->at[1].near.at, right = p->size.length - b->at[1].far.at;
	double deep = b->at[1].to - b->at[1].from;
	for (int i = 0; i < 2; i++) {
		double along = i ? right : left;
		if (along < NEAR_ENOUGH)
			continue;
		const char *words = arena_printf(a,
			"upper %s corner cut out round the newel: %s along x %s down",
			i ? "right" : "left", length_letter_inches(a, l, along),
			length_letter_inches(a, l, deep));
		piece_feature(a, p,
			(struct feature){ .kind = FEATURE_NOTCH,
				.depth = p->size.thickness,
				.at = outline_box(a, i ? p->size.length - along : 0, b->at[1].from,
					i ? p->size.length : along, b->at[1].to),
				.text = words,
				.setting = arena_printf(a, "notch %s along x %s down",
					length_letter_inches(a, l, along),
					length_letter_inches(a, l, deep)) });
		p->note = p->note ? arena_printf(a, "%s; %s", p->note, words) : words;
	}
}

/* So much more on paper than in the wood, a hundredth of an inch, and the tread over it would be
 * held up (common practice). */
#define HOLDS_UP 0.25

/* The graduations that a job is lettered in are seldom the rise. */
static void note_rounding(struct arena *a, struct part *p, const struct rod *r)
{
	struct lettering l = job_lettering(r->job);
	if (length_lettered_value(l, p->size.width) - p->size.width < HOLDS_UP)
		return;
	const char *words = "its width is a little under what is lettered: trim it to the rise";
	p->note = p->note ? arena_printf(a, "%s; %s", p->note, words) : words;
}

static void riser_add(struct pieces *list, const struct rod *r, int step)
{
	struct riser_end left = riser_end(r, &r->sides[HAND_LEFT], step);
	struct riser_end right = riser_end(r, &r->sides[HAND_RIGHT], step);
	double bottom = step > 1 ? (step - 1) * r->rise - r->tread : r->foot;
	double height = step > 1 ? r->rise : rod_first_riser(r);
	double x0 = rod_along(r, &r->sides[HAND_LEFT], left.in);
	double length = rod_along(r, &r->sides[HAND_RIGHT], right.in) - x0;
	double back = (step - 1) * r->run + r->riser;
	struct part *p =
		piece_add(list, "riser", r->job->material.risers, rod_upright(r, x0, back, bottom));
	p->size = (struct part_size){ length, height, r->riser };
	struct riser_end ends[2] = { [HAND_LEFT] = left, [HAND_RIGHT] = right };
	double low = newel_foot(r, step, bottom, height);
	struct bands bands = bands_of(r, ends, low, height);
	p->outline = low < height - NEAR_ENOUGH ? bands_outline(list->arena, &bands)
						: outline_box(list->arena, 0, 0, length, height);
	p->start.bevel = left.lean * PI / 4;
	p->end.bevel = right.lean * PI / 4;
	struct outline section = outline_box(list->arena, 0, 0, height, r->riser);
	p->solids = bands_solids(list->arena, &bands, section);
	const char *to = job_open_skirt(r->job) > 0 ? "skirt" : "stringer";
	add_end_mitre(list->arena, p, left, to);
	add_end_mitre(list->arena, p, right, to);
	add_newel_notches(list->arena, p, r, &bands);
	if (step == 1)
		bend_on(list->arena, p, r);
	note_rounding(list->arena, p, r);
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
