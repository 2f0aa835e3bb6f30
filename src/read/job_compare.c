/*
 * Two jobs key by key, from the tables that read them.
 */
#include <string.h>

#include "read/key_place.h"
#include "read/key_value.h"

/* Which of the jobs has the entry of a list that is compared. */
enum entry_in { ENTRY_IN_BOTH, ENTRY_IS_NEW, ENTRY_IS_GONE };

struct comparing {
	struct arena *arena;
	struct lettering was, is; /* each job's own */
	enum entry_in entry;
	struct key_change *first, **tail;
};

static void compare_groups(struct comparing *c, const struct group *g, struct key_place at,
	const char *was, const char *is);

static void compare_value(struct comparing *c, const struct field *f, struct key_place at,
	const char *was, const char *is)
{
	const char *before = key_value_words(c->arena, c->was, f, was);
	const char *now = key_value_words(c->arena, c->is, f, is);

	if (strcmp(before, now) == 0)
		return;
	struct key_change *k = NEW(c->arena, struct key_change);
	*k = (struct key_change){ NULL, arena_printf(c->arena, "%s%s", at.path, f->key),
		key_place_words(c->arena, at, f), c->entry == ENTRY_IS_NEW ? "" : before,
		c->entry == ENTRY_IS_GONE ? "" : now };
	*c->tail = k;
	c->tail = &k->next;
}

/* Entry by entry; one that only one of the jobs has is compared with an empty one, of which nothing
 * is said. */
static void compare_lists(struct comparing *c, const struct field *f, struct key_place at,
	const char *was, const char *is)
{
	const char *before = *(const char *const *)(was + f->at);
	const char *now = *(const char *const *)(is + f->at);
	int had = *(const int *)(was + f->count_at), has = *(const int *)(is + f->count_at);
	size_t size = f->group->size;
	const char *empty = NEW_N(c->arena, char, size);

	for (int i = 0; i < had || i < has; i++) {
		c->entry = i >= had ? ENTRY_IS_NEW : i >= has ? ENTRY_IS_GONE : ENTRY_IN_BOTH;
		compare_groups(c, f->group, key_place_in(c->arena, at, f, i + 1),
			i < had ? before + (size_t)i * size : empty,
			i < has ? now + (size_t)i * size : empty);
	}
	c->entry = ENTRY_IN_BOTH;
}

static void compare_groups(struct comparing *c, const struct group *g, struct key_place at,
	const char *was, const char *is)
{
	for (const struct field *f = g->fields; f->key; f++) {
		if (f->kind == FIELD_GROUP)
			compare_groups(c, f->group, key_place_in(c->arena, at, f, 0), was + f->at,
				is + f->at);
		else if (f->kind == FIELD_GROUPS)
			compare_lists(c, f, at, was, is);
		else
			compare_value(c, f, at, was, is);
	}
}

const struct key_change *job_compare(struct arena *a, const struct job *was, const struct job *is)
{
	struct comparing c = { .arena = a, .was = job_lettering(was), .is = job_lettering(is) };

	c.tail = &c.first;
	/* job_read() made each as the first member of a struct job_file, which the table is for */
	compare_groups(&c, &keys_file, (struct key_place){ "", "", "" }, (const char *)was,
		(const char *)is);
	return c.first;
}
