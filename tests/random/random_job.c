#include "random/random_job.h"

#include <string.h>

#include "random/draft.h"

static void add_head(struct draft *d)
{
	static const char *const inch_papers[] = { "Letter", "Tabloid", "ARCH C", "ARCH D" };
	static const char *const papers[] = { "A4", "A3", "A2", "A1" };
	int paper = dice_count(&d->dice, 0, 3);
	text_add(&d->text, "pitchboard: 1\njob:\n  name: Made up by dice\n");
	text_add(&d->text, "  units: %s\n", d->inches ? "inches" : "millimetres");
	text_add(&d->text, "sheets:\n  paper: %s\n",
		d->inches ? inch_papers[paper] : papers[paper]);
}

/* Headroom may be too short, but never so short that rail and newels stand in the floor above. */
static void add_opening(struct draft *d)
{
	double total = d->rise * d->risers, thickness = size(d, 200, 380);
	double headroom = size(d, 1450, 2300);
	if (total < 1500 || once_in(d, 4))
		return;
	text_add(&d->text, "opening:\n");
	d->opening = (headroom + thickness) * d->run / d->rise + 100;
	put(d, 2, "length", d->opening);
	if (once_in(d, 3))
		put(d, 2, "ceiling_height", total - thickness);
	else
		put(d, 2, "floor_thickness", thickness);
	maybe(d, 2, "upper_ceiling_height", 2200, 2700);
	/* wider than any stair of add_stair, or it would be refused; with room for a guard */
	double width = size(d, 1500, 1650);
	if (d->level_runs || once_in(d, 2))
		put(d, 2, "width", width);
}

static void add_floors(struct draft *d)
{
	double lower = once_in(d, 2) ? size(d, 5, 40) : 0;
	double upper = once_in(d, 2) ? size(d, 5, 40) : 0;
	double total = d->rise * d->risers;
	text_add(&d->text, "floors:\n");
	if (once_in(d, 3)) {
		put(d, 2, "structural_rise", total + lower - upper);
		put(d, 2, "lower_finish", lower);
		put(d, 2, "upper_finish", upper);
		return;
	}
	put(d, 2, "total_rise", total);
	if (lower > 0)
		put(d, 2, "lower_finish", lower);
	if (upper > 0)
		put(d, 2, "upper_finish", upper);
}

/* Whether others guard it is thrown by dice of its own, so that the seeds of before throw the
 * stairs of before. */
static void add_side(struct draft *d, const char *name, bool open)
{
	struct dice own = dice_from(d->dice.state);
	text_add(&d->text, "  %s:\n    side: %s\n", name, open ? "open" : "wall");
	if (open && dice_once_in(&own, 12))
		text_add(&d->text, "    guard: by_others\n");
	if (!open || d->steps < 4)
		return;
	int from = once_in(d, 2) ? dice_count(&d->dice, 1, d->steps - 2) : 1;
	*(strcmp(name, "left") == 0 ? &d->left_starts : &d->right_starts) = from == 1;
	if (from > 1)
		text_add(&d->text, "    from_step: %d\n", from);
	if (from > 1 && once_in(d, 3))
		put(d, 4, "wall_past", size(d, 5, 60));
	if (once_in(d, 4))
		text_add(&d->text, "    to_step: %d\n", dice_count(&d->dice, from + 1, d->steps));
}

static void add_stair(struct draft *d)
{
	text_add(&d->text, "stair:\n");
	put(d, 2, "width", size(d, 700, 1500));
	add_side(d, "left", d->left_open);
	add_side(d, "right", d->right_open);
	if (once_in(d, 4) && d->steps > 8) {
		d->chooses = true;
		text_add(&d->text, "  segments:\n    - kind: flight\n");
		put(d, 6, "total_run", d->run * d->steps + 300);
		return;
	}
	text_add(&d->text, "  segments:\n    - kind: flight\n      risers: %d\n", d->risers);
	put(d, 6, "run", d->run);
}

static const char *kind_of(struct draft *d, bool open)
{
	int throw = dice_count(&d->dice, 0, open ? 2 : 1);
	if (throw == 2 && !d->open_risers)
		return "mitred";
	return throw == 1 ? "housed" : "sawtooth";
}

/* Now and then wide, so that a chimney breast has room before the carriage: dice of its own, so
 * that the seeds of before throw the stairs of before. */
static void add_wall_gap(struct draft *d)
{
	struct dice own = dice_from(d->dice.state);
	double gap = size(d, 0, 60), wide = dice_size(&own, 60, 200, d->inches ? 25.4 / 16 : 1);
	bool given = once_in(d, 2);
	if (dice_once_in(&own, 8)) {
		gap = wide;
		given = true;
	}
	d->wall_gap = given ? gap : 38;
	if (given)
		put(d, 2, "wall_gap", gap);
}

static void add_stringers(struct draft *d, bool flush)
{
	const char *wall = kind_of(d, false);
	d->wall_is_sawn = strcmp(wall, "sawtooth") == 0;
	text_add(&d->text, "stringers:\n  wall: { kind: %s }\n", wall);
	const char *open = kind_of(d, true);
	d->open_is_sawn = strcmp(open, "housed") != 0;
	d->open_is_rough = strcmp(open, "sawtooth") == 0;
	text_add(&d->text, "  open:\n    kind: %s\n", open);
	maybe(d, 4, "thickness", 25, 50);
	/* counted by spacing, or so many, which seldom stand close enough for one thrown beside it
	 */
	if (once_in(d, 3))
		text_add(&d->text, "  middle_count: %d\n", dice_count(&d->dice, 0, 3));
	else
		maybe(d, 2, "spacing", 250, 600);
	add_wall_gap(d);
	put(d, 2, "least_throat", size(d, 60, 110));
	text_add(&d->text, "  foot: %s\n", once_in(d, 2) ? "structural_floor" : "finished_floor");
	text_add(&d->text, "  head: %s\n", flush ? "flush" : "below_floor");
	maybe(d, 2, "margin", 25, 60);
	maybe(d, 2, "housing_depth", 8, 18);
	maybe(d, 2, "end_trim", 0, 50);
	if (once_in(d, 2))
		text_add(&d->text, "  wedge_taper: %d\n", dice_count(&d->dice, 10, 16));
	if (once_in(d, 2)) {
		text_add(&d->text, "  thrust_block:\n");
		put(d, 4, "thickness", size(d, 25, 45));
		put(d, 4, "width", size(d, 60, 100));
	}
	text_add(&d->text, "  stock_widths: [%s]\n",
		d->inches ? "9 1/4\", 11 1/4\", 13 1/4\", 15 1/4\", 17 1/4\", 19 1/4\""
			  : "220 mm, 245 mm, 270 mm, 295 mm, 320 mm, 360 mm, 400 mm, 460 mm");
}

static void add_treads(struct draft *d)
{
	text_add(&d->text, "treads:\n");
	put(d, 2, "thickness", d->tread);
	put(d, 2, "nosing", d->nosing);
	draft_nosing(d);
	if (once_in(d, 2))
		put(d, 2, "strip_width", size(d, 46, 110));
	maybe(d, 2, "return_past", 0, 60);
	maybe(d, 2, "scribe", 0, 6);
	maybe(d, 2, "landing_bearing", 40, 140);
	maybe(d, 2, "newel_fit", 0, 3);
	maybe(d, 2, "widest_board", 60, 200);
	draft_treads(d);
	if (d->open_risers) {
		text_add(&d->text, "risers:\n  kind: open\n");
		if (once_in(d, 2) && d->nosing - d->under > 7) {
			put(d, 2, "bar", size(d, 20, 80));
			put(d, 2, "bar_thickness", 7);
		}
		return;
	}
	text_add(&d->text, "risers:\n");
	put(d, 2, "thickness", d->riser);
}

static void add_panels(struct draft *d)
{
	text_add(&d->text, "  panels:\n");
	put(d, 4, "strip_width", size(d, 18, 30));
	put(d, 4, "strip_thickness", size(d, 8, 14));
	maybe(d, 4, "arris", 0, 3);
	if (once_in(d, 3))
		return;
	int n = dice_count(&d->dice, 1, 4);
	text_add(&d->text, "    rails:\n");
	for (int i = 0; i < n; i++) {
		double at = n > 1 ? (double)i / (n - 1) : dice_count(&d->dice, 0, 10) / 10.0;
		text_add(&d->text, "      - at: %.3f\n", at);
		maybe(d, 8, "height", 30, 120);
	}
}

static void add_cap(struct draft *d, double nosing)
{
	static const char *const kinds[] = { "flat", "chamfered", "pyramid", "pyramid" };
	static const char *const on[] = { "all", "bottom", "top" };
	int kind = dice_count(&d->dice, 0, 3);
	double overhang = size(d, 0, fmin(nosing, 15));
	text_add(&d->text, "  cap:\n    kind: %s\n    on: %s\n", kinds[kind],
		on[dice_count(&d->dice, 0, 2)]);
	put(d, 4, "overhang", overhang);
	put(d, 4, "quarter_round", once_in(d, 2) ? 0 : overhang);
	put(d, 4, "thickness", size(d, 12, 30));
	maybe(d, 4, "chamfer", 2, 10);
	maybe(d, 4, "shoulder", 0, 8);
	if (kind == 3) {
		text_add(&d->text, "    build: mitred\n");
		put(d, 4, "board", size(d, 8, 12));
	}
	if (once_in(d, 3))
		put(d, 4, "rise", size(d, 12, 40));
	else
		text_add(&d->text, "    slope: %d\n", dice_count(&d->dice, 15, 45));
}

static void add_newels(struct draft *d)
{
	static const char *const builds[] = { "solid", "glued", "panelled" };
	static const char *const fixings[] = { "bolt", "plate", "none" };
	int build = dice_count(&d->dice, 0, 2);
	text_add(&d->text, "newels:\n  build: %s\n", builds[build]);
	if (build == 2)
		put(d, 2, "section", size(d, 90, 150));
	else
		maybe(d, 2, "section", 60, 150);
	if (once_in(d, 4))
		text_add(&d->text, "  bottom: no\n");
	if (once_in(d, 4))
		text_add(&d->text, "  top: no\n");
	put(d, 2, "above_rail", size(d, 30, 150));
	maybe(d, 2, "ply_planed", 18, 60);
	if (once_in(d, 4))
		put(d, 2, "let_in", size(d, 0, 100));
	if (once_in(d, 2))
		text_add(&d->text, "  floor_fixing: %s\n", fixings[dice_count(&d->dice, 0, 2)]);
	if (build == 2)
		add_panels(d);
	if (once_in(d, 2))
		add_cap(d, d->nosing);
}

static void add_balustrade(struct draft *d)
{
	add_newels(d);
	draft_rail(d);
	draft_wall_rails(d);
	draft_infill(d);
}

static void add_code(struct draft *d)
{
	static const char *const editions[] = { "irc-2018", "irc-2024", "ibc-2021", "nbc-2020",
		"approved-document-k-2013", "ncc-2022", "din-18065-2020" };
	int edition = dice_count(&d->dice, 0, 13);
	if (edition < 7)
		text_add(&d->text, "code: %s\n", editions[edition]);
}

const char *random_job(struct arena *a, uint64_t seed)
{
	struct draft d = { .text = { .arena = a }, .dice = dice_from(seed) };
	d.inches = once_in(&d, 2);
	bool flush = once_in(&d, 4);
	d.risers = once_in(&d, 8) ? dice_count(&d.dice, 2, 4) : dice_count(&d.dice, 5, 19);
	d.steps = flush ? d.risers : d.risers - 1;
	d.rise = size(&d, 150, 210);
	d.run = size(&d, 215, 330);
	d.tread = size(&d, 20, 45);
	d.nosing = once_in(&d, 8) ? 0 : size(&d, 12, 35);
	d.riser = size(&d, 12, 24);
	d.open_risers = once_in(&d, 6);
	d.right_open = !once_in(&d, 3);
	d.left_open = once_in(&d, 3);
	d.level_runs = once_in(&d, 4);
	add_head(&d);
	add_floors(&d);
	add_opening(&d);
	add_stair(&d);
	add_stringers(&d, flush);
	add_treads(&d);
	draft_mouldings(&d);
	draft_skirts(&d);
	add_balustrade(&d);
	add_code(&d);
	draft_stock(&d);
	return text_chars(&d.text);
}
