#include "draw/view.h"

#include "draw/hatch.h"
#include "draw/scene.h"
#include "draw/window.h"

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

static struct box box_with(struct box b, struct vec p)
{
	return (struct box){ fmin(b.x0, p.x), fmin(b.y0, p.y), fmax(b.x1, p.x), fmax(b.y1, p.y) };
}

/* Cuts need no look: their outlines are strokes. */
static struct box box_of(const struct strokes *s)
{
	if (s->n == 0)
		return (struct box){ 0 };
	struct vec p = s->at[0].a;
	struct box b = { p.x, p.y, p.x, p.y };
	for (int i = 0; i < s->n; i++)
		b = box_with(box_with(b, s->at[i].a), s->at[i].b);
	return b;
}

struct view view_make(struct arena *a, const struct part *parts, struct view_spec spec)
{
	struct scene *scene = scene_make(a, parts, &spec);
	struct traces traces = hidden_remove(scene);
	struct strokes strokes = strokes_merge(scene, traces.first);

	return (struct view){
		.spec = spec,
		.strokes = strokes.at,
		.stroke_count = strokes.n,
		.cuts = cut_faces(scene),
		.cut_count = scene->cut_count,
		.box = box_of(&strokes),
		.steps = traces.steps,
	};
}

void view_draw(
	struct drawing *g, const struct view *v, struct placing at, const struct box *window)
{
	hatch_cuts(g, v, at, window);
	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *s = &v->strokes[i];
		struct segment line = window_clip(window, (struct segment){ s->a, s->b });
		if (!segment_is_empty(line))
			draw_line(g, s->pen, placing_at(at, line.a), placing_at(at, line.b));
	}
}
