/*
 * What the job itself asks for, in no code's name.
 */
#include <string.h>

#include "pitchboard/rule.h"

/* What is less is not said to be as much. */
static const char *less_words(struct arena *a, struct lettering l, double is, double wanted)
{
	const char *words = length_say(a, l, is);

	return strcmp(words, length_say(a, l, wanted)) == 0 ? length_say_most(a, l, is) : words;
}

static void tell_headroom(struct arena *a, const struct stair *s, struct diags *d)
{
	struct lettering l = job_lettering(s->job);
	const struct job_opening *o = &s->job->opening;

	if (s->headroom.state != HEADROOM_SHORT)
		return;
	diag_warning(d, node_pos(o->src, "headroom"),
		"a longer opening or fewer steps under the floor give more",
		"headroom is %s, less than the %s wanted",
		less_words(a, l, s->headroom.least, o->headroom), length_say(a, l, o->headroom));
}

static void tell_plank(struct arena *a, const struct stair *s, const struct part *p,
	struct diags *d)
{
	const struct job_stringers *stringers = &s->job->stringers;
	struct lettering l = job_lettering(s->job);

	if (!p->stringer || p->stringer->plank_length > 0)
		return;
	double length = p->stringer->cut_length + 2 * stringers->end_trim;
	diag_warning(d, node_pos(stringers->src, "stock_lengths"),
		arena_printf(a, "order it longer, and name %s among stringers.stock_lengths",
			length_say_least(a, l, length)),
		"stringer %s is %s long with its trim, longer than any plank on offer", p->mark,
		length_say(a, l, length));
}

void wishes_check(struct arena *a, const struct stair *s, const struct part *parts, struct diags *d)
{
	if (!s || !parts)
		return;
	tell_headroom(a, s, d);
	for (const struct part *p = parts; p; p = p->next)
		tell_plank(a, s, p, d);
}
