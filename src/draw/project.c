/*
 * Where the eye is.
 */
#include "draw/view.h"

/* From the right of the foot of the stair and above: the three axes of the house come out equally
 * long on paper, as in any isometric drawing. */
static struct frame pictorial(void)
{
	struct vec3 w = vec3_unit(vec3(-1, -1, 1));
	struct vec3 u = vec3_unit(vec3_cross(vec3(0, 0, 1), w));
	return (struct frame){ .u = u, .v = vec3_cross(w, u), .w = w };
}

struct frame view_frame(enum view_from from)
{
	switch (from) {
	case VIEW_PLAN: return frame_house();
	case VIEW_FROM_RIGHT:
		return (struct frame){ .u = { 1, 0, 0 }, .v = { 0, 0, 1 }, .w = { 0, -1, 0 } };
	case VIEW_FROM_LEFT:
		return (struct frame){ .u = { -1, 0, 0 }, .v = { 0, 0, 1 }, .w = { 0, 1, 0 } };
	case VIEW_FRONT:
		return (struct frame){ .u = { 0, -1, 0 }, .v = { 0, 0, 1 }, .w = { -1, 0, 0 } };
	case VIEW_BACK:
		return (struct frame){ .u = { 0, 1, 0 }, .v = { 0, 0, 1 }, .w = { 1, 0, 0 } };
	case VIEW_PICTORIAL: return pictorial();
	}
	return frame_house();
}

struct frame view_eye(const struct view_spec *spec)
{
	return spec->picture ? spec->picture->eye : view_frame(spec->from);
}

struct vec view_project(enum view_from from, struct vec3 p)
{
	struct frame f = view_frame(from);
	return vec(vec3_dot(f.u, p), vec3_dot(f.v, p));
}
