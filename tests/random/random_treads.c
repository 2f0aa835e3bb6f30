#include "random/draft.h"

/* One that passes some steps: from the front of this one, or behind it, to a riser or between two.
 * Seldom where the carriage stands. */
static void add_breast(struct draft *d, const char *place, int step)
{
	double along = size(d, 15, 150), across = size(d, 60, 3.2 * d->run);
	double from = once_in(d, 2) ? 0 : size(d, 51, d->run - 51);
	if (!once_in(d, 4))
		along = fmin(along, d->wall_gap);
	double left = (d->steps - step + 1) * d->run + d->nosing - from;
	int treads = dice_count(&d->dice, 1, 3);
	if (once_in(d, 2))
		across = fmax(d->run * treads + d->nosing - from, 60);
	across = once_in(d, 8) ? across : fmin(across, left);
	d->passed = step + (int)((from + across) / d->run);
	text_add(&d->text, "    - step: %d\n      at: %s\n", step, place);
	put(d, 6, "along", fmax(along, 2));
	put(d, 6, "across", across);
	put(d, 6, "from", from);
	if (once_in(d, 6))
		put(d, 6, "height", size(d, 100, 2500));
}

/* With dice of its own, so that the seeds of before throw the stairs of before but for it. */
static bool has_breast(struct draft *d, const char *place, int step)
{
	struct dice before = d->dice;
	d->dice = dice_from(before.state);
	bool wanted = once_in(d, 2);
	if (wanted)
		add_breast(d, place, step);
	d->dice = before;
	return wanted;
}

/* A wall that a tread wraps. */
static void add_notch(struct draft *d, int step)
{
	bool end = d->wall_is_sawn && !(d->left_open && d->right_open) && !once_in(d, 3);
	const char *place = d->left_open ? "right" : "left";
	if (end && has_breast(d, place, step))
		return;
	text_add(&d->text, "    - step: %d\n      at: %s\n", step, end ? place : "back");
	put(d, 6, "along", size(d, 15, 150));
	put(d, 6, "across", size(d, 10, 80));
	maybe(d, 6, "height", 20, 2500);
	if (!end)
		put(d, 6, "from", size(d, 120, 350));
	else if (once_in(d, 2))
		put(d, 6, "from", once_in(d, 2) ? 0 : size(d, 10, 80));
}

static void add_notches(struct draft *d)
{
	if (!once_in(d, 3))
		return;
	text_add(&d->text, "  notches:\n");
	for (int step = d->has_start ? 2 : 1; step <= d->steps;
		step += dice_count(&d->dice, 1, d->steps))
		if (step > d->passed && (!d->chooses || step < d->steps - 3 || once_in(d, 8)))
			add_notch(d, step);
}

/* Where it can be: at every end that is open at the first step. */
static void add_start(struct draft *d)
{
	bool can = d->open_is_sawn && !d->open_risers && (d->left_starts || d->right_starts);
	if (!can || !once_in(d, 3))
		return;
	d->has_start = true;
	text_add(&d->text, "  starting_step:\n    ends: %s\n",
		d->left_starts && d->right_starts ? "both"
			: d->left_starts          ? "left"
						  : "right");
	if (once_in(d, 2))
		put(d, 4, "radius", size(d, 30, 110));
}

static void add_tenons(struct draft *d)
{
	int throw = dice_count(&d->dice, 0, 3);
	if (throw == 0)
		text_add(&d->text, "  tenons: no\n");
	if (throw != 1)
		return;
	text_add(&d->text, "  tenons:\n");
	put(d, 4, "thickness", size(d, 4, 12));
	maybe(d, 4, "width", 12, 40);
	maybe(d, 4, "length", 24, 70);
	maybe(d, 4, "pitch", 80, 400);
	maybe(d, 4, "first", 30, 120);
}

static void add_screws(struct draft *d)
{
	if (once_in(d, 3))
		return;
	text_add(&d->text, "  screws:\n    used: %s\n    per_bearing: %d\n    number: %d\n",
		once_in(d, 6) ? "no" : "yes", dice_count(&d->dice, 1, 4),
		dice_count(&d->dice, 6, 14));
	maybe(d, 4, "length", 25, 110);
	maybe(d, 4, "plug", 0, 16);
	maybe(d, 4, "plug_depth", 4, 15);
	maybe(d, 4, "first", 12, 90);
}

static void add_brads(struct draft *d)
{
	if (once_in(d, 3))
		return;
	text_add(&d->text, "  brads:\n    used: %s\n    gauge: %d\n", once_in(d, 6) ? "no" : "yes",
		dice_count(&d->dice, 15, 23));
	maybe(d, 4, "length", 20, 70);
	maybe(d, 4, "pitch", 50, 400);
	maybe(d, 4, "first", 15, 200);
}

/* With dice of their own, so that the seeds of before throw the stairs of before. */
static void add_fastenings(struct draft *d)
{
	struct dice before = d->dice;
	d->dice = dice_from(before.state);
	add_screws(d);
	add_brads(d);
	d->dice = before;
}

void draft_treads(struct draft *d)
{
	add_start(d);
	add_tenons(d);
	add_fastenings(d);
	add_notches(d);
}
