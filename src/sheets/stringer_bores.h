/*
 * The holes and mortises of a stringer on its bench view, and in figures.
 *
 *      b 1653     b 3204
 *        |          |
 *   -----+----------+----------     those of one kind bear one letter; each has its running
 *        :          :               position along the plank, beside those of the corners
 */
#ifndef SHEETS_STRINGER_BORES_H
#define SHEETS_STRINGER_BORES_H

#include "sheets/stringer_sheet.h"
#include "sheets/template_bores.h"

/* Every hole with the number of its kind, from 0: alike in size and purpose, and equally far across
 * and through the plank. */
struct stringer_bores {
	struct unit_bores bores;
	const int *kind;
	int kinds;
};

struct stringer_bores stringer_bores(struct arena *a, const struct part *p);

/* The letter of a kind, as it stands before its positions and in the table. */
const char *bore_letter(struct arena *a, int kind);

/* Where its middle is along the plank. */
const char *bore_along_words(struct arena *a, const struct stair *s, const struct unit_bore *b);

void stringer_draw_bores(struct sheet *s, const struct stringer_subject *t,
	const struct stringer_bores *b, double scale);

/* No rows where there are none. */
struct table stringer_bore_table(struct arena *a, const struct stringer_subject *t);

#endif
