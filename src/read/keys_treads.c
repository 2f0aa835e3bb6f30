/*
 * The keys of treads and risers.
 */
#include "read/keys_wood.h"

static const struct choice nosing_profiles[] = {
	{ "eased", NOSING_EASED },
	{ "full_round", NOSING_FULL_ROUND },
	{ "half_round", NOSING_HALF_ROUND },
	{ "chamfer", NOSING_CHAMFER },
	{ 0 },
};

/* Common practice; a full round has no other radius than half the thickness (settled in job.c). */
static const char *nosing_radius(const void *group, enum units units)
{
	const struct job_treads *t = group;

	switch (t->nosing_profile) {
	case NOSING_EASED:
	case NOSING_HALF_ROUND: return units == UNITS_INCHES ? "1/2\"" : "12 mm";
	case NOSING_CHAMFER: return units == UNITS_INCHES ? "1/16\"" : "2 mm";
	case NOSING_FULL_ROUND: break;
	}
	return NULL;
}

/* IRC 2018 R311.7.5.3, from memory: a bevel of at most 1/2 in. */
static const char *nosing_chamfer(const void *group, enum units units)
{
	const struct job_treads *t = group;

	if (t->nosing_profile != NOSING_CHAMFER)
		return NULL;
	return units == UNITS_INCHES ? "1/4\"" : "6 mm";
}

static const struct choice notch_places[] = {
	{ "left", NOTCH_LEFT },
	{ "right", NOTCH_RIGHT },
	{ "back", NOTCH_BACK },
	{ 0 },
};

static const struct field notch[] = {
	{ FIELD_COUNT, "step", LANDS(job_notch, step), .required = true, .least = 1, .most = 200,
		.help = "which step, counted from 1 at the bottom" },
	{ FIELD_CHOICE, "at", LANDS(job_notch, at), .choices = notch_places, .required = true,
		.help = "where the wall stands: at the left or right end, going up, or at the "
			"back" },
	{ FIELD_LENGTH, "along", LANDS(job_notch, along), .required = true, .least = 1,
		.most = 4000, .help = "the wall across the stair; at an end, in from that side" },
	{ FIELD_LENGTH, "across", LANDS(job_notch, across), .required = true, .least = 1,
		.most = 6000,
		.help = "the wall from front to back; at an end it may go on past the back of that "
			"tread, through the steps behind; at the back, forward from the riser "
			"above" },
	{ FIELD_LENGTH, "from", LANDS(job_notch, from), .most = 5000,
		.help = "at an end, front of the nosing back to the wall; at the back, left-hand "
			"side to the wall",
		.absent = "it stands in the back corner" },
	{ FIELD_LENGTH, "height", LANDS(job_notch, height), .least = 10, .most = 6000,
		.help = "how far the wall goes up over this tread",
		.absent = "to the upper floor; at the back, to the nosing above it" },
	{ 0 },
};

static const struct group keys_notch = { "treads.notches", sizeof(struct job_notch), notch,
	.keeps_node = true };

/* Sizes and spacing are common practice: a third of a 5/4 tread, two to a hand's breadth. */
static const struct field tenons[] = {
	{ FIELD_YES_NO, "used", LANDS(job_tenons, used), .usual = "yes",
		.help = "no: the strips are glued on without" },
	{ FIELD_LENGTH, "thickness", LANDS(job_tenons, thickness), .least = 3, .most = 20,
		.usual = "1/4\"", .usual_mm = "6 mm",
		.help = "thickness; at most a third of the tread's is used" },
	{ FIELD_LENGTH, "width", LANDS(job_tenons, width), .least = 8, .most = 80, .usual = "3/4\"",
		.usual_mm = "20 mm", .help = "width, along the joint" },
	{ FIELD_LENGTH, "length", LANDS(job_tenons, length), .least = 16, .most = 120,
		.usual = "1 1/2\"", .usual_mm = "40 mm",
		.help = "length, half of it on either side where the strip is wide enough" },
	{ FIELD_LENGTH, "pitch", LANDS(job_tenons, pitch), .least = 60, .most = 1000,
		.usual = "8\"", .usual_mm = "200 mm", .help = "middle to middle, at most" },
	{ FIELD_LENGTH, "first", LANDS(job_tenons, first), .least = 25, .most = 400,
		.usual = "2 1/2\"", .usual_mm = "65 mm",
		.help = "end of the joint to the middle of the first" },
	{ 0 },
};

static const struct group keys_tenons = { "treads.tenons", sizeof(struct job_tenons), tenons,
	.shorthand = "used", .keeps_node = true };

/* Two to a bearing, and plugs of 3/8 in over a number 8, are common practice. */
static const struct field tread_screws[] = {
	{ FIELD_YES_NO, "used", LANDS(job_tread_screws, used), .usual = "yes",
		.help = "no: treads are fixed from below, on site" },
	{ FIELD_COUNT, "number", LANDS(job_tread_screws, number), .least = 6, .most = 14,
		.usual = "8", .help = "number they are sold by: 8 is 0.164 in or 4 mm thick" },
	{ FIELD_LENGTH, "length", LANDS(job_tread_screws, length), .least = 20, .most = 120,
		.absent = "by the tread: about 1 3/4\" or 45 mm go into the carriage",
		.help = "length" },
	{ FIELD_COUNT, "per_bearing", LANDS(job_tread_screws, per_bearing), .least = 1, .most = 6,
		.usual = "2", .help = "how many on each stringer" },
	{ FIELD_LENGTH, "plug", LANDS(job_tread_screws, plug), .most = 20, .usual = "3/8\"",
		.usual_mm = "10 mm", .help = "diameter of the plugs over them; 0: none" },
	{ FIELD_LENGTH, "plug_depth", LANDS(job_tread_screws, plug_depth), .least = 3, .most = 20,
		.usual = "5/16\"", .usual_mm = "8 mm", .help = "depth of their holes" },
	{ FIELD_LENGTH, "first", LANDS(job_tread_screws, first), .least = 10, .most = 100,
		.usual = "1 1/2\"", .usual_mm = "40 mm",
		.help = "risers to the outer ones, where there is room" },
	{ 0 },
};

static const struct group keys_tread_screws = { "treads.screws", sizeof(struct job_tread_screws),
	tread_screws, .shorthand = "used", .keeps_node = true };

/* 18 gauge up to 2 in, a hand's breadth or two apart: common practice. */
static const struct field brads[] = {
	{ FIELD_YES_NO, "used", LANDS(job_brads, used), .usual = "yes",
		.help = "no: the strips are clamped" },
	{ FIELD_COUNT, "gauge", LANDS(job_brads, gauge), .least = 15, .most = 23, .usual = "18",
		.help = "gauge of their wire: 18 is 0.048 in or 1.2 mm thick" },
	{ FIELD_LENGTH, "length", LANDS(job_brads, length), .least = 12, .most = 80,
		.absent = "by the strip: up to 3/4\" or 20 mm go into the body", .help = "length" },
	{ FIELD_LENGTH, "pitch", LANDS(job_brads, pitch), .least = 40, .most = 1000, .usual = "8\"",
		.usual_mm = "200 mm", .help = "one to the next, at most" },
	{ FIELD_LENGTH, "first", LANDS(job_brads, first), .least = 15, .most = 400,
		.usual = "1 1/2\"", .usual_mm = "40 mm", .help = "end of the strip to the first" },
	{ 0 },
};

static const struct group keys_tread_brads = { "treads.brads", sizeof(struct job_brads), brads,
	.shorthand = "used", .keeps_node = true };

static const struct choice start_ends[] = {
	{ "none", START_NONE },
	{ "left", START_LEFT },
	{ "right", START_RIGHT },
	{ "both", START_BOTH },
	{ 0 },
};

static const struct field starting[] = {
	{ FIELD_CHOICE, "ends", LANDS(job_starting, ends), .choices = start_ends, .usual = "none",
		.help = "which ends of the first step are rounded, going up" },
	{ FIELD_LENGTH, "projection", LANDS(job_starting, projection), .least = 20, .most = 600,
		.help = "beyond the outer face of the stringer", .absent = "as the radius" },
	{ FIELD_LENGTH, "radius", LANDS(job_starting, radius), .least = 20, .most = 400,
		.help = "of the corners of its end", .absent = "half its depth: a half round" },
	{ 0 },
};

static const struct group keys_starting = { "treads.starting_step", sizeof(struct job_starting),
	starting, .shorthand = "ends", .keeps_node = true };

static const struct field treads[] = {
	/* Hardwood 5/4 dressed is 1 1/16 in or 27 mm. */
	{ FIELD_LENGTH, "thickness", LANDS(job_treads, thickness), .least = 12, .most = 120,
		.usual = "1 1/16\"", .usual_mm = "27 mm", .label = "tread thickness",
		.shown = SHOWN_ELEVATION | SHOWN_STRINGER, .help = "thickness" },
	/* IRC 2018 R311.7.5.3: 3/4 to 1 1/4 in. */
	{ FIELD_LENGTH, "nosing", LANDS(job_treads, nosing), .most = 80, .usual = "1 1/8\"",
		.usual_mm = "25 mm", .label = "nosing projection",
		.shown = SHOWN_PLAN | SHOWN_ELEVATION, .help = "projection beyond the riser face" },
	{ FIELD_CHOICE, "nosing_profile", LANDS(job_treads, nosing_profile),
		.choices = nosing_profiles, .usual = "eased", .label = "nosing profile",
		.shown = SHOWN_ELEVATION,
		.help = "edge of treads: both arrises rounded, half a circle, upper arris rounded "
			"and square below, or both chamfered at 45 degrees" },
	/* IRC 2018 R311.7.5.3, from memory: at most 9/16 in. */
	{ FIELD_LENGTH, "nosing_radius", LANDS(job_treads, nosing_radius), .most = 60,
		.decide = nosing_radius,
		.absent = "1/2\" or 12 mm; 1/16\" or 2 mm on a chamfer; half the thickness of a "
			  "full round",
		.label = "nosing radius", .shown = SHOWN_ELEVATION,
		.help = "rounding of the edges, at most half the thickness" },
	{ FIELD_LENGTH, "nosing_chamfer", LANDS(job_treads, nosing_chamfer), .most = 50,
		.decide = nosing_chamfer, .absent = "1/4\" or 6 mm; none but on a chamfer",
		.label = "nosing chamfer", .shown = SHOWN_ELEVATION,
		.help = "chamfer of the edges, along either face" },
	/* Common practice. */
	{ FIELD_LENGTH, "waste_margin", LANDS(job_treads, waste_margin), .most = 6,
		.absent = "1/32\" or 1 mm",
		.help = "wood left outside the nosing's profile by the chamfer sawn before "
			"routing" },
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
	{ FIELD_LENGTH, "newel_fit", LANDS(job_treads, newel_fit), .most = 6, .usual = "1/32\"",
		.usual_mm = "1 mm", .label = "room round a newel", .shown = SHOWN_PLAN,
		.matters = has_newels,
		.help = "room left on each face of a newel that a tread is cut out for" },
	/* Common practice: wider boards cup. */
	{ FIELD_LENGTH, "widest_board", LANDS(job_treads, widest_board), .least = 40, .most = 1000,
		.usual = "6\"", .usual_mm = "150 mm", .label = "widest board in a tread",
		.help = "widest board that the body of a tread is glued up from" },
	{ FIELD_GROUP, "tenons", LANDS(job_treads, tenons), .group = &keys_tenons,
		.help = "loose tenons between body and strips" },
	{ FIELD_GROUP, "screws", LANDS(job_treads, screws), .group = &keys_tread_screws,
		.help = "screws into stringers, or through them into open treads" },
	{ FIELD_GROUP, "brads", LANDS(job_treads, brads), .group = &keys_tread_brads,
		.help = "brads through front and return strips" },
	{ FIELD_GROUP, "starting_step", LANDS(job_treads, starting), .group = &keys_starting,
		.help = "a first step that reaches past the stringer, rounded" },
	{ FIELD_GROUPS, "notches", LANDS(job_treads, notches), COUNTED(job_treads, notch_count),
		.group = &keys_notch, .help = "walls that a tread wraps, as measured on site",
		.absent = "none" },
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
	{ FIELD_LENGTH, "bar", LANDS(job_risers, bar), .least = 10, .most = 200,
		.help = "open risers: height of a bar under the front of each tread",
		.absent = "none" },
	/* Common practice. */
	{ FIELD_LENGTH, "bar_thickness", LANDS(job_risers, bar_thickness), .least = 6, .most = 60,
		.usual = "1/2\"", .usual_mm = "12 mm", .label = "thickness of riser bars",
		.matters = has_riser_bars, .help = "its thickness" },
	{ 0 },
};

const struct group keys_risers = { "risers", sizeof(struct job_risers), risers, .shorthand = "kind",
	.keeps_node = true };
