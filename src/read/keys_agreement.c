/*
 * The keys of what client and shop agree on, for the page that is signed.
 */
#include "read/keys_table.h"

/* What a stair shop's offer usually leaves out: common practice. */
static const char exclusions[] = "painting of walls and ceilings, finishing of floors, "
				 "plaster and drywall repair, electrical work, "
				 "plumbing and heating, changes to floors and walls, "
				 "permit fees and inspections, making good hidden damage";

static const struct field agreement[] = {
	{ FIELD_TEXTS, "not_included", LANDS(job_agreement, not_included),
		COUNTED(job_agreement, not_included_count), .usual = exclusions,
		.help = "what the shop does not do; [] when nothing is left out" },
	{ FIELD_TEXTS, "notes", LANDS(job_agreement, notes), COUNTED(job_agreement, note_count),
		.help = "what else was agreed, a sentence each", .absent = "none" },
	{ 0 },
};

const struct group keys_agreement = { "agreement", sizeof(struct job_agreement), agreement,
	.keeps_node = true };
