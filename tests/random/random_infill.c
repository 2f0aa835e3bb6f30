/*
 * What fills a balustrade made up by dice.
 */
#include "random/draft.h"

static const char *one_of(struct draft *d, const char *const *words, int n)
{
	return words[dice_count(&d->dice, 0, n - 1)];
}

static void add_balusters(struct draft *d)
{
	static const char *const holders[] = { "brads", "screws", "dowels" };
	bool round = once_in(d, 4);
	text_add(&d->text, "balusters:\n  shape: %s\n", round ? "round" : "square");
	put(d, 2, "section", size(d, 18, once_in(d, 8) ? 42 : 32));
	if (!round && once_in(d, 4))
		put(d, 2, "thickness", size(d, 18, 30));
	maybe(d, 2, "largest_gap", 85, 125);
	if (once_in(d, 6))
		text_add(&d->text, "  per_tread: %d\n", dice_count(&d->dice, 2, 4));
	text_add(&d->text, "  held: %s\n", one_of(d, holders, 3));
	if (once_in(d, 5))
		text_add(&d->text, "  top: square\n");
	maybe(d, 2, "play", 0, 6);
}

static void add_rows(struct draft *d)
{
	double height = size(d, 90, 250);
	text_add(&d->text, "  rows:\n");
	for (int i = dice_count(&d->dice, 1, 3); i > 0; i--) {
		text_add(&d->text, "    - lie: %s\n", once_in(d, 3) ? "level" : "raked");
		put(d, 6, "height", height);
		height += size(d, 80, 250);
	}
}

/* With dice of their own, so that the seeds of before throw the stairs of before. */
static void add_strip_screws(struct draft *d)
{
	struct dice before = d->dice;
	d->dice = dice_from(before.state);
	text_add(&d->text, "  screws:\n    number: %d\n", dice_count(&d->dice, 6, 14));
	maybe(d, 4, "pitch", 60, 900);
	maybe(d, 4, "first", 15, 300);
	d->dice = before;
}

static void add_infill(struct draft *d)
{
	static const char *const kinds[] = { "plain", "braced", "bars", "panel" };
	static const char *const edges[] = { "rails", "ends", "all_round" };
	text_add(&d->text, "infill:\n  kind: %s\n", one_of(d, kinds, 4));
	text_add(&d->text, "  shoe: %s\n", once_in(d, 2) ? "yes" : "no");
	text_add(&d->text, "  subrail: %s\n", once_in(d, 2) ? "yes" : "no");
	text_add(&d->text, "  fillets: %s\n", once_in(d, 2) ? "yes" : "no");
	text_add(&d->text, "  panel_held: %s\n", one_of(d, edges, 3));
	maybe(d, 2, "strip_width", 52, 80);
	maybe(d, 2, "shoe_depth", 25, 60);
	maybe(d, 2, "shoe_lift", 0, 50);
	maybe(d, 2, "plough", 5, 14);
	add_strip_screws(d);
	if (once_in(d, 2))
		add_rows(d);
	maybe(d, 2, "cross_width", 25, 45);
	put(d, 2, "cross_thickness", size(d, 10, 16));
	maybe(d, 2, "bar_width", 15, 60);
	maybe(d, 2, "bar_thickness", 12, 30);
	maybe(d, 2, "post", 30, 60);
	maybe(d, 2, "post_spacing", 600, 2000);
	maybe(d, 2, "panel_thickness", 6, 20);
}

void draft_infill(struct draft *d)
{
	add_balusters(d);
	if (!once_in(d, 3))
		add_infill(d);
}
