/*
 * What sheets are drawn with: papers, title block and sets, and the faces of the letters.
 */
#ifndef CLI_PRINTING_H
#define CLI_PRINTING_H

#include "cli/command.h"
#include "pitchboard/sheet.h"
#include "pitchboard/write.h"

struct printing {
	const struct stationery *stationery;
	struct faces *faces; /* to be freed with faces_free; NULL: not opened */
};

/* Out of the folder of templates; a fault there is the machine's, not the job's, and is told. */
enum status printing_open(struct arena *a, const char *dir, struct printing *p);

#endif
