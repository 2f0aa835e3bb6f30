/*
 * pitchboard draw: the way through the house, once for each job file.
 *
 * Every job has an arena of its own and shares nothing with the others but what
 * is read once and never changed; a job that is wrong does not stop the next.
 */
#include "base/file.h"
#include "cli/command.h"
#include "cli/earlier.h"
#include "cli/files.h"
#include "cli/letters.h"
#include "cli/printing.h"

#include <stdio.h>
#include <string.h>

enum { DRAW_OUTPUT, DRAW_QUIET, DRAW_TEMPLATES, DRAW_SET, DRAW_SINCE, DRAW_DUMP };

static const struct option options[] = {
	[DRAW_OUTPUT] = { 'o', "output", "DIR", "where the drawings go; out when not given" },
	[DRAW_QUIET] = { 'q', "quiet", NULL, "print no paths and no table of layouts" },
	[DRAW_TEMPLATES] = { 0, "templates", "DIR", "papers, title block, sets and fonts" },
	[DRAW_SET] = { 0, "set", "NAME",
		"which sheets instead of the job's own: full, shop, client, permit ..." },
	[DRAW_SINCE] = { 0, "since", "JOB",
		"an earlier job file: what differs is listed, and clouded on the sheets" },
	[DRAW_DUMP] = { 0, "dump", "NOUN",
		"print one stage as text: job, stair, parts, findings or drawing" },
	{ 0 },
};

enum dump {
	DUMP_NONE,
	DUMP_JOB,
	DUMP_STAIR,
	DUMP_PARTS,
	DUMP_FINDINGS,
	DUMP_DRAWING,
	DUMP_UNKNOWN
};

/* What the jobs of one call share. */
struct shop {
	const char *dir;       /* where the drawings go */
	const char *templates; /* where papers, sets and rules are */
	const char *set;       /* NULL: each job's own */
	struct earlier_job earlier;
	bool quiet;
	enum dump dump;
	struct printing printing;
};

/* DUMP_NONE when nothing was asked for. */
static enum dump dump_named(const char *name)
{
	static const char *const nouns[] = { "", "job", "stair", "parts", "findings", "drawing" };

	if (!name)
		return DUMP_NONE;
	for (int i = DUMP_JOB; i < DUMP_UNKNOWN; i++)
		if (strcmp(nouns[i], name) == 0)
			return (enum dump)i;
	return DUMP_UNKNOWN;
}

static void print_dump(struct arena *a, enum dump dump, const struct job *job,
	const struct stair *stair, const struct part *parts, const struct finding *findings,
	const struct drawing *drawings)
{
	switch (dump) {
	case DUMP_NONE:
	case DUMP_UNKNOWN: return;
	case DUMP_JOB: fputs(job ? job_dump(a, job) : "", stdout); return;
	case DUMP_STAIR: fputs(stair ? stair_dump(a, stair) : "", stdout); return;
	case DUMP_PARTS: fputs(parts ? parts_dump(a, parts) : "", stdout); return;
	case DUMP_FINDINGS: fputs(findings_text(a, findings), stdout); return;
	case DUMP_DRAWING:
		for (const struct drawing *g = drawings; g; g = g->next)
			fputs(drawing_dump(a, g), stdout);
		return;
	}
}

static struct imprint imprint_of(struct arena *a, const struct job *job)
{
	const struct job_about *about = &job->about;

	return (struct imprint){
		.title = about->name,
		.author = about->drawn_by,
		.subject = arena_printf(a, "Stair drawings%s%s", *about->number ? ", job " : "",
			about->number),
		.keywords = arena_printf(a, "job file %s", job->fingerprint),
		.date = job_date(job),
	};
}

static enum status write_files(struct arena *a, const struct shop *shop, const struct job *job,
	const struct drawing *drawings)
{
	struct imprint imprint = imprint_of(a, job);
	struct write_result result =
		write_drawings(a, drawings, &imprint, shop->printing.faces, shop->dir);

	for (const struct written *w = result.files; w && !shop->quiet; w = w->next)
		printf("%s\n", w->path);
	if (!result.problem)
		return STATUS_DONE;
	complain("%s", result.problem);
	return STATUS_MACHINE;
}

/* What is said on the sheets beside the wood; the earlier job is drawn for its lettering. */
static struct issue issue_make(struct arena *a, const struct shop *shop, const struct stair *stair,
	const struct part *parts, const struct finding *findings)
{
	const struct earlier *was = &shop->earlier.was;
	struct issue now = { .set = shop->set, .findings = findings };
	struct diags d;

	if (!was->parts || !parts)
		return now;
	diags_init(&d, a, shop->earlier.path, NULL);
	now.was = *was;
	now.changes = changes_find(a, *was, stair, parts);
	const struct finding *before = code_check(a, was->stair, was->parts,
		rules_read(a, shop->templates, was->stair->job, &d), &d);
	now.earlier = sheets_draw(a, was->stair, was->parts,
		(struct issue){ .set = shop->set, .findings = before }, shop->printing.stationery,
		faces_measure(shop->printing.faces), &d);
	return now;
}

/* The program in a few lines: read, solve, make, check, draw, write.  Rules are read before the
 * stair is solved, for the layout is chosen by them. */
static enum status draw_job(struct arena *a, const struct shop *shop, const char *text,
	struct diags *d)
{
	const struct job *job = job_read(a, text, d);
	const struct rule_set *rules = rules_read(a, shop->templates, job, d);
	const struct stair *stair = stair_solve(a, job, rules_for_layout(a, rules), d);
	const struct part *parts = parts_make(a, stair, d);
	const struct finding *findings = code_check(a, stair, parts, rules, d);
	const struct issue issue = issue_make(a, shop, stair, parts, findings);
	const struct drawing *drawings = sheets_draw(a, stair, parts, issue,
		shop->printing.stationery, faces_measure(shop->printing.faces), d);

	wishes_check(a, stair, parts, d);
	letters_tell_missing(faces_missing(shop->printing.faces, drawings), d);
	diags_print(d, stderr);
	if (stair && !shop->quiet)
		fputs(stair_options_text(a, stair), stderr);
	if (!shop->quiet)
		earlier_tell(&shop->earlier, issue.changes);
	print_dump(a, shop->dump, job, stair, parts, findings, drawings);
	if (!drawings)
		return STATUS_WRONG;
	enum status status = d->warnings ? STATUS_FINDINGS : STATUS_DONE;
	if (shop->dump != DUMP_NONE)
		return status;
	enum status written = write_files(a, shop, job, drawings);
	return written > status ? written : status;
}

static enum status draw_file(const struct shop *shop, const char *path)
{
	struct arena *a = arena_new();
	struct diags d;
	const char *text = job_text(a, path, &d);
	enum status status = text ? draw_job(a, shop, text, &d) : STATUS_WRONG;

	arena_free(a);
	return status;
}

/* An earlier job of the same stem: the two would draw over each other. */
static const char *namesake(struct arena *a, const struct arguments *args, int job)
{
	const char *mine = path_stem(a, args->operands[job]);

	for (int i = 0; i < job; i++)
		if (strcmp(path_stem(a, args->operands[i]), mine) == 0)
			return args->operands[i];
	return NULL;
}

static const char *usage_problem(struct arena *a, const struct arguments *args, enum dump dump)
{
	if (dump == DUMP_UNKNOWN)
		return "--dump takes job, stair, parts, findings or drawing";
	if (args->count == 0)
		return "which job? try: pitchboard draw my-stair.yaml";
	for (int i = 0; i < args->count; i++) {
		const char *other = namesake(a, args, i);
		if (other)
			return arena_printf(a,
				"%s and %s would draw over each other; draw them in two calls, "
				"each with its own -o",
				other, args->operands[i]);
	}
	if (args->values[DRAW_SINCE] && args->count > 1)
		return "--since compares one job with its earlier self: name one job";
	return NULL;
}

static enum status shop_open(struct arena *a, struct shop *shop, const char *asked)
{
	shop->templates = templates_find(a, asked);
	return shop->templates ? printing_open(a, shop->templates, &shop->printing)
			       : STATUS_MACHINE;
}

static enum status run_draw(struct arena *a, const struct arguments *args)
{
	const char *dir = args->values[DRAW_OUTPUT];
	struct shop shop = {
		.dir = dir ? dir : "out",
		.quiet = args->values[DRAW_QUIET] != NULL,
		.set = args->values[DRAW_SET],
		.dump = dump_named(args->values[DRAW_DUMP]),
	};
	const char *problem = usage_problem(a, args, shop.dump);

	if (problem) {
		complain("%s", problem);
		return STATUS_WRONG;
	}
	enum status worst = shop_open(a, &shop, args->values[DRAW_TEMPLATES]);
	if (shop.printing.faces)
		shop.earlier = earlier_open(a, args->values[DRAW_SINCE], shop.templates);
	if (shop.earlier.problem) {
		complain("%s", shop.earlier.problem);
		faces_free(shop.printing.faces);
		return STATUS_WRONG;
	}
	for (int i = 0; i < args->count && shop.printing.faces; i++) {
		enum status status = draw_file(&shop, args->operands[i]);
		worst = status > worst ? status : worst;
	}
	faces_free(shop.printing.faces);
	return worst;
}

const struct command command_draw = {
	.name = "draw",
	.operands = "JOB...",
	.summary = "draw the sheets and full-size templates of job files",
	.options = options,
	.more = "Prints the path of every file written, one a line.  The drawings are named after "
		"the job\nfile.  With several jobs each is drawn by itself and the worst exit "
		"status counts:\n"
		"  0  drawn\n"
		"  1  drawn, with warnings to read (headroom short, a plank longer than stock, a "
		"letter\n     that cannot be set ...)\n"
		"  2  the job is wrong: every problem is listed, earlier drawings are untouched\n"
		"  3  the machine failed: disk full, no permission; earlier drawings are whole\n",
	.run = run_draw,
};
