/*
 * The keys of species and finish.
 */
#include "read/keys_wood.h"

static bool has_balustrade(const struct job *job)
{
	return has_newels(job) || has_guard(job);
}

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
		.matters = has_balustrade,
		.help = "species of newels, rail and balusters, where the next three are not "
			"said" },
	{ FIELD_TEXT, "newels", LANDS(job_material, newels), .most = 40, .like = "balustrade",
		.help = "species of newels and caps" },
	{ FIELD_TEXT, "rail", LANDS(job_material, rail), .most = 40, .like = "balustrade",
		.help = "species of rails, along walls too" },
	{ FIELD_TEXT, "balusters", LANDS(job_material, balusters), .most = 40, .like = "balustrade",
		.help = "species of balusters, bars and what holds panels" },
	{ FIELD_TEXT, "panels", LANDS(job_material, panels), .most = 40, .like = "balusters",
		.help = "what panels of the infill are cut from" },
	{ FIELD_TEXT, "carriages", LANDS(job_material, carriages), .most = 40, .like = "stringers",
		.help = "species of sawtooth stringers at walls and between the outer two" },
	{ FIELD_TEXT, "skirts", LANDS(job_material, skirts), .most = 40, .like = "risers",
		.help = "species of skirt boards" },
	{ FIELD_TEXT, "riser_bars", LANDS(job_material, riser_bars), .most = 40, .like = "treads",
		.help = "species of the bars under open treads" },
	{ FIELD_TEXT, "mouldings", LANDS(job_material, mouldings), .most = 40, .like = "treads",
		.help = "species of mouldings at the treads" },
	{ FIELD_TEXT, "finish", LANDS(job_material, finish), .most = 60, .usual = "as agreed",
		.label = "finish", .shown = SHOWN_ELEVATION, .help = "finish" },
	{ 0 },
};

const struct group keys_material = { "material", sizeof(struct job_material), material,
	.keeps_node = true };
