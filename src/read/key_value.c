#include "read/key_value.h"

#include <string.h>

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

static const char *plain_words(struct arena *a, const char *word)
{
	char *plain = arena_printf(a, "%s", word);

	for (char *p = plain; *p; p++)
		if (*p == '_')
			*p = ' ';
	return plain;
}

const char *job_value_words(struct arena *a, const struct job *job, const char *path)
{
	const struct group *g = &keys_file;
	const char *from = (const char *)job; /* read as the first member of a struct job_file */

	for (const char *key = path; g;) {
		size_t length = strcspn(key, ".");
		const struct field *f = find_part(g, key, length);
		if (!f)
			break;
		if (!key[length])
			return f->kind == FIELD_CHOICE
				? plain_words(a, key_value_words(a, job_lettering(job), f, from))
				: key_value_words(a, job_lettering(job), f, from);
		g = f->kind == FIELD_GROUP ? f->group : NULL;
		from += f->at;
		key += length + 1;
	}
	return "";
}
