#include "lists/table.h"

#include <string.h>

struct lists lists_make(struct arena *a, const struct stair *s, const struct part *parts,
	const struct drawing *sheets, struct diags *d)
{
	const struct blank *blanks = blanks_make(a, s, parts);
	const struct cut_group *groups = cutting_make(a, s, blanks, d);

	if (!groups)
		return (struct lists){ NULL, 0 };
	const struct list made[] = {
		list_cut(a, s, parts, blanks, sheets),
		list_lumber(a, s, groups),
		list_mouldings(a, s, groups),
		list_hardware(a, s, parts),
		list_buying(a, s, groups),
		list_cutting(a, s, groups),
		list_setups(a, s, blanks),
	};
	struct list *lists = NEW_N(a, struct list, sizeof(made) / sizeof(*made));
	memcpy(lists, made, sizeof(made));
	return (struct lists){ lists, sizeof(made) / sizeof(*made) };
}

const struct list *lists_find(struct lists l, const char *name)
{
	for (int i = 0; i < l.n; i++)
		if (strcmp(l.lists[i].name, name) == 0)
			return &l.lists[i];
	return NULL;
}
