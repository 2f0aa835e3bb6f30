#include "random/mends.h"

#include <string.h>

#include "job_edit.h"
#include "pitchboard/rule.h"

static const char *const editions[] = { "irc-2018", "irc-2021", "irc-2024", "ibc-2021",
	"approved-document-k-2013", "nbc-2020", "ncc-2022", "din-18065-2020" };

enum { EDITIONS = sizeof(editions) / sizeof(editions[0]) };

/* All rows, or the one alone. */
static const struct finding *checked(struct arena *a, const char *text, const struct rule *row)
{
	struct diags d;

	diags_init(&d, a, "mended.yaml", text);
	const struct job *job = job_read(a, text, &d);
	const struct rule_set *rules = rules_read(a, "templates", job, &d);
	const struct stair *s = stair_solve(a, job, rules_for_layout(a, rules), &d);
	const struct part *parts = parts_make(a, s, &d);
	if (!parts || !row)
		return code_check(a, s, parts, rules, &d);
	struct rule_set one = *rules;
	while (strcmp(one.rules->row, row->row) != 0)
		one.rules++;
	one.rule_count = 1;
	return code_check(a, s, parts, &one, &d);
}

static const char *edited(struct arena *a, const char *text, const struct finding *f)
{
	for (int i = 0; i < f->setting_count && text; i++)
		text = job_edit(a, text, f->settings[i].path, f->settings[i].value);
	return text;
}

static void try_one(struct arena *a, const char *text, const struct finding *f, struct mended *m)
{
	const char *otherwise = edited(a, text, f);
	const struct finding *now = otherwise ? checked(a, otherwise, f->rule) : NULL;

	if (!now) {
		m->refused++;
		return;
	}
	if (now->state != FINDING_NOT_MET) {
		m->met++;
		return;
	}
	m->why = arena_printf(a, "%s %s: %s; with %s: %s it is %s (%s)", f->rules->name,
		f->rule->row, f->mend, f->settings[0].path, f->settings[0].value, now->provided,
		now->asked);
}

struct mended mends_try(struct arena *a, const char *text, uint64_t seed)
{
	struct mended m = { .why = NULL };
	const char *with_code = strstr(text, "\ncode:")
		? text
		: arena_printf(a, "%scode: %s\n", text, editions[seed % EDITIONS]);

	for (const struct finding *f = checked(a, with_code, NULL); f && !m.why; f = f->next)
		if (f->state == FINDING_NOT_MET && f->setting_count)
			try_one(a, with_code, f, &m);
	return m;
}
