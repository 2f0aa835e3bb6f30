/*
 * A stair with its lists, for tests.
 */
#ifndef TESTS_LISTED_H
#define TESTS_LISTED_H

#include "base/file.h"
#include "built.h"
#include "pitchboard/list.h"

struct listed {
	struct built built;
	const struct blank *blanks;
	const struct cut_group *groups;
	struct lists lists;
};

static inline struct listed listed_from(const char *text)
{
	struct listed l = { .built = built_from(text) };
	struct arena *a = l.built.arena;
	l.blanks = blanks_make(a, l.built.stair, l.built.parts);
	l.groups = cutting_make(a, l.built.stair, l.blanks, &l.built.diags);
	l.lists = lists_make(a,
		&(struct list_sources){ l.built.stair, l.built.parts, l.blanks, l.groups, NULL,
			NULL, NULL, CHANGES_UNTOLD });
	return l;
}

static inline struct listed listed_file(const char *path)
{
	struct arena *a = arena_new();
	struct file_result r = file_read(a, path);
	struct listed l = listed_from(arena_strndup(a, (const char *)r.file->bytes, r.file->size));
	arena_free(a);
	return l;
}

/* How often a blank is cut out of the boards of a group, or fits none of them. */
static inline int listed_cut(const struct cut_group *groups, const struct blank *b)
{
	int n = 0;
	for (const struct cut_group *g = groups; g; g = g->next) {
		for (int i = 0; i < g->board_count; i++)
			for (int k = 0; k < g->boards[i].strip_count; k++)
				for (int j = 0; j < g->boards[i].strips[k].piece_count; j++)
					if (g->boards[i].strips[k].pieces[j].blank == b)
						n += g->boards[i].count *
							g->boards[i].strips[k].pieces[j].count;
		for (int i = 0; i < g->misfit_count; i++)
			n += g->misfits[i].blank == b ? g->misfits[i].count : 0;
	}
	return n;
}

/* The first group of so thick boards of a species. */
static inline const struct cut_group *listed_group(const struct listed *l, const char *species,
	double nominal)
{
	for (const struct cut_group *g = l->groups; g; g = g->next)
		if (strcmp(g->species, species) == 0 && fabs(g->nominal - nominal) < 1e-6)
			return g;
	return NULL;
}

#endif
