/*
 * The keys of the newels: common practice, but where another source is named.
 */
#include "read/keys_wood.h"

static bool has_cap(const struct job *job)
{
	return has_newels(job) && job->newels.cap.kind != CAP_NONE;
}

static bool has_pyramid(const struct job *job)
{
	return has_newels(job) && job->newels.cap.kind == CAP_PYRAMID;
}

static bool has_sloped_pyramid(const struct job *job)
{
	return has_pyramid(job) && job->newels.cap.rise <= 0;
}

static bool has_panels(const struct job *job)
{
	return has_newels(job) && job->newels.build == NEWEL_PANELLED;
}

static const struct choice builds[] = {
	{ "solid", NEWEL_SOLID },
	{ "glued", NEWEL_GLUED },
	{ "panelled", NEWEL_PANELLED },
	{ 0 },
};

static const struct choice floor_fixings[] = {
	{ "bolt", FLOOR_FIXING_BOLT },
	{ "plate", FLOOR_FIXING_PLATE },
	{ "none", FLOOR_FIXING_NONE },
	{ 0 },
};

static const struct field panel_rail[] = {
	{ FIELD_NUMBER, "at", LANDS(job_panel_rail, at), .most = 1, .required = true,
		.help = "where between the foot, 0, and the top, 1" },
	{ FIELD_LENGTH, "height", LANDS(job_panel_rail, height), .least = 10, .most = 600,
		.usual = "2 1/2\"", .usual_mm = "65 mm", .help = "height of the cross rail" },
	{ 0 },
};

static const struct group keys_panel_rail = { "newels.panels.rails", sizeof(struct job_panel_rail),
	panel_rail, .keeps_node = true };

static const struct field panels[] = {
	{ FIELD_LENGTH, "strip_width", LANDS(job_newel_panels, strip_width), .least = 10,
		.most = 150, .usual = "1\"", .usual_mm = "25 mm",
		.help = "corner strips: width on the face, over the mitre" },
	{ FIELD_LENGTH, "strip_thickness", LANDS(job_newel_panels, strip_thickness), .least = 5,
		.most = 50, .usual = "1/2\"", .usual_mm = "12 mm",
		.help = "strips and cross rails: thickness, and so the depth of the panels" },
	{ FIELD_LENGTH, "arris", LANDS(job_newel_panels, arris), .most = 20, .usual = "1/8\"",
		.usual_mm = "3 mm", .help = "chamfer on the core's corners, so that strips seat" },
	{ FIELD_GROUPS, "rails", LANDS(job_newel_panels, rails),
		COUNTED(job_newel_panels, rail_count), .group = &keys_panel_rail, .most = 12,
		.absent = "foot and top, twice as high as strips are wide",
		.help = "cross rails; where something meets a face is one too" },
	{ 0 },
};

static const struct group keys_panels = { "newels.panels", sizeof(struct job_newel_panels), panels,
	.keeps_node = true };

static const struct choice cap_kinds[] = {
	{ "none", CAP_NONE },
	{ "flat", CAP_FLAT },
	{ "chamfered", CAP_CHAMFERED },
	{ "pyramid", CAP_PYRAMID },
	{ 0 },
};

static const struct choice cap_builds[] = {
	{ "block", CAP_BLOCK },
	{ "mitred", CAP_MITRED },
	{ 0 },
};

static const struct choice caps_on[] = {
	{ "all", CAP_ON_ALL },
	{ "bottom", CAP_ON_BOTTOM },
	{ "top", CAP_ON_TOP },
	{ 0 },
};

static const struct field cap[] = {
	{ FIELD_CHOICE, "kind", LANDS(job_newel_cap, kind), .choices = cap_kinds, .usual = "none",
		.help = "shape of the cap" },
	{ FIELD_CHOICE, "build", LANDS(job_newel_cap, build), .choices = cap_builds,
		.usual = "block", .matters = has_pyramid,
		.help = "pyramid: sawn out of one block, or of four pieces mitred on a plate" },
	{ FIELD_CHOICE, "on", LANDS(job_newel_cap, on), .choices = caps_on, .usual = "all",
		.matters = has_cap, .help = "which newels have one" },
	{ FIELD_LENGTH, "overhang", LANDS(job_newel_cap, overhang), .most = 100, .usual = "1/2\"",
		.usual_mm = "12 mm", .label = "overhang of caps", .shown = SHOWN_ELEVATION,
		.matters = has_cap, .help = "beyond the post, all round" },
	{ FIELD_LENGTH, "thickness", LANDS(job_newel_cap, thickness), .least = 6, .most = 150,
		.usual = "3/4\"", .usual_mm = "18 mm", .label = "edge of caps",
		.shown = SHOWN_ELEVATION, .matters = has_cap,
		.help = "its square edge; under a mitred pyramid the plate" },
	{ FIELD_NUMBER, "slope", LANDS(job_newel_cap, slope_degrees), .least = 2, .most = 60,
		.usual = "20", .matters = has_sloped_pyramid,
		.help = "pyramid: its faces from level, degrees" },
	{ FIELD_LENGTH, "rise", LANDS(job_newel_cap, rise), .least = 2, .most = 400,
		.absent = "by the slope", .help = "pyramid: from the square edge up to the point" },
	{ FIELD_LENGTH, "shoulder", LANDS(job_newel_cap, shoulder), .most = 30, .usual = "1/8\"",
		.usual_mm = "3 mm", .matters = has_pyramid,
		.help = "pyramid of a block: ledge sawn round its foot, 0 for none" },
	{ FIELD_LENGTH, "chamfer", LANDS(job_newel_cap, chamfer), .least = 1, .most = 60,
		.usual = "1/4\"", .usual_mm = "6 mm",
		.help = "chamfered: both ways from the upper edge" },
	{ FIELD_LENGTH, "board", LANDS(job_newel_cap, board), .least = 5, .most = 50,
		.usual = "3/4\"", .usual_mm = "18 mm",
		.help = "mitred pyramid: thickness of its four pieces" },
	{ FIELD_LENGTH, "quarter_round", LANDS(job_newel_cap, quarter_round), .most = 50,
		.usual = "3/8\"", .usual_mm = "9 mm", .matters = has_cap,
		.help = "moulding round the post under the cap, 0 for none" },
	{ 0 },
};

static const struct group keys_cap = { "newels.cap", sizeof(struct job_newel_cap), cap,
	.shorthand = "kind", .keeps_node = true };

static const struct field newels[] = {
	{ FIELD_LENGTH, "section", LANDS(job_newels, section), .least = 30, .most = 400,
		.usual = "3 1/2\"", .usual_mm = "90 mm", .label = "newels, square",
		.shown = SHOWN_PLAN | SHOWN_ELEVATION, .matters = has_newels,
		.help = "side of the square post, panels over all" },
	{ FIELD_LENGTH, "above_rail", LANDS(job_newels, above_rail), .most = 600, .usual = "3\"",
		.usual_mm = "75 mm", .label = "newel top over the rail", .shown = SHOWN_ELEVATION,
		.matters = has_newels,
		.help = "top of the post, where a cap goes on, over the rail that meets it" },
	{ FIELD_YES_NO, "bottom", LANDS(job_newels, bottom), .usual = "yes",
		.matters = has_open_side, .help = "is there a newel at the bottom of the rail?" },
	{ FIELD_YES_NO, "top", LANDS(job_newels, top), .usual = "yes", .matters = has_open_side,
		.help = "is there a newel at the top of the rail?" },
	{ FIELD_CHOICE, "build", LANDS(job_newels, build), .choices = builds, .usual = "solid",
		.matters = has_newels, .help = "of one piece, of plies, or a core with panels" },
	/* 8/4 rough, surfaced on two sides: from memory. */
	{ FIELD_LENGTH, "ply_stock", LANDS(job_newels, ply_stock), .least = 12, .most = 150,
		.usual = "2\"", .usual_mm = "52 mm",
		.help = "glued newels, cores and thick caps: boards as bought" },
	{ FIELD_LENGTH, "ply_planed", LANDS(job_newels, ply_planed), .least = 10, .most = 150,
		.usual = "1 3/4\"", .usual_mm = "45 mm",
		.help = "and the most that they plane to" },
	{ FIELD_LENGTH, "let_in", LANDS(job_newels, let_in), .most = 140, .usual = "0\"",
		.usual_mm = "0 mm",
		.help = "how far bottom newels go into the floor that the stringers stand on" },
	{ FIELD_CHOICE, "floor_fixing", LANDS(job_newels, floor_fixing), .choices = floor_fixings,
		.usual = "bolt", .matters = has_newels,
		.help = "newels on a floor: bolt up the middle, or steel plate under the foot" },
	{ FIELD_GROUP, "panels", LANDS(job_newels, panels), .group = &keys_panels,
		.matters = has_panels, .help = "panelled newels" },
	{ FIELD_GROUP, "cap", LANDS(job_newels, cap), .group = &keys_cap, .help = "their caps" },
	{ 0 },
};

const struct group keys_newels = { "newels", sizeof(struct job_newels), newels,
	.keeps_node = true };
