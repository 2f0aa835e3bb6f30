/*
 * Every sheet of the demo jobs, on every paper: no text touches another or lies under a heavy
 * line, nothing is off the paper, nothing but the warning is outside the frame.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>

#include "near.h"
#include "pitchboard/sheet.h"
#include "pitchboard/write.h"

static const char *file_text(struct arena *a, const char *path)
{
	char *text = arena_alloc(a, 1, 1 << 16);
	FILE *f = fopen(path, "r");

	assert_non_null(f);
	assert_true(fread(text, 1, (1 << 16) - 1, f) > 0);
	fclose(f);
	return text;
}

/* The job with another paper. */
static const char *on_paper(struct arena *a, const char *job, const char *paper)
{
	const char *at = strstr(job, "  paper: ");

	assert_non_null(at);
	return arena_printf(a, "%.*s  paper: %s%s", (int)(at - job), job, paper, strchr(at, '\n'));
}

static int is_warning(const struct mark *k)
{
	return k->kind == MARK_TEXT && !strncmp(k->text.text, "NOT FOR FABRICATION:", 20);
}

/* All marks but the warning in the margin. */
static struct box framed(struct arena *a, const struct drawing *g, struct measure m)
{
	struct drawing *rest = drawing_new(a, g->use, g->width, g->height);

	for (const struct mark *k = g->first; k; k = k->next) {
		struct mark *copy = NEW(a, struct mark);
		if (is_warning(k))
			continue;
		*copy = *k;
		copy->next = NULL;
		*rest->tail = copy;
		rest->tail = &copy->next;
	}
	return drawing_bounds(rest, m);
}

static void check_frame(struct arena *a, const struct drawing *g, const struct paper *p,
	struct measure m)
{
	struct box b = framed(a, g, m);

	assert_near(b.x0, p->left, 1e-6);
	assert_near(b.y0, p->bottom, 1e-6);
	assert_near(b.x1, p->width - p->right, 1e-6);
	assert_near(b.y1, p->height - p->top, 1e-6);
}

static void check_sheets(const char *path, const char *paper)
{
	struct arena *a = arena_new();
	const char *problem, *report, *text = on_paper(a, file_text(a, path), paper);
	struct faces *faces = faces_load(a, "templates", &problem);
	struct diags d;

	diags_init(&d, a, path, text);
	const struct stair *s = stair_solve(a, job_read(a, text, &d), &d);
	const struct part *parts = parts_make(a, s, &d);
	const struct stationery *st = stationery_read(a, "templates", &d);
	const struct finding *findings =
		code_check(a, s, parts, rules_read(a, "templates", s->job, &d), &d);
	const struct drawing *g = sheets_draw(a, s, parts, (struct issue){ .findings = findings },
		st, faces_measure(faces), &d);
	assert_non_null(g);
	for (; g; g = g->next) {
		if (drawing_faults(a, g, faces_measure(faces), &report))
			fail_msg("%s on %s:\n%s", path, paper, report);
		if (g->use == USE_SHEET)
			check_frame(a, g, stationery_paper(st, paper), faces_measure(faces));
	}
	faces_free(faces);
	arena_free(a);
}

static void no_sheet_has_a_fault_on_any_paper(void **state)
{
	static const char *const papers[] = { "Letter", "Tabloid", "ARCH C", "ARCH D", "A4", "A3",
		"A2", "A1" };

	for (size_t i = 0; i < sizeof(papers) / sizeof(*papers); i++)
		check_sheets(*state, papers[i]);
}

int main(void)
{
	static char alder_lane[] = "jobs/alder-lane.yaml", kiln_yard[] = "jobs/kiln-yard.yaml";
	const struct CMUnitTest tests[] = {
		{ "alder lane: no sheet has a fault on any paper",
			no_sheet_has_a_fault_on_any_paper, NULL, NULL, alder_lane },
		{ "kiln yard: no sheet has a fault on any paper", no_sheet_has_a_fault_on_any_paper,
			NULL, NULL, kiln_yard },
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
