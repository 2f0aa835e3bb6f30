/*
 * The table of lists, made once for terminal, files and sheets.
 */
#include "lists/table.h"

#include <string.h>

struct lists lists_make(struct arena *a, const struct list_sources *from)
{
	const struct stair *s = from->stair;
	const struct list made[] = {
		list_cut(a, from),
		list_lumber(a, s, from->cutting),
		list_mouldings(a, from),
		list_hardware(a, s, from->parts),
		list_buying(a, s, from->cutting),
		list_cutting(a, s, from->cutting),
		list_setups(a, s, from->blanks),
	};
	struct list *lists = NEW_N(a, struct list, sizeof(made) / sizeof(*made));
	memcpy(lists, made, sizeof(made));
	return (struct lists){ lists, sizeof(made) / sizeof(*made) };
}

const struct list *lists_find(struct lists l, const char *name)
{
	for (int i = 0; i < l.n; i++)
		if (strcmp(l.lists[i].name, name) == 0)
			return l.lists + i;
	return NULL;
}
