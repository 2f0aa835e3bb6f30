/*
 * Typical fixings: how the stair stands on its floor and hangs on its header, and
 * how newels, rails and balusters are held; cut from the model's own views.
 *
 * What fixes what is read from the bores of the pieces that show.
 */
#include <string.h>

#include "base/text.h"
#include "draw/bounds.h"
#include "pitchboard/rail.h"
#include "sheets/closeup.h"
#include "sheets/fixing_words.h"
#include "sheets/joint_words.h"
#include "sheets/piece_view.h"
#include "sheets/some_parts.h"
#include "sheets/splice_closeup.h"
#include "sheets/stands.h"
#include "sheets/words.h"

enum { MOST_FIXINGS = 12, MOST_FEET = 5 };

/* Round what is shown, in the house. */
#define AROUND 140.0
#define BEHIND 5.0

/* ---- what is told of ---- */

/* What a string is screwed through for holds a tread. */
static bool tells_string(const struct part *p, const struct bore *b)
{
	return p->kind == &part_stringer && b->driven > 0;
}

static bool tells_newel(const struct part *p, const struct bore *b)
{
	return p->kind == &part_newel || (p->kind == &part_stringer && b->driven <= 0);
}

static bool tells_rail(const struct part *p, const struct bore *b)
{
	(void)b;
	return p->kind == &part_rail;
}

static bool tells_infill(const struct part *p, const struct bore *b)
{
	(void)b;
	return p->kind == &part_infill;
}

static bool tells_tread(const struct part *p, const struct bore *b)
{
	(void)b;
	return p->kind == &part_tread;
}

/* ---- stringers ---- */

static const struct part *shown_stringer(const struct sheet_context *c)
{
	for (const struct part *p = c->parts; p; p = p->next)
		if (p->stringer && p->stringer->side == SIDE_WALL)
			return p;
	for (const struct part *p = c->parts; p; p = p->next)
		if (p->stringer)
			return p;
	return NULL;
}

static const char *block_words(struct arena *a, const struct sheet_context *c)
{
	for (const struct part *p = c->parts; p; p = p->next)
		if (p->kind == &part_block)
			return arena_printf(a,
				"Thrust block %s, %s, fixed to the floor, let into the foot.",
				p->mark,
				section_words(a, c->stair, p->size.thickness, p->size.width));
	return "";
}

/* In its housing. */
static const char *housed_words(struct arena *a, const struct sheet_context *c,
	const struct housing *h, struct space over)
{
	const char *depth = inches_words(a, c->stair, h->depth);
	const char *held = fixings_in(a, c, over, tells_string);

	if (h->riser_top > 0)
		return arena_printf(a, "Let in %s, treads and risers glued and wedged.", depth);
	return *held ? arena_printf(a, "Let in %s, treads glued; %s", depth, held)
		     : arena_printf(a, "Let in %s, treads glued.", depth);
}

/* Wedged, or screwed: behind the strip of the first tread, over the stringer that is shown. */
static const char *tread_words(struct arena *a, const struct sheet_context *c)
{
	const struct part *p = shown_stringer(c);
	const struct stringer *g = p->stringer;
	double run = c->stair->flights[0].unit_run, z = p->size.thickness;
	struct vec3 one = frame_place(p->places[0], vec3(0, 0, 0));
	struct vec3 other = frame_place(p->places[0], vec3(0, 0, z));
	double x = c->stair->flights[0].frame.origin.x;
	double y0 = fmin(one.y, other.y) - BEHIND, y1 = fmax(one.y, other.y) + BEHIND;
	struct space over = { { x, y0, -INFINITY }, { x + 0.8 * run, y1, INFINITY } };

	if (g->housing)
		return housed_words(a, c, g->housing, over);
	const char *held = fixings_in(a, c, over, tells_tread);
	return *held ? arena_printf(a, "A tread is held here by %s", held) : "";
}

static struct closeup foot_closeup(struct arena *a, const struct sheet_context *c)
{
	const struct stair *s = c->stair;
	const struct flight *f = &s->flights[0];
	const struct stringer *g = shown_stringer(c)->stringer;
	double x = f->frame.origin.x, floor = s->lower_structural;
	const struct box window = { x - AROUND * 1.5, floor - AROUND, x + 1.7 * f->unit_run,
		2 * s->unit_rise + AROUND / 2 };
	struct closeup t = { .context = c,
		.title = "Foot of the stringers",
		.view = section_view(a, c, window),
		.window = window };

	closeup_size(&t, (struct closeup_size){ DIM_LEFT, 0, s->unit_rise, t.window.x0 });
	if (floor < -NEAR_ENOUGH)
		closeup_size(&t, (struct closeup_size){ DIM_LEFT, floor, 0, t.window.x0 });
	closeup_say(&t,
		arena_printf(a, "Stringers stand on the %s floor; %s %s.",
			s->job->stringers.foot == FOOT_STRUCTURAL ? "structural" : "finished",
			g->housing ? "wood left under the housings" : "wood left under the notches",
			inches_words(a, s, g->housing ? g->housing->wood_left : g->throat)));
	closeup_say(&t, block_words(a, c));
	closeup_say(&t, tread_words(a, c));
	closeup_say(&t,
		"Fixing to the floor, and the floor under it: by a licensed designer where "
		"required.");
	return t;
}

static struct closeup head_closeup(struct arena *a, const struct sheet_context *c)
{
	const struct stair *s = c->stair;
	const struct flight *f = &s->flights[0];
	double x = f->frame.origin.x + f->header_x, top = s->total_rise;
	double deep = fmax(s->floor_depth, 2 * s->unit_rise);
	const struct box window = { x - 1.7 * f->unit_run, top - deep - AROUND, x + AROUND * 1.8,
		top + AROUND };
	struct closeup t = { .context = c,
		.title = "Head of the stringers",
		.view = section_view(a, c, window),
		.window = window };

	closeup_size(&t, (struct closeup_size){ DIM_RIGHT, top - s->unit_rise, top, t.window.x1 });
	if (s->floor_depth > 0)
		closeup_size(&t,
			(struct closeup_size){ DIM_RIGHT, top - s->floor_depth, top, t.window.x1 });
	closeup_say(&t,
		s->job->stringers.head == HEAD_FLUSH
			? "The last tread is level with the upper floor; stringers bear on the "
			  "header."
			: "The last tread is one rise below the upper floor; stringers come up "
			  "against the header.");
	closeup_say(&t, header_words(c->parts));
	closeup_say(&t,
		"Hanger, ledger or bolts at the head, and the header itself: by a licensed "
		"designer where required.");
	return t;
}

/* ---- newels ---- */

static const struct part *newel_with_rail(const struct sheet_context *c)
{
	for (const struct part *p = c->parts; p; p = p->next)
		if (p->newel && p->newel->rail_high > 0)
			return p;
	return NULL;
}

static struct vec3 newel_middle(const struct part *p, double up)
{
	/* of a panelled one the part is its core */
	return frame_place(p->places[0], vec3(up, p->size.width / 2, p->size.thickness / 2));
}

/* What is shown of a newel: how far up, and whose bores are told of. */
struct newel_joint {
	const struct part *newel;
	double up;
	const char *what;
	tells_fn *tells;
};

static struct closeup newel_closeup(struct arena *a, const struct sheet_context *c,
	struct newel_joint j)
{
	const struct part *p = j.newel;
	struct vec3 at = newel_middle(p, j.up);
	enum view_from from = at.y < c->stair->width / 2 ? VIEW_FROM_RIGHT : VIEW_FROM_LEFT;
	struct vec u = view_project(from, at);
	double half = p->newel->section / 2, by = half + AROUND * 1.4;
	const struct view_spec spec = { .from = from, .window = box_about(u, by) };
	struct closeup t = { .context = c,
		.title = arena_printf(a, "%s %s", j.what, p->mark),
		.view = view_make(a, c->parts, spec),
		.window = spec.window };

	closeup_size(&t, (struct closeup_size){ DIM_BELOW, u.x - half, u.x + half, t.window.y0 });
	struct space space = space_round(at, by);

	/* not what stands behind it */
	space.low.y = at.y - half - BEHIND;
	space.high.y = at.y + half + BEHIND;
	const char *held = fixings_in(a, c, space, j.tells);
	const struct told told = { c->parts, space, j.tells };
	t.holes = closeup_holes_find(a, c->parts, from, told_shows_hole, &told);
	closeup_say(&t,
		*held ? arena_printf(a, "Held by %s", held)
		      : "No fixing is drilled here: it is fitted and fixed on site.");
	return t;
}

/* Where the rail's holes meet those of the newel, as the newel's own sheet figures them. */
static const char *rail_holes_words(struct arena *a, const struct sheet_context *c,
	const struct part *p)
{
	struct text words = { .arena = a };
	double zero = piece_zero(p).x;
	const char *said = ""; /* two stand side by side */

	for (const struct bore *b = p->bores; b; b = b->next) {
		double up = b->at.origin.x - zero;
		bool is_in_face = fabs(b->at.w.x) < 0.5;
		if (!b->is_mate || b->fixing == FIXING_NONE || !is_in_face ||
			up < p->newel->rail_low || up > p->newel->rail_high)
			continue;
		const char *hole = arena_printf(a, "%s %s", fixing_name(b->fixing),
			joint_words(a, c->stair, up));
		if (strcmp(hole, said) != 0)
			text_join(&words, "; ", hole);
		said = hole;
	}
	return words.length
		? arena_printf(a, "In the newel, up from its foot: %s.", text_chars(&words))
		: "";
}

static struct closeup rail_closeup(struct arena *a, const struct sheet_context *c,
	const struct part *p)
{
	struct closeup t = newel_closeup(a, c,
		(struct newel_joint){ p, (p->newel->rail_low + p->newel->rail_high) / 2,
			"Rail to newel", tells_rail });

	closeup_say(&t, rail_holes_words(a, c, p));
	return t;
}

static bool is_said(const struct closeup *list, int n, const char *words)
{
	for (int i = 0; i < n; i++)
		if (strcmp(list[i].words[0], words) == 0)
			return true;
	return false;
}

/* Every way in which a foot is held, once. */
static int newel_feet(struct arena *a, const struct sheet_context *c, struct closeup *list)
{
	int n = 0;

	for (const struct part *p = c->parts; p && n < MOST_FEET; p = p->next) {
		if (!p->newel)
			continue;
		list[n] = newel_closeup(a, c,
			(struct newel_joint){ p, p->newel->leg, "Foot of newel", tells_newel });
		n += !is_said(list, n, list[n].words[0]);
	}
	return n;
}

/* ---- a bracket of a wall rail ---- */

#define BESIDE_WALL 60.0 /* of the window, into the wall */
#define BEFORE_ARM 10.0

static bool tells_bracket(const struct part *p, const struct bore *b)
{
	(void)b;
	return p->kind == &part_bracket;
}

static bool is_at_wall(const struct part *p, int place, const void *with)
{
	(void)place;
	(void)with;
	return p->kind == &part_bracket || p->kind == &part_wall_rail ||
		p->existing == EXISTING_WALL;
}

static bool is_raked_wall_rail(const struct part *p)
{
	return p->kind == &part_wall_rail && p->rail && p->rail->pitch > 0;
}

/* "W1, W2": all that stand as high; NULL where one before it is among them. */
static const char *marks_as_high(struct arena *a, const struct part *parts, const struct part *p)
{
	const char *marks = NULL;

	for (const struct part *q = parts; q; q = q->next) {
		if (!is_raked_wall_rail(q) || !near_enough(q->rail->height, p->rail->height))
			continue;
		if (!marks && q != p)
			return NULL;
		marks = marks ? arena_printf(a, "%s, %s", marks, q->mark) : q->mark;
	}
	return marks;
}

/* How high the rails that a wall carries stand: no elevation looks at a wall that the section has
 * behind it. */
static const char *wall_rail_heights(struct arena *a, const struct sheet_context *c)
{
	struct text t = { .arena = a };

	for (const struct part *p = c->parts; p; p = p->next) {
		const char *marks = is_raked_wall_rail(p) ? marks_as_high(a, c->parts, p) : NULL;
		if (marks)
			text_join(&t, "; ",
				arena_printf(a, "top of %s %s plumb over the nosing line", marks,
					inches_words(a, c->stair, p->rail->height)));
	}
	return t.length ? arena_printf(a, "Wall rail: %s.", text_chars(&t)) : "";
}

/* Seen along the wall. */
static struct closeup bracket_closeup(struct arena *a, const struct sheet_context *c,
	const struct part *p)
{
	const struct frame *place = &p->places[p->count / 2];
	struct vec3 at = frame_place(*place, vec3(0, p->size.width / 2, p->size.thickness / 4));
	struct vec u = view_project(VIEW_FRONT, at);
	const struct part *shown = some_parts(a, c->parts, is_at_wall, NULL);
	struct view_spec spec = { .from = VIEW_FRONT, .cut = true };
	double by = p->size.thickness + BESIDE_WALL;

	spec.at = vec3_dot(place->origin, view_frame(spec.from).w) + BEFORE_ARM;
	spec.window = box_about(u, by);
	struct closeup t = { .context = c,
		.title = arena_printf(a, "Bracket %s of the wall rail", p->mark),
		.view = view_make(a, shown, spec),
		.window = spec.window };
	struct space space = space_round(at, p->size.thickness);
	const struct told told = { c->parts, space, tells_bracket };
	const char *held = fixings_in(a, c, space, tells_bracket);

	t.holes = closeup_holes_find(a, shown, VIEW_FRONT, told_shows_hole, &told);
	closeup_say(&t, arena_printf(a, "Held by %s", held));
	closeup_say(&t, p->note ? arena_printf(a, "%d brackets, each %s.", p->count, p->note) : "");
	closeup_say(&t, wall_rail_heights(a, c));
	return t;
}

static const struct part *any_bracket(const struct sheet_context *c)
{
	for (const struct part *p = c->parts; p; p = p->next)
		if (p->kind == &part_bracket)
			return p;
	return NULL;
}

/* ---- tread and baluster ---- */

static struct closeup baluster_closeup(struct arena *a, const struct sheet_context *c,
	const struct part *p)
{
	const struct frame *place = &p->places[p->count / 2];
	struct vec3 at = frame_place(*place, vec3(0, p->size.width / 2, p->size.thickness / 2));
	enum view_from from = at.y < c->stair->width / 2 ? VIEW_FROM_RIGHT : VIEW_FROM_LEFT;
	struct vec u = view_project(from, at);
	const struct view_spec spec = { .from = from, .window = box_about(u, AROUND) };
	struct closeup t = { .context = c,
		.title = arena_printf(a, "Foot of baluster %s", p->mark),
		.view = view_make(a, c->parts, spec),
		.window = spec.window };
	struct vec3 end =
		frame_place(*place, vec3(p->size.length, p->size.width / 2, p->size.thickness / 2));
	const char *head = fixings_in(a, c, space_round(end, 60), tells_infill);
	const char *foot = fixings_in(a, c, space_round(at, 40), tells_infill);
	const struct told told = { c->parts, space_round(at, 40), tells_infill };

	t.holes = closeup_holes_find(a, c->parts, from, told_shows_hole, &told);
	closeup_say(&t, *foot ? arena_printf(a, "Foot: %s", foot) : "");
	closeup_say(&t, *head ? arena_printf(a, "Head: %s", head) : "");
	return t;
}

static const struct part *any_baluster(const struct sheet_context *c)
{
	for (const struct part *p = c->parts; p; p = p->next)
		if (p->baluster)
			return p;
	return NULL;
}

/* ---- the sheet ---- */

static int all_fixings(struct arena *a, const struct sheet_context *c, struct closeup *list)
{
	const struct part *railed = newel_with_rail(c), *baluster = any_baluster(c);
	int n = 0;

	if (shown_stringer(c)) {
		list[n++] = foot_closeup(a, c);
		list[n++] = head_closeup(a, c);
	}
	n += newel_feet(a, c, list + n);
	if (railed)
		list[n++] = rail_closeup(a, c, railed);
	if (any_bracket(c))
		list[n++] = bracket_closeup(a, c, any_bracket(c));
	if (baluster)
		list[n++] = baluster_closeup(a, c, baluster);
	return n;
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	enum { MOST = MOST_FIXINGS + MOST_SPLICES };
	struct closeup *list = NEW_N(a, struct closeup, MOST);
	struct composition *all = NEW_N(a, struct composition, MOST);
	int housed = all_fixings(a, c, list), n = housed + splice_closeups(a, c, list + housed);
	const struct note notes[] = { { "Notes", general_words(c->stair) },
		{ NULL,
			"Typical of all of their kind. What is drawn is the joinery of the stair; "
			"its strength is not calculated here: by a licensed designer where "
			"required." } };

	for (int i = 0; i < n; i++)
		all[i] = closeup_composition(&list[i], i < housed ? 4 : 2);
	return closeup_sheets(a, c,
		(struct closeup_page){ "Typical fixings", all, n, notes,
			sizeof(notes) / sizeof(*notes) });
}

const struct sheet_kind sheet_fixings = { "fixings", "S-5", draw };
