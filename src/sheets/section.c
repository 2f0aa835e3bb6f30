/*
 * A section along the stair, where a wall hides steps from both sides.
 */
#include "sheets/side_view.h"

static bool is_open_all_the_way(const struct stair *s, const struct job_side *side)
{
	return side->kind == SIDE_OPEN && side->from_step <= 1 &&
		(side->to_step == 0 || side->to_step >= s->treads);
}

/* Just beside the middle, so that a middle carriage is not sliced along its own face. */
static double cut_at(const struct stair *s, struct frame eye)
{
	struct vec3 middle = frame_place(s->flights[0].frame, vec3(0, s->width * 0.42, 0));

	return vec3_dot(middle, eye.w);
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct view_spec spec = { .from = VIEW_FROM_RIGHT, .cut = true };
	const struct job_stair *sides = &c->stair->job->stair;

	if (is_open_all_the_way(c->stair, &sides->left) ||
		is_open_all_the_way(c->stair, &sides->right))
		return NULL;
	spec.at = cut_at(c->stair, view_frame(spec.from));
	struct side_view v = { c, &c->stair->flights[0], view_make(a, c->parts, spec),
		"Section along the stair" };

	return side_view_sheet(a, &v);
}

const struct sheet_kind sheet_section = { "section", "S-3", draw };
