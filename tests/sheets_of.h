/*
 * The sheets of one kind, of a stair, on a plain paper in millimetres.
 */
#ifndef TESTS_SHEETS_OF_H
#define TESTS_SHEETS_OF_H

#include "built.h"
#include "pitchboard/sheet.h"
#include "six_tenths.h"

/* All that a sheet is drawn from: what differs from the plain paper is set before it is drawn. */
struct paper_stair {
	struct built built;
	struct paper paper;
	struct stationery none;
	struct sheet_context context;
};

static inline struct paper_stair *on_paper(struct built b, double width, double height)
{
	assert_non_null(b.parts);
	struct paper_stair *p = NEW(b.arena, struct paper_stair);
	p->built = b;
	p->paper = (struct paper){ .name = "of the test",
		.width = width,
		.height = height,
		.left = 20,
		.right = 10,
		.top = 10,
		.bottom = 10,
		.lettering = 2.5 };
	p->context = (struct sheet_context){ .stair = b.stair,
		.parts = b.parts,
		.stationery = &p->none,
		.paper = &p->paper,
		.measure = six_tenths() };
	return p;
}

static inline struct drawing *draw(struct paper_stair *p, const struct sheet_kind *kind)
{
	return kind->draw(p->built.arena, &p->context);
}

static inline const struct drawing *sheets_of(const struct built *b, const struct sheet_kind *kind,
	double width, double height)
{
	struct paper_stair *p = on_paper(*b, width, height);

	p->paper.scales = SCALES_METRIC;
	return draw(p, kind);
}

#endif
