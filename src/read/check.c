/*
 * Problems between keys: each alone is fine, together they cannot be.
 *
 * A value that could not be read is 0 here and has been complained of.
 */
#include <math.h>
#include <string.h>

#include "read/job_passes.h"

/* Two measurements of the same thing agree within what a tape shows: 1/16 in. */
#define TAPE_TOLERANCE 1.6
#define EQUAL_ENOUGH 1e-6

struct check {
	struct arena *arena;
	struct diags *diags;
	const struct job *job;
	struct lettering lettering;
};

static const char *letter(const struct check *c, double mm)
{
	return length_say(c->arena, c->lettering, mm);
}

static void check_version(const struct check *c, int version)
{
	if (version > 1)
		diag_error(c->diags, node_pos(c->job->src, "pitchboard"), NULL,
			"pitchboard: this program reads version 1 of the format, not %d", version);
}

static void check_fraction(const struct check *c)
{
	const struct job_about *about = &c->job->about;
	int n = about->fraction;
	bool fits = about->units == UNITS_INCHES ? n == 8 || n == 16 || n == 32 || n == 64
						 : n == 1 || n == 2 || n == 10;

	if (n && !fits)
		diag_error(c->diags, node_pos(about->src, "fraction"),
			about->units == UNITS_INCHES ? "8, 16, 32 or 64 to the inch"
						     : "1, 2 or 10 to the millimetre",
			"job.fraction: %d is no graduation of a rule", n);
}

static void check_rises(const struct check *c)
{
	const struct node *src = c->job->floors.src;
	bool finished = node_has(src, "total_rise"), structural = node_has(src, "structural_rise");

	if (!src)
		return;
	if (finished && structural)
		diag_error(c->diags, node_pos(src, "structural_rise"), "keep the one you measured",
			"floors: total_rise and structural_rise cannot both be given");
	if (!finished && !structural)
		diag_error(c->diags, node_pos(src, "total_rise"),
			"finished floor to finished floor",
			"floors: total_rise is missing (or structural_rise with both finishes)");
	if (!structural)
		return;
	static const char *const finishes[] = { "lower_finish", "upper_finish" };
	for (int i = 0; i < 2; i++)
		if (!node_has(src, finishes[i]))
			diag_error(c->diags, node_pos(src, "structural_rise"),
				"write 0 where nothing is laid on the structural floor",
				"floors: structural_rise needs %s too", finishes[i]);
}

static void check_opening(const struct check *c)
{
	const struct job_opening *o = &c->job->opening;
	double rise = job_total_rise(c->job);
	double sum = o->floor_thickness + o->ceiling_height;

	if (o->length > 0 && !node_has(o->src, "floor_thickness") &&
		!node_has(o->src, "ceiling_height"))
		diag_error(c->diags, node_pos(o->src, "length"),
			"without it the headroom under the opening's edge cannot be found",
			"opening: floor_thickness or ceiling_height is missing");
	if (rise > 0 && o->ceiling_height >= rise)
		diag_error(c->diags, node_pos(o->src, "ceiling_height"),
			"it is measured from the lower finished floor, under the upper one",
			"opening.ceiling_height: %s is not below the upper floor at %s",
			letter(c, o->ceiling_height), letter(c, rise));
	else if (rise > 0 && o->floor_thickness > 0 && o->ceiling_height > 0 &&
		fabs(sum - rise) > TAPE_TOLERANCE)
		diag_error(c->diags, node_pos(o->src, "floor_thickness"),
			"measure again, or give only one of the two",
			"opening: ceiling_height and floor_thickness add up to %s, the rise is %s",
			letter(c, sum), letter(c, rise));
}

/* The stair comes up through it. */
static void check_opening_width(const struct check *c)
{
	const struct job_opening *o = &c->job->opening;
	double width = c->job->stair.width;

	if (o->width > 0 && o->width < width - EQUAL_ENOUGH)
		diag_error(c->diags, node_pos(o->src, "width"),
			arena_printf(c->arena, "measure again, or %s",
				job_write_least(c->arena, c->job, "opening.width", width)),
			"opening.width: %s is narrower than the stair, %s", letter(c, o->width),
			letter(c, width));
}

static void check_side(const struct check *c, const struct job_side *side, const char *path)
{
	bool limited = node_has(side->src, "from_step") || node_has(side->src, "to_step") ||
		node_has(side->src, "wall_past");

	if (side->kind == SIDE_WALL && limited)
		diag_error(c->diags, node_pos(side->src, "side"),
			"write side: open, with from_step and to_step for the open part",
			"%s: a wall has no open steps", path);
	else if (side->to_step > 0 && side->from_step > side->to_step)
		diag_error(c->diags, node_pos(side->src, "to_step"),
			arena_printf(c->arena,
				"steps are counted from the bottom: write %s.to_step: %d", path,
				side->from_step),
			"%s: to_step %d lies below from_step %d", path, side->to_step,
			side->from_step);
	if (side->kind == SIDE_OPEN && side->wall_past > 0 && side->from_step <= 1)
		diag_error(c->diags, node_pos(side->src, "wall_past"),
			"it is the wall in front of the open steps",
			"%s: wall_past goes with a from_step above 1", path);
}

static void check_segments(const struct check *c)
{
	const struct job_stair *stair = &c->job->stair;
	static const char hint[] = "this version draws one straight flight";
	int flights = 0;

	for (int i = 0; i < stair->segment_count; i++) {
		const struct job_segment *s = &stair->segments[i];
		if (s->kind != SEGMENT_FLIGHT)
			diag_error(c->diags, node_pos(s->src, "kind"), hint,
				"stair.segments: a %s is drawn in a later version",
				s->kind == SEGMENT_LANDING ? "landing" : "winder");
		else if (flights++)
			diag_error(c->diags, node_pos(s->src, "kind"), hint,
				"stair.segments: a second flight is drawn in a later version");
	}
}

static void check_order(const struct check *c, const struct node *src, const char *path,
	const char *low_key, double low, const char *high_key, double high)
{
	if (low <= 0 || high <= 0 || low <= high)
		return;
	const char *blame = node_has(src, low_key) ? low_key : high_key;
	diag_error(c->diags, node_pos(src, blame), NULL, "%s: %s (%s) is more than %s (%s)", path,
		low_key, letter(c, low), high_key, letter(c, high));
}

static void check_comfort(const struct check *c)
{
	const struct job_comfort *k = &c->job->comfort;

	check_order(c, k->src, "comfort", "least_rise", k->least_rise, "most_rise", k->most_rise);
	check_order(c, k->src, "comfort", "least_run", k->least_run, "most_run", k->most_run);
	check_order(c, k->src, "comfort", "step_least", k->step_least, "step_most", k->step_most);
	check_order(c, k->src, "comfort", "step_least", k->step_least, "step_wanted",
		k->step_wanted);
	check_order(c, k->src, "comfort", "step_wanted", k->step_wanted, "step_most", k->step_most);
	check_order(c, k->src, "comfort", "sum_least", k->sum_least, "sum_most", k->sum_most);
}

static void check_ascending(const struct check *c, const char *key, const double *list, int n)
{
	const struct node *src = c->job->stringers.src;

	if (n == 0)
		diag_error(c->diags, node_pos(src, key), NULL, "stringers.%s: the list is empty",
			key);
	for (int i = 1; i < n; i++) {
		if (list[i - 1] <= 0 || list[i] <= 0 || list[i] > list[i - 1] + EQUAL_ENOUGH)
			continue;
		diag_error(c->diags, node_pos(src, key), "smallest first, each once",
			"stringers.%s: %s comes after %s", key, letter(c, list[i]),
			letter(c, list[i - 1]));
		return;
	}
}

static void check_stringers(const struct check *c)
{
	const struct job_stringers *s = &c->job->stringers;

	check_ascending(c, "stock_widths", s->stock_widths, s->stock_width_count);
	check_ascending(c, "stock_lengths", s->stock_lengths, s->stock_length_count);
	if (s->wall.kind == STRINGER_MITRED)
		diag_error(c->diags, node_pos(s->wall.src, "kind"),
			"sawtooth or housed; its mitres would face the wall",
			"stringers.wall: a mitred stringer belongs at an open side");
}

static void check_carriages(const struct check *c)
{
	const struct job_stringers *s = &c->job->stringers;
	bool both = node_has(s->src, "middle_count") && node_has(s->src, "spacing");
	double apart = job_carriage_spacing(c->job);

	if (!both || s->spacing <= 0 || apart <= s->spacing + EQUAL_ENOUGH)
		return;
	diag_warning(c->diags, node_pos(s->src, "middle_count"),
		arena_printf(c->arena, "write stringers.middle_count: %d",
			job_carriages_by_spacing(c->job)),
		"stringers: with middle_count %d they stand %s apart, more than spacing, %s",
		s->middle_count, letter(c, apart), letter(c, s->spacing));
}

/* NBC 9.8.9.5, second hand: 38 mm where open treads span more than 750. */
#define FREE_SPAN 750.0
#define FREE_TREAD 38.0

/* A program that leaves out the carriage says what that asks of the treads. */
static void check_open_treads(const struct check *c)
{
	const struct job *job = c->job;
	double apart = job_carriage_spacing(job), thick = job->treads.thickness;

	if (!job_treads_span(job) || job->risers.kind != RISER_OPEN || thick <= 0 ||
		thick >= FREE_TREAD || apart <= FREE_SPAN)
		return;
	diag_warning(c->diags, node_pos(job->risers.src, "kind"),
		arena_printf(c->arena,
			"make the treads %s or more (NBC 9.8.9.5, second hand), or write "
			"stringers.middle_count: 1",
			letter(c, FREE_TREAD)),
		"treads: on open risers %s of wood span %s from stringer to stringer, and nothing "
		"carries them between",
		letter(c, thick), letter(c, apart));
}

static void check_nosing(const struct check *c)
{
	const struct job_treads *t = &c->job->treads;
	double half = t->thickness / 2;

	if (t->thickness <= 0)
		return;
	if (t->nosing_radius > half + EQUAL_ENOUGH)
		diag_error(c->diags, node_pos(t->src, "nosing_radius"),
			job_write_most(c->arena, c->job, "treads.nosing_radius", half),
			"treads.nosing_radius: %s is more than half the thickness of %s",
			letter(c, t->nosing_radius), letter(c, t->thickness));
	else if (t->nosing_profile == NOSING_FULL_ROUND && t->nosing_radius < half - EQUAL_ENOUGH)
		diag_error(c->diags, node_pos(t->src, "nosing_radius"),
			"leave it out, or write nosing_profile: eased",
			"treads.nosing_radius: a full round has half the thickness");
	if (t->nosing_chamfer > 0 && t->nosing_profile != NOSING_CHAMFER)
		diag_error(c->diags, node_pos(t->src, "nosing_chamfer"),
			"leave it out, or write nosing_profile: chamfer",
			"treads.nosing_chamfer: this profile has no chamfer");
	if (t->nosing_chamfer >= half)
		diag_error(c->diags, node_pos(t->src, "nosing_chamfer"),
			job_write_most(c->arena, c->job, "treads.nosing_chamfer", half - 1),
			"treads.nosing_chamfer: two of %s leave nothing of the thickness, %s",
			letter(c, t->nosing_chamfer), letter(c, t->thickness));
}

static void check_treads(const struct check *c)
{
	const struct job_treads *t = &c->job->treads;

	check_order(c, t->src, "treads", "side_overhang", t->side_overhang, "strip_width",
		t->strip_width);
	check_nosing(c);
	if (c->job->risers.kind == RISER_OPEN && node_has(c->job->risers.src, "thickness"))
		diag_error(c->diags, node_pos(c->job->risers.src, "thickness"),
			"leave it out, or write kind: board",
			"risers: open risers have no thickness");
	if (c->job->risers.kind == RISER_BOARD && c->job->risers.bar > 0)
		diag_error(c->diags, node_pos(c->job->risers.src, "bar"),
			"leave it out, or write kind: open",
			"risers: there is no gap for a bar beside boards");
}

static void check_balusters(const struct check *c)
{
	const struct job_balusters *b = &c->job->balusters;
	bool flat = fabs(b->thickness - b->section) > EQUAL_ENOUGH;

	if (b->shape == BALUSTER_ROUND && flat)
		diag_error(c->diags, node_pos(b->src, "thickness"),
			"leave it out, or write shape: square",
			"balusters: round ones are as thick as they are wide");
}

/* A size that is said to be measured has to be in the job. */
static void check_measured(const struct check *c)
{
	const struct job_measured *m = &c->job->measured;

	for (int i = 0; i < m->size_count; i++)
		if (*m->sizes[i] && !job_size_is_given(c->job, m->sizes[i]))
			diag_warning(c->diags, node_pos(m->src, "sizes"), NULL,
				"measured.sizes: %s is not given in this job", m->sizes[i]);
}

void job_check(struct arena *a, const struct job_file *f, struct diags *d)
{
	struct check c = { a, d, &f->job, job_lettering(&f->job) };

	check_version(&c, f->version);
	check_fraction(&c);
	check_rises(&c);
	check_opening(&c);
	check_opening_width(&c);
	check_side(&c, &f->job.stair.left, "stair.left");
	check_side(&c, &f->job.stair.right, "stair.right");
	check_segments(&c);
	check_comfort(&c);
	check_stringers(&c);
	check_carriages(&c);
	check_open_treads(&c);
	check_treads(&c);
	check_balusters(&c);
	check_measured(&c);
	job_landings_check(&f->job, d);
}
