/*
 * Files are written whole or not at all, and the same drawings give the same bytes.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <dirent.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/file.h"
#include "pitchboard/write.h"
#include "with_faces.h"

static const struct imprint imprint = { "Stair of a test", "N. N.", "", "fingerprint 0",
	"2026-11-02" };

static char *dir;

static int new_folder(void **state)
{
	const char *base = getenv("TMPDIR");

	(void)state;
	dir = arena_printf(arena, "%s/writeXXXXXX", base ? base : "/tmp");
	return mkdtemp(dir) ? 0 : -1;
}

static struct drawing *sheet(const char *id, const char *words)
{
	struct drawing *g = drawing_new(arena, USE_SHEET, 279.4, 215.9);

	g->id = id;
	g->title = "Plan";
	g->file = "set";
	g->svg = id;
	draw_box(g, PEN_FRAME, (struct box){ 10, 10, 260, 200 });
	draw_text(g, vec(20, 20), 3.5, ALIGN_LEFT, words);
	return g;
}

static struct write_result write_to(const struct drawing *g, const char *where)
{
	return write_drawings(arena, g, &imprint, faces, where);
}

static const char *content(const char *name)
{
	struct file_result r = file_read(arena, arena_printf(arena, "%s/%s", dir, name));

	assert_null(r.problem);
	return arena_strndup(arena, (const char *)r.file->bytes, r.file->size);
}

static size_t size_of(const char *name)
{
	struct stat s;

	assert_int_equal(stat(arena_printf(arena, "%s/%s", dir, name), &s), 0);
	return (size_t)s.st_size;
}

static int has(const char *name, const char *what)
{
	struct file_result r = file_read(arena, arena_printf(arena, "%s/%s", dir, name));
	size_t length = strlen(what);

	assert_null(r.problem);
	for (size_t i = 0; i + length <= r.file->size; i++)
		if (memcmp(r.file->bytes + i, what, length) == 0)
			return 1;
	return 0;
}

static int files_in_folder(void)
{
	DIR *d = opendir(dir);
	int n = -2; /* . and .. */

	assert_non_null(d);
	while (readdir(d))
		n++;
	closedir(d);
	return n;
}

static void paths_come_in_the_order_written(void **state)
{
	struct drawing *g = sheet("S-101", "one");

	(void)state;
	g->next = sheet("S-201", "two");
	const struct written *w = write_to(g, dir).files;
	assert_string_equal(w->path + strlen(dir), "/set.pdf");
	assert_string_equal(w->next->path + strlen(dir), "/S-101.svg");
	assert_string_equal(w->next->next->path + strlen(dir), "/S-201.svg");
	assert_null(w->next->next->next);
}

static void sheets_of_one_stem_are_one_file(void **state)
{
	struct drawing *g = sheet("S-101", "one"), *other = sheet("T-1", "template");

	(void)state;
	g->next = other;
	other->file = "roll";
	other->svg = NULL;
	other->next = sheet("S-201", "two");
	assert_null(write_to(g, dir).problem);
	assert_true(has("set.pdf", "/Count 2"));
	assert_true(has("roll.pdf", "/Count 1"));
	assert_int_equal(files_in_folder(), 4);
}

static void the_same_drawings_give_the_same_bytes(void **state)
{
	const char *first = dir;

	(void)state;
	assert_null(write_to(sheet("S-101", "one"), dir).problem);
	assert_null(write_to(sheet("S-102", "between"), dir).problem);
	assert_int_equal(new_folder(NULL), 0);
	assert_null(write_to(sheet("S-102", "between"), dir).problem);
	assert_null(write_to(sheet("S-101", "one"), dir).problem);
	const char *again = content("S-101.svg");
	size_t pdf = size_of("set.pdf");
	struct file_result new = file_read(arena, arena_printf(arena, "%s/set.pdf", dir));
	assert_null(write_to(sheet("S-101", "one"), first).problem);
	struct file_result old = file_read(arena, arena_printf(arena, "%s/set.pdf", first));
	assert_int_equal(old.file->size, pdf);
	assert_memory_equal(old.file->bytes, new.file->bytes, pdf);
	dir = arena_strdup(arena, first);
	assert_string_equal(content("S-101.svg"), again);
}

static void full_size_asks_for_actual_size(void **state)
{
	struct drawing *g = sheet("T-1", "cut here");

	(void)state;
	g->use = USE_ROLL;
	assert_null(write_to(g, dir).problem);
	assert_true(has("set.pdf", "/PrintScaling /None"));
	assert_true(has("set.pdf", "/Duplex /Simplex"));
}

static void a_sheet_leaves_printing_to_the_reader(void **state)
{
	(void)state;
	assert_null(write_to(sheet("S-101", "plan"), dir).problem);
	assert_false(has("set.pdf", "/PrintScaling"));
	assert_true(has("set.pdf", "/DisplayDocTitle true"));
}

static void the_date_is_the_jobs_and_well_formed(void **state)
{
	(void)state;
	assert_null(write_to(sheet("S-101", "plan"), dir).problem);
	assert_true(has("set.pdf", "/CreationDate (D:20261102000000Z)"));
}

static void without_a_date_there_is_none(void **state)
{
	struct imprint undated = imprint;

	(void)state;
	undated.date = "";
	assert_null(write_drawings(arena, sheet("S-101", "plan"), &undated, faces, dir).problem);
	assert_false(has("set.pdf", "/CreationDate"));
}

static void an_svg_says_what_it_shows(void **state)
{
	(void)state;
	assert_null(write_to(sheet("S-101", "7 5/8\" & <so on>"), dir).problem);
	const char *svg = content("S-101.svg");
	assert_non_null(strstr(svg, "<title>S-101 Plan</title>"));
	assert_non_null(strstr(svg, "\n7 5/8\" &amp; &lt;so on&gt;</desc>"));
	assert_non_null(strstr(svg, "width=\"279.4mm\" height=\"215.9mm\""));
}

static void a_letter_that_no_face_holds_is_counted(void **state)
{
	(void)state;
	assert_int_equal(faces_missing(faces, sheet("S-101", "\u0141ukasz \u0150sz")).letters, 0);
	struct missing m = faces_missing(faces, sheet("S-101", "so \u6F22 and \u5B57"));
	assert_int_equal(m.letters, 2);
	assert_int_equal(m.code, 0x6F22);
	assert_string_equal(m.text, "so \u6F22 and \u5B57");
}

static void spoilt_text_does_not_spoil_the_file(void **state)
{
	(void)state;
	assert_null(write_to(sheet("S-101", "half a letter: \xC5, a bell: \a"), dir).problem);
	assert_non_null(strstr(content("S-101.svg"), "\nhalf a letter: ?, a bell: ?</desc>"));
}

static void names_with_quotes_are_no_trouble(void **state)
{
	struct drawing *g = sheet("S-'1\\", "odd name");

	(void)state;
	g->svg = NULL;
	assert_null(write_to(g, dir).problem);
}

static void folders_are_made_as_needed(void **state)
{
	(void)state;
	const char *deep = arena_printf(arena, "%s/a/b/c", dir);
	assert_null(write_to(sheet("S-101", "plan"), deep).problem);
	assert_true(has("a/b/c/set.pdf", "%PDF-1.4"));
}

static void limit_file_size(rlim_t bytes)
{
	struct rlimit limit;

	getrlimit(RLIMIT_FSIZE, &limit);
	limit.rlim_cur = bytes;
	assert_int_equal(setrlimit(RLIMIT_FSIZE, &limit), 0);
}

static void when_the_disk_is_full_the_earlier_set_stays_whole(void **state)
{
	(void)state;
	assert_null(write_to(sheet("S-101", "earlier"), dir).problem);
	const char *svg = content("S-101.svg");
	limit_file_size(size_of("set.pdf") + 100); /* the PDF fits, the longer SVG does not */
	struct drawing *g = sheet("S-101", "later");
	for (int i = 0; i < 4000; i++)
		draw_line(g, PEN_HATCH, vec(20 + i * 0.01, 20), vec(30 + i * 0.01, 30));
	struct write_result r = write_to(g, dir);
	limit_file_size(RLIM_INFINITY);
	assert_non_null(strstr(r.problem, "cannot be written"));
	assert_null(r.files);
	assert_string_equal(content("S-101.svg"), svg);
	assert_int_equal(files_in_folder(), 2);
}

static void a_folder_in_the_way_stops_the_whole_set(void **state)
{
	(void)state;
	mkdir(arena_printf(arena, "%s/S-101.svg", dir), 0777);
	struct write_result r = write_to(sheet("S-101", "plan"), dir);
	assert_non_null(strstr(r.problem, "S-101.svg: a folder stands in the way"));
	assert_int_equal(files_in_folder(), 1);
}

static void put(const char *path, const char *words)
{
	struct fileset *set = fileset_open(arena);

	assert_null(fileset_add(set, path, words, strlen(words)));
	assert_null(fileset_close(set, NULL));
}

static void a_file_for_a_folder_is_told(void **state)
{
	(void)state;
	const char *file = arena_printf(arena, "%s/out", dir);

	put(file, "");
	assert_non_null(write_to(sheet("S-101", "plan"), file).problem);
	assert_int_equal(size_of("out"), 0);
}

/* In a container every run may have this process number. */
static void what_another_run_is_writing_is_left_alone(void **state)
{
	const char *theirs = arena_printf(arena, "%s/.set.pdf.%ld-0.part", dir, (long)getpid());

	(void)state;
	put(theirs, "half");
	assert_null(write_to(sheet("S-101", "plan"), dir).problem);
	assert_string_equal(content(strrchr(theirs, '/') + 1), "half");
	assert_true(has("set.pdf", "%PDF-1.4"));
	assert_int_equal(files_in_folder(), 3);
}

static void after_a_failure_another_run_s_file_is_still_there(void **state)
{
	const char *theirs = arena_printf(arena, "%s/.S-101.svg.%ld-0.part", dir, (long)getpid());

	(void)state;
	put(theirs, "half");
	mkdir(arena_printf(arena, "%s/S-101.svg", dir), 0777);
	assert_non_null(write_to(sheet("S-101", "plan"), dir).problem);
	assert_string_equal(content(strrchr(theirs, '/') + 1), "half");
	assert_int_equal(files_in_folder(), 2);
}

static void a_pipe_is_refused_without_waiting(void **state)
{
	const char *pipe = arena_printf(arena, "%s/job.yaml", dir);

	(void)state;
	assert_int_equal(mkfifo(pipe, 0666), 0);
	alarm(5); /* or the test would hang with it */
	struct file_result r = file_read(arena, pipe);
	alarm(0);
	assert_null(r.file);
	assert_non_null(strstr(r.problem, "job.yaml: is not a plain file"));
}

static void a_stem_is_the_name_without_folder_and_ending(void **state)
{
	(void)state;
	assert_string_equal(path_stem(arena, "jobs/alder.lane.yaml"), "alder.lane");
	assert_string_equal(path_stem(arena, "alder"), "alder");
	assert_string_equal(path_stem(arena, "jobs.d/alder"), "alder");
	assert_string_equal(path_stem(arena, ".alder"), ".alder");
}

#define IN_A_NEW_FOLDER(test) cmocka_unit_test_setup(test, new_folder)

int main(void)
{
	const struct CMUnitTest tests[] = {
		IN_A_NEW_FOLDER(paths_come_in_the_order_written),
		IN_A_NEW_FOLDER(sheets_of_one_stem_are_one_file),
		IN_A_NEW_FOLDER(the_same_drawings_give_the_same_bytes),
		IN_A_NEW_FOLDER(full_size_asks_for_actual_size),
		IN_A_NEW_FOLDER(a_sheet_leaves_printing_to_the_reader),
		IN_A_NEW_FOLDER(the_date_is_the_jobs_and_well_formed),
		IN_A_NEW_FOLDER(without_a_date_there_is_none),
		IN_A_NEW_FOLDER(an_svg_says_what_it_shows),
		cmocka_unit_test(a_letter_that_no_face_holds_is_counted),
		IN_A_NEW_FOLDER(spoilt_text_does_not_spoil_the_file),
		IN_A_NEW_FOLDER(names_with_quotes_are_no_trouble),
		IN_A_NEW_FOLDER(folders_are_made_as_needed),
		IN_A_NEW_FOLDER(when_the_disk_is_full_the_earlier_set_stays_whole),
		IN_A_NEW_FOLDER(a_folder_in_the_way_stops_the_whole_set),
		IN_A_NEW_FOLDER(a_file_for_a_folder_is_told),
		IN_A_NEW_FOLDER(what_another_run_is_writing_is_left_alone),
		IN_A_NEW_FOLDER(after_a_failure_another_run_s_file_is_still_there),
		IN_A_NEW_FOLDER(a_pipe_is_refused_without_waiting),
		cmocka_unit_test(a_stem_is_the_name_without_folder_and_ending),
	};

	signal(SIGXFSZ, SIG_IGN); /* as the program does */
	return cmocka_run_group_tests(tests, take_faces, drop_faces);
}
