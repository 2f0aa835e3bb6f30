#include "sheets/template_rods_gather.h"

#include <string.h>

#include "sheets/joint_words.h"

static bool ticks_are_alike(const struct marking_rod *one, const struct marking_rod *other)
{
	if (one->n != other->n || !pattern_alike(one->end, other->end))
		return false;
	for (int i = 0; i < one->n; i++)
		if (!pattern_alike(one->ticks[i].at, other->ticks[i].at) ||
			strcmp(one->ticks[i].name, other->ticks[i].name) != 0)
			return false;
	return true;
}

static bool is_like(const struct named_rod *one, const struct named_rod *other)
{
	return !strcmp(one->what, other->what) && !strcmp(one->from, other->from) &&
		ticks_are_alike(&one->rod, &other->rod);
}

void rod_gather(struct rod_gatherer *g, struct named_rod rod)
{
	for (struct named_rod *r = g->first; r; r = r->next)
		if (is_like(r, &rod)) {
			r->on = marks_with(g->arena, r->on, rod.on);
			return;
		}
	*g->tail = NEW(g->arena, struct named_rod);
	**g->tail = rod;
	g->tail = &(*g->tail)->next;
}

struct rod_ticks rod_ticks_begin(struct arena *a, int room)
{
	return (struct rod_ticks){ a, NEW_N(a, struct rod_tick, room + 1), 0 };
}

void rod_ticks_add(struct rod_ticks *t, struct rod_tick tick)
{
	int i = t->n++;

	for (; i > 0 && t->list[i - 1].at > tick.at; i--)
		t->list[i] = t->list[i - 1];
	t->list[i] = tick;
}

struct marking_rod rod_of_ticks(struct rod_ticks t, double end)
{
	for (int i = 0; i < t.n; i++) {
		t.list[i].brief = arena_printf(t.arena, "%d", i + 1);
		t.list[i].name = arena_printf(t.arena, "%d %s", i + 1, t.list[i].name);
	}
	return (struct marking_rod){ .end = end, .ticks = t.list, .n = t.n };
}

int rod_face_toward(struct vec3 w)
{
	if (fabs(w.x) > fmax(fabs(w.y), fabs(w.z)))
		return w.x > 0 ? FACE_UP_X : FACE_DOWN_X;
	if (fabs(w.y) > fabs(w.z))
		return w.y > 0 ? FACE_UP_Y : FACE_DOWN_Y;
	return w.z > 0 ? FACE_UP_Z : FACE_DOWN_Z;
}

struct rod_tick rod_bore_tick(struct arena *a, struct lettering how, const struct bore *b,
	double at)
{
	return (struct rod_tick){ .at = at,
		.name = bore_purpose(b),
		.figure = bore_place_letter(a, how, b, at) };
}
