#include "cli/earlier.h"

#include <stdio.h>

#include "cli/files.h"
#include "pitchboard/rule.h"

struct earlier_job earlier_open(struct arena *a, const char *path, const char *templates)
{
	struct earlier_job e = { .path = path };
	struct diags d;

	if (!path)
		return e;
	struct text_result file = text_read(a, path);
	e.problem = file.problem;
	if (!file.text)
		return e;
	diags_init(&d, a, path, file.text);
	const struct job *job = job_read(a, file.text, &d);
	const struct rule_set *rules = rules_read(a, templates, job, &d);
	e.was.stair = stair_solve(a, job, rules_for_layout(a, rules), &d);
	e.was.parts = parts_make(a, e.was.stair, &d);
	if (e.was.parts)
		return e;
	diags_print(&d, stderr);
	e.problem = "the earlier job is wrong: nothing can be compared with it";
	return e;
}

void earlier_tell(const struct earlier_job *e, const struct change *changes)
{
	if (!e->path)
		return;
	fprintf(stderr, "since %s:%s\n", e->path, changes ? "" : " nothing has changed");
	for (; changes; changes = changes->next)
		fprintf(stderr, "  %s\n", changes->text);
}
