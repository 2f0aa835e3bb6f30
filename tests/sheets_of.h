/*
 * The sheets of one kind, of a stair, on a plain paper in millimetres.
 */
#ifndef TESTS_SHEETS_OF_H
#define TESTS_SHEETS_OF_H

#include "built.h"
#include "draw/clip.h"
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

/* A skirt cut round its steps has no plain stretch to break out. */
static inline struct built long_skirt(void)
{
	return built_from("pitchboard: 1\n"
			  "job: {name: Test, units: millimetres}\n"
			  "floors: {total_rise: 3600}\n"
			  "stair: {width: 910, left: wall, right: wall,\n"
			  "  segments: [{kind: flight, risers: 18, run: 225}]}\n"
			  "skirts: {wall: cut_round}\n");
}

static inline const struct drawing *titled(const struct drawing *g, const char *title)
{
	while (g && strcmp(g->title, title) != 0)
		g = g->next;
	return g;
}

/* How many texts of all sheets read so. */
static inline int count_texts(const struct drawing *g, const char *words)
{
	int n = 0;

	for (; g; g = g->next)
		for (const struct mark *k = g->first; k; k = k->next)
			n += k->kind == MARK_TEXT && strcmp(k->text.text, words) == 0;
	return n;
}

/* How many begin so. */
static inline int count_begun(const struct drawing *g, const char *words)
{
	int n = 0;

	for (; g; g = g->next)
		for (const struct mark *k = g->first; k; k = k->next)
			n += k->kind == MARK_TEXT &&
				strncmp(k->text.text, words, strlen(words)) == 0;
	return n;
}

/* Does a line of this pen run through the box? */
static inline bool is_crossed(const struct drawing *g, enum pen pen, struct box b)
{
	for (const struct mark *k = g->first; k; k = k->next)
		for (int i = 0; k->kind == MARK_LINE && k->line.pen == pen && i + 1 < k->line.n;
			i++)
			if (clip_segment(b, k->line.points[i], k->line.points[i + 1]).some)
				return true;
	return false;
}

#endif
