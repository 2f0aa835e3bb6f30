#include "sheets/piece_key.h"

#include "draw/bounds.h"
#include "draw/picture.h"
#include "sheets/picture.h"

/* Lines shorter than this on paper are left out. */
#define LEAST_LINE 0.5

#define SMALL 1.5 /* on paper */

/* What tells one where one is: steps, stringers, posts and rails, but not what fills between. */
static bool is_in_key(const struct part *p, const void *with)
{
	(void)with;
	return !p->existing && p->kind != &part_infill && p->kind != &part_moulding;
}

static enum shade unshaded(const struct part *p, struct vec3 normal)
{
	(void)p;
	(void)normal;
	return SHADE_WHITE;
}

/* So small, nothing is bold, and lines that would run together are thinned out. */
static enum picture_line line_of(const struct part *p, double scale)
{
	(void)p;
	(void)scale;
	return PICTURE_LIGHT;
}

static struct vec point_seen(struct frame eye, struct frame place, struct vec3 corner)
{
	struct vec3 p = frame_place(place, corner);

	return vec(vec3_dot(eye.u, p), vec3_dot(eye.v, p));
}

static struct box add_seen(struct box b, struct frame eye, const struct part *p, struct frame place)
{
	for (const struct solid *s = p->solids; s; s = s->next)
		for (int i = 0; i < s->n; i++) {
			b = box_add(b, point_seen(eye, place, s->a[i]));
			b = box_add(b, point_seen(eye, place, s->b[i]));
		}
	return b;
}

/* Of all that may be marked in it, shown or not. */
static struct box box_of_all(struct frame eye, const struct part *parts)
{
	struct box b = box_empty();

	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; i < p->count && !p->existing; i++)
			b = add_seen(b, eye, p, p->places[i]);
	return b;
}

struct key_view key_view(struct arena *a, const struct sheet_context *c, double width,
	double height)
{
	struct key_view k = { .eye = picture_eye(c->stair),
		.lines = drawing_new(a, USE_SHEET, width, height) };
	struct picture picture = { k.eye, unshaded };
	struct view_spec spec = { .picture = &picture, .shows = is_in_key };
	struct box b = box_of_all(k.eye, c->parts);
	struct arena *scratch = arena_new();
	struct view v = view_make(scratch, c->parts, spec);

	k.low = vec(b.x0, b.y0);
	k.scale = fmin(width / box_width(b), height / box_height(b));
	k.box = (struct box){ 0, 0, box_width(b) * k.scale, box_height(b) * k.scale };
	picture_draw(k.lines, &v, (struct placing){ vec_scale(k.low, -k.scale), k.scale }, line_of);
	arena_free(scratch);
	return k;
}

/* A piece that is being filled in, in one of its places. */
struct filled {
	struct drawing *g;
	const struct key_view *key;
	struct vec at;
	struct frame place;
};

static struct vec on_paper(const struct filled *f, struct vec seen)
{
	return vec_add(f->at, vec_scale(vec_sub(seen, f->key->low), f->key->scale));
}

/* Corners are given counter-clockwise seen from outside: so they are on paper, where the face is
 * turned to the eye.  These together cover what the solid covers. */
static void fill_face(const struct filled *f, const struct vec3 *corners, int n)
{
	struct vec *face = NEW_N(f->g->arena, struct vec, n);
	double area = 0;

	for (int i = 0; i < n; i++)
		face[i] = on_paper(f, point_seen(f->key->eye, f->place, corners[i]));
	for (int i = 0; i < n; i++)
		area += vec_cross(vec_sub(face[i], face[0]), vec_sub(face[(i + 1) % n], face[0]));
	if (area > 0)
		draw_fill(f->g, SHADE_BLACK, face, n);
}

static void fill_solid(const struct filled *f, const struct solid *s)
{
	struct vec3 *under = NEW_N(f->g->arena, struct vec3, s->n);

	for (int i = 0; i < s->n; i++)
		under[i] = s->b[s->n - 1 - i];
	fill_face(f, s->a, s->n);
	fill_face(f, under, s->n);
	for (int i = 0; i < s->n; i++) {
		int next = (i + 1) % s->n;
		const struct vec3 side[4] = { s->a[i], s->b[i], s->b[next], s->a[next] };
		fill_face(f, side, 4);
	}
}

/* A piece too small to be seen is ringed. */
static void ring_small(const struct filled *f, const struct part *p)
{
	struct box b = add_seen(box_empty(), f->key->eye, p, f->place);

	if (fmax(box_width(b), box_height(b)) * f->key->scale < SMALL)
		draw_circle(f->g, PEN_FINE, on_paper(f, vec((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2)),
			SMALL);
}

static void draw_lines(struct drawing *g, const struct key_view *k, struct vec at)
{
	for (const struct mark *m = k->lines->first; m; m = m->next) {
		struct vec a = m->line.points[0], b = m->line.points[1];
		if (vec_length(vec_sub(a, b)) >= LEAST_LINE)
			draw_line(g, PEN_DIM, vec_add(at, a), vec_add(at, b));
	}
}

void draw_key(struct drawing *g, const struct key_view *k, struct vec at, const struct part *p)
{
	draw_lines(g, k, at);
	for (int i = 0; i < p->count; i++) {
		struct filled f = { g, k, at, p->places[i] };
		for (const struct solid *s = p->solids; s; s = s->next)
			fill_solid(&f, s);
		ring_small(&f, p);
	}
}
