/*
 * The edge of the opening in the upper floor: which lengths of it nothing guards.
 *
 *        ____________ left ___________
 *       |                             |  head: beside the stair
 *       |                    _________|
 *  foot |          opening  |_________|  here one steps off the stair
 *       |                             |  head
 *       |____________ right __________|
 *
 * A level rail guards what it runs along, a newel and a wall what they stand
 * before; and the job may say of an edge that a wall stands on it.
 */
#include <string.h>

#include "rules/mend.h"
#include "rules/spans.h"

#define OUTSIDE 600.0 /* what guards an edge stands so near to it, on the floor */
#define INSIDE 150.0  /* or so far over the opening: a rail fixed to the edge's face */
#define OVER 100.0    /* what does not rise so far over the floor is no guard */

struct edge {
	const char *key;  /* as the job names it */
	const char *name; /* "right edge of the opening" */
	const char *end;  /* what lengths along it are counted from: its far end, or its near one */
	struct span whole;
	double at;  /* its place square to itself */
	double out; /* the way to the floor: -1 or 1 */
	bool is_across;
};

enum { EDGES = 5 };

static void edges_of(const struct survey *s, struct edge edges[EDGES])
{
	static const char header[] = "the header", right[] = "the right-hand corner";
	const struct box o = s->stair->opening;
	const struct span along = { o.x0, o.x1 }, across = { o.y0, o.y1 };
	const struct span beside_right = { o.y0, 0 }, beside_left = { s->stair->width, o.y1 };
	const struct edge all[EDGES] = {
		{ "right", "right edge of the opening", header, along, o.y0, -1, false },
		{ "left", "left edge of the opening", header, along, o.y1, 1, false },
		{ "foot", "lower end of the opening", right, across, o.x0, -1, true },
		{ "head", "header, right of the stair", right, beside_right, o.x1, 1, true },
		{ "head", "header, left of the stair", "the stair", beside_left, o.x1, 1, true },
	};

	memcpy(edges, all, sizeof(all));
}

static bool has_wall(const struct survey *s, const struct edge *e)
{
	const struct job_opening *o = &s->stair->job->opening;

	for (int i = 0; i < o->wall_count; i++)
		if (strcmp(o->walls[i], e->key) == 0)
			return true;
	return false;
}

static bool counts_at_edge(const struct part *p)
{
	return counts_level_rails(p) || counts_newels(p) || counts_walls(p);
}

/* What of the edge a piece stands before; nothing where the span is the wrong way round. */
static struct span covered_by(const struct survey *s, const struct edge *e, const struct placed *p)
{
	struct vec3 low = p->box.low, high = p->box.high;
	struct span along =
		e->is_across ? (struct span){ low.y, high.y } : (struct span){ low.x, high.x };
	struct span square =
		e->is_across ? (struct span){ low.x, high.x } : (struct span){ low.y, high.y };
	double outer = e->at + e->out * OUTSIDE, inner = e->at - e->out * INSIDE;

	if (!counts_at_edge(p->part) || high.z < s->top + OVER || square.to < fmin(outer, inner) ||
		square.from > fmax(outer, inner))
		return (struct span){ 1, 0 };
	return along;
}

static struct spans bare_of(const struct survey *s, const struct edge *e)
{
	struct spans covers = { NEW_N(s->arena, struct span, s->count + 1), 0 };

	if (has_wall(s, e))
		return (struct spans){ .n = 0 };
	for (int i = 0; i < s->count; i++) {
		struct span c = covered_by(s, e, &s->pieces[i]);
		if (c.to > c.from)
			covers.at[covers.n++] = c;
	}
	return spans_bare(s->arena, covers, e->whole);
}

static const char *bare_words(const struct survey *s, const struct edge *e, struct span bare)
{
	double length = bare.to - bare.from;
	double before = e->is_across ? bare.from - e->whole.from : e->whole.to - bare.to;

	if (length > e->whole.to - e->whole.from - NEAR_ENOUGH)
		return arena_printf(s->arena, "%s, all %s", e->name, survey_say(s, length));
	if (before < NEAR_ENOUGH)
		return arena_printf(s->arena, "%s, %s from %s on", e->name, survey_say(s, length),
			e->end);
	return arena_printf(s->arena, "%s, %s beginning %s from %s", e->name, survey_say(s, length),
		survey_say(s, before), e->end);
}

/* The longest is the reading; where it is, and where the others are that are as bare. */
static void add_bare(const struct survey *s, const struct edge *e, struct reading *r)
{
	struct spans bare = bare_of(s, e);

	for (int i = 0; i < bare.n; i++) {
		double length = bare.at[i].to - bare.at[i].from;
		const char *words = bare_words(s, e, bare.at[i]), *others = r->most_at;
		reading_add(r, length, words);
		if (others && length > OVER)
			r->most_at = arena_printf(s->arena, "%s; %s", others, words);
	}
}

static struct reading bare_edges(const struct survey *s)
{
	struct reading r = reading_none();
	struct edge edges[EDGES];

	edges_of(s, edges);
	for (int i = 0; i < EDGES; i++)
		add_bare(s, &edges[i], &r);
	return r;
}

const char *opening_bare_words(struct arena *a, const struct stair *stair, const struct part *parts)
{
	const struct survey s = survey_make(a, stair, parts);

	if (stair->job->opening.length <= 0)
		return "";
	struct reading r = bare_edges(&s);
	return r.state == READING_TAKEN && r.most > OVER ? r.most_at : "";
}

static bool is_said(const struct job *job)
{
	return job->rail.level_run_count > 0 || node_has(job->opening.src, "walls");
}

static struct reading edge_without_guard(const struct survey *s)
{
	if (s->stair->job->opening.length <= 0)
		return reading_not_possible("the job gives no opening in the upper floor");
	struct reading r = bare_edges(s);
	if (r.state != READING_TAKEN)
		return reading_shown(reading_of(0, "all round the opening"), "guarded");
	if (!is_said(s->stair->job) && r.most > OVER)
		return reading_not_possible(
			"what guards the opening's edge in the upper floor is not in the job");
	return r;
}

/* Walls on every edge that has a bare length, beside those that are there. */
static struct mend mend_edge(const struct survey *s, struct shortfall f)
{
	struct mend m = mend_said(arena_printf(s->arena,
		"%s of guard more, by a level run of the rail along it, or a wall there, named "
		"under walls of the opening",
		survey_say(s, f.reading->most)));
	const char *walls = "";
	struct edge edges[EDGES];

	edges_of(s, edges);
	for (int i = 0; i < EDGES; i++)
		if ((has_wall(s, &edges[i]) || bare_of(s, &edges[i]).n > 0) &&
			!strstr(walls, edges[i].key))
			walls = arena_printf(s->arena, "%s%s%s", walls, *walls ? ", " : "",
				edges[i].key);
	return mend_also(s, m, "opening.walls", arena_printf(s->arena, "[%s]", walls));
}

const struct gauge gauges_of_edges[] = {
	{ "edge_without_guard", "edge of the opening without a guard", GAUGE_LENGTH,
		edge_without_guard, mend_edge, "opening.walls" },
	{ 0 },
};
