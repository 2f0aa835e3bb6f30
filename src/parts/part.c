#include "pitchboard/part.h"

#include "parts/fastening.h"
#include "parts/splice.h"

/* In this order they are listed: existing work first, then as they go up in the house. */
static const struct part_kind *const kinds[] = {
	&part_existing,
	&part_stringer,
	&part_wedge,
	&part_block,
	&part_riser,
	&part_tread,
	&part_landing,
	&part_moulding,
	&part_skirt,
	&part_newel,
	&part_rail,
	&part_wall_rail,
	&part_bracket,
	&part_infill,
};

#define KINDS ((int)(sizeof(kinds) / sizeof(kinds[0])))

/* The pieces of one family in all flights. */
static struct part *family_make(struct arena *a, const struct part_kind *kind,
	const struct stair *s, struct diags *d)
{
	struct part *first = NULL, **tail = &first;
	for (int i = 0; i < s->flight_count; i++) {
		*tail = kind->make(a, s, &s->flights[i], d);
		while (*tail)
			tail = &(*tail)->next;
	}
	return first;
}

/* In the order in which they give way to each other: what is drilled last goes where there is room
 * left. */
static void drill(struct arena *a, const struct stair *s, struct part *const *families,
	struct diags *d)
{
	struct assembly all = assembly_make(a, families, KINDS);
	mates_drill(a, &all);
	for (int i = 0; i < KINDS; i++)
		if (kinds[i] == &part_tread)
			tread_tenons_drill(a, s, families[i]);
	tread_screws_drill(a, s, &all, d);
	tread_brads_drill(a, s, &all);
	fastenings_drill(a, &all);
}

/* Joints are drilled before equal pieces become one part: a tread with other holes is another part.
 */
const struct part *parts_make(struct arena *a, const struct stair *s, struct diags *d)
{
	if (!s)
		return NULL;
	int before = d->errors;
	struct part *families[KINDS], *first = NULL, **tail = &first;
	for (int i = 0; i < KINDS; i++)
		families[i] = family_make(a, kinds[i], s, d);
	if (d->errors > before)
		return NULL;
	splices_make(a, s->job, families, KINDS);
	drill(a, s, families, d);
	for (int i = 0; i < KINDS; i++) {
		*tail = pieces_merge(a, kinds[i], families[i]);
		while (*tail)
			tail = &(*tail)->next;
	}
	return first;
}
