/*
 * Any bytes the whole way to drawings, without the writing of files.
 */
#include "fuzz/harness.h"
#include "pitchboard/sheet.h"

#include <stdlib.h>
#include <string.h>

static double square_letters(const void *faces, enum letter_style style, double height,
	const char *text, size_t bytes)
{
	(void)faces;
	(void)style;
	(void)text;
	return 0.6 * height * (double)bytes;
}

/* Read once: it is the same for every job, and never changed. */
static const struct stationery *stationery(void)
{
	static struct arena *a;
	static const struct stationery *papers;
	struct diags d;

	if (a)
		return papers;
	a = arena_new();
	diags_init(&d, a, "templates", NULL);
	papers = stationery_read(a, "templates", &d);
	if (!papers)
		abort();
	return papers;
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
	const struct measure measure = { square_letters, NULL };

	if (size && memchr(data, 0, size))
		return 0;

	struct arena *a = arena_new();
	const char *text = size ? arena_strndup(a, (const char *)data, size) : "";
	struct diags d;
	diags_init(&d, a, "fuzz.yaml", text);
	const struct job *job = job_read(a, text, &d);
	const struct rule_set *rules = rules_read(a, "templates", job, &d);
	const struct stair *stair = stair_solve(a, job, rules_for_layout(a, rules), &d);
	const struct part *parts = parts_make(a, stair, &d);
	const struct finding *findings = code_check(a, stair, parts, rules, &d);
	const struct drawing *drawings = sheets_draw(a, stair, parts,
		(struct issue){ .findings = findings }, stationery(), measure, &d);
	if ((drawings == NULL) != (d.errors > 0))
		abort();
	arena_free(a);
	return 0;
}
