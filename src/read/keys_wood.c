/*
 * The keys of the wood: stringers, treads, risers, balustrade, material.
 */
#include "read/keys_table.h"

static bool side_is_open(const struct job_side *side)
{
	return side->kind == SIDE_OPEN;
}

int job_open_sides(const struct job *job)
{
	return side_is_open(&job->stair.left) + side_is_open(&job->stair.right);
}

static bool has_open_side(const struct job *job)
{
	return job_open_sides(job) > 0;
}

static bool has_wall_side(const struct job *job)
{
	return job_open_sides(job) < 2;
}

static bool uses_stringer(const struct job *job, enum stringer_kind kind)
{
	return (has_wall_side(job) && job->stringers.wall.kind == kind) ||
		(has_open_side(job) && job->stringers.open.kind == kind);
}

static bool has_housed(const struct job *job)
{
	return uses_stringer(job, STRINGER_HOUSED);
}

static bool has_carriages(const struct job *job)
{
	return job_carriages(job) > 0;
}

static bool has_spaced_carriages(const struct job *job)
{
	return has_carriages(job) && job->stringers.middle_count < 0;
}

static bool has_cut(const struct job *job)
{
	return has_carriages(job) || uses_stringer(job, STRINGER_SAWTOOTH) ||
		uses_stringer(job, STRINGER_MITRED);
}

static bool has_wall_carriage(const struct job *job)
{
	return has_wall_side(job) && job->stringers.wall.kind == STRINGER_SAWTOOTH;
}

static bool has_returns(const struct job *job)
{
	return has_open_side(job) && job->stringers.open.kind != STRINGER_HOUSED;
}

static bool has_newels(const struct job *job)
{
	return has_open_side(job) && (job->newels.bottom || job->newels.top);
}

static bool has_boards(const struct job *job)
{
	return job->risers.kind == RISER_BOARD;
}

static const struct choice stringer_kinds[] = {
	{ "sawtooth", STRINGER_SAWTOOTH },
	{ "mitred", STRINGER_MITRED },
	{ "housed", STRINGER_HOUSED },
	{ 0 },
};

/* American Softwood Lumber Standard PS 20, dry: nominal 2 is 1 1/2, nominal 1 1/2 is 1 1/4.
 * Millimetres: common practice. */
static const char *stringer_thickness(const void *group, enum units units)
{
	const struct job_stringer *s = group;
	bool rough = s->kind == STRINGER_SAWTOOTH;

	if (units == UNITS_INCHES)
		return rough ? "1 1/2\"" : "1 1/4\"";
	return rough ? "45 mm" : "30 mm";
}

static const char thickness_absent[] =
	"1 1/2\" or 45 mm when sawtooth, 1 1/4\" or 30 mm when mitred or housed";
static const char width_help[] = "width of the plank";
static const char width_absent[] = "the narrowest on offer that leaves the throat or the margin";

static const struct field wall_stringer[] = {
	{ FIELD_CHOICE, "kind", LANDS(job_stringer, kind), .choices = stringer_kinds,
		.usual = "sawtooth", .label = "stringer at the wall", .shown = SHOWN_STRINGER,
		.matters = has_wall_side, .help = "kind of stringer" },
	{ FIELD_LENGTH, "thickness", LANDS(job_stringer, thickness), .least = 18, .most = 120,
		.decide = stringer_thickness, .absent = thickness_absent,
		.label = "thickness of the wall stringer", .shown = SHOWN_STRINGER,
		.matters = has_wall_side, .help = "thickness of the plank" },
	{ FIELD_LENGTH, "width", LANDS(job_stringer, width), .least = 90, .most = 1000,
		.help = width_help, .absent = width_absent },
	{ 0 },
};

static const struct field open_stringer[] = {
	{ FIELD_CHOICE, "kind", LANDS(job_stringer, kind), .choices = stringer_kinds,
		.usual = "mitred", .label = "stringer at the open side", .shown = SHOWN_STRINGER,
		.matters = has_open_side, .help = "kind of stringer" },
	{ FIELD_LENGTH, "thickness", LANDS(job_stringer, thickness), .least = 18, .most = 120,
		.decide = stringer_thickness, .absent = thickness_absent,
		.label = "thickness of the open stringer", .shown = SHOWN_STRINGER,
		.matters = has_open_side, .help = "thickness of the plank" },
	{ FIELD_LENGTH, "width", LANDS(job_stringer, width), .least = 90, .most = 1000,
		.help = width_help, .absent = width_absent },
	{ 0 },
};

static const struct field middle_stringer[] = {
	{ FIELD_LENGTH, "thickness", LANDS(job_stringer, thickness), .least = 18, .most = 120,
		.decide = stringer_thickness, .absent = "1 1/2\" or 45 mm",
		.label = "thickness of the middle carriages", .shown = SHOWN_STRINGER,
		.matters = has_carriages, .help = "thickness of the plank" },
	{ FIELD_LENGTH, "width", LANDS(job_stringer, width), .least = 90, .most = 1000,
		.help = width_help, .absent = width_absent },
	{ 0 },
};

static const struct group keys_wall_stringer = { "stringers.wall", sizeof(struct job_stringer),
	wall_stringer, .shorthand = "kind", .keeps_node = true };
static const struct group keys_open_stringer = { "stringers.open", sizeof(struct job_stringer),
	open_stringer, .shorthand = "kind", .keeps_node = true };
static const struct group keys_middle_stringer = { "stringers.middle", sizeof(struct job_stringer),
	middle_stringer, .instead = "how many there are is said by middle_count",
	.keeps_node = true };

static const struct field thrust_block[] = {
	{ FIELD_LENGTH, "thickness", LANDS(job_stringers, block_thickness), .required = true,
		.least = 18, .most = 100, .help = "height of the notch in the foot" },
	{ FIELD_LENGTH, "width", LANDS(job_stringers, block_width), .required = true, .least = 30,
		.most = 300, .help = "length of the notch, along the floor" },
	{ 0 },
};

/* Lands in the stringers themselves. */
static const struct group keys_thrust_block = { "stringers.thrust_block",
	sizeof(struct job_stringers), thrust_block, .keeps_node = false };

static const struct choice feet[] = {
	{ "structural_floor", FOOT_STRUCTURAL },
	{ "finished_floor", FOOT_FINISHED },
	{ 0 },
};

static const struct choice heads[] = {
	{ "below_floor", HEAD_BELOW_FLOOR },
	{ "flush", HEAD_FLUSH },
	{ 0 },
};

static const struct field stringers[] = {
	{ FIELD_GROUP, "wall", LANDS(job_stringers, wall), .group = &keys_wall_stringer,
		.help = "stringer along a wall" },
	{ FIELD_GROUP, "open", LANDS(job_stringers, open), .group = &keys_open_stringer,
		.help = "stringer along an open side" },
	{ FIELD_GROUP, "middle", LANDS(job_stringers, middle), .group = &keys_middle_stringer,
		.help = "rough carriages between them" },
	{ FIELD_COUNT, "middle_count", LANDS(job_stringers, middle_count), .most = 20,
		.help = "how many carriages stand between the outer two", .absent = "by spacing" },
	/* Prescriptive deck guide DCA 6 for 2-by treads: 18 in, from memory. Millimetres: common
	 * practice. */
	{ FIELD_LENGTH, "spacing", LANDS(job_stringers, spacing), .least = 150, .most = 1500,
		.usual = "18\"", .usual_mm = "450 mm", .label = "spacing of carriages, at most",
		.shown = SHOWN_STRINGER, .matters = has_spaced_carriages,
		.help = "most, centre to centre of carriages" },
	/* Room for the wall board and a skirt behind the carriage: common practice. */
	{ FIELD_LENGTH, "wall_gap", LANDS(job_stringers, wall_gap), .most = 300, .usual = "1 1/2\"",
		.usual_mm = "38 mm", .label = "wall to carriage", .shown = SHOWN_PLAN,
		.matters = has_wall_carriage,
		.help = "finished wall to the outer face of a sawtooth carriage" },
	/* DCA 6, from memory: 5 in; NBC 9.8.9.4 asks 90 mm, so this is on the safe side. */
	{ FIELD_LENGTH, "least_throat", LANDS(job_stringers, least_throat), .least = 20,
		.most = 600, .usual = "5\"", .usual_mm = "125 mm", .label = "least throat",
		.shown = SHOWN_STRINGER, .matters = has_cut,
		.help = "wood left under the notches, square to the pitch" },
	{ FIELD_CHOICE, "foot", LANDS(job_stringers, foot), .choices = feet,
		.usual = "structural_floor", .label = "stringers stand on the",
		.shown = SHOWN_STRINGER, .help = "what the stringers stand on" },
	{ FIELD_CHOICE, "head", LANDS(job_stringers, head), .choices = heads,
		.usual = "below_floor", .label = "last tread", .shown = SHOWN_STRINGER,
		.help = "last tread one rise below the upper floor, or flush with it" },
	{ FIELD_GROUP, "thrust_block", .at = 0, .group = &keys_thrust_block,
		.help = "block on the floor, let into the foot", .absent = "no notch" },
	/* 2 in is US practice from memory; a carpentry handbook gauges the nosing line 40 mm below
	 * the top edge (trade school lesson: 30 to 40). */
	{ FIELD_LENGTH, "margin", LANDS(job_stringers, margin), .least = 10, .most = 200,
		.usual = "2\"", .usual_mm = "40 mm", .label = "margin over the nosing line",
		.shown = SHOWN_STRINGER, .matters = has_housed,
		.help = "housed: nosing line to top edge, square to the pitch" },
	/* W. H. Wood 1894: half an inch. */
	{ FIELD_LENGTH, "housing_depth", LANDS(job_stringers, housing_depth), .least = 3,
		.most = 40, .usual = "1/2\"", .usual_mm = "12 mm", .label = "depth of housings",
		.shown = SHOWN_STRINGER, .matters = has_housed,
		.help = "housed: depth of grooves" },
	/* Between 1 in 10 and 1 in 16: common practice. */
	{ FIELD_NUMBER, "wedge_taper", LANDS(job_stringers, wedge_taper), .least = 6, .most = 30,
		.usual = "12", .label = "wedges taper 1 in", .shown = SHOWN_STRINGER,
		.matters = has_housed, .help = "housed: 12 means that wedges taper 1 in 12" },
	/* PS 20 dressed widths of nominal 6 to 14; millimetres: common practice. */
	{ FIELD_LENGTHS, "stock_widths", LANDS(job_stringers, stock_widths),
		COUNTED(job_stringers, stock_width_count), .least = 50, .most = 1500,
		.usual = "5 1/2\", 7 1/4\", 9 1/4\", 11 1/4\", 13 1/4\"",
		.usual_mm = "145 mm, 170 mm, 195 mm, 220 mm, 245 mm, 270 mm, 295 mm",
		.label = "planks on offer, wide", .shown = SHOWN_STRINGER,
		.help = "widths of plank on offer" },
	/* Common practice. */
	{ FIELD_LENGTHS, "stock_lengths", LANDS(job_stringers, stock_lengths),
		COUNTED(job_stringers, stock_length_count), .least = 500, .most = 30000,
		.usual = "8', 10', 12', 14', 16', 18', 20'",
		.usual_mm = "2.4 m, 2.7 m, 3 m, 3.3 m, 3.6 m, 3.9 m, 4.2 m, 4.5 m, 4.8 m, 5.1 m, "
			    "5.4 m, 5.7 m, 6 m",
		.label = "planks on offer, long", .shown = SHOWN_STRINGER,
		.help = "lengths of plank on offer" },
	{ FIELD_LENGTH, "end_trim", LANDS(job_stringers, end_trim), .most = 300, .usual = "1\"",
		.usual_mm = "25 mm", .label = "trim at each end of a plank",
		.shown = SHOWN_STRINGER, .help = "waste allowed at each end of a plank" },
	{ 0 },
};

const struct group keys_stringers = { "stringers", sizeof(struct job_stringers), stringers,
	.keeps_node = true };

static const struct field treads[] = {
	/* Hardwood 5/4 dressed is 1 1/16 in or 27 mm. */
	{ FIELD_LENGTH, "thickness", LANDS(job_treads, thickness), .least = 12, .most = 120,
		.usual = "1 1/16\"", .usual_mm = "27 mm", .label = "tread thickness",
		.shown = SHOWN_ELEVATION | SHOWN_STRINGER, .help = "thickness" },
	/* IRC 2018 R311.7.5.3: 3/4 to 1 1/4 in. */
	{ FIELD_LENGTH, "nosing", LANDS(job_treads, nosing), .most = 80, .usual = "1 1/8\"",
		.usual_mm = "25 mm", .label = "nosing projection",
		.shown = SHOWN_PLAN | SHOWN_ELEVATION, .help = "projection beyond the riser face" },
	/* IRC 2018 R311.7.5.3, from memory: at most 9/16 in. */
	{ FIELD_LENGTH, "nosing_radius", LANDS(job_treads, nosing_radius), .most = 60,
		.usual = "1/2\"", .usual_mm = "12 mm", .label = "nosing radius",
		.shown = SHOWN_ELEVATION,
		.help = "rounding of both edges, at most half the thickness" },
	/* Common practice: as far as the front nosing and a little. */
	{ FIELD_LENGTH, "side_overhang", LANDS(job_treads, side_overhang), .most = 80,
		.usual = "1 1/4\"", .usual_mm = "30 mm", .label = "overhang at the open side",
		.shown = SHOWN_PLAN, .matters = has_returns,
		.help = "projection beyond the outer face of an open stringer" },
	{ FIELD_LENGTH, "strip_width", LANDS(job_treads, strip_width), .least = 10, .most = 200,
		.like = "side_overhang", .label = "width of nosing strips", .shown = SHOWN_PLAN,
		.help = "width of front and return strips" },
	/* Griffith, Carpentry (1916): the return runs on by as much as the nosing. */
	{ FIELD_LENGTH, "return_past", LANDS(job_treads, return_past), .most = 200,
		.like = "nosing", .label = "return past the riser", .shown = SHOWN_PLAN,
		.matters = has_returns,
		.help = "how far the return runs on behind the face of the riser above" },
	/* Common practice. */
	{ FIELD_LENGTH, "scribe", LANDS(job_treads, scribe), .most = 30, .usual = "1/8\"",
		.usual_mm = "3 mm", .label = "scribing allowance at walls", .shown = SHOWN_PLAN,
		.matters = has_wall_side, .help = "less than to the wall" },
	/* Common practice. */
	{ FIELD_LENGTH, "landing_bearing", LANDS(job_treads, landing_bearing), .least = 10,
		.most = 400, .usual = "3 1/2\"", .usual_mm = "90 mm",
		.label = "nosing piece behind the top riser", .shown = SHOWN_ELEVATION,
		.help = "nosing piece at the upper floor: width behind the top riser's back" },
	{ 0 },
};

const struct group keys_treads = { "treads", sizeof(struct job_treads), treads,
	.keeps_node = true };

static const struct choice riser_kinds[] = {
	{ "board", RISER_BOARD },
	{ "open", RISER_OPEN },
	{ 0 },
};

/* Common practice. */
static const char *riser_thickness(const void *group, enum units units)
{
	const struct job_risers *r = group;

	if (r->kind == RISER_OPEN)
		return NULL;
	return units == UNITS_INCHES ? "3/4\"" : "18 mm";
}

static const struct field risers[] = {
	{ FIELD_CHOICE, "kind", LANDS(job_risers, kind), .choices = riser_kinds, .usual = "board",
		.help = "riser boards, or open between the treads" },
	{ FIELD_LENGTH, "thickness", LANDS(job_risers, thickness), .least = 6, .most = 60,
		.decide = riser_thickness, .absent = "3/4\" or 18 mm; none when open",
		.label = "riser thickness", .shown = SHOWN_ELEVATION | SHOWN_STRINGER,
		.matters = has_boards, .help = "thickness of the boards" },
	{ 0 },
};

const struct group keys_risers = { "risers", sizeof(struct job_risers), risers, .shorthand = "kind",
	.keeps_node = true };

/* Newels, rail and balusters: common practice, but where another source is named. */
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
