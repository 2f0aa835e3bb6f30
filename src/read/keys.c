/*
 * The keys of a job file but for those of the wood, which are in keys_stringers.c,
 * keys_treads.c and so on, one file a trade.
 *
 * Where a default comes from is said beside it.  Ranges only catch slips of
 * the pen; whether a stair is a good one is not their business.
 */
#include "read/keys_table.h"

static const struct choice units[] = {
	{ "inches", UNITS_INCHES },
	{ "millimetres", UNITS_MILLIMETRES },
	{ 0 },
};

static const struct field about[] = {
	{ FIELD_TEXT, "number", LANDS(job_about, number), .help = "job number" },
	{ FIELD_TEXT, "name", LANDS(job_about, name), .required = true,
		.help = "name of the job, for the title block" },
	{ FIELD_TEXT, "shop", LANDS(job_about, shop), .most = 60,
		.help = "the shop that makes the stair: its name" },
	{ FIELD_TEXT, "shop_address", LANDS(job_about, shop_address), .most = 120,
		.help = "address of the shop, for the client's set" },
	{ FIELD_TEXT, "client", LANDS(job_about, client), .help = "who the stair is for" },
	{ FIELD_TEXT, "site", LANDS(job_about, site), .help = "address of the house" },
	{ FIELD_TEXT, "drawn_by", LANDS(job_about, drawn_by), .help = "who draws it" },
	{ FIELD_DATE, "date", LANDS(job_about, date), .help = "date of issue" },
	{ FIELD_CHOICE, "units", LANDS(job_about, units), .choices = units, .usual = "inches",
		.help = "unit of a bare number, and of the drawings" },
	{ FIELD_COUNT, "fraction", LANDS(job_about, fraction), .usual = "16", .usual_mm = "1",
		.least = 1, .most = 64,
		.help = "finest graduation lettered: 8, 16, 32 or 64 to the inch; 1, 2 or 10 to "
			"the millimetre" },
	{ 0 },
};

static const struct group keys_about = { "job", sizeof(struct job_about), about,
	.keeps_node = true };

static const struct field revision[] = {
	{ FIELD_TEXT, "mark", LANDS(revision, mark), .required = true, .most = 4,
		.help = "letter or number of the revision" },
	{ FIELD_DATE, "date", LANDS(revision, date), .required = true, .help = "its date" },
	{ FIELD_TEXT, "by", LANDS(revision, by), .most = 20, .help = "who made it" },
	{ FIELD_TEXT, "text", LANDS(revision, text), .required = true, .help = "what changed" },
	{ 0 },
};

static const struct group keys_revision = { "revisions", sizeof(struct revision), revision,
	.keeps_node = true };

static const struct choice sizes[] = {
	{ "all", 0 },
	{ "total_rise", 1 },
	{ "structural_rise", 2 },
	{ "width", 3 },
	{ "total_run", 4 },
	{ "opening_length", 5 },
	{ "opening_width", 6 },
	{ "floor_thickness", 7 },
	{ "ceiling_height", 8 },
	{ "upper_ceiling_height", 9 },
	{ "foot_landing_depth", 10 },
	{ "foot_landing_width", 11 },
	{ "head_landing_depth", 12 },
	{ "head_landing_width", 13 },
	{ "notches", 14 },
	{ 0 },
};

static const struct field measured[] = {
	{ FIELD_TEXT, "by", LANDS(job_measured, by), .required = true,
		.help = "who measured in the house" },
	{ FIELD_DATE, "date", LANDS(job_measured, date), .required = true, .help = "and when" },
	{ FIELD_TEXTS, "sizes", LANDS(job_measured, sizes), COUNTED(job_measured, size_count),
		.choices = sizes, .required = true,
		.help = "what was measured; the other sizes are marked verify in field" },
	{ 0 },
};

static const struct group keys_measured = { "measured", sizeof(struct job_measured), measured,
	.keeps_node = true };

static const struct field floors[] = {
	{ FIELD_LENGTH, "total_rise", LANDS(job_floors, total_rise), .least = 150, .most = 40000,
		.help = "finished floor to finished floor",
		.absent = "structural_rise and both finishes are needed" },
	{ FIELD_LENGTH, "structural_rise", LANDS(job_floors, structural_rise), .least = 150,
		.most = 40000, .help = "structural floor to structural floor",
		.absent = "total_rise is needed" },
	{ FIELD_LENGTH, "lower_finish", LANDS(job_floors, lower_finish), .most = 400,
		.help = "build-up over the lower structural floor",
		.absent = "none, but needed with structural_rise" },
	{ FIELD_LENGTH, "upper_finish", LANDS(job_floors, upper_finish), .most = 400,
		.help = "build-up over the upper structural floor",
		.absent = "none, but needed with structural_rise" },
	{ 0 },
};

static const struct group keys_floors = { "floors", sizeof(struct job_floors), floors,
	.keeps_node = true };

static const struct choice opening_edges[] = {
	{ "right", 0 },
	{ "left", 1 },
	{ "foot", 2 },
	{ "head", 3 },
	{ 0 },
};

static const struct field opening[] = {
	{ FIELD_LENGTH, "length", LANDS(job_opening, length), .least = 200, .most = 60000,
		.help = "clear length of the floor opening, back from the upper header",
		.absent = "headroom is not checked" },
	{ FIELD_LENGTH, "width", LANDS(job_opening, width), .least = 200, .most = 20000,
		.help = "clear width of the floor opening", .absent = "the stair's width" },
	{ FIELD_LENGTH, "floor_thickness", LANDS(job_opening, floor_thickness), .least = 50,
		.most = 2000, .help = "finished floor above to finished ceiling below",
		.absent = "from ceiling_height" },
	{ FIELD_LENGTH, "ceiling_height", LANDS(job_opening, ceiling_height), .least = 500,
		.most = 40000, .help = "lower finished floor to its ceiling",
		.absent = "from floor_thickness" },
	{ FIELD_LENGTH, "upper_ceiling_height", LANDS(job_opening, upper_ceiling_height),
		.least = 500, .most = 40000, .help = "upper finished floor to its ceiling",
		.absent = "headroom is not checked there" },
	/* IRC 2018 R311.7.2: 6 ft 8 in; Approved Document K, DIN 18065: 2000 mm. */
	{ FIELD_LENGTH, "headroom", LANDS(job_opening, headroom), .least = 1000, .most = 4000,
		.usual = "80\"", .usual_mm = "2000 mm", .label = "headroom wanted",
		.shown = SHOWN_ELEVATION, .help = "headroom wanted, plumb from the nosing line" },
	{ FIELD_TEXTS, "walls", LANDS(job_opening, walls), COUNTED(job_opening, wall_count),
		.choices = opening_edges,
		.help = "its edges that a wall stands on in the upper floor: right and left going "
			"up, foot, head beside the stair; [] when none does",
		.absent = "not known, but for the walls of the stair that go up through it" },
	{ 0 },
};

static const struct group keys_opening = { "opening", sizeof(struct job_opening), opening,
	.keeps_node = true };

static const struct choice sides[] = { { "wall", SIDE_WALL }, { "open", SIDE_OPEN }, { 0 } };

static bool left_is_open(const struct job *job)
{
	return job->stair.left.kind == SIDE_OPEN;
}

static bool right_is_open(const struct job *job)
{
	return job->stair.right.kind == SIDE_OPEN;
}

static const char from_step_help[] = "first open step, counted from 1 at the bottom";
static const char to_step_help[] = "last open step";
static const char guard_help[] =
	"who makes its rail and what fills it; by_others: newels.bottom and newels.top still "
	"stand, without a rail";
static const struct choice guards[] = { { "here", GUARD_HERE }, { "by_others", GUARD_BY_OTHERS },
	{ 0 } };
static const char wall_past_help[] =
	"with from_step: how far the wall runs on behind the face of the first open riser";

static const struct field left_side[] = {
	{ FIELD_CHOICE, "side", LANDS(job_side, kind), .choices = sides, .usual = "wall",
		.label = "left side, going up", .shown = SHOWN_PLAN,
		.help = "a wall all the way, or open" },
	{ FIELD_COUNT, "from_step", LANDS(job_side, from_step), .least = 1, .most = 200,
		.usual = "1", .matters = left_is_open, .help = from_step_help },
	{ FIELD_LENGTH, "wall_past", LANDS(job_side, wall_past), .most = 400,
		.help = wall_past_help, .absent = "it ends in line with that face" },
	{ FIELD_COUNT, "to_step", LANDS(job_side, to_step), .least = 1, .most = 200,
		.help = to_step_help, .absent = "to the top" },
	{ FIELD_CHOICE, "guard", LANDS(job_side, guard), .choices = guards, .usual = "here",
		.help = guard_help, .matters = left_is_open },
	{ 0 },
};

static const struct field right_side[] = {
	{ FIELD_CHOICE, "side", LANDS(job_side, kind), .choices = sides, .usual = "open",
		.label = "right side, going up", .shown = SHOWN_PLAN,
		.help = "a wall all the way, or open" },
	{ FIELD_COUNT, "from_step", LANDS(job_side, from_step), .least = 1, .most = 200,
		.usual = "1", .matters = right_is_open, .help = from_step_help },
	{ FIELD_LENGTH, "wall_past", LANDS(job_side, wall_past), .most = 400,
		.help = wall_past_help, .absent = "it ends in line with that face" },
	{ FIELD_COUNT, "to_step", LANDS(job_side, to_step), .least = 1, .most = 200,
		.help = to_step_help, .absent = "to the top" },
	{ FIELD_CHOICE, "guard", LANDS(job_side, guard), .choices = guards, .usual = "here",
		.help = guard_help, .matters = right_is_open },
	{ 0 },
};

static const struct group keys_left = { "stair.left", sizeof(struct job_side), left_side,
	.shorthand = "side", .keeps_node = true };
static const struct group keys_right = { "stair.right", sizeof(struct job_side), right_side,
	.shorthand = "side", .keeps_node = true };

static const struct choice segment_kinds[] = {
	{ "flight", SEGMENT_FLIGHT },
	{ "landing", SEGMENT_LANDING },
	{ "winder", SEGMENT_WINDER },
	{ 0 },
};

static const struct field segment[] = {
	{ FIELD_CHOICE, "kind", LANDS(job_segment, kind), .choices = segment_kinds,
		.usual = "flight", .help = "flight; landing and winder come in a later version" },
	{ FIELD_COUNT, "risers", LANDS(job_segment, risers), .least = 2, .most = 200,
		.help = "number of risers", .absent = "the program chooses" },
	{ FIELD_LENGTH, "run", LANDS(job_segment, run), .least = 100, .most = 1000,
		.help = "unit run, nosing to nosing", .absent = "the program chooses" },
	{ FIELD_LENGTH, "total_run", LANDS(job_segment, total_run), .least = 100, .most = 100000,
		.help = "the run there is room for, first riser face to last riser face",
		.absent = "no limit" },
	{ 0 },
};

static const struct group keys_segment = { "stair.segments", sizeof(struct job_segment), segment,
	.shorthand = "kind", .keeps_node = true };

static const struct field stair[] = {
	{ FIELD_LENGTH, "width", LANDS(job_stair, width), .required = true, .least = 300,
		.most = 5000,
		.help = "between the two sides: finished wall, or outer face of the open "
			"stringer" },
	{ FIELD_GROUP, "left", LANDS(job_stair, left), .group = &keys_left,
		.help = "left side, going up" },
	{ FIELD_GROUP, "right", LANDS(job_stair, right), .group = &keys_right,
		.help = "right side, going up" },
	{ FIELD_GROUPS, "segments", LANDS(job_stair, segments), COUNTED(job_stair, segment_count),
		.group = &keys_segment, .help = "the chain of flights from the bottom up",
		.absent = "one flight, risers and run chosen by the program" },
	{ FIELD_NUMBER, "north", LANDS(job_stair, north), .most = 360,
		.help = "where north lies: degrees on plan, clockwise from the way up",
		.absent = "not known" },
	{ 0 },
};

static const struct group keys_stair = { "stair", sizeof(struct job_stair), stair,
	.keeps_node = true };

/* Inches: twice rise plus run 24 to 25 is US architectural practice, rise plus run 17 to 18 an
 * old handbook rule ("Drawing", chestofbooks reprint); rise and run limits are IRC 2018
 * R311.7.5 and common practice.  24 5/8 is what the Navy's 7 1/8 by 10 3/8 adds up to
 * (NAVEDTRA 14044, run from memory).  Millimetres: 590 to 650, 630 wanted, and the sum of 460
 * are DIN 18065 from memory; the rest is common practice. */
static const struct field comfort[] = {
	{ FIELD_LENGTH, "least_rise", LANDS(job_comfort, least_rise), .least = 50, .most = 400,
		.usual = "6 1/2\"", .usual_mm = "150 mm", .help = "lowest unit rise to consider" },
	{ FIELD_LENGTH, "most_rise", LANDS(job_comfort, most_rise), .least = 50, .most = 400,
		.usual = "7 3/4\"", .usual_mm = "200 mm", .help = "highest unit rise to consider" },
	{ FIELD_LENGTH, "least_run", LANDS(job_comfort, least_run), .least = 100, .most = 1000,
		.usual = "10\"", .usual_mm = "240 mm", .help = "shortest unit run to consider" },
	{ FIELD_LENGTH, "most_run", LANDS(job_comfort, most_run), .least = 100, .most = 1000,
		.usual = "12\"", .usual_mm = "300 mm", .help = "longest unit run to consider" },
	{ FIELD_LENGTH, "step_least", LANDS(job_comfort, step_least), .least = 200, .most = 2000,
		.usual = "24\"", .usual_mm = "590 mm", .help = "twice rise plus run, at least" },
	{ FIELD_LENGTH, "step_most", LANDS(job_comfort, step_most), .least = 200, .most = 2000,
		.usual = "25 1/2\"", .usual_mm = "650 mm", .help = "twice rise plus run, at most" },
	{ FIELD_LENGTH, "step_wanted", LANDS(job_comfort, step_wanted), .least = 200, .most = 2000,
		.usual = "24 5/8\"", .usual_mm = "630 mm",
		.help = "twice rise plus run that wins" },
	{ FIELD_LENGTH, "sum_least", LANDS(job_comfort, sum_least), .least = 150, .most = 1500,
		.usual = "17\"", .usual_mm = "430 mm", .help = "rise plus run, at least" },
	{ FIELD_LENGTH, "sum_most", LANDS(job_comfort, sum_most), .least = 150, .most = 1500,
		.usual = "18\"", .usual_mm = "490 mm", .help = "rise plus run, at most" },
	{ 0 },
};

static const struct group keys_comfort = { "comfort", sizeof(struct job_comfort), comfort,
	.keeps_node = true };

static const struct choice template_kinds[] = {
	{ "all", TEMPLATES_ALL },
	{ "stringers", TEMPLATES_STRINGERS },
	{ "none", TEMPLATES_NONE },
	{ 0 },
};

static const struct field sheets[] = {
	{ FIELD_TEXT, "paper", LANDS(job_sheets, paper), .most = 20, .usual = "Tabloid",
		.usual_mm = "A3", .help = "paper of the sheets: a row of papers.yaml" },
	{ FIELD_TEXT, "template_paper", LANDS(job_sheets, template_paper), .most = 20,
		.usual = "Letter", .usual_mm = "A4", .help = "paper of the tiled templates" },
	{ FIELD_TEXT, "set", LANDS(job_sheets, set), .most = 20, .usual = "full",
		.help = "which sheets: a file of the folder sets" },
	{ FIELD_CHOICE, "templates", LANDS(job_sheets, templates), .choices = template_kinds,
		.usual = "all", .help = "which full-size templates are drawn" },
	{ FIELD_NUMBER, "printer_x", LANDS(job_sheets, printer_x), .least = 0.97, .most = 1.03,
		.usual = "1",
		.help = "calibration page: measured over nominal length, along the longer side of "
			"the paper" },
	{ FIELD_NUMBER, "printer_y", LANDS(job_sheets, printer_y), .least = 0.97, .most = 1.03,
		.usual = "1",
		.help = "calibration page: measured over nominal length, along the shorter side of "
			"the paper" },
	{ 0 },
};

static const struct group keys_sheets = { "sheets", sizeof(struct job_sheets), sheets,
	.keeps_node = true };

static const struct field file[] = {
	{ FIELD_COUNT, "pitchboard", LANDS(job_file, version), .required = true, .least = 1,
		.most = 1000, .help = "version of this format: 1" },
	{ FIELD_GROUP, "job", LANDS(job_file, job.about), .required = true, .group = &keys_about,
		.help = "what the title block says" },
	{ FIELD_GROUPS, "revisions", LANDS(job_file, job.revisions),
		COUNTED(job_file, job.revision_count), .group = &keys_revision,
		.help = "revisions, oldest first", .absent = "none" },
	{ FIELD_GROUP, "measured", LANDS(job_file, job.measured), .group = &keys_measured,
		.help = "what was measured in the house",
		.absent = "nothing: every size is marked verify in field" },
	{ FIELD_GROUP, "floors", LANDS(job_file, job.floors), .required = true,
		.group = &keys_floors, .help = "the height to climb" },
	{ FIELD_GROUP, "landings", LANDS(job_file, job.landings), .group = &keys_landings,
		.help = "the floors before and behind the stair" },
	{ FIELD_GROUP, "opening", LANDS(job_file, job.opening), .group = &keys_opening,
		.help = "the opening in the upper floor" },
	{ FIELD_GROUP, "stair", LANDS(job_file, job.stair), .required = true, .group = &keys_stair,
		.help = "the stair on plan" },
	{ FIELD_GROUP, "comfort", LANDS(job_file, job.comfort), .group = &keys_comfort,
		.help = "limits within which the program chooses risers and run" },
	{ FIELD_GROUP, "stringers", LANDS(job_file, job.stringers), .group = &keys_stringers,
		.help = "what carries the steps" },
	{ FIELD_GROUP, "treads", LANDS(job_file, job.treads), .group = &keys_treads,
		.help = "treads and their nosings" },
	{ FIELD_GROUP, "risers", LANDS(job_file, job.risers), .group = &keys_risers,
		.help = "riser boards" },
	{ FIELD_GROUP, "mouldings", LANDS(job_file, job.mouldings), .group = &keys_mouldings,
		.help = "mouldings in the corners of steps" },
	{ FIELD_GROUP, "skirts", LANDS(job_file, job.skirts), .group = &keys_skirts,
		.help = "skirt boards, on walls and before sawtooth carriages" },
	{ FIELD_GROUP, "newels", LANDS(job_file, job.newels), .group = &keys_newels,
		.help = "posts of the balustrade" },
	{ FIELD_GROUP, "rail", LANDS(job_file, job.rail), .group = &keys_rail,
		.help = "rail over the open sides" },
	{ FIELD_GROUPS, "wall_rails", LANDS(job_file, job.wall_rails),
		COUNTED(job_file, job.wall_rail_count), .most = 12, .group = &keys_wall_rail,
		.absent = "none", .help = "rails on brackets along the walls" },
	{ FIELD_GROUP, "balusters", LANDS(job_file, job.balusters), .group = &keys_balusters,
		.help = "balusters under the rail" },
	{ FIELD_GROUP, "infill", LANDS(job_file, job.infill), .group = &keys_infill,
		.help = "what stands between the rail and the steps" },
	{ FIELD_GROUP, "material", LANDS(job_file, job.material), .group = &keys_material,
		.help = "species and finish" },
	{ FIELD_GROUP, "code", LANDS(job_file, job.code), .group = &keys_code,
		.help = "the building code to check against" },
	{ FIELD_GROUP, "stock", LANDS(job_file, job.stock), .group = &keys_stock,
		.help = "boards on offer, and what sawing takes" },
	{ FIELD_GROUP, "agreement", LANDS(job_file, job.agreement), .group = &keys_agreement,
		.help = "what is agreed beside the drawings, for the client's set" },
	{ FIELD_GROUP, "sheets", LANDS(job_file, job.sheets), .group = &keys_sheets,
		.help = "paper and sheets" },
	{ 0 },
};

const struct group keys_file = { "", sizeof(struct job_file), file, .keeps_node = true };
