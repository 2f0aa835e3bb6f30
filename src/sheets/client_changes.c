/*
 * What has changed since the set that a client had before, in the words of what
 * is chosen: "Treads: cherry, was white oak".
 */
#include <string.h>

#include "base/text.h"
#include "sheets/client_facts.h"

static struct text part_at(struct arena *a, const char **from)
{
	struct text part = { .arena = a };
	size_t n = strcspn(*from, ",;");

	text_add(&part, "%.*s", (int)n, *from);
	*from += n;
	*from += strspn(*from, ",; ");
	return part;
}

static int parts_of(const char *words)
{
	int n = 1;

	for (; *words; words++)
		n += *words == ',' || *words == ';';
	return n;
}

/* "was white oak": of words that are a list, only what differs of it. */
static const char *differing(struct arena *a, const char *was, const char *is)
{
	struct text list = { .arena = a };

	if (parts_of(was) != parts_of(is))
		return arena_printf(a, "%s (was: %s)", is, was);
	while (*is) {
		struct text before = part_at(a, &was), now = part_at(a, &is);
		if (strcmp(text_chars(&before), text_chars(&now)) != 0)
			text_join(&list, "; ",
				arena_printf(a, "%s, was %s", text_chars(&now),
					text_chars(&before)));
	}
	return text_chars(&list);
}

/* "" where only the finish is another. */
static const char *change_words(struct arena *a, const struct fact *was, const struct fact *is)
{
	if (!was)
		return arena_printf(a, "%s: %s (new)", is->label, is->words);
	const char *words = differing(a, was->words, is->words);

	return *words ? arena_printf(a, "%s: %s", is->label, words) : "";
}

/* Many pieces get one finish: said once. */
static const char *finish_words(struct arena *a, const struct fact *was, const struct fact *is)
{
	if (!was || strcmp(was->finish, is->finish) == 0 || !*is->finish || !*was->finish)
		return "";
	return arena_printf(a, "Finish: %s, was %s", is->finish, was->finish);
}

static int add_once(struct note *notes, int n, const char *text)
{
	for (int i = 0; i < n; i++)
		if (strcmp(notes[i].text, text) == 0)
			return n;
	if (!*text)
		return n;
	notes[n] = (struct note){ NULL, text };
	return n + 1;
}

static const char *joined(struct arena *a, const char *const *list, int n)
{
	struct text t = { .arena = a };

	for (int i = 0; i < n; i++)
		text_join(&t, "; ", list[i]);
	return text_chars(&t);
}

static const char *agreement_words(struct arena *a, const struct job *was, const struct job *is)
{
	const struct job_agreement *before = &was->agreement, *now = &is->agreement;
	bool same = strcmp(joined(a, before->not_included, before->not_included_count),
			    joined(a, now->not_included, now->not_included_count)) == 0 &&
		strcmp(joined(a, before->notes, before->note_count),
			joined(a, now->notes, now->note_count)) == 0;

	return same ? "" : "What is not included, or what else is agreed, reads otherwise.";
}

/* What the facts do not name may still be drawn otherwise. */
static const char *rest_words(const struct sheet_context *c, int said)
{
	if (said)
		return "";
	return c->changes ? "None of what is chosen; the drawings differ in what clouds mark."
			  : "Nothing of the stair.";
}

static const char *set_words(struct arena *a, const struct sheet_context *c)
{
	const struct job *was = c->was.stair->job;
	const struct drawing *first = c->earlier;
	const char *mark = was->revision_count ? was->revisions[was->revision_count - 1].mark : "";

	return arena_printf(a, "This set replaces set %s%s%s.",
		first && first->set ? first->set : "before it", *mark ? ", revision " : "", mark);
}

int client_changes(struct arena *a, const struct sheet_context *c, struct note *notes, int most)
{
	struct fact was[MOST_FACTS], is[MOST_FACTS];
	int before = client_facts_before(a, c, was), now = client_facts(a, c, is), n = 0;

	if (!before)
		return 0;
	notes[n++] = (struct note){ "What has changed", set_words(a, c) };
	for (int i = 0; i < now && n < most - 3; i++) {
		const struct fact *old = client_fact_before(was, before, &is[i]);
		if (client_fact_differs(old, &is[i]))
			n = add_once(notes, n, change_words(a, old, &is[i]));
		n = add_once(notes, n, finish_words(a, old, &is[i]));
	}
	for (int i = 0; i < before && n < most - 2; i++)
		if (!client_fact_before(is, now, &was[i]))
			notes[n++] = (struct note){ NULL,
				arena_printf(a, "%s: no longer there (was: %s)", was[i].label,
					was[i].words) };
	const char *agreed = agreement_words(a, c->was.stair->job, c->stair->job);
	notes[n] = (struct note){ NULL, *agreed ? agreed : rest_words(c, n - 1) };
	return n + 1;
}
