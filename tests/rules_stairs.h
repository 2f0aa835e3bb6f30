/*
 * Stairs made to measure: for a gauge and a value, a job in which that gauge must read that value.
 *
 * The arithmetic is the carpenter's own, from the sizes in the job; the gauges ask the solids.
 */
#ifndef TESTS_RULES_STAIRS_H
#define TESTS_RULES_STAIRS_H

#include "rules_recipe.h"

/* ---- one recipe a gauge ---- */

static inline double rise_in(const struct recipe *r)
{
	return r->total / r->risers;
}

static inline void make_riser_height(struct recipe *r, double v)
{
	r->total = v * r->risers;
}

static inline void make_tread_depth(struct recipe *r, double v)
{
	r->run = v;
}

/* One step planted half the difference too high: the riser under it gains what the next loses. */
static inline void make_riser_difference(struct recipe *r, double v)
{
	r->change = raise_step;
	r->by = v / 2;
}

static inline void make_tread_difference(struct recipe *r, double v)
{
	r->change = push_step;
	r->by = v / 2;
}

static inline void make_nosing_difference(struct recipe *r, double v)
{
	r->change = push_step;
	r->by = v;
}

static inline void make_pace(struct recipe *r, double v)
{
	r->run = v - 2 * rise_in(r);
}

static inline void make_pitch(struct recipe *r, double v)
{
	r->run = rise_in(r) / tan(v);
}

static inline void make_nosing(struct recipe *r, double v)
{
	r->nosing = v;
}

static inline void make_nosing_radius(struct recipe *r, double v)
{
	r->radius = v;
	r->tread = fmax(r->tread, 2 * v + 2);
}

static inline void make_bevel(struct recipe *r, double v)
{
	r->chamfer = v;
	r->tread = fmax(r->tread, 2 * v + 8);
}

static inline void make_riser_slope(struct recipe *r, double v)
{
	r->change = lean_risers;
	r->by = v;
}

static inline void make_riser_opening(struct recipe *r, double v)
{
	r->open_risers = true;
	r->total = (v + r->tread) * r->risers;
}

static inline void make_tread_thickness(struct recipe *r, double v)
{
	r->tread = v;
}

static inline void make_flight_rise(struct recipe *r, double v)
{
	r->risers = (int)round(v / 190);
	r->total = v;
}

static inline void make_flight_risers(struct recipe *r, double v)
{
	r->risers = (int)v;
	r->total = 190 * v;
	r->opening = 4000;
}

/* The opening's edge stands where the nosing line is that far under the ceiling. */
static inline void make_headroom(struct recipe *r, double v)
{
	double header = (r->risers - 1) * r->run + RISER_BOARD_THICKNESS;
	double line = r->total - FLOOR_THICKNESS - v;
	double edge = (line - rise_in(r)) * r->run / rise_in(r) - r->nosing;

	r->opening = header - edge;
}

static inline void make_width(struct recipe *r, double v)
{
	r->width = v;
}

/* A newel stands on the centre of the balusters, which are flush with the stringer's face. */
static inline double newel_reach(const struct recipe *r)
{
	return r->baluster / 2 + NEWEL / 2;
}

static inline void make_width_at_rail(struct recipe *r, double v)
{
	r->width = v + newel_reach(r) * (r->left_open + r->right_open);
}

static inline void make_rail_projection(struct recipe *r, double v)
{
	r->rail_width = 2 * (v - r->baluster / 2);
}

static inline void make_wall_clearance(struct recipe *r, double v)
{
	r->change = hang_rail_on_wall;
	r->by = v;
}

static inline void make_rail_height(struct recipe *r, double v)
{
	r->rail_height = v;
}

static inline void make_rail_sides(struct recipe *r, double v)
{
	r->right_open = v >= 1;
	r->left_open = v >= 2;
	r->width = 1100;
}

static inline void make_risers_without_rail(struct recipe *r, double v)
{
	r->right_open = false;
	make_flight_risers(r, v);
}

static inline void make_rail_gap(struct recipe *r, double v)
{
	r->from_step = v > 0 ? 4 : 1;
}

static inline void make_loose_ends(struct recipe *r, double v)
{
	r->newels = v <= 0;
}

/* The third step, which is the highest. */
static inline void make_drop_without_guard(struct recipe *r, double v)
{
	r->risers = 4;
	r->total = 4 * v / 3;
	r->change = take_rails_away;
}

/* Two to a tread, and no newels that would stand in the way. */
static inline void make_ball_between(struct recipe *r, double v)
{
	r->newels = false;
	r->run = 2 * (v + r->baluster);
	r->largest_gap = v + 1;
}

static inline void make_floor_guard(struct recipe *r, double v)
{
	r->floor_rail = v;
}

/* The rail runs back from the header: with the newel at its end it leaves that much of the right
 * edge bare.  On the other edges stand walls. */
static inline void make_bare_edge(struct recipe *r, double v)
{
	r->floor_rail = 1000;
	r->edge_walls = "foot, head";
	r->floor_rail_length = r->opening - NEWEL - v;
}

/* Six balusters in seven gaps. */
static inline void make_floor_ball(struct recipe *r, double v)
{
	r->floor_rail = 1000;
	r->floor_rail_length = 6 * r->baluster + 7 * v;
	r->largest_gap = v + 1;
}

/* The circle that touches tread, riser and the line of the nosings, no nosing overhanging: v = R +
 * G
 * - sqrt(R^2 + G^2), solved for the run. */
static inline void make_triangle(struct recipe *r, double v)
{
	double rise = rise_in(r);

	r->shoe = true;
	r->nosing = 0;
	r->run = v * (2 * rise - v) / (2 * (rise - v));
}

static inline void make_plank_width(struct recipe *r, double v)
{
	r->plank_width = v;
}

/* What a notch leaves of the plank: its depth is the height of the triangle of rise and run. */
static inline void make_throat(struct recipe *r, double v)
{
	double rise = rise_in(r);

	r->plank_width = v + rise * r->run / hypot(rise, r->run);
}

static inline void make_plank_thickness(struct recipe *r, double v)
{
	r->plank_thickness = v;
}

static inline void make_spacing(struct recipe *r, double v)
{
	r->right_open = false;
	r->middle_count = 0;
	r->width = v + 2 * (WALL_GAP + r->plank_thickness / 2);
}

static inline void make_landing(struct recipe *r, double v)
{
	r->landing = v;
	r->hinge = 0;
}

static inline void make_landing_over(struct recipe *r, double v)
{
	make_landing(r, r->width + v);
}

static inline void make_landing_width(struct recipe *r, double v)
{
	r->landing_width = r->width + v;
}

static inline void make_door(struct recipe *r, double v)
{
	r->landing = 3000;
	r->hinge = v;
}

static inline void make_diameter(struct recipe *r, double v)
{
	r->change = round_rail;
	r->by = v;
}

static inline void make_perimeter(struct recipe *r, double v)
{
	r->change = square_rail;
	r->by = v / 4;
}

static inline void make_across(struct recipe *r, double v)
{
	r->change = flat_rail;
	r->by = v;
}

static inline void make_least_across(struct recipe *r, double v)
{
	r->change = square_rail;
	r->by = v;
}

static inline void make_recess_start(struct recipe *r, double v)
{
	r->change = rail_with_head;
	r->by = v;
}

static inline void make_recess_depth(struct recipe *r, double v)
{
	r->change = rail_with_recess_depth;
	r->by = v;
}

static inline void make_recess_within(struct recipe *r, double v)
{
	r->change = rail_with_shy_step;
	r->by = v;
}

static inline void make_edge(struct recipe *r, double v)
{
	r->change = rail_with_edges;
	r->by = v;
}

static inline void make_recess_height(struct recipe *r, double v)
{
	r->change = rail_with_recess_height;
	r->by = v;
}

static inline void make_recess_reach(struct recipe *r, double v)
{
	r->change = rail_with_recess_reach;
	r->by = v;
}

static inline void make_recess_width(struct recipe *r, double v)
{
	r->change = rail_with_head_width;
	r->by = v;
}

static const struct {
	const char *gauge;
	void (*make)(struct recipe *r, double value);
} recipes[] = {
	{ "riser_height", make_riser_height },
	{ "riser_difference", make_riser_difference },
	{ "riser_difference_adjacent", make_riser_difference },
	{ "tread_depth", make_tread_depth },
	{ "tread_difference", make_tread_difference },
	{ "tread_difference_adjacent", make_tread_difference },
	{ "pace", make_pace },
	{ "pitch", make_pitch },
	{ "nosing_projection", make_nosing },
	{ "nosing_difference", make_nosing_difference },
	{ "nosing_radius", make_nosing_radius },
	{ "nosing_bevel", make_bevel },
	{ "riser_slope", make_riser_slope },
	{ "riser_opening", make_riser_opening },
	{ "tread_overlap", make_nosing },
	{ "tread_thickness", make_tread_thickness },
	{ "flight_rise", make_flight_rise },
	{ "flight_risers", make_flight_risers },
	{ "headroom", make_headroom },
	{ "headroom_to_floor", make_headroom },
	{ "clear_width", make_width },
	{ "clear_width_at_rail", make_width_at_rail },
	{ "usable_width", make_width_at_rail },
	{ "rail_projection", make_rail_projection },
	{ "wall_clearance", make_wall_clearance },
	{ "rail_height", make_rail_height },
	{ "guard_height", make_rail_height },
	{ "rail_sides", make_rail_sides },
	{ "risers_without_rail", make_risers_without_rail },
	{ "rail_gap", make_rail_gap },
	{ "loose_rail_ends", make_loose_ends },
	{ "foot_depth", make_landing },
	{ "head_depth", make_landing },
	{ "foot_depth_over", make_landing_over },
	{ "head_depth_over", make_landing_over },
	{ "foot_width_over", make_landing_width },
	{ "head_width_over", make_landing_width },
	{ "foot_door", make_door },
	{ "head_door", make_door },
	{ "rail_diameter", make_diameter },
	{ "rail_perimeter", make_perimeter },
	{ "rail_across", make_across },
	{ "rail_least_across", make_least_across },
	{ "rail_recess_start", make_recess_start },
	{ "rail_recess_depth", make_recess_depth },
	{ "rail_recess_within", make_recess_within },
	{ "rail_edge", make_edge },
	{ "rail_recess_height", make_recess_height },
	{ "rail_recess_reach", make_recess_reach },
	{ "rail_recess_width", make_recess_width },
	{ "drop_without_guard", make_drop_without_guard },
	{ "edge_without_guard", make_bare_edge },
	{ "ball_between", make_ball_between },
	{ "floor_guard_height", make_floor_guard },
	{ "floor_ball", make_floor_ball },
	{ "ball_in_triangle", make_triangle },
	{ "stringer_throat", make_throat },
	{ "stringer_width", make_plank_width },
	{ "stringer_thickness", make_plank_thickness },
	{ "stringer_spacing", make_spacing },
};

static inline bool wants(const struct rule *rule, const char *gauge, double least)
{
	for (int i = 0; i < rule->condition_count; i++)
		if (strcmp(rule->conditions[i].gauge, gauge) == 0 &&
			rule->conditions[i].bounds.least.value >= least)
			return true;
	return false;
}

/* A recipe in which the gauge of this rule reads `value`, and its conditions hold.  False: there is
 * none, for the model has no such thing yet. */
static inline bool recipe_for(const struct rule *rule, double value, struct recipe *r)
{
	*r = plain;
	r->open_risers = wants(rule, "open_risers", 1);
	r->left_open = wants(rule, "rail_sides", 2);
	if (wants(rule, "clear_width", 1))
		r->width = 1100;
	if (wants(rule, "clear_width", 1200))
		r->width = 1250;
	for (int i = 0; i < rule->condition_count; i++)
		if (strcmp(rule->conditions[i].gauge, "stringer_spacing") == 0)
			r->middle_count = 0;
	for (size_t i = 0; i < sizeof(recipes) / sizeof(recipes[0]); i++)
		if (strcmp(recipes[i].gauge, rule->gauge) == 0) {
			recipes[i].make(r, value);
			return true;
		}
	return false;
}

#endif
