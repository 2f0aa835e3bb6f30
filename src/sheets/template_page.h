/*
 * A page of a template, and the room for lettering on it.
 *
 * Every line and text put on a page through these functions is remembered, so
 * that lettering which may stand in several places finds one that is free.
 */
#ifndef SHEETS_TEMPLATE_PAGE_H
#define SHEETS_TEMPLATE_PAGE_H

#include "draw/bounds.h"
#include "draw/clip.h"
#include "pitchboard/drawing.h"

#define TEMPLATE_LETTER 2.5 /* height of a capital, the least that is legible on a copy */
#define TEMPLATE_PITCH 4.0  /* from line to line of it */

struct obstacle;

struct page {
	struct arena *arena;
	struct drawing *drawing;
	struct measure measure;
	struct obstacle **strips; /* of the page, from left to right: what stands in each */
	int strip_count;
};

struct page page_begin(struct arena *a, enum drawing_use use, struct vec paper,
	struct measure measure);

void page_line(struct page *p, enum pen pen, struct vec a, struct vec b);
void page_chain(struct page *p, enum pen pen, struct chain c);
void page_box(struct page *p, enum pen pen, struct box b);

/* A line of words and how it is lettered. */
struct wording {
	const char *text;
	double height;
	enum letter_style style;
};

enum turn { TURN_LEVEL, TURN_UPWARD };

/* Lettered where it is told. */
void page_text(struct page *p, struct vec at, enum align align, enum turn turn,
	struct wording words);

/* Where lettering would like its middle to be, how far off is still good, and what it must stay
 * inside. */
struct wish {
	struct vec at;
	double reach;
	struct box within;
};

/* Letters the lines one under the other in the free place nearest to the wish; the room taken,
 * empty when there was none and nothing was lettered. */
struct box page_words(struct page *p, struct wish wish, enum turn turn, const struct wording *lines,
	int n);

/* Words broken to a width, hanging from `top`; how far down they reach. */
double page_paragraph(struct page *p, struct vec top, double width, const char *text);

/* Is nothing lettered on the straight line from a to b? */
bool page_line_is_free(const struct page *p, struct vec a, struct vec b);

#endif
