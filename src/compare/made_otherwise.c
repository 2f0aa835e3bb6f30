#include "compare/made_otherwise.h"

#include <math.h>
#include <string.h>

#include "base/text.h"
#include "parts/alike.h"

/* The two pieces, and what has been said of them so far. */
struct pair {
	struct lettering how;
	const struct part *was, *is;
	struct text words;
};

/* Lengths in words, finer than the job letters them where they would read alike. */
static const char *was_now(const struct pair *p, double was, double is)
{
	struct arena *a = p->words.arena;
	struct lettering how = p->how;
	const char *before = length_say(a, how, was), *now = length_say(a, how, is);

	if (strcmp(before, now) == 0) {
		how.fraction = how.units == UNITS_INCHES ? 64 : 10;
		before = length_say(a, how, was);
		now = length_say(a, how, is);
	}
	if (strcmp(before, now) == 0)
		return arena_printf(a, "a hair %s than %s", is > was ? "more" : "less", before);
	return arena_printf(a, "was %s, now %s", before, now);
}

/* Was there anything to say? */
static bool say_length(struct pair *p, const char *name, double was, double is)
{
	if (near_enough(was, is))
		return false;
	text_add(&p->words, "; %s %s", name, was_now(p, was, is));
	return true;
}

static void say_count(struct pair *p, const char *name, int was, int is)
{
	text_add(&p->words, "; %s were %d, now %d", name, was, is);
}

static void say_if_other(struct pair *p, enum aspect aspect, const char *words)
{
	if (!parts_are_alike_in(aspect, p->was, p->is))
		text_add(&p->words, "; %s", words);
}

static void say_sizes(struct pair *p)
{
	struct part_size was = p->was->size, is = p->is->size;

	say_length(p, "thickness", was.thickness, is.thickness);
	say_length(p, "width", was.width, is.width);
	say_length(p, "length", was.length, is.length);
	say_length(p, "length bent round another piece", p->was->bent, p->is->bent);
}

/* The first corner of its face that is cut elsewhere. */
static void say_corners(struct pair *p)
{
	struct outline was = p->was->outline, is = p->is->outline;

	if (was.n != is.n) {
		say_count(p, "corners of its face", was.n, is.n);
		return;
	}
	for (int i = 0; i < is.n; i++) {
		struct vec before = was.corners[i].at, now = is.corners[i].at;
		if (say_length(p, "a corner along it", before.x, now.x) ||
			say_length(p, "a corner across it", before.y, now.y))
			return;
	}
}

static int bore_count(const struct part *p)
{
	int n = 0;

	for (const struct bore *b = p->bores; b; b = b->next)
		n++;
	return n;
}

/* The first hole that is drilled otherwise, with where it is along the piece. */
static void say_bores(struct pair *p)
{
	const struct bore *was = bore_missing(p->was->bores, p->is->bores);
	const struct bore *is = bore_missing(p->is->bores, p->was->bores);
	int before = bore_count(p->was), now = bore_count(p->is);

	if (before != now)
		say_count(p, "holes", before, now);
	if (before != now || !was || !is)
		return;
	const char *name = is->text && *is->text ? is->text : "hole";
	struct arena *a = p->words.arena;
	if (!say_length(p, arena_printf(a, "%s along it", name), was->at.origin.x,
		    is->at.origin.x) &&
		!say_length(p, arena_printf(a, "%s across it", name), was->at.origin.y,
			is->at.origin.y) &&
		!say_length(p, arena_printf(a, "depth of %s", name), was->size.depth,
			is->size.depth))
		text_add(&p->words, "; %s drilled otherwise", name);
}

/* What differs with the size anyhow is told of a piece of the same size only. */
static void say_shape(struct pair *p)
{
	say_corners(p);
	say_if_other(p, ASPECT_ENDS, "its ends are cut otherwise");
	say_if_other(p, ASPECT_SECTION, "another section");
	say_if_other(p, ASPECT_FEATURES, "its edges or grooves are worked otherwise");
	say_bores(p);
	if (!p->words.length)
		say_if_other(p, ASPECT_SOLID, "another shape");
}

static void say_wood(struct pair *p)
{
	if (!parts_are_alike_in(ASPECT_MATERIAL, p->was, p->is))
		text_add(&p->words, "; material was %s, now %s", p->was->material, p->is->material);
	say_if_other(p, ASPECT_STUFF, "bought otherwise");
	say_if_other(p, ASPECT_MAKEUP, "glued up otherwise");
	say_if_other(p, ASPECT_GRAIN, "its grain runs otherwise");
}

static void say_note(struct pair *p)
{
	const char *was = p->was->note, *is = p->is->note;

	if (!parts_are_alike_in(ASPECT_NOTE, p->was, p->is))
		text_add(&p->words, "; noted %s: %s", is ? "now" : "no longer", is ? is : was);
}

const char *made_otherwise_words(struct arena *a, struct lettering how, const struct part *was,
	const struct part *is)
{
	struct pair p = { how, was, is, { .arena = a } };

	say_sizes(&p);
	if (!p.words.length)
		say_shape(&p);
	say_wood(&p);
	say_note(&p);
	return text_chars(&p.words);
}
