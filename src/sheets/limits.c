#include "sheets/limits.h"

#include <string.h>

const struct finding *limit_for(const struct finding *list, const char *gauge)
{
	for (; list; list = list->next)
		if (strcmp(list->rule->gauge, gauge) == 0 && list->state != FINDING_NOT_APPLICABLE)
			return list;
	return NULL;
}

const char *result_words(enum finding_state state)
{
	return state == FINDING_NOT_MET ? "NOT MET" : finding_word(state);
}

const char *limit_words(struct arena *a, const struct finding *list, const char *gauge)
{
	const struct finding *f = limit_for(list, gauge);

	if (!f)
		return "";
	return arena_printf(a, "asked %s (%s): %s", f->asked, f->rule->section,
		result_words(f->state));
}

const char *opening_guard_words(struct arena *a, const struct sheet_context *c)
{
	const char *bare = opening_bare_words(a, c->stair, c->parts);

	if (!*bare)
		return "";
	return arena_printf(a,
		"Opening in the upper floor: its guard is NOT KNOWN. The job has neither guard nor "
		"wall at: %s.",
		bare);
}
