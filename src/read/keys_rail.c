/*
 * The keys of the rail: common practice, but where another source is named.
 */
#include <math.h>

#include "read/keys_wood.h"

static const struct choice sides[] = {
	{ "right", ON_THE_RIGHT },
	{ "left", ON_THE_LEFT },
	{ 0 },
};

static const struct choice directions[] = {
	{ "on", RUN_ON },
	{ "back", RUN_BACK },
	{ "out", RUN_OUT },
	{ "across", RUN_ACROSS },
	{ 0 },
};

static const struct choice run_ends[] = {
	{ "newel", RUN_END_NEWEL },
	{ "wall", RUN_END_WALL },
	{ 0 },
};

static const struct field level_run[] = {
	{ FIELD_CHOICE, "side", LANDS(job_level_run, side), .choices = sides, .required = true,
		.help = "the side at whose head the chain of level runs begins, going up" },
	{ FIELD_CHOICE, "direction", LANDS(job_level_run, direction), .choices = directions,
		.required = true,
		.help = "on into the floor, back over the flight, out from the stair, or across to "
			"its other side" },
	{ FIELD_LENGTH, "length", LANDS(job_level_run, length), .least = 100, .most = 20000,
		.required = true, .help = "length of its rail, newel to newel" },
	/* IRC 2018 R312.1.2: 36 in; Approved Document K (2013) diagram 3.1, from memory: 900 mm in
	 * a dwelling. */
	{ FIELD_LENGTH, "height", LANDS(job_level_run, height), .least = 300, .most = 1500,
		.usual = "36\"", .usual_mm = "900 mm", .label = "guard height",
		.shown = SHOWN_ELEVATION, .help = "upper finished floor to top of rail" },
	{ FIELD_LENGTH, "from_edge", LANDS(job_level_run, from_edge), .least = 1, .most = 2000,
		.absent = "half a newel",
		.help = "opening's edge to the middle of the rail, where it begins at a newel of "
			"its own" },
	{ FIELD_CHOICE, "end", LANDS(job_level_run, end), .choices = run_ends, .usual = "newel",
		.help = "what takes its far end" },
	{ 0 },
};

static const struct group keys_level_run = { "rail.level_runs", sizeof(struct job_level_run),
	level_run, .keeps_node = true };

static const struct choice joints[] = {
	{ "by_room", RAIL_JOINT_BY_ROOM },
	{ "bolt", RAIL_JOINT_BOLT },
	{ "bolt_and_dowel", RAIL_JOINT_BOLT_AND_DOWEL },
	{ "dowels", RAIL_JOINT_DOWELS },
	{ "none", RAIL_JOINT_NONE },
	{ 0 },
};

/* A bolt of 5/16 by 3 1/2 in takes a pilot of 1/4 and a clearance hole of 3/8 in, its access hole
 * is 1 in wide and plugged: common practice; where the holes lie is from memory. */
static const struct field bolt[] = {
	{ FIELD_LENGTH, "length", LANDS(job_rail_bolt, length), .least = 30, .most = 300,
		.usual = "3 1/2\"", .usual_mm = "90 mm",
		.help = "length: half of it in the rail, half in the newel" },
	{ FIELD_LENGTH, "diameter", LANDS(job_rail_bolt, diameter), .least = 4, .most = 20,
		.usual = "5/16\"", .usual_mm = "8 mm", .help = "diameter" },
	{ FIELD_LENGTH, "pilot", LANDS(job_rail_bolt, pilot), .least = 2, .most = 20,
		.usual = "1/4\"", .usual_mm = "6 mm", .help = "pilot hole in the newel" },
	{ FIELD_LENGTH, "clearance", LANDS(job_rail_bolt, clearance), .least = 4, .most = 25,
		.usual = "3/8\"", .usual_mm = "10 mm", .help = "clearance hole in the rail" },
	{ FIELD_LENGTH, "height", LANDS(job_rail_bolt, height), .least = 5, .most = 150,
		.absent = "15/16\" or 24 mm, or as near to it as leaves wood round it",
		.help = "over the underside, square to the rail, half-way along the bolt's hole" },
	{ FIELD_LENGTH, "access", LANDS(job_rail_bolt, access), .least = 10, .most = 200,
		.usual = "1 3/8\"", .usual_mm = "35 mm",
		.help = "newel's face to the middle of the access hole in the underside" },
	{ FIELD_LENGTH, "access_diameter", LANDS(job_rail_bolt, access_diameter), .least = 10,
		.most = 50, .usual = "1\"", .usual_mm = "25 mm",
		.help = "width of the access hole, plugged afterwards" },
	{ 0 },
};

static const struct group keys_bolt = { "rail.bolt", sizeof(struct job_rail_bolt), bolt,
	.keeps_node = true };

/* 3/8 by 2 in: from memory. */
static const struct field dowel[] = {
	{ FIELD_LENGTH, "diameter", LANDS(job_dowel, diameter), .least = 4, .most = 30,
		.usual = "3/8\"", .usual_mm = "10 mm", .help = "diameter" },
	{ FIELD_LENGTH, "length", LANDS(job_dowel, length), .least = 15, .most = 200,
		.usual = "2\"", .usual_mm = "50 mm", .help = "length: half of it on each side" },
	{ 0 },
};

static const struct group keys_dowel = { "rail.dowel", sizeof(struct job_dowel), dowel,
	.keeps_node = true };

static const struct choice profiles[] = {
	{ "moulded", PROFILE_MOULDED },
	{ "flat_oval", PROFILE_FLAT_OVAL },
	{ "round", PROFILE_ROUND },
	{ "square", PROFILE_SQUARE },
	{ 0 },
};

static const char *profile_width(const void *group, enum units units)
{
	const struct job_rail *r = group;

	if (r->profile == PROFILE_ROUND)
		return units == UNITS_INCHES ? "2\"" : "50 mm";
	return units == UNITS_INCHES ? "2 1/4\"" : "57 mm";
}

/* A round rail and a flat oval one are as deep as leaves a flat for the usual baluster. */
static const char *profile_depth(const void *group, enum units units)
{
	const struct job_rail *r = group;

	switch (r->profile) {
	case PROFILE_ROUND: return units == UNITS_INCHES ? "1 11/16\"" : "43 mm";
	case PROFILE_FLAT_OVAL: return units == UNITS_INCHES ? "1 3/8\"" : "35 mm";
	case PROFILE_MOULDED:
	case PROFILE_SQUARE: break;
	}
	return units == UNITS_INCHES ? "2 3/8\"" : "60 mm";
}

/* The foot of a moulded rail stands out 3/5 of its recess from the neck and is a fifth of its depth
 * high (parts/profile_moulded.c): its edges take no more than leaves something of either. */
double edge_radius_most(enum rail_profile_kind profile, double recess, double depth)
{
	return profile == PROFILE_MOULDED ? fmin(0.45 * recess, 0.105 * depth) : INFINITY;
}

double edge_radius_usual(double most, enum units units)
{
	double usual = units == UNITS_INCHES ? MM_PER_INCH / 8 : 3;
	double finest = units == UNITS_INCHES ? MM_PER_INCH / 16 : 1;

	return most >= usual ? usual : finest * floor(most / finest);
}

static const char *edge_radius(const void *group, enum units units)
{
	static const char *const inches[] = { "0", "1/16\"", "1/8\"" };
	static const char *const millimetres[] = { "0", "1 mm", "2 mm", "3 mm" };
	const struct job_rail *r = group;
	double most = edge_radius_most(r->profile, r->recess, r->depth);
	double radius = edge_radius_usual(most, units);

	return units == UNITS_INCHES ? inches[(int)round(radius / MM_PER_INCH * 16)]
				     : millimetres[(int)round(radius)];
}

/* Newels stand as high as if they carried one. */
static bool has_rail_height(const struct job *job)
{
	return job_has_guard(job, GUARD_HERE) || has_newels(job);
}

static bool has_moulded_rail(const struct job *job)
{
	return has_guard(job) && job->rail.profile == PROFILE_MOULDED;
}

static const struct field rail[] = {
	{ FIELD_CHOICE, "profile", LANDS(job_rail, profile), .choices = profiles,
		.usual = "moulded", .help = "shape of its section" },
	{ FIELD_LENGTH, "width", LANDS(job_rail, width), .least = 20, .most = 200,
		.decide = profile_width, .absent = "2 1/4\" or 57 mm; round 2\" or 50 mm",
		.label = "rail width", .shown = SHOWN_ELEVATION, .matters = has_guard,
		.help = "width of its section" },
	{ FIELD_LENGTH, "depth", LANDS(job_rail, depth), .least = 20, .most = 200,
		.decide = profile_depth,
		.absent = "2 3/8\" or 60 mm; flat_oval 1 3/8\" or 35 mm, round 1 11/16\" or 43 mm",
		.label = "rail depth", .shown = SHOWN_ELEVATION, .matters = has_guard,
		.help = "depth of its section, square to its length" },
	/* IRC 2018 R311.7.8.5: at least 5/16 in. */
	{ FIELD_LENGTH, "recess", LANDS(job_rail, recess), .least = 3, .most = 40, .usual = "3/8\"",
		.usual_mm = "10 mm", .label = "finger recess of the rail",
		.matters = has_moulded_rail,
		.help = "depth of the finger recess of a moulded rail" },
	{ FIELD_LENGTH, "edge_radius", LANDS(job_rail, edge_radius), .most = 50,
		.decide = edge_radius,
		.absent = "1/8\" or 3 mm; less where a moulded foot is small",
		.label = "edges of the rail eased to", .matters = has_guard,
		.help = "rounding of its lower edges; square: of all four" },
	/* IRC 2018 R311.7.8.1: 34 to 38 in; Approved Document K: 900 to 1000 mm. */
	{ FIELD_LENGTH, "height", LANDS(job_rail, height), .least = 300, .most = 1500,
		.usual = "36\"", .usual_mm = "900 mm", .label = "rail height",
		.shown = SHOWN_ELEVATION, .matters = has_rail_height,
		.help = "plumb, nosing line to top of rail" },
	{ FIELD_CHOICE, "joint", LANDS(job_rail, joint), .choices = joints, .usual = "by_room",
		.help = "what fixes it to a newel; by_room: the first of bolt and dowel, bolt, "
			"smaller bolt, two dowels that leaves 6 mm of wood (1/4 in)" },
	{ FIELD_GROUP, "bolt", LANDS(job_rail, bolt), .group = &keys_bolt,
		.help = "the rail bolt and its holes" },
	{ FIELD_GROUP, "dowel", LANDS(job_rail, dowel), .group = &keys_dowel,
		.help = "dowels between rail and newel" },
	{ FIELD_GROUPS, "level_runs", LANDS(job_rail, level_runs),
		COUNTED(job_rail, level_run_count), .most = 12, .group = &keys_level_run,
		.absent = "none", .help = "level rails at the upper floor" },
	{ 0 },
};

const struct group keys_rail = { "rail", sizeof(struct job_rail), rail, .keeps_node = true };

static const struct field wall_rail[] = {
	{ FIELD_CHOICE, "side", LANDS(job_wall_rail, side), .choices = sides, .required = true,
		.help = "the wall it is on, going up" },
	{ FIELD_COUNT, "from_step", LANDS(job_wall_rail, from_step), .least = 1, .most = 200,
		.usual = "1", .help = "it begins plumb over the face of this step's riser" },
	{ FIELD_COUNT, "to_step", LANDS(job_wall_rail, to_step), .least = 1, .most = 200,
		.absent = "the last: it ends plumb over the top riser",
		.help = "it ends plumb over the face of the riser behind this step" },
	{ FIELD_LENGTH, "height", LANDS(job_wall_rail, height), .least = 300, .most = 1500,
		.absent = "as the rail of the balustrade",
		.help = "plumb, nosing line to top of rail" },
	/* IRC 2018 R311.7.8.3: at least 1 1/2 in; 1 7/8 is common practice. */
	{ FIELD_LENGTH, "clearance", LANDS(job_wall_rail, clearance), .least = 25, .most = 200,
		.usual = "1 7/8\"", .usual_mm = "48 mm", .help = "finished wall to rail" },
	{ FIELD_CHOICE, "profile", LANDS(job_wall_rail, profile), .choices = profiles,
		.absent = "as the rail of the balustrade",
		.help = "shape of its section; with width and depth" },
	{ FIELD_LENGTH, "width", LANDS(job_wall_rail, width), .least = 20, .most = 200,
		.absent = "as the rail of the balustrade; round: 1 5/8\" or 42 mm",
		.help = "width of its section" },
	{ FIELD_LENGTH, "depth", LANDS(job_wall_rail, depth), .least = 20, .most = 200,
		.absent = "as the rail of the balustrade; flat_oval: 1 3/8\" or 35 mm, round: as "
			  "wide",
		.help = "depth of its section, square to its length" },
	{ FIELD_LENGTH, "recess", LANDS(job_wall_rail, recess), .least = 3, .most = 40,
		.usual = "3/8\"", .usual_mm = "10 mm",
		.help = "depth of the finger recess of a moulded rail" },
	{ FIELD_LENGTH, "edge_radius", LANDS(job_wall_rail, edge_radius), .most = 50,
		.absent = "1/8\" or 3 mm; less where a moulded foot is small",
		.help = "rounding of its lower edges; square: of all four" },
	/* From memory: at most 48 in apart, within 12 in of an end; the arm 1 1/2 in under the
	 * rail, so that a hand passes. */
	{ FIELD_LENGTH, "bracket_spacing", LANDS(job_wall_rail, bracket_spacing), .least = 200,
		.most = 3000, .usual = "48\"", .usual_mm = "1200 mm",
		.help = "brackets apart at most, along the rail" },
	{ FIELD_LENGTH, "bracket_from_end", LANDS(job_wall_rail, bracket_from_end), .least = 100,
		.most = 1500, .usual = "12\"", .usual_mm = "300 mm",
		.help = "end of the rail to the first bracket at most" },
	{ FIELD_LENGTH, "bracket_drop", LANDS(job_wall_rail, bracket_drop), .least = 10,
		.most = 150, .usual = "1 1/2\"", .usual_mm = "38 mm",
		.help = "underside of the rail down to the bracket's arm" },
	{ 0 },
};

const struct group keys_wall_rail = { "wall_rails", sizeof(struct job_wall_rail), wall_rail,
	.keeps_node = true };
