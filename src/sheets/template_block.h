/*
 * The block that the riser of a starting step is bent round, as the subject of a template.
 */
#ifndef SHEETS_TEMPLATE_BLOCK_H
#define SHEETS_TEMPLATE_BLOCK_H

#include "sheets/template.h"

/* Of the risers it is the one that is glued up in layers. */
bool is_riser_block(const struct part *p);

/* From above. */
struct template_job block_template(struct arena *a, const struct sheet_context *c,
	const struct part *part);

#endif
