/*
 * pitchboard check: a stair against the building code that its job names.
 */
#include "cli/command.h"
#include "cli/files.h"
#include "pitchboard/rule.h"

#include <stdio.h>

enum { CHECK_EDITION, CHECK_JSON, CHECK_LIST, CHECK_TEMPLATES };

static const struct option options[] = {
	[CHECK_EDITION] = { 'e', "edition", "NAME", "against this one, whatever the job names" },
	[CHECK_JSON] = { 0, "json", NULL, "as JSON, for other programs" },
	[CHECK_LIST] = { 'l', "list", NULL, "print the editions there are" },
	[CHECK_TEMPLATES] = { 0, "templates", "DIR", "the folder with the folder rules in it" },
	{ 0 },
};

struct asked {
	const char *dir, *edition;
	bool json;
};

static enum status no_edition(struct arena *a, const char *dir, const char *path)
{
	complain("%s names no edition of a code, and none is guessed: the place decides.\n"
		 "Write  code: EDITION  into the job, or use --edition; there are:",
		path);
	for (const char *const *name = rules_names(a, dir); *name; name++)
		fprintf(stderr, "  %s\n", *name);
	return STATUS_WRONG;
}

/* The job with another edition; amendments go with the edition they were made for. */
static const struct job *against(struct arena *a, const struct job *job, const char *edition)
{
	struct job *other = NEW(a, struct job);

	if (!job || !edition)
		return job;
	*other = *job;
	other->code.edition = edition;
	other->code.amendment_count = 0;
	return other;
}

static enum status check_job(struct arena *a, const struct asked *asked, const char *text,
	struct diags *d)
{
	const struct job *job = against(a, job_read(a, text, d), asked->edition);
	const struct rule_set *rules = rules_read(a, asked->dir, job, d);
	const struct stair *stair = stair_solve(a, job, rules_for_layout(a, rules), d);
	const struct part *parts = parts_make(a, stair, d);
	struct diags told;

	/* findings are printed in full below, not as warnings */
	diags_init(&told, a, d->file, d->source);
	const struct finding *list = code_check(a, stair, parts, rules, &told);
	wishes_check(a, stair, parts, d);
	diags_print(d, stderr);
	if (!parts || d->errors)
		return STATUS_WRONG;
	if (!rules)
		return no_edition(a, asked->dir, d->file);
	fputs(asked->json ? findings_json(a, list, d->file)
			  : arena_printf(a, "%s: %s", d->file, findings_text(a, list)),
		stdout);
	return findings_count(list, FINDING_NOT_MET) ? STATUS_FINDINGS : STATUS_DONE;
}

static enum status check_file(const struct asked *asked, const char *path)
{
	struct arena *a = arena_new();
	struct diags d;
	const char *text = job_text(a, path, &d);
	enum status status = text ? check_job(a, asked, text, &d) : STATUS_WRONG;

	arena_free(a);
	return status;
}

static enum status list_editions(struct arena *a, const char *dir)
{
	for (const char *const *name = rules_names(a, dir); *name; name++)
		printf("%s\n", *name);
	return STATUS_DONE;
}

static enum status run_check(struct arena *a, const struct arguments *args)
{
	struct asked asked = { templates_find(a, args->values[CHECK_TEMPLATES]),
		args->values[CHECK_EDITION], args->values[CHECK_JSON] != NULL };
	enum status worst = STATUS_DONE;

	if (!asked.dir)
		return STATUS_MACHINE;
	if (args->values[CHECK_LIST])
		return list_editions(a, asked.dir);
	if (args->count == 0) {
		complain("which job? try: pitchboard check my-stair.yaml");
		return STATUS_WRONG;
	}
	for (int i = 0; i < args->count; i++) {
		enum status status = check_file(&asked, args->operands[i]);
		worst = status > worst ? status : worst;
	}
	return worst;
}

const struct command command_check = {
	.name = "check",
	.operands = "JOB...",
	.summary = "check stairs against the building code that their jobs name",
	.options = options,
	.more = "Says, limit by limit, what the edition asks, what this stair has, and where; what "
		"is not\nmet comes with a mend.  A limit that is met by less than the shop's "
		"tolerance is near.\nWhat a job cannot show is not checked, and never counted as "
		"met.  Exit status:\n"
		"  0  every limit that was checked is met as entered\n"
		"  1  some limit is not met\n"
		"  2  the job is wrong, or names no edition\n"
		"  3  the machine failed\n",
	.run = run_check,
};
