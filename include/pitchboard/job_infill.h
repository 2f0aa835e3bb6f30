/*
 * Infill as the job asks for it: balusters, and what else stands between rail and steps.
 */
#ifndef PITCHBOARD_JOB_INFILL_H
#define PITCHBOARD_JOB_INFILL_H

#include <stdbool.h>

struct node;

enum baluster_shape { BALUSTER_SQUARE, BALUSTER_ROUND };
enum baluster_top { BALUSTER_TOP_RAKED, BALUSTER_TOP_SQUARE };

/* What holds the ends that are cut to the rake; a square foot has its dowel. */
enum baluster_held { HELD_BY_BRADS, HELD_BY_SCREWS, HELD_BY_DOWELS };

struct job_balusters {
	const struct node *src;
	enum baluster_shape shape;
	double section;   /* along the stair; the diameter of a round one */
	double thickness; /* across the stair: sawn-flat ones are thinner than wide */
	int per_tread;    /* 0: by the largest gap */
	double largest_gap;
	enum baluster_top top;
	enum baluster_held held;
	double dowel, dowel_length; /* in a square foot, and where ends are held by dowels */
	double play;                /* of the oblong slot that takes the dowel */
};

enum infill_name { INFILL_PLAIN, INFILL_BRACED, INFILL_BARS, INFILL_PANEL };
enum row_lie { ROW_RAKED, ROW_LEVEL };

/* A row of cross pieces between braced balusters. */
struct job_row {
	const struct node *src;
	double height; /* plumb, to the middle of the cross pieces: raked from the nosing line,
			  level from the tread; on a floor both from it */
	enum row_lie lie;
};

/* Which edges of a panel are let into grooves. */
enum panel_held { PANEL_IN_RAILS, PANEL_IN_ENDS, PANEL_ALL_ROUND };

/* Screws in a row. */
struct job_screws {
	const struct node *src;
	int number;
	double pitch, first; /* at most; from the ends */
};

struct job_infill {
	const struct node *src;
	enum infill_name kind;
	bool shoe, subrail;           /* ploughed strips under and over the infill */
	double strip_width;           /* of both */
	double shoe_depth, shoe_lift; /* lift: plumb, nosing line to its underside, on treads */
	double subrail_depth;
	double plough;            /* depth of the groove in either */
	bool fillets;             /* between balusters in the plough */
	struct job_screws screws; /* of shoe and subrail */
	struct job_row *rows;     /* braced; none: two, by the program */
	int row_count;
	double cross_width, cross_thickness;
	double tenon_width, tenon_thickness, tenon_length; /* loose tenons of cross pieces */
	int bars;                                          /* 0: by the largest gap */
	double bar_width, bar_thickness;
	double post, post_spacing; /* between newels, where bars or panels are long */
	double panel_thickness, panel_gap;
	enum panel_held panel_held;
};

#endif
