/*
 * Plain balusters, each by itself.
 */
#include "parts/baluster.h"
#include "parts/shoe.h"

static void make(struct pieces *list, const struct stretch *s, struct diags *d)
{
	struct setting set = setting_make(list->arena, s, d);
	if (set.count == 0 || !baluster_takes_dowel(list->arena, s, d))
		return;
	for (int i = 0; i < set.count; i++)
		if (setting_is_placed(&set, i))
			baluster_add(list, s, setting_front(&set, i));
	baluster_tops_look(list->arena, &set, d);
	fillets_make(list, &set);
}

const struct infill_kind infill_plain = { "plain", make };
