/*
 * What a view says beside the stair itself, by who reads the set.
 */
#ifndef SHEETS_READER_H
#define SHEETS_READER_H

#include "pitchboard/sheet.h"

enum said {
	SAYS_MARKS = 1,     /* of every piece, in balloons */
	SAYS_POSITIONS = 2, /* running ones, for marking out */
	SAYS_STRINGERS = 4, /* where they stand across the plan */
	SAYS_FLOORS = 8,   /* what they are built up of, and the room before and behind the stair */
	SAYS_LIMITS = 16,  /* the line of the headroom that is wanted, the clear widths */
	SAYS_SECTION = 32, /* one through the steps, even where no wall hides them */
};

bool sheet_says(const struct sheet_context *c, enum said what);

#endif
