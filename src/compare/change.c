#include "pitchboard/change.h"

#include <string.h>

#include "parts/piece.h"

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
				arena_printf(f->arena, "%s: was %s, now %s", k->path,
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
	if (fabs(was - is) > NEAR_ENOUGH)
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

static const struct part *same_as(const struct part *list, const struct part *p)
{
	for (; list; list = list->next)
		if (part_is_existing(list) == part_is_existing(p) && parts_are_alike(list, p))
			return list;
	return NULL;
}

/* What it most likely was: of the same mark and name, else of the same name. */
static const struct part *forerunner(const struct part *list, const struct part *p)
{
	const struct part *named = NULL;

	for (; list; list = list->next) {
		if (strcmp(list->name, p->name) != 0)
			continue;
		if (strcmp(list->mark, p->mark) == 0)
			return list;
		if (!named)
			named = list;
	}
	return named;
}

/* Both lengths, finer than the job letters them where they would read alike. */
static const char *was_now(struct finding_out *f, double was, double is)
{
	struct lettering how = f->lettering;
	const char *before = length_say(f->arena, how, was), *now = length_say(f->arena, how, is);

	if (strcmp(before, now) == 0) {
		how.fraction = how.units == UNITS_INCHES ? 64 : 10;
		before = length_say(f->arena, how, was);
		now = length_say(f->arena, how, is);
	}
	if (strcmp(before, now) == 0)
		return arena_printf(f->arena, "a hair %s than %s", is > was ? "more" : "less",
			before);
	return arena_printf(f->arena, "was %s, now %s", before, now);
}

static const char *size_words(struct finding_out *f, const char *name, double was, double is)
{
	if (fabs(was - is) <= NEAR_ENOUGH)
		return "";
	return arena_printf(f->arena, "; %s %s", name, was_now(f, was, is));
}

/* ---- what is cut and drilled ---- */

static int bore_count(const struct part *p)
{
	int n = 0;

	for (const struct bore *b = p->bores; b; b = b->next)
		n++;
	return n;
}

/* The first hole that sits otherwise, with where it is along the piece. */
static const char *bore_words(struct finding_out *f, const struct part *was, const struct part *is)
{
	const struct bore *a = was->bores, *b = is->bores;
	int before = bore_count(was), now = bore_count(is);

	if (before != now)
		return arena_printf(f->arena, "; holes were %d, now %d", before, now);
	for (; a && b; a = a->next, b = b->next) {
		struct vec3 p = a->at.origin, q = b->at.origin;
		const char *name = b->text && *b->text ? b->text : "hole";
		if (fabs(p.x - q.x) > NEAR_ENOUGH)
			return arena_printf(f->arena, "; %s along it %s", name,
				was_now(f, p.x, q.x));
		if (fabs(p.y - q.y) > NEAR_ENOUGH)
			return arena_printf(f->arena, "; %s across it %s", name,
				was_now(f, p.y, q.y));
		if (fabs(a->size.depth - b->size.depth) > NEAR_ENOUGH)
			return arena_printf(f->arena, "; depth of %s %s", name,
				was_now(f, a->size.depth, b->size.depth));
	}
	return "";
}

/* The first corner of its face that is cut elsewhere. */
static const char *corner_words(struct finding_out *f, const struct part *was,
	const struct part *is)
{
	if (was->outline.n != is->outline.n)
		return arena_printf(f->arena, "; corners of its face were %d, now %d",
			was->outline.n, is->outline.n);
	for (int i = 0; i < is->outline.n; i++) {
		struct vec p = was->outline.corners[i].at, q = is->outline.corners[i].at;
		if (fabs(p.x - q.x) > NEAR_ENOUGH)
			return arena_printf(f->arena, "; a corner along it %s",
				was_now(f, p.x, q.x));
		if (fabs(p.y - q.y) > NEAR_ENOUGH)
			return arena_printf(f->arena, "; a corner across it %s",
				was_now(f, p.y, q.y));
	}
	return "";
}

/* What no size and no corner shows. */
static const char *make_words(struct finding_out *f, const struct part *was, const struct part *is)
{
	if (was->makeup.boards != is->makeup.boards || was->makeup.plies != is->makeup.plies)
		return "; glued up otherwise";
	if (was->grain != is->grain)
		return "; its grain runs otherwise";
	if (is->note && (!was->note || strcmp(was->note, is->note) != 0))
		return arena_printf(f->arena, "; noted now: %s", is->note);
	return "; its ends, edges or joints are made otherwise";
}

/* What of a piece of the same size differs. */
static const char *shape_words(struct finding_out *f, const struct part *was, const struct part *is)
{
	const char *words =
		arena_printf(f->arena, "%s%s", corner_words(f, was, is), bore_words(f, was, is));

	return *words ? words : make_words(f, was, is);
}

static const char *part_label(struct arena *a, const struct part *p)
{
	return arena_printf(a, "%s %s", p->mark, p->name);
}

static void compare_sizes(struct finding_out *f, const struct part *was, const struct part *p)
{
	struct part_size a = was->size, b = p->size;
	const char *sizes = arena_printf(f->arena, "%s%s%s%s",
		size_words(f, "thickness", a.thickness, b.thickness),
		size_words(f, "width", a.width, b.width),
		size_words(f, "length", a.length, b.length),
		size_words(f, "length bent round another piece", was->bent, p->bent));

	if (strcmp(was->material, p->material) != 0)
		sizes = arena_printf(f->arena, "%s; material was %s, now %s", sizes, was->material,
			p->material);
	tell(f, p,
		arena_printf(f->arena, "%s: made otherwise%s", part_label(f->arena, p),
			*sizes ? sizes : shape_words(f, was, p)));
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

static void compare_part(struct finding_out *f, const struct part *before, const struct part *p)
{
	const struct part *same = same_as(before, p), *was = forerunner(before, p);

	if (same)
		compare_same(f, same, p);
	else if (was)
		compare_sizes(f, was, p);
	else
		tell(f, p, arena_printf(f->arena, "%s: new", part_label(f->arena, p)));
}

static void compare_parts(struct finding_out *f, const struct part *before, const struct part *now)
{
	for (const struct part *p = now; p; p = p->next)
		if (!part_is_existing(p))
			compare_part(f, before, p);
	for (const struct part *p = before; p; p = p->next)
		if (!part_is_existing(p) && !forerunner(now, p))
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
