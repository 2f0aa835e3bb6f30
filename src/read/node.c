#include "read/node.h"

#include <stdlib.h>
#include <string.h>

/* The key is the first `length` bytes. */
static const struct node *find_part(const struct node *group, const char *key, size_t length)
{
	if (!group || group->kind != NODE_GROUP)
		return NULL;
	for (const struct node *n = group->entries; n; n = n->next)
		if (strlen(n->key) == length && memcmp(n->key, key, length) == 0)
			return n;
	return NULL;
}

const struct node *node_find(const struct node *group, const char *key)
{
	return find_part(group, key, strlen(key));
}

struct pos node_place(const struct node *n)
{
	return n->kind == NODE_TEXT || !n->key ? n->at : n->key_at;
}

struct pos node_pos(const struct node *group, const char *key)
{
	const struct node *n = key ? node_find(group, key) : NULL;

	if (n)
		return node_place(n);
	return group ? node_place(group) : (struct pos){ 0, 0 };
}

/* An entry of a list, counted from 1; NULL where there is none.  What has no index is itself. */
static const struct node *entry_of(const struct node *n, const char *index)
{
	if (!n || *index != '[')
		return n;
	const struct node *entry = n->kind == NODE_LIST ? n->entries : NULL;
	for (int i = atoi(index + 1); entry && i > 1; i--)
		entry = entry->next;
	return entry;
}

struct pos job_pos(const struct job *job, const char *path)
{
	const struct node *group = job->src;
	struct pos pos = { 0, 0 };

	while (group && *path) {
		size_t length = strcspn(path, ".[");
		const struct node *at = find_part(group, path, length);
		group = entry_of(at, path + length);
		if (at)
			pos = node_place(group ? group : at);
		path += length;
		path += strcspn(path, ".");
		path += *path == '.';
	}
	return pos;
}

bool node_has(const struct node *group, const char *key)
{
	return node_find(group, key) != NULL;
}
