#include "sheets/fixing_words.h"

#include <string.h>

#include "base/text.h"

static bool is_in(struct space s, struct vec3 p)
{
	return p.x > s.low.x && p.x < s.high.x && p.y > s.low.y && p.y < s.high.y &&
		p.z > s.low.z && p.z < s.high.z;
}

struct space space_round(struct vec3 middle, double by)
{
	return (struct space){ vec3_sub(middle, vec3(by, by, by)),
		vec3_add(middle, vec3(by, by, by)) };
}

static bool same_fixing(const struct bore *a, const struct bore *b)
{
	return a->fixing == b->fixing && strcmp(a->text, b->text) == 0 &&
		near_enough(a->fixing_length, b->fixing_length) &&
		near_enough(a->fixing_width, b->fixing_width);
}

static int count_bores(const struct part *p, struct space s, const struct bore *like)
{
	int n = 0;

	for (int i = 0; i < p->count; i++)
		for (const struct bore *b = p->bores; b; b = b->next)
			n += b->fixing != FIXING_NONE && !b->is_mate && same_fixing(b, like) &&
				is_in(s, frame_place(p->places[i], b->at.origin));
	return n;
}

/* Did a bore like it come before, in this part or an earlier one? */
static bool is_counted(const struct part *parts, const struct bore *b)
{
	for (; parts; parts = parts->next)
		for (const struct bore *c = parts->bores; c; c = c->next) {
			if (c == b)
				return false;
			if (c->fixing != FIXING_NONE && !c->is_mate && same_fixing(b, c))
				return true;
		}
	return false;
}

bool told_shows_hole(const struct part *p, const struct bore *b, struct vec3 mouth,
	const void *with)
{
	const struct told *t = with;

	if (!is_in(t->space, mouth))
		return false;
	if (b->fixing == FIXING_NONE || !b->is_mate)
		return t->tells(p, b);
	for (const struct part *q = t->parts; q; q = q->next)
		if (t->tells(q, b) && count_bores(q, t->space, b) > 0)
			return true;
	return false;
}

static const char *bore_words(struct arena *a, const struct stair *s, const struct bore *b, int n)
{
	const char *size = "";

	if (b->fixing_length > 0 && b->fixing_width > 0)
		size = arena_printf(a, " of %s", fixing_size(a, job_lettering(s->job), b));
	return arena_printf(a, "%s: %d%s", b->text, n, size);
}

/* A plug is told of with its screw, and counted with the hardware. */
static bool is_told(const struct bore *b)
{
	return b->fixing != FIXING_NONE && b->fixing != FIXING_PLUG && !b->is_mate;
}

const char *fixings_in(struct arena *a, const struct sheet_context *c, struct space space,
	tells_fn *tells)
{
	struct text words = { .arena = a };

	for (const struct part *p = c->parts; p; p = p->next)
		for (const struct bore *b = p->bores; b; b = b->next) {
			if (!is_told(b) || is_counted(c->parts, b))
				continue;
			int n = 0;
			for (const struct part *q = c->parts; q; q = q->next)
				n += tells(q, b) ? count_bores(q, space, b) : 0;
			if (n)
				text_join(&words, "; ", bore_words(a, c->stair, b, n));
		}
	return words.length ? arena_printf(a, "%s.", text_chars(&words)) : "";
}
