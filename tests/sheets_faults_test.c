/*
 * Every sheet of every set of the demo jobs, on every paper: no text touches another or lies under
 * a heavy line, nothing is off the paper, nothing but what is said in the margins is outside the
 * frame; nothing is in the space kept for a stamp.
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

static int is_in_margin(const struct mark *k, const struct sheet_set *set)
{
	return k->kind == MARK_TEXT &&
		(!strncmp(k->text.text, "NOT FOR FABRICATION:", 20) ||
			!strncmp(k->text.text, "Not to be built from.", 21) ||
			(*set->says && !strcmp(k->text.text, set->says)));
}

/* All marks but what is said in the margins. */
static struct box framed(struct arena *a, const struct drawing *g, struct measure m,
	const struct sheet_set *set)
{
	struct drawing *rest = drawing_new(a, g->use, g->width, g->height);

	for (const struct mark *k = g->first; k; k = k->next) {
		struct mark *copy = NEW(a, struct mark);
		if (is_in_margin(k, set))
			continue;
		*copy = *k;
		copy->next = NULL;
		*rest->tail = copy;
		rest->tail = &copy->next;
	}
	return drawing_bounds(rest, m);
}

static void check_frame(struct box b, const struct paper *p)
{
	assert_near(b.x0, p->left, 1e-6);
	assert_near(b.y0, p->bottom, 1e-6);
	assert_near(b.x1, p->width - p->right, 1e-6);
	assert_near(b.y1, p->height - p->top, 1e-6);
}

static double title_height(const struct title_block *t)
{
	double h = 0;

	for (int i = 0; i < t->n; i++)
		h += t->rows[i].height;
	return h;
}

static int is_inside(struct box b, struct vec p)
{
	return p.x > b.x0 && p.x < b.x1 && p.y > b.y0 && p.y < b.y1;
}

/* On a paper too narrow for it there is none: a warning says so.  One strip of lettering under its
 * upper edge is for the words over it. */
static struct box stamp_space(const struct stationery *st, const struct paper *p,
	const struct sheet_set *set)
{
	double x = p->width - p->right - stationery_title(st, p)->width;

	return (struct box){ x - set->stamp + 0.1, p->bottom + 0.1, x - 0.1,
		p->bottom + title_height(stationery_title(st, p)) - 2 * p->lettering - 0.1 };
}

static void check_stamp_space(const struct drawing *g, struct box space, const struct paper *p)
{
	if (space.x0 < p->left)
		return;
	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind == MARK_TEXT)
			assert_false(is_inside(space, k->text.at));
		for (int i = 0; k->kind == MARK_LINE && i < k->line.n; i++)
			assert_false(is_inside(space, k->line.points[i]));
	}
}

/* One job on one paper. */
struct drawn {
	const char *path;
	const struct stair *stair;
	const struct part *parts;
	const struct finding *findings;
	const struct stationery *stationery;
	const struct paper *paper;
	struct measure measure;
};

static void check_set(struct arena *a, const struct drawn *w, const struct sheet_set *set)
{
	const char *report;
	struct diags d;

	diags_init(&d, a, w->path, NULL);
	const struct drawing *g = sheets_draw(a, w->stair, w->parts,
		(struct issue){ .set = set->name, .findings = w->findings }, w->stationery,
		w->measure, &d);
	assert_non_null(g);
	for (; g; g = g->next) {
		if (drawing_faults(a, g, w->measure, &report))
			fail_msg("%s, %s on %s:\n%s", w->path, set->name, w->paper->name, report);
		if (g->use != USE_SHEET)
			continue;
		check_frame(framed(a, g, w->measure, set), w->paper);
		if (set->stamp > 0)
			check_stamp_space(g, stamp_space(w->stationery, w->paper, set), w->paper);
	}
}

static void check_sheets(const char *path, const char *paper)
{
	struct arena *a = arena_new();
	const char *problem, *text = on_paper(a, file_text(a, path), paper);
	struct faces *faces = faces_load(a, "templates", &problem);
	struct diags d;

	diags_init(&d, a, path, text);
	const struct stair *s = stair_solve(a, job_read(a, text, &d), NULL, &d);
	const struct part *parts = parts_make(a, s, &d);
	const struct stationery *st = stationery_read(a, "templates", &d);
	const struct drawn w = { path, s, parts,
		code_check(a, s, parts, rules_read(a, "templates", s->job, &d), &d), st,
		stationery_paper(st, paper), faces_measure(faces) };
	for (int i = 0; i < st->set_count; i++)
		check_set(a, &w, &st->sets[i]);
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
	static char alder_lane[] = "jobs/alder-lane.yaml", kiln_yard[] = "jobs/kiln-yard.yaml",
		    dyke_house[] = "jobs/dyke-house.yaml";
	const struct CMUnitTest tests[] = {
		{ "alder lane: no sheet has a fault on any paper",
			no_sheet_has_a_fault_on_any_paper, NULL, NULL, alder_lane },
		{ "kiln yard: no sheet has a fault on any paper", no_sheet_has_a_fault_on_any_paper,
			NULL, NULL, kiln_yard },
		{ "dyke house: no sheet has a fault on any paper",
			no_sheet_has_a_fault_on_any_paper, NULL, NULL, dyke_house },
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
