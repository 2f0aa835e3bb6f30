/*
 * Findings for other programs.
 */
#include "pitchboard/rule.h"

#include "base/text.h"

static void put_json(struct text *t, const char *words)
{
	text_put_char(t, '"');
	for (; *words; words++) {
		unsigned char c = (unsigned char)*words;
		if (c == '"' || c == '\\')
			text_put_char(t, '\\');
		if (c < ' ')
			text_add(t, "\\u%04x", c);
		else
			text_put_char(t, *words);
	}
	text_put_char(t, '"');
}

static void put_text(struct text *t, const char *key, const char *words)
{
	text_add(t, ", \"%s\": ", key);
	put_json(t, words);
}

/* Keys of the job that would mend it. */
static void put_settings(struct text *t, const struct finding *f)
{
	text_put(t, ", \"set\": {");
	for (int i = 0; i < f->setting_count; i++) {
		text_put(t, i ? ", " : "");
		put_json(t, f->settings[i].path);
		text_put(t, ": ");
		put_json(t, f->settings[i].value);
	}
	text_put(t, "}");
}

static void put_finding(struct text *t, const struct finding *f)
{
	text_put(t, "    {\"row\": ");
	put_json(t, f->rule->row);
	put_text(t, "state", finding_word(f->state));
	put_text(t, "what", f->what);
	put_text(t, "asked", f->asked);
	put_text(t, "provided", f->provided);
	if (*f->provided)
		text_add(t, ", \"value\": %.4f, \"limit\": %.4f", text_tidy(f->value),
			text_tidy(f->limit));
	put_text(t, "place", f->place);
	put_text(t, "section", f->rule->section);
	put_text(t, "measured", f->rule->how);
	put_text(t, "reason", f->reason);
	put_text(t, "mend", f->mend);
	put_settings(t, f);
	put_text(t, "exceptions", f->rule->exceptions);
	put_text(t, "source", f->source);
	text_add(t, ", \"amended\": %s, \"line\": %d}", f->rule->amends ? "true" : "false",
		f->at.line);
}

/* Values and limits are millimetres, radians or counts, whatever the gauge of the row measures. */
const char *findings_json(struct arena *a, const struct finding *list, const char *job)
{
	struct text t = { .arena = a };

	text_put(&t, "{\n  \"job\": ");
	put_json(&t, job);
	if (list) {
		put_text(&t, "edition", list->rules->name);
		put_text(&t, "title", list->rules->title);
	}
	for (int i = 0; i < FINDING_STATES; i++)
		text_add(&t, ", \"%s\": %d", finding_word((enum finding_state)i),
			findings_count(list, (enum finding_state)i));
	text_put(&t, ",\n  \"findings\": [\n");
	for (const struct finding *f = list; f; f = f->next) {
		put_finding(&t, f);
		text_put(&t, f->next ? ",\n" : "\n");
	}
	text_put(&t, "  ]\n}\n");
	return text_chars(&t);
}
