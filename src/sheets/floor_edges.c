#include "sheets/floor_edges.h"

#include "draw/bounds.h"
#include "draw/clip.h"

/* The floor is made all along the opening, for the guard on it. */
static bool is_made(const struct stair *s, const struct view *v)
{
	double longest = 0;

	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *k = &v->strokes[i];
		if (k->part->existing == EXISTING_UPPER_FLOOR &&
			fabs(k->a.y - s->total_rise) < NEAR_ENOUGH &&
			fabs(k->b.y - s->total_rise) < NEAR_ENOUGH)
			longest = fmax(longest, fabs(k->a.x - k->b.x));
	}
	return longest > s->opening.x1 - s->opening.x0 - 1;
}

/* A side that opens on the upper floor, of which the job says how thick it is. */
static bool has_edges(const struct stair *s, const struct view *v)
{
	const struct job_stair *stair = &s->job->stair;
	const struct job_side *side = v->spec.from == VIEW_FROM_LEFT ? &stair->left : &stair->right;

	return !v->spec.cut && side->kind == SIDE_OPEN && s->floor_depth > 0 &&
		s->opening.x1 > s->opening.x0 && !is_made(s, v);
}

static void draw_edge(struct drawing *g, const struct stair *s, const struct view *v, double scale,
	struct box window, double z)
{
	const struct flight *f = &s->flights[0];
	struct vec from =
		view_project(v->spec.from, frame_place(f->frame, vec3(s->opening.x0, 0, z)));
	struct vec to =
		view_project(v->spec.from, frame_place(f->frame, vec3(s->opening.x1, 0, z)));
	struct clipped c = clip_segment(window, from, to);

	if (c.some)
		draw_line(g, PEN_ABOVE, vec_scale(c.a, scale), vec_scale(c.b, scale));
}

void floor_edges_draw(struct drawing *g, const struct stair *s, const struct view *v, double scale,
	struct box window)
{
	if (!has_edges(s, v))
		return;
	draw_edge(g, s, v, scale, window, s->total_rise);
	draw_edge(g, s, v, scale, window, s->total_rise - s->floor_depth);
}

const char *floor_edges_note(const struct stair *s, const struct view *v)
{
	return has_edges(s, v) ? "Long dashes: the upper floor beside the opening, before the "
				 "stair; the stair is seen through it."
			       : "";
}
