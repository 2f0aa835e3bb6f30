/*
 * A client's set as it is issued, for tests of what it says.
 */
#ifndef TESTS_ISSUED_H
#define TESTS_ISSUED_H

#include "built.h"
#include "pitchboard/sheet.h"
#include "six_tenths.h"

/* Open on the right, a wall at the left; inches. */
#define STAIR(more)                                                                                \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, client: Somebody}\n"                                                    \
	"floors: {total_rise: 107\"}\n"                                                            \
	"opening: {length: 122\", floor_thickness: 11\"}\n"                                        \
	"stair: {width: 36\", left: wall, right: open}\n"                                          \
	"sheets: {set: client}\n" more

struct issued {
	struct built built;
	const struct drawing *sheets;
};

static inline struct issued issue(const char *yaml)
{
	struct issued it = { built_from(yaml), NULL };
	const struct stationery *st = stationery_read(it.built.arena, "templates", &it.built.diags);

	it.sheets = sheets_draw(it.built.arena, it.built.stair, it.built.parts,
		(struct issue){ .set = NULL }, st, six_tenths(), &it.built.diags);
	assert_non_null(it.sheets);
	return it;
}

static inline const struct mark *find_text(const struct drawing *g, const char *text)
{
	for (const struct mark *k = g->first; k; k = k->next)
		if (k->kind == MARK_TEXT && strstr(k->text.text, text))
			return k;
	return NULL;
}

static inline bool is_said(const struct issued *it, const char *text)
{
	for (const struct drawing *g = it->sheets; g; g = g->next)
		if (find_text(g, text))
			return true;
	return false;
}

static inline const struct drawing *sheet_of(const struct issued *it, const char *id)
{
	for (const struct drawing *g = it->sheets; g; g = g->next)
		if (strcmp(g->id, id) == 0)
			return g;
	return NULL;
}

#endif
