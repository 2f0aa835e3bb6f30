#include "draw/view.h"

#include "draw/bounds.h"
#include "draw/clip.h"
#include "draw/grid.h"
#include "draw/hatch.h"
#include "draw/scene.h"

static const struct cut_face *cut_faces(const struct scene *s)
{
	struct cut_face *faces = NEW_N(s->arena, struct cut_face, s->cut_count);
	int n = 0;

	for (const struct cut *c = s->cuts; c; c = c->next) {
		const struct part *part = s->pieces[c->piece].part;
		faces[n++] = (struct cut_face){ c->points, c->n, part, c->piece };
	}
	return faces;
}

/* Cuts need no look: their outlines are strokes. */
static struct box box_of(const struct strokes *s)
{
	struct box b = box_empty();
	for (int i = 0; i < s->n; i++)
		b = box_add(box_add(b, s->at[i].a), s->at[i].b);
	return s->n > 0 ? b : (struct box){ 0 };
}

static const struct stroke *keep_strokes(struct arena *a, const struct strokes *s)
{
	struct stroke *kept = NEW_N(a, struct stroke, s->n);

	for (int i = 0; i < s->n; i++)
		kept[i] = s->at[i];
	return kept;
}

static const struct cut_face *keep_cuts(struct arena *a, const struct cut_face *cuts, int n)
{
	struct cut_face *kept = NEW_N(a, struct cut_face, n);

	for (int i = 0; i < n; i++) {
		struct vec *points = NEW_N(a, struct vec, cuts[i].n);
		for (int k = 0; k < cuts[i].n; k++)
			points[k] = cuts[i].points[k];
		kept[i] = cuts[i];
		kept[i].points = points;
	}
	return kept;
}

static const struct tint *keep_tints(struct arena *a, const struct tints *tints)
{
	struct tint *kept = NEW_N(a, struct tint, tints->n);

	for (int i = 0; i < tints->n; i++) {
		struct vec *points = NEW_N(a, struct vec, tints->at[i].n);
		for (int k = 0; k < tints->at[i].n; k++)
			points[k] = tints->at[i].points[k];
		kept[i] = (struct tint){ points, tints->at[i].n, tints->at[i].shade };
	}
	return kept;
}

/* A scene takes many times the room of the view that comes of it, and a job has a dozen of them: it
 * gets an arena of its own, freed when the view is kept. */
struct view view_make(struct arena *a, const struct part *parts, struct view_spec spec)
{
	struct arena *scratch = arena_new();
	struct scene *scene = scene_make(scratch, parts, &spec);
	struct grid *grid = grid_make(scratch, scene->screens, scene->screen_count);
	struct traces traces = hidden_remove(scene, grid);
	struct tints tints = tints_find(scene, grid);
	struct strokes strokes = strokes_merge(scene, grid, traces.first);
	struct view view = {
		.spec = spec,
		.strokes = keep_strokes(a, &strokes),
		.stroke_count = strokes.n,
		.cuts = keep_cuts(a, cut_faces(scene), scene->cut_count),
		.cut_count = scene->cut_count,
		.tints = keep_tints(a, &tints),
		.tint_count = tints.n,
		.box = box_of(&strokes),
		.steps = traces.steps,
	};

	arena_free(scratch);
	return view;
}

void view_draw(struct drawing *g, const struct view *v, struct placing at, const struct box *window)
{
	const struct box whole = { -INFINITY, -INFINITY, INFINITY, INFINITY };
	struct box w = window ? *window : whole;

	hatch_cuts(g, v, at, w);
	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *s = &v->strokes[i];
		struct clipped line = clip_segment(w, s->a, s->b);
		if (line.some)
			draw_line(g, s->pen, placing_at(at, line.a), placing_at(at, line.b));
	}
}
