#include "read/key_value.h"

#include <stdlib.h>
#include <string.h>

#include "base/text.h"

static const char *lengths_words(struct arena *a, struct lettering l, const double *mm, int n)
{
	const char *words = "";

	for (int i = 0; i < n; i++)
		words = arena_printf(a, "%s%s%s", words, i ? ", " : "", length_say(a, l, mm[i]));
	return words;
}

static const char *texts_words(struct arena *a, const char *const *texts, int n)
{
	const char *words = "";

	for (int i = 0; i < n; i++)
		words = arena_printf(a, "%s%s%s", words, i ? ", " : "", texts[i]);
	return words;
}

const char *key_value_words(struct arena *a, struct lettering l, const struct field *f,
	const char *from)
{
	const void *at = from + f->at;
	const int *count = (const int *)(from + f->count_at);

	switch (f->kind) {
	case FIELD_TEXT:
	case FIELD_DATE: return *(const char *const *)at ? *(const char *const *)at : "";
	case FIELD_LENGTH: return length_say(a, l, *(const double *)at);
	case FIELD_NUMBER: return arena_printf(a, "%g", *(const double *)at);
	case FIELD_COUNT: return arena_printf(a, "%d", *(const int *)at);
	case FIELD_CHOICE: return choice_word(f->choices, *(const int *)at);
	case FIELD_YES_NO: return *(const bool *)at ? "yes" : "no";
	case FIELD_LENGTHS: return lengths_words(a, l, *(const double *const *)at, *count);
	case FIELD_TEXTS: return texts_words(a, *(const char *const *const *)at, *count);
	case FIELD_GROUP:
	case FIELD_GROUPS: break;
	}
	return "";
}

/* ---- by path ---- */

static const struct field *find_part(const struct group *g, const char *key, size_t length)
{
	for (const struct field *f = g->fields; f->key; f++)
		if (strlen(f->key) == length && memcmp(f->key, key, length) == 0)
			return f;
	return NULL;
}

/* One step along a path: the field, and the struct that its value is in. */
struct step {
	const struct field *field;
	const char *from;
};

/* Into the group of a step; of a list of them into the entry of that number, counted from 1.  No
 * group: there is no such entry. */
static const struct group *step_into(struct step *s, const char *index)
{
	const struct field *f = s->field;
	int entry = *index == '[' ? atoi(index + 1) : 0;

	if (f->kind == FIELD_GROUP && !entry) {
		s->from += f->at;
		return f->group;
	}
	if (f->kind != FIELD_GROUPS || entry < 1 ||
		entry > *(const int *)(const void *)(s->from + f->count_at))
		return NULL;
	s->from = *(const char *const *)(const void *)(s->from + f->at) +
		(size_t)(entry - 1) * f->group->size;
	return f->group;
}

const char *job_value_words(struct arena *a, const struct job *job, const char *path)
{
	const struct group *g = &keys_file;
	/* read as the first member of a struct job_file */
	struct step s = { NULL, (const char *)job };
	const char *words = "";

	while (g) {
		size_t length = strcspn(path, ".[");
		s.field = find_part(g, path, length);
		if (!s.field)
			return "";
		path += length;
		if (!*path)
			words = key_value_words(a, job_lettering(job), s.field, s.from);
		g = *path ? step_into(&s, path) : NULL;
		path += strcspn(path, ".");
		path += *path == '.';
	}
	return s.field->kind == FIELD_CHOICE ? text_spoken(a, words) : words;
}
