#include "sheets/splice_closeup.h"

#include <string.h>

#include "draw/bounds.h"
#include "sheets/fixing_words.h"
#include "sheets/words.h"

#define BESIDE 100.0 /* of the joint, along the piece */
#define ABOVE 25.0

/* Two lengths, in the axes of the first one. */
struct spliced {
	const struct part *first, *next;
	struct frame at; /* of the next one */
};

static struct part *standing_at(struct arena *a, const struct part *p, struct frame at)
{
	struct part *copy = NEW(a, struct part);
	struct frame *place = NEW(a, struct frame);

	*copy = *p;
	*place = at;
	copy->places = place;
	copy->count = 1;
	copy->next = NULL;
	return copy;
}

/* Lengths of one name follow each other in several places: the nearest one. */
static struct spliced spliced_of(const struct part *parts, const struct part *first)
{
	struct spliced s = { .first = first };
	double least = INFINITY;

	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; p->kind == first->kind && i < p->count; i++) {
			struct frame at = frame_within(first->places[0], p->places[i]);
			double off =
				vec3_length(vec3_sub(at.origin, vec3(first->size.length, 0, 0)));
			if (p->length_of.number != first->length_of.number + 1 || off >= least ||
				strcmp(p->length_of.whole, first->length_of.whole) != 0)
				continue;
			least = off;
			s.next = p;
			s.at = at;
		}
	return s;
}

static bool tells_all(const struct part *p, const struct bore *b)
{
	(void)p;
	(void)b;
	return true;
}

/* Along the piece from where the two begin to overlap; the long points of a scarf. */
static void size_scarf(struct closeup *t, const struct spliced *s)
{
	struct box b = t->window;

	closeup_size(t,
		(struct closeup_size){ DIM_BELOW, s->at.origin.x, s->first->size.length, b.y0 });
	closeup_size(t, (struct closeup_size){ DIM_LEFT, 0, s->first->size.thickness, b.x0 });
}

/* Heights of what runs across the joint, and from the joint to the access hole. */
static void size_bolt(struct closeup *t, const struct spliced *s)
{
	double joint = s->first->size.length, last = 0;
	struct box w = t->window;

	for (const struct bore *b = s->first->bores; b; b = b->next) {
		bool is_near = b->at.origin.x > w.x0, is_along = fabs(b->at.w.x) > 0.5;
		if (!is_near || t->size_count >= MOST_SIZES - 1)
			continue;
		if (b->fixing == FIXING_PLUG)
			closeup_size(t,
				(struct closeup_size){ DIM_BELOW, b->at.origin.x, joint, w.y0 });
		else if (is_along && !near_enough(b->at.origin.z, last))
			closeup_size(t, (struct closeup_size){ DIM_LEFT, 0, b->at.origin.z, w.x0 });
		last = is_along ? b->at.origin.z : last;
	}
	closeup_size(t, (struct closeup_size){ DIM_RIGHT, 0, s->first->size.thickness, w.x1 });
}

static const char *lengths_words(struct arena *a, const struct stair *s, const struct spliced *p)
{
	return arena_printf(a, "%s is %s long and %s %s, over all.", p->first->mark,
		inches_words(a, s, p->first->size.length), p->next->mark,
		inches_words(a, s, p->next->size.length));
}

static struct closeup closeup_of(struct arena *a, const struct sheet_context *c,
	const struct spliced *s)
{
	struct part *first = standing_at(a, s->first, frame_house());
	struct sheet_context own = *c;
	double joint = s->first->size.length, high = s->first->size.thickness;
	bool is_scarf = s->first->splice == SPLICE_SCARF;

	first->next = standing_at(a, s->next, s->at);
	own.parts = first;
	const struct view_spec spec = { .from = VIEW_FROM_RIGHT,
		.window = { joint - BESIDE, -ABOVE, joint + BESIDE, high + ABOVE } };
	struct closeup t = { .context = c,
		.title = arena_printf(a, "%s of %s and %s", is_scarf ? "Scarf" : "Joint",
			s->first->mark, s->next->mark),
		.view = view_make(a, own.parts, spec),
		.window = spec.window };
	struct space space = space_round(vec3(joint, 0, high / 2), BESIDE);
	const struct told told = { own.parts, space, tells_all };
	if (is_scarf) {
		size_scarf(&t, s);
		closeup_say(&t,
			arena_printf(a,
				"Seen on its edge: %s. Cut at 45 degrees through the thickness, "
				"glued over solid wood.",
				s->first->length_of.whole));
		closeup_say(&t, lengths_words(a, c->stair, s));
		return t;
	}
	size_bolt(&t, s);
	t.holes = closeup_holes_find(a, own.parts, VIEW_FROM_RIGHT, told_shows_hole, &told);
	closeup_say(&t,
		arena_printf(a, "Seen from the side: %s. Cut square. Held by %s",
			s->first->length_of.whole, fixings_in(a, &own, space, tells_all)));
	closeup_say(&t, lengths_words(a, c->stair, s));
	return t;
}

int splice_closeups(struct arena *a, const struct sheet_context *c, struct closeup *list)
{
	const struct part_kind *last = NULL;
	int n = 0;

	for (const struct part *p = c->parts; p && n < MOST_SPLICES; p = p->next) {
		if (!part_goes_on(p) || p->kind == last)
			continue;
		struct spliced s = spliced_of(c->parts, p);
		if (s.next)
			list[n++] = closeup_of(a, c, &s);
		last = p->kind;
	}
	return n;
}
