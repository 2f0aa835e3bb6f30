#include "pitchboard/job.h"

#include <inttypes.h>
#include <math.h>
#include <string.h>

#include "base/fingerprint.h"
#include "read/job_passes.h"
#include "read/keys_wood.h"

/* Lengths cannot be read before the unit of a bare number is known.  A misspelt unit is complained
 * of in its place; what it was meant to be is plain, and no length need suffer from it. */
static enum units job_units(const struct node *root)
{
	const struct node *n = node_find(node_find(root, "job"), "units");

	if (n && n->kind == NODE_TEXT && (*n->text == 'm' || *n->text == 'M'))
		return UNITS_MILLIMETRES;
	return UNITS_INCHES;
}

static void settle_nosing(struct job *job)
{
	struct job_treads *t = &job->treads;
	bool inches = job->about.units == UNITS_INCHES;

	if (!node_has(t->src, "waste_margin"))
		t->waste_margin = inches ? MM_PER_INCH / 32 : 1;
	if (node_has(t->src, "nosing_radius") || t->thickness <= 0)
		return;
	if (t->nosing_profile == NOSING_FULL_ROUND)
		t->nosing_radius = t->thickness / 2;
	t->nosing_radius = fmin(t->nosing_radius, t->thickness / 2);
}

/* A round one for the hand alone: 1 5/8 in or 42 mm lie between the least and the most of IRC 2018
 * R311.7.8.5 (1 1/4 and 2 in), and of NBC 9.8.7.5 (30 and 43 mm, from memory). */
#define ROUND_INCHES 1.625
#define ROUND_MM 42.0

/* And a flat oval lies flat: as deep as that of a balustrade is by default. */
#define OVAL_INCHES 1.375
#define OVAL_MM 35.0

/* Thickness of a sawtooth stringer (keys_stringers.c). */
#define SAWN_INCHES 1.5
#define SAWN_MM 45.0

static double in_units(const struct job *job, double inches, double mm)
{
	return job->about.units == UNITS_INCHES ? inches * MM_PER_INCH : mm;
}

/* A wall rail takes from the balustrade's what is not said of it; a round one is as deep as wide.
 */
static void settle_wall_rail(const struct job *job, struct job_wall_rail *w)
{
	const struct job_rail *rail = &job->rail;
	bool own = node_has(w->src, "profile");

	if (w->height <= 0)
		w->height = rail->height;
	if (!own) {
		w->profile = rail->profile;
		w->recess = node_has(w->src, "recess") ? w->recess : rail->recess;
	}
	if (w->width <= 0 && own && w->profile == PROFILE_ROUND)
		w->width = in_units(job, ROUND_INCHES, ROUND_MM);
	if (w->width <= 0)
		w->width = rail->width;
	if (w->depth <= 0 && own && w->profile == PROFILE_FLAT_OVAL)
		w->depth = in_units(job, OVAL_INCHES, OVAL_MM);
	if (w->depth <= 0)
		w->depth = own && w->profile == PROFILE_ROUND ? w->width : rail->depth;
	double most = edge_radius_most(w->profile, w->recess, w->depth);
	if (!node_has(w->src, "edge_radius"))
		w->edge_radius = own || rail->edge_radius > most
			? edge_radius_usual(most, job->about.units)
			: rail->edge_radius;
}

/* Mitres need riser boards, and a skirt mitred to them a rough carriage behind it. */
static void settle_open_stringer(struct job *job)
{
	struct job_stringer *open = &job->stringers.open;

	if (node_has(open->src, "kind") ||
		(job->risers.kind == RISER_BOARD && job->skirts.open == OPEN_SKIRT_NONE))
		return;
	open->kind = STRINGER_SAWTOOTH;
	if (!node_has(open->src, "thickness"))
		open->thickness = in_units(job, SAWN_INCHES, SAWN_MM);
}

/* What a zero cannot say, and defaults that depend on several keys. */
static void settle(struct arena *a, struct job *job)
{
	struct job_stair *stair = &job->stair;

	if (!stair->segment_count) {
		stair->segments = NEW(a, struct job_segment);
		stair->segments->src = stair->src;
		stair->segment_count = 1;
	}
	if (!node_has(job->stringers.src, "middle_count"))
		job->stringers.middle_count = -1;
	settle_open_stringer(job);
	settle_nosing(job);
	for (int i = 0; i < job->wall_rail_count; i++)
		settle_wall_rail(job, &job->wall_rails[i]);
}

/* Folded to 48 bits: enough to tell two prints apart, and no more than that. */
static const char *fingerprint(struct arena *a, const char *text)
{
	uint64_t hash = FINGERPRINT_OF_NOTHING;

	for (const unsigned char *p = (const unsigned char *)text; *p; p++)
		hash = fingerprint_add(hash, *p);
	return arena_printf(a, "%012" PRIx64, (hash >> 48 ^ hash) & 0xffffffffffff);
}

/* A stair measured between structural floors still climbs between finished ones: what is laid on
 * the upper floor is added, what is laid on the lower one taken off (NAVEDTRA 14044 ch. 6, at fig.
 * 6-15). */
double job_total_rise(const struct job *job)
{
	const struct job_floors *f = &job->floors;

	if (f->total_rise > 0 || f->structural_rise <= 0)
		return f->total_rise;
	return f->structural_rise + f->upper_finish - f->lower_finish;
}

const char *job_date(const struct job *job)
{
	const char *own = job->about.date ? job->about.date : "", *newest = "";

	if (job->revision_count)
		newest = job->revisions[job->revision_count - 1].date;
	return newest && strcmp(newest, own) > 0 ? newest : own; /* 2026-11-02: as text in order */
}

const struct job *job_read(struct arena *a, const char *text, struct diags *d)
{
	int errors = d->errors;
	const struct node *root = node_load(a, text, d);

	if (!root)
		return NULL;
	struct job_file *f = NEW(a, struct job_file);
	struct field_reader reader = { a, d, &keys_file, job_units(root), &f->job.about.finest };
	group_read(&reader, &keys_file, root, f);
	f->job.about.units = reader.units;
	f->job.file = d->file;
	f->job.fingerprint = fingerprint(a, text);
	settle(a, &f->job);
	job_check(a, f, d);
	if (d->errors > errors)
		return NULL;
	f->job.assumptions = job_assumptions(a, f);
	return &f->job;
}
