/*
 * One board of the cutting diagram.
 *
 *   2 boards 8" x 16'-0"
 *          +-+-----------+-----------+-----------+---------+
 *   5 3/16"| | T3 37 7/8"| T3 37 7/8"| T3 37 7/8"|:::::::::|
 *          +-+-------+---+------+----+---+-------+---------+
 *    1 1/2"| | T4 39 1/8"|  T4 39 1/8"   |::::::::::::::::::|
 *          +-+-----------+---------------+------------------+
 *   strip 2: ...   what its pieces were too small to say
 */
#ifndef SHEETS_CUTTING_BOARD_H
#define SHEETS_CUTTING_BOARD_H

#include "sheets/frame.h"

struct board_view {
	const struct stair *stair;
	const struct cut_group *group;
	const struct cut_board *board;
	double kerf, end_trim;
	double along, across; /* scales: paper over wood */
	double width;         /* of the column it stands in */
};

/* Room at the left for the widths of the strips. */
double board_margin(struct hand h);

/* How far down it reaches from its upper left corner; draws it when `at` is not NULL. */
double board_depth(struct hand h, const struct board_view *v);
void draw_board(struct hand h, const struct board_view *v, struct vec at);

#endif
