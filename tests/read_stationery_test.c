/* What a shop keeps in templates/. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "near.h"
#include "pitchboard/stationery.h"

static const struct stationery *shop(struct arena *a)
{
	struct diags d;

	diags_init(&d, a, "templates", NULL);
	const struct stationery *s = stationery_read(a, "templates", &d);
	diags_print(&d, stderr);
	assert_non_null(s);
	return s;
}

/* ISO 216 A sizes; ANSI and ARCH sizes from published tables of drawing papers. */
static void papers_have_their_published_sizes(void **state)
{
	static const struct {
		const char *name;
		double width, height;
	} sizes[] = {
		{ "Letter", 11 * 25.4, 8.5 * 25.4 },
		{ "Tabloid", 17 * 25.4, 11 * 25.4 },
		{ "ARCH C", 24 * 25.4, 18 * 25.4 },
		{ "ARCH D", 36 * 25.4, 24 * 25.4 },
		{ "A4", 297, 210 },
		{ "A3", 420, 297 },
		{ "A2", 594, 420 },
		{ "A1", 841, 594 },
	};
	struct arena *a = arena_new();
	const struct stationery *s = shop(a);

	(void)state;
	for (size_t i = 0; i < sizeof(sizes) / sizeof(*sizes); i++) {
		const struct paper *p = stationery_paper(s, sizes[i].name);
		assert_non_null(p);
		assert_near(p->width, sizes[i].width, 1e-9);
		assert_near(p->height, sizes[i].height, 1e-9);
	}
	arena_free(a);
}

/* Frames of ISO 5457: 574 by 811 in A1, 400 by 564 in A2, 277 by 390 in A3. */
static void frames_of_iso_papers_are_the_standards(void **state)
{
	static const struct {
		const char *name;
		double width, height;
	} frames[] = { { "A1", 811, 574 }, { "A2", 564, 400 }, { "A3", 390, 277 } };
	struct arena *a = arena_new();
	const struct stationery *s = shop(a);

	(void)state;
	for (size_t i = 0; i < sizeof(frames) / sizeof(*frames); i++) {
		const struct paper *p = stationery_paper(s, frames[i].name);
		assert_near(p->width - p->left - p->right, frames[i].width, 1e-9);
		assert_near(p->height - p->top - p->bottom, frames[i].height, 1e-9);
	}
	arena_free(a);
}

static void a_paper_is_found_however_its_name_is_typed(void **state)
{
	struct arena *a = arena_new();
	const struct stationery *s = shop(a);

	(void)state;
	assert_ptr_equal(stationery_paper(s, "arch d"), stationery_paper(s, "ARCH D"));
	assert_ptr_equal(stationery_paper(s, "ArchD"), stationery_paper(s, "ARCH D"));
	assert_null(stationery_paper(s, "ARCH"));
	assert_null(stationery_paper(s, "foolscap"));
	arena_free(a);
}

static void a_set_goes_by_the_name_of_its_file(void **state)
{
	struct arena *a = arena_new();
	const struct stationery *s = shop(a);
	const struct sheet_set *full = stationery_set(s, "full");

	(void)state;
	assert_non_null(full);
	assert_string_equal(full->name, "full");
	assert_true(full->n >= 4);
	assert_null(stationery_set(s, "none"));
	arena_free(a);
}

static double height_of(const struct title_block *t)
{
	double height = 0;

	for (int i = 0; i < t->n; i++)
		height += t->rows[i].height;
	return height;
}

/* Width at most 180 mm, so that the block fits an upright A4 (ISO 7200, from memory). */
static void the_title_block_fits_every_paper(void **state)
{
	struct arena *a = arena_new();
	const struct stationery *s = shop(a);

	(void)state;
	assert_true(s->title.width <= 180);
	for (int i = 0; i < s->paper_count; i++)
		assert_true(height_of(&s->title) * 4 < s->papers[i].height);
	arena_free(a);
}

static void on_every_paper_the_title_block_leaves_seven_eighths_of_the_height(void **state)
{
	struct arena *a = arena_new();
	const struct stationery *s = shop(a);

	(void)state;
	for (int i = 0; i < s->paper_count; i++) {
		const struct paper *p = &s->papers[i];
		assert_true(height_of(stationery_title(s, p)) * 7 < p->height);
	}
	arena_free(a);
}

static void put(const char *dir, const char *name, const char *text)
{
	char path[4096];

	assert_true(snprintf(path, sizeof(path), "%s/%s", dir, name) < (int)sizeof(path));
	FILE *f = fopen(path, "w");
	assert_non_null(f);
	fputs(text, f);
	fclose(f);
}

static void remove_from(const char *dir, const char *name)
{
	char path[4096];

	assert_true(snprintf(path, sizeof(path), "%s/%s", dir, name) < (int)sizeof(path));
	remove(path);
}

/* The problems of a folder whose papers.yaml is given, its name left out. */
static char *said_of_papers(const char *papers)
{
	const char *tmp = getenv("TMPDIR");
	char dir[4096];
	char *said = NULL;
	size_t size;

	snprintf(dir, sizeof(dir), "%s/stationery.XXXXXX", tmp ? tmp : "/tmp");
	assert_non_null(mkdtemp(dir));
	put(dir, "papers.yaml", papers);
	put(dir, "title-block.yaml", "title_block: {width: 180, rows: []}\n");
	struct arena *a = arena_new();
	struct diags d;
	FILE *to = open_memstream(&said, &size);
	diags_init(&d, a, dir, NULL);
	assert_null(stationery_read(a, dir, &d));
	for (const struct diag *g = d.first; g; g = g->next)
		fprintf(to, "%s:%d:%d: %s\n", strrchr(d.file, '/') + 1, g->at.line, g->at.col,
			g->text);
	fclose(to);
	arena_free(a);
	remove_from(dir, "papers.yaml");
	remove_from(dir, "title-block.yaml");
	rmdir(dir);
	return said;
}

static void a_problem_names_the_template_file(void **state)
{
	char *said = said_of_papers("papers:\n  - {nmae: Slip, width: 200, height: 1, left: 10, "
				    "scales: metric, lettering: 1.8}\n");

	(void)state;
	assert_string_equal(said,
		"papers.yaml:2:5: papers.name is missing\n"
		"papers.yaml:2:6: unknown key \"nmae\" in papers\n"
		"papers.yaml:2:38: papers.height: \"1\" was read as 1 mm; it must be "
		"between 100 mm and 5000 mm\n"
		"papers.yaml:2:78: papers.lettering: \"1.8\" was read as 1.8 mm; it "
		"must be between 2.5 mm and 10 mm\n");
	free(said);
}

static void margins_leave_room_for_a_frame(void **state)
{
	char *said = said_of_papers(
		"papers: [{name: Slip, width: 100, height: 100, left: 60, scales: metric}]\n");

	(void)state;
	assert_non_null(strstr(said, "papers.yaml: the margins of Slip leave no room for a frame"));
	free(said);
}

static void a_shop_has_at_least_one_set(void **state)
{
	char *said = said_of_papers(
		"papers: [{name: Slip, width: 200, height: 100, left: 10, scales: metric}]\n");

	(void)state;
	assert_non_null(strstr(said, "there is no set in "));
	free(said);
}

static void missing_folders_are_said_to_be_missing(void **state)
{
	struct arena *a = arena_new();
	struct diags d;

	(void)state;
	diags_init(&d, a, "nowhere", NULL);
	assert_null(stationery_read(a, "nowhere", &d));
	assert_int_equal(d.errors, 1);
	assert_non_null(strstr(d.first->text, "nowhere/papers.yaml"));
	arena_free(a);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(papers_have_their_published_sizes),
		cmocka_unit_test(frames_of_iso_papers_are_the_standards),
		cmocka_unit_test(a_paper_is_found_however_its_name_is_typed),
		cmocka_unit_test(a_set_goes_by_the_name_of_its_file),
		cmocka_unit_test(the_title_block_fits_every_paper),
		cmocka_unit_test(on_every_paper_the_title_block_leaves_seven_eighths_of_the_height),
		cmocka_unit_test(a_problem_names_the_template_file),
		cmocka_unit_test(margins_leave_room_for_a_frame),
		cmocka_unit_test(a_shop_has_at_least_one_set),
		cmocka_unit_test(missing_folders_are_said_to_be_missing),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
