/*
 * Guards: seen square with the largest balls that pass, each close up, and the
 * rails in section with their numbers.
 */
#include "draw/bounds.h"
#include "pitchboard/rail.h"
#include "sheets/floor_edges.h"
#include "sheets/guard_balls.h"
#include "sheets/handrails.h"
#include "sheets/limits.h"
#include "sheets/reader.h"
#include "sheets/some_parts.h"
#include "sheets/tables.h"
#include "sheets/words.h"

/* Beside and under what stands in the guard, in the house. */
#define AROUND 150.0

/* What stands more than this nearer the eye than the guard across is taken away. */
#define BEFORE 200.0

enum { MOST_SIDES = 3 };

/* A guard seen from one side of the stair. */
struct guard_side {
	const struct sheet_context *context;
	const struct guard_balls *balls;
	struct view view;
	struct box window;
	const char *title;
};

static bool is_of_guard(const struct part *p)
{
	return p->kind == &part_rail || p->kind == &part_newel || p->kind == &part_infill;
}

static struct box guard_window(const struct view *v)
{
	struct box b = box_empty();

	for (int i = 0; i < v->stroke_count; i++)
		if (is_of_guard(v->strokes[i].part) && v->strokes[i].pen != PEN_HIDDEN)
			b = box_add(box_add(b, v->strokes[i].a), v->strokes[i].b);
	return b;
}

/* A ring on the sheet: a ball's, or that of its letter. */
struct ring {
	struct vec at;
	double radius;
};

struct rings {
	struct ring *list;
	int n;
};

static bool is_clear(const struct rings *rings, struct vec at, double radius)
{
	for (int i = 0; i < rings->n; i++)
		if (vec_length(vec_sub(rings->list[i].at, at)) < rings->list[i].radius + radius)
			return false;
	return true;
}

enum { WAYS = 8 };

/* For the letter of a ball: beside it, up to the left, or the next way round that is clear of all
 * other rings; farther off when none is. */
static struct vec letter_place(struct hand h, const struct rings *rings, struct ring ball)
{
	struct vec first = vec_rotate(vec(1, 0), PI * 3 / 4);
	double far = sqrt(2) * (ball.radius + 3 * h.letter);

	for (int i = 0; i < 3 * WAYS; i++) {
		struct vec way = vec_rotate(first, 2 * PI / WAYS * (i % WAYS));
		double off = far + floor(i / (double)WAYS) * 2 * h.letter;
		struct vec out = vec_add(ball.at, vec_scale(way, off));
		if (is_clear(rings, out, 1.3 * h.letter))
			return out;
	}
	return vec_add(ball.at, vec_scale(first, far));
}

/* The ball, its letter beside it with the leader to its middle. */
static void draw_ball(struct hand h, const struct guard_ball *b, struct ring ball,
	struct rings *rings)
{
	struct vec at = ball.at, out = letter_place(h, rings, ball);
	struct vec way = vec_unit(vec_sub(out, at));
	double radius = ball.radius;

	draw_circle(h.g, PEN_OUTLINE, at, radius);
	draw_line(h.g, PEN_DIM, vec_add(at, vec_scale(way, radius)),
		vec_sub(out, vec_scale(way, h.letter)));
	const struct vec ground[] = { vec(out.x - h.letter, out.y - h.letter),
		vec(out.x + h.letter, out.y - h.letter), vec(out.x + h.letter, out.y + h.letter),
		vec(out.x - h.letter, out.y + h.letter) };
	draw_fill(h.g, SHADE_WHITE, ground, 4);
	draw_circle(h.g, PEN_DIM, out, h.letter);
	draw_text_styled(h.g, vec(out.x, out.y - h.letter / 2), h.letter, 0, ALIGN_MIDDLE,
		LETTER_BOLD, b->letter);
	rings->list[rings->n++] = (struct ring){ out, h.letter };
}

/* The balls that are seen from this side, as they lie on the sheet. */
static bool ring_of(const struct guard_side *g, int i, double scale, struct ring *ring)
{
	const struct ball *b = g->balls->list[i].ball;

	if (!ball_is_in_guard(b) || ball_seen_from(g->context, b) != g->view.spec.from)
		return false;
	ring->at = vec_scale(view_project(g->view.spec.from, b->at), scale);
	ring->radius = b->diameter / 2 * scale;
	return true;
}

static struct box compose_side(struct sheet *s, const void *what, double scale)
{
	const struct guard_side *g = what;
	struct box used = box_scale(g->window, scale);
	const struct stair *st = g->context->stair;

	view_draw(s->drawing, &g->view, (struct placing){ .scale = scale }, &g->window);
	if (sheet_says(g->context, SAYS_FLOORS) && g->view.spec.from != VIEW_FRONT)
		floor_edges_draw(s->drawing, st, &g->view, scale, g->window);
	struct rings rings = { NEW_N(s->drawing->arena, struct ring, 2 * g->balls->n + 1), 0 };
	struct ring ball;
	for (int i = 0; i < g->balls->n; i++)
		if (ring_of(g, i, scale, &ball))
			rings.list[rings.n++] = ball;
	for (int i = 0; i < g->balls->n; i++)
		if (ring_of(g, i, scale, &ball))
			draw_ball(s->hand, &g->balls->list[i], ball, &rings);
	for (int i = 0; i < rings.n; i++)
		used = box_join(used, box_about(rings.list[i].at, rings.list[i].radius));
	return draw_view_foot_narrow(s->hand, used, g->title, scale, st->job->about.units);
}

static void note_sheet(struct sheet *s, const struct guard_balls *balls)
{
	const struct sheet_context *c = s->context;
	struct arena *a = s->drawing->arena;
	const struct finding *height = limit_for(c->findings, "guard_height");
	const struct note notes[] = {
		{ "Notes", general_words(c->stair) },
		{ NULL,
			"Balls are drawn to scale where the largest one passes, measured on the "
			"model: the middle of the ball in the plane of the guard." },
		{ NULL, guard_balls_other_side(a, c, balls) },
		{ NULL, opening_guard_words(a, c) },
		{ NULL, by_others_words(a, c->stair->job) },
		{ NULL,
			height ? arena_printf(a, "Height of the guard %s; %s.", height->provided,
					 limit_words(a, c->findings, "guard_height"))
			       : "" },
		{ NULL,
			"The strength of guard and rail is not checked here: by a licensed "
			"designer "
			"where one is required." },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

static struct box place_of(const struct sheet *s, int i, int n)
{
	double wide = box_width(s->room) / n;

	return (struct box){ s->room.x0 + i * wide, s->room.y0,
		s->room.x0 + (i + 1) * wide - (i + 1 < n ? 6 : 0), s->room.y1 };
}

#define COLUMN 60.0 /* of the sheet's width: beside the views, for one that is drawn in it */

/* Under the table, where that takes a column of the sheet; else empty. */
static struct box under_table(const struct sheet *s, struct box whole, const struct table *t)
{
	double gap = 4 * s->hand.letter;
	struct box b = { s->room.x1 + gap, s->room.y0, whole.x1,
		whole.y1 - box_height(table_size(s->hand, t)) - gap };

	return box_width(b) < COLUMN || box_height(b) < COLUMN ? box_empty() : b;
}

/* The guard across is last, and as small as the stair is wide: under the table when there is room.
 * The sum of the ratios they were drawn at. */
static double compose_sides(struct sheet *s, const struct guard_side *sides, int n,
	struct box under)
{
	bool is_under = n > 1 && sides[n - 1].view.spec.from == VIEW_FRONT && !box_is_empty(under);
	int beside = is_under ? n - 1 : n;
	double ratios = 0;

	for (int i = 0; i < n; i++)
		ratios += sheet_compose(s,
			(struct composition){ compose_side, &sides[i], sides[i].window, 0 },
			i < beside ? place_of(s, i, beside) : under, SET_CENTRED)
				  .ratio;
	return ratios;
}

static struct guard_side side_from(struct arena *a, const struct sheet_context *c,
	const struct guard_balls *balls, enum view_from from)
{
	struct guard_side g = { .context = c,
		.balls = balls,
		.view = view_make(a, c->parts, (struct view_spec){ .from = from }),
		.title = from == VIEW_FROM_RIGHT ? "Guard from the right" : "Guard from the left" };

	g.window = box_grow(guard_window(&g.view), AROUND);
	return g;
}

/* The foot of a piece, or of the lowest that it is joined to in the shop: of a cap, its newel's. */
static double foot_of(const struct part *parts, const struct part *of, int place)
{
	double foot = of->places[place].origin.z;
	int unit = of->units[place];

	for (const struct part *p = parts; unit && p; p = p->next)
		for (int i = 0; p->kind == of->kind && i < p->count; i++)
			if (p->units[i] == unit)
				foot = fmin(foot, p->places[i].origin.z);
	return foot;
}

/* A newel at the head of the stair stands as low as the landing nosing's underside. */
static double foot_at_floor(const struct stair *s, const struct part *p)
{
	return s->total_rise - (p->kind == &part_newel ? s->job->treads.thickness : 0);
}

/* The upper floor and what stands on it: the flight and its balustrade would hide it from the foot.
 */
static bool is_at_floor(const struct part *p, int place, const void *with)
{
	const struct sheet_context *c = with;

	if (p->existing == EXISTING_UPPER_FLOOR)
		return true;
	if (!is_of_guard(p) || (p->rail && p->rail->pitch > 0))
		return false;
	return foot_of(c->parts, p, place) > foot_at_floor(c->stair, p) - NEAR_ENOUGH;
}

static struct guard_side side_across(struct arena *a, const struct sheet_context *c,
	const struct guard_balls *balls, const struct ball *ball)
{
	struct view_spec spec = { .from = VIEW_FRONT, .cut = true };
	struct guard_side g = { .context = c, .balls = balls, .title = "Guard across the stair" };

	spec.at = vec3_dot(ball->at, view_frame(VIEW_FRONT).w) + BEFORE;
	g.view = view_make(a, some_parts(a, c->parts, is_at_floor, c), spec);
	g.window = box_grow(guard_window(&g.view), AROUND);
	return g;
}

/* The sides that a ball goes through. */
static int sides_of(struct arena *a, const struct sheet_context *c, const struct guard_balls *balls,
	struct guard_side sides[MOST_SIDES])
{
	static const enum view_from ways[MOST_SIDES] = { VIEW_FROM_RIGHT, VIEW_FROM_LEFT,
		VIEW_FRONT };
	int n = 0;

	for (int i = 0; i < MOST_SIDES; i++)
		for (int k = 0; k < balls->n; k++) {
			const struct ball *b = balls->list[k].ball;
			if (!ball_is_in_guard(b) || ball_seen_from(c, b) != ways[i])
				continue;
			sides[n++] = ways[i] == VIEW_FRONT ? side_across(a, c, balls, b)
							   : side_from(a, c, balls, ways[i]);
			break;
		}
	return n;
}

/* Ratios at which the sides come out in a room. */
static double ratios_in(const struct sheet *s, struct box room, const struct guard_side *sides,
	int n)
{
	struct sheet trial = sheet_begin(s->drawing->arena, s->context, "");

	trial.room = room;
	double ratios = compose_sides(&trial, sides, n, box_empty());
	return trial.drawing->runs_over ? INFINITY : ratios;
}

/* On a small paper the table goes over the views where they come out as large under it. */
static struct table_list table_on_top(struct sheet *s, struct table_list list,
	const struct guard_side *sides, int n)
{
	struct box size = table_size(s->hand, list.tables), under = s->room;

	under.y1 -= box_height(size) + 2 * s->hand.letter;
	if (box_width(size) > box_width(s->room) || box_height(under) <= 0 ||
		ratios_in(s, under, sides, n) > ratios_in(s, s->room, sides, n))
		return list;
	draw_table(s->hand, vec(s->room.x0, s->room.y1), list.tables);
	s->room = under;
	return (struct table_list){ NULL, 0 };
}

/* Some of the sides, with the table where there is room for it. */
static struct drawing *sheet_showing(struct arena *a, const struct guard_balls *balls,
	const struct guard_side *sides, int n, struct table_list *rest)
{
	const struct sheet_context *c = sides->context;
	struct sheet s = sheet_begin(a, c, "Guards and balls");
	const struct table *tables = rest->tables;

	note_sheet(&s, balls);
	struct box whole = s.room, under = box_empty();
	if (rest->n && !sheet_is_cramped(&s)) {
		*rest = sheet_tables(&s, *rest, TABLES_RIGHT, box_width(s.room) / 2);
		under = under_table(&s, whole, tables);
	} else if (rest->n) {
		*rest = table_on_top(&s, *rest, sides, n);
	}
	compose_sides(&s, sides, n, under);
	s.drawing->scale = "as noted";
	return s.drawing;
}

/* Side by side; on a sheet each where a small paper is too narrow for that. */
static struct drawing *sheet_of_sides(struct arena *a, const struct sheet_context *c,
	const struct guard_balls *balls)
{
	struct guard_side sides[MOST_SIDES] = { { .context = c } };
	int n = sides_of(a, c, balls, sides);
	struct table *table = NEW(a, struct table);

	*table = guard_balls_table(a, c, balls);
	struct table_list rest = { table, 1 };
	struct drawing *first = sheet_showing(a, balls, sides, n, &rest), **tail = &first->next;
	if (first->runs_over && n > 1) {
		rest = (struct table_list){ table, 1 };
		tail = &first;
		for (int i = 0; i < n; i++, tail = &(*tail)->next)
			*tail = sheet_showing(a, balls, sides + i, 1, &rest);
	}
	*tail = sheets_of_tables(a, c, "Guards, continued", rest);
	return first;
}

/* The balls close up, then the handrails. */
static struct drawing *sheets_of_details(struct arena *a, const struct sheet_context *c,
	const struct guard_balls *balls)
{
	struct closeup *list = NEW_N(a, struct closeup, balls->n + 1);
	struct composition *all = NEW_N(a, struct composition, balls->n + MOST_HANDRAIL_DETAILS);
	const struct note notes[] = { { "Notes", general_words(c->stair) },
		{ NULL,
			"Sections of rails are square to their length. Asked: by the edition, its "
			"section in brackets; met: it meets the limit as entered." },
		{ NULL, by_others_words(a, c->stair->job) } };

	int n = 0;
	for (int i = 0; i < balls->n; i++) {
		if (ball_is_beside_cross(balls->list[i].ball->place))
			continue; /* drawn between balusters already */
		list[n] = guard_ball_closeup(a, c, &balls->list[i]);
		all[n] = closeup_composition(&list[n], 4);
		n++;
	}
	n += handrail_details(a, c, all + n);
	return closeup_sheets(a, c,
		(struct closeup_page){ "Guards and handrails, details", all, n, notes, 3 });
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct guard_balls balls = guard_balls_find(a, c);
	struct drawing *first = NULL;

	if (balls.all)
		first = sheet_of_sides(a, c, &balls);
	*drawings_end(&first) = sheets_of_details(a, c, &balls);
	return first;
}

const struct sheet_kind sheet_guard = { "guard", "S-5", draw };
