#include "pitchboard/change.h"

#include <string.h>

#include "compare/made_otherwise.h"
#include "parts/alike.h"

/* Changes as they are found. */
struct finding_out {
	struct arena *arena;
	struct lettering lettering;
	struct change *first, **tail;
};

static void tell(struct finding_out *f, const struct part *p, const char *text)
{
	struct change *c = NEW(f->arena, struct change);

	*c = (struct change){ NULL, text, p };
	*f->tail = c;
	f->tail = &c->next;
}

/* ---- the job ---- */

/* Who drew it and when, and what was measured, is no change of the stair. */
static bool is_of_the_stair(const struct key_change *k)
{
	return strncmp(k->path, "job.", 4) != 0 && strncmp(k->path, "revisions", 9) != 0 &&
		strncmp(k->path, "measured.", 9) != 0 && strncmp(k->path, "sheets.", 7) != 0;
}

static void compare_jobs(struct finding_out *f, const struct job *was, const struct job *is)
{
	for (const struct key_change *k = job_compare(f->arena, was, is); k; k = k->next)
		if (is_of_the_stair(k))
			tell(f, NULL,
				arena_printf(f->arena, "%s: was %s, now %s", k->words,
					*k->was ? k->was : "none", *k->is ? k->is : "none"));
}

/* ---- the stair ---- */

static void compare_count(struct finding_out *f, const char *name, int was, int is)
{
	if (was != is)
		tell(f, NULL, arena_printf(f->arena, "%s: was %d, now %d", name, was, is));
}

static void compare_length(struct finding_out *f, const char *name, double was, double is)
{
	if (!near_enough(was, is))
		tell(f, NULL,
			arena_printf(f->arena, "%s: was %s, now %s", name,
				length_say(f->arena, f->lettering, was),
				length_say(f->arena, f->lettering, is)));
}

static void compare_stairs(struct finding_out *f, const struct stair *was, const struct stair *is)
{
	const struct flight *before = &was->flights[0], *now = &is->flights[0];

	compare_count(f, "risers", was->risers, is->risers);
	compare_length(f, "unit rise, all risers", was->unit_rise, is->unit_rise);
	compare_length(f, "unit run, all treads", before->unit_run, now->unit_run);
	compare_length(f, "total rise", was->total_rise, is->total_rise);
	compare_length(f, "total run", before->total_run, now->total_run);
	if (was->headroom.state != HEADROOM_NOT_CHECKED &&
		is->headroom.state != HEADROOM_NOT_CHECKED)
		compare_length(f, "least headroom", was->headroom.least, is->headroom.least);
}

/* ---- the parts ---- */

/* Of several that are alike, rails at other levels, the one of the same mark. */
static const struct part *same_as(const struct part *list, const struct part *p)
{
	const struct part *same = NULL;

	for (; list; list = list->next) {
		if (part_is_existing(list) != part_is_existing(p) || !parts_are_alike(list, p))
			continue;
		if (strcmp(list->mark, p->mark) == 0)
			return list;
		if (!same)
			same = list;
	}
	return same;
}

/* What it most likely was: of the same mark and name, else of the same name; but no piece that is
 * still among `others`. */
static const struct part *forerunner(const struct part *list, const struct part *others,
	const struct part *p)
{
	const struct part *named = NULL;

	for (; list; list = list->next) {
		if (strcmp(list->name, p->name) != 0 || same_as(others, list))
			continue;
		if (strcmp(list->mark, p->mark) == 0)
			return list;
		if (!named)
			named = list;
	}
	return named;
}

static const char *part_label(struct arena *a, const struct part *p)
{
	return arena_printf(a, "%s %s", p->mark, p->name);
}

static void compare_made(struct finding_out *f, const struct part *was, const struct part *p)
{
	tell(f, p,
		arena_printf(f->arena, "%s: made otherwise%s", part_label(f->arena, p),
			made_otherwise_words(f->arena, f->lettering, was, p)));
}

/* The same piece: perhaps under another mark, or another number of it. */
static void compare_same(struct finding_out *f, const struct part *was, const struct part *p)
{
	if (was->count != p->count)
		tell(f, p,
			arena_printf(f->arena, "%s: make %d, was %d", part_label(f->arena, p),
				p->count, was->count));
	else if (strcmp(was->mark, p->mark) != 0)
		tell(f, NULL,
			arena_printf(f->arena, "%s: marked %s before", part_label(f->arena, p),
				was->mark));
}

static void compare_part(struct finding_out *f, const struct part *before, const struct part *now,
	const struct part *p)
{
	const struct part *same = same_as(before, p), *was = forerunner(before, now, p);

	if (same)
		compare_same(f, same, p);
	else if (was)
		compare_made(f, was, p);
	else
		tell(f, p, arena_printf(f->arena, "%s: new", part_label(f->arena, p)));
}

static void compare_parts(struct finding_out *f, const struct part *before, const struct part *now)
{
	for (const struct part *p = now; p; p = p->next)
		if (!part_is_existing(p))
			compare_part(f, before, now, p);
	for (const struct part *p = before; p; p = p->next)
		if (!part_is_existing(p) && !same_as(now, p) && !forerunner(now, before, p))
			tell(f, NULL,
				arena_printf(f->arena, "%s: no longer made",
					part_label(f->arena, p)));
}

const struct change *changes_find(struct arena *a, struct earlier was, const struct stair *stair,
	const struct part *parts)
{
	if (!was.stair || !was.parts || !stair || !parts)
		return NULL;
	struct finding_out f = { .arena = a, .lettering = job_lettering(stair->job) };
	f.tail = &f.first;
	compare_jobs(&f, was.stair->job, stair->job);
	compare_stairs(&f, was.stair, stair);
	compare_parts(&f, was.parts, parts);
	return f.first;
}

bool part_has_changed(const struct change *changes, const struct part *p)
{
	for (; changes; changes = changes->next)
		if (changes->part == p)
			return true;
	return false;
}
