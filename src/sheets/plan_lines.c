#include "sheets/plan_lines.h"

#include "draw/bounds.h"
#include "pitchboard/rail.h"
#include "sheets/some_parts.h"

/* Waist height, 4'-0" over the lower finished floor: common practice. */
#define WAIST 1220.0

/* The break line leans this far from square across the flight. */
#define BREAK_LEAN 0.35

static bool is_wall(const struct part *p, const void *with)
{
	(void)with;
	return p->existing == EXISTING_WALL;
}

static bool is_upper_floor(const struct part *p, const void *with)
{
	(void)with;
	return p->existing == EXISTING_UPPER_FLOOR || p->existing == EXISTING_HEADER;
}

static bool is_stair(const struct part *p, const void *with)
{
	(void)with;
	return !p->existing;
}

static bool is_rail_part(const struct part *p)
{
	return p->kind == &part_rail || p->kind == &part_wall_rail || p->kind == &part_bracket;
}

static bool is_under_rail(const struct part *p, const void *with)
{
	(void)with;
	return !p->existing && !is_rail_part(p);
}

/* Under the treads, dashed: riser faces and the stringers. */
static bool is_dashed(const struct part *p, const void *with)
{
	(void)with;
	return p->kind == &part_riser || p->stringer;
}

/* Waist height, but not through the thickness of a tread, which would show a slice of it. */
static double cut_height(const struct stair *s)
{
	double over = fmod(WAIST, s->unit_rise), under = s->unit_rise - over;

	if (over < 1)
		return WAIST - over - s->job->treads.thickness - 1;
	return under < s->job->treads.thickness + 1 ? WAIST - (s->job->treads.thickness + 1 - under)
						    : WAIST;
}

static struct break_line break_of(const struct plan *p)
{
	const struct stair *s = p->context->stair;
	struct slope_line nosing = flight_nosing_line(s, p->flight);
	double x = (p->cut_height - nosing.z0) / nosing.slope;
	struct vec3 at = frame_place(p->flight->frame, vec3(x, s->width / 2, 0));
	struct vec3 along = frame_turn(p->flight->frame, vec3(1, BREAK_LEAN, 0));

	return (struct break_line){ vec(at.x, at.y), vec_unit(vec(along.x, along.y)) };
}

struct box part_cover(const struct part *p, int place)
{
	struct box b = box_empty();

	for (const struct solid *s = p->solids; s; s = s->next)
		for (int i = 0; i < s->n; i++) {
			struct vec3 low = frame_place(p->places[place], s->a[i]);
			struct vec3 high = frame_place(p->places[place], s->b[i]);
			b = box_add(box_add(b, vec(low.x, low.y)), vec(high.x, high.y));
		}
	return b;
}

static void find_covers(struct arena *a, struct plan *p)
{
	int room = 0;

	for (const struct part *k = p->context->parts; k; k = k->next)
		room += k->kind == &part_wall_rail ? k->count : 0;
	struct box *covers = NEW_N(a, struct box, room + 1);
	for (const struct part *k = p->context->parts; k; k = k->next)
		for (int i = 0; k->kind == &part_wall_rail && i < k->count; i++)
			covers[p->cover_count++] = part_cover(k, i);
	p->covers = covers;
}

/* Does it stand on the upper floor, or guard it? */
static bool is_guard(const struct part *p, int place, const void *with)
{
	const struct stair *s = with;

	if (p->rail)
		return p->rail->pitch == 0;
	return !part_is_existing(p) && p->kind != &part_landing &&
		p->places[place].origin.z > s->total_rise - NEAR_ENOUGH;
}

struct plan plan_make(struct arena *a, const struct sheet_context *c)
{
	struct plan p = { .context = c,
		.flight = &c->stair->flights[0],
		.has_break = c->stair->total_rise > WAIST + c->stair->unit_rise };

	p.cut_height = p.has_break ? cut_height(c->stair) : WAIST;
	p.break_line = break_of(&p);
	find_covers(a, &p);
	p.near = view_make(a, c->parts,
		(struct view_spec){ .from = VIEW_PLAN,
			.cut = p.has_break,
			.at = p.cut_height,
			.shows = is_under_rail,
			.hidden = is_dashed });
	p.whole = view_make(a, c->parts,
		(struct view_spec){ .from = VIEW_PLAN, .shows = is_stair, .hidden = is_dashed });
	p.walls = view_make(a, c->parts,
		(struct view_spec){ .from = VIEW_PLAN,
			.cut = true,
			.at = p.cut_height,
			.shows = is_wall });
	p.floor = view_make(a, c->parts,
		(struct view_spec){ .from = VIEW_PLAN, .shows = is_upper_floor });
	p.guard = view_make(a, some_parts(a, c->parts, is_guard, c->stair),
		(struct view_spec){ .from = VIEW_PLAN });
	return p;
}

/* ---- strokes ---- */

static double beyond(struct break_line b, struct vec p)
{
	return vec_dot(vec_sub(p, b.through), b.normal);
}

enum side { NEAR_SIDE = -1, FAR_SIDE = 1 };

/* The piece of a stroke on one side of the break. */
static struct stroke cut_stroke(struct break_line b, enum side side, struct stroke s)
{
	double da = side * beyond(b, s.a), db = side * beyond(b, s.b);

	if (da < 0 && db < 0)
		s.b = s.a;
	else if (da < 0)
		s.a = vec_add(s.a, vec_scale(vec_sub(s.b, s.a), da / (da - db)));
	else if (db < 0)
		s.b = vec_add(s.b, vec_scale(vec_sub(s.a, s.b), db / (db - da)));
	return s;
}

static void draw_stroke(struct drawing *g, enum pen pen, struct stroke s, double scale)
{
	if (vec_length(vec_sub(s.a, s.b)) * scale > 0.05)
		draw_line(g, pen, vec_scale(s.a, scale), vec_scale(s.b, scale));
}

/* Of a riser only its face is wanted dashed, not its back a hair behind it; of a stringer the
 * lines along the flight. */
static bool is_wanted_dashed(const struct plan *p, const struct stroke *s)
{
	double x = s->a.x - p->flight->frame.origin.x, run = p->flight->unit_run;

	if (s->part->stringer)
		return near_enough(s->a.y, s->b.y);
	return near_enough(s->a.x, s->b.x) && fabs(x - round(x / run) * run) < 0.01;
}

/* The joints of a tread's strips lie too near its riser to be told from it. */
static bool is_wanted(const struct plan *p, const struct stroke *s)
{
	return s->pen != PEN_FINE && (s->pen != PEN_HIDDEN || is_wanted_dashed(p, s));
}

/* Over the cut as well, for it is one line with what is under it; and balusters stand under it. */
static bool is_rail(const struct stroke *s)
{
	return is_rail_part(s->part) && s->pen != PEN_HIDDEN;
}

/* Of the way from a to b the shares at which it goes into a box and comes out again, in one
 * direction: Liang and Barsky's clipping. */
static struct vec within(double a, double b, double low, double high, struct vec shares)
{
	double d = b - a;

	if (fabs(d) < NEAR_ENOUGH)
		return a > low && a < high ? shares : vec(1, 0);
	double in = (d > 0 ? low - a : high - a) / d, out = (d > 0 ? high - a : low - a) / d;
	return vec(fmax(shares.x, in), fmin(shares.y, out));
}

static struct stroke piece_of(struct stroke s, double from, double to)
{
	struct stroke piece = s;
	struct vec way = vec_sub(s.b, s.a);

	piece.a = vec_add(s.a, vec_scale(way, from));
	piece.b = vec_add(s.a, vec_scale(way, to));
	return piece;
}

/* What of a stroke is not under one of the covers from the k-th on. */
static void draw_uncovered(struct drawing *g, const struct plan *p, enum pen pen, struct stroke s,
	double scale, int k)
{
	for (; k < p->cover_count; k++) {
		const struct box *b = &p->covers[k];
		struct vec t = within(s.a.x, s.b.x, b->x0, b->x1, vec(0, 1));
		t = within(s.a.y, s.b.y, b->y0, b->y1, t);
		if (t.x >= t.y)
			continue;
		draw_uncovered(g, p, pen, piece_of(s, 0, t.x), scale, k + 1);
		s = piece_of(s, t.y, 1);
	}
	draw_stroke(g, pen, s, scale);
}

static struct stroke before_break(const struct plan *p, struct stroke s)
{
	return p->has_break ? cut_stroke(p->break_line, NEAR_SIDE, s) : s;
}

static void draw_near(struct drawing *g, const struct plan *p, double scale)
{
	for (int i = 0; i < p->near.stroke_count; i++) {
		struct stroke s = p->near.strokes[i];
		if (is_wanted(p, &s))
			draw_uncovered(g, p, s.pen == PEN_CUT ? PEN_OUTLINE : s.pen,
				before_break(p, s), scale, 0);
	}
	for (int i = 0; i < p->whole.stroke_count; i++) {
		struct stroke s = p->whole.strokes[i];
		bool is_level = s.part->rail && s.part->rail->pitch == 0;
		if (is_rail(&s) && !is_level)
			draw_stroke(g, PEN_OUTLINE, before_break(p, s), scale);
	}
	for (int i = 0; i < p->guard.stroke_count; i++) {
		struct stroke s = p->guard.strokes[i];
		if (is_wanted(p, &s))
			draw_stroke(g, PEN_ABOVE, before_break(p, s), scale);
	}
}

static void draw_far(struct drawing *g, const struct plan *p, double scale)
{
	for (int i = 0; i < p->whole.stroke_count; i++) {
		struct stroke s = p->whole.strokes[i];
		if (!is_wanted(p, &s) || (s.pen == PEN_HIDDEN && s.part->stringer))
			continue;
		draw_stroke(g, s.pen == PEN_HIDDEN ? PEN_HIDDEN : PEN_ABOVE,
			cut_stroke(p->break_line, FAR_SIDE, s), scale);
	}
}

/* How far outside the stair the rim may lie where the job gives no width of the opening. */
#define UNMEASURED 140.0

/* In the house. */
static struct box opening_of(const struct plan *p)
{
	struct box o = p->context->stair->opening;
	struct vec3 at = p->flight->frame.origin;

	return (struct box){ o.x0 + at.x, o.y0 + at.y, o.x1 + at.x, o.y1 + at.y };
}

static bool has_opening(const struct plan *p)
{
	return p->context->stair->opening.x1 > p->context->stair->opening.x0;
}

static bool has_width(const struct plan *p)
{
	return p->context->stair->job->opening.width > 0;
}

/* Of the floor above only the rim of the opening: where the rest of it ends is nobody's business.
 * Its edges across the flight run on past the opening; those along it are drawn from the opening
 * itself where its width is known. */
static bool is_rim(const struct plan *p, const struct stroke *s)
{
	struct box o = opening_of(p), b = box_add(box_add(box_empty(), s->a), s->b);
	bool is_across = box_height(b) > box_width(b);
	bool is_along = b.y0 > o.y0 - UNMEASURED && b.y1 < o.y1 + UNMEASURED;

	return has_opening(p) && b.x0 > o.x0 - 1 && b.x1 < o.x1 + 1 &&
		(is_across || (is_along && !has_width(p)));
}

static void draw_rim(struct drawing *g, const struct plan *p, double scale)
{
	const struct job_stair *stair = &p->context->stair->job->stair;
	struct box o = opening_of(p);

	for (int i = 0; i < p->floor.stroke_count; i++)
		if (is_rim(p, &p->floor.strokes[i]))
			draw_stroke(g, PEN_ABOVE, p->floor.strokes[i], scale);
	if (!has_opening(p) || !has_width(p))
		return;
	/* along the flight the floor may not be made; a wall's face is the edge itself */
	if (stair->right.kind == SIDE_OPEN)
		draw_stroke(g, PEN_ABOVE,
			(struct stroke){ .a = { o.x0, o.y0 }, .b = { o.x1, o.y0 } }, scale);
	if (stair->left.kind == SIDE_OPEN)
		draw_stroke(g, PEN_ABOVE,
			(struct stroke){ .a = { o.x0, o.y1 }, .b = { o.x1, o.y1 } }, scale);
}

/* Newels are hatched where they are cut, before the break. */
static void draw_newels(struct drawing *g, const struct plan *p, double scale)
{
	struct view faces = p->near;
	struct cut_face *kept = NEW_N(g->arena, struct cut_face, faces.cut_count + 1);

	faces.stroke_count = faces.cut_count = 0;
	faces.cuts = kept;
	for (int i = 0; i < p->near.cut_count; i++) {
		const struct cut_face *c = &p->near.cuts[i];
		bool near = c->part->kind == &part_newel;
		for (int k = 0; near && k < c->n; k++)
			near = beyond(p->break_line, c->points[k]) < 0;
		if (near)
			kept[faces.cut_count++] = *c;
	}
	view_draw(g, &faces, (struct placing){ .scale = scale }, NULL);
}

static void draw_break(struct drawing *g, const struct plan *p, double scale)
{
	struct break_line b = p->break_line;
	struct vec along = vec_left(b.normal);
	double half = p->context->stair->width / 2 / fabs(along.y) + 50;
	struct vec c = vec_scale(b.through, scale), n = vec_scale(b.normal, 1.6);
	struct vec kink = vec_scale(along, 2.2);
	const struct vec line[] = { vec_sub(c, vec_scale(along, half * scale)), vec_sub(c, kink),
		vec_add(vec_sub(c, vec_scale(kink, 0.4)), n),
		vec_sub(vec_add(c, vec_scale(kink, 0.4)), n), vec_add(c, kink),
		vec_add(c, vec_scale(along, half * scale)) };

	draw_polyline(g, PEN_DIM, line, 6);
}

struct box plan_box(const struct plan *p)
{
	struct box b = box_join(p->walls.box, p->whole.box);

	for (int i = 0; i < p->floor.stroke_count; i++)
		if (is_rim(p, &p->floor.strokes[i]))
			b = box_add(box_add(b, p->floor.strokes[i].a), p->floor.strokes[i].b);
	return has_opening(p) ? box_join(b, opening_of(p)) : b;
}

void plan_draw(struct drawing *g, const struct plan *p, double scale)
{
	view_draw(g, &p->walls, (struct placing){ .scale = scale }, NULL);
	draw_newels(g, p, scale);
	draw_near(g, p, scale);
	draw_rim(g, p, scale);
	if (!p->has_break)
		return;
	draw_far(g, p, scale);
	draw_break(g, p, scale);
}

void plan_draw_from_above(struct drawing *g, const struct plan *p, double scale)
{
	view_draw(g, &p->walls, (struct placing){ .scale = scale }, NULL);
	for (int i = 0; i < p->whole.stroke_count; i++) {
		struct stroke s = p->whole.strokes[i];
		if (s.pen != PEN_HIDDEN && s.pen != PEN_FINE)
			draw_stroke(g, s.pen, s, scale);
	}
	draw_rim(g, p, scale);
}
