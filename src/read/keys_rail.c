/*
 * The keys of the rail: common practice, but where another source is named.
 */
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

static const struct field rail[] = {
	{ FIELD_LENGTH, "width", LANDS(job_rail, width), .least = 20, .most = 200,
		.usual = "2 1/4\"", .usual_mm = "57 mm", .label = "rail width",
		.shown = SHOWN_ELEVATION, .matters = has_open_side,
		.help = "width of its section" },
	{ FIELD_LENGTH, "depth", LANDS(job_rail, depth), .least = 20, .most = 200,
		.usual = "2 3/8\"", .usual_mm = "60 mm", .label = "rail depth",
		.shown = SHOWN_ELEVATION, .matters = has_open_side,
		.help = "depth of its section, square to its length" },
	/* IRC 2018 R311.7.8.1: 34 to 38 in; Approved Document K: 900 to 1000 mm. */
	{ FIELD_LENGTH, "height", LANDS(job_rail, height), .least = 300, .most = 1500,
		.usual = "36\"", .usual_mm = "900 mm", .label = "rail height",
		.shown = SHOWN_ELEVATION, .matters = has_open_side,
		.help = "plumb, nosing line to top of rail" },
	{ FIELD_GROUPS, "level_runs", LANDS(job_rail, level_runs),
		COUNTED(job_rail, level_run_count), .group = &keys_level_run, .absent = "none",
		.help = "level rails at the upper floor, from the head of the stair on" },
	{ 0 },
};

const struct group keys_rail = { "rail", sizeof(struct job_rail), rail, .keeps_node = true };
