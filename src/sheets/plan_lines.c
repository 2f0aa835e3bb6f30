#include "sheets/plan_lines.h"

#include "draw/bounds.h"

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

static bool is_under_rail(const struct part *p, const void *with)
{
	(void)with;
	return !p->existing && p->kind != &part_rail;
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

struct plan plan_make(struct arena *a, const struct sheet_context *c)
{
	struct plan p = { .context = c,
		.flight = &c->stair->flights[0],
		.has_break = c->stair->total_rise > WAIST + c->stair->unit_rise };

	p.cut_height = p.has_break ? cut_height(c->stair) : WAIST;
	p.break_line = break_of(&p);
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
		return fabs(s->a.y - s->b.y) < NEAR_ENOUGH;
	return fabs(s->a.x - s->b.x) < NEAR_ENOUGH && fabs(x - round(x / run) * run) < 0.01;
}

/* The joints of a tread's strips lie too near its riser to be told from it. */
static bool is_wanted(const struct plan *p, const struct stroke *s)
{
	return s->pen != PEN_FINE && (s->pen != PEN_HIDDEN || is_wanted_dashed(p, s));
}

/* Over the cut as well, for it is one line with what is under it; and balusters stand under it. */
static bool is_rail(const struct stroke *s)
{
	return s->part->kind == &part_rail && s->pen != PEN_HIDDEN;
}

static void draw_near(struct drawing *g, const struct plan *p, double scale)
{
	for (int i = 0; i < p->near.stroke_count; i++) {
		struct stroke s = p->near.strokes[i];
		if (!is_wanted(p, &s))
			continue;
		if (p->has_break)
			s = cut_stroke(p->break_line, NEAR_SIDE, s);
		draw_stroke(g, s.pen == PEN_CUT ? PEN_OUTLINE : s.pen, s, scale);
	}
	for (int i = 0; i < p->whole.stroke_count; i++) {
		struct stroke s = p->whole.strokes[i];
		if (!is_rail(&s))
			continue;
		if (p->has_break)
			s = cut_stroke(p->break_line, NEAR_SIDE, s);
		draw_stroke(g, PEN_OUTLINE, s, scale);
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

/* Of the floor above only the rim of the opening: where the rest of it ends is nobody's business.
 */
static bool is_rim(const struct plan *p, const struct stroke *s)
{
	struct box opening = p->context->stair->opening;
	double x0 = p->flight->frame.origin.x;
	double low = fmin(s->a.x, s->b.x) - x0, high = fmax(s->a.x, s->b.x) - x0;

	return opening.x1 > opening.x0 && low > opening.x0 - 1 && high < opening.x1 + 1;
}

static void draw_rim(struct drawing *g, const struct plan *p, double scale)
{
	for (int i = 0; i < p->floor.stroke_count; i++)
		if (is_rim(p, &p->floor.strokes[i]))
			draw_stroke(g, PEN_ABOVE, p->floor.strokes[i], scale);
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
	return b;
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
