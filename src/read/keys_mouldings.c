/*
 * The keys of the mouldings in the corners of steps, and of skirt boards.
 */
#include "read/keys_wood.h"

static const struct choice under_kinds[] = {
	{ "none", MOULDING_NONE },
	{ "cove", MOULDING_COVE },
	{ "scotia", MOULDING_SCOTIA },
	{ 0 },
};

static const struct choice back_kinds[] = {
	{ "none", MOULDING_NONE },
	{ "cove", MOULDING_COVE },
	{ 0 },
};

/* Usual sizes of a cove or scotia are 1/2 x 5/8, 9/16 x 3/4 and 5/8 x 3/4 in: from memory. */
static const char *under_width(const void *group, enum units units)
{
	const struct job_mouldings *m = group;

	if (m->under_nosing == MOULDING_NONE)
		return NULL;
	return units == UNITS_INCHES ? "1/2\"" : "12 mm";
}

static const char *under_height(const void *group, enum units units)
{
	const struct job_mouldings *m = group;

	if (m->under_nosing == MOULDING_NONE)
		return NULL;
	return units == UNITS_INCHES ? "5/8\"" : "16 mm";
}

/* Common practice: small, so as not to be kicked. */
static const char *back_size(const void *group, enum units units)
{
	const struct job_mouldings *m = group;

	if (m->back == MOULDING_NONE)
		return NULL;
	return units == UNITS_INCHES ? "3/8\"" : "10 mm";
}

/* None unless asked for: a nosing is whole without one, and many stairs have none. */
static const struct field mouldings[] = {
	{ FIELD_CHOICE, "under_nosing", LANDS(job_mouldings, under_nosing), .choices = under_kinds,
		.usual = "none", .label = "moulding under the nosing",
		.help = "moulding under the nosings, in front and along the returns" },
	{ FIELD_LENGTH, "under_width", LANDS(job_mouldings, under_width), .least = 6, .most = 50,
		.decide = under_width, .absent = "1/2\" or 12 mm",
		.label = "moulding out from the riser", .shown = SHOWN_ELEVATION,
		.help = "its width, out from the riser" },
	{ FIELD_LENGTH, "under_height", LANDS(job_mouldings, under_height), .least = 6, .most = 60,
		.decide = under_height, .absent = "5/8\" or 16 mm", .label = "its height",
		.shown = SHOWN_ELEVATION, .help = "its height, down from the tread" },
	{ FIELD_CHOICE, "back", LANDS(job_mouldings, back), .choices = back_kinds, .usual = "none",
		.label = "moulding on the back of the tread",
		.help = "moulding on the back of the treads, against the riser above" },
	{ FIELD_LENGTH, "back_size", LANDS(job_mouldings, back_size), .least = 5, .most = 30,
		.decide = back_size, .absent = "3/8\" or 10 mm",
		.label = "cove on the back of the tread", .shown = SHOWN_ELEVATION,
		.help = "its width and height" },
	{ 0 },
};

const struct group keys_mouldings = { "mouldings", sizeof(struct job_mouldings), mouldings,
	.shorthand = "under_nosing", .keeps_node = true };

static const struct choice skirt_kinds[] = {
	{ "none", SKIRT_NONE },
	{ "plain", SKIRT_PLAIN },
	{ "cut_round", SKIRT_CUT_ROUND },
	{ 0 },
};

static const struct choice open_skirt_kinds[] = {
	{ "none", OPEN_SKIRT_NONE },
	{ "mitred", OPEN_SKIRT_MITRED },
	{ 0 },
};

static bool has_open_skirt(const struct job *job)
{
	return has_open_side(job) && job_open_skirt(job) > 0;
}

static bool wall_is_skirted(const struct job *job, const struct job_side *side)
{
	bool runs_on = side->from_step > 1 || job_side_ends(job, side);

	if (side->kind == SIDE_WALL)
		return job->stringers.wall.kind != STRINGER_HOUSED;
	if (job->stringers.open.kind == STRINGER_MITRED)
		return runs_on && job->skirts.wall == SKIRT_CUT_ROUND;
	return runs_on && job->stringers.open.kind != STRINGER_HOUSED;
}

/* A housed stringer is its own skirt. */
static bool has_wall_skirt(const struct job *job)
{
	return job->skirts.wall != SKIRT_NONE &&
		(wall_is_skirted(job, &job->stair.left) || wall_is_skirted(job, &job->stair.right));
}

static bool has_skirt(const struct job *job)
{
	return has_wall_skirt(job) || has_open_skirt(job);
}

/* Its sizes have a default only where there is one. */
static const char *with_skirt(const void *group, const char *size)
{
	const struct job_skirts *s = group;

	return s->wall == SKIRT_NONE ? NULL : size;
}

static const char *skirt_thickness(const void *group, enum units units)
{
	const struct job_skirts *s = group;

	if (s->wall == SKIRT_NONE && s->open == OPEN_SKIRT_NONE)
		return NULL;
	return units == UNITS_INCHES ? "3/4\"" : "18 mm";
}

static const char *skirt_height(const void *group, enum units units)
{
	return with_skirt(group, units == UNITS_INCHES ? "3\"" : "75 mm");
}

static const char *skirt_baseboard(const void *group, enum units units)
{
	return with_skirt(group, units == UNITS_INCHES ? "3 1/2\"" : "90 mm");
}

/* Common practice.  None unless asked for: the wall may be finished without one. */
static const struct field skirts[] = {
	{ FIELD_CHOICE, "wall", LANDS(job_skirts, wall), .choices = skirt_kinds, .usual = "none",
		.label = "skirt boards",
		.help = "on walls: plain, set first, treads and risers butt against its face; "
			"or cut round the steps and scribed over their ends" },
	{ FIELD_CHOICE, "open", LANDS(job_skirts, open), .choices = open_skirt_kinds,
		.usual = "none", .label = "skirt boards at open sides",
		.help = "at open sides: mitred, a finished board in front of a sawtooth carriage, "
			"under the treads and mitred to the risers" },
	{ FIELD_LENGTH, "thickness", LANDS(job_skirts, thickness), .least = 6, .most = 50,
		.decide = skirt_thickness, .absent = "3/4\" or 18 mm", .label = "skirt thickness",
		.shown = SHOWN_ELEVATION, .matters = has_skirt, .help = "thickness of the board" },
	{ FIELD_LENGTH, "height", LANDS(job_skirts, height), .least = 10, .most = 300,
		.decide = skirt_height, .absent = "3\" or 75 mm",
		.label = "skirt over the nosing line", .shown = SHOWN_ELEVATION,
		.matters = has_wall_skirt,
		.help = "nosing line to its upper edge, square to the pitch" },
	{ FIELD_LENGTH, "baseboard", LANDS(job_skirts, baseboard), .least = 20, .most = 300,
		.decide = skirt_baseboard, .absent = "3 1/2\" or 90 mm",
		.label = "baseboard height", .shown = SHOWN_ELEVATION, .matters = has_wall_skirt,
		.help = "height of the baseboards that it dies into" },
	{ FIELD_LENGTH, "cover", LANDS(job_skirts, cover), .most = 100, .usual = "0\"",
		.label = "skirt below the carriage", .shown = SHOWN_ELEVATION,
		.matters = has_open_skirt,
		.help = "at open sides: how far it comes down lower than the carriage behind it, "
			"over what is nailed under that; square to the pitch" },
	{ 0 },
};

const struct group keys_skirts = { "skirts", sizeof(struct job_skirts), skirts, .shorthand = "wall",
	.keeps_node = true };
