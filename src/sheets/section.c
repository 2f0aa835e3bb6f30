/*
 * A section along the stair, where a wall hides steps from both sides.
 */
#include "sheets/side_view.h"
#include "sheets/stands.h"

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct view_spec spec = { .from = VIEW_FROM_RIGHT, .cut = true };
	const struct flight *f = &c->stair->flights[0];

	if (!has_section(c))
		return NULL;
	struct vec3 through = frame_place(f->frame, vec3(0, section_y(a, c), 0));
	spec.at = vec3_dot(through, view_frame(spec.from).w);
	struct side_view v = { .context = c,
		.flight = f,
		.view = view_make(a, c->parts, spec),
		.title = "Section A-A" };

	return side_view_sheets(a, &v);
}

const struct sheet_kind sheet_section = { "section", "S-3", draw };
