/*
 * Work counted in steps, never in time: the same job gives the same boards on every machine.
 */
#ifndef LISTS_WORK_H
#define LISTS_WORK_H

#include <stdbool.h>

struct work {
	long done, most;
};

static inline bool work_is_over(const struct work *w)
{
	return w->done >= w->most;
}

#endif
