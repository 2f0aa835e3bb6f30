/*
 * The keys of the building code.
 *
 * No edition is the default: which one holds is a matter of place and year, and
 * a guess would be relied on.  Without one nothing is checked, and nothing says
 * that it was.
 */
#include "read/keys_table.h"

static const struct field amendment[] = {
	{ FIELD_TEXT, "row", LANDS(job_amendment, row), .required = true, .most = 40,
		.help = "row of the edition, as pitchboard check names it" },
	{ FIELD_TEXT, "least", LANDS(job_amendment, least), .most = 20,
		.help = "its lower limit here", .absent = "as the edition has it" },
	{ FIELD_TEXT, "most", LANDS(job_amendment, most), .most = 20,
		.help = "its upper limit here", .absent = "as the edition has it" },
	{ FIELD_TEXT, "by", LANDS(job_amendment, by), .required = true, .most = 40,
		.help = "who said so" },
	{ FIELD_DATE, "date", LANDS(job_amendment, date), .required = true, .help = "and when" },
	{ FIELD_TEXT, "text", LANDS(job_amendment, text), .most = 120,
		.help = "where it is written, or what was said" },
	{ 0 },
};

static const struct group keys_amendment = { "code.amendments", sizeof(struct job_amendment),
	amendment, .keeps_node = true };

static const struct field code[] = {
	{ FIELD_TEXT, "edition", LANDS(job_code, edition), .most = 60,
		.help = "edition of the code: a file of the folder rules",
		.absent = "none, and nothing is checked: the place decides which one holds" },
	/* common practice: what a careful shop keeps to over the length of a flight */
	{ FIELD_LENGTH, "tolerance", LANDS(job_code, tolerance), .most = 25, .usual = "1/16\"",
		.usual_mm = "1 mm",
		.help = "what a built size may be off the drawn one: nearer to its limit than "
			"this, it is called near" },
	{ FIELD_GROUPS, "amendments", LANDS(job_code, amendments),
		COUNTED(job_code, amendment_count), .group = &keys_amendment,
		.help = "rows that apply otherwise in this place", .absent = "none" },
	{ 0 },
};

const struct group keys_code = { "code", sizeof(struct job_code), code, .shorthand = "edition",
	.keeps_node = true };
