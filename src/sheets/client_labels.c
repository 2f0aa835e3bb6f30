/*
 * The families of parts as a client calls them, and what each is made of.
 */
#include <string.h>

#include "sheets/client.h"

/* ---- words ---- */

static const char *infill_head(const struct job *job)
{
	switch (job->infill.kind) {
	case INFILL_PLAIN:
	case INFILL_BRACED: return "Balusters";
	case INFILL_BARS: return "Bars";
	case INFILL_PANEL: return "Panels";
	}
	return "";
}

/* ---- where they point ---- */

enum { IN_THE_WALL = -1 };

/* Where one would like to point: at a share of the run that is open, and so high over the nosing
 * line. */
static const struct family {
	const struct part_kind *kind;
	const char *head; /* NULL: by the infill */
	int wood;         /* of enum client_wood; IN_THE_WALL: what treads are cut out for */
	enum named named;
	double share;
	double lift; /* in heights of the rail */
	double far;  /* not named where the nearest edge seen is farther off, in unit runs */
} families[] = {
	{ &part_rail, "Rail", WOOD_RAIL, NAMED_OVER, 0.72, 1, 100 },
	{ &part_wall_rail, "Wall rail", WOOD_RAIL, NAMED_OVER, 0.25, 1, 100 },
	{ &part_infill, NULL, WOOD_BALUSTERS, NAMED_OVER, 0.55, 0.45, 100 },
	{ &part_newel, "Newel posts", WOOD_NEWELS, NAMED_OVER, 0, 0.6, 100 },
	{ &part_tread, "Treads", WOOD_TREADS, NAMED_UNDER, 0.8, 0, 3 },
	{ &part_riser, "Risers", WOOD_RISERS, NAMED_UNDER, 0.66, -0.1, 2 },
	{ &part_stringer, "Stringers", WOOD_STRINGERS, NAMED_UNDER, 0.4, -0.5, 100 },
	{ &part_skirt, "Skirt boards", WOOD_SKIRTS, NAMED_UNDER, 0.4, 0.1, 3 },
	{ &part_wall_rail, "Wall rail", WOOD_RAIL, NAMED_ON_PLAN, 0.7, 0, 100 },
	{ &part_tread, "Treads", WOOD_TREADS, NAMED_ON_PLAN, 0.8, 0, 3 },
	{ &part_rail, "Rail", WOOD_RAIL, NAMED_ON_PLAN, 0.6, 0, 100 },
	{ &part_newel, "Newel posts", WOOD_NEWELS, NAMED_ON_PLAN, 1.02, 0, 100 },
	{ &part_existing, "Wall in the steps", IN_THE_WALL, NAMED_ON_PLAN, 0.3, 0, 100 },
};

#define FAMILIES ((int)(sizeof(families) / sizeof(*families)))

/* Across the stair, clear of the line one walks on. */
#define ACROSS 0.25

/* Face of the first riser that is open to the eye. */
static double open_from(const struct flight *f, enum view_from from)
{
	for (int i = 0; i < f->step_count; i++)
		if (from == VIEW_FROM_LEFT ? f->steps[i].open_left : f->steps[i].open_right)
			return f->steps[i].riser_x;
	return 0;
}

/* Behind a guard upstairs the upper half of the flight is not to be told from it. */
static bool has_guard(const struct sheet_context *c)
{
	return c->stair->job->rail.level_run_count > 0;
}

static struct vec wanted(const struct sheet_context *c, const struct view *v,
	const struct family *f)
{
	const struct flight *flight = &c->stair->flights[0];
	double x0 = open_from(flight, v->spec.from);
	double share = f->share * (f->named == NAMED_OVER && has_guard(c) ? 0.5 : 1);
	double x = x0 + share * (flight->total_run - x0);
	double z = slope_at(flight_nosing_line(c->stair, flight), x);
	struct vec3 at = { x, ACROSS * c->stair->width, z + f->lift * c->stair->job->rail.height };

	return view_project(v->spec.from, frame_place(flight->frame, at));
}

/* The point of an edge nearest to another, but not quite at its ends. */
static struct vec nearest(const struct stroke *s, struct vec p)
{
	struct vec way = vec_sub(s->b, s->a);
	double square = vec_dot(way, way);
	double t = square > 0 ? vec_dot(vec_sub(p, s->a), way) / square : 0.5;

	return vec_add(s->a, vec_scale(way, fmin(fmax(t, 0.1), 0.9)));
}

struct aim {
	const struct part *part; /* NULL: nothing of the family is seen near enough */
	struct vec at;
};

static bool is_rough(const struct part *p)
{
	return p->stringer && p->stringer->hand == STRINGER_EITHER_HAND;
}

/* A sliver between two others is no good target, nor a rough carriage where a better stringer is
 * seen: so much farther off they count as. */
#define LONG_ENOUGH 300.0
#define ROUGH 1500.0

static double drawback(const struct stroke *s)
{
	double length = vec_length(vec_sub(s->b, s->a));

	return 1.5 * fmax(0, LONG_ENOUGH - length) + (is_rough(s->part) ? ROUGH : 0);
}

/* Of existing work only what stands in a tread. */
static bool is_of_family(const struct part *p, const struct family *f)
{
	return p->kind == f->kind && (!part_is_existing(p) || strcmp(p->name, WALL_IN_TREAD) == 0);
}

static struct aim aim_at(const struct view *v, const struct family *f, struct vec p, double far)
{
	struct aim aim = { NULL, p };
	double least = INFINITY;

	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *s = &v->strokes[i];
		if (!is_of_family(s->part, f) || s->pen == PEN_HIDDEN)
			continue;
		struct vec at = nearest(s, p);
		double off = vec_length(vec_sub(at, p)), counts = off + drawback(s);
		if (off < far && counts < least) {
			least = counts;
			aim = (struct aim){ s->part, at };
		}
	}
	return aim;
}

static enum client_wood wood_of(const struct job *job, const struct family *f, const struct part *p)
{
	if (is_rough(p))
		return WOOD_CARRIAGES;
	if (f->wood == WOOD_BALUSTERS && job->infill.kind == INFILL_PANEL)
		return WOOD_PANELS;
	return (enum client_wood)f->wood;
}

static struct label label_of(struct arena *a, const struct job *job, const struct family *f,
	const struct part *p)
{
	if (f->wood == IN_THE_WALL)
		return (struct label){ f->head, "the treads are cut round it", "", { 0, 0 } };
	enum client_wood wood = wood_of(job, f, p);
	return (struct label){ f->head ? f->head : infill_head(job),
		client_wood_words(a, job, wood), client_finish_words(job, wood), { 0, 0 } };
}

int client_labels(struct arena *a, const struct sheet_context *c, const struct view *v,
	enum named named, double scale, const struct label **list)
{
	struct label *labels = NEW_N(a, struct label, FAMILIES);
	const struct job *job = c->stair->job;
	double run = c->stair->flights[0].unit_run;
	int n = 0;

	for (int i = 0; i < FAMILIES; i++) {
		const struct family *f = &families[i];
		if (f->named != named)
			continue;
		struct aim aim = aim_at(v, f, wanted(c, v, f), f->far * run);
		if (!aim.part)
			continue;
		labels[n] = label_of(a, job, f, aim.part);
		labels[n++].points_at = vec_scale(aim.at, scale);
	}
	*list = labels;
	return n;
}
