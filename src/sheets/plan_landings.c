#include "sheets/plan_landings.h"

#include <string.h>

#include "draw/annotate.h"
#include "draw/bounds.h"
#include "pitchboard/landing.h"
#include "sheets/words.h"

#define WALL 100.0 /* on the opening's edge, as drawn */
#define NORTH 5.5  /* radius of the circle, on paper */

static const struct job_landing *landing(const struct plan *p, enum landing_place place)
{
	return &p->context->stair->job->landings.at[place];
}

/* ---- floors and doors ---- */

/* The floor's far edge, and its sides where its width is known. */
static void draw_floor(struct drawing *g, const struct plan *p, enum landing_place place,
	double scale)
{
	struct box b = landing_box(p->context->stair, place);
	double near = place == LANDING_FOOT ? b.x1 : b.x0,
	       far = place == LANDING_FOOT ? b.x0 : b.x1;
	const struct vec line[] = { plan_at(p, near, b.y0, scale), plan_at(p, far, b.y0, scale),
		plan_at(p, far, b.y1, scale), plan_at(p, near, b.y1, scale) };
	enum pen pen = place == LANDING_FOOT ? PEN_FINE : PEN_ABOVE;

	if (landing(p, place)->depth <= 0)
		return;
	if (landing(p, place)->width > 0)
		draw_polyline(g, pen, line, 4);
	else
		draw_line(g, pen, line[1], line[2]);
}

/* The leaf open, and the arc that its edge goes. */
static void draw_door(struct drawing *g, const struct plan *p, enum landing_place place,
	const struct job_door *door, double scale)
{
	struct door_swing w = door_swing(p->context->stair, place, door);
	struct vec open = vec_add(w.hinge, vec_scale(w.opened, w.radius));
	struct vec o = plan_at(p, 0, 0, scale), x = vec_sub(plan_at(p, 1, 0, scale), o);
	double turn = atan2(x.y, x.x), from = atan2(w.closed.y, w.closed.x),
	       to = atan2(w.opened.y, w.opened.x);
	bool is_left_turn = w.closed.x * w.opened.y - w.closed.y * w.opened.x > 0;

	draw_line(g, PEN_FINE, plan_at(p, w.hinge.x, w.hinge.y, scale),
		plan_at(p, open.x, open.y, scale));
	if (!is_left_turn) {
		double swap = from;
		from = to;
		to = swap;
	}
	if (to < from)
		to += 2 * PI;
	draw_arc(g, PEN_FINE, plan_at(p, w.hinge.x, w.hinge.y, scale), w.radius * scale,
		from + turn, to + turn);
}

/* ---- walls on the opening's edge ---- */

static bool has_wall(const struct job_opening *o, const char *edge)
{
	for (int i = 0; i < o->wall_count; i++)
		if (strcmp(o->walls[i], edge) == 0)
			return true;
	return false;
}

enum { MOST_WALLS = 5 };

static int walls_on_edge(const struct plan *p, struct box walls[MOST_WALLS])
{
	const struct stair *s = p->context->stair;
	const struct job_opening *o = &s->job->opening;
	const struct box b = s->opening;
	int n = 0;

	if (has_wall(o, "right"))
		walls[n++] = (struct box){ b.x0, b.y0 - WALL, b.x1, b.y0 };
	if (has_wall(o, "left"))
		walls[n++] = (struct box){ b.x0, b.y1, b.x1, b.y1 + WALL };
	if (has_wall(o, "foot"))
		walls[n++] = (struct box){ b.x0 - WALL, b.y0, b.x0, b.y1 };
	if (has_wall(o, "head") && b.y0 < 0)
		walls[n++] = (struct box){ b.x1, b.y0, b.x1 + WALL, 0 };
	if (has_wall(o, "head") && b.y1 > s->width)
		walls[n++] = (struct box){ b.x1, s->width, b.x1 + WALL, b.y1 };
	return o->length > 0 ? n : 0;
}

static void draw_walls(struct drawing *g, const struct plan *p, double scale)
{
	struct box walls[MOST_WALLS];
	int n = walls_on_edge(p, walls);

	for (int i = 0; i < n; i++) {
		struct box b = walls[i];
		const struct vec corners[] = { plan_at(p, b.x0, b.y0, scale),
			plan_at(p, b.x1, b.y0, scale), plan_at(p, b.x1, b.y1, scale),
			plan_at(p, b.x0, b.y1, scale) };
		draw_polygon(g, PEN_ABOVE, corners, 4);
	}
}

/* ---- all of it ---- */

static struct box add_to_house(struct box all, const struct plan *p, struct box b)
{
	all = box_add(all, plan_at(p, b.x0, b.y0, 1));
	return box_add(all, plan_at(p, b.x1, b.y1, 1));
}

/* A leaf is within the square round its hinge's quarter. */
static struct box swing_box(const struct door_swing *w)
{
	struct vec closed = vec_add(w->hinge, vec_scale(w->closed, w->radius));
	struct vec opened = vec_add(w->hinge, vec_scale(w->opened, w->radius));

	return box_add(box_add(box_add(box_empty(), w->hinge), closed), opened);
}

struct box plan_landings_box(const struct plan *p)
{
	const struct stair *s = p->context->stair;
	struct box all = box_empty(), walls[MOST_WALLS];
	int n = walls_on_edge(p, walls);

	for (int i = 0; i < n; i++)
		all = add_to_house(all, p, walls[i]);
	for (enum landing_place place = LANDING_FOOT; place < LANDINGS; place++) {
		if (landing(p, place)->depth > 0)
			all = add_to_house(all, p, landing_box(s, place));
		for (int i = 0; i < landing(p, place)->door_count; i++) {
			struct door_swing w = door_swing(s, place, &landing(p, place)->doors[i]);
			all = add_to_house(all, p, swing_box(&w));
		}
	}
	return all;
}

void plan_landings_draw(struct drawing *g, const struct plan *p, double scale)
{
	draw_walls(g, p, scale);
	for (enum landing_place place = LANDING_FOOT; place < LANDINGS; place++) {
		draw_floor(g, p, place, scale);
		for (int i = 0; i < landing(p, place)->door_count; i++)
			draw_door(g, p, place, &landing(p, place)->doors[i], scale);
	}
}

/* ---- sizes ---- */

static const char *const depth_size[] = { "foot_landing_depth", "head_landing_depth" };
static const char *const width_size[] = { "foot_landing_width", "head_landing_width" };

static void add_landing(struct dims *d, const struct plan *p, enum landing_place place,
	double scale)
{
	const struct stair *s = p->context->stair;
	const struct job_landing *l = landing(p, place);
	struct arena *a = d->drawing->arena;
	struct box b = landing_box(s, place);
	double end = plan_at(p, place == LANDING_FOOT ? b.x0 : b.x1, 0, scale).x;
	double foot = plan_at(p, 0, b.y0, scale).y;
	const struct dim_link along = { plan_at(p, b.x0, 0, scale).x, plan_at(p, b.x1, 0, scale).x,
		foot, foot,
		arena_printf(a, "landing %s", measured_words(a, s, depth_size[place], l->depth)) };
	const struct dim_link across = { plan_at(p, 0, b.y0, scale).y, plan_at(p, 0, b.y1, scale).y,
		end, end,
		arena_printf(a, "landing %s", measured_words(a, s, width_size[place], l->width)) };

	if (l->depth > 0)
		dims_chain(d, DIM_BELOW, &along, 1);
	if (l->width > 0)
		dims_chain(d, place == LANDING_FOOT ? DIM_LEFT : DIM_RIGHT, &across, 1);
}

void plan_add_landings(struct dims *d, const struct plan *p, double scale)
{
	add_landing(d, p, LANDING_FOOT, scale);
	add_landing(d, p, LANDING_HEAD, scale);
}

struct box plan_draw_north(struct hand h, const struct plan *p, struct box used)
{
	const struct job_stair *stair = &p->context->stair->job->stair;
	double angle = -stair->north * PI / 180, room = NORTH + 2.2 * h.letter;
	struct vec c = vec(used.x0 - room, used.y1 - room), way = vec(cos(angle), sin(angle));
	struct vec tip = vec_add(c, vec_scale(way, NORTH));

	if (!node_has(stair->src, "north"))
		return used;
	draw_circle(h.g, PEN_FINE, c, NORTH);
	draw_line(h.g, PEN_FINE, vec_sub(c, vec_scale(way, NORTH)), tip);
	draw_arrow_head(h.g, tip, way, h.letter * 1.4);
	struct vec n = vec_add(c, vec_scale(way, NORTH + 0.9 * h.letter));
	draw_text_styled(h.g, vec(n.x, n.y - h.letter / 2), h.letter, 0, ALIGN_MIDDLE, LETTER_BOLD,
		"N");
	return box_add(used, vec(c.x - room, c.y));
}

/* ---- words ---- */

static const char *size_words(struct arena *a, const struct plan *p, const char *size, double mm)
{
	return mm > 0 ? measured_words(a, p->context->stair, size, mm) : "NOT KNOWN";
}

static const char *doors_words(struct arena *a, const struct job_landing *l)
{
	if (!node_has(l->src, "doors"))
		return "doors not known";
	if (l->door_count == 0)
		return "no door";
	return l->door_count == 1 ? "1 door, as drawn"
				  : arena_printf(a, "%d doors, as drawn", l->door_count);
}

static const char *landing_words(struct arena *a, const struct plan *p, enum landing_place place)
{
	const struct job_landing *l = landing(p, place);

	return arena_printf(a, "Landing at the %s: depth %s, width %s; %s.",
		place == LANDING_FOOT ? "foot" : "head",
		size_words(a, p, depth_size[place], l->depth),
		size_words(a, p, width_size[place], l->width), doors_words(a, l));
}

const char *plan_landings_words(struct arena *a, const struct plan *p)
{
	struct box walls[MOST_WALLS];

	return arena_printf(a, "%s %s%s", landing_words(a, p, LANDING_FOOT),
		landing_words(a, p, LANDING_HEAD),
		walls_on_edge(p, walls) > 0
			? " Double dashed lines round the opening: walls in the upper floor."
			: "");
}
