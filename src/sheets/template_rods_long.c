/*
 * Rods for long pieces: joints and brackets along newels, infill and wall rails.
 */
#include "sheets/template_rods_gather.h"

enum { FACE_UP_Y, FACE_DOWN_Y, FACE_UP_Z, FACE_DOWN_Z, FACES };

/* Whether each face of a piece has a rod of its own. */
enum rod_faces { ROD_FOR_EACH_FACE, ROD_FOR_ALL_FACES };

/* What is marked along its length, and what its faces are called. */
struct marked_kind {
	const struct part_kind *kind;
	enum rod_faces rods;
	enum fixing only; /* holes for this; FIXING_NONE: all */
	const char *from;
	const char *faces[FACES];
};

static const struct marked_kind marked[] = {
	{ &part_newel, ROD_FOR_ALL_FACES, FIXING_NONE, "from its foot",
		{ "uphill face", "downhill face", "left-hand face", "right-hand face" } },
	{ &part_infill, ROD_FOR_EACH_FACE, FIXING_NONE, "from its foot",
		{ "uphill face", "downhill face", "left-hand face", "right-hand face" } },
	{ &part_wall_rail, ROD_FOR_EACH_FACE, FIXING_SCREW, "from its lower end",
		{ "one side", "other side", "top", "underside" } },
};

static const struct marked_kind *marked_kind(const struct part_kind *kind)
{
	for (int i = 0; i < (int)(sizeof(marked) / sizeof(*marked)); i++)
		if (marked[i].kind == kind)
			return &marked[i];
	return NULL;
}

/* The face that a hole goes into; FACES for one in an end. */
static int face_of(const struct bore *b)
{
	struct vec3 w = b->at.w;

	if (fabs(w.x) > fmax(fabs(w.y), fabs(w.z)))
		return FACES;
	if (fabs(w.y) > fabs(w.z))
		return w.y > 0 ? FACE_UP_Y : FACE_DOWN_Y;
	return w.z > 0 ? FACE_UP_Z : FACE_DOWN_Z;
}

static int bore_count(const struct part *p)
{
	int n = 0;

	for (const struct bore *b = p->bores; b; b = b->next)
		n++;
	return n;
}

static bool is_marked(const struct marked_kind *m, const struct bore *b)
{
	return face_of(b) != FACES && (m->only == FIXING_NONE || b->fixing == m->only);
}

static void add_long_rod(struct rod_gatherer *g, const struct marked_kind *m, const struct part *p,
	struct rod_ticks t, const char *face)
{
	/* one position is measured with a tape */
	if (t.n < 2)
		return;
	double end = fmin(t.list[t.n - 1].at + ROD_PAST, p->size.length);
	rod_gather(g,
		(struct named_rod){
			.rod = rod_of_ticks(t, end),
			.what = *face ? arena_printf(g->arena, "%s, %s", p->name, face) : p->name,
			.on = p->mark,
			.from = m->from,
			.note = "",
		});
}

static void add_rod_for_all(struct rod_gatherer *g, const struct marked_kind *m,
	const struct part *p)
{
	struct arena *a = g->arena;
	struct rod_ticks t = rod_ticks_begin(a, bore_count(p));

	for (const struct bore *b = p->bores; b; b = b->next)
		if (is_marked(m, b))
			rod_ticks_add(&t, b->at.origin.x,
				arena_printf(a, "%s, %s", bore_purpose(b), m->faces[face_of(b)]));
	add_long_rod(g, m, p, t, "");
}

static void add_rods_by_face(struct rod_gatherer *g, const struct marked_kind *m,
	const struct part *p)
{
	struct arena *a = g->arena;

	for (int face = 0; face < FACES; face++) {
		struct rod_ticks t = rod_ticks_begin(a, bore_count(p));
		for (const struct bore *b = p->bores; b; b = b->next)
			if (is_marked(m, b) && face_of(b) == face)
				rod_ticks_add(&t, b->at.origin.x, bore_purpose(b));
		add_long_rod(g, m, p, t, m->faces[face]);
	}
}

void rods_gather_long(struct rod_gatherer *g)
{
	for (const struct part *p = g->context->parts; p; p = p->next) {
		const struct marked_kind *m = marked_kind(p->kind);
		if (!m)
			continue;
		switch (m->rods) {
		case ROD_FOR_ALL_FACES: add_rod_for_all(g, m, p); break;
		case ROD_FOR_EACH_FACE: add_rods_by_face(g, m, p); break;
		}
	}
}
