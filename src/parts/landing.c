#include "parts/landing.h"

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
 */

double landing_end(const struct rod *r, const struct side *side)
{
	bool open = side_open_at(side, r->steps);
	double stringer = side->kind == STRINGER_HOUSED ? side->inner : 0;
	if (open && side->head.kind == RAIL_END_NEWEL)
		return fmax(rod_newel_inner(r, side) + r->job->treads.newel_fit, stringer);
	if (side->kind == STRINGER_HOUSED)
		return stringer;
	return open ? 0 : rod_wall_end(r, side);
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

/* Worked like a notch; the note says how deep and how wide. */
static void add_features(struct arena *a, struct part *p, const struct rod *r)
{
	if (lip(r) > NEAR_ENOUGH)
		piece_feature(a, p, (struct feature){ .kind = FEATURE_NOTCH, .depth = lip(r) });
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

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_landing };
	struct rod r = rod_make(s, f);
	(void)d;
	if (r.steps == r.risers) /* the last tread takes its place */
		return NULL;
	double x0 = rod_along(&r, &r.sides[HAND_LEFT], landing_end(&r, &r.sides[HAND_LEFT]));
	double x1 = rod_along(&r, &r.sides[HAND_RIGHT], landing_end(&r, &r.sides[HAND_RIGHT]));
	double depth = r.nosing + r.riser + r.job->treads.landing_bearing;
	double thickness = landing_thickness(&r);
	struct part *p = piece_add(&list, "landing nosing", r.job->material.treads,
		rod_flat(&r, x0, r.steps * r.run - r.nosing, r.top - thickness));
	p->size = (struct part_size){ x1 - x0, depth, thickness };
	p->outline = outline_box(a, 0, 0, x1 - x0, depth);
	struct nosing n = nosing_make(&r.job->treads, thickness);
	p->section = section(a, &r, &n, depth);
	p->solids = solid_strip(a, profile_of(a, p->section), (struct end_plane){ 0 },
		(struct end_plane){ x1 - x0, 0, 0 });
	nosing_add(a, p, r.job, &n);
	add_features(a, p, &r);
	p->note = note(a, &r);
	return list.first;
}

const struct part_kind part_landing = { "landing nosing", "L", make };
