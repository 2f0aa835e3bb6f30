/*
 * Tables of keys.
 *
 * One row says everything about one key: its kind, where its value lands, its
 * range, its default and a line of help.  Reading, the key reference, the
 * schema for editors and the assumptions on a sheet all walk the same rows.
 */
#ifndef READ_FIELD_H
#define READ_FIELD_H

#include <stddef.h>

#include "read/node.h"

enum field_kind {
	FIELD_TEXT,    /* const char *: one line */
	FIELD_DATE,    /* const char *: 2026-11-02 */
	FIELD_LENGTH,  /* double, millimetres */
	FIELD_NUMBER,  /* double */
	FIELD_COUNT,   /* int */
	FIELD_CHOICE,  /* an enum */
	FIELD_YES_NO,  /* bool */
	FIELD_GROUP,   /* a struct inside the struct */
	FIELD_GROUPS,  /* pointer to structs, and their count */
	FIELD_LENGTHS, /* const double *, and their count */
	FIELD_TEXTS,   /* const char *const *, and their count */
};

/* The last row of a list of choices has no word. */
struct choice {
	const char *word;
	int value;
};

struct group;

struct field {
	enum field_kind kind;
	const char *key;
	size_t at;          /* where in its struct the value lands */
	size_t count_at;    /* where the count of a list lands */
	const char *help;   /* what it is, in the trade's words */
	double least, most; /* of a value; of the characters of a text; of the entries of a list
			       of groups */
	/* The default as one would type it, for jobs in inches and in millimetres (NULL: the same);
	 * entries of a list divided by commas. */
	const char *usual, *usual_mm;
	const char *like; /* instead: an earlier key of the group, whose value it takes */
	/* instead: decided by what is read of the group so far; `absent` says how */
	const char *(*decide)(const void *group, enum units units);
	const char *absent; /* what an absent key means, in words */
	const struct choice *choices;
	const struct group *group;
	const char *label; /* how a sheet names the default when it was used */
	unsigned shown;    /* of enum shown_on: on which sheets */
	bool required;
	bool (*matters)(const struct job *job); /* does the default, in this job?  NULL: always */
};

/* The last row has no key.  A struct that keeps its node has it as first member. */
struct group {
	const char *path; /* "stair.left"; "" is the file itself */
	size_t size;
	const struct field *fields;
	const char *shorthand; /* `left: wall` stands for `left: {side: wall}` */
	const char *instead;   /* the likely mend of a value where its keys are expected */
	bool keeps_node;
};

#define LANDS(type, member) .at = offsetof(struct type, member)
#define COUNTED(type, member) .count_at = offsetof(struct type, member)

struct field_reader {
	struct arena *arena;
	struct diags *diags;
	const struct group *top; /* to say where a misplaced key belongs */
	enum units units;
	int *finest; /* grows to the finest graduation that the lengths read lie on */
};

/* Fills `into` from the node, or with defaults where `n` is NULL. */
void group_read(const struct field_reader *r, const struct group *g, const struct node *n,
	void *into);

/* "stair.width" */
const char *field_path(struct arena *a, const struct group *g, const char *key);

/* The default as one would type it, for a job in these units; NULL: none. `group` is what is read
 * so far. */
const char *field_usual(const struct field *f, const void *group, enum units units);

const struct field *field_find(const struct group *g, const char *key);

/* The word for a choice's value. */
const char *choice_word(const struct choice *choices, int value);

/* "plain, braced or bars" */
const char *choice_list(struct arena *a, const struct choice *choices);

#endif
