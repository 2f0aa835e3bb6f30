/*
 * What a job says of treads, risers, skirts and mouldings.
 */
#ifndef PITCHBOARD_JOB_TREADS_H
#define PITCHBOARD_JOB_TREADS_H

#include <stdbool.h>

struct node;

/* The edge of a tread. */
enum nosing_kind {
	NOSING_EASED,      /* both arrises rounded */
	NOSING_FULL_ROUND, /* half a circle */
	NOSING_HALF_ROUND, /* the upper arris rounded, square below */
	NOSING_CHAMFER,    /* both arrises at 45 degrees, their own arrises rounded */
};

/* Where a tread wraps a wall. */
enum notch_at { NOTCH_LEFT, NOTCH_RIGHT, NOTCH_BACK };

/* A wall that stands in the way of a tread, as measured on site: the tread is cut out round it with
 * the scribing allowance, and so are those behind that it passes. */
struct job_notch {
	const struct node *src;
	int step; /* the lowest that it stands in */
	enum notch_at at;
	double along;  /* of the wall, across the stair: at an end, in from that side */
	double across; /* front to back: at the back, forward from the face of the riser above */
	double from;   /* at an end, front of the nosing back to the wall (not given: it stands in
			  the back corner); at the back, left-hand side to the wall */
	double height; /* of the wall over this tread; 0: to the upper floor */
};

/* A first tread that reaches out past the stringer, its end rounded. */
enum start_ends { START_NONE, START_LEFT, START_RIGHT, START_BOTH };

struct job_starting {
	const struct node *src;
	enum start_ends ends;
	double projection; /* beyond the outer face of the stringer; 0: as the radius */
	double radius;     /* of the corners of its end; 0: half its depth, a half round */
};

/* Loose tenons between the pieces of a tread. */
struct job_tenons {
	const struct node *src;
	bool used;
	double thickness, width, length;
	double pitch; /* at most */
	double first; /* end of the joint to the first one's middle */
};

/* Screws that hold a tread on what is cut out for it. */
struct job_tread_screws {
	const struct node *src;
	bool used;
	int number;    /* as sold: 8 */
	double length; /* 0: by the thickness of the tread */
	int per_bearing;
	double plug, plug_depth; /* over their heads; 0: none */
	double first;            /* risers to the outer ones */
};

/* Brads in a row. */
struct job_brads {
	const struct node *src;
	bool used;
	int gauge;
	double length; /* 0: by the wood */
	double pitch;  /* at most */
	double first;  /* end of the row to the first one */
};

struct job_treads {
	const struct node *src;
	double thickness;
	double nosing; /* projection beyond the riser face */
	enum nosing_kind nosing_profile;
	double nosing_radius;  /* of the profile's rounds */
	double nosing_chamfer; /* along either face; 0 unless chamfered */
	double waste_margin;   /* sawn chamfer to finished edge */
	double side_overhang;  /* beyond the outer face of an open stringer */
	double strip_width;    /* front and return strips, at least side_overhang */
	double return_past;    /* the return runs on this far behind the face of the riser above */
	double scribe;         /* less than to the wall */
	double newel_fit;      /* room left round a newel that a tread is cut out for */
	double widest_board;   /* that a body is glued up from */
	struct job_tenons tenons;
	struct job_tread_screws screws;
	struct job_brads brads;
	struct job_starting starting;
	struct job_notch *notches;
	int notch_count;
	double landing_bearing; /* nosing piece at the upper floor: width behind the top riser's
				   back */
};

enum riser_kind { RISER_BOARD, RISER_OPEN };

struct job_risers {
	const struct node *src;
	enum riser_kind kind;
	double thickness; /* 0 when open */
	double bar;       /* open: a bar of this height under the front of each tread; 0: none */
	double bar_thickness;
};

enum skirt_kind {
	SKIRT_NONE,
	SKIRT_PLAIN,     /* behind treads and risers, which butt against its face */
	SKIRT_CUT_ROUND, /* over their ends, scribed to them */
};

enum open_skirt_kind {
	OPEN_SKIRT_NONE,
	OPEN_SKIRT_MITRED, /* before a rough carriage, under the treads, mitred to the risers */
};

struct job_skirts {
	const struct node *src;
	enum skirt_kind wall;
	enum open_skirt_kind open;
	double thickness;
	double height;    /* nosing line to upper edge, square to the pitch */
	double baseboard; /* height of the baseboards it dies into */
	double cover;     /* open: how far it comes down lower than the carriage */
};

enum moulding_kind {
	MOULDING_NONE,
	MOULDING_COVE,   /* hollowed by a quarter of a circle */
	MOULDING_SCOTIA, /* by two arcs */
};

struct job_mouldings {
	const struct node *src;
	enum moulding_kind under_nosing;
	double under_width, under_height; /* out from the riser, down from the tread */
	enum moulding_kind back;
	double back_size; /* both ways */
};

#endif
