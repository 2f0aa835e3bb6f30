#include "read/key_place.h"

#include <string.h>

#include "base/text.h"

/* Groups whose own key does not say enough; in lists, one entry of them. */
static const struct {
	const char *plain, *words;
} names[] = {
	{ "landings.foot.", "landing at the foot" },
	{ "landings.foot.doors.", "door at the foot" },
	{ "landings.head.", "landing at the head" },
	{ "landings.head.doors.", "door at the head" },
	{ "stair.left.", "left side" },
	{ "stair.right.", "right side" },
	{ "stair.segments.", "flight" },
	{ "stringers.wall.", "wall stringer" },
	{ "stringers.open.", "open stringer" },
	{ "stringers.middle.", "middle carriages" },
	{ "stringers.thrust_block.", "thrust block" },
	{ "treads.tenons.", "tenons of treads" },
	{ "treads.screws.", "screws of treads" },
	{ "treads.brads.", "brads of treads" },
	{ "treads.starting_step.", "starting step" },
	{ "treads.notches.", "wall that a tread wraps" },
	{ "newels.panels.", "panels of newels" },
	{ "newels.panels.rails.", "cross rail of newels" },
	{ "newels.cap.", "caps of newels" },
	{ "rail.bolt.", "rail bolt" },
	{ "rail.dowel.", "dowels of rails" },
	{ "rail.level_runs.", "level rail" },
	{ "wall_rails.", "wall rail" },
	{ "infill.screws.", "screws of shoe and subrail" },
	{ "infill.rows.", "row of cross pieces" },
	{ "code.amendments.", "amendment of the code" },
	{ "stock.boards.", "board on offer" },
};

static const char *joined(struct arena *a, const char *group, const char *key)
{
	return *group ? arena_printf(a, "%s, %s", group, text_spoken(a, key)) : text_spoken(a, key);
}

static const char *name_of(struct arena *a, const char *plain, const char *group, const char *key)
{
	for (size_t i = 0; i < sizeof(names) / sizeof(*names); i++)
		if (strcmp(names[i].plain, plain) == 0)
			return names[i].words;
	return joined(a, group, key);
}

struct key_place key_place_in(struct arena *a, struct key_place at, const struct field *f,
	int number)
{
	struct key_place in = { .plain = arena_printf(a, "%s%s.", at.plain, f->key) };

	in.words = name_of(a, in.plain, at.words, f->key);
	if (number == 0) {
		in.path = arena_printf(a, "%s%s.", at.path, f->key);
		return in;
	}
	in.path = arena_printf(a, "%s%s[%d].", at.path, f->key, number);
	in.words = arena_printf(a, "%s %d", in.words, number);
	return in;
}

const char *key_place_words(struct arena *a, struct key_place at, const struct field *f)
{
	return joined(a, at.words, f->key);
}
