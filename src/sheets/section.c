/*
 * A section along the stair, where a wall hides steps from both sides.
 */
#include "sheets/side_view.h"
#include "sheets/stands.h"

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	if (!has_section(c))
		return NULL;
	struct side_view v = { .context = c,
		.flight = &c->stair->flights[0],
		.view = section_view(a, c, (struct box){ 0 }),
		.title = "Section A-A" };

	return side_view_sheets(a, &v);
}

const struct sheet_kind sheet_section = { "section", "S-3", draw };
