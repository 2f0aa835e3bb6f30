#include "read/keys_words.h"

#include <string.h>

const char *key_kind(struct arena *a, const struct field *f)
{
	switch (f->kind) {
	case FIELD_TEXT: return "text";
	case FIELD_DATE: return "date";
	case FIELD_LENGTH: return "length";
	case FIELD_NUMBER: return "number";
	case FIELD_COUNT: return "whole number";
	case FIELD_CHOICE: return choice_list(a, f->choices);
	case FIELD_YES_NO: return "yes or no";
	case FIELD_GROUP: return "keys";
	case FIELD_GROUPS: return "list of keys";
	case FIELD_LENGTHS: return "list of lengths";
	case FIELD_TEXTS:
		return f->choices ? arena_printf(a, "list of %s", choice_list(a, f->choices))
				  : "list of texts";
	}
	return "";
}

const char *key_default(struct arena *a, const struct field *f)
{
	if (f->required)
		return "required";
	if (f->like)
		return arena_printf(a, "as %s", f->like);
	if (f->absent)
		return f->absent;
	if (!f->usual)
		return "";
	if (!f->usual_mm || strcmp(f->usual, f->usual_mm) == 0)
		return f->usual;
	return arena_printf(a, "%s or, in millimetres, %s", f->usual, f->usual_mm);
}
