/*
 * The keys of the stringers.
 */
#include "read/keys_wood.h"

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

static bool has_wedges(const struct job *job)
{
	return has_housed(job) && job->risers.kind == RISER_BOARD;
}

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

/* As long as nothing else of the job asks for a sawtooth one (job.c). */
static const char *open_kind(const void *group, enum units units)
{
	(void)group;
	(void)units;
	return "mitred";
}

static const struct field open_stringer[] = {
	{ FIELD_CHOICE, "kind", LANDS(job_stringer, kind), .choices = stringer_kinds,
		.decide = open_kind,
		.absent = "mitred; sawtooth with open risers or with a mitred skirt",
		.label = "stringer at the open side", .shown = SHOWN_STRINGER,
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
		.help = "most, centre to centre of carriages; where both sides are housed, only if "
			"given" },
	/* Treads of 1 in and riser boards glued into closed strings do without a carriage up to
	 * about a yard, wider stairs get one: common practice. NBC 9.8.9.4 allows 1200 mm where
	 * risers support the treads (second hand), so this is on the safe side. */
	{ FIELD_LENGTH, "housed_span", LANDS(job_stringers, housed_span), .least = 300,
		.most = 1500, .usual = "40\"", .usual_mm = "1000 mm",
		.label = "housed treads and risers span without a carriage, at most",
		.shown = SHOWN_STRINGER, .matters = has_housed_span,
		.help = "housed at both sides, with riser boards: most that is spanned without a "
			"carriage, centre to centre, where spacing is not given; open treads get "
			"none" },
	/* Room for the wall board and a skirt behind the carriage: common practice. */
	{ FIELD_LENGTH, "wall_gap", LANDS(job_stringers, wall_gap), .most = 900, .usual = "1 1/2\"",
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
		.shown = SHOWN_STRINGER,
		.help = "what stringers, first riser, riser block and newels at the foot stand on; "
			"a finish "
			"over it is laid after them" },
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
		.matters = has_wedges,
		.help = "housed, with riser boards: 12 means that wedges taper 1 in 12" },
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
