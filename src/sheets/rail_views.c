/*
 * Runs of rail of which neither elevation nor section names all pieces: across the stair, or behind
 * the eye of the section.  Each is seen square by itself, its marks in balloons.
 *
 *          (N3)   (H3)   (B5)   (N3)
 *            \      \      \      \
 *           |¯|=====================|¯|
 *           | | | | | | | | | | | | | |
 *        ___|_|_|_|_|_|_|_|_|_|_|_|_|_|___    the upper floor
 */
#include <string.h>

#include "draw/bounds.h"
#include "sheets/balloons.h"
#include "sheets/closeup.h"
#include "sheets/rail_runs.h"
#include "sheets/reader.h"
#include "sheets/sights.h"
#include "sheets/some_parts.h"
#include "sheets/words.h"

/* From the view to its balloons, in heights of a capital. */
#define CLEAR 3.0

/* So that no leader lies on an upright, in heights of a capital. */
#define SHIFT 1.5

/* Of the floor so much is shown round what stands on it, in the house. */
#define AROUND 150.0

/* How far under and over its rail a balustrade's pieces have their middle. */
#define BELOW 1500.0
#define ABOVE 500.0

/* Drawn no larger, 1 to so much: for bench sizes there are other sheets. */
#define LARGEST 8

struct rail_view {
	const struct sheet_context *context;
	const struct rail_run *run;
	const struct part *named; /* what bears a balloon in it */
	struct view view;
	struct box window;
	const char *title, *words;
};

/* ---- what belongs to a run ---- */

static bool is_of_rail(const struct part *p)
{
	return p->kind == &part_rail || p->kind == &part_wall_rail || p->kind == &part_bracket ||
		p->kind == &part_newel || p->kind == &part_infill;
}

/* The middle of a piece in one of its places: along the run on plan, left of it, over its underside
 * there. */
static struct vec3 place_beside(const struct rail_run *r, const struct part *p, int place)
{
	struct box3 b = solids_extent(p->solids);
	struct vec3 middle = vec3_scale(vec3_add(b.low, b.high), 0.5);
	struct vec3 from = vec3_sub(frame_place(p->places[place], middle), r->at.origin);
	double cosine = hypot(r->at.u.x, r->at.u.y);
	double along = (from.x * r->at.u.x + from.y * r->at.u.y) / cosine;

	return vec3(along, from.x * r->at.v.x + from.y * r->at.v.y,
		from.z - along * r->at.u.z / cosine);
}

/* Rail, newels at its ends and what fills between, brackets. */
static bool is_beside(const struct part *p, int place, const void *with)
{
	const struct rail_view *v = with;
	double reach = v->context->stair->job->newels.section;

	if (!is_of_rail(p))
		return false;
	struct vec3 at = place_beside(v->run, p, place);
	double cosine = hypot(v->run->at.u.x, v->run->at.u.y);
	return fabs(at.y) < reach && at.x > -reach && at.x < v->run->length * cosine + reach &&
		at.z > -BELOW && at.z < ABOVE;
}

static bool is_raked(const struct rail_run *r)
{
	return r->end[RUN_LOW_END]->pitch > 0;
}

/* And what tells where one is: the steps beside it, or the floor that it stands on. */
static bool is_shown(const struct part *p, int place, const void *with)
{
	const struct rail_view *v = with;

	if (is_beside(p, place, with))
		return true;
	return is_raked(v->run) ? p->kind == &part_tread || p->kind == &part_riser
				: p->existing == EXISTING_UPPER_FLOOR;
}

/* ---- a view ---- */

static bool runs_across(const struct rail_run *r)
{
	return fabs(r->at.u.y) > fabs(r->at.u.x);
}

/* From the stair, or from its foot. */
static enum view_from seen_from(const struct sheet_context *c, const struct rail_run *r)
{
	if (runs_across(r))
		return VIEW_FRONT;
	return r->at.origin.y > c->stair->width / 2 ? VIEW_FROM_RIGHT : VIEW_FROM_LEFT;
}

static const char *from_words(enum view_from from)
{
	if (from == VIEW_FRONT)
		return "from the foot";
	return from == VIEW_FROM_RIGHT ? "from the right" : "from the left";
}

static const char *name_of(const struct rail_run *r, const struct part_kind *kind)
{
	if (kind == &part_wall_rail)
		return "Wall rail";
	return is_raked(r) ? "Rail" : "Level rail";
}

static const char *height_words(struct arena *a, const struct stair *s, const struct rail *r)
{
	return arena_printf(a, "Its top %s %s.", inches_words(a, s, r->height),
		r->pitch > 0 ? "plumb above the nosing line" : "above the upper floor");
}

/* Round the run and its steps; of the floor no more than that. */
static struct box window_of(const struct view *v)
{
	struct box b = box_empty();

	for (int i = 0; i < v->stroke_count; i++)
		if (!part_is_existing(v->strokes[i].part))
			b = box_add(box_add(b, v->strokes[i].a), v->strokes[i].b);
	return box_grow(b, AROUND);
}

static struct rail_view view_of(struct arena *a, const struct sheet_context *c,
	const struct rail_run *r, const struct part_kind *kind)
{
	struct rail_view v = { .context = c, .run = r };
	enum view_from from = seen_from(c, r);

	v.named = some_parts(a, c->parts, is_beside, &v);
	v.view = view_make(a, some_parts(a, c->parts, is_shown, &v),
		(struct view_spec){ .from = from });
	v.window = window_of(&v.view);
	v.title = arena_printf(a, "%s %s %s", name_of(r, kind), r->marks, from_words(from));
	v.words = height_words(a, c->stair, r->end[RUN_LOW_END]);
	return v;
}

/* Over the rail, along it, clear of all that stands in its run. */
static struct balloon_line line_over(const struct rail_view *v, double scale, double letter)
{
	enum view_from from = v->view.spec.from;
	struct vec low = view_project(from, rail_run_point(v->run, RUN_LOW_END));
	struct vec run = vec_sub(view_project(from, rail_run_point(v->run, RUN_HIGH_END)), low);
	struct vec along = vec_unit(run.x < 0 ? vec_scale(run, -1) : run);
	struct balloon_line line = { .along = along, .out = vec_left(along) };
	double reach = 0;

	for (int i = 0; i < v->view.stroke_count; i++) {
		const struct stroke *s = &v->view.strokes[i];
		if (is_of_rail(s->part))
			reach = fmax(reach,
				fmax(vec_dot(vec_sub(s->a, low), line.out),
					vec_dot(vec_sub(s->b, low), line.out)));
	}
	low = vec_scale(vec_add(low, vec_scale(line.out, reach)), scale);
	line.from = vec_add(low, vec_scale(line.out, CLEAR * letter));
	line.length = vec_length(run) * scale;
	line.shift = SHIFT * letter;
	return line;
}

static struct box compose(struct sheet *s, const void *what, double scale)
{
	const struct rail_view *v = what;
	struct box used = box_scale(v->window, scale);
	struct sights marks = sights_of(s->drawing->arena, v->named, &v->view, scale);

	view_draw(s->drawing, &v->view, (struct placing){ .scale = scale }, &v->window);
	balloons_set(s->hand, marks.list, marks.n, line_over(v, scale, s->hand.letter));
	used = box_join(used, balloons_draw(s->hand, marks.list, marks.n));
	return closeup_draw_foot(s, used, (struct closeup_foot){ v->title, scale, &v->words, 1 });
}

/* ---- what is named already ---- */

struct names {
	const char **mark;
	int n;
};

/* In a balloon: those letter their marks about the middle, tables do not. */
static bool is_lettered_on(const struct drawing *g, const char *mark)
{
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT && k->text.align == ALIGN_MIDDLE &&
			strcmp(k->text.text, mark) == 0)
			return true;
	return false;
}

static bool is_of(const struct drawing *g, const struct sheet_kind *kind)
{
	return strncmp(g->id, kind->series, strlen(kind->series)) == 0;
}

static struct names named_before(struct arena *a, const struct sheet_context *c)
{
	int parts = 0;

	for (const struct part *p = c->parts; p; p = p->next)
		parts++;
	struct names names = { NEW_N(a, const char *, parts + 1), 0 };
	for (const struct part *p = c->parts; p; p = p->next)
		for (const struct drawing *g = c->sheets; g && !part_is_existing(p); g = g->next)
			if ((is_of(g, &sheet_elevation) || is_of(g, &sheet_section)) &&
				is_lettered_on(g, p->mark)) {
				names.mark[names.n++] = p->mark;
				break;
			}
	return names;
}

static bool is_named(const struct names *names, const char *mark)
{
	for (int i = 0; i < names->n; i++)
		if (strcmp(names->mark[i], mark) == 0)
			return true;
	return false;
}

/* Names what the view shows; whether any of it was not named before. */
static bool name_more(struct names *names, struct sights s)
{
	int before = names->n;

	for (int i = 0; i < s.n; i++)
		if (!is_named(names, s.list[i].text))
			names->mark[names->n++] = s.list[i].text;
	return names->n > before;
}

/* ---- the sheets ---- */

struct rail_views {
	struct rail_view *view;
	struct composition *list;
	int n;
};

static void add_runs(struct arena *a, const struct sheet_context *c, struct names *names,
	struct rail_views *all, const struct part_kind *kind)
{
	const struct rail_runs runs = rail_runs(a, c->parts, kind);

	for (int i = 0; i < runs.n; i++) {
		struct rail_view *v = &all->view[all->n];
		*v = view_of(a, c, &runs.run[i], kind);
		if (!name_more(names, sights_of(a, v->named, &v->view, 1)))
			continue;
		all->list[all->n++] = (struct composition){ compose, v, v->window, LARGEST };
	}
}

static int count_rails(const struct part *parts)
{
	int n = 0;

	for (const struct part *p = parts; p; p = p->next)
		n += p->rail ? p->count : 0;
	return n;
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	int most = count_rails(c->parts);
	struct rail_views all = { NEW_N(a, struct rail_view, most + 1),
		NEW_N(a, struct composition, most + 1), 0 };
	struct names names = named_before(a, c);
	const struct note notes[] = { { "Notes", general_words(c->stair) },
		{ NULL,
			"Rails of which elevation and section do not show every piece. What "
			"stands before them is left out." } };

	add_runs(a, c, &names, &all, &part_rail);
	add_runs(a, c, &names, &all, &part_wall_rail);
	return closeup_sheets(a, c,
		(struct closeup_page){ "Rails from other sides", all.list, all.n, notes, 2 });
}

const struct sheet_kind sheet_rail_views = { "rails", "S-3", draw };
