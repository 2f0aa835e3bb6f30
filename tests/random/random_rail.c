#include "random/draft.h"

#include <string.h>

static void add_level_run(struct draft *d, const char *side, const char *direction, double length)
{
	text_add(&d->text, "    - side: %s\n      direction: %s\n", side, direction);
	put(d, 6, "length", length);
	maybe(d, 6, "height", 850, 1100);
	maybe(d, 6, "from_edge", 40, 160);
}

/* Past the end of the opening a run back may be followed by one across. */
static void add_level_runs(struct draft *d)
{
	static const char *const first[] = { "on", "back", "back", "out" };
	const char *side = d->right_open && once_in(d, 2) ? "right" : "left";
	const char *direction = first[dice_count(&d->dice, 0, 3)];
	text_add(&d->text, "  level_runs:\n");
	if (once_in(d, 4)) {
		const char *other = once_in(d, 2) ? "right" : "left";
		/* of one side that would bar the way back, which is refused */
		if (direction[0] != 'b' || strcmp(side, other) != 0 || once_in(d, 8))
			add_level_run(d, other, "on", size(d, 300, 900));
	}
	if (direction[0] == 'b' && d->opening > 0 && once_in(d, 2)) {
		add_level_run(d, side, "out", size(d, 100, 400));
		add_level_run(d, side, "back", d->opening + size(d, 10, 150));
		add_level_run(d, side, "across", size(d, 200, 900));
		return;
	}
	add_level_run(d, side, direction, size(d, 300, 2500));
	if (once_in(d, 3))
		text_add(&d->text, "      end: wall\n");
}

enum own { OWN_SIZES, USUAL_SIZES };

static void add_section(struct draft *d, int indent, enum own own)
{
	static const char *const profiles[] = { "moulded", "flat_oval", "round", "square" };
	const char *profile = profiles[dice_count(&d->dice, 0, 3)];
	text_add(&d->text, "%*sprofile: %s\n", indent, "", profile);
	if (own == OWN_SIZES) {
		double width = once_in(d, 8) ? size(d, 35, 55) : size(d, 55, 80);
		put(d, indent, "width", width);
		if (profile[0] == 'm' || profile[0] == 's')
			put(d, indent, "depth", size(d, 45, 90));
		else
			put(d, indent, "depth", width * 0.8);
	}
	if (once_in(d, 4))
		put(d, indent, "edge_radius", size(d, 0, 4));
	if (once_in(d, 4))
		put(d, indent, "recess", size(d, 6, 13));
}

void draft_rail(struct draft *d)
{
	static const char *const joints[] = { "bolt", "bolt_and_dowel", "dowels", "none" };
	text_add(&d->text, "rail:\n");
	add_section(d, 2, once_in(d, 2) ? OWN_SIZES : USUAL_SIZES);
	put(d, 2, "height", size(d, 800, 1050));
	if (once_in(d, 6))
		text_add(&d->text, "  joint: %s\n", joints[dice_count(&d->dice, 0, 3)]);
	if (once_in(d, 4)) {
		text_add(&d->text, "  bolt:\n");
		put(d, 4, "length", size(d, 60, 110));
		maybe(d, 4, "height", 15, 35);
		maybe(d, 4, "access", 25, 45);
	}
	if (d->level_runs)
		add_level_runs(d);
}

static void add_wall_rail(struct draft *d, const char *side)
{
	text_add(&d->text, "  - side: %s\n", side);
	if (once_in(d, 3))
		add_section(d, 4, OWN_SIZES);
	maybe(d, 4, "height", 800, 1050);
	maybe(d, 4, "clearance", 38, 70);
	maybe(d, 4, "bracket_spacing", 400, 1500);
	maybe(d, 4, "bracket_from_end", 120, 400);
	maybe(d, 4, "bracket_drop", 30, 60);
	if (once_in(d, 4) && d->steps > 6)
		text_add(&d->text, "    from_step: 2\n    to_step: %d\n",
			dice_count(&d->dice, 6, d->steps));
}

void draft_wall_rails(struct draft *d)
{
	if ((d->right_open && d->left_open) || d->steps < 4 || once_in(d, 2))
		return;
	/* level runs end the wall beside a stair under their floor: often too low for a rail */
	if (d->level_runs && !once_in(d, 3))
		return;
	text_add(&d->text, "wall_rails:\n");
	if (!d->left_open)
		add_wall_rail(d, "left");
	if (!d->right_open)
		add_wall_rail(d, "right");
}
