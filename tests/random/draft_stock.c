#include "random/draft.h"

static void put_list(struct draft *d, const char *key, double from, double to, int most)
{
	double unit = d->inches ? 25.4 : 1;
	int n = dice_count(&d->dice, 1, most);

	text_add(&d->text, "%s: [", key);
	for (int i = 0; i < n; i++)
		text_add(&d->text, "%s%.3f %s", i ? ", " : "", size(d, from, to) / unit,
			d->inches ? "in" : "mm");
	text_add(&d->text, "]");
}

/* With a price or without; of any species, or of the one that treads are made of by default. */
static void add_board(struct draft *d)
{
	double unit = d->inches ? 25.4 : 1;

	text_add(&d->text, "    - {%swidth: %.3f %s, ", once_in(d, 2) ? "species: hardwood, " : "",
		size(d, 60, 320) / unit, d->inches ? "in" : "mm");
	put_list(d, "lengths", 1200, 5000, 4);
	if (!once_in(d, 3))
		text_add(&d->text, ", price: %d", dice_count(&d->dice, 5, 90));
	text_add(&d->text, "}\n");
}

void draft_stock(struct draft *d)
{
	int boards = dice_count(&d->dice, 0, 3);

	if (once_in(d, 3))
		return;
	text_add(&d->text, "stock:\n");
	if (boards)
		text_add(&d->text, "  boards:\n");
	for (int i = 0; i < boards; i++)
		add_board(d);
	maybe(d, 2, "kerf", 0, 5);
	maybe(d, 2, "end_trim", 0, 100);
	maybe(d, 2, "rough_length", 0, 40);
	maybe(d, 2, "rough_width", 0, 12);
	text_add(&d->text, "  spare: %.2f\n", dice_count(&d->dice, 0, 30) / 100.0);
	text_add(&d->text, "  spare_every: %d\n", dice_count(&d->dice, 0, 30));
}
