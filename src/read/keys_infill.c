/*
 * The keys of what fills the balustrade: common practice, but where another source is named.
 */
#include "read/keys_wood.h"

static const struct field balusters[] = {
	{ FIELD_LENGTH, "section", LANDS(job_balusters, section), .least = 8, .most = 150,
		.usual = "1 1/4\"", .usual_mm = "32 mm", .label = "balusters, square",
		.shown = SHOWN_PLAN | SHOWN_ELEVATION, .matters = has_open_side,
		.help = "side of the square baluster" },
	{ FIELD_COUNT, "per_tread", LANDS(job_balusters, per_tread), .least = 1, .most = 10,
		.help = "balusters on a tread", .absent = "by the largest gap" },
	/* A ball of 4 in must not pass (IRC 2018 R312.1.3; Approved Document K: 100 mm). */
	{ FIELD_LENGTH, "largest_gap", LANDS(job_balusters, largest_gap), .least = 20, .most = 500,
		.usual = "3 15/16\"", .usual_mm = "99 mm", .label = "largest gap between balusters",
		.shown = SHOWN_ELEVATION, .matters = has_open_side,
		.help = "largest clear gap between two balusters" },
	{ 0 },
};

const struct group keys_balusters = { "balusters", sizeof(struct job_balusters), balusters,
	.keeps_node = true };
