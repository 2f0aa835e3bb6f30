/*
 * A stair as sizes that can be set one by one, and the job that it is written as.
 */
#ifndef TESTS_RULES_RECIPE_H
#define TESTS_RULES_RECIPE_H

#include <math.h>

#include "rules_changes.h"

/* Sizes of a job, in millimetres; a change to the finished parts for what no job can be wrong in.
 */
struct recipe {
	double total, run, width, nosing, radius, tread, opening;
	int risers, from_step, middle_count; /* -1: by spacing */
	bool left_open, right_open, open_risers, newels;
	double rail_width, rail_height, baluster, largest_gap;
	double plank_width, plank_thickness;
	double floor_rail;        /* height of a level rail at the upper floor; 0: there is none */
	double floor_rail_length; /* newel to newel */
	double chamfer;           /* of nosings, instead of the radius */
	const char *edge_walls;   /* edges of the opening that walls stand on; NULL: not said */
	double landing;           /* depth of the clear floor before and behind */
	double landing_width;
	double hinge; /* of a door in the left-hand wall of either landing, from the riser's face;
			 its leaf lies away from the stair */
	bool shoe;    /* a bottom rail on the nosing line */
	change_fn *change;
	double by;
};

#define RISER_BOARD_THICKNESS 18.0
#define FLOOR_THICKNESS 300.0
#define WALL_GAP 38.0
#define NEWEL 90.0
#define BESIDE_STAIR 250.0

static const struct recipe plain = {
	.total = 14 * 190,
	.run = 254,
	.width = 1000,
	.nosing = 25,
	.radius = 10,
	.tread = 32,
	.opening = 3500,
	.risers = 14,
	.from_step = 1,
	.middle_count = -1,
	.right_open = true,
	.newels = true,
	.rail_width = 57,
	.rail_height = 930,
	.baluster = 32,
	.largest_gap = 95,
	.plank_width = 320,
	.plank_thickness = 45,
	.floor_rail_length = 1500,
	.landing = 1500,
	.landing_width = 1500,
	.hinge = 700,
};

static inline const char *side_words(struct arena *a, bool open, int from_step)
{
	return open ? arena_printf(a, "{side: open, from_step: %d}", from_step) : "wall";
}

/* Along the opening's edge, back over the flight. */
static inline const char *level_run(struct arena *a, const struct recipe *r)
{
	if (r->floor_rail <= 0)
		return "";
	return arena_printf(a,
		", level_runs: [{side: right, direction: back, length: %.4f, height: %.4f}]",
		r->floor_rail_length, r->floor_rail);
}

static inline const char *walls_words(struct arena *a, const struct recipe *r)
{
	return r->edge_walls ? arena_printf(a, ", walls: [%s]", r->edge_walls) : "";
}

static inline const char *landings_words(struct arena *a, const struct recipe *r)
{
	const char *one = arena_printf(a,
		"{depth: %.4f, width: %.4f, doors: [{wall: left, hinge: %.4f, leaf: 700}]}",
		r->landing, r->landing_width, r->hinge);

	return arena_printf(a, "foot: %s, head: %s", one, one);
}

/* Lengths to the thousandth of a millimetre. */
static inline const char *recipe_job(struct arena *a, const struct recipe *r)
{
	const char *middle =
		r->middle_count < 0 ? "" : arena_printf(a, ", middle_count: %d", r->middle_count);
	const char *yes_no = r->newels ? "yes" : "no";

	return arena_printf(a,
		"pitchboard: 1\njob: {name: Constructed, units: millimetres}\n"
		"floors: {total_rise: %.4f}\nlandings: {%s}\n"
		"opening: {length: %.4f, width: %.4f, floor_thickness: %.1f%s}\n"
		"stair: {width: %.4f, left: %s, right: %s, segments: [{risers: %d, run: %.4f}]}\n"
		"stringers: {least_throat: 40, wall_gap: %.1f%s, wall: {kind: sawtooth, "
		"thickness: %.4f, width: %.4f}, middle: {thickness: %.4f, width: %.4f}, open: "
		"{kind: sawtooth, thickness: %.4f, width: %.4f}}\n"
		"treads: {thickness: %.4f, nosing: %.4f, %s: %.4f, side_overhang: 35}\n"
		"risers: {kind: %s}\n"
		"newels: {section: %.1f, bottom: %s, top: %s}\n"
		"rail: {width: %.4f, depth: 60, height: %.4f%s}\n"
		"balusters: {section: %.4f, largest_gap: %.4f}\n"
		"infill: {kind: plain, shoe: %s}\n",
		r->total, landings_words(a, r), r->opening,
		r->width + (r->floor_rail > 0 ? BESIDE_STAIR : 0), FLOOR_THICKNESS,
		walls_words(a, r), r->width, side_words(a, r->left_open, r->from_step),
		side_words(a, r->right_open, r->from_step), r->risers, r->run, WALL_GAP, middle,
		r->plank_thickness, r->plank_width, r->plank_thickness, r->plank_width,
		r->plank_thickness, r->plank_width, r->tread, r->nosing,
		r->chamfer > 0 ? "nosing_profile: chamfer, nosing_chamfer" : "nosing_radius",
		r->chamfer > 0 ? r->chamfer : r->radius,
		r->open_risers ? "open" : "board, thickness: 18", NEWEL, yes_no, yes_no,
		r->rail_width, r->rail_height, level_run(a, r), r->baluster, r->largest_gap,
		r->shoe ? "yes" : "no");
}

#endif
