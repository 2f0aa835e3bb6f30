/*
 * Can a hand close round the rail?  From what is measured on its profile (pitchboard/rail.h).
 *
 * The largest dimension across a section that is not round (IRC R311.7.8.5, type I: 2 1/4 in) is
 * taken at its word: between the two points of the section that lie farthest apart, over the
 * corners of a rectangle.  Who lays a rule along width and depth only reads less; nothing that is
 * met here is not met so.
 */
#include "pitchboard/rail.h"
#include "rules/handrail.h"
#include "rules/mend.h"

/* Of the rail that the hand goes up by. */
static const struct rail_profile *profile_of_stair(const struct survey *s)
{
	struct handrail h = handrail_of(s);

	for (int i = 0; i < s->count; i++)
		if (is_of_handrail(s, h, &s->pieces[i]))
			return &s->pieces[i].part->rail->profile;
	return NULL;
}

/* Which profiles a size is asked of. */
enum asked_of { OF_ROUND, OF_NOT_ROUND, OF_ANY };

static struct reading of_profile(const struct survey *s, enum asked_of of,
	double (*size)(const struct rail_profile *p))
{
	const struct rail_profile *p = profile_of_stair(s);

	if (!p)
		return reading_without(s, "there is no rail");
	if (of == OF_ROUND && p->diameter <= 0)
		return reading_not_applicable("the rail is not round");
	if (of == OF_NOT_ROUND && p->diameter > 0)
		return reading_not_applicable("the rail is round");
	return reading_of(size(p),
		handrail_of(s).side == ON_THE_RIGHT ? "right rail, in section"
						    : "left rail, in section");
}

static double diameter(const struct rail_profile *p)
{
	return p->diameter;
}

static double perimeter(const struct rail_profile *p)
{
	return p->perimeter;
}

static double largest(const struct rail_profile *p)
{
	return p->largest;
}

static double least_across(const struct rail_profile *p)
{
	return fmin(p->width, p->depth);
}

static double edge_radius(const struct rail_profile *p)
{
	return p->edge_radius;
}

static struct reading rail_diameter(const struct survey *s)
{
	return of_profile(s, OF_ROUND, diameter);
}

static struct reading rail_perimeter(const struct survey *s)
{
	return of_profile(s, OF_NOT_ROUND, perimeter);
}

static struct reading rail_across(const struct survey *s)
{
	return of_profile(s, OF_NOT_ROUND, largest);
}

static struct reading rail_least_across(const struct survey *s)
{
	return of_profile(s, OF_NOT_ROUND, least_across);
}

static struct reading rail_edge(const struct survey *s)
{
	return of_profile(s, OF_NOT_ROUND, edge_radius);
}

/* ---- the recess of a large rail ---- */

static double recess_start(const struct rail_profile *p)
{
	return rail_recess_at_least(p, FINGER_RECESS).start;
}

static double recess_depth(const struct rail_profile *p)
{
	return p->recess.depth;
}

/* Where no recess is as deep, its levels are the underside: never within what is asked. */
static double recess_within(const struct rail_profile *p)
{
	struct rail_recess r = rail_recess_at_least(p, FINGER_RECESS);

	return r.from < r.to ? r.from - r.start : p->depth;
}

static double recess_height(const struct rail_profile *p)
{
	struct rail_recess r = rail_recess_at_least(p, FINGER_RECESS);

	return r.to - r.from;
}

static double recess_reach(const struct rail_profile *p)
{
	struct rail_recess r = rail_recess_at_least(p, FINGER_RECESS);

	return r.from < r.to ? r.to : 0;
}

static double width_above(const struct rail_profile *p)
{
	return p->width;
}

static struct reading rail_recess_start(const struct survey *s)
{
	return of_profile(s, OF_ANY, recess_start);
}

static struct reading rail_recess_depth(const struct survey *s)
{
	return of_profile(s, OF_ANY, recess_depth);
}

static struct reading rail_recess_within(const struct survey *s)
{
	return of_profile(s, OF_ANY, recess_within);
}

static struct reading rail_recess_height(const struct survey *s)
{
	return of_profile(s, OF_ANY, recess_height);
}

static struct reading rail_recess_reach(const struct survey *s)
{
	return of_profile(s, OF_ANY, recess_reach);
}

static struct reading rail_recess_width(const struct survey *s)
{
	return of_profile(s, OF_ANY, width_above);
}

static struct mend mend_profile(const struct survey *s, struct shortfall f)
{
	return mend_said(
		arena_printf(s->arena, "another profile of rail, or other sizes: %s %s here",
			survey_say(s, fabs(f.by)), f.by > 0 ? "more" : "less"));
}

const struct gauge gauges_of_grip[] = {
	{ "rail_diameter", "diameter of a round rail", GAUGE_LENGTH, rail_diameter, mend_profile,
		"rail.width" },
	{ "rail_perimeter", "perimeter of the rail", GAUGE_LENGTH, rail_perimeter, mend_profile,
		"rail.profile" },
	{ "rail_across", "longest measure across the rail", GAUGE_LENGTH, rail_across, mend_profile,
		"rail.width" },
	{ "rail_least_across", "least measure across the rail", GAUGE_LENGTH, rail_least_across,
		mend_profile, "rail.depth" },
	{ "rail_edge", "smallest radius of the rail's edges", GAUGE_LENGTH, rail_edge, mend_profile,
		"rail.edge_radius" },
	{ "rail_recess_start", "top of the rail to its recesses", GAUGE_LENGTH, rail_recess_start,
		mend_profile, "rail.profile" },
	{ "rail_recess_depth", "depth of the rail's recesses", GAUGE_LENGTH, rail_recess_depth,
		mend_profile, "rail.recess" },
	{ "rail_recess_within", "widest part to a recess 5/16\" deep", GAUGE_LENGTH,
		rail_recess_within, mend_profile, "rail.recess" },
	{ "rail_recess_height", "height of the recess, 5/16\" deep", GAUGE_LENGTH,
		rail_recess_height, mend_profile, "rail.recess" },
	{ "rail_recess_reach", "top of the rail to the foot of its recesses", GAUGE_LENGTH,
		rail_recess_reach, mend_profile, "rail.recess" },
	{ "rail_recess_width", "width of the rail over its recesses", GAUGE_LENGTH,
		rail_recess_width, mend_profile, "rail.width" },
	{ 0 },
};
