/*
 * From stair and parts to drawings: the sheets of a set and the full-size templates.
 */
#ifndef PITCHBOARD_SHEET_H
#define PITCHBOARD_SHEET_H

#include "pitchboard/change.h"
#include "pitchboard/drawing.h"
#include "pitchboard/list.h"
#include "pitchboard/part.h"
#include "pitchboard/rule.h"
#include "pitchboard/stationery.h"

/* Everything a sheet may look at.  Read only. */
struct sheet_context {
	const struct stair *stair;
	const struct part *parts;
	const struct stationery *stationery;
	const struct paper *paper;
	struct measure measure;
	const struct drawing *sheets; /* those drawn before: for the cover's index, and for
					 where a part is shown */
	const struct blank *blanks;
	const struct cut_group *cutting;
	struct drawing *templates;      /* drawn before the sheets, whose cut list names them */
	const struct finding *findings; /* NULL: the job names no code */
	const struct change *changes;   /* since an earlier job */
	const struct drawing *earlier;  /* its sheets; NULL: nothing is compared */
	struct earlier was;             /* and that job itself */
	const struct sheet_set *set;
	/* The number of the set: of all that is printed but itself and the job file's; "" while it
	 * is reckoned, when neither is lettered. */
	const char *set_fingerprint;
};

/* What is issued, beside the wood: findings may be NULL when the job names no code, changes and the
 * sheets of an earlier job when it is not compared with one. */
struct issue {
	const char *
		set; /* NULL: the one that the job asks for; else its name is added to the files' */
	const struct finding *findings;
	const struct change *changes;
	const struct drawing *earlier;
	struct earlier was;
};

/* A kind of sheet lives whole in src/sheets/NAME.c and ends in one row. */
struct sheet_kind {
	const char *name;   /* as a set names it: "cover", "plan", "elevation", "section", "rails",
			       "stringer", "parts", "pieces", "cutlist", "cutting", "setups" */
	const char *series; /* "S-1": sheets of it are numbered S-101, S-102 ... */
	/* A list of its drawings, none where it does not apply. */
	struct drawing *(*draw)(struct arena *a, const struct sheet_context *c);
};

extern const struct sheet_kind sheet_cover, sheet_plan, sheet_elevation, sheet_section,
	sheet_rail_views, sheet_stringer, sheet_parts, sheet_details, sheet_pieces, sheet_cutlist,
	sheet_cutting, sheet_setups, sheet_code, sheet_guard, sheet_fixings, sheet_general,
	sheet_client_cover, sheet_client_plan, sheet_client_elevation, sheet_client_choices,
	sheet_client_notes;

/* All drawings that the job's set asks for, numbered, framed and titled, then the templates.
 * NULL in, NULL out; NULL after an error. */
const struct drawing *sheets_draw(struct arena *a, const struct stair *s, const struct part *parts,
	struct issue issue, const struct stationery *st, struct measure m, struct diags *d);

#endif
