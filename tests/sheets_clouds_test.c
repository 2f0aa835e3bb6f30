/*
 * Which lettering of a sheet counts as changed since an earlier job.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "sheets/kept_words.h"

/* Texts one under the other, 5 mm apart, in the order in which they are lettered. */
static struct drawing *sheet(struct arena *a, const char *const *texts, int n, struct vec from)
{
	struct drawing *g = drawing_new(a, USE_SHEET, 400, 280);

	for (int i = 0; i < n; i++)
		draw_text(g, vec(from.x, from.y - 5 * i), 2.5, ALIGN_LEFT, texts[i]);
	return g;
}

#define COUNT(list) ((int)(sizeof(list) / sizeof((list)[0])))

/* 'k' kept, 'c' changed: one letter a text. */
static void changes(const char *const *then, int m, const char *const *now, int n, struct vec moved,
	const char *expected)
{
	struct arena *a = arena_new();
	const struct drawing *before = sheet(a, then, m, vec(20, 250));
	const bool *kept = words_kept(a, (struct earlier_sheets){ &before, 1 },
		sheet(a, now, n, vec(20 + moved.x, 250 + moved.y)));

	for (int i = 0; i < n; i++)
		if (kept[i] != (expected[i] == 'k'))
			fail_msg("%d: %s is %s", i, now[i], kept[i] ? "kept" : "changed");
	arena_free(a);
}

static void the_same_sheet_has_not_changed(void **state)
{
	static const char *const sizes[] = { "10\"", "7 5/8\"", "10\"" };
	(void)state;
	changes(sizes, 3, sizes, 3, vec(0, 0), "kkk");
}

static void a_sheet_that_moved_as_a_whole_has_not_changed(void **state)
{
	static const char *const sizes[] = { "10\"", "7 5/8\"", "10\"" };
	(void)state;
	changes(sizes, 3, sizes, 3, vec(31, -12), "kkk");
}

/* The run becomes what the nosing was; the nosing becomes something else. */
static void a_figure_that_stood_elsewhere_before_is_a_change(void **state)
{
	static const char *const then[] = { "run", "10\"", "nosing", "1\"", "rise", "7\"" };
	static const char *const now[] = { "run", "1\"", "nosing", "10\"", "rise", "7\"" };
	(void)state;
	changes(then, COUNT(then), now, COUNT(now), vec(0, 0), "kckckk");
}

static void one_more_figure_leaves_the_others_as_they_were(void **state)
{
	static const char *const then[] = { "1", "2", "3", "4" };
	static const char *const now[] = { "1", "2", "2 1/2", "3", "4" };
	(void)state;
	changes(then, COUNT(then), now, COUNT(now), vec(0, 0), "kkckk");
}

/* The same figure a second time is one more, not the old one. */
static void a_figure_is_met_only_once(void **state)
{
	static const char *const then[] = { "a", "10\"", "b" };
	static const char *const now[] = { "a", "10\"", "b", "10\"" };
	(void)state;
	changes(then, COUNT(then), now, COUNT(now), vec(0, 0), "kkkc");
}

static void a_figure_among_changes_is_known_by_its_place(void **state)
{
	static const char *const then[] = { "1\"", "2\"", "3\"" };
	static const char *const now[] = { "4\"", "2\"", "5\"" };
	(void)state;
	changes(then, COUNT(then), now, COUNT(now), vec(0, 0), "ckc");
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(the_same_sheet_has_not_changed),
		cmocka_unit_test(a_sheet_that_moved_as_a_whole_has_not_changed),
		cmocka_unit_test(a_figure_that_stood_elsewhere_before_is_a_change),
		cmocka_unit_test(one_more_figure_leaves_the_others_as_they_were),
		cmocka_unit_test(a_figure_is_met_only_once),
		cmocka_unit_test(a_figure_among_changes_is_known_by_its_place),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
