/*
 * Lettering is as wide as the pinned fonts say, and no other font is taken.
 *
 * Widths and heights in font units were read from the tables hmtx, cmap and
 * glyf/CFF of the files themselves by a program that shares nothing with FreeType.
 */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "near.h"
#include "with_faces.h"
#include "write/faces.h"

static double width(enum letter_style style, double height, const char *text)
{
	return measure_width(faces_measure(faces), style, height, text);
}

static void a_figure_is_as_wide_as_the_font_says(void **state)
{
	(void)state;
	/* B612 Regular: 7 is 1300 wide where H is 1520 high */
	assert_near(width(LETTER_REGULAR, 2.5, "7"), 1300.0 / 1520 * 2.5, 1e-9);
}

static void bold_has_its_own_heights(void **state)
{
	(void)state;
	/* B612 Bold: H is 1400 wide and 1527 high */
	assert_near(width(LETTER_BOLD, 5, "H"), 1400.0 / 1527 * 5, 1e-9);
}

static void all_figures_are_one_width(void **state)
{
	char figure[] = "0";

	(void)state;
	for (figure[0] = '0'; figure[0] <= '9'; figure[0]++)
		assert_near(width(LETTER_REGULAR, 1, figure), 1300.0 / 1520, 1e-9);
}

static void a_text_is_the_sum_of_its_letters(void **state)
{
	(void)state;
	/* i is 600 wide */
	assert_near(width(LETTER_REGULAR, 1, "7i7"), (1300 + 600 + 1300) / 1520.0, 1e-9);
}

static void a_letter_that_the_face_lacks_comes_from_the_fallback(void **state)
{
	(void)state;
	/* DejaVu Sans: Ł is 1151 wide and ő 1253 where H is 1493 high */
	assert_near(width(LETTER_REGULAR, 1, "Łő"), (1151 + 1253) / 1493.0, 1e-9);
}

static void bytes_that_are_no_utf8_are_still_measured(void **state)
{
	(void)state;
	double mark = width(LETTER_REGULAR, 1, "\uFFFD");

	assert_true(mark > 0);
	assert_near(width(LETTER_REGULAR, 1, "\xC5"), mark, 1e-9);
	assert_near(width(LETTER_REGULAR, 1, "\xED\xA0\x80"), 3 * mark, 1e-9); /* half a pair */
	assert_near(width(LETTER_REGULAR, 1, "\xC0\xB7"), 2 * mark, 1e-9);     /* 7, spelt long */
}

/* DejaVu Sans holds Hebrew and Arabic letters, but a word of them, set one by one from the left,
 * would be spelt backwards and unjoined.  Unicode blocks and bidirectional controls: from memory.
 */
static void letters_that_need_their_neighbours_are_missing(void **state)
{
	static const unsigned codes[] = { 0x05D0, 0x0628, 0x0915, 0x0E01, 0x1100, 0x202E, 0x200F,
		0x2067, 0xFB2A, 0xFE8F, 0x1EE00 };

	(void)state;
	for (size_t i = 0; i < sizeof(codes) / sizeof(*codes); i++)
		assert_true(faces_letter(faces, LETTER_REGULAR, codes[i]).missing);
}

static void letters_that_stand_alone_are_not(void **state)
{
	static const unsigned codes[] = { 'A', 0x0141, 0x03A9, 0x0416, 0x2019, 0x215D };

	(void)state;
	for (size_t i = 0; i < sizeof(codes) / sizeof(*codes); i++)
		assert_false(faces_letter(faces, LETTER_REGULAR, codes[i]).missing);
}

static const char *new_folder(void)
{
	const char *base = getenv("TMPDIR");
	char *dir = arena_printf(arena, "%s/fontsXXXXXX", base ? base : "/tmp");

	assert_non_null(mkdtemp(dir));
	return dir;
}

static void put(const char *dir, const char *name, const struct file *from)
{
	assert_null(folder_make(arena, arena_printf(arena, "%s/fonts", dir)));
	struct fileset *set = fileset_open(arena);
	assert_null(fileset_add(set, arena_printf(arena, "%s/fonts/%s", dir, name), from->bytes,
		from->size));
	assert_null(fileset_close(set, NULL));
}

static void another_font_of_the_same_name_is_refused(void **state)
{
	const char *dir = new_folder(), *problem = NULL;

	(void)state;
	put(dir, "B612-Regular.otf", file_read(arena, "templates/fonts/B612-Bold.otf").file);
	assert_null(faces_load(arena, dir, &problem));
	assert_non_null(strstr(problem, "/fonts/B612-Regular.otf"));
	assert_non_null(strstr(problem, "put back"));
}

static void a_font_with_one_other_byte_is_refused(void **state)
{
	const char *dir = new_folder(), *problem = NULL;
	struct file spoilt = *file_read(arena, "templates/fonts/B612-Regular.otf").file;
	unsigned char *bytes = NEW_N(arena, unsigned char, spoilt.size);

	(void)state;
	memcpy(bytes, spoilt.bytes, spoilt.size);
	bytes[spoilt.size / 2] ^= 1;
	spoilt.bytes = bytes;
	put(dir, "B612-Regular.otf", &spoilt);
	assert_null(faces_load(arena, dir, &problem));
	assert_non_null(problem);
}

static void a_missing_font_is_named(void **state)
{
	const char *problem = NULL;

	(void)state;
	assert_null(faces_load(arena, new_folder(), &problem));
	assert_non_null(strstr(problem, "B612-Regular.otf"));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(a_figure_is_as_wide_as_the_font_says),
		cmocka_unit_test(bold_has_its_own_heights),
		cmocka_unit_test(all_figures_are_one_width),
		cmocka_unit_test(a_text_is_the_sum_of_its_letters),
		cmocka_unit_test(a_letter_that_the_face_lacks_comes_from_the_fallback),
		cmocka_unit_test(bytes_that_are_no_utf8_are_still_measured),
		cmocka_unit_test(letters_that_need_their_neighbours_are_missing),
		cmocka_unit_test(letters_that_stand_alone_are_not),
		cmocka_unit_test(another_font_of_the_same_name_is_refused),
		cmocka_unit_test(a_font_with_one_other_byte_is_refused),
		cmocka_unit_test(a_missing_font_is_named),
	};

	return cmocka_run_group_tests(tests, take_faces, drop_faces);
}
