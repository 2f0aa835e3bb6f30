/*
 * A job: one stair as the user wrote it down, with defaults filled in.
 *
 * Nothing in here is derived.  Lengths are millimetres; a length of 0 on an
 * optional key means "not given".  Every group keeps `src`, the node it was
 * read from, so that a later stage can still point at the job file:
 *
 *     diag_error(d, node_pos(job->stair.src, "width"), NULL, "...");
 *
 * The keys, their ranges, defaults and help are the tables in src/read/keys.c;
 * `pitchboard keys` prints them.
 */
#ifndef PITCHBOARD_JOB_H
#define PITCHBOARD_JOB_H

#include <stdbool.h>

#include "pitchboard/arena.h"
#include "pitchboard/diag.h"
#include "pitchboard/job_agreement.h"
#include "pitchboard/job_code.h"
#include "pitchboard/job_infill.h"
#include "pitchboard/job_landings.h"
#include "pitchboard/job_newels.h"
#include "pitchboard/job_rail.h"
#include "pitchboard/job_treads.h"
#include "pitchboard/length.h"

struct node;

/* Where in the job file `key` of this group stands; the group itself when the
 * key is NULL or not there (a default), nowhere when there is no group. */
struct pos node_pos(const struct node *group, const char *key);

/* Was the key written in the file (and not filled in from the default)? */
bool node_has(const struct node *group, const char *key);

/* Which sheets a default is written on when it was used; 0: none. */
enum shown_on {
	SHOWN_PLAN = 1 << 0,
	SHOWN_ELEVATION = 1 << 1,
	SHOWN_STRINGER = 1 << 2,
	SHOWN_CUTTING = 1 << 3,
};

/* A default that was used because the job file is silent. */
struct assumption {
	struct assumption *next;
	const char *label; /* "nosing projection": the key's own words */
	const char *value; /* as lettered: 1 1/8" */
	unsigned shown;    /* of enum shown_on */
};

struct job_about {
	const struct node *src;
	const char *number, *name, *client, *site, *drawn_by, *date; /* date: 2026-11-02 */
	const char *shop, *shop_address;
	enum units units;
	int fraction;
	int finest; /* the finest graduation on which some length of the job lies, typed or taken
		       by default; no key of its own */
};

struct revision {
	const struct node *src;
	const char *mark, *date, *by, *text;
};

/* Which measurements were taken in the house, by whom and when. */
struct job_measured {
	const struct node *src;
	const char *by, *date;
	const char *const *sizes; /* names of measurement keys: total_rise, width, ... or "all" */
	int size_count;
};

struct job_floors {
	const struct node *src;
	double total_rise;                 /* finished to finished; 0: the next one was given */
	double structural_rise;            /* structural floor to structural floor */
	double lower_finish, upper_finish; /* build-up over the structural floor */
};

struct job_opening {
	const struct node *src;
	double length; /* clear, along the stair, from the top header back to the opposite edge; 0:
			  no opening given, headroom is not checked */
	double width;  /* clear, across; 0: the stair's width */
	double floor_thickness; /* finished floor above to finished ceiling below */
	double ceiling_height;  /* lower finished floor to its ceiling; one of the two gives the
				   other */
	double upper_ceiling_height; /* upper finished floor to its ceiling; 0: not checked */
	double headroom;             /* wanted, measured plumb from the nosing line */
	const char *const *walls;    /* edges that a wall stands on, over the upper floor: "right",
					"left" going up, "foot", "head" beside the stair */
	int wall_count;
};

enum side_kind { SIDE_WALL, SIDE_OPEN };

/* Who makes the rail of an open side and what fills it. */
enum guard_maker { GUARD_HERE, GUARD_BY_OTHERS };

/* One side of the stair: a wall all the way, or open from one step to another
 * with wall before and after. */
struct job_side {
	const struct node *src;
	enum side_kind kind;
	int from_step;    /* first open step, counted from 1 at the bottom */
	int to_step;      /* last open step; 0: to the top */
	double wall_past; /* the wall before them runs on behind the face of the first open riser */
	enum guard_maker guard; /* by others: its newels alone are made here, and carry no rail */
};

enum segment_kind { SEGMENT_FLIGHT, SEGMENT_LANDING, SEGMENT_WINDER };

/* One link of the chain on plan. */
struct job_segment {
	const struct node *src;
	enum segment_kind kind;
	int risers;       /* 0: the program chooses */
	double run;       /* unit run, nosing to nosing; 0: the program chooses */
	double total_run; /* limit: the run available, first riser face to last riser face; 0: none
			   */
};

struct job_stair {
	const struct node *src;
	double width;                /* between the two sides: a wall counts at its finished face,
					an open side at the outer face of its stringer */
	struct job_side left, right; /* going up */
	struct job_segment *segments;
	int segment_count;
	double north; /* degrees, clockwise on plan from the way up the first flight; only where
			 the key is written */
};

/* The limits within which the program chooses risers and run. */
struct job_comfort {
	const struct node *src;
	double least_rise, most_rise, least_run, most_run;
	double step_least, step_most; /* twice rise plus run */
	double sum_least, sum_most;   /* rise plus run */
	double step_wanted;           /* twice rise plus run nearest to this wins */
};

enum stringer_kind { STRINGER_SAWTOOTH, STRINGER_MITRED, STRINGER_HOUSED };
enum foot_kind { FOOT_STRUCTURAL, FOOT_FINISHED };
enum head_kind { HEAD_BELOW_FLOOR, HEAD_FLUSH };

/* A stringer on one side, or the carriages between. */
struct job_stringer {
	const struct node *src;
	enum stringer_kind kind; /* not read for the middle ones: always sawtooth */
	double thickness;
	double width; /* of the plank; 0: the narrowest stock that leaves the throat */
};

struct job_stringers {
	const struct node *src;
	struct job_stringer wall, open, middle;
	int middle_count;   /* carriages between the outer two; -1: by spacing */
	double spacing;     /* most, centre to centre, when counted by spacing */
	double housed_span; /* treads let in at both ends: most that they and risers span */
	double wall_gap;    /* finished wall to the outer face of a sawtooth carriage */
	double least_throat;
	enum foot_kind foot;
	enum head_kind head;
	double block_thickness, block_width; /* thrust block let into the foot; 0: none */
	double margin;        /* housed: nosing line to top edge, square to the pitch */
	double housing_depth; /* housed */
	double wedge_taper;   /* housed: 12 means 1 in 12 */
	const double *stock_widths, *stock_lengths; /* on offer, ascending */
	int stock_width_count, stock_length_count;
	double end_trim; /* waste allowed at each end of a plank */
};

struct job_material {
	const struct node *src;
	const char *treads, *risers, *stringers, *balustrade; /* species */
	const char *newels, *rail, *balusters; /* of the balustrade; as that when not said */
	const char *panels;                    /* as balusters */
	const char *carriages;                 /* sawtooth ones; as stringers */
	const char *skirts, *mouldings;        /* as risers, as treads */
	const char *riser_bars;                /* as treads */
	const char *finish;
};

/* Which full-size templates are drawn. */
enum templates_kind { TEMPLATES_ALL, TEMPLATES_STRINGERS, TEMPLATES_NONE };

struct job_sheets {
	const struct node *src;
	const char *paper;          /* row of templates/papers.yaml */
	const char *template_paper; /* for tiled templates */
	const char *set;            /* row of templates/sets/ */
	enum templates_kind templates;
	/* measured over nominal length, 0.97 to 1.03: along the longer side of the paper, and
	 * along the shorter */
	double printer_x, printer_y;
};

/* Boards of one width on offer. */
struct job_board {
	const struct node *src;
	const char *species; /* "": any */
	double thickness;    /* as sawn; 0: any */
	double width;
	const double *lengths;
	int length_count;
	double price; /* of the first length, the others in proportion; 0: not known */
};

/* Skirts, rails, shoes and subrails longer than any board on offer. */
enum long_pieces { LONG_PIECES_JOINED, LONG_PIECES_WHOLE };

/* What the pieces are cut from, and what is lost on the way. */
struct job_stock {
	const struct node *src;
	struct job_board *boards;
	int board_count;
	const double *widths, *lengths; /* on offer, of species that no board names */
	int width_count, length_count;
	double sheet_width, sheet_length; /* of plywood */
	enum long_pieces long_pieces;
	double kerf;
	double end_trim; /* at each end */
	double spare;    /* share of a board's length left over for knots and splits */
	int spare_every; /* one piece more for so many alike; 0: none */
	double rough_length, rough_width, rough_thickness; /* more than finished; thickness 0: by
							      the table of nominal sizes */
	double short_piece;                                /* what is shorter is called out */
};

struct job {
	const struct node *src;
	const char *file;
	struct job_about about;
	struct revision *revisions;
	int revision_count;
	struct job_measured measured;
	struct job_floors floors;
	struct job_landings landings;
	struct job_opening opening;
	struct job_stair stair;
	struct job_comfort comfort;
	struct job_stringers stringers;
	struct job_treads treads;
	struct job_risers risers;
	struct job_mouldings mouldings;
	struct job_skirts skirts;
	struct job_newels newels;
	struct job_rail rail;
	struct job_wall_rail *wall_rails;
	int wall_rail_count;
	struct job_balusters balusters;
	struct job_infill infill;
	struct job_material material;
	struct job_code code;
	struct job_stock stock;
	struct job_agreement agreement;
	struct job_sheets sheets;
	const struct assumption *assumptions;
	const char *fingerprint; /* of the file's bytes: 12 hex digits */
};

/* Text to job.  `text` is the whole file, NUL-terminated and without a zero
 * byte inside; it must outlive the job.  NULL after any error; every problem
 * found is in `d`. */
const struct job *job_read(struct arena *a, const char *text, struct diags *d);

/* One key a line, defaults filled in: for goldens, bug reports and `--dump`. */
const char *job_dump(struct arena *a, const struct job *job);

/* A key whose value is not the same in two jobs, each as lettered there. */
struct key_change {
	struct key_change *next;
	const char *path;     /* "treads.nosing", "stair.segments[1].run" */
	const char *words;    /* "treads, nosing", "flight 1, run" */
	const char *was, *is; /* "": that job has no such entry in a list */
};

/* In the order of the tables of keys; NULL when the jobs say the same. */
const struct key_change *job_compare(struct arena *a, const struct job *was, const struct job *is);

/* The value of a key in words, by the path of struct key_change: "eased" for
 * "treads.nosing_profile", "10\"" for "stair.segments[1].run"; "" where there is none. */
const char *job_value_words(struct arena *a, const struct job *job, const char *path);

/* Where the key of such a path stands in the job file; its innermost group that does, when the key
 * is not written; nowhere (line 0) when none is. */
struct pos job_pos(const struct job *job, const char *path);

static inline struct lettering job_lettering(const struct job *job)
{
	return (struct lettering){ job->about.units, job->about.fraction, job->about.finest };
}

/* A radius is half of a thickness: half of a whole graduation is lettered whole. */
static inline struct lettering job_radius_lettering(const struct job *job)
{
	struct lettering l = job_lettering(job);

	l.fraction = l.fraction == 1 || (l.units == UNITS_INCHES && l.fraction < 64)
		? 2 * l.fraction
		: l.fraction;
	return l;
}

/* How a message names the mend: "write treads.nosing: 1 1/4\"", no less or no more than so much;
 * figures are lettered on the side on which it holds. */
static inline const char *job_write_least(struct arena *a, const struct job *job, const char *path,
	double mm)
{
	return arena_printf(a, "write %s: %s", path, length_say_least(a, job_lettering(job), mm));
}

static inline const char *job_write_most(struct arena *a, const struct job *job, const char *path,
	double mm)
{
	return arena_printf(a, "write %s: %s", path, length_say_most(a, job_lettering(job), mm));
}

/* Finished floor to finished floor, whichever rise was given; 0 when none could be read. */
double job_total_rise(const struct job *job);

/* The day these drawings are of: that of the newest revision, where the job's own is older; "". */
const char *job_date(const struct job *job);

/* Are treads let into closed stringers at both ends, and span from one to the other with no word
 * of carriages? */
bool job_treads_span(const struct job *job);

/* Carriages between the outer two stringers: as many as the job says, else as its spacing asks, or
 * as treads need that span; and how far apart they stand then, centre to centre. */
int job_carriages(const struct job *job);
int job_carriages_by_spacing(const struct job *job);
double job_carriage_spacing(const struct job *job);

/* Thickness of the finished board in front of an open side's carriage; 0: there is none. */
double job_open_skirt(const struct job *job);

/* How far the stringer of an open side stands in from its limit: behind that board, and behind the
 * plain skirt of a wall that it runs along for some steps. */
double job_open_inset(const struct job *job, const struct job_side *side);

/* Does a wall take over behind the last open step of an open side?  One that is open to the last
 * step of all is open to the top; where the program chooses the risers, that is not known yet. */
bool job_side_ends(const struct job *job, const struct job_side *side);

/* Was this measurement ("total_rise", "width", "opening_length", ...) marked as measured on site?
 * The width of a stair that stands free is chosen and wants no measuring. */
bool job_is_measured(const struct job *job, const char *size);

/* Every site measurement of the job that is given but not marked as measured; the count. */
int job_unmeasured(struct arena *a, const struct job *job, const char *const **names);

/* Is the side open, and its guard made here, or by others? */
static inline bool side_has_guard(const struct job_side *side, enum guard_maker maker)
{
	return side->kind == SIDE_OPEN && side->guard == maker;
}

/* Is any side so? */
static inline bool job_has_guard(const struct job *job, enum guard_maker maker)
{
	return side_has_guard(&job->stair.left, maker) || side_has_guard(&job->stair.right, maker);
}

#endif
