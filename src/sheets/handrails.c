#include "sheets/handrails.h"

#include <string.h>

#include "draw/bounds.h"
#include "draw/clip.h"
#include "pitchboard/rail.h"
#include "sheets/closeup.h"
#include "sheets/limits.h"
#include "sheets/words.h"

/* ---- a profile ---- */

struct section {
	const struct sheet_context *context;
	const struct part *part;
	const char *words[MOST_WORDS];
	int word_count;
};

static struct box profile_box(const struct rail_profile *p)
{
	return outline_extent(p->outline);
}

static void draw_profile(struct drawing *g, const struct rail_profile *p, double scale)
{
	struct chain line = outline_chain(g->arena, p->outline);
	struct vec *points = NEW_N(g->arena, struct vec, line.n);

	for (int i = 0; i < line.n; i++)
		points[i] = vec_scale(line.points[i], scale);
	draw_polygon(g, PEN_CUT, points, line.n);
}

/* As deep as a finger needs, where it is, else as deep as it is. */
static struct rail_recess recess_shown(const struct rail_profile *p)
{
	struct rail_recess r = rail_recess_at_least(p, FINGER_RECESS);

	return r.from < r.to ? r : p->recess;
}

/* The finger recess as a code asks of it, each size in a lane of its own: from the tallest part to
 * where it starts, on to where it is deep, as far as it stays so, and its foot under the top. */
static void add_recess(struct dims *d, const struct sheet_context *c, const struct rail_profile *p,
	double scale)
{
	struct arena *a = d->drawing->arena;
	struct box b = profile_box(p);
	struct rail_recess r = recess_shown(p);
	const struct vec spans[] = { { 0, r.start }, { r.start, r.from }, { r.from, r.to },
		{ 0, r.to } };

	if (p->recess.depth <= 0)
		return;
	for (int i = 0; i < 4; i++) {
		const struct dim_link l = { (b.y1 - spans[i].y) * scale,
			(b.y1 - spans[i].x) * scale, b.x1 * scale, b.x1 * scale,
			inches_words(a, c->stair, spans[i].y - spans[i].x) };
		if (spans[i].y > spans[i].x + NEAR_ENOUGH)
			dims_chain(d, DIM_RIGHT, &l, 1);
	}
}

static struct box compose_section(struct sheet *s, const void *what, double scale)
{
	const struct section *t = what;
	const struct sheet_context *c = t->context;
	const struct rail_profile *p = &t->part->rail->profile;
	struct arena *a = s->drawing->arena;
	struct box b = profile_box(p), used = box_scale(b, scale);

	draw_profile(s->drawing, p, scale);
	struct dims d = dims_begin(s->drawing, s->hand.measure, s->hand.letter, used);
	const struct dim_link wide = { used.x0, used.x1, used.y0, used.y0,
		inches_words(a, c->stair, p->width) };
	const struct dim_link deep = { used.y0, used.y1, used.x0, used.x0,
		inches_words(a, c->stair, p->depth) };
	dims_chain(&d, DIM_BELOW, &wide, 1);
	dims_chain(&d, DIM_LEFT, &deep, 1);
	add_recess(&d, c, p, scale);
	const char *title = arena_printf(a, "%s %s, section",
		t->part->kind == &part_wall_rail ? "Wall rail" : "Rail", t->part->mark);
	return closeup_draw_foot(s, dims_draw(&d),
		(struct closeup_foot){ title, scale, t->words, t->word_count });
}

/* Measured, and what is asked of it where the edition does. */
static const char *measured(struct arena *a, const struct sheet_context *c, const char *what,
	double value, const char *gauge)
{
	const char *asked = limit_words(a, c->findings, gauge);

	return arena_printf(a, "%s %s%s%s", what, inches_words(a, c->stair, value),
		*asked ? "; " : "", asked);
}

static void say(struct section *t, const char *words)
{
	t->words[t->word_count++] = words;
}

/* Its depth, then what the edition asks of its levels in the same section. */
static void say_recess(struct arena *a, struct section *t)
{
	const struct sheet_context *c = t->context;
	const struct rail_profile *p = &t->part->rail->profile;
	struct rail_recess r = recess_shown(p);
	const struct {
		const char *what, *gauge;
		double value;
	} asked[] = {
		{ "Top of the rail to it", "rail_recess_start", r.start },
		{ "Widest part to it", "rail_recess_within", r.from - r.start },
		{ "So deep for", "rail_recess_height", r.to - r.from },
		{ "Top of the rail to its foot", "rail_recess_reach", r.to },
		{ "Width over it", "rail_recess_width", p->width },
	};

	say(t, measured(a, c, "Recess on both sides, deep", p->recess.depth, "rail_recess_depth"));
	for (int i = 0; i < 5; i++) {
		const struct finding *f = limit_for(c->findings, asked[i].gauge);
		if (f)
			say(t,
				arena_printf(a, "%s %s; %s: %s", asked[i].what,
					inches_words(a, c->stair, asked[i].value), f->asked,
					result_words(f->state)));
	}
}

static struct section section_of(struct arena *a, const struct sheet_context *c,
	const struct part *part)
{
	const struct rail_profile *p = &part->rail->profile;
	struct section t = { .context = c, .part = part };

	if (p->diameter > 0)
		say(&t, measured(a, c, "Round, diameter", p->diameter, "rail_diameter"));
	else if (p->kind == PROFILE_ROUND)
		say(&t,
			arena_printf(a, "Round, %s wide, but for a flat of %s underneath.",
				inches_words(a, c->stair, p->width),
				inches_words(a, c->stair, p->flat)));
	say(&t, measured(a, c, "Perimeter", p->perimeter, "rail_perimeter"));
	say(&t, measured(a, c, "Longest across", p->largest, "rail_across"));
	say(&t, measured(a, c, "Edges eased to", p->edge_radius, "rail_edge"));
	if (p->recess.depth > 0)
		say_recess(a, &t);
	say(&t,
		arena_printf(a, "Top %s plumb over the %s.",
			inches_words(a, c->stair, part->rail->height),
			part->rail->pitch > 0 ? "nosing line" : "floor"));
	return t;
}

static bool same_profile(const struct part *a, const struct part *b)
{
	const struct rail_profile *p = &a->rail->profile, *q = &b->rail->profile;

	return p->kind == q->kind && near_enough(p->width, q->width) &&
		near_enough(p->depth, q->depth) && near_enough(p->perimeter, q->perimeter) &&
		near_enough(a->rail->height, b->rail->height);
}

static bool is_new(const struct part *parts, const struct part *p)
{
	for (; parts != p; parts = parts->next)
		if (parts->rail && same_profile(parts, p))
			return false;
	return true;
}

static int add_sections(struct arena *a, const struct sheet_context *c, struct composition *list)
{
	int n = 0;

	for (const struct part *p = c->parts; p && n < MOST_HANDRAIL_DETAILS / 2; p = p->next) {
		if (!p->rail || !is_new(c->parts, p))
			continue;
		struct section *t = NEW(a, struct section);
		*t = section_of(a, c, p);
		list[n++] = (struct composition){ compose_section, t,
			profile_box(&p->rail->profile), 1 };
	}
	return n;
}

/* ---- along walls ---- */

/* Beside a bracket, in the house. */
#define BESIDE 130.0

static const struct part *first_of(const struct sheet_context *c, const struct part_kind *kind)
{
	for (const struct part *p = c->parts; p; p = p->next)
		if (p->kind == kind)
			return p;
	return NULL;
}

/* The inner side of the rail over the bracket, and the wall's face behind it, across the view. */
static struct closeup bracket_closeup(struct arena *a, const struct sheet_context *c,
	const struct part *bracket, const struct part *rail)
{
	struct vec3 at = bracket->places[0].origin, out = bracket->places[0].v;
	struct view_spec spec = { .from = VIEW_FRONT, .cut = true };
	struct vec u = view_project(VIEW_FRONT, at);
	double way = view_project(VIEW_FRONT, vec3_add(at, out)).x - u.x;

	spec.at = vec3_dot(at, view_frame(VIEW_FRONT).w) + 3;
	spec.window = (struct box){ u.x - BESIDE, u.y - BESIDE, u.x + BESIDE, u.y + BESIDE * 1.2 };
	struct closeup t = { .context = c,
		.title = arena_printf(a, "Bracket %s", bracket->mark),
		.view = view_make(a, c->parts, spec),
		.window = spec.window };
	const struct rail_profile *p = &rail->rail->profile;
	double middle = view_project(VIEW_FRONT, frame_place(rail->places[0], vec3(0, 0, 0))).x;
	double near = middle - way * p->width / 2, far = middle + way * p->width / 2;
	closeup_size(&t, (struct closeup_size){ DIM_ABOVE, u.x, near, t.window.y1 });
	closeup_size(&t, (struct closeup_size){ DIM_BELOW, u.x, far, t.window.y0 });
	closeup_say(&t, measured(a, c, "Wall to rail", fabs(near - u.x), "wall_clearance"));
	closeup_say(&t,
		"Brackets into studs or blocking set for them; what is in the wall is by others.");
	return t;
}

static const struct part *return_piece(const struct sheet_context *c)
{
	for (const struct part *p = c->parts; p; p = p->next)
		if (p->kind == &part_wall_rail && strstr(p->name, "return"))
			return p;
	return NULL;
}

/* From above: the rail's end and the piece that closes it to the wall. */
static struct closeup return_closeup(struct arena *a, const struct sheet_context *c,
	const struct part *piece)
{
	struct vec3 at = frame_place(piece->places[0], vec3(piece->size.length / 2, 0, 0));
	struct view_spec spec = { .from = VIEW_PLAN, .cut = true, .at = at.z + BESIDE };
	struct vec u = view_project(VIEW_PLAN, at);

	spec.window = box_about(u, BESIDE);
	struct closeup t = { .context = c,
		.title = arena_printf(a, "End of the wall rail, return %s", piece->mark),
		.view = view_make(a, c->parts, spec),
		.window = spec.window };

	closeup_say(&t, "The rail returns to the wall and ends there, seen from above.");
	const char *asked = limit_words(a, c->findings, "loose_rail_ends");
	closeup_say(&t, *asked ? arena_printf(a, "Its ends: %s.", asked) : "");
	return t;
}

static int add_walls(struct arena *a, const struct sheet_context *c, struct composition *list)
{
	const struct part *bracket = first_of(c, &part_bracket),
			  *rail = first_of(c, &part_wall_rail);
	const struct part *piece = return_piece(c);
	struct closeup *t = NEW_N(a, struct closeup, 2);
	int n = 0;

	if (bracket && rail) {
		t[n] = bracket_closeup(a, c, bracket, rail);
		list[n] = closeup_composition(&t[n], 2);
		n++;
	}
	if (piece) {
		t[n] = return_closeup(a, c, piece);
		list[n] = closeup_composition(&t[n], 2);
		n++;
	}
	return n;
}

int handrail_details(struct arena *a, const struct sheet_context *c, struct composition *list)
{
	int n = add_sections(a, c, list);

	return n + add_walls(a, c, list + n);
}
