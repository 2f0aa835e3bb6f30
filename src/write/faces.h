/*
 * The faces that sheets are lettered in, letter by letter.
 */
#ifndef WRITE_FACES_H
#define WRITE_FACES_H

#include <cairo.h>

#include "base/text.h"
#include "pitchboard/write.h"

enum face_name { FACE_REGULAR, FACE_BOLD, FACE_FALLBACK, FACE_COUNT };

/* One letter of a text.  A letter that the wanted face lacks is taken from the
 * fallback; one that both lack, or that needs shaping (script.h), becomes the
 * fallback's replacement mark U+FFFD, which is drawn for all to see, and
 * `missing` is set. */
struct letter {
	enum face_name face;
	unsigned glyph;
	double advance; /* for capitals 1 high */
	int missing;
};

/* One character of UTF-8.  A byte that belongs to none reads as U+FFFD. */
struct code {
	unsigned point;
	int bytes;
};

struct code code_next(const char *text);

struct letter faces_letter(const struct faces *f, enum letter_style style, unsigned point);

/* What Cairo draws with, and the size of the em for capitals 1 high. */
cairo_font_face_t *faces_cairo(const struct faces *f, enum face_name face);
double faces_em(const struct faces *f, enum face_name face);

/* Adds what a letter looks like: data of an SVG path, y down, in the font's own units.  How many
 * of those make a capital, and how many glyphs there are. */
void faces_outline(const struct faces *f, enum face_name face, unsigned glyph, struct text *path);
double faces_units(const struct faces *f, enum face_name face);
unsigned faces_glyph_count(const struct faces *f, enum face_name face);

#endif
