/*
 * A drawing: one sheet of paper as a list of marks.
 *
 * Millimetres on paper, origin at the lower left corner, y up.  A mark carries
 * a pen that says what the line means; how wide and how broken that pen draws
 * is one table (src/draw/pen.c).  A drawing is data: it is measured, dumped as
 * text for tests, and replayed to PDF and SVG by the same code.
 */
#ifndef PITCHBOARD_DRAWING_H
#define PITCHBOARD_DRAWING_H

#include <stdbool.h>
#include <string.h>

#include "pitchboard/arena.h"
#include "pitchboard/vec.h"

enum pen {
	PEN_CUT,      /* outline of what the section plane cuts */
	PEN_OUTLINE,  /* visible edges */
	PEN_FINE,     /* joints and lesser edges */
	PEN_EXISTING, /* existing work, by others */
	PEN_HIDDEN,   /* hidden edges, dashed */
	PEN_ABOVE,    /* above the cut of a plan, long dashes */
	PEN_CENTRE,   /* centre lines, nosing line, walking line: chain line */
	PEN_DIM,      /* dimension, extension and leader lines */
	PEN_HATCH,
	PEN_TABLE, /* rules of tables and notes */
	PEN_FRAME,
	PEN_TEMPLATE, /* the line to cut to, full size */
	PEN_GUIDE,    /* template: everything that is not to be cut */
	PEN_COUNT
};

/* Pens come in two sets, after the width of the outline: 0.35 mm for small papers, 0.5 mm for
 * large. */
enum pen_group { PENS_SMALL, PENS_LARGE };

const char *pen_name(enum pen pen); /* "outline": in dumps, and as a class in SVG */

double pen_width(enum pen pen, enum pen_group group); /* millimetres */

/* Dash, gap, dash, gap ... in millimetres, ended by 0; an empty pattern is a whole line. */
enum { MOST_DASHES = 8 }; /* the 0 among them */
const double *pen_dashes(enum pen pen);

enum letter_style { LETTER_REGULAR, LETTER_BOLD };
enum align { ALIGN_LEFT, ALIGN_MIDDLE, ALIGN_RIGHT };

/* Shades of fill: a white one knocks out what was drawn before it. */
enum shade { SHADE_BLACK, SHADE_GREY, SHADE_MIDDLE, SHADE_LIGHT, SHADE_PALE, SHADE_WHITE };

enum mark_kind { MARK_LINE, MARK_ARC, MARK_FILL, MARK_TEXT };

struct mark {
	struct mark *next;
	enum mark_kind kind;
	union {
		struct {
			enum pen pen;
			const struct vec *points;
			int n;
			bool closed;
		} line;
		struct {
			enum pen pen;
			struct vec centre;
			double radius, from, to; /* counter-clockwise, radians */
		} arc;
		struct {
			enum shade shade;
			const struct vec *points;
			int n;
		} fill;
		struct {
			struct vec at; /* on the base line */
			double height; /* of a capital */
			double angle;
			enum align align;
			enum letter_style style;
			const char *text; /* UTF-8 */
		} text;
	};
};

/* How wide the first `bytes` of a text come out, without knowing the font engine.  The real one
 * is faces_measure() of write.h; tests use one in which every letter is 0.6 high. */
struct measure {
	double (*width)(const void *faces, enum letter_style style, double height, const char *text,
		size_t bytes);
	const void *faces;
};

static inline double measure_width(struct measure m, enum letter_style style, double height,
	const char *text)
{
	return m.width(m.faces, style, height, text, strlen(text));
}

/* What a drawing is for: decides which file it goes to and how that file asks to be printed. */
enum drawing_use {
	USE_SHEET, /* dimensioned, to scale */
	USE_ROLL,  /* a full-size template on one long page */
	USE_TILES, /* full-size, over many pages of one size */
	USE_STEP,  /* full-size: ends, one repeat, rod */
	USE_CALIBRATION,
};

struct drawing {
	struct drawing *next;
	struct arena *arena;
	enum drawing_use use;
	const char *id;    /* sheet number, "S-101": page label, bookmark, part of the SVG's name */
	const char *title; /* "Plan" */
	const char *scale; /* main scale as the title block writes it; NULL: none */
	const char *set;   /* number of the set it belongs to; NULL: of none */
	const char *file;  /* stem of the PDF it belongs to: drawings of one stem, in order, are one
			      file */
	const char *svg;   /* stem of its own SVG; NULL: none is written */
	const char *const
		*shows; /* marks of the parts it shows how to make, ended by NULL; NULL: of none
			 */
	double width, height;
	enum pen_group pens;
	struct mark *first, **tail;
	int mark_count;
	bool tells_changes; /* in words: no clouds are wanted */
	bool runs_over;     /* something on it does not go into its frame at any standard scale */
	bool is_too_small;  /* not even a bare view does */
	bool is_crowded;    /* leaders run under balloons that they do not belong to */
};

struct drawing *drawing_new(struct arena *a, enum drawing_use use, double width, double height);

void draw_line(struct drawing *g, enum pen pen, struct vec from, struct vec to);
/* Points are copied. */
void draw_polyline(struct drawing *g, enum pen pen, const struct vec *points, int n);
void draw_polygon(struct drawing *g, enum pen pen, const struct vec *points, int n);
void draw_box(struct drawing *g, enum pen pen, struct box b);
void draw_arc(struct drawing *g, enum pen pen, struct vec centre, double radius, double from,
	double to);
void draw_circle(struct drawing *g, enum pen pen, struct vec centre, double radius);
void draw_fill(struct drawing *g, enum shade shade, const struct vec *points, int n);
void draw_text(struct drawing *g, struct vec at, double height, enum align align, const char *text);
void draw_text_styled(struct drawing *g, struct vec at, double height, double angle,
	enum align align, enum letter_style style, const char *text);

/* Moves every mark of `from`, shifted, to the end of `g`; `from` is empty afterwards. */
void drawing_take(struct drawing *g, struct drawing *from, struct vec by);

/* Does it show how to make the part of this mark? */
bool drawing_shows(const struct drawing *g, const char *mark);

/* The last one's `next`, to hang more drawings on. */
struct drawing **drawings_end(struct drawing **list);

/* The same drawings in another arena, whole: what they were made in may end. */
struct drawing *drawings_keep(struct arena *a, const struct drawing *list);

/* Marks that were drawn one after another, from one tail of the drawing to a later one. */
struct mark_run {
	struct mark **from, **to;
};

/* Brings them to the front: over all that was drawn after them. */
void drawing_raise(struct drawing *g, struct mark_run run);

/* The box round all marks, line widths not counted. */
struct box drawing_bounds(const struct drawing *g, struct measure m);

/* Pairs of texts that touch, texts crossed by a line of PEN_CUT, PEN_OUTLINE, PEN_EXISTING,
 * PEN_FRAME or PEN_TEMPLATE, or by a ring of any pen, texts on a black fill or over the edge
 * of a white one, and marks off the paper.  0 on a good sheet.  `report` may be NULL;
 * else it gets one line a fault. */
int drawing_faults(struct arena *a, const struct drawing *g, struct measure m, const char **report);

/* 12 hex digits that tell one set of drawings from another: of all that is on its sheets, and of
 * what is laid over them, which may be NULL. */
const char *drawings_fingerprint(struct arena *a, const struct drawing *list,
	const struct drawing *over);

/* One line a mark, rounded to 0.001 mm: golden tests and `--dump=drawing`. */
const char *drawing_dump(struct arena *a, const struct drawing *g);

#endif
