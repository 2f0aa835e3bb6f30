/*
 * The defaults that were used, as a sheet says them.
 */
#include "base/text.h"
#include "read/job_passes.h"

struct walk {
	struct arena *arena;
	const struct job *job;
	struct assumption **tail;
};

static const char *letter_lengths(const struct walk *w, const double *list, int n)
{
	struct text out = { .arena = w->arena };

	for (int i = 0; i < n; i++)
		text_join(&out, ", ", length_letter(w->arena, job_lettering(w->job), list[i]));
	return text_chars(&out);
}

static const char *letter(const struct walk *w, const struct field *f, const char *group)
{
	const void *at = group + f->at;

	switch (f->kind) {
	case FIELD_TEXT:
	case FIELD_DATE: return *(const char *const *)at;
	case FIELD_LENGTH:
		return length_letter(w->arena, job_lettering(w->job), *(const double *)at);
	case FIELD_NUMBER: return arena_printf(w->arena, "%g", *(const double *)at);
	case FIELD_COUNT: return arena_printf(w->arena, "%d", *(const int *)at);
	case FIELD_CHOICE: return text_spoken(w->arena, choice_word(f->choices, *(const int *)at));
	case FIELD_YES_NO: return *(const bool *)at ? "yes" : "no";
	case FIELD_LENGTHS:
		return letter_lengths(w, *(const double *const *)at,
			*(const int *)(const void *)(group + f->count_at));
	case FIELD_TEXTS:
	case FIELD_GROUP:
	case FIELD_GROUPS: break;
	}
	return "";
}

static bool is_assumed(const struct walk *w, const struct field *f, const char *group,
	const struct node *src)
{
	if (node_has(src, f->key) || (f->matters && !f->matters(w->job)))
		return false;
	return f->like || field_usual(f, group, w->job->about.units);
}

static void walk_group(struct walk *w, const struct group *g, const char *group)
{
	const void *first = group;
	const struct node *src = g->keeps_node ? *(const struct node *const *)first : NULL;

	for (const struct field *f = g->fields; f->key; f++) {
		if (f->kind == FIELD_GROUP)
			walk_group(w, f->group, group + f->at);
		if (!is_assumed(w, f, group, src))
			continue;
		struct assumption *as = NEW(w->arena, struct assumption);
		as->label = f->label ? f->label : f->help;
		as->value = letter(w, f, group);
		as->shown = f->shown;
		*w->tail = as;
		w->tail = &as->next;
	}
}

const struct assumption *job_assumptions(struct arena *a, const struct job_file *f)
{
	struct assumption *first = NULL;
	struct walk w = { a, &f->job, &first };

	walk_group(&w, &keys_file, (const char *)f);
	return first;
}
