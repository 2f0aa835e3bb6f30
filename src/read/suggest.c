#include "read/suggest.h"

#include <string.h>

#include "base/text.h"

enum { LONGEST_WORD = 40, SCOPES_NAMED = 3, LONGEST_LIST = 77 };

/* What else the trade calls it.  Typed words are folded first; the first row whose key the group
 * knows is meant. */
static const struct {
	const char *said, *key;
} synonyms[] = {
	{ "going", "run" },
	{ "unit_run", "run" },
	{ "tread_run", "run" },
	{ "tread_depth", "run" },
	{ "unit_rise", "risers" },
	{ "riser_count", "risers" },
	{ "riser_height", "risers" },
	{ "number_of_risers", "risers" },
	{ "rise", "total_rise" },
	{ "floor_to_floor", "total_rise" },
	{ "height", "total_rise" },
	{ "strings", "stringers" },
	{ "string", "stringers" },
	{ "carriage", "stringers" },
	{ "carriages", "middle_count" },
	{ "carriage_count", "middle_count" },
	{ "carriages", "stringers.middle_count" },
	{ "stringer_width", "wall.width" },
	{ "stringer_width", "stringers.wall.width" },
	{ "stringer_thickness", "wall.thickness" },
	{ "stringer_thickness", "stringers.wall.thickness" },
	{ "stringer_kind", "wall.kind" },
	{ "stringer_kind", "stringers.wall.kind" },
	{ "banister", "rail" },
	{ "handrail", "rail" },
	{ "guard", "rail" },
	{ "spindles", "balusters" },
	{ "spindle", "balusters" },
	{ "pickets", "balusters" },
	{ "crosspieces", "rows" },
	{ "cross_pieces", "rows" },
	{ "bottom_rail", "shoe" },
	{ "shoe_rail", "shoe" },
	{ "groove", "plough" },
	{ "plow", "plough" },
	{ "filling", "infill" },
	{ "infill", "balusters" },
	{ "bars", "balusters" },
	{ "caps", "newels" },
	{ "posts", "newels" },
	{ "post", "newels" },
	{ "steps", "treads" },
	{ "going_total", "total_run" },
	{ "well", "opening" },
	{ "stairwell", "opening" },
	{ "flights", "segments" },
	{ "overhang", "side_overhang" },
	{ "species", "material" },
	{ "wood", "material" },
	{ "address", "site" },
	{ "customer", "client" },
	{ "unit", "units" },
	{ "feet", "inches" },
	{ "imperial", "inches" },
	{ "feet_and_inches", "inches" },
	{ "metric", "millimetres" },
	{ "mm", "millimetres" },
	{ "millimeters", "millimetres" },
	{ "closed", "housed" },
	{ "routed", "housed" },
	{ "cut", "sawtooth" },
	{ "notched", "sawtooth" },
};

/* Case, hyphens and spaces are no difference. */
static const char *fold(struct arena *a, const char *word)
{
	char *out = arena_strdup(a, word);

	for (char *p = out; *p; p++) {
		if (*p >= 'A' && *p <= 'Z')
			*p = (char)(*p - 'A' + 'a');
		if (*p == '-' || *p == ' ')
			*p = '_';
	}
	return out;
}

static int least(int a, int b)
{
	return a < b ? a : b;
}

/* Damerau and Levenshtein: letters lost, added, changed, or two swapped. */
static int distance(const char *a, const char *b)
{
	int rows[3][LONGEST_WORD + 1];
	int n = (int)strlen(a), m = (int)strlen(b);

	if (n > LONGEST_WORD || m > LONGEST_WORD)
		return LONGEST_WORD;
	int *before = rows[0], *last = rows[1], *now = rows[2];
	for (int j = 0; j <= m; j++)
		last[j] = j;
	for (int i = 1; i <= n; i++) {
		now[0] = i;
		for (int j = 1; j <= m; j++) {
			int changed = a[i - 1] != b[j - 1];
			now[j] = least(least(last[j], now[j - 1]) + 1, last[j - 1] + changed);
			if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
				now[j] = least(now[j], before[j - 2] + 1);
		}
		int *spare = before;
		before = last;
		last = now;
		now = spare;
	}
	return last[m];
}

/* The nearest word met so far, if any is near enough. */
struct nearest {
	const char *typed, *word;
	int distance;
};

static struct nearest nearest_to(const char *folded)
{
	int reach = (int)strlen(folded) / 3;

	return (struct nearest){ folded, NULL, reach < 1 ? 2 : reach + 1 };
}

static void consider(struct nearest *best, const char *word)
{
	int d = distance(best->typed, word);

	if (d < best->distance) {
		best->distance = d;
		best->word = word;
	}
}

static const char *did_you_mean(struct arena *a, const char *word)
{
	return word ? arena_printf(a, "did you mean \"%s\"?", word) : NULL;
}

/* Does the group know this key, or this way through its groups: wall.width? */
static bool knows(struct arena *a, const struct group *g, const char *path)
{
	size_t n = strcspn(path, ".");
	const struct field *f = field_find(g, arena_strndup(a, path, n));

	if (!f || !path[n])
		return f != NULL;
	return f->group && knows(a, f->group, path + n + 1);
}

static const char *synonym_in(struct arena *a, const struct group *g, const char *folded)
{
	for (size_t i = 0; i < sizeof(synonyms) / sizeof(synonyms[0]); i++)
		if (strcmp(synonyms[i].said, folded) == 0 && knows(a, g, synonyms[i].key))
			return synonyms[i].key;
	return NULL;
}

static const char *nearest_in(const struct group *g, const char *folded)
{
	struct nearest best = nearest_to(folded);

	for (const struct field *f = g->fields; f->key; f++)
		consider(&best, f->key);
	return best.word;
}

struct scopes {
	struct arena *arena;
	const char *names;
	int count;
};

/* Every group that knows the key. */
static void find_scopes(struct scopes *s, const struct group *g, const char *key)
{
	if (field_find(g, key) && s->count++ < SCOPES_NAMED)
		s->names = arena_printf(s->arena, "%s%s%s", s->names, s->count > 1 ? ", " : "",
			*g->path ? g->path : "the top level");
	for (const struct field *f = g->fields; f->key; f++)
		if (f->group)
			find_scopes(s, f->group, key);
}

/* `kind:` under stringers belongs under one of its groups: "wall:, open:"; NULL: under none. */
static const char *groups_with(struct arena *a, const struct group *g, const char *key)
{
	const char *list = NULL;

	for (const struct field *f = g->fields; f->key; f++)
		if (f->group && field_find(f->group, key))
			list = list ? arena_printf(a, "%s or %s:", list, f->key)
				    : arena_printf(a, "%s:", f->key);
	return list;
}

const char *suggest_keys(struct arena *a, const struct group *g)
{
	struct text list = { .arena = a };

	for (const struct field *f = g->fields; f->key; f++)
		text_join(&list, ", ", f->key);
	if (list.length > LONGEST_LIST)
		return "`pitchboard keys` prints those there are";
	return arena_printf(a, "its keys are %s", text_chars(&list));
}

const char *suggest_key(struct arena *a, const struct group *top, const struct group *g,
	const char *typed)
{
	const char *folded = fold(a, typed);
	struct scopes scopes = { a, "", 0 };
	const char *word = synonym_in(a, g, folded);

	if (field_find(g, folded))
		return did_you_mean(a, folded);
	const char *inside = g == top ? NULL : groups_with(a, g, folded);
	if (inside)
		return arena_printf(a, "\"%s\" belongs under %s", folded, inside);
	find_scopes(&scopes, top, folded);
	if (scopes.count && !word)
		return arena_printf(a, "\"%s\" is a key of %s%s", folded, scopes.names,
			scopes.count > SCOPES_NAMED ? " and others" : "");
	if (!word)
		word = nearest_in(g, folded);
	if (word)
		return did_you_mean(a, word);
	if (strchr(typed, ' '))
		return "a comma inside braces ends a text: write one that has commas in quotes";
	return suggest_keys(a, g);
}

const char *suggest_choice(struct arena *a, const struct choice *choices, const char *typed)
{
	const char *folded = fold(a, typed);
	struct nearest best = nearest_to(folded);

	for (const struct choice *c = choices; c->word; c++)
		consider(&best, c->word);
	for (size_t i = 0; i < sizeof(synonyms) / sizeof(synonyms[0]) && !best.word; i++)
		for (const struct choice *c = choices; c->word; c++)
			if (strcmp(synonyms[i].said, folded) == 0 &&
				strcmp(synonyms[i].key, c->word) == 0)
				best.word = c->word;
	if (best.word)
		return did_you_mean(a, best.word);
	return arena_printf(a, "one of %s", choice_list(a, choices));
}
