#include "sheets/piece_key.h"

#include "draw/bounds.h"

/* Fewer lines than this apart on paper would run together. */
#define LEAST_LINE 0.5

#define SMALL 1.5 /* on paper */

/* What tells one where one is: steps, stringers, posts and rails, but not what fills between. */
static bool is_in_key(const struct part *p, const void *with)
{
	(void)with;
	return !p->existing && p->kind != &part_infill && p->kind != &part_moulding;
}

static struct box add_seen(struct box b, const struct part *p, struct frame place)
{
	for (const struct solid *s = p->solids; s; s = s->next)
		for (int i = 0; i < s->n; i++) {
			b = box_add(b, view_project(VIEW_PICTORIAL, frame_place(place, s->a[i])));
			b = box_add(b, view_project(VIEW_PICTORIAL, frame_place(place, s->b[i])));
		}
	return b;
}

/* Of all that may be marked in it, shown or not. */
static struct box box_of_all(struct box b, const struct part *parts)
{
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; i < p->count && !p->existing; i++)
			b = add_seen(b, p, p->places[i]);
	return b;
}

struct key_view key_view(struct arena *a, const struct sheet_context *c, double width,
	double height)
{
	struct view_spec spec = { .from = VIEW_PICTORIAL, .shows = is_in_key };
	struct key_view k = { .view = view_make(a, c->parts, spec) };
	struct box b = box_of_all(k.view.box, c->parts);

	k.view.box = b;
	k.scale = fmin(width / box_width(b), height / box_height(b));
	k.box = (struct box){ 0, 0, box_width(b) * k.scale, box_height(b) * k.scale };
	return k;
}

static struct vec on_paper(const struct key_view *k, struct vec at, struct vec p)
{
	return vec(at.x + (p.x - k->view.box.x0) * k->scale,
		at.y + (p.y - k->view.box.y0) * k->scale);
}

static void fill_face(struct drawing *g, const struct key_view *k, struct vec at,
	struct frame place, const struct vec3 *corners, int n)
{
	struct vec *face = NEW_N(g->arena, struct vec, n);

	for (int i = 0; i < n; i++)
		face[i] = on_paper(k, at,
			view_project(VIEW_PICTORIAL, frame_place(place, corners[i])));
	draw_fill(g, SHADE_BLACK, face, n);
}

/* All faces of a solid together cover what it covers. */
static void fill_solid(struct drawing *g, const struct key_view *k, struct vec at,
	struct frame place, const struct solid *s)
{
	fill_face(g, k, at, place, s->a, s->n);
	fill_face(g, k, at, place, s->b, s->n);
	for (int i = 0; i < s->n; i++) {
		int next = (i + 1) % s->n;
		const struct vec3 side[4] = { s->a[i], s->b[i], s->b[next], s->a[next] };
		fill_face(g, k, at, place, side, 4);
	}
}

static void draw_lines(struct drawing *g, const struct key_view *k, struct vec at)
{
	for (int i = 0; i < k->view.stroke_count; i++) {
		struct vec a = on_paper(k, at, k->view.strokes[i].a);
		struct vec b = on_paper(k, at, k->view.strokes[i].b);
		if (vec_length(vec_sub(a, b)) >= LEAST_LINE)
			draw_line(g, PEN_DIM, a, b);
	}
}

/* A piece too small to be seen is ringed. */
static void ring_small(struct drawing *g, const struct key_view *k, struct vec at,
	struct frame place, const struct part *p)
{
	struct box b = add_seen(box_empty(), p, place);

	if (fmax(box_width(b), box_height(b)) * k->scale < SMALL)
		draw_circle(g, PEN_FINE, on_paper(k, at, vec((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2)),
			SMALL);
}

void draw_key(struct drawing *g, const struct key_view *k, struct vec at, const struct part *p)
{
	draw_lines(g, k, at);
	for (int i = 0; i < p->count; i++) {
		for (const struct solid *s = p->solids; s; s = s->next)
			fill_solid(g, k, at, p->places[i], s);
		ring_small(g, k, at, p->places[i], p);
	}
}
