#include "parts/nosing.h"

#define QUARTER_BULGE 0.41421356237309503 /* tan(90 degrees / 4) */
#define EIGHTH_BULGE 0.19891236737965800  /* tan(45 degrees / 4) */

/* From where two faces would meet at 135 degrees to where a round of radius 1 touches them. */
#define EASING 0.41421356237309503 /* tan(22.5 degrees) */

/* A sawn chamfer that goes less far along a face is one pass of the router (common practice). */
#define LEAST_LEG 1.5

/*
 * The waste is sawn off at 45 degrees, a margin outside the finished edge:
 *
 *      leg
 *    |<--->|______          A quarter round of radius R has its centre R * sqrt(2) from the
 *    .    /'               arris, so it lies R * (sqrt(2) - 1) under it; a chamfer of legs c lies
 *       / .'                c / sqrt(2) under it.  The saw stays the margin outside of that.
 *     / .'
 *    | '
 *    ||
 */
static struct waste waste_of(const struct nosing *n, double margin)
{
	double under = n->chamfer > 0 ? n->chamfer / sqrt(2) : n->radius * (sqrt(2) - 1);
	double leg = (under - margin) * sqrt(2);
	struct waste w = { .arrises = n->kind == NOSING_HALF_ROUND ? 1 : 2, .margin = margin };
	if (leg < LEAST_LEG)
		return w;
	w.angle = PI / 4;
	w.leg = leg;
	w.flat = leg * sqrt(2);
	return w;
}

/* The round of a chamfer's arrises takes no more than half of either face beside it. */
static double eased_arris(const struct nosing *n, double wanted)
{
	double face = fmin(n->chamfer / sqrt(2), (n->thickness - 2 * n->chamfer) / 2);
	return fmin(wanted, face / EASING);
}

struct nosing nosing_make(const struct job_treads *t, double thickness)
{
	struct nosing n = { .kind = t->nosing_profile, .thickness = thickness };
	switch (n.kind) {
	case NOSING_EASED: n.radius = fmin(t->nosing_radius, thickness / 2); break;
	case NOSING_FULL_ROUND: n.radius = thickness / 2; break;
	case NOSING_HALF_ROUND: n.radius = fmin(t->nosing_radius, thickness); break;
	case NOSING_CHAMFER:
		n.chamfer = fmin(t->nosing_chamfer, thickness / 2);
		n.radius = eased_arris(&n, t->nosing_radius);
		break;
	}
	n.reach = n.chamfer > 0 ? n.chamfer + n.radius * EASING : n.radius;
	n.waste = waste_of(&n, t->waste_margin);
	return n;
}

static int rounded_edge(const struct nosing *n, struct corner *c)
{
	double radius = n->radius, top = n->thickness;
	c[0] = (struct corner){ { radius, top }, QUARTER_BULGE };
	c[1] = (struct corner){ { 0, top - radius }, 0 };
	if (n->kind == NOSING_HALF_ROUND) {
		c[2] = (struct corner){ { 0, 0 }, 0 };
		return 3;
	}
	c[2] = (struct corner){ { 0, radius }, QUARTER_BULGE };
	c[3] = (struct corner){ { radius, 0 }, 0 };
	return 4;
}

static int chamfered_edge(const struct nosing *n, struct corner *c)
{
	double leg = n->chamfer, top = n->thickness;
	double along = n->radius * EASING, slant = along / sqrt(2);
	c[0] = (struct corner){ { leg + along, top }, EIGHTH_BULGE };
	c[1] = (struct corner){ { leg - slant, top - slant }, 0 };
	c[2] = (struct corner){ { slant, top - leg + slant }, EIGHTH_BULGE };
	c[3] = (struct corner){ { 0, top - leg - along }, 0 };
	for (int i = 0; i < 4; i++) {
		struct vec at = c[3 - i].at;
		c[4 + i] = (struct corner){ { at.x, top - at.y }, i % 2 ? 0 : EIGHTH_BULGE };
	}
	return NOSING_ROOM;
}

/* The edge from above round to the underside; the number of its corners. */
static int edge_of(const struct nosing *n, struct corner c[NOSING_ROOM])
{
	return n->kind == NOSING_CHAMFER ? chamfered_edge(n, c) : rounded_edge(n, c);
}

double nosing_under(const struct nosing *n)
{
	return n->kind == NOSING_HALF_ROUND ? 0 : n->reach;
}

void nosing_strike(struct path *p, const struct nosing *n, double x, double y)
{
	struct corner c[NOSING_ROOM];
	int count = edge_of(n, c);
	path_to(p, x + c[0].at.x, y + c[0].at.y);
	for (int i = 1; i < count; i++)
		path_arc_to(p, x + c[i].at.x, y + c[i].at.y, c[i - 1].bulge);
}

void nosing_strike_up(struct path *p, const struct nosing *n, double x, double y)
{
	struct corner c[NOSING_ROOM];
	int last = edge_of(n, c) - 1;
	path_to(p, x + c[last].at.x, y + c[last].at.y);
	for (int i = last - 1; i >= 0; i--)
		path_arc_to(p, x + c[i].at.x, y + c[i].at.y, -c[i].bulge);
}

struct outline nosing_outline(struct arena *a, const struct nosing *n, double depth)
{
	struct path p = path_begin(a, NOSING_ROOM + 3);
	path_to(&p, nosing_under(n), 0);
	path_to(&p, depth, 0);
	path_to(&p, depth, n->thickness);
	nosing_strike(&p, n, 0, 0);
	return path_close(p);
}

static const char *feature_text(const struct nosing *n)
{
	switch (n->kind) {
	case NOSING_EASED: return "both arrises of the outer edge rounded";
	case NOSING_FULL_ROUND: return "outer edge a full round";
	case NOSING_HALF_ROUND: return "upper arris of the outer edge rounded, square below";
	case NOSING_CHAMFER:
		return "both arrises of the outer edge chamfered 45 degrees, their arrises rounded";
	}
	return "";
}

/* A saw is set to 1/32 in or half a millimetre; less is sawn off rather than more. */
static double set_down(struct lettering l, double mm)
{
	double step = l.units == UNITS_INCHES ? MM_PER_INCH / 32 : 0.5;
	return floor(mm / step + NEAR_ENOUGH) * step;
}

static struct lettering saw_lettering(const struct job *job)
{
	struct lettering l = job_lettering(job);

	l.fraction = l.units == UNITS_INCHES ? 32 : 10;
	return l;
}

static const char *arrises_words(const struct waste *w)
{
	return w->arrises > 1 ? "both arrises" : "the upper arris";
}

/* The flat that such a leg leaves, as it is measured; less where that would be over the profile. */
static double flat_of(struct lettering l, const struct waste *w, double leg)
{
	double flat = length_lettered_value(l, leg * sqrt(2));

	return flat <= w->leg * sqrt(2) + NEAR_ENOUGH ? flat : set_down(l, leg * sqrt(2));
}

const char *nosing_note(struct arena *a, const struct job *job, const struct nosing *n)
{
	struct lettering l = saw_lettering(job);
	const struct waste *w = &n->waste;
	if (w->leg <= 0)
		return NULL;
	double leg = set_down(l, w->leg);
	return arena_printf(a,
		"before the router saw %s at 45 degrees, %s along each face (flat %s): it "
		"clears the profile by at least %s",
		arrises_words(w), length_say(a, l, leg), length_say(a, l, flat_of(l, w, leg)),
		length_say(a, l, w->margin));
}

/* The same figure as in the note: a setting lettered more coarsely would saw into the profile. */
static struct feature waste_feature(struct arena *a, const struct job *job, const struct nosing *n)
{
	struct lettering l = saw_lettering(job);
	double leg = set_down(l, n->waste.leg);

	return (struct feature){ .kind = FEATURE_WASTE,
		.angle = n->waste.angle,
		.depth = leg,
		.text = nosing_note(a, job, n),
		.setting = arena_printf(a, "saw off %s, blade tilted %s, %s along each face",
			arrises_words(&n->waste), angle_letter(a, n->waste.angle),
			length_letter_inches(a, l, leg)) };
}

void nosing_add(struct arena *a, struct part *p, const struct job *job, const struct nosing *n)
{
	struct nosing *facts = NEW(a, struct nosing);
	*facts = *n;
	p->nosing = facts;
	if (n->radius <= NEAR_ENOUGH && n->chamfer <= NEAR_ENOUGH)
		return;
	piece_feature(a, p,
		(struct feature){ .kind = n->chamfer > 0 ? FEATURE_CHAMFER : FEATURE_ROUND,
			.radius = n->radius,
			.depth = n->chamfer,
			.text = feature_text(n) });
	if (n->waste.leg > 0)
		piece_feature(a, p, waste_feature(a, job, n));
}

void nosing_goes_round(struct part *p)
{
	for (struct feature *f = p->features; f; f = f->next)
		if (f->kind == FEATURE_ROUND || f->kind == FEATURE_CHAMFER ||
			f->kind == FEATURE_WASTE)
			f->goes_round = true;
}
