/*
 * Lists: what is cut, out of what, with which settings of the saw, and what is bought.
 *
 * All of them are counted from the parts, none is kept beside them.  A list is
 * text in rows and columns, so that sheet, terminal, CSV and JSON say the same.
 */
#ifndef PITCHBOARD_LIST_H
#define PITCHBOARD_LIST_H

#include "pitchboard/change.h"
#include "pitchboard/drawing.h"
#include "pitchboard/part.h"

/* ---- blanks ---- */

/* What is sawn out of a board for a part: one kind a part.  A part that is glued up takes several
 * for one piece. */
struct blank {
	struct blank *next;
	const struct part *part;
	const char *species;
	enum stuff stuff;
	int each;   /* for one piece */
	int plies;  /* of these, face to face; 0 or 1: it is as thick as the piece */
	int gang;   /* so many pieces come out of one */
	int row;    /* so many are cut off one, end by end, which is glued up first where the piece
		     * is; 0: it is one piece */
	int pieces; /* as many as the part has places */
	int spares; /* pieces more */
	double length, width, thickness;  /* finished, along the grain first */
	bool is_turned;                   /* the part's own width lies in the board's thickness */
	double rough_length, rough_width; /* as sawn out of the board */
	double nominal;                   /* thickness of the board as it is bought */
	double nominal_width;             /* of lumber in standard sections; 0: it is ripped */
	bool is_short;                    /* finished shorter than what the job calls short */
};

/* So many are cut to length: whole pieces, glued up or not, or strips that several come out of. */
static inline int blank_sawn(const struct blank *b)
{
	int made = b->pieces + b->spares;

	return b->gang > 1 ? (made + b->gang - 1) / b->gang : made;
}

/* Out of so many lengths, each of them glued up where the piece is. */
static inline int blank_lengths(const struct blank *b)
{
	return b->row > 0 ? (blank_sawn(b) + b->row - 1) / b->row : blank_sawn(b);
}

static inline int blank_count(const struct blank *b)
{
	return b->each * blank_lengths(b);
}

/* The whole piece, glued up, as it lies in its boards. */
static inline struct part_size blank_finished(const struct blank *b)
{
	const struct part_size *p = &b->part->size;

	return b->is_turned ? (struct part_size){ b->length, p->thickness, p->width }
			    : (struct part_size){ b->length, p->width, p->thickness };
}

/* Of a part; what is bought by the piece has no blank, and lies as it is drawn. */
struct part_size blanks_finished(const struct blank *blanks, const struct part *p);

/* In the order of the marks; what is bought by the piece has none.  NULL in, NULL out. */
const struct blank *blanks_make(struct arena *a, const struct stair *s, const struct part *parts);

/* Volume of `count` rough blanks as it is paid for: nominal thickness, not below 1 in.
 * One board foot is 144 cubic inches. */
double board_feet(double nominal, double width, double length);

/* What plies so thick are planed to, and strips that several pieces come out of, to 1/64 in or 0.1
 * mm, and upwards: rounded down, many plies would not fill the piece, and the last one out of a
 * strip would be too thin; and how finely that is lettered, on every sheet. */
double ply_planed(enum units units, double exact);
struct lettering ply_lettering(const struct job *job);

/* What boards so wide are ripped to, rough or to be glued up edge to edge: as it is lettered, and
 * upwards, for a panel is trimmed. */
double board_ripped(const struct job *job, double exact);

/* ---- cutting ---- */

/* One piece in a strip. */
struct cut_piece {
	const struct blank *blank;
	int count; /* one after the other */
};

/* Ripped off over the whole length of the board, as wide as its widest piece. */
struct cut_strip {
	double width;
	double used; /* of its length, kerfs between the pieces counted */
	const struct cut_piece *pieces;
	int piece_count;
};

struct cut_board {
	double width, length;
	double end_trim; /* cut off at each end first */
	double price;    /* 0: not known */
	const struct cut_strip *strips;
	int strip_count;
	int count; /* so many alike */
};

enum cut_aim { CUT_FEWEST, CUT_CHEAPEST };

/* All boards of one species and thickness. */
struct cut_group {
	struct cut_group *next;
	const char *species;
	const char *name; /* of a moulding; "": by thickness alone */
	enum stuff stuff;
	double nominal, nominal_width; /* width 0: any */
	enum cut_aim aim;
	const struct cut_board *boards;
	int board_count; /* kinds; alike ones are one */
	int total;       /* boards */
	double price;
	double bound; /* no fewer boards, or no lower price, can do, cut in this way */
	bool is_proved;
	const struct cut_piece *misfits; /* longer or wider than any board */
	int misfit_count;
};

/* First ripped over the whole length into strips, which are then cut to length; `d` gets a warning
 * of every piece that fits no board.  NULL in, NULL out. */
const struct cut_group *cutting_make(struct arena *a, const struct stair *s,
	const struct blank *blanks, struct diags *d);

/* ---- lists as text ---- */

enum list_kind {
	LIST_TEXT,
	LIST_COUNT,
	LIST_LENGTH, /* lettered on paper; as a number of millimetres beside it in CSV and JSON */
	LIST_NUMBER,
};

struct list_column {
	const char *head; /* on paper */
	const char *key;  /* in CSV and JSON */
	enum list_kind kind;
	double most; /* of its width on paper; 0: as wide as it takes */
};

struct list_cell {
	const char *text;
	double number; /* of LIST_COUNT, LIST_LENGTH and LIST_NUMBER; NAN: none */
};

struct list {
	const char *name;  /* "cut": for the command line */
	const char *title; /* "Cut list" */
	const struct list_column *columns;
	int column_count;
	const struct list_cell *cells; /* row by row */
	int row_count;
	const char *const *notes; /* ended by NULL */
};

struct lists {
	const struct list *lists;
	int n;
};

/* How the cut list tells what must be made otherwise than in an earlier job. */
enum telling_changes {
	CHANGES_UNTOLD,
	CHANGES_BY_MARK,   /* the revision beside the marks of changed parts */
	CHANGES_BY_COLUMN, /* yes or no in a column of its own */
};

/* What all lists are made from; `sheets` and `templates` are looked through for those that show how
 * a part is made, and may be NULL, as `changes` may. */
struct list_sources {
	const struct stair *stair;
	const struct part *parts;
	const struct blank *blanks;
	const struct cut_group *cutting;
	const struct drawing *sheets, *templates;
	const struct change *changes;
	enum telling_changes telling;
};

struct lists lists_make(struct arena *a, const struct list_sources *from);

/* NULL when there is none of that name. */
const struct list *lists_find(struct lists l, const char *name);

/* For a terminal; RFC 4180, with a head line; one JSON object with a member a list. */
const char *list_text(struct arena *a, const struct list *l);
const char *list_csv(struct arena *a, const struct list *l);
const char *lists_json(struct arena *a, struct lists l);

#endif
