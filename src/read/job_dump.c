/*
 * A job as text, one key a line, from the tables that read it.
 */
#include "base/text.h"
#include "read/keys_table.h"

static void dump_group(struct text *t, const struct group *g, const char *path, const char *from);

static void dump_groups(struct text *t, const struct field *f, const char *path, const char *from)
{
	const char *entries = *(const char *const *)(from + f->at);
	int count = *(const int *)(from + f->count_at);

	for (int i = 0; i < count; i++)
		dump_group(t, f->group, arena_printf(t->arena, "%s%s[%d].", path, f->key, i + 1),
			entries + (size_t)i * f->group->size);
}

static void dump_lengths(struct text *t, const struct field *f, const char *from)
{
	const double *lengths = *(const double *const *)(from + f->at);
	int count = *(const int *)(from + f->count_at);

	for (int i = 0; i < count; i++)
		text_add(t, "%s%.3f", i ? ", " : "", lengths[i]);
}

static void dump_texts(struct text *t, const struct field *f, const char *from)
{
	const char *const *texts = *(const char *const *const *)(from + f->at);
	int count = *(const int *)(from + f->count_at);

	for (int i = 0; i < count; i++)
		text_add(t, "%s%s", i ? ", " : "", texts[i]);
}

static void dump_value(struct text *t, const struct field *f, const char *from)
{
	const void *at = from + f->at;

	switch (f->kind) {
	case FIELD_TEXT:
	case FIELD_DATE: text_add(t, "%s", *(const char *const *)at); return;
	case FIELD_LENGTH: text_add(t, "%.3f", *(const double *)at); return;
	case FIELD_NUMBER: text_add(t, "%g", *(const double *)at); return;
	case FIELD_COUNT: text_add(t, "%d", *(const int *)at); return;
	case FIELD_CHOICE: text_add(t, "%s", choice_word(f->choices, *(const int *)at)); return;
	case FIELD_YES_NO: text_add(t, "%s", *(const bool *)at ? "yes" : "no"); return;
	case FIELD_LENGTHS: dump_lengths(t, f, from); return;
	case FIELD_TEXTS: dump_texts(t, f, from); return;
	case FIELD_GROUP:
	case FIELD_GROUPS: return;
	}
}

static void dump_group(struct text *t, const struct group *g, const char *path, const char *from)
{
	for (const struct field *f = g->fields; f->key; f++) {
		if (f->kind == FIELD_GROUP) {
			dump_group(t, f->group, arena_printf(t->arena, "%s%s.", path, f->key),
				from + f->at);
			continue;
		}
		if (f->kind == FIELD_GROUPS) {
			dump_groups(t, f, path, from);
			continue;
		}
		text_add(t, "%s%s: ", path, f->key);
		dump_value(t, f, from);
		text_add(t, "\n");
	}
}

const char *job_dump(struct arena *a, const struct job *job)
{
	struct text t = { .arena = a };

	/* job_read() made it as the first member of a struct job_file, which the table is for */
	dump_group(&t, &keys_file, "", (const char *)job);
	return text_chars(&t);
}
