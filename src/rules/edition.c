#include "rules/edition.h"

#include <string.h>

#include "read/shop_file.h"

enum { MOST_LIKE = 4, LONGEST_WORDS = 240 };

static const struct choice sources[] = {
	{ "read", SOURCE_READ },
	{ "second hand", SOURCE_SECOND_HAND },
	{ "from memory", SOURCE_FROM_MEMORY },
	{ 0 },
};

static const struct choice units[] = {
	{ "inches", UNITS_INCHES },
	{ "millimetres", UNITS_MILLIMETRES },
	{ 0 },
};

const char *rule_source_word(enum rule_source source)
{
	return choice_word(sources, source);
}

#define BOUND(type, key)                                                                           \
	{                                                                                          \
		FIELD_TEXT, #key, LANDS(type, bounds.key.text), .most = 20, .help = "limit"        \
	}

static const struct field condition[] = {
	{ FIELD_TEXT, "gauge", LANDS(rule_condition, gauge), .required = true,
		.help = "what is measured: a gauge by name" },
	BOUND(rule_condition, least),
	BOUND(rule_condition, most),
	BOUND(rule_condition, above),
	BOUND(rule_condition, below),
	{ 0 },
};

static const struct group condition_keys = { "rules.when", sizeof(struct rule_condition), condition,
	.keeps_node = true };

static const struct field rule[] = {
	{ FIELD_TEXT, "row", LANDS(rule, row), .required = true, .most = 40,
		.help = "name of the row, once in an edition" },
	{ FIELD_TEXT, "gauge", LANDS(rule, gauge), .help = "what is measured; the row's own name" },
	BOUND(rule, least),
	BOUND(rule, most),
	BOUND(rule, above),
	BOUND(rule, below),
	{ FIELD_TEXT, "asked", LANDS(rule, asked), .help = "the limit in words" },
	{ FIELD_TEXT, "what", LANDS(rule, what), .help = "what is measured, in words" },
	{ FIELD_TEXT, "section", LANDS(rule, section), .required = true,
		.help = "where it stands" },
	{ FIELD_TEXT, "how", LANDS(rule, how), .most = LONGEST_WORDS,
		.help = "how it is measured" },
	{ FIELD_TEXT, "exceptions", LANDS(rule, exceptions), .most = LONGEST_WORDS,
		.help = "exceptions that are left to the reader" },
	{ FIELD_TEXT, "not_checked", LANDS(rule, not_checked), .most = LONGEST_WORDS,
		.help = "why it cannot be judged from a job" },
	{ FIELD_CHOICE, "source", LANDS(rule, source), .required = true, .choices = sources,
		.help = "read, second hand or from memory" },
	{ FIELD_GROUPS, "when", LANDS(rule, conditions), COUNTED(rule, condition_count),
		.group = &condition_keys, .help = "it counts only where these hold" },
	{ 0 },
};

static const struct group rule_keys = { "rules", sizeof(struct rule), rule, .keeps_node = true };

static const struct field renumbering[] = {
	{ FIELD_TEXT, "from", LANDS(renumbering, from), .required = true, .help = "how it began" },
	{ FIELD_TEXT, "to", LANDS(renumbering, to), .required = true, .help = "how it begins" },
	{ 0 },
};

static const struct group renumbering_keys = { "renumbered", sizeof(struct renumbering),
	renumbering, .keeps_node = true };

static const struct field edition[] = {
	{ FIELD_TEXT, "title", LANDS(rule_set, title), .required = true, .help = "its full name" },
	{ FIELD_TEXT, "brief", LANDS(rule_set, brief), .required = true, .most = 30,
		.help = "its name in short" },
	{ FIELD_CHOICE, "units", LANDS(rule_set, units), .choices = units, .required = true,
		.help = "of a bare number" },
	{ FIELD_TEXT, "like", LANDS(rule_set, like), .help = "carries over the rows of this one" },
	{ FIELD_TEXT, "note", LANDS(rule_set, note), .most = 400,
		.help = "what a reader must know" },
	{ FIELD_GROUPS, "renumbered", LANDS(rule_set, renumbered),
		COUNTED(rule_set, renumbered_count), .group = &renumbering_keys,
		.help = "beginnings of sections that changed" },
	{ FIELD_GROUPS, "rules", LANDS(rule_set, rules), COUNTED(rule_set, rule_count),
		.group = &rule_keys, .help = "its rows" },
	{ 0 },
};

static const struct group edition_keys = { "", sizeof(struct rule_set), edition,
	.keeps_node = false };

static struct rule *row_named(struct rule *rules, int n, const char *row)
{
	for (int i = 0; i < n; i++)
		if (strcmp(rules[i].row, row) == 0)
			return &rules[i];
	return NULL;
}

static const char *renumbered(struct arena *a, const struct rule_set *set, const char *section)
{
	for (int i = 0; i < set->renumbered_count; i++) {
		const struct renumbering *r = &set->renumbered[i];
		size_t n = strlen(r->from);
		if (strncmp(section, r->from, n) == 0)
			return arena_printf(a, "%s%s", r->to, section + n);
	}
	return section;
}

/* The rows of `base` under those of `set`, which take the place of rows of the same name. */
static void carry_over(struct arena *a, struct rule_set *set, const struct rule_set *base)
{
	struct rule *all = NEW_N(a, struct rule, base->rule_count + set->rule_count);
	int n = base->rule_count;

	for (int i = 0; i < n; i++) {
		all[i] = base->rules[i];
		all[i].section = renumbered(a, set, all[i].section);
	}
	for (int i = 0; i < set->rule_count; i++) {
		struct rule *same = row_named(all, n, set->rules[i].row);
		if (same)
			*same = set->rules[i];
		else
			all[n++] = set->rules[i];
	}
	set->rules = all;
	set->rule_count = n;
}

/* Each row once, and each with its own edition to point back to. */
static void settle_rows(struct rule_set *set, struct diags *d)
{
	struct rule *rules = (struct rule *)set->rules;

	for (int i = 0; i < set->rule_count; i++) {
		rules[i].written_in = set;
		if (!*rules[i].gauge)
			rules[i].gauge = rules[i].row;
		if (row_named(rules, i, rules[i].row))
			diag_error(d, node_pos(rules[i].src, "row"), NULL,
				"the row %s stands there twice", rules[i].row);
	}
}

const char *edition_path(struct arena *a, const char *dir, const char *name)
{
	return arena_printf(a, "%s/rules/%s.yaml", dir, name);
}

static struct rule_set *read_deep(struct arena *a, const char *dir, const char *name, int depth,
	struct diags *d)
{
	struct rule_set *set = NEW(a, struct rule_set);

	set->name = name;
	d->file = edition_path(a, dir, name);
	if (!shop_file_read(a, d->file, &edition_keys, set, d))
		return NULL;
	settle_rows(set, d);
	if (d->errors || !*set->like)
		return set;
	if (depth == MOST_LIKE) {
		diag_error(d, (struct pos){ 0, 0 }, NULL,
			"%s: one edition is like another, and that like another, too often", name);
		return NULL;
	}
	const struct rule_set *base = read_deep(a, dir, set->like, depth + 1, d);
	if (!base)
		return NULL;
	carry_over(a, set, base);
	return set;
}

struct rule_set *edition_read(struct arena *a, const char *dir, const char *name, struct diags *d)
{
	struct rule_set *set = read_deep(a, dir, name, 0, d);

	return d->errors ? NULL : set;
}
