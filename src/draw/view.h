/*
 * Views: the placed parts projected on a plane, hidden edges taken out.
 *
 * Coordinates are millimetres of the house on the view's own plane, u to the
 * right, v up; scale and place on paper come when the view is drawn.
 */
#ifndef DRAW_VIEW_H
#define DRAW_VIEW_H

#include "pitchboard/drawing.h"
#include "pitchboard/part.h"

/* Where the eye is: u of its frame to the right, v up, w at the eye. */
enum view_from {
	VIEW_PLAN,
	VIEW_FROM_RIGHT,
	VIEW_FROM_LEFT,
	VIEW_FRONT,
	VIEW_BACK,
	VIEW_PICTORIAL
};

struct frame view_frame(enum view_from from);

/* Projection of a point of the house on the view's plane. */
struct vec view_project(enum view_from from, struct vec3 p);

/* A picture: seen from anywhere, drawn with two pens, and shaded.  Behind an edge of PEN_OUTLINE
 * (or PEN_EXISTING) the eye goes on to what lies further back; where both faces that meet in an
 * edge are seen it is PEN_FINE. */
struct picture {
	struct frame eye;
	/* Of a face, by its normal in the house; SHADE_WHITE: none. */
	enum shade (*shade)(const struct part *p, struct vec3 normal);
};

struct view_spec {
	enum view_from from;
	const struct picture *picture; /* then `from` says nothing; NULL: a working drawing */
	bool cut;  /* cut by a plane square to the view? what is nearer the eye is taken away */
	double at; /* the plane's distance along the view's w axis */
	/* Which parts are in the view; NULL: all. */
	bool (*shows)(const struct part *p, const void *with);
	const void *with;
	/* Which parts' hidden edges are given too (as PEN_HIDDEN); NULL: none. */
	bool (*hidden)(const struct part *p, const void *with);
	/* What of it will be drawn: solids that lie wholly beside it are left out, where they are
	 * not cut, which shows nowhere in it; of no width: everything. */
	struct box window;
};

/* One visible straight piece of an edge. */
struct stroke {
	struct vec a, b;
	enum pen pen; /* PEN_CUT, PEN_OUTLINE, PEN_EXISTING, PEN_FINE (joint between pieces lying
			 flush), PEN_HIDDEN */
	const struct part *part; /* where several share the line, the first of them */
};

/* What the section plane cuts, counter-clockwise; its outline is among the strokes. */
struct cut_face {
	const struct vec *points;
	int n;
	const struct part *part;
	int piece; /* alike for all faces of one part in one place; they follow each other */
};

/* A patch of a shaded face that is seen. */
struct tint {
	const struct vec *points;
	int n;
	enum shade shade;
};

struct view {
	struct view_spec spec;
	const struct stroke *strokes;
	int stroke_count;
	const struct cut_face *cuts;
	int cut_count;
	const struct tint *tints; /* the patches of one shade follow each other */
	int tint_count;
	struct box box; /* of everything in it */
	long steps;     /* looks taken at places and faces, to measure how the work grows */
};

struct frame view_eye(const struct view_spec *spec);

struct view view_make(struct arena *a, const struct part *parts, struct view_spec spec);

/* A place for a view on paper: paper = origin + model * scale. */
struct placing {
	struct vec origin; /* of the view's (0, 0) */
	double scale;      /* 1.0/24, 0.05 ... */
};

static inline struct vec placing_at(struct placing p, struct vec model)
{
	return vec(p.origin.x + model.x * p.scale, p.origin.y + model.y * p.scale);
}

/* Draws it clipped to `window` (view coordinates; NULL: whole).  Cut faces get PEN_CUT and their
 * hatch. */
void view_draw(struct drawing *g, const struct view *v, struct placing at,
	const struct box *window);

#endif
