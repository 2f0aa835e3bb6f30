/*
 * A stringer as the subject of a template.
 */
#ifndef SHEETS_TEMPLATE_STRINGER_H
#define SHEETS_TEMPLATE_STRINGER_H

#include "sheets/stringer_shape.h"
#include "sheets/template.h"
#include "sheets/template_bores.h"
#include "sheets/template_rod.h"

struct template_job stringer_template(struct arena *a, const struct sheet_context *c,
	const struct part *part);

/* From where the figures beside corners and on the base line are measured. */
enum figures {
	FIGURES_FROM_PLANK_END,
	FIGURES_FROM_PIECE_END, /* of a piece that is used in many places */
};

/* What of the stringer is inside `region`; all of it when the region holds it. */
struct pattern stringer_pattern(struct arena *a, const struct part *part,
	struct lettering lettering, struct box region, enum figures figures);

/* Every corner, from the lower end of the plank and up from its lower edge. */
struct positions stringer_corners(struct arena *a, const struct part *part,
	struct lettering lettering);

/* Those, and after them the middle of every hole's mouth. */
struct positions stringer_marks(struct arena *a, const struct part *part,
	struct lettering lettering);

/* The holes that are laid out on it, seen as its template lies on it. */
struct unit_bores stringer_bores_drawn(struct arena *a, const struct part *part);

/* The rod on which every corner and hole is ticked at its running position. */
struct marking_rod stringer_rod(struct arena *a, const struct part *part,
	struct lettering lettering);

/* The lines a groove is routed to: its outline without the sides where it runs into another. */
struct chain *groove_lines(struct arena *a, const struct part *part, const struct feature *groove);

/* Round the whole outline, before any mirroring. */
struct box stringer_extent(struct arena *a, const struct part *part);

#endif
