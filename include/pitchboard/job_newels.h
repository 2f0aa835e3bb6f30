/*
 * What a job says of its newels and their caps.
 */
#ifndef PITCHBOARD_JOB_NEWELS_H
#define PITCHBOARD_JOB_NEWELS_H

#include <stdbool.h>

struct node;

/* How a newel's post is made. */
enum newel_build {
	NEWEL_SOLID,
	NEWEL_GLUED,    /* of plies, face to face */
	NEWEL_PANELLED, /* a core with strips on its corners and cross rails between them */
};

/* What holds a newel that stands on a floor; the bolt goes through the plate. */
enum floor_fixing { FLOOR_FIXING_BOLT, FLOOR_FIXING_PLATE, FLOOR_FIXING_NONE };

/* One ring of cross rails round a panelled newel. */
struct job_panel_rail {
	const struct node *src;
	double at; /* share of the way from the foot, 0, to the top, 1 */
	double height;
};

struct job_newel_panels {
	const struct node *src;
	double strip_width, strip_thickness; /* of the strips; the rails are as thick */
	double arris;                        /* chamfer on the core's corners */
	struct job_panel_rail *rails;        /* none: one at the foot, one at the top */
	int rail_count;
};

enum cap_kind { CAP_NONE, CAP_FLAT, CAP_CHAMFERED, CAP_PYRAMID };
enum cap_build { CAP_BLOCK, CAP_MITRED };
enum cap_on { CAP_ON_ALL, CAP_ON_BOTTOM, CAP_ON_TOP };

struct job_newel_cap {
	const struct node *src;
	enum cap_kind kind;
	enum cap_build build; /* of a pyramid */
	enum cap_on on;
	double overhang;      /* beyond the post, all round */
	double thickness;     /* of its square edge; of the plate under a mitred one */
	double slope_degrees; /* of the pyramid's faces, from level */
	double rise;          /* instead: square edge to the point; 0: by the slope */
	double shoulder;      /* ledge round the pyramid's foot; 0: none */
	double chamfer;
	double board;         /* the four pieces of a mitred pyramid: their thickness */
	double quarter_round; /* moulding under the cap; 0: none */
};

struct job_newels {
	const struct node *src;
	double section;    /* square, over all */
	double above_rail; /* top of the post, under its cap, over the top of the rail, at the face
			      that the rail meets */
	bool bottom, top;  /* is there one? */
	enum newel_build build;
	double ply_stock, ply_planed; /* boards that glued ones are made of: as bought, and the most
					 that they plane to */
	double let_in;                /* bottom ones: into what the stringers stand on */
	enum floor_fixing floor_fixing;
	struct job_newel_panels panels;
	struct job_newel_cap cap;
};

#endif
