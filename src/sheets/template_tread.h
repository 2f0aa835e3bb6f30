/*
 * Treads as the subject of templates.
 */
#ifndef SHEETS_TEMPLATE_TREAD_H
#define SHEETS_TEMPLATE_TREAD_H

#include "sheets/template_unit.h"

/* The step that a tread is of; NULL when its family does not say. */
const struct step *tread_step(const struct stair *s, const struct unit *u);

/* Its face, seen from above by one who goes up: front edge nearest. */
struct unit_face tread_face(struct arena *a, const struct stair *s, const struct unit *u);

/* One for each different tread that is more than a rectangle; they share their files. */
struct template_group tread_templates(struct arena *a, const struct sheet_context *c,
	const struct unit *units);

#endif
