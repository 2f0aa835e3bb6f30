/*
 * A stringer to draw templates of, struck by hand with the 3-4-5 triangle: rise 180, run 240, so
 * that on the bench a step is 300 long, its point 144 above its corners, and all is exact.
 *
 *        (108 + 300 k, 244)                front of tread
 *          /\                              plank 244 wide, throat 100
 *         /  `-.  (300 + 300 k, 100)       back of tread
 *        /      `-/
 */
#ifndef SHEETS_TEMPLATE_FIXTURE_H
#define SHEETS_TEMPLATE_FIXTURE_H

#include <stdlib.h>

#include "sheets/template.h"
#include "six_tenths.h"

struct bench_stair {
	struct job job;
	struct flight flight;
	struct stair stair;
	struct stringer stringer;
	struct part part;
	struct frame place;
	struct paper paper;
	struct sheet_context context;
};

/* Lower edge first, then the upper edge from the head down to the foot. */
static struct outline bench_outline_of(struct arena *a, int steps, struct stringer *s)
{
	struct corner *c = NEW_N(a, struct corner, 2 * steps + 4);
	struct vec *front = NEW_N(a, struct vec, steps), *back = NEW_N(a, struct vec, steps);
	int n = 0;

	c[n++].at = vec(120 + 144, 0);          /* the level cut runs out at the lower edge */
	c[n++].at = vec(300 * steps - 75.0, 0); /* the plumb cut: 100 up is 75 along */
	for (int i = steps - 1; i >= 0; i--) {
		back[i] = vec(300 + 300 * i, 100);
		front[i] = vec(108 + 300 * i, 244);
		c[n++].at = back[i];
		c[n++].at = front[i];
	}
	c[n++].at = vec(120, 108); /* foot, in front: 108 up the level cut is 144 along */
	s->steps = steps;
	s->tread_corners = front;
	s->inner_corners = back;
	return (struct outline){ c, n };
}

/* The far face of a mitred one: riser cuts 20 further in, along the level. */
static struct outline bench_far_face(struct arena *a, struct outline near)
{
	struct corner *c = NEW_N(a, struct corner, near.n);

	for (int i = 0; i < near.n; i++)
		c[i].at = i < 3 ? near.corners[i].at : vec_add(near.corners[i].at, vec(16, -12));
	return (struct outline){ c, near.n };
}

static struct bench_stair *bench_stair(struct arena *a, int steps, enum stringer_kind kind,
	enum stringer_hand hand)
{
	struct bench_stair *b = NEW(a, struct bench_stair);

	b->job.file = "somewhere/test-stair.yaml";
	b->job.about = (struct job_about){ .number = "T1",
		.name = "invented",
		.units = UNITS_MILLIMETRES,
		.fraction = 1 };
	b->job.sheets.templates = TEMPLATES_STRINGERS;
	b->flight.frame = frame_house();
	b->stair = (struct stair){ .job = &b->job,
		.flights = &b->flight,
		.flight_count = 1,
		.width = 900 };
	b->place = frame_house();
	b->part = (struct part){ .mark = "S1",
		.name = "stringer",
		.size = { 300.0 * steps, 244, 40 },
		.outline = bench_outline_of(a, steps, &b->stringer),
		.places = &b->place,
		.count = 1,
		.stringer = &b->stringer };
	b->stringer.kind = kind;
	b->stringer.hand = hand;
	b->stringer.plank_width = 244;
	if (kind == STRINGER_MITRED)
		b->stringer.far_face = bench_far_face(a, b->part.outline);
	b->paper = (struct paper){ .name = "A4", .width = 297, .height = 210 };
	b->context = (struct sheet_context){ .stair = &b->stair,
		.parts = &b->part,
		.measure = six_tenths() };
	return b;
}

static inline struct drawing *bench_templates(struct arena *a, const struct bench_stair *b)
{
	return templates_draw(a, &b->context, &b->paper);
}

#endif
