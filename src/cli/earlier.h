/*
 * The earlier job that a later one is compared with.
 */
#ifndef CLI_EARLIER_H
#define CLI_EARLIER_H

#include "pitchboard/change.h"

struct earlier_job {
	const char *path;    /* NULL: none was named */
	struct earlier was;  /* NULL parts where there is none, or a problem */
	const char *problem; /* why it cannot be compared with; its own mistakes are told already */
};

/* `templates` has the edition by which its layout may have been chosen. */
struct earlier_job earlier_open(struct arena *a, const char *path, const char *templates);

/* The differences, one a line. */
void earlier_tell(const struct earlier_job *e, const struct change *changes);

#endif
