/*
 * What is said of the balustrade in figures.
 */
#include <string.h>

#include "sheets/side_drafting.h"
#include "sheets/words.h"

/* Not on a level run: that stands on the upper floor. */
static bool stands_on_flight(const struct part *p, int place, double floor)
{
	return p->baluster && p->places[place].origin.z < floor - NEAR_ENOUGH;
}

/* Centre to centre along the run: the least distance between two of one row. */
static double baluster_spacing(const struct part *parts, double run, double floor)
{
	double least = run;

	for (const struct part *p = parts; p; p = p->next)
		for (const struct part *q = p; p->baluster && q; q = q->next)
			for (int i = 0; stands_on_flight(p, 0, floor) && i < q->count; i++) {
				struct vec3 by = vec3_sub(q->places[i].origin, p->places[0].origin);
				double apart = fabs(by.x);
				if (stands_on_flight(q, i, floor) && fabs(by.y) < 1 && apart > 1 &&
					apart < least)
					least = apart;
			}
	return least;
}

static const struct part *infill_named(const struct side_view *v, const char *name)
{
	for (const struct part *p = v->context->parts; p; p = p->next)
		if (p->kind == &part_infill && strcmp(part_whole_name(p), name) == 0)
			return p;
	return NULL;
}

/* Braced round ones have flats. */
static double baluster_width(const struct side_view *v, double section)
{
	const struct part *baluster = infill_named(v, "baluster");

	return baluster ? baluster->size.width : section;
}

static const char *balusters_words(struct arena *a, const struct side_view *v)
{
	const struct stair *s = v->context->stair;
	const struct job_balusters *b = &s->job->balusters;
	double run = v->flight->unit_run;
	double spacing = baluster_spacing(v->context->parts, run, s->total_rise);
	bool flat = !near_enough(b->section, b->thickness);
	const char *size = inches_words(a, s, b->section);

	if (flat)
		size = section_words(a, s, b->section, b->thickness);
	else
		size = arena_printf(a, "%s %s", size,
			b->shape == BALUSTER_ROUND ? "round" : "square");
	return arena_printf(a,
		"Balusters %s, %d a tread, %s centre to centre, %s clear; the first on each tread "
		"has its front in line with the riser face.",
		size, (int)lround(run / spacing), inches_words(a, s, spacing),
		inches_words(a, s, spacing - baluster_width(v, b->section)));
}

static const char *braced_words(struct arena *a, const struct side_view *v)
{
	const struct stair *s = v->context->stair;
	const struct job_infill *f = &s->job->infill;

	return arena_printf(a,
		"%s Those of a tread are one unit, joined by cross pieces %s on loose tenons.",
		balusters_words(a, v), section_words(a, s, f->cross_width, f->cross_thickness));
}

static const char *bars_words(struct arena *a, const struct side_view *v)
{
	const struct stair *s = v->context->stair;
	const struct job_infill *f = &s->job->infill;
	const struct part *bar = infill_named(v, "bar");

	return arena_printf(a, "Bars %s, %s.", section_words(a, s, f->bar_width, f->bar_thickness),
		bar && bar->note ? bar->note : "parallel to the rail");
}

static const char *panels_words(struct arena *a, const struct side_view *v)
{
	const struct stair *s = v->context->stair;
	const struct job_infill *f = &s->job->infill;

	return arena_printf(a, "Panels %s thick in ploughs %s deep, with %s of room to move.",
		inches_words(a, s, f->panel_thickness), inches_words(a, s, f->plough),
		inches_words(a, s, f->panel_gap));
}

static const char *infill_words(struct arena *a, const struct side_view *v)
{
	switch (v->context->stair->job->infill.kind) {
	case INFILL_PLAIN: return balusters_words(a, v);
	case INFILL_BRACED: return braced_words(a, v);
	case INFILL_BARS: return bars_words(a, v);
	case INFILL_PANEL: return panels_words(a, v);
	}
	return "";
}

/* Shoe, subrail and posts, where there are any. */
static const char *strips_words(struct arena *a, const struct side_view *v)
{
	const struct stair *s = v->context->stair;
	const struct part *shoe = infill_named(v, "shoe"), *subrail = infill_named(v, "subrail");
	const struct part *post = infill_named(v, "post");
	const char *words = "";

	if (shoe)
		words = arena_printf(a, " Shoe %s.",
			section_words(a, s, shoe->size.thickness, shoe->size.width));
	if (subrail)
		words = arena_printf(a, "%s Subrail %s.", words,
			section_words(a, s, subrail->size.thickness, subrail->size.width));
	if (post)
		words = arena_printf(a, "%s Posts %s square.", words,
			inches_words(a, s, post->size.width));
	return words;
}

const char *balustrade_words(struct arena *a, const struct side_view *v)
{
	const struct stair *s = v->context->stair;
	const struct job *job = s->job;

	if (!side_shows_rail(v))
		return "";
	return arena_printf(a,
		"Rail %s, its top %s plumb above the nosing line. %s%s Newels %s square.",
		section_words(a, s, job->rail.width, job->rail.depth),
		inches_words(a, s, job->rail.height), infill_words(a, v), strips_words(a, v),
		inches_words(a, s, job->newels.section));
}
