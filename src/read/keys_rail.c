/*
 * The keys of the rail: common practice, but where another source is named.
 */
#include "read/keys_wood.h"

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
	{ 0 },
};

const struct group keys_rail = { "rail", sizeof(struct job_rail), rail, .keeps_node = true };
