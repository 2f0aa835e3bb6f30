/*
 * Findings for a terminal.
 *
 *     state    what                    asked            here     section
 *   NOT MET    headroom                at least 80"     77 1/2"  R311.7.2
 *              under the upper floor, over step 3
 *              mend: the edge of the opening 3 1/4" further ...
 */
#include "pitchboard/rule.h"

#include "base/text.h"

enum { COLUMNS = 5, WIDEST = 50, INDENT = 11 };

static const char *state_shown(enum finding_state state)
{
	return state == FINDING_NOT_MET ? "NOT MET" : state == FINDING_NEAR ? "near" : "met";
}

static void put_padded(struct text *t, const char *words, int width)
{
	text_put(t, words);
	text_put_blanks(t, width - text_columns(words));
}

/* Widths of the columns what, asked, here. */
struct widths {
	int what, asked, here;
};

static int wider(int width, const char *words)
{
	int n = text_columns(words);

	return n > width && n <= WIDEST ? n : width;
}

static struct widths widths_of(const struct finding *list)
{
	struct widths w = { 4, 5, 4 };

	for (; list; list = list->next) {
		if (list->state == FINDING_NOT_CHECKED || list->state == FINDING_NOT_APPLICABLE)
			continue;
		w.what = wider(w.what, list->what);
		w.asked = wider(w.asked, list->asked);
		w.here = wider(w.here, list->provided);
	}
	return w;
}

static void put_line(struct text *t, const char *label, const char *words)
{
	if (*words)
		text_add(t, "%*s%s%s\n", INDENT, "", label, words);
}

static void put_row(struct text *t, struct widths w, const char *const cells[COLUMNS])
{
	put_padded(t, cells[0], INDENT - 2);
	text_put(t, "  ");
	put_padded(t, cells[1], w.what + 2);
	put_padded(t, cells[2], w.asked + 2);
	put_padded(t, cells[3], w.here + 2);
	text_add(t, "%s\n", cells[4]);
}

/* The keys that would do it, as they stand in the job file's words. */
static void put_settings(struct text *t, const struct finding *f)
{
	for (int i = 0; i < f->setting_count; i++)
		put_line(t, i ? "          " : "in the job: ",
			arena_printf(t->arena, "%s: %s", f->settings[i].path,
				f->settings[i].value));
}

static void put_measured(struct text *t, struct widths w, const struct finding *f)
{
	const char *const cells[COLUMNS] = { state_shown(f->state), f->what, f->asked, f->provided,
		f->rule->section };

	put_row(t, w, cells);
	if (f->state == FINDING_MET && !f->rule->amends)
		return;
	put_line(t, "at: ", f->place);
	put_line(t, "measured: ", f->rule->how);
	put_line(t, "mend: ", f->mend);
	put_settings(t, f);
	put_line(t, "but: ", f->rule->exceptions);
	put_line(t, "limit from: ", f->source);
}

static void put_of_state(struct text *t, struct widths w, const struct finding *list,
	enum finding_state state)
{
	for (; list; list = list->next)
		if (list->state == state)
			put_measured(t, w, list);
}

/* What was not judged, with the reason. */
static void put_unjudged(struct text *t, const struct finding *list, enum finding_state state,
	const char *heading)
{
	if (findings_count(list, state) == 0)
		return;
	text_add(t, "\n%s\n", heading);
	for (; list; list = list->next)
		if (list->state == state)
			text_add(t, "  %s (%s%s%s)\n      %s\n", list->what, list->rule->section,
				*list->asked ? "; " : "", list->asked, list->reason);
}

static const struct finding *one_from_memory(const struct finding *list)
{
	for (; list; list = list->next)
		if (!list->rule->amends &&
			(list->rule->source == SOURCE_FROM_MEMORY ||
				list->rule->written_in != list->rules))
			return list;
	return NULL;
}

static void put_summary(struct text *t, const struct finding *list)
{
	text_add(t,
		"\n%d not met, %d near, %d met as entered; %d not checked here, %d that do not "
		"apply.\n",
		findings_count(list, FINDING_NOT_MET), findings_count(list, FINDING_NEAR),
		findings_count(list, FINDING_MET), findings_count(list, FINDING_NOT_CHECKED),
		findings_count(list, FINDING_NOT_APPLICABLE));
	if (one_from_memory(list))
		text_put(t,
			"Some limits were entered from memory: see the rows in templates/rules "
			"before you rely on them.\n");
	text_put(t, "The limits are as entered; the authority having jurisdiction decides.\n");
}

const char *findings_text(struct arena *a, const struct finding *list)
{
	static const char *const heads[COLUMNS] = { "", "what", "asked", "here", "section" };
	struct text t = { .arena = a };
	struct widths w = widths_of(list);

	if (!list)
		return "";
	text_add(&t, "Against %s\n", list->rules->title);
	if (*list->rules->note)
		text_add(&t, "%s\n", list->rules->note);
	text_put_char(&t, '\n');
	put_row(&t, w, heads);
	put_of_state(&t, w, list, FINDING_NOT_MET);
	put_of_state(&t, w, list, FINDING_NEAR);
	put_of_state(&t, w, list, FINDING_MET);
	put_unjudged(&t, list, FINDING_NOT_CHECKED, "Not checked here:");
	put_unjudged(&t, list, FINDING_NOT_APPLICABLE, "Does not apply to this stair:");
	put_summary(&t, list);
	return text_chars(&t);
}
