/*
 * The keys of the newels: common practice, but where another source is named.
 */
#include "read/keys_wood.h"

static const struct field newels[] = {
	{ FIELD_LENGTH, "section", LANDS(job_newels, section), .least = 30, .most = 400,
		.usual = "3 1/2\"", .usual_mm = "90 mm", .label = "newels, square",
		.shown = SHOWN_PLAN | SHOWN_ELEVATION, .matters = has_newels,
		.help = "side of the square post" },
	{ FIELD_LENGTH, "above_rail", LANDS(job_newels, above_rail), .most = 600, .usual = "3\"",
		.usual_mm = "75 mm", .label = "newel top over the rail", .shown = SHOWN_ELEVATION,
		.matters = has_newels,
		.help = "top of the newel over the top of the rail that meets it" },
	{ FIELD_YES_NO, "bottom", LANDS(job_newels, bottom), .usual = "yes",
		.matters = has_open_side, .help = "is there a newel at the bottom of the rail?" },
	{ FIELD_YES_NO, "top", LANDS(job_newels, top), .usual = "yes", .matters = has_open_side,
		.help = "is there a newel at the top of the rail?" },
	{ 0 },
};

const struct group keys_newels = { "newels", sizeof(struct job_newels), newels,
	.keeps_node = true };
