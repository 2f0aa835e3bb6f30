/*
 * Details: every different newel with what meets it, and the balustrade cut
 * across, each as large as its part of the sheet allows.
 */
#include "draw/bounds.h"
#include "draw/clip.h"
#include "draw/dimension.h"
#include "draw/view.h"
#include "sheets/balloons.h"
#include "sheets/compose.h"
#include "sheets/guard_balls.h"
#include "sheets/marks.h"
#include "sheets/some_parts.h"
#include "sheets/stands.h"
#include "sheets/words.h"

#define MOST_ACROSS 3 /* details side by side */
#define GAP 6.0

/* What a detail takes in beside a newel, in the house. */
#define IN_FRONT 120.0
#define ALONG 420.0
#define AROUND 90.0

/* Pieces of which less than this shows on paper get no balloon. */
#define LEAST_SHOWN 2.0

struct detail {
	const struct sheet_context *context;
	const struct part *parts; /* that it shows */
	const char *title;
	struct view view;
	struct box window;     /* of the view */
	const double *heights; /* plumb from the first one, figured in one chain; rising */
	int height_count;
	double heights_at;         /* along the view: what they are measured on */
	double wide_from, wide_to; /* and one size across, under it */
};

/* ---- drawing one ---- */

/* Where it is pointed at: in its wood where it is cut, else the middle of the longest of its lines
 * in the window that is not another's too; nothing where that is short. */
struct shown {
	double length;
	struct vec middle;
};

static struct shown longest_shown(struct arena *a, const struct detail *t, const struct part *p)
{
	struct shown best = { 0, { 0, 0 } };
	struct wood_shown cut = wood_cut(a, &t->view, p, t->window);

	if (cut.some)
		return (struct shown){ INFINITY, cut.at };
	for (int i = 0; i < t->view.stroke_count; i++) {
		const struct stroke *s = &t->view.strokes[i];
		if (s->part != p || s->pen == PEN_HIDDEN)
			continue;
		struct clipped c = clip_segment(t->window, s->a, s->b);
		double length = c.some ? vec_length(vec_sub(c.a, c.b)) : 0;
		if (length > best.length && !runs_along_cut(&t->view, p, c.a, c.b))
			best = (struct shown){ length, vec_scale(vec_add(c.a, c.b), 0.5) };
	}
	return best;
}

/* On a plumb line to the right of it, none lower than the view: leaders from there would go through
 * the figure under it. */
static struct box draw_marks(struct sheet *s, const struct detail *t, double scale, struct box used)
{
	struct arena *a = s->drawing->arena;
	int n = 0, parts = 0;

	for (const struct part *p = t->parts; p; p = p->next)
		parts++;
	struct leader *list = NEW_N(a, struct leader, parts + 1);
	for (const struct part *p = t->parts; p; p = p->next) {
		struct shown shown = longest_shown(a, t, p);
		if (!part_is_existing(p) && shown.length * scale > LEAST_SHOWN)
			list[n++] = (struct leader){ .text = p->mark,
				.points_at = vec_scale(shown.middle, scale) };
	}
	double x = used.x1 + 3 * balloon_radius(s->hand);
	balloons_set(s->hand, list, n,
		(struct balloon_line){ .from = vec(x, 0),
			.along = vec(0, 1),
			.out = vec(1, 0),
			.length = box_height(used),
			.low = t->window.y0 * scale,
			.high = used.y1 });
	return box_join(used, balloons_draw(s->hand, list, n));
}

static void add_heights(struct dims *d, const struct detail *t, double scale)
{
	const struct stair *s = t->context->stair;
	struct arena *a = d->drawing->arena;
	struct dim_link *links = NEW_N(a, struct dim_link, t->height_count + 1);
	double foot = t->heights_at * scale, first = t->heights[0];
	double last = t->heights[t->height_count - 1];

	for (int i = 0; i + 1 < t->height_count; i++)
		links[i] = (struct dim_link){ t->heights[i] * scale, t->heights[i + 1] * scale,
			foot, foot, inches_words(a, s, t->heights[i + 1] - t->heights[i]) };
	dims_chain(d, DIM_LEFT, links, t->height_count - 1);
	if (t->height_count < 3)
		return;
	const struct dim_link all[] = { { first * scale, last * scale, foot, foot,
		inches_words(a, s, last - first) } };
	dims_chain(d, DIM_LEFT, all, 1);
}

static struct box compose_detail(struct sheet *s, const void *what, double scale)
{
	const struct detail *t = what;
	struct arena *a = s->drawing->arena;
	struct box used = box_scale(t->window, scale);

	view_draw(s->drawing, &t->view, (struct placing){ .scale = scale }, &t->window);
	struct dims d = dims_begin(s->drawing, s->hand.measure, s->hand.letter, used);
	const struct dim_link wide[] = { { t->wide_from * scale, t->wide_to * scale, used.y0,
		used.y0, inches_words(a, t->context->stair, t->wide_to - t->wide_from) } };
	add_heights(&d, t, scale);
	dims_chain(&d, DIM_BELOW, wide, 1);
	used = draw_marks(s, t, scale, dims_draw(&d));
	const char *written = scale_words(a, t->context->stair, 1 / scale);
	used.y0 -= s->hand.letter * 3;
	double w = draw_view_title(s->hand, vec(used.x0, used.y0), t->title, written);
	used.x1 = fmax(used.x1, used.x0 + w);
	used.y0 -= s->hand.letter;
	return used;
}

/* ---- what is drawn ---- */

static double *copied(struct arena *a, const double *from, int n)
{
	double *to = NEW_N(a, double, n);

	for (int i = 0; i < n; i++)
		to[i] = from[i];
	return to;
}

/* The middle of its foot; a panelled one is placed by its core. */
static struct vec3 foot_of(const struct part *p)
{
	double half = p->newel->core / 2;

	return frame_place(p->places[0], vec3(0, half, half));
}

/* Along the view: to the right seen from the right of the stair, to the left from the other. */
static struct box window_round(const struct part *p, enum view_from from, double along)
{
	double half = p->newel->section / 2;
	struct vec3 foot = foot_of(p);
	double u = view_project(from, foot).x, way = from == VIEW_FROM_RIGHT ? 1 : -1;
	double front = u - way * (half + (along > 0 ? IN_FRONT : ALONG));
	double back = u + way * (half + (along > 0 ? ALONG : IN_FRONT));

	return (struct box){ fmin(front, back), foot.z - AROUND * 1.5, fmax(front, back),
		foot.z + p->newel->height + AROUND };
}

/* Does the rail go on from it up the stair, or end at it? */
static double way_along(const struct sheet_context *c, const struct part *p)
{
	double x = frame_place(p->places[0], vec3(0, 0, 0)).x;

	return x < c->stair->flights[0].total_run / 2 ? 1 : -1;
}

/* The house, and what is near a newel in its own plane (a box on plan): not the balustrade in front
 * of it, nor the rail on the wall behind. */
static bool is_near(const struct part *p, int place, const void *with)
{
	const struct box *plan = with;
	struct frame f = p->places[place];
	struct box b = box_empty();

	for (const struct solid *s = p->solids; s; s = s->next)
		for (int i = 0; i < s->n; i++) {
			struct vec3 one = frame_place(f, s->a[i]), other = frame_place(f, s->b[i]);
			b = box_add(box_add(b, vec(one.x, one.y)), vec(other.x, other.y));
		}
	return part_is_existing(p) || box_touches(*plan, b);
}

static struct detail newel_detail(struct arena *a, const struct sheet_context *c,
	const struct part *p)
{
	double half = p->newel->section / 2;
	struct vec3 foot = foot_of(p);
	enum view_from from = foot.y < c->stair->width / 2 ? VIEW_FROM_RIGHT : VIEW_FROM_LEFT;
	struct box window = window_round(p, from, way_along(c, p));
	double x0 = from == VIEW_FROM_RIGHT ? window.x0 : -window.x1;
	const struct box plan = { x0, foot.y - half, x0 + box_width(window), foot.y + half };
	const struct part *parts = some_parts(a, c->parts, is_near, &plan);
	struct view_spec spec = { .from = from, .window = window };
	struct detail t = { .context = c, .parts = parts, .view = view_make(a, parts, spec) };
	double u = view_project(from, foot).x;
	double top = foot.z + p->newel->height;
	const double heights[] = { foot.z, foot.z + p->newel->rail_low,
		foot.z + p->newel->rail_high, top };
	const double bare[] = { foot.z, top };
	bool has_rail = p->newel->rail_high > 0;

	t.title = arena_printf(a, "Newel %s", p->mark);
	t.window = window;
	t.height_count = has_rail ? 4 : 2;
	t.heights = copied(a, has_rail ? heights : bare, t.height_count);
	t.heights_at = u - half;
	t.wide_from = u - half;
	t.wide_to = u + half;
	return t;
}

static bool is_guarded_right(const struct stair *s, const struct step *step)
{
	return step->open_right && s->job->stair.right.guard == GUARD_HERE;
}

static bool is_guarded(const struct stair *s, const struct step *step)
{
	return is_guarded_right(s, step) ||
		(step->open_left && s->job->stair.left.guard == GUARD_HERE);
}

/* The step in the middle of those that have a balustrade; NULL when none has. */
static const struct step *middle_guarded(const struct stair *s)
{
	const struct flight *f = &s->flights[0];
	int n = 0, k = 0;

	for (int i = 0; i < f->step_count; i++)
		n += is_guarded(s, &f->steps[i]);
	for (int i = 0; i < f->step_count; i++)
		if (is_guarded(s, &f->steps[i]) && k++ == n / 2)
			return &f->steps[i];
	return NULL;
}

/* Across the view from the front; the middle of a rail is the origin of its section. */
static double rail_middle(const struct sheet_context *c, const struct step *step)
{
	double middle = 0, least = INFINITY,
	       edge = is_guarded_right(c->stair, step) ? 0 : c->stair->width;

	for (const struct part *p = c->parts; p; p = p->next)
		for (int i = 0; p->kind == &part_rail && i < p->count; i++) {
			struct vec3 at = p->places[i].origin;
			if (fabs(at.y - edge) >= least)
				continue;
			least = fabs(at.y - edge);
			middle = view_project(VIEW_FRONT, at).x;
		}
	return middle;
}

/* Through the middle of the first baluster. */
static double behind_riser(const struct stair *s)
{
	return s->job->balusters.section / 2;
}

/* Seen up the stair, cut through the front of a step: rail, infill, tread's end, stringer. */
static struct detail across_detail(struct arena *a, const struct sheet_context *c,
	const struct step *step)
{
	const struct stair *s = c->stair;
	const struct flight *f = &s->flights[0];
	double x = step->riser_x + behind_riser(s);
	struct vec3 at =
		frame_place(f->frame, vec3(x, is_guarded_right(s, step) ? 0 : s->width, 0));
	struct view_spec spec = { .from = VIEW_FRONT, .cut = true };
	double u = view_project(spec.from, at).x, inward = is_guarded_right(s, step) ? -1 : 1;
	double top = slope_at(flight_nosing_line(s, f), x) + s->job->rail.height;
	double out = u - inward * AROUND, in = u + inward * ALONG * 0.6;
	const double heights[] = { step->level, top };

	spec.at = vec3_dot(at, view_frame(spec.from).w);
	spec.window = (struct box){ fmin(out, in), step->level - s->unit_rise - AROUND,
		fmax(out, in), top + AROUND };
	struct detail t = { .context = c, .parts = c->parts, .view = view_make(a, c->parts, spec) };
	t.title = arena_printf(a, "Across the balustrade, step %d", step->number);
	t.window = spec.window;
	t.heights = copied(a, heights, 2);
	t.height_count = 2;
	t.heights_at = u;
	t.wide_from = rail_middle(c, step) - s->job->rail.width / 2;
	t.wide_to = t.wide_from + s->job->rail.width;
	return t;
}

/* ---- the sheets ---- */

/* What is figured on a newel: only what stands without a rail is figured from foot to top. */
static const char *newel_words(const struct part *parts)
{
	for (const struct part *p = parts; p; p = p->next)
		if (p->newel && p->newel->rail_high > 0)
			return "On a newel: from its foot to the underside of the rail on the face "
			       "it "
			       "meets, to the rail's top there, to the newel's top without a cap: "
			       "at "
			       "that face, not at the newel's middle.";
	return "On a newel: from its foot to its top without a cap.";
}

static const char *across_words(struct arena *a, const struct stair *s)
{
	if (!middle_guarded(s))
		return "";
	return arena_printf(a,
		" Across the balustrade, %s behind the riser's face: from the tread to the rail's "
		"top; and the rail's width.",
		length_words(a, s, behind_riser(s)));
}

static void note_sheet(struct sheet *s, const char *balls)
{
	const struct stair *st = s->context->stair;
	struct arena *a = s->drawing->arena;
	const struct note notes[] = {
		{ "Notes", general_words(st) },
		{ NULL,
			arena_printf(a, "%s%s", newel_words(s->context->parts),
				across_words(a, st)) },
		{ NULL, balls },
		{ NULL, by_others_words(a, st->job) },
	};

	sheet_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

static struct box place_in(const struct sheet *s, int i, int across)
{
	double wide = (box_width(s->room) - (across - 1) * GAP) / across;
	double x = s->room.x0 + i * (wide + GAP);

	return (struct box){ x, s->room.y0, x + wide, s->room.y1 };
}

static struct drawing *sheet_of(struct arena *a, const struct sheet_context *c,
	const struct detail *details, int n, const char *balls)
{
	struct sheet s = sheet_begin(a, c, "Newels and balustrade");

	note_sheet(&s, balls);
	for (int i = 0; i < n; i++)
		sheet_compose(&s,
			(struct composition){ compose_detail, &details[i], details[i].window, 4 },
			place_in(&s, i, n), SET_CENTRED);
	s.drawing->scale = "as noted";
	return s.drawing;
}

static int newel_count(const struct part *parts)
{
	int n = 0;

	for (const struct part *p = parts; p; p = p->next)
		n += p->newel != NULL;
	return n;
}

static int all_details(struct arena *a, const struct sheet_context *c, struct detail *list)
{
	const struct step *step = middle_guarded(c->stair);
	int n = 0;

	for (const struct part *p = c->parts; p; p = p->next)
		if (p->newel)
			list[n++] = newel_detail(a, c, p);
	if (step)
		list[n++] = across_detail(a, c, step);
	return n;
}

/* As evenly over the sheets as goes, no more than so many on one; what balls pass is said once, on
 * the last of them, where the balustrade is. */
static struct drawing *draw_across(struct arena *a, const struct sheet_context *c,
	const struct detail *list, int n, int most)
{
	struct drawing *first = NULL, **tail = &first;
	const char *balls = guard_balls_words(a, c);
	int sheets = (n + most - 1) / most;

	for (int i = 0, at = 0; i < sheets; i++) {
		int here = (n - at + sheets - i - 1) / (sheets - i);
		*tail = sheet_of(a, c, list + at, here, i + 1 < sheets ? "" : balls);
		tail = &(*tail)->next;
		at += here;
	}
	return first;
}

static bool runs_over(const struct drawing *list)
{
	for (; list; list = list->next)
		if (list->runs_over)
			return true;
	return false;
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct detail *list = NEW_N(a, struct detail, newel_count(c->parts) + 1);
	int n = all_details(a, c, list), most = MOST_ACROSS;
	struct drawing *first = draw_across(a, c, list, n, most);

	while (runs_over(first) && most > 1)
		first = draw_across(a, c, list, n, --most);
	return first;
}

const struct sheet_kind sheet_details = { "details", "S-5", draw };
