/*
 * A job file with one key set otherwise: what a user does who follows a finding.
 */
#ifndef TESTS_JOB_EDIT_H
#define TESTS_JOB_EDIT_H

#include <stdlib.h>
#include <string.h>

#include "read/node.h"

/* A name of a path and what follows it; `index` from 1, 0: it is not in a list. */
struct path_step {
	const char *name, *rest;
	int index;
};

static inline struct path_step path_step_of(struct arena *a, const char *path)
{
	size_t n = strcspn(path, ".[");
	struct path_step s = { arena_strndup(a, path, n), path + n, 0 };

	if (*s.rest == '[') {
		s.index = atoi(s.rest + 1);
		s.rest = strchr(s.rest, ']') + 1;
	}
	if (*s.rest == '.')
		s.rest++;
	return s;
}

static inline size_t offset_of(const char *text, struct pos at)
{
	const char *p = text;

	for (int line = 1; line < at.line; line++)
		p = strchr(p, '\n') + 1;
	return (size_t)(p - text) + (size_t)at.col - 1;
}

/* What remains of the path, as one would write it on one line. */
static inline const char *written(struct arena *a, struct path_step s, const char *value)
{
	if (!*s.rest)
		return arena_printf(a, "%s: %s", s.name, value);
	return arena_printf(a, "%s: {%s}", s.name, written(a, path_step_of(a, s.rest), value));
}

static inline const char *put_in(struct arena *a, const char *text, size_t at, size_t until,
	const char *words)
{
	return arena_printf(a, "%.*s%s%s", (int)at, text, words, text + until);
}

/* Before the first key of a group, in its manner; of the file itself behind everything. */
static inline const char *add_key(struct arena *a, const char *text, const struct node *group,
	const char *words, int depth)
{
	if (depth == 0)
		return arena_printf(a, "%s%s\n", text, words);
	size_t at = offset_of(text, group->at);
	if (text[at] == '{')
		return put_in(a, text, at + 1, at + 1,
			arena_printf(a, "%s%s", words, group->count ? ", " : ""));
	if (!group->entries)
		return NULL;
	struct pos first = group->entries->key_at;
	at = offset_of(text, first);
	return put_in(a, text, at, at, arena_printf(a, "%s\n%*s", words, first.col - 1, ""));
}

/* Over a value on one line. */
static inline const char *write_over(struct arena *a, const char *text, const struct node *n,
	const char *value)
{
	size_t at = offset_of(text, n->at), length;

	if (n->kind == NODE_TEXT && !n->quoted)
		length = strcspn(text + at, ",}]#\n");
	else if (text[at] == '[')
		length = strcspn(text + at, "]\n") + 1;
	else
		return NULL;
	return put_in(a, text, at, at + length, value);
}

static inline const struct node *entry(const struct node *list, int index)
{
	const struct node *n = list->entries;

	while (n && --index > 0)
		n = n->next;
	return n;
}

static inline const char *edit(struct arena *a, const char *text, const struct node *group,
	const char *path, const char *value, int depth)
{
	struct path_step s = path_step_of(a, path);
	const struct node *n = node_find(group, s.name);

	if (n && s.index)
		n = entry(n, s.index);
	if (!n)
		return s.index ? NULL : add_key(a, text, group, written(a, s, value), depth);
	if (!*s.rest)
		return write_over(a, text, n, value);
	return edit(a, text, n, s.rest, value, depth + 1);
}

/* `path` as findings name keys: "stair.segments[1].run".  The key is written over, or put in where
 * it is not; NULL where it stands for more than one line. */
static inline const char *job_edit(struct arena *a, const char *text, const char *path,
	const char *value)
{
	struct diags d;

	diags_init(&d, a, "edited.yaml", text);
	const struct node *root = node_load(a, text, &d);
	return root ? edit(a, text, root, path, value, 0) : NULL;
}

#endif
