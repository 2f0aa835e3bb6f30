/*
 * The keys of what the wood is cut from: boards on offer, and what the saw takes.
 */
#include "read/keys_table.h"

static const struct field board[] = {
	{ FIELD_TEXT, "species", LANDS(job_board, species), .most = 40,
		.help = "species, as under material", .absent = "any" },
	{ FIELD_LENGTH, "thickness", LANDS(job_board, thickness), .least = 3, .most = 250,
		.help = "thickness as sawn: an inch and a quarter is 5/4", .absent = "any" },
	{ FIELD_LENGTH, "width", LANDS(job_board, width), .required = true, .least = 20,
		.most = 2500, .help = "width of the board" },
	{ FIELD_LENGTHS, "lengths", LANDS(job_board, lengths), COUNTED(job_board, length_count),
		.required = true, .least = 300, .most = 12000, .help = "lengths on offer" },
	{ FIELD_NUMBER, "price", LANDS(job_board, price), .least = 0.01, .most = 100000,
		.help = "price of a board of the first length; the others in proportion",
		.absent = "the fewest boards are looked for, not the cheapest" },
	{ 0 },
};

static const struct group keys_board = { "stock.boards", sizeof(struct job_board), board,
	.keeps_node = true };

static const struct choice long_pieces[] = {
	{ "joined", LONG_PIECES_JOINED },
	{ "whole", LONG_PIECES_WHOLE },
	{ 0 },
};

/* Common practice, but where another source is named. */
static const struct field stock[] = {
	{ FIELD_GROUPS, "boards", LANDS(job_stock, boards), COUNTED(job_stock, board_count),
		.group = &keys_board, .help = "boards on offer",
		.absent = "every species, in the widths and lengths below" },
	{ FIELD_LENGTHS, "widths", LANDS(job_stock, widths), COUNTED(job_stock, width_count),
		.least = 20, .most = 1000, .usual = "6\", 8\", 10\"",
		.usual_mm = "150 mm, 200 mm, 250 mm", .label = "boards on offer, wide",
		.shown = SHOWN_CUTTING,
		.help = "widths of boards on offer, of species that boards does not name" },
	/* Hardwood is graded up to 16 ft: National Hardwood Lumber Association rules, from
	 * memory. */
	{ FIELD_LENGTHS, "lengths", LANDS(job_stock, lengths), COUNTED(job_stock, length_count),
		.least = 300, .most = 12000, .usual = "8', 10', 12', 14', 16'",
		.usual_mm = "2.5 m, 3 m, 3.5 m, 4 m, 4.5 m, 5 m, 5.5 m, 6 m",
		.label = "boards on offer, long", .shown = SHOWN_CUTTING,
		.help = "lengths of boards on offer, of species that boards does not name" },
	/* Panels of 4 by 8 ft, 2440 by 1220 mm: from memory. */
	{ FIELD_LENGTH, "sheet_width", LANDS(job_stock, sheet_width), .least = 300, .most = 2500,
		.usual = "48\"", .usual_mm = "1220 mm", .label = "plywood on offer, wide",
		.shown = SHOWN_CUTTING, .help = "width of plywood on offer" },
	{ FIELD_LENGTH, "sheet_length", LANDS(job_stock, sheet_length), .least = 300, .most = 6000,
		.usual = "96\"", .usual_mm = "2440 mm", .label = "plywood on offer, long",
		.shown = SHOWN_CUTTING, .help = "length of plywood on offer" },
	{ FIELD_CHOICE, "long_pieces", LANDS(job_stock, long_pieces), .choices = long_pieces,
		.usual = "joined", .label = "skirts and rails longer than a board",
		.shown = SHOWN_CUTTING,
		.help = "skirts, rails, shoes and subrails longer than any board: joined out of "
			"lengths (trim scarfed, rails bolted and dowelled), or whole and ordered "
			"so; what carries the stair is never joined" },
	{ FIELD_LENGTH, "kerf", LANDS(job_stock, kerf), .most = 10, .usual = "1/8\"",
		.usual_mm = "3 mm", .label = "the saw takes", .shown = SHOWN_CUTTING,
		.help = "what the saw takes, every cut" },
	{ FIELD_LENGTH, "end_trim", LANDS(job_stock, end_trim), .most = 300, .usual = "2\"",
		.usual_mm = "50 mm", .label = "trim at each end of a board", .shown = SHOWN_CUTTING,
		.help = "checked wood cut off at each end of a board" },
	/* All waste together is put at 15 to 30 per cent, from memory; trim, kerf and offcuts are
	 * counted here by themselves. */
	{ FIELD_NUMBER, "spare", LANDS(job_stock, spare), .most = 0.5, .usual = "0.1",
		.label = "share left over for knots and splits", .shown = SHOWN_CUTTING,
		.help = "share of a board's length left over for knots and splits" },
	{ FIELD_COUNT, "spare_every", LANDS(job_stock, spare_every), .least = 0, .most = 1000,
		.usual = "20", .label = "one spare piece for so many alike:",
		.shown = SHOWN_CUTTING, .help = "one spare piece for so many alike; 0: none" },
	{ FIELD_LENGTH, "rough_length", LANDS(job_stock, rough_length), .most = 200, .usual = "1\"",
		.usual_mm = "25 mm", .label = "rough longer by", .shown = SHOWN_CUTTING,
		.help = "a rough piece is longer than the finished one by" },
	{ FIELD_LENGTH, "rough_width", LANDS(job_stock, rough_width), .most = 50, .usual = "1/4\"",
		.usual_mm = "6 mm", .label = "rough wider by", .shown = SHOWN_CUTTING,
		.help = "a rough piece is wider than the finished one by" },
	{ FIELD_LENGTH, "rough_thickness", LANDS(job_stock, rough_thickness), .most = 30,
		.help = "planing off both faces together",
		.absent = "what the quarter's two faces lose: 3/16\" to 6/4, 1/4\" over it; 5 mm" },
	{ FIELD_LENGTH, "short_piece", LANDS(job_stock, short_piece), .least = 50, .most = 1000,
		.usual = "12\"", .usual_mm = "300 mm", .label = "short is less than",
		.shown = SHOWN_CUTTING,
		.help = "pieces shorter than this are called out as short; shorter than half of "
			"it, they are cut off a length of several" },
	{ 0 },
};

const struct group keys_stock = { "stock", sizeof(struct job_stock), stock, .keeps_node = true };
