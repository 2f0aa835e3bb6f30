/*
 * The keys of what fills the balustrade: common practice, but where another source is named.
 */
#include "read/keys_wood.h"

static bool has_balusters(const struct job *job)
{
	return has_guard(job) &&
		(job->infill.kind == INFILL_PLAIN || job->infill.kind == INFILL_BRACED);
}

static bool has_kind(const struct job *job, enum infill_name kind)
{
	return has_guard(job) && job->infill.kind == kind;
}

static bool is_braced(const struct job *job)
{
	return has_kind(job, INFILL_BRACED);
}

static bool has_bars(const struct job *job)
{
	return has_kind(job, INFILL_BARS);
}

static bool has_panels(const struct job *job)
{
	return has_kind(job, INFILL_PANEL);
}

static bool has_posts(const struct job *job)
{
	return has_bars(job) || has_panels(job);
}

static bool has_shoe(const struct job *job)
{
	return has_guard(job) && job->infill.shoe;
}

static bool has_strips(const struct job *job)
{
	return has_guard(job) && (job->infill.shoe || job->infill.subrail);
}

static const struct choice shapes[] = {
	{ "square", BALUSTER_SQUARE },
	{ "round", BALUSTER_ROUND },
	{ 0 },
};

static const struct choice tops[] = {
	{ "raked", BALUSTER_TOP_RAKED },
	{ "square", BALUSTER_TOP_SQUARE },
	{ 0 },
};

static const struct choice holders[] = {
	{ "brads", HELD_BY_BRADS },
	{ "screws", HELD_BY_SCREWS },
	{ "dowels", HELD_BY_DOWELS },
	{ 0 },
};

/* A third to a half of the thickness (from memory), as dowels are sold. */
static const char *dowel_for(const void *group, enum units units)
{
	static const struct {
		double from;
		const char *inches, *mm;
	} dowels[] = {
		{ 30, "3/8\"", "10 mm" },
		{ 24, "5/16\"", "8 mm" },
		{ 18, "1/4\"", "6 mm" },
		{ 0, "1/8\"", "3 mm" },
	};
	const struct job_balusters *b = group;
	double least = b->thickness < b->section ? b->thickness : b->section;
	int i = 0;

	while (least < dowels[i].from)
		i++;
	return units == UNITS_INCHES ? dowels[i].inches : dowels[i].mm;
}

static const struct field balusters[] = {
	{ FIELD_CHOICE, "shape", LANDS(job_balusters, shape), .choices = shapes, .usual = "square",
		.help = "their section" },
	{ FIELD_LENGTH, "section", LANDS(job_balusters, section), .least = 8, .most = 150,
		.usual = "1 1/4\"", .usual_mm = "32 mm", .label = "balusters, square",
		.shown = SHOWN_PLAN | SHOWN_ELEVATION, .matters = has_balusters,
		.help = "side of the square baluster, diameter of a round one" },
	{ FIELD_LENGTH, "thickness", LANDS(job_balusters, thickness), .least = 8, .most = 150,
		.like = "section", .help = "across the stair, where they are sawn flat" },
	{ FIELD_COUNT, "per_tread", LANDS(job_balusters, per_tread), .least = 1, .most = 10,
		.help = "balusters on a tread", .absent = "by the largest gap" },
	/* A ball of 4 in must not pass (IRC 2018 R312.1.3; Approved Document K: 100 mm). */
	{ FIELD_LENGTH, "largest_gap", LANDS(job_balusters, largest_gap), .least = 20, .most = 500,
		.usual = "3 15/16\"", .usual_mm = "99 mm", .label = "largest gap in the balustrade",
		.shown = SHOWN_ELEVATION, .matters = has_guard,
		.help = "largest clear gap between two balusters or bars" },
	{ FIELD_CHOICE, "top", LANDS(job_balusters, top), .choices = tops, .usual = "raked",
		.help = "cut to the rake under the rail, or square" },
	{ FIELD_CHOICE, "held", LANDS(job_balusters, held), .choices = holders, .usual = "brads",
		.help = "what holds tops, and feet that are cut to the rake" },
	{ FIELD_LENGTH, "dowel", LANDS(job_balusters, dowel), .least = 2, .most = 40,
		.decide = dowel_for, .absent = "a third of the baluster, as dowels are sold",
		.help = "diameter of the dowel in a square foot" },
	{ FIELD_LENGTH, "dowel_length", LANDS(job_balusters, dowel_length), .least = 10,
		.most = 150, .usual = "1 3/4\"", .usual_mm = "45 mm", .help = "its length" },
	{ FIELD_LENGTH, "play", LANDS(job_balusters, play), .most = 30, .usual = "1/8\"",
		.usual_mm = "3 mm",
		.help = "how much longer than the dowel its slot in the foot is, along the stair" },
	{ 0 },
};

const struct group keys_balusters = { "balusters", sizeof(struct job_balusters), balusters,
	.keeps_node = true };

static const struct choice lies[] = {
	{ "raked", ROW_RAKED },
	{ "level", ROW_LEVEL },
	{ 0 },
};

static const struct field row[] = {
	{ FIELD_LENGTH, "height", LANDS(job_row, height), .required = true, .most = 2000,
		.help = "plumb to the middle: raked from the nosing line, level from the tread" },
	{ FIELD_CHOICE, "lie", LANDS(job_row, lie), .choices = lies, .usual = "raked",
		.help = "on the rake, or level" },
	{ 0 },
};

static const struct group keys_row = { "infill.rows", sizeof(struct job_row), row,
	.shorthand = "height", .keeps_node = true };

static const struct choice kinds[] = {
	{ "plain", INFILL_PLAIN },
	{ "braced", INFILL_BRACED },
	{ "bars", INFILL_BARS },
	{ "panel", INFILL_PANEL },
	{ 0 },
};

/* A foot apart, less between short balusters: common practice. */
static const struct field strip_screws[] = {
	{ FIELD_COUNT, "number", LANDS(job_screws, number), .least = 6, .most = 14, .usual = "8",
		.help = "number they are sold by: 8 is 0.164 in or 4 mm thick" },
	{ FIELD_LENGTH, "pitch", LANDS(job_screws, pitch), .least = 60, .most = 1000,
		.usual = "12\"", .usual_mm = "300 mm", .help = "one to the next, at most" },
	{ FIELD_LENGTH, "first", LANDS(job_screws, first), .least = 15, .most = 400, .usual = "3\"",
		.usual_mm = "75 mm", .help = "end of the strip to the first" },
	{ 0 },
};

static const struct group keys_strip_screws = { "infill.screws", sizeof(struct job_screws),
	strip_screws, .shorthand = "pitch", .keeps_node = true };

static const struct choice panel_edges[] = {
	{ "rails", PANEL_IN_RAILS },
	{ "ends", PANEL_IN_ENDS },
	{ "all_round", PANEL_ALL_ROUND },
	{ 0 },
};

static const struct field infill[] = {
	{ FIELD_CHOICE, "kind", LANDS(job_infill, kind), .choices = kinds, .usual = "plain",
		.help = "plain balusters, balusters braced by cross pieces, bars on the rake, or a "
			"panel" },
	{ FIELD_YES_NO, "shoe", LANDS(job_infill, shoe), .usual = "no",
		.help = "a ploughed shoe rail under the infill" },
	{ FIELD_YES_NO, "subrail", LANDS(job_infill, subrail), .usual = "no",
		.help = "a ploughed strip under the rail" },
	{ FIELD_LENGTH, "strip_width", LANDS(job_infill, strip_width), .least = 10, .most = 200,
		.usual = "2 1/4\"", .usual_mm = "57 mm", .label = "width of shoe and subrail",
		.shown = SHOWN_ELEVATION, .matters = has_strips,
		.help = "width of shoe and subrail" },
	{ FIELD_LENGTH, "shoe_depth", LANDS(job_infill, shoe_depth), .least = 8, .most = 200,
		.usual = "1 1/4\"", .usual_mm = "32 mm", .label = "depth of the shoe",
		.shown = SHOWN_ELEVATION, .matters = has_shoe,
		.help = "depth of the shoe, square to its length" },
	/* On the nosings the triangle under it is smallest. */
	{ FIELD_LENGTH, "shoe_lift", LANDS(job_infill, shoe_lift), .most = 300, .usual = "0\"",
		.usual_mm = "0 mm",
		.help = "over open stringers: plumb, nosing line to the underside of the shoe" },
	{ FIELD_LENGTH, "subrail_depth", LANDS(job_infill, subrail_depth), .least = 8, .most = 200,
		.usual = "3/4\"", .usual_mm = "20 mm", .help = "depth of the subrail" },
	{ FIELD_LENGTH, "plough", LANDS(job_infill, plough), .least = 2, .most = 100,
		.usual = "3/8\"", .usual_mm = "10 mm",
		.help = "depth of the groove in shoe and subrail" },
	{ FIELD_GROUP, "screws", LANDS(job_infill, screws), .group = &keys_strip_screws,
		.help = "screws of shoe and subrail" },
	{ FIELD_YES_NO, "fillets", LANDS(job_infill, fillets), .usual = "yes",
		.help = "fillets between balusters in the groove" },
	{ FIELD_GROUPS, "rows", LANDS(job_infill, rows), COUNTED(job_infill, row_count),
		.group = &keys_row, .help = "rows of cross pieces between braced balusters",
		.absent = "two on the rake: 6\" or 150 mm over the nosings and under the rail" },
	{ FIELD_LENGTH, "cross_width", LANDS(job_infill, cross_width), .least = 10, .most = 300,
		.usual = "1 1/4\"", .usual_mm = "32 mm", .label = "cross pieces, width",
		.shown = SHOWN_ELEVATION, .matters = is_braced,
		.help = "width of cross pieces, seen from the side" },
	{ FIELD_LENGTH, "cross_thickness", LANDS(job_infill, cross_thickness), .least = 6,
		.most = 100, .usual = "3/4\"", .usual_mm = "20 mm",
		.label = "cross pieces, thickness", .shown = SHOWN_ELEVATION, .matters = is_braced,
		.help = "thickness of cross pieces, across the stair" },
	{ FIELD_LENGTH, "tenon_width", LANDS(job_infill, tenon_width), .least = 4, .most = 100,
		.usual = "5/8\"", .usual_mm = "16 mm",
		.help = "loose tenons of cross pieces, at most: width" },
	{ FIELD_LENGTH, "tenon_thickness", LANDS(job_infill, tenon_thickness), .least = 3,
		.most = 30, .usual = "1/4\"", .usual_mm = "6 mm", .help = "their thickness" },
	{ FIELD_LENGTH, "tenon_length", LANDS(job_infill, tenon_length), .least = 8, .most = 100,
		.usual = "1\"", .usual_mm = "25 mm", .help = "their length, at most" },
	{ FIELD_COUNT, "bars", LANDS(job_infill, bars), .least = 1, .most = 60,
		.help = "how many bars", .absent = "by the largest gap" },
	{ FIELD_LENGTH, "bar_width", LANDS(job_infill, bar_width), .least = 8, .most = 300,
		.usual = "1 1/4\"", .usual_mm = "32 mm", .label = "bars, width",
		.shown = SHOWN_ELEVATION, .matters = has_bars,
		.help = "width of a bar, seen from the side" },
	{ FIELD_LENGTH, "bar_thickness", LANDS(job_infill, bar_thickness), .least = 8, .most = 100,
		.usual = "3/4\"", .usual_mm = "20 mm", .label = "bars, thickness",
		.shown = SHOWN_ELEVATION, .matters = has_bars,
		.help = "thickness of a bar, across the stair" },
	{ FIELD_LENGTH, "post", LANDS(job_infill, post), .least = 20, .most = 150,
		.usual = "1 3/4\"", .usual_mm = "45 mm",
		.help = "side of the posts between newels, for bars and panels" },
	{ FIELD_LENGTH, "post_spacing", LANDS(job_infill, post_spacing), .least = 300, .most = 6000,
		.usual = "4'-0\"", .usual_mm = "1200 mm", .label = "posts apart, on plan",
		.shown = SHOWN_ELEVATION, .matters = has_posts,
		.help = "most on plan that bars and panels run without a post" },
	{ FIELD_LENGTH, "panel_thickness", LANDS(job_infill, panel_thickness), .least = 3,
		.most = 60, .usual = "1/2\"", .usual_mm = "12 mm", .label = "panel thickness",
		.shown = SHOWN_ELEVATION, .matters = has_panels, .help = "thickness of the panel" },
	{ FIELD_LENGTH, "panel_gap", LANDS(job_infill, panel_gap), .most = 30, .usual = "1/16\"",
		.usual_mm = "2 mm",
		.help = "room for the panel to move: in grooves, and at edges without one" },
	{ FIELD_CHOICE, "panel_held", LANDS(job_infill, panel_held), .choices = panel_edges,
		.usual = "rails",
		.help = "grooved strips at shoe and subrail, at newels and posts, or all round" },
	{ 0 },
};

const struct group keys_infill = { "infill", sizeof(struct job_infill), infill, .shorthand = "kind",
	.keeps_node = true };
