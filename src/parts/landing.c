#include "parts/landing.h"

#include "parts/bands.h"
#include "parts/nosing.h"

/*
 * The nosing piece at the upper floor: as thick as a tread where it overhangs
 * the last riser, rabbeted to the finish where it lies on the floor.
 *
 *      ____________________________ upper finished floor
 *     (         ___________________|
 *     (________|   rabbet    structural floor
 *          |  |
 *          |  | last riser
 *
 * Between closed strings it goes from one to the other, and round the newels
 * that stand behind their heads:
 *
 *       ____                        ____
 *      |    |______________________|    |
 *      |____|                      |____|   newels
 *        |  |  landing nosing      |  |
 *        |  |______________________|  |     strings
 */

/* Back from its nose to the front of the newels behind closed strings, less what they are given to
 * fit; a closed string ends there.  Nothing is in front of them where there is neither nosing nor
 * riser. */
static double newel_front(const struct rod *r)
{
	double front = r->steps * r->run - r->nosing;
	return fmax(r->header_x - front - r->job->treads.newel_fit, 0);
}

static bool has_newel(const struct rod *r, const struct side *side)
{
	return side_open_at(side, r->steps) && side->head.kind == RAIL_END_NEWEL;
}

/* Where it ends beside a newel; at a side that has none, where it ends anyway. */
static double end_behind(const struct rod *r, const struct side *side)
{
	double stringer = side->kind == STRINGER_HOUSED ? side->inner : 0;
	if (has_newel(r, side))
		return fmax(rod_newel_inner(r, side) + r->job->treads.newel_fit, stringer);
	if (side->kind == STRINGER_HOUSED)
		return stringer;
	return side_open_at(side, r->steps) ? 0 : rod_wall_end(r, side);
}

double landing_end(const struct rod *r, const struct side *side)
{
	bool in_front = side->kind == STRINGER_HOUSED && newel_front(r) > NEAR_ENOUGH;
	return in_front ? side->inner : end_behind(r, side);
}

/* How far the underside of the nose is lower than the rabbet: nothing when it does not overhang
 * far enough to hold its rounding, as on open risers without a nosing. */
static double lip(const struct rod *r)
{
	struct nosing n = nosing_make(&r->job->treads, r->tread);
	bool overhangs = r->nosing + r->riser > nosing_under(&n) + NEAR_ENOUGH;
	return overhangs ? r->tread - rod_landing_rabbet(r) : 0;
}

double landing_thickness(const struct rod *r)
{
	return lip(r) + rod_landing_rabbet(r);
}

/* x back from the nose, y up from the underside. */
static struct outline section(struct arena *a, const struct rod *r, const struct nosing *n,
	double depth)
{
	double step = r->nosing + r->riser, rabbet = lip(r);
	if (rabbet <= 0)
		return nosing_outline(a, n, depth);
	struct path p = path_begin(a, NOSING_ROOM + 5);
	path_to(&p, nosing_under(n), 0);
	path_to(&p, step, 0);
	path_to(&p, step, rabbet);
	path_to(&p, depth, rabbet);
	path_to(&p, depth, n->thickness);
	nosing_strike(&p, n, 0, 0);
	return path_close(p);
}

/* Along its length, across its width. */
static struct bands bands_of(const struct rod *r, double depth)
{
	const struct side *left = &r->sides[HAND_LEFT], *right = &r->sides[HAND_RIGHT];
	double x0 = rod_along(r, left, landing_end(r, left));
	double front = newel_front(r), cut = front > NEAR_ENOUGH ? fmin(front, depth) : depth;
	struct end_plane near = { 0, 0, 0 };
	struct end_plane far = { rod_along(r, right, landing_end(r, right)) - x0, 0, 0 };
	struct end_plane near_behind = { rod_along(r, left, end_behind(r, left)) - x0, 0, 0 };
	struct end_plane far_behind = { rod_along(r, right, end_behind(r, right)) - x0, 0, 0 };
	struct bands b = { .n = 0 };
	bands_add(&b, (struct band){ 0, cut, near, far });
	if (cut < depth)
		bands_add(&b, (struct band){ cut, depth, near_behind, far_behind });
	return b;
}

/* A corner cut out round a newel; none where the bands end alike. */
static void add_newel_notch(struct arena *a, struct part *p, const struct rod *r, double from,
	double to)
{
	struct lettering l = job_lettering(r->job);
	double cut = newel_front(r), along = to - from;
	if (along < NEAR_ENOUGH)
		return;
	const char *words =
		arena_printf(a, "back %s corner cut out round the newel: %s along x %s across",
			from < NEAR_ENOUGH ? "left" : "right", length_letter_inches(a, l, along),
			length_letter_inches(a, l, p->size.width - cut));
	piece_feature(a, p,
		(struct feature){ .kind = FEATURE_NOTCH,
			.at = outline_box(a, from, cut, to, p->size.width),
			.depth = p->size.thickness,
			.text = words,
			.setting = arena_printf(a, "notch %s along x %s across",
				length_letter_inches(a, l, along),
				length_letter_inches(a, l, p->size.width - cut)) });
	p->note = arena_printf(a, "%s; %s", p->note, words);
}

static void add_newel_notches(struct arena *a, struct part *p, const struct rod *r,
	const struct bands *b)
{
	if (b->n < 2)
		return;
	add_newel_notch(a, p, r, 0, b->at[1].near.at);
	add_newel_notch(a, p, r, b->at[1].far.at, p->size.length);
}

/* Worked like a notch; the note says how deep and how wide. */
static void add_features(struct arena *a, struct part *p, const struct rod *r)
{
	struct lettering l = job_lettering(r->job);

	if (lip(r) > NEAR_ENOUGH)
		piece_feature(a, p,
			(struct feature){ .kind = FEATURE_NOTCH,
				.depth = lip(r),
				.setting = arena_printf(a, "rebate the underside, %s deep, %s wide",
					length_letter_inches(a, l, lip(r)),
					length_letter_inches(a, l,
						r->job->treads.landing_bearing)) });
}

/* How it lies on the floor, in the words of who fits it. */
static const char *note(struct arena *a, const struct rod *r)
{
	struct lettering l = job_lettering(r->job);
	double finish = r->job->floors.upper_finish, bed = rod_landing_rabbet(r);
	if (finish <= 0)
		return arena_printf(a,
			"let into the floor, flush: %s deep, %s back from the header",
			length_say(a, l, bed), length_say(a, l, r->job->treads.landing_bearing));
	if (lip(r) > NEAR_ENOUGH)
		return arena_printf(a,
			"rebated under, %s deep, %s wide from the back, for the structural floor",
			length_say(a, l, lip(r)), length_say(a, l, r->job->treads.landing_bearing));
	if (finish > bed + NEAR_ENOUGH)
		return arena_printf(a, "flush with the finish: pack it up %s over the structure",
			length_say(a, l, finish - bed));
	return "lies on the structural floor, flush with the finish";
}

/* In front of a newel of an open string its end is seen. */
static void add_seen_ends(struct arena *a, struct part *p, const struct rod *r)
{
	for (int i = 0; i < 2; i++) {
		const struct side *side = &r->sides[i];
		bool seen = side->kind != STRINGER_HOUSED && side_open_at(side, r->steps);
		if (!seen || r->nosing <= NEAR_ENOUGH)
			continue;
		nosing_goes_round(p);
		p->note = arena_printf(a,
			"%s; work the edge round its %s end too, which is seen: the end first",
			p->note, hand_word((enum side_hand)i));
	}
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_landing };
	struct rod r = rod_make(s, f);
	(void)d;
	if (r.steps == r.risers) /* the last tread takes its place */
		return NULL;
	double x0 = rod_along(&r, &r.sides[HAND_LEFT], landing_end(&r, &r.sides[HAND_LEFT]));
	double depth = r.nosing + r.riser + r.job->treads.landing_bearing;
	double thickness = landing_thickness(&r);
	struct part *p = piece_add(&list, "landing nosing", r.job->material.treads,
		rod_flat(&r, x0, r.steps * r.run - r.nosing, r.top - thickness));
	struct bands bands = bands_of(&r, depth);
	p->size = (struct part_size){ bands.at[0].far.at, depth, thickness };
	p->outline = bands.n > 1 ? bands_outline(a, &bands)
				 : outline_box(a, 0, 0, p->size.length, depth);
	struct nosing n = nosing_make(&r.job->treads, thickness);
	p->section = section(a, &r, &n, depth);
	p->solids = bands_solids(a, &bands, p->section);
	nosing_add(a, p, r.job, &n);
	add_features(a, p, &r);
	p->note = note(a, &r);
	add_newel_notches(a, p, &r, &bands);
	add_seen_ends(a, p, &r);
	return list.first;
}

const struct part_kind part_landing = { "landing nosing", "L", make };
