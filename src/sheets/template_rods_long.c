/*
 * Rods for long pieces: joints and brackets along newels, infill and wall rails.
 */
#include "sheets/piece_view.h"
#include "sheets/template_rods_gather.h"

/* Whether each face of a piece has a rod of its own. */
enum rod_faces { ROD_FOR_EACH_FACE, ROD_FOR_ALL_FACES };

/* What is marked along its length, and what its faces are called when it stands. */
struct marked_kind {
	const struct part_kind *kind;
	enum rod_faces rods;
	enum fixing only; /* holes for this; FIXING_NONE: all */
	const char *faces[FACES];
};

static const struct marked_kind marked[] = {
	{ &part_newel, ROD_FOR_ALL_FACES, FIXING_NONE,
		{ "uphill face", "downhill face", "left-hand face", "right-hand face", "upper end",
			"lower end" } },
	{ &part_infill, ROD_FOR_EACH_FACE, FIXING_NONE,
		{ "uphill face", "downhill face", "left-hand face", "right-hand face", "upper end",
			"lower end" } },
	{ &part_wall_rail, ROD_FOR_EACH_FACE, FIXING_SCREW,
		{ "one side", "other side", "top", "underside", "upper end", "lower end" } },
};

/* What lines the core of a newel looks out of it with its face; a strip of the infill lies. */
static const char *const faces_on_core[FACES] = { "one edge", "other edge", "outer face",
	"inner face", "one edge", "other edge" };
static const char *const faces_lying[FACES] = { "upper side", "underside", "right-hand side",
	"left-hand side", "upper end", "lower end" };

/* A piece as its rod is laid on it. */
struct laid {
	const struct part *part;
	const struct marked_kind *kind;
	struct vec3 along; /* the rod, in the axes of the piece */
	const char *from;  /* the end it begins at */
	const char *const *faces;
};

static const struct marked_kind *marked_kind(const struct part_kind *kind)
{
	for (int i = 0; i < (int)(sizeof(marked) / sizeof(*marked)); i++)
		if (marked[i].kind == kind)
			return &marked[i];
	return NULL;
}

/* What is plumb, as nearly as a newel is. */
#define PLUMB 0.99
#define LEVEL 0.01

static const char *end_words(double rise)
{
	if (rise > PLUMB)
		return "from its foot";
	if (rise < -PLUMB)
		return "from its top";
	if (fabs(rise) < LEVEL)
		return "from its left-hand end, as its sheet shows it";
	return rise > 0 ? "from its lower end" : "from its upper end";
}

/* A cross rail of a newel, which lies across it: it is marked up its width. */
static bool lies_across(const struct part *p)
{
	return p->kind == &part_newel && fabs(p->places[0].u.z) < LEVEL && p->places[0].v.z > PLUMB;
}

static struct laid laid(const struct marked_kind *m, const struct part *p)
{
	double rise = p->places[0].u.z;
	struct laid l = { p, m, vec3(1, 0, 0), end_words(rise), m->faces };

	if (lies_across(p)) {
		l.along = vec3(0, 1, 0);
		l.from = "from its lower edge";
	}
	if (p->kind == &part_newel && !p->newel)
		l.faces = faces_on_core;
	if (p->kind == &part_infill && fabs(rise) < PLUMB)
		l.faces = faces_lying;
	return l;
}

static int bore_count(const struct part *p)
{
	int n = 0;

	for (const struct bore *b = p->bores; b; b = b->next)
		n++;
	return n;
}

/* Is it square to the rod?  One in an end of the piece is not. */
static bool is_marked(const struct laid *l, const struct bore *b)
{
	bool in_end = fabs(vec3_dot(b->at.w, l->along)) > sqrt(0.5) - NEAR_ENOUGH;

	return !in_end && (l->kind->only == FIXING_NONE || b->fixing == l->kind->only);
}

static struct rod_tick tick_of(const struct rod_gatherer *g, const struct laid *l,
	const struct bore *b)
{
	struct vec3 at = vec3_sub(b->at.origin, piece_zero(l->part));

	return rod_bore_tick(g->arena, job_lettering(g->context->stair->job), b,
		vec3_dot(at, l->along));
}

static double length_along(const struct laid *l)
{
	return l->along.x > 0.5 ? l->part->size.length : l->part->size.width;
}

static void add_long_rod(struct rod_gatherer *g, const struct laid *l, struct rod_ticks t,
	const char *face)
{
	const struct part *p = l->part;

	/* one position is measured with a tape */
	if (t.n < 2)
		return;
	double end = fmin(t.list[t.n - 1].at + ROD_PAST, length_along(l));
	rod_gather(g,
		(struct named_rod){
			.rod = rod_of_ticks(t, end),
			.what = *face ? arena_printf(g->arena, "%s, %s", p->name, face) : p->name,
			.on = p->mark,
			.from = l->from,
			.note = "",
		});
}

static void add_rod_for_all(struct rod_gatherer *g, const struct laid *l)
{
	struct arena *a = g->arena;
	int more = l->part->newel ? rod_newel_tick_count(g, l->part) : 0;
	struct rod_ticks t = rod_ticks_begin(a, bore_count(l->part) + more);

	if (l->part->newel)
		rod_newel_ticks_add(g, &t, l->part, l->faces);
	for (const struct bore *b = l->part->bores; b; b = b->next)
		if (is_marked(l, b)) {
			struct rod_tick tick = tick_of(g, l, b);
			tick.name = arena_printf(a, "%s, %s", tick.name,
				l->faces[rod_face_toward(b->at.w)]);
			rod_ticks_add(&t, tick);
		}
	add_long_rod(g, l, t, "");
}

static void add_rods_by_face(struct rod_gatherer *g, const struct laid *l)
{
	for (int face = 0; face < FACES; face++) {
		struct rod_ticks t = rod_ticks_begin(g->arena, bore_count(l->part));
		for (const struct bore *b = l->part->bores; b; b = b->next)
			if (is_marked(l, b) && rod_face_toward(b->at.w) == face)
				rod_ticks_add(&t, tick_of(g, l, b));
		add_long_rod(g, l, t, l->faces[face]);
	}
}

void rods_gather_long(struct rod_gatherer *g)
{
	for (const struct part *p = g->context->parts; p; p = p->next) {
		const struct marked_kind *m = marked_kind(p->kind);
		if (!m)
			continue;
		struct laid l = laid(m, p);
		switch (m->rods) {
		case ROD_FOR_ALL_FACES: add_rod_for_all(g, &l); break;
		case ROD_FOR_EACH_FACE: add_rods_by_face(g, &l); break;
		}
	}
}
