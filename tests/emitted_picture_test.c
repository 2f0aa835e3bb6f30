/*
 * Each SVG of the demo jobs, as librsvg paints it, is the picture of its PDF page,
 * as poppler paints it.
 *
 * The two smooth edges in their own ways, so a dark point of one picture only has
 * to have something dark within one point of it in the other.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cairo.h>
#include <cmocka.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define DPI "150"

enum { DARK = 100, NOT_WHITE = 235 }; /* of 255 */

/* Dark points of one picture, in a thousand, that may have no match in the other. */
#define MOST_STRAY 0.1

static const char *folder;

static int start(void **state)
{
	(void)state;
	folder = getenv("TMPDIR");
	return folder && getenv("PITCHBOARD") ? 0 : -1;
}

__attribute__((format(printf, 1, 2))) static void run(const char *fmt, ...)
{
	char command[1024];
	va_list ap;

	va_start(ap, fmt);
	vsnprintf(command, sizeof(command), fmt, ap);
	va_end(ap);
	if (system(command) != 0)
		fail_msg("%s", command);
}

static int green(cairo_surface_t *s, int x, int y)
{
	const unsigned char *row =
		cairo_image_surface_get_data(s) + y * cairo_image_surface_get_stride(s);

	return row[4 * x + 1];
}

static int is_near_ink(cairo_surface_t *s, int x, int y)
{
	for (int dy = -1; dy <= 1; dy++)
		for (int dx = -1; dx <= 1; dx++)
			if (green(s, x + dx, y + dy) < NOT_WHITE)
				return 1;
	return 0;
}

/* Dark points of `a`, in a thousand, that have no ink near them in `b`. */
static double stray(cairo_surface_t *a, cairo_surface_t *b)
{
	int width = cairo_image_surface_get_width(a), height = cairo_image_surface_get_height(a);
	int dark = 0, alone = 0;

	for (int y = 1; y < height - 1; y++)
		for (int x = 1; x < width - 1; x++)
			if (green(a, x, y) < DARK) {
				dark++;
				alone += !is_near_ink(b, x, y);
			}
	assert_true(dark > 1000);
	return 1000.0 * alone / dark;
}

static cairo_surface_t *picture(const char *name)
{
	char path[512];

	snprintf(path, sizeof(path), "%s/%s.png", folder, name);
	cairo_surface_t *s = cairo_image_surface_create_from_png(path);
	assert_int_equal(cairo_surface_status(s), CAIRO_STATUS_SUCCESS);
	return s;
}

static void compare(const char *svg)
{
	cairo_surface_t *a = picture("svg"), *b = picture("pdf");

	assert_int_equal(cairo_image_surface_get_width(a), cairo_image_surface_get_width(b));
	assert_int_equal(cairo_image_surface_get_height(a), cairo_image_surface_get_height(b));
	double more = stray(a, b), less = stray(b, a);
	cairo_surface_destroy(a);
	cairo_surface_destroy(b);
	if (more > MOST_STRAY || less > MOST_STRAY)
		fail_msg("%s: %.1f in a thousand points only in the SVG, %.1f only in the PDF", svg,
			more, less);
}

static void compare_page(const char *job, const char *svg, int page)
{
	run("rsvg-convert -d " DPI " -p " DPI " -o \"$TMPDIR/svg.png\" '%s'", svg);
	run("pdftoppm -r " DPI " -png -singlefile -f %d \"$TMPDIR/%s/%s.pdf\" \"$TMPDIR/pdf\"",
		page, job, job);
	compare(svg);
}

/* Sheet numbers rise with the pages. */
static void compare_all(const char *job)
{
	char command[256], svg[512];
	int pages = 0;

	run("\"$PITCHBOARD\" draw -q -o \"$TMPDIR/%s\" jobs/%s.yaml 2>\"$TMPDIR/said\" ||"
	    " [ $? = 1 ]",
		job, job);
	snprintf(command, sizeof(command), "ls \"$TMPDIR/%s\"/*.svg", job);
	FILE *from = popen(command, "r");
	assert_non_null(from);
	while (fgets(svg, sizeof(svg), from)) {
		svg[strcspn(svg, "\n")] = '\0';
		compare_page(job, svg, ++pages);
	}
	pclose(from);
	run("[ \"$(pdfinfo \"$TMPDIR/%s/%s.pdf\" | sed -n 's/^Pages: *//p')\" = %d ]", job, job,
		pages);
}

static void the_sheets_of_alder_lane_are_one_picture(void **state)
{
	(void)state;
	compare_all("alder-lane");
}

static void the_sheets_of_kiln_yard_are_one_picture(void **state)
{
	(void)state;
	compare_all("kiln-yard");
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(the_sheets_of_alder_lane_are_one_picture),
		cmocka_unit_test(the_sheets_of_kiln_yard_are_one_picture),
	};

	return cmocka_run_group_tests(tests, start, NULL);
}
