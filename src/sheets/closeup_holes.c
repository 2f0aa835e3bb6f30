#include "sheets/closeup_holes.h"

#include "draw/clip.h"
#include "pitchboard/drawing.h"

#define LEAST_DASHED 1.5 /* on paper: a smaller circle has no room for dashes */

/* How far a bolt or screw goes on into what is not drilled here. */
static double reach(const struct bore *b)
{
	bool goes_on = b->fixing == FIXING_NEWEL_BOLT || b->fixing == FIXING_RAIL_BOLT ||
		b->fixing == FIXING_SCREW;
	if (!goes_on || b->is_mate || b->mate.depth > 0)
		return 0;
	return fmax(b->fixing_length - b->size.depth, 0);
}

static struct closeup_hole hole_of(const struct bore *b, struct frame at, enum view_from from)
{
	struct vec3 sight = view_frame(from).w;
	bool along = fabs(vec3_dot(at.u, sight)) > fabs(vec3_dot(at.v, sight));
	double half = (along ? b->size.width : b->size.length) / 2;
	struct vec3 side = vec3_scale(along ? at.v : at.u, half);
	struct vec3 top = vec3_add(at.origin, vec3_scale(at.w, reach(b)));
	struct vec3 bottom = vec3_sub(at.origin, vec3_scale(at.w, b->size.depth));
	struct closeup_hole h = { .middle = view_project(from, at.origin) };
	if (fabs(vec3_dot(at.w, sight)) > 0.99) {
		h.radius = b->size.width / 2;
		return h;
	}
	h.corner[0] = view_project(from, vec3_add(top, side));
	h.corner[1] = view_project(from, vec3_add(bottom, side));
	h.corner[2] = view_project(from, vec3_sub(bottom, side));
	h.corner[3] = view_project(from, vec3_sub(top, side));
	return h;
}

static int count_bores(const struct part *parts)
{
	int n = 0;
	for (; parts; parts = parts->next)
		for (const struct bore *b = parts->bores; b; b = b->next)
			n += parts->count;
	return n;
}

struct closeup_holes closeup_holes_find(struct arena *a, const struct part *parts,
	enum view_from from, shows_hole_fn *shows, const void *with)
{
	struct closeup_hole *hole = NEW_N(a, struct closeup_hole, count_bores(parts) + 1);
	struct closeup_holes found = { hole, 0 };
	for (const struct part *p = parts; p; p = p->next)
		for (const struct bore *b = p->bores; b; b = b->next)
			for (int i = 0; i < p->count; i++) {
				struct frame at = frame_compose(p->places[i], b->at);
				if (shows(p, b, at.origin, with))
					hole[found.n++] = hole_of(b, at, from);
			}
	return found;
}

static bool is_inside(struct box b, struct vec p, double by)
{
	return p.x - by > b.x0 && p.x + by < b.x1 && p.y - by > b.y0 && p.y + by < b.y1;
}

void closeup_holes_draw(struct drawing *g, struct closeup_holes holes, struct box window,
	double scale)
{
	for (int i = 0; i < holes.n; i++) {
		const struct closeup_hole *h = &holes.hole[i];
		if (h->radius > 0) {
			bool small = h->radius * scale < LEAST_DASHED;
			if (is_inside(window, h->middle, h->radius))
				draw_circle(g, small ? PEN_DIM : PEN_HIDDEN,
					vec_scale(h->middle, scale), h->radius * scale);
			continue;
		}
		for (int k = 0; k < 4; k++) {
			struct clipped c =
				clip_segment(window, h->corner[k], h->corner[(k + 1) % 4]);
			if (c.some)
				draw_line(g, PEN_HIDDEN, vec_scale(c.a, scale),
					vec_scale(c.b, scale));
		}
	}
}
