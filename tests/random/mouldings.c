#include "random/mouldings.h"

#include <string.h>

#include "random/overlap.h"

#define PRESSED 0.5

/* Pressed that way, does it run into one of these? */
static bool runs_into(struct arena *a, const struct part *parts, struct placed m, struct vec3 way,
	const char *const *kinds)
{
	struct vec3 moved = vec3_scale(way, PRESSED);
	for (const struct part *p = parts; p; p = p->next)
		for (int k = 0; kinds[k]; k++)
			for (int i = 0; strcmp(p->kind->name, kinds[k]) == 0 && i < p->count; i++)
				if (overlap_between(a, m, moved, (struct placed){ p, i }) >
					0.8 * PRESSED)
					return true;
	return false;
}

static bool lies_on_a_tread(const struct part *p)
{
	return strncmp(p->name, "cove on", 7) == 0;
}

/* Against a riser, or the stringer's face under a return. */
static bool touches(struct arena *a, const struct part *parts, struct placed m)
{
	static const char *const behind[] = { "riser", "stringer", "skirt", NULL };
	static const char *const level[] = { "tread", "landing nosing", NULL };
	struct frame at = m.part->places[m.place];
	double up = lies_on_a_tread(m.part) ? -1 : 1;
	return runs_into(a, parts, m, vec3_scale(at.v, -1), behind) &&
		runs_into(a, parts, m, vec3_scale(at.w, up), level);
}

static bool is_length(const struct part *p)
{
	return strcmp(p->kind->name, "moulding") == 0 && !strstr(p->name, ", end");
}

const char *mouldings_touch(struct arena *a, const struct stair *s, const struct part *parts)
{
	(void)s;
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; is_length(p) && i < p->count; i++)
			if (!touches(a, parts, (struct placed){ p, i }))
				return arena_printf(a, "%s %s (place %d) hangs in the air", p->mark,
					p->name, i + 1);
	return NULL;
}
