/*
 * A scene: the placed solids in the axes of a view, taken apart into screens that hide, edges that
 * may be seen, and the faces of a cut.
 *
 * In here x runs to the right, y up and z toward the eye.
 */
#ifndef DRAW_SCENE_H
#define DRAW_SCENE_H

#include "draw/view.h"

/* An edge is hidden by what is nearer the eye by more than this; two faces whose depths differ by
 * less lie flush. */
#define NEARER 1e-3

/* Pieces of lines shorter than this are not drawn, gaps shorter than this not left. */
#define SHORTEST 1e-3

/* How far beside the rim of a face a line still counts as being on it. */
#define RIM 1e-4

/* Depth of a flat face: z at (x, y). */
struct plane {
	double dx, dy, z;
};

static inline double plane_at(struct plane p, double x, double y)
{
	return p.dx * x + p.dy * y + p.z;
}

/* Sideways is seen on edge, or has no area. */
enum facing { FACING_SIDEWAYS, FACING_EYE, FACING_AWAY };

struct face {
	enum facing facing;
	struct vec3 normal; /* outward, unit */
	struct plane plane; /* where it is not sideways */
	enum shade shade;   /* in a picture, where it is turned to the eye */
};

/* Seen from outside the solid and going from `a` to `b`, `left` is on the left. */
struct edge {
	struct edge *next;
	struct vec3 a, b;
	const struct face *left, *right;
	int piece;
	enum pen pen; /* PEN_HIDDEN: of the far side, wanted only as a hidden edge */
	bool soft;    /* drawn only where the piece turns away from the eye */
};

/* The half of the plane in which x * p.x + y * p.y + at is not negative. */
struct half {
	double x, y, at;
};

/* A convex patch of a face turned to the eye: it hides what lies behind it. */
struct screen {
	struct screen *next;
	const struct face *face; /* NULL: a face of the cut */
	struct plane plane;
	double nearest; /* its greatest z */
	struct box box;
	const struct half *sides;
	int n;
	const struct vec *points; /* counter-clockwise, in a picture; else NULL */
	int point_count;
	long asked;           /* scratch of the grid: the last search that met it */
	struct screen *found; /* and the next one met by that search */
};

/* One part in one place. */
struct piece {
	const struct part *part;
	bool hidden_too;
	bool built_up; /* of several solids */
};

/* A closed line round what the section plane cuts, counter-clockwise. */
struct cut {
	struct cut *next;
	const struct vec *points;
	int n;
	int piece;
};

struct scene {
	struct arena *arena;
	const struct view_spec *spec;
	struct piece *pieces; /* in the order of the parts and of their places */
	int piece_count;
	struct edge *edges, **edge_tail;
	struct screen *screens, **screen_tail;
	int screen_count;
	struct cut *cuts, **cut_tail;
	int cut_count;
	struct face cut_face; /* the plane of all cuts */
};

struct scene *scene_make(struct arena *a, const struct part *parts, const struct view_spec *spec);

/* Corners of a face with the number of the edge that follows each. */
struct loop_corner {
	struct vec3 at;
	int edge;
};

/* A placed solid in the view's axes: faces 0 and 1 are `a` and `b`, the sides follow; edge i goes
 * from a[i] to a[i+1], edge n+i from b[i] to b[i+1], edge 2n+i from a[i] to b[i]. */
struct body {
	int n;
	struct vec3 *a, *b;
	const unsigned char *soft;
	struct face *faces;
	struct loop_corner *loop; /* scratch, room for any face */
	int piece;
};

/* Writes the corners of face `f` into the body's loop, counter-clockwise seen from outside. */
int body_loop(struct body *b, int f);

/* Where the section plane leaves a solid. */
enum side_of_cut { BODY_BEHIND, BODY_CUT, BODY_TAKEN_AWAY };

enum side_of_cut section_side(const struct view_spec *spec, const struct body *b);

/* What is left of a loop of n corners: writes at most 2n points. */
int section_clip_loop(double at, const struct loop_corner *loop, int n, struct vec3 *out);

/* What is left of an edge; false: nothing. */
bool section_clip_edge(double at, struct edge *e);

/* Adds the faces of the cut to the scene, and their screens. */
void section_cut(struct scene *s, struct body *b);

/* Adds screens for a face: a simple polygon, counter-clockwise, not necessarily convex; edges that
 * run back along others are harmless. */
void screen_polygon(struct scene *s, const struct face *f, struct plane plane,
	const struct vec *points, int n);

/* What of an edge is seen, or to be drawn as hidden. */
struct trace {
	struct trace *next;
	struct vec a, b;
	struct vec along; /* unit, of the whole edge; to the right, or up where it is plumb */
	enum pen pen;
	bool soft;
	int piece;
	/* The faces that end in it, as seen along it; NULL: not turned to the eye. */
	const struct face *left, *right;
};

struct traces {
	struct trace *first;
	long steps;
};

struct grid;

struct traces hidden_remove(const struct scene *s, struct grid *g);

struct tints {
	struct tint *at;
	int n;
};

/* The patches of shaded faces that are seen. */
struct tints tints_find(const struct scene *s, struct grid *g);

struct strokes {
	struct stroke *at;
	int n;
};

/* Unites traces that run over each other. */
struct strokes strokes_merge(const struct scene *s, struct grid *g, struct trace *traces);

#endif
