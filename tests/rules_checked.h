/*
 * A stair checked against an edition, for tests.
 */
#ifndef TESTS_RULES_CHECKED_H
#define TESTS_RULES_CHECKED_H

#include "built.h"
#include "pitchboard/rule.h"

struct checked {
	struct built built;
	const struct finding *findings; /* NULL when refused */
};

/* A copy of the parts that may be changed: a tread planted too high, a rail taken away. */
static inline struct part *checked_parts(struct arena *a, const struct part *parts)
{
	struct part *first = NULL, **tail = &first;

	for (; parts; parts = parts->next) {
		struct frame *places = NEW_N(a, struct frame, parts->count + 1);
		memcpy(places, parts->places, (size_t)parts->count * sizeof(*places));
		*tail = NEW(a, struct part);
		**tail = *parts;
		(*tail)->places = places;
		(*tail)->next = NULL;
		tail = &(*tail)->next;
	}
	return first;
}

/* The rules with one row only: the others need not be measured. */
static inline const struct rule_set *checked_only(struct arena *a, const struct rule_set *rules,
	const char *row)
{
	struct rule_set *one = NEW(a, struct rule_set);

	if (!rules)
		return NULL;
	*one = *rules;
	while (strcmp(one->rules->row, row) != 0)
		one->rules++;
	one->rule_count = 1;
	return one;
}

/* `text` is a whole job but for its code; `row` NULL: all of them. */
static inline struct checked checked_row_against(const char *edition, const char *row,
	const char *text, void (*change)(struct built *b, struct part *parts, double by), double by)
{
	struct arena *a = arena_new();
	struct checked c = { .built = built_from(arena_printf(a, "%scode: %s\n", text, edition)) };
	struct built *b = &c.built;

	arena_free(a);
	if (!b->parts)
		return c;
	if (change) {
		struct part *parts = checked_parts(b->arena, b->parts);
		change(b, parts, by);
		b->parts = parts;
	}
	const struct rule_set *rules = rules_read(b->arena, "templates", b->stair->job, &b->diags);
	if (row)
		rules = checked_only(b->arena, rules, row);
	c.findings = code_check(b->arena, b->stair, b->parts, rules, &b->diags);
	return c;
}

static inline struct checked checked_against(const char *edition, const char *text,
	void (*change)(struct built *b, struct part *parts, double by), double by)
{
	return checked_row_against(edition, NULL, text, change, by);
}

static inline const struct finding *checked_row(const struct checked *c, const char *row)
{
	for (const struct finding *f = c->findings; f; f = f->next)
		if (strcmp(f->rule->row, row) == 0)
			return f;
	return NULL;
}

#endif
