/*
 * A stair from the text of its job, for tests.
 */
#ifndef TESTS_BUILT_H
#define TESTS_BUILT_H

#include <string.h>

#include "pitchboard/part.h"

struct built {
	struct arena *arena;
	struct diags diags;
	const struct stair *stair; /* NULL when refused */
	const struct part *parts;  /* NULL when refused */
};

static inline struct built built_from(const char *text)
{
	struct built b = { .arena = arena_new() };
	const char *yaml = arena_strdup(b.arena, text);
	diags_init(&b.diags, b.arena, "job.yaml", yaml);
	const struct job *job = job_read(b.arena, yaml, &b.diags);
	b.stair = stair_solve(b.arena, job, NULL, &b.diags);
	b.parts = parts_make(b.arena, b.stair, &b.diags);
	return b;
}

/* The n-th part of that name, counted from 0; NULL when there are fewer. */
static inline const struct part *built_part(const struct built *b, const char *name, int n)
{
	for (const struct part *p = b->parts; p; p = p->next)
		if (strcmp(p->name, name) == 0 && n-- == 0)
			return p;
	return NULL;
}

/* How many pieces of that name stand in the house. */
static inline int built_count(const struct built *b, const char *name)
{
	int n = 0;
	for (const struct part *p = b->parts; p; p = p->next)
		n += strcmp(p->name, name) == 0 ? p->count : 0;
	return n;
}

/* Box round a part in one of its places. */
struct extent {
	struct vec3 low, high;
};

static inline void extent_stretch(struct extent *e, struct vec3 p)
{
	e->low = vec3(fmin(e->low.x, p.x), fmin(e->low.y, p.y), fmin(e->low.z, p.z));
	e->high = vec3(fmax(e->high.x, p.x), fmax(e->high.y, p.y), fmax(e->high.z, p.z));
}

static inline struct extent built_extent(const struct part *p, int place)
{
	struct extent e = { { INFINITY, INFINITY, INFINITY }, { -INFINITY, -INFINITY, -INFINITY } };
	for (const struct solid *s = p->solids; s; s = s->next)
		for (int i = 0; i < s->n; i++) {
			extent_stretch(&e, frame_place(p->places[place], s->a[i]));
			extent_stretch(&e, frame_place(p->places[place], s->b[i]));
		}
	return e;
}

/* The text of the first complaint; "" when there is none. */
static inline const char *built_complaint(const struct built *b)
{
	return b->diags.first ? b->diags.first->text : "";
}

#endif
