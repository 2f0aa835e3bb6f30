/*
 * A job file as a tree, each node with its place in the file.
 *
 * Knows YAML and nothing of stairs.  Texts are not interpreted: `no`, `010`
 * and `7:30` stay what was typed.
 */
#ifndef READ_NODE_H
#define READ_NODE_H

#include "pitchboard/job.h"

enum node_kind {
	NODE_TEXT,
	NODE_LIST,
	NODE_GROUP,
	NODE_REFUSED, /* already complained of: ask no more of it */
};

struct node {
	struct node *next;
	enum node_kind kind;
	struct pos at;
	const char *key; /* NULL in a list */
	struct pos key_at;
	const char *text;     /* of a NODE_TEXT; "" when nothing was written */
	bool quoted;          /* a "" that is meant */
	int lines;            /* a text that runs on is joined by a space */
	const char *comment;  /* a value that vanished: `grade: #2 pine`; else NULL */
	struct node *entries; /* of a group or list, in file order */
	int count;
};

/* NULL after a fault of syntax; smaller faults are in `d` and the tree goes on. */
const struct node *node_load(struct arena *a, const char *text, struct diags *d);

/* NULL when there is no such key, or no group. */
const struct node *node_find(const struct node *group, const char *key);

/* Where to point when the value itself is wrong. */
struct pos node_place(const struct node *n);

#endif
