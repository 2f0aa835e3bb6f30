/*
 * A skirt cut round the steps as the subject of a template.
 */
#ifndef SHEETS_TEMPLATE_SKIRT_H
#define SHEETS_TEMPLATE_SKIRT_H

#include "sheets/template.h"

/* Is there more to mark on it than its two ends? */
bool skirt_needs_template(struct arena *a, const struct part *p);

/* As one looks at it in the house. */
struct template_job skirt_template(struct arena *a, const struct sheet_context *c,
	const struct part *part);

#endif
