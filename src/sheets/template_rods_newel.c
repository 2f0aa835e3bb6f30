/*
 * Ticks up a newel beside those of its joints: the rails that come against it, and the rings of
 * cross rails round its core.
 */
#include "sheets/template_rods_gather.h"

/* A point of the house, up from the lowest of the newel. */
static double up_newel(const struct part *newel, double level)
{
	return level - newel->places[0].origin.z;
}

/* The face of the newel that the rail ends against, as it is called. */
static const char *face_words(const struct rail_run *r, enum rail_run_end end,
	const struct part *newel, const char *const *faces)
{
	struct vec3 at = frame_place_back(newel->places[0], rail_run_point(r, end));

	return faces[rod_face_toward(
		vec3(0, at.y - newel->size.width / 2, at.z - newel->size.thickness / 2))];
}

static void add_rail(const struct rod_gatherer *g, struct rod_ticks *t, const struct part *newel,
	struct rail_meeting m, const char *face)
{
	struct arena *a = g->arena;

	rod_ticks_add(t,
		(struct rod_tick){ .at = up_newel(newel, m.under),
			.name = arena_printf(a, "underside of the rail, %s", face) });
	rod_ticks_add(t,
		(struct rod_tick){ .at = up_newel(newel, m.top),
			.name = arena_printf(a, "top of the rail, %s", face) });
}

/* Rings are told up from the highest point of the foot: on the rake that is so far up from the
 * lowest of the core, which stands in from the strips' faces.  A leg hangs down lower still. */
static double foot_of_rings(const struct part *core)
{
	double off_square = fmax(fabs(core->start.mitre), fabs(core->start.bevel));

	return core->newel->leg + tan(off_square) * (core->newel->section + core->newel->core) / 2;
}

static void add_rings(const struct rod_gatherer *g, struct rod_ticks *t, const struct part *core)
{
	double foot = foot_of_rings(core);

	for (int i = 0; i < core->newel->ring_count; i++) {
		struct newel_ring ring = core->newel->rings[i];
		if (ring.from > NEAR_ENOUGH)
			rod_ticks_add(t,
				(struct rod_tick){ .at = foot + ring.from,
					.name = arena_printf(g->arena, "cross rails %d, lower edge",
						i + 1) });
		if (foot + ring.to < core->size.length - NEAR_ENOUGH)
			rod_ticks_add(t,
				(struct rod_tick){ .at = foot + ring.to,
					.name = arena_printf(g->arena, "cross rails %d, upper edge",
						i + 1) });
	}
}

int rod_newel_tick_count(const struct rod_gatherer *g, const struct part *newel)
{
	return 2 * newel->newel->ring_count + 2 * RUN_ENDS * g->runs.n;
}

void rod_newel_ticks_add(const struct rod_gatherer *g, struct rod_ticks *t,
	const struct part *newel, const char *const *faces)
{
	for (int i = 0; i < g->runs.n; i++)
		for (int end = 0; end < RUN_ENDS; end++) {
			const struct rail_run *r = &g->runs.run[i];
			const struct rail *rail = r->end[end];
			if (rail_run_meets(r, end, newel, 0))
				add_rail(g, t, newel, end == RUN_LOW_END ? rail->foot : rail->head,
					face_words(r, end, newel, faces));
		}
	add_rings(g, t, newel);
}
