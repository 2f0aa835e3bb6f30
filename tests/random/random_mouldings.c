#include "random/draft.h"

#include <string.h>

void draft_nosing(struct draft *d)
{
	static const char *const profiles[] = { "eased", "full_round", "half_round", "chamfer" };
	int profile = dice_count(&d->dice, 0, 3);
	double chamfer = size(d, 2, 8);
	/* a hair less than half: written with four places it may come out more */
	double half = d->tread / 2 - 0.01;
	double radius = profile == 1 || once_in(d, 3) ? half : size(d, 0, 9);
	/* over a riser that it does not hang over a nosing is next to sharp, or is refused */
	if (d->nosing < 1 && !once_in(d, 4)) {
		profile = 0;
		radius = fmin(radius, 3);
	}
	d->under = profile == 2 ? 0 : radius + (profile == 3 ? chamfer : 0);
	text_add(&d->text, "  nosing_profile: %s\n", profiles[profile]);
	if (profile == 3)
		put(d, 2, "nosing_chamfer", chamfer);
	if (profile != 1)
		put(d, 2, "nosing_radius", radius);
	maybe(d, 2, "waste_margin", 0, 2);
	d->side_overhang = size(d, 23, 45);
	put(d, 2, "side_overhang", d->side_overhang);
}

/* What the wall's skirt is, as far as the rest of the job has room for it. */
static int wall_skirt(struct draft *d)
{
	int kind = dice_count(&d->dice, 0, 2);
	/* a plain one goes on behind a wall at the end of a tread */
	if (strstr(text_chars(&d->text), "notches:"))
		return kind == 1 && !strstr(text_chars(&d->text), "at: back") && d->wall_gap > 20;
	if (kind == 2 && d->open_risers)
		return 0;
	/* the usual gap holds any of these, others seldom */
	if (kind == 1 && strstr(text_chars(&d->text), "wall_gap:") && !once_in(d, 8))
		return 0;
	return kind;
}

/* A rough carriage that runs along a wall and then beside open steps stands behind a plain skirt as
 * often as not.  Dice of its own, so that the rest of the stair is as it was before. */
static bool is_plain_before_open_steps(const struct draft *d)
{
	struct dice own = dice_from(d->dice.state);
	const char *text = text_chars(&d->text);
	bool runs_on = strstr(text, "from_step:") || strstr(text, "to_step:");
	return runs_on && d->open_is_rough && !strstr(text, "notches:") &&
		!strstr(text, "wall_gap:") && dice_once_in(&own, 2);
}

void draft_skirts(struct draft *d)
{
	static const char *const kinds[] = { "none", "plain", "cut_round" };
	bool plain = is_plain_before_open_steps(d);
	int kind = wall_skirt(d);
	kind = plain ? 1 : kind;
	bool before_carriage = once_in(d, 2) && d->open_is_rough && !d->open_risers;
	double thickness = size(d, 8, 20);
	if (kind == 0 && !before_carriage)
		return;
	text_add(&d->text, "skirts:\n  wall: %s\n", kinds[kind]);
	put(d, 2, "thickness", thickness);
	maybe(d, 2, "height", 20, 120);
	maybe(d, 2, "baseboard", 40, 180);
	if (!before_carriage)
		return;
	text_add(&d->text, "  open: mitred\n");
	maybe(d, 2, "cover", 0, 30);
}

void draft_mouldings(struct draft *d)
{
	static const char *const kinds[] = { "none", "cove", "scotia" };
	int kind = dice_count(&d->dice, 0, 2);
	double room = fmin(d->nosing, d->side_overhang) - d->under;
	double width = size(d, 8, fmax(8, fmin(room - 2, 16))), height = size(d, 18, 24);
	double back = size(d, 7, 11);
	if (room < 8 && !once_in(d, 8))
		kind = 0;
	if (d->open_risers)
		return;
	/* as often as not there is no room for one */
	if (width > room && !once_in(d, 10))
		kind = 0;
	text_add(&d->text, "mouldings:\n  under_nosing: %s\n", kinds[kind]);
	if (kind > 0) {
		put(d, 2, "under_width", width);
		put(d, 2, "under_height", height);
	}
	if (once_in(d, 2))
		return;
	text_add(&d->text, "  back: cove\n");
	put(d, 2, "back_size", back);
}
