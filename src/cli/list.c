/*
 * pitchboard list: what is cut, bought and set up, as text, CSV or JSON.
 */
#include "pitchboard/list.h"
#include "cli/command.h"
#include "cli/earlier.h"
#include "cli/files.h"
#include "cli/printing.h"
#include "pitchboard/rule.h"

#include <stdio.h>

enum { LIST_CSV, LIST_JSON, LIST_ONLY, LIST_SINCE, LIST_TEMPLATES };

static const struct option options[] = {
	[LIST_CSV] = { 0, "csv", NULL, "one list as CSV; the cut list when --only names none" },
	[LIST_JSON] = { 0, "json", NULL, "all lists as one JSON object" },
	[LIST_ONLY] = { 0, "only", "LIST",
		"cut, lumber, mouldings, hardware, buying, cutting or setups" },
	[LIST_SINCE] = { 0, "since", "OLD",
		"say in the cut list which parts have changed since job OLD" },
	[LIST_TEMPLATES] = { 0, "templates", "DIR", "rules, papers, sets and fonts" },
	{ 0 },
};

/* What the lists are made with, beside the job. */
struct desk {
	const char *templates;
	struct printing printing;
	struct earlier_job earlier;
};

/* None when the job is wrong.  The sheets are drawn for the list of what they show; what they are
 * warned of is `draw`'s to tell. */
static struct lists lists_of(struct arena *a, const struct desk *desk, const char *text,
	struct diags *d)
{
	const struct earlier_job *earlier = &desk->earlier;
	const struct job *job = job_read(a, text, d);
	const struct rule_set *rules = rules_read(a, desk->templates, job, d);
	const struct stair *stair = stair_solve(a, job, rules_for_layout(a, rules), d);
	const struct part *parts = parts_make(a, stair, d);
	const struct blank *blanks = blanks_make(a, stair, parts);
	const struct cut_group *cutting = cutting_make(a, stair, blanks, d);

	diags_print(d, stderr);
	if (!parts || d->errors)
		return (struct lists){ NULL, 0 };
	struct diags unheeded;
	diags_init(&unheeded, a, desk->templates, NULL);
	const struct drawing *sheets = sheets_draw(a, stair, parts, (struct issue){ 0 },
		desk->printing.stationery, faces_measure(desk->printing.faces), &unheeded);
	return lists_make(a,
		&(struct list_sources){ stair, parts, blanks, cutting, sheets, NULL,
			changes_find(a, earlier->was, stair, parts),
			earlier->path ? CHANGES_BY_COLUMN : CHANGES_UNTOLD });
}

static void print_lists(struct arena *a, struct lists lists, const struct list *only,
	const struct arguments *args)
{
	if (args->values[LIST_JSON]) {
		fputs(lists_json(a, only ? (struct lists){ only, 1 } : lists), stdout);
		return;
	}
	if (args->values[LIST_CSV]) {
		fputs(list_csv(a, only ? only : lists_find(lists, "cut")), stdout);
		return;
	}
	for (int i = 0; i < lists.n; i++)
		if (only ? &lists.lists[i] == only : lists.lists[i].row_count > 0)
			fputs(list_text(a, &lists.lists[i]), stdout);
}

static enum status list_job(struct arena *a, struct desk *desk, const struct arguments *args)
{
	const char *name = args->values[LIST_ONLY];
	struct diags d;

	const char *text = job_text(a, args->operands[0], &d);
	if (!text)
		return STATUS_WRONG;
	desk->earlier = earlier_open(a, args->values[LIST_SINCE], desk->templates);
	if (desk->earlier.problem) {
		complain("%s", desk->earlier.problem);
		return STATUS_WRONG;
	}
	struct lists lists = lists_of(a, desk, text, &d);
	if (!lists.n)
		return STATUS_WRONG;
	const struct list *only = name ? lists_find(lists, name) : NULL;
	if (name && !only) {
		complain("there is no list %s; there are %s", name, options[LIST_ONLY].help);
		return STATUS_WRONG;
	}
	print_lists(a, lists, only, args);
	return d.warnings ? STATUS_FINDINGS : STATUS_DONE;
}

static enum status run_list(struct arena *a, const struct arguments *args)
{
	if (args->count != 1 || (args->values[LIST_CSV] && args->values[LIST_JSON])) {
		complain("list takes one job, and one of --csv and --json");
		return STATUS_WRONG;
	}
	struct desk desk = { .templates = templates_find(a, args->values[LIST_TEMPLATES]) };
	if (!desk.templates)
		return STATUS_MACHINE;
	enum status status = printing_open(a, desk.templates, &desk.printing);
	if (status == STATUS_DONE)
		status = list_job(a, &desk, args);
	faces_free(desk.printing.faces);
	return status;
}

const struct command command_list = {
	.name = "list",
	.operands = "JOB",
	.summary = "print what to cut, what to buy, and how to set the saw",
	.options = options,
	.more = "  pitchboard list --csv --only buying my-stair.yaml >to-buy.csv\n\n"
		"CSV and JSON give every length as lettered and, beside it, in millimetres.  The "
		"exit\nstatus is 1 when there are warnings to read: a piece longer than any board "
		"on offer ...\n",
	.run = run_list,
};
