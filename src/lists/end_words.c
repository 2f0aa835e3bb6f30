#include "lists/end_words.h"

const char *end_words(struct arena *a, struct end_cut cut)
{
	bool has_mitre = fabs(cut.mitre) > NEAR_ENOUGH, has_bevel = fabs(cut.bevel) > NEAR_ENOUGH;

	if (has_mitre && has_bevel)
		return arena_printf(a, "%s, bevel %s", angle_letter(a, fabs(cut.mitre)),
			angle_letter(a, fabs(cut.bevel)));
	if (has_bevel)
		return arena_printf(a, "bevel %s", angle_letter(a, fabs(cut.bevel)));
	return has_mitre ? angle_letter(a, fabs(cut.mitre)) : "square";
}
