/*
 * An elevation of every side that is open somewhere.
 */
#include "sheets/side_view.h"

/* Is any step of this side open? */
static bool is_open(const struct stair *s, enum view_from from)
{
	const struct job_side *side =
		from == VIEW_FROM_RIGHT ? &s->job->stair.right : &s->job->stair.left;

	return side->kind == SIDE_OPEN;
}

/* Behind a wall that stands before them. */
static bool is_dashed(const struct part *p, const void *with)
{
	(void)with;
	return p->kind == &part_tread || p->kind == &part_riser;
}

static struct drawing *draw_side(struct arena *a, const struct sheet_context *c,
	enum view_from from)
{
	const char *title =
		from == VIEW_FROM_RIGHT ? "Elevation from the right" : "Elevation from the left";
	struct side_view v = { .context = c,
		.flight = &c->stair->flights[0],
		.view = view_make(a, c->parts,
			(struct view_spec){ .from = from, .hidden = is_dashed }),
		.title = title };

	return side_view_sheets(a, &v);
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	static const enum view_from sides[] = { VIEW_FROM_RIGHT, VIEW_FROM_LEFT };
	struct drawing *first = NULL;

	for (int i = 0; i < 2; i++)
		if (is_open(c->stair, sides[i]))
			*drawings_end(&first) = draw_side(a, c, sides[i]);
	return first;
}

const struct sheet_kind sheet_elevation = { "elevation", "S-2", draw };
