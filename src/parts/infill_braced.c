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
#include "parts/baluster.h"
#include "parts/braced_rows.h"
#include "parts/shoe.h"
#include "parts/strip.h"

#define MOST_FLAT 0.7 /* of the diameter: common practice */

struct braced {
	struct pieces *list;
	const struct stretch *stretch;
	const struct job_infill *spec;
	const struct job_row *rows;
	int row_count;
	struct diags *diags;
};

/* Does it meet both balusters with its whole end? */
static bool meets_balusters(const struct crossing *c, const struct gap *g)
{
	struct opening o = braced_opening(g);
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

static bool row_fits(const struct braced *b, const struct crossing *c, int row, const struct gap *g)
{
	struct arena *a = b->list->arena;
	struct pos at = rod_pos(b->stretch->rod, b->rows[row].src, "height");
	if (!b->rows[row].src)
		at = rod_pos(b->stretch->rod, b->spec->src, "kind");
	if (!meets_balusters(c, g)) {
		diag_error(b->diags, at, braced_heights_mend(a, b->stretch),
			"the row of cross pieces at %s runs out of the balusters",
			infill_letter(b->stretch, a, b->rows[row].height));
		return false;
	}
	for (int i = 0; i < row; i++) {
		struct crossing other = braced_crossing(&b->rows[i], g);
		if (clear_of_each_other(c, &other))
			continue;
		diag_error(b->diags, at, braced_heights_mend(a, b->stretch),
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
	struct gap g = braced_gap(set, i);
	int before = b->diags->errors;
	for (int row = 0; row < b->row_count && b->diags->errors == before; row++) {
		struct crossing c = braced_crossing(&b->rows[row], &g);
		if (row_fits(b, &c, row, &g))
			cross_add(b, &c, &g);
	}
}

/* A baluster, and what joins it to the next one. */
static void baluster_set(const struct braced *b, const struct setting *set, int i)
{
	bool begins = braced_in_one_unit(set, i) && (i == 0 || !braced_in_one_unit(set, i - 1));
	if (begins)
		pieces_begin_unit(b->list);
	baluster_add(b->list, b->stretch, setting_front(set, i));
	if (braced_in_one_unit(set, i))
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
		b.rows = braced_usual_rows(list->arena, s);
		b.row_count = BRACED_USUAL;
	}
	for (int i = 0; i < set.count && d->errors == errors; i++)
		if (setting_is_placed(&set, i))
			baluster_set(&b, &set, i);
	list->unit = 0;
	baluster_tops_look(list->arena, &set, d);
	fillets_make(list, &set);
}

const struct infill_kind infill_braced = { "braced", make };
