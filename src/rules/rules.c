/*
 * The rules that hold for one job: its edition, with its amendments.
 */
#include <glob.h>
#include <string.h>

#include "base/file.h"
#include "read/suggest.h"
#include "rules/edition.h"
#include "rules/limits.h"

const char *const *rules_names(struct arena *a, const char *dir)
{
	glob_t found;
	size_t n = 0;

	if (glob(arena_printf(a, "%s/rules/*.yaml", dir), 0, NULL, &found) == 0)
		n = found.gl_pathc;
	const char **names = NEW_N(a, const char *, n + 1);
	for (size_t i = 0; i < n; i++)
		names[i] = path_stem(a, found.gl_pathv[i]);
	globfree(&found);
	return names;
}

static bool is_among(const char *const *names, const char *name)
{
	for (; *names; names++)
		if (strcmp(*names, name) == 0)
			return true;
	return false;
}

/* The likely one, else all there are. */
static const char *suggest(struct arena *a, const char *const *names, const char *typed)
{
	int n = 0;

	while (names[n])
		n++;
	struct choice *choices = NEW_N(a, struct choice, n + 1);
	for (int i = 0; i < n; i++)
		choices[i] = (struct choice){ names[i], i };
	return n ? suggest_choice(a, choices, typed) : NULL;
}

/* A fault in a file of the shop is told at the job's edition, and names file and line. */
static void tell_faults(const struct job *job, const struct diags *own, struct diags *d)
{
	for (const struct diag *f = own->first; f; f = f->next)
		diag_error(d, node_pos(job->code.src, "edition"), f->hint, "%s:%d:%d: %s",
			own->file, f->at.line, f->at.col, f->text);
}

static const char *bad_bounds(struct arena *a, struct rule *r, enum units units)
{
	const struct gauge *g = gauge_find(r->gauge);

	if (!g)
		return arena_printf(a, "%s: there is no gauge \"%s\"", r->row, r->gauge);
	if (!bounds_given(&r->bounds))
		return arena_printf(a, "%s: there is no limit", r->row);
	const char *problem = bounds_read(a, &r->bounds, g->unit, units);
	return problem ? arena_printf(a, "%s: %s", r->row, problem) : NULL;
}

static const char *bad_condition(struct arena *a, struct rule_condition *c, enum units units)
{
	const struct gauge *g = gauge_find(c->gauge);

	if (!g)
		return arena_printf(a, "when: there is no gauge \"%s\"", c->gauge);
	if (!bounds_given(&c->bounds))
		return "when: there is no limit";
	return bounds_read(a, &c->bounds, g->unit, units);
}

static void settle_conditions(struct arena *a, const struct rule *r, struct diags *own)
{
	struct rule_condition *conditions = (struct rule_condition *)r->conditions;

	for (int i = 0; i < r->condition_count; i++) {
		const char *problem = bad_condition(a, &conditions[i], r->written_in->units);
		if (problem)
			diag_error(own, node_pos(conditions[i].src, "gauge"), NULL, "%s", problem);
	}
}

static void settle_row(struct arena *a, struct rule *r, struct diags *own)
{
	const char *problem = bad_bounds(a, r, r->written_in->units);

	if (problem)
		diag_error(own, node_pos(r->src, "row"), NULL, "%s", problem);
	settle_conditions(a, r, own);
}

/* Texts become numbers, in the units of the edition that has the row; a fault is told with its
 * file. */
static void settle_limits(struct arena *a, const char *dir, struct rule_set *set,
	const struct job *job, struct diags *d)
{
	struct rule *rules = (struct rule *)set->rules;

	for (int i = 0; i < set->rule_count; i++) {
		struct diags own;
		diags_init(&own, a, edition_path(a, dir, rules[i].written_in->name), NULL);
		if (!*rules[i].not_checked)
			settle_row(a, &rules[i], &own);
		tell_faults(job, &own, d);
	}
}

static struct rule *rule_named(struct rule_set *set, const char *row)
{
	struct rule *rules = (struct rule *)set->rules;

	for (int i = 0; i < set->rule_count; i++)
		if (strcmp(rules[i].row, row) == 0)
			return &rules[i];
	return NULL;
}

static const char *suggest_row(struct arena *a, const struct rule_set *set, const char *typed)
{
	const char **rows = NEW_N(a, const char *, set->rule_count + 1);

	for (int i = 0; i < set->rule_count; i++)
		rows[i] = set->rules[i].row;
	return suggest(a, rows, typed);
}

/* A strict limit gives way to the one that takes its place; what is not amended stays as it was
 * read, in the units of its edition. */
static struct bounds amended(const struct rule *r, const struct bounds *typed)
{
	struct bounds b = r->bounds;

	if (limit_given(typed->least)) {
		b.least = typed->least;
		b.above = (struct limit){ .text = "" };
	}
	if (limit_given(typed->most)) {
		b.most = typed->most;
		b.below = (struct limit){ .text = "" };
	}
	return b;
}

static void amend(struct arena *a, struct rule_set *set, const struct job *job,
	const struct job_amendment *m, struct diags *d)
{
	struct rule *r = rule_named(set, m->row);

	if (!r || *r->not_checked) {
		diag_error(d, node_pos(m->src, "row"), suggest_row(a, set, m->row),
			r ? "code.amendments: the row \"%s\" is not checked, and has no limit"
			  : "code.amendments: there is no row \"%s\" in this edition",
			m->row);
		return;
	}
	if (!*m->least && !*m->most) {
		diag_error(d, node_pos(m->src, "row"), "give least, most or both",
			"code.amendments: %s is amended to what?", m->row);
		return;
	}
	struct bounds typed = { .least = { .text = m->least }, .most = { .text = m->most } };
	const char *problem = bounds_read(a, &typed, gauge_find(r->gauge)->unit, job->about.units);
	if (problem)
		diag_error(d, node_pos(m->src, *m->least ? "least" : "most"), NULL,
			"code.amendments: %s", problem);
	if (!r->amends)
		r->enacted = r->bounds;
	r->bounds = amended(r, &typed);
	r->amends = m;
}

const struct rule_set *rules_read(struct arena *a, const char *dir, const struct job *job,
	struct diags *d)
{
	int errors = d->errors;
	struct diags own;

	if (!job || !*job->code.edition)
		return NULL;
	const char *name = job->code.edition;
	const char *const *names = rules_names(a, dir);
	if (!is_among(names, name)) {
		diag_error(d, node_pos(job->code.src, "edition"), suggest(a, names, name),
			"code.edition: there is no edition \"%s\" in templates/rules", name);
		return NULL;
	}
	diags_init(&own, a, NULL, NULL);
	struct rule_set *set = edition_read(a, dir, name, &own);
	tell_faults(job, &own, d);
	if (set)
		settle_limits(a, dir, set, job, d);
	for (int i = 0; set && i < job->code.amendment_count; i++)
		amend(a, set, job, &job->code.amendments[i], d);
	return d->errors > errors ? NULL : set;
}
