/*
 * Braced balusters: those of one tread are joined by short cross pieces into a
 * unit that is glued up in the shop and set on its dowels.
 *
 *        |    |    |
 *        |  .'|  .'|   a row on the rake
 *        |.'| |.'| |
 *        |  | |  | |
 *        |--| |--| |   a level row
 *       _|__|_|__|_|_
 *
 * Cross pieces are cut plumb between the balusters, each end on a loose tenon.
 */
#include <string.h>

#include "base/text.h"
#include "parts/baluster.h"
#include "parts/shoe.h"
#include "parts/strip.h"

#define MOST_FLAT 0.7 /* of the diameter: common practice */

/* The clear space between two balusters of a unit, on plan. */
struct gap {
	double from, to;
	double fronts[2]; /* of the balusters */
	double level;     /* of the tread or floor on which they stand */
};

/* One row as it crosses a gap: levels of its middle at either end, and the stretch along which it
 * lies. */
struct crossing {
	struct stretch along;
	double z[2];
	double half; /* plumb */
};

struct braced {
	struct pieces *list;
	const struct stretch *stretch;
	const struct job_infill *spec;
	const struct job_row *rows;
	int row_count;
	struct diags *diags;
};

/* On a floor, the floor. */
static double nosing_line(const struct stretch *s, double x)
{
	if (s->feet == FEET_ON_FLOOR)
		return s->floor;
	return stretch_rail_top(s, x) - s->rod->job->rail.height;
}

static double tread_level(const struct stretch *s, double x)
{
	if (s->feet == FEET_ON_FLOOR)
		return s->floor;
	return (floor(x / s->rod->run + NEAR_ENOUGH) + 1) * s->rod->rise;
}

static struct gap gap_between(const struct setting *set, int i)
{
	double flat = baluster_flat(set->stretch->rod->job);
	double front = setting_front(set, i), next = setting_front(set, i + 1);
	struct gap g = { front + set->section - flat, next + flat, { front + flat, next + flat },
		0 };
	g.level = tread_level(set->stretch, setting_front(set, i - i % set->per_tread));
	return g;
}

static struct crossing crossing_of(const struct braced *b, const struct job_row *row,
	const struct gap *g)
{
	struct crossing c = { .along = *b->stretch };
	const double x[2] = { g->from, g->to };
	if (row->lie == ROW_LEVEL) {
		c.along.slope = c.along.pitch = 0;
		c.along.cosine = 1;
	}
	for (int i = 0; i < 2; i++)
		c.z[i] = row->height +
			(row->lie == ROW_LEVEL ? g->level : nosing_line(b->stretch, x[i]));
	c.half = b->spec->cross_width / 2 / c.along.cosine;
	return c;
}

/* Where the two balusters beside a gap begin and end. */
struct opening {
	double foot[2], top[2];
};

static struct opening opening_of(const struct braced *b, const struct gap *g)
{
	const struct stretch *s = b->stretch;
	const struct job *job = s->rod->job;
	const double x[2] = { g->from, g->to };
	struct opening o;
	for (int i = 0; i < 2; i++) {
		o.foot[i] = infill_has_shoe(job) ? infill_bottom(s, x[i]) : infill_foot(s, x[i]);
		o.top[i] = infill_top(s, x[i]);
		if (job->balusters.top == BALUSTER_TOP_SQUARE)
			o.top[i] = fmin(o.top[i], infill_head(s, g->fronts[i]));
	}
	return o;
}

/* Does it meet both balusters with its whole end? */
static bool meets_balusters(const struct braced *b, const struct crossing *c, const struct gap *g)
{
	struct opening o = opening_of(b, g);
	for (int i = 0; i < 2; i++)
		if (c->z[i] - c->half < o.foot[i] - NEAR_ENOUGH ||
			c->z[i] + c->half > o.top[i] + NEAR_ENOUGH)
			return false;
	return true;
}

static bool clear_of_each_other(const struct crossing *one, const struct crossing *other)
{
	double room = one->half + other->half - NEAR_ENOUGH;
	double low = other->z[0] - one->z[0], high = other->z[1] - one->z[1];
	return fmin(low, high) >= room || fmax(low, high) <= -room;
}

/* What the rake gains over a tread on a row that lies otherwise. */
static double gained(const struct braced *b)
{
	return b->stretch->slope * b->stretch->rod->run;
}

/* How much further up a row has to lie to be met whole, over a raked shoe in the last gap of a
 * tread too; less than 0: further down. */
static double way_in(const struct braced *b, const struct crossing *c, const struct gap *g)
{
	struct opening o = opening_of(b, g);
	bool is_level = fabs(c->along.slope - b->stretch->slope) > NEAR_ENOUGH;
	bool over_rake = is_level &&
		(infill_has_shoe(b->stretch->rod->job) || infill_foot_is_raked(b->stretch));
	double up = 0, down = 0;
	for (int i = 0; i < 2; i++) {
		up = fmax(up, o.foot[i] - (c->z[i] - c->half));
		down = fmax(down, c->z[i] + c->half - o.top[i]);
	}
	return up > 0 ? up + (over_rake ? gained(b) : 0) : -down;
}

/* And to clear another one below it; of two that lie otherwise, along a whole tread. */
static double way_over(const struct braced *b, const struct crossing *c,
	const struct crossing *other)
{
	double low = fmin(c->z[0] - other->z[0], c->z[1] - other->z[1]);
	bool alike = fabs(c->along.slope - other->along.slope) < NEAR_ENOUGH;
	return c->half + other->half - low + (alike ? 0 : gained(b));
}

static const char *write_height(const struct braced *b, int row, double up)
{
	struct arena *a = b->list->arena;
	const char *path = arena_printf(a, "infill.rows[%d].height", row + 1);
	double height = b->rows[row].height + up;
	return up > 0 ? job_write_least(a, b->stretch->rod->job, path, height)
		      : job_write_most(a, b->stretch->rod->job, path, height);
}

/* With those over it, which it would run into else.  The two that the program sets lie as they do
 * for want of room. */
static const char *write_heights(const struct braced *b, int row, double up)
{
	struct text t = { .arena = b->list->arena };
	if (!b->rows[row].src)
		return "take narrower cross pieces (cross_width), or a higher rail";
	text_add(&t, "%s", write_height(b, row, up));
	for (int i = row + 1; i < b->row_count && up > 0; i++)
		text_add(&t, " and %s", write_height(b, i, up) + strlen("write "));
	return text_chars(&t);
}

static bool row_fits(const struct braced *b, const struct crossing *c, int row, const struct gap *g)
{
	struct arena *a = b->list->arena;
	struct pos at = rod_pos(b->stretch->rod, b->rows[row].src, "height");
	if (!b->rows[row].src)
		at = rod_pos(b->stretch->rod, b->spec->src, "kind");
	if (!meets_balusters(b, c, g)) {
		diag_error(b->diags, at, write_heights(b, row, way_in(b, c, g)),
			"the row of cross pieces at %s runs out of the balusters",
			infill_letter(b->stretch, a, b->rows[row].height));
		return false;
	}
	for (int i = 0; i < row; i++) {
		struct crossing other = crossing_of(b, &b->rows[i], g);
		if (clear_of_each_other(c, &other))
			continue;
		diag_error(b->diags, at, write_heights(b, row, way_over(b, c, &other)),
			"the rows of cross pieces at %s and at %s run into each other",
			infill_letter(b->stretch, a, b->rows[i].height),
			infill_letter(b->stretch, a, b->rows[row].height));
		return false;
	}
	return true;
}

static struct bore tenon_of(const struct braced *b, const struct strip *cross)
{
	const struct job_infill *f = b->spec;
	const struct job *job = b->stretch->rod->job;
	double half_baluster = job->balusters.section / 2 - baluster_flat(job);
	struct bore tenon = strip_tenon(cross,
		(struct tenon){ f->tenon_width, f->tenon_thickness, f->tenon_length,
			half_baluster });
	tenon.text = "loose tenon, cross piece";
	return tenon;
}

static void cross_add(const struct braced *b, const struct crossing *c, const struct gap *g)
{
	struct arena *a = b->list->arena;
	const struct job_infill *f = b->spec;
	struct strip cross = { &c->along, g->from, c->z[0] - c->half, g->to - g->from,
		f->cross_width, f->cross_thickness };
	struct bore tenon = tenon_of(b, &cross);
	if (!tenon_holds(&tenon)) {
		diag_error(b->diags, rod_pos(b->stretch->rod, f->src, "cross_width"),
			"take wider cross pieces, smaller tenons or fewer balusters",
			"a loose tenon does not fit into the ends of the cross pieces");
		return;
	}
	struct part *p = strip_add(b->list, "cross piece", &cross, (struct outline){ NULL, 0 });
	strip_bore(a, p, &cross, tenon, STRIP_LOW_END);
	strip_bore(a, p, &cross, tenon, STRIP_HIGH_END);
}

static void brace(const struct braced *b, const struct setting *set, int i)
{
	struct gap g = gap_between(set, i);
	int before = b->diags->errors;
	for (int row = 0; row < b->row_count && b->diags->errors == before; row++) {
		struct crossing c = crossing_of(b, &b->rows[row], &g);
		if (row_fits(b, &c, row, &g))
			cross_add(b, &c, &g);
	}
}

/* Two on the rake, as far over the nosings as under the rail. */
static const struct job_row *usual_rows(struct arena *a, const struct stretch *s)
{
	const struct job *job = s->rod->job;
	double in = job->about.units == UNITS_INCHES ? 6 * 25.4 : 150;
	struct job_row *rows = NEW_N(a, struct job_row, 2);
	rows[0].height = in;
	rows[1].height = infill_top(s, 0) - nosing_line(s, 0) - in;
	return rows;
}

static bool in_one_unit(const struct setting *set, int i)
{
	return i + 1 < set->count && i / set->per_tread == (i + 1) / set->per_tread &&
		setting_is_placed(set, i) && setting_is_placed(set, i + 1);
}

/* A baluster, and what joins it to the next one. */
static void baluster_set(const struct braced *b, const struct setting *set, int i)
{
	bool begins = in_one_unit(set, i) && (i == 0 || !in_one_unit(set, i - 1));
	if (begins)
		pieces_begin_unit(b->list);
	baluster_add(b->list, b->stretch, setting_front(set, i));
	if (in_one_unit(set, i))
		brace(b, set, i);
	else
		b->list->unit = 0;
}

/* Round ones are given a flat as wide as the cross pieces are thick, and must stay round. */
static bool stay_round(struct arena *a, const struct stretch *s, struct diags *d)
{
	const struct job *job = s->rod->job;
	double most = MOST_FLAT * job->balusters.section, thick = job->infill.cross_thickness;
	if (job->balusters.shape == BALUSTER_SQUARE || thick <= most + NEAR_ENOUGH)
		return true;
	diag_error(d, rod_pos(s->rod, job->infill.src, "cross_thickness"),
		arena_printf(a, "%s, or take thicker balusters",
			job_write_most(a, job, "infill.cross_thickness", most)),
		"cross pieces %s thick are too thick for round balusters of %s",
		infill_letter(s, a, thick), infill_letter(s, a, job->balusters.section));
	return false;
}

static void make(struct pieces *list, const struct stretch *s, struct diags *d)
{
	struct setting set = setting_make(list->arena, s, d);
	const struct job_infill *f = &s->rod->job->infill;
	struct braced b = { list, s, f, f->rows, f->row_count, d };
	int errors = d->errors;
	if (set.count == 0 || !baluster_takes_dowel(list->arena, s, d) ||
		!stay_round(list->arena, s, d))
		return;
	if (b.row_count == 0) {
		b.rows = usual_rows(list->arena, s);
		b.row_count = 2;
	}
	for (int i = 0; i < set.count && d->errors == errors; i++)
		if (setting_is_placed(&set, i))
			baluster_set(&b, &set, i);
	list->unit = 0;
	fillets_make(list, &set);
}

const struct infill_kind infill_braced = { "braced", make };
