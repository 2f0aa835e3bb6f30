/*
 * The keys of the floors before and behind the stair.
 */
#include "read/keys_table.h"

static const struct choice walls[] = {
	{ "right", LANDING_RIGHT },
	{ "left", LANDING_LEFT },
	{ "end", LANDING_END },
	{ 0 },
};

static const struct choice leaves[] = {
	{ "further", LEAF_FURTHER },
	{ "nearer", LEAF_NEARER },
	{ 0 },
};

static const struct choice ways[] = { { "in", DOOR_IN }, { "out", DOOR_OUT }, { 0 } };

static const struct field door[] = {
	{ FIELD_CHOICE, "wall", LANDS(job_door, wall), .choices = walls, .required = true,
		.help = "wall of the landing that it is in: right or left going up, or at its end, "
			"across from the stair" },
	{ FIELD_LENGTH, "hinge", LANDS(job_door, hinge), .required = true, .most = 20000,
		.help = "its hinge: from the riser's face in a side wall, from the landing's "
			"right-hand corner in the end wall" },
	{ FIELD_LENGTH, "leaf", LANDS(job_door, leaf), .required = true, .least = 300, .most = 2000,
		.help = "width of its leaf: the radius of its swing" },
	{ FIELD_CHOICE, "lies", LANDS(job_door, lies), .choices = leaves, .usual = "further",
		.help = "where the closed leaf lies: from the hinge on, or nearer to what the "
			"hinge is measured from" },
	{ FIELD_CHOICE, "opens", LANDS(job_door, opens), .choices = ways, .usual = "in",
		.help = "over the landing, or out of it" },
	{ 0 },
};

static const struct group keys_door = { "landings.doors", sizeof(struct job_door), door,
	.keeps_node = true };

static const struct field landing[] = {
	{ FIELD_LENGTH, "depth", LANDS(job_landing, depth), .least = 100, .most = 20000,
		.help = "clear floor in the direction of travel, from the riser's face",
		.absent = "not known" },
	{ FIELD_LENGTH, "width", LANDS(job_landing, width), .least = 100, .most = 20000,
		.help = "clear floor across", .absent = "not known" },
	{ FIELD_GROUPS, "doors", LANDS(job_landing, doors), COUNTED(job_landing, door_count),
		.most = 6, .group = &keys_door,
		.help = "doors near the stair; [] when there is none", .absent = "not known" },
	{ 0 },
};

static const struct group keys_foot = { "landings.foot", sizeof(struct job_landing), landing,
	.keeps_node = true };
static const struct group keys_head = { "landings.head", sizeof(struct job_landing), landing,
	.keeps_node = true };

static const struct field landings[] = {
	{ FIELD_GROUP, "foot", LANDS(job_landings, at[LANDING_FOOT]), .group = &keys_foot,
		.help = "before the first riser" },
	{ FIELD_GROUP, "head", LANDS(job_landings, at[LANDING_HEAD]), .group = &keys_head,
		.help = "behind the last riser" },
	{ 0 },
};

const struct group keys_landings = { "landings", sizeof(struct job_landings), landings,
	.keeps_node = true };
