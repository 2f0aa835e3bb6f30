/*
 * The keys of species and finish.
 */
#include "read/keys_wood.h"

static const struct field material[] = {
	{ FIELD_TEXT, "treads", LANDS(job_material, treads), .most = 40, .usual = "hardwood",
		.label = "treads in", .shown = SHOWN_ELEVATION, .help = "species of the treads" },
	{ FIELD_TEXT, "risers", LANDS(job_material, risers), .most = 40, .usual = "paint grade",
		.label = "risers in", .shown = SHOWN_ELEVATION, .matters = has_boards,
		.help = "species of the risers" },
	{ FIELD_TEXT, "stringers", LANDS(job_material, stringers), .most = 40,
		.usual = "structural softwood", .label = "stringers in", .shown = SHOWN_STRINGER,
		.help = "species of the stringers" },
	{ FIELD_TEXT, "balustrade", LANDS(job_material, balustrade), .most = 40,
		.usual = "hardwood", .label = "balustrade in", .shown = SHOWN_ELEVATION,
		.matters = has_open_side, .help = "species of newels, rail and balusters" },
	{ FIELD_TEXT, "finish", LANDS(job_material, finish), .most = 60, .usual = "as agreed",
		.label = "finish", .shown = SHOWN_ELEVATION, .help = "finish" },
	{ 0 },
};

const struct group keys_material = { "material", sizeof(struct job_material), material,
	.keeps_node = true };
