#include "parts/stringer.h"

#include "parts/existing.h"

double plank_offered(const struct rod *r, const struct job_stringer *spec)
{
	const struct job_stringers *all = &r->job->stringers;
	if (spec->width > 0 || all->stock_width_count == 0)
		return spec->width;
	return all->stock_widths[all->stock_width_count - 1];
}

double plank_width(const struct rod *r, const struct job_stringer *spec, double least)
{
	const struct job_stringers *all = &r->job->stringers;
	if (spec->width > 0)
		return spec->width >= least - NEAR_ENOUGH ? spec->width : 0;
	for (int i = 0; i < all->stock_width_count; i++)
		if (all->stock_widths[i] >= least - NEAR_ENOUGH)
			return all->stock_widths[i];
	return 0;
}

const char *stringer_group(const struct rod *r, const struct job_stringer *spec)
{
	const struct job_stringers *all = &r->job->stringers;
	if (spec == &all->wall)
		return "wall";
	return spec == &all->open ? "open" : "middle";
}

struct pos plank_pos(const struct rod *r, const struct job_stringer *spec)
{
	const struct node *group = spec->src ? spec->src : r->job->stringers.src;
	return rod_pos(r, group, spec->width > 0 ? "width" : "kind");
}

/* The shortest plank on offer out of which `cut` can be sawn with waste at both ends; 0: none. */
static double plank_length(const struct rod *r, double cut)
{
	const struct job_stringers *all = &r->job->stringers;
	for (int i = 0; i < all->stock_length_count; i++)
		if (all->stock_lengths[i] >= cut + 2 * all->end_trim - NEAR_ENOUGH)
			return all->stock_lengths[i];
	return 0;
}

static struct vec turned(const struct bench *b, struct vec p)
{
	return vec(p.x * b->cosine + p.y * b->sine, p.y * b->cosine - p.x * b->sine);
}

struct bench bench_make(const struct rod *r, struct edges e, const struct outline *faces, int n)
{
	struct bench b = { .sine = sin(r->pitch), .cosine = cos(r->pitch), .x0 = INFINITY };
	b.y0 = turned(&b, vec(0, e.lower)).y;
	for (int f = 0; f < n; f++)
		for (int i = 0; i < faces[f].n; i++)
			b.x0 = fmin(b.x0, turned(&b, faces[f].corners[i].at).x);
	return b;
}

struct vec bench_point(struct bench b, struct vec flight)
{
	return vec_sub(turned(&b, flight), vec(b.x0, b.y0));
}

struct outline bench_outline(struct arena *a, struct bench b, struct outline flight)
{
	struct corner *c = NEW_N(a, struct corner, flight.n);
	for (int i = 0; i < flight.n; i++) {
		c[i].at = bench_point(b, flight.corners[i].at);
		c[i].bulge = flight.corners[i].bulge;
	}
	return (struct outline){ c, flight.n };
}

struct frame bench_frame(const struct rod *r, struct bench b, double y)
{
	struct frame f = { .u = { b.cosine, 0, b.sine }, .v = { -b.sine, 0, b.cosine } };
	f.w = vec3(0, -1, 0);
	f.origin = vec3(b.x0 * b.cosine - b.y0 * b.sine, y, b.x0 * b.sine + b.y0 * b.cosine);
	return frame_compose(r->flight->frame, f);
}

double foot_end_x(const struct rod *r, struct edges e)
{
	return (r->foot - e.lower) / r->slope;
}

static enum stringer_kind kind_of(const struct stand *at)
{
	return at->side ? at->side->kind : STRINGER_SAWTOOTH;
}

static const char *name_of(const struct stand *at)
{
	bool right = at->side && at->side->hand == HAND_RIGHT;
	switch (kind_of(at)) {
	case STRINGER_SAWTOOTH: return "sawtooth stringer";
	case STRINGER_MITRED:
		return right ? "mitred stringer, right hand" : "mitred stringer, left hand";
	case STRINGER_HOUSED:
		return right ? "housed stringer, right hand" : "housed stringer, left hand";
	}
	return "";
}

static enum stringer_hand hand_of(const struct stand *at)
{
	if (kind_of(at) == STRINGER_SAWTOOTH)
		return STRINGER_EITHER_HAND;
	return at->side->hand == HAND_RIGHT ? STRINGER_RIGHT_HAND : STRINGER_LEFT_HAND;
}

static struct stringer *particulars(struct arena *a, const struct stand *at, double cut_length)
{
	const struct rod *r = at->rod;
	struct stringer *g = NEW(a, struct stringer);
	g->kind = kind_of(at);
	g->hand = hand_of(at);
	g->side = at->side && at->side->is_open ? SIDE_OPEN : SIDE_WALL;
	g->pitch = r->pitch;
	g->unit_rise = r->rise;
	g->unit_run = r->run;
	g->steps = r->steps;
	g->least_throat = r->job->stringers.least_throat;
	g->cut_length = cut_length;
	g->plank_length = plank_length(r, cut_length);
	g->foot_level = r->foot;
	g->head_under_structure =
		r->stair->upper_structural - r->flight->steps[r->steps - 1].level + r->tread;
	g->header_low = r->stair->upper_structural - existing_header_top(r);
	g->first_rise_cut = rod_first_riser(r);
	g->first_rise_finished = r->foot + g->first_rise_cut + r->tread;
	double last_tread = r->flight->steps[r->steps - 1].level;
	double before = r->steps > 1 ? r->flight->steps[r->steps - 2].level : 0;
	g->last_rise_finished = r->steps < r->risers ? r->top - last_tread : last_tread - before;
	g->drop = r->rise - g->first_rise_cut;
	return g;
}

static const char *species_of(const struct stand *at)
{
	const struct job_material *m = &at->rod->job->material;
	bool shows = kind_of(at) != STRINGER_SAWTOOTH || (at->side && at->side->is_open);
	return shows ? m->stringers : m->carriages;
}

struct part *stringer_part(struct pieces *list, const struct stand *at, struct bench b,
	struct outline face, double width)
{
	const struct rod *r = at->rod;
	struct part *p = piece_add(list, name_of(at), species_of(at), bench_frame(r, b, at->y1));
	p->outline = bench_outline(list->arena, b, face);
	struct box extent = outline_extent(p->outline);
	struct stringer *g = particulars(list->arena, at, extent.x1);
	g->plank_width = width;
	p->stringer = g;
	p->size = (struct part_size){ extent.x1, width, at->spec->thickness };
	p->start.mitre = PI / 2 - r->pitch; /* the level foot cut */
	p->end.mitre = r->pitch;            /* the plumb head cut */
	if (g->plank_length <= 0)
		p->note = "longer than any plank on offer: to be ordered longer";
	return p;
}

bool stringers_have_block(const struct rod *r)
{
	return r->job->stringers.block_thickness > 0 && r->job->stringers.block_width > 0;
}

static void stand_add(struct pieces *list, const struct stand *at, struct diags *d)
{
	if (at->side && at->side->kind == STRINGER_HOUSED)
		housed_add(list, at, d);
	else
		sawtooth_add(list, at, d);
}

struct stand side_stand(const struct rod *r, enum side_hand hand)
{
	const struct side *side = &r->sides[hand];
	double outer = rod_y(r, side, side->outer), inner = rod_y(r, side, side->inner);
	struct stand at = { r, side, side->spec, fmin(outer, inner), fmax(outer, inner) };
	return at;
}

/* Carriages between the outer two, their centres dividing the distance evenly. */
static void middles_add(struct pieces *list, const struct stand *right, const struct stand *left,
	struct diags *d)
{
	const struct rod *r = right->rod;
	const struct job_stringer *spec = &r->job->stringers.middle;
	double from = (right->y0 + right->y1) / 2, to = (left->y0 + left->y1) / 2;
	int n = job_carriages(r->job);
	double clear = (to - from) / (n + 1) - spec->thickness / 2;
	clear -= fmax(right->spec->thickness, left->spec->thickness) / 2;
	if (n > 0 && clear < 0) {
		double wide =
			(spec->thickness + fmax(right->spec->thickness, left->spec->thickness)) / 2;
		diag_error(d, rod_pos(r, r->job->stringers.src, "middle_count"),
			arena_printf(list->arena, "write stringers.middle_count: %d",
				(int)fmax((to - from) / wide - 1, 0)),
			"there is no room for %d stringers between the outer two", n);
		return;
	}
	int before = d->errors;
	for (int i = 1; i <= n && d->errors == before; i++) {
		double y = from + (to - from) * i / (n + 1);
		struct stand at = { r, NULL, spec, y - spec->thickness / 2,
			y + spec->thickness / 2 };
		stand_add(list, &at, d);
	}
}

static bool kinds_fit(const struct rod *r, struct diags *d)
{
	int before = d->errors;
	const struct job_stringers *all = &r->job->stringers;
	for (int i = 0; i < 2; i++)
		if (!r->sides[i].is_open && r->sides[i].kind == STRINGER_MITRED)
			diag_error(d, rod_pos(r, all->wall.src, "kind"),
				"write stringers.wall.kind: sawtooth",
				"a mitred stringer shows its risers' ends: it cannot stand at a "
				"wall");
	for (int i = 0; i < 2; i++)
		if (r->sides[i].is_open && r->sides[i].kind == STRINGER_MITRED && r->riser <= 0)
			diag_error(d, rod_pos(r, all->open.src, "kind"),
				"write stringers.open.kind: sawtooth",
				"a mitred stringer needs riser boards to be mitred to");
	if (r->sides[HAND_RIGHT].inner + r->sides[HAND_LEFT].inner >= r->width)
		diag_error(d, rod_pos(r, r->job->stair.src, "width"),
			"take thinner stringers, or a wider stair",
			"the stringers leave nothing of the width between them");
	return d->errors == before;
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_stringer };
	struct rod r = rod_make(s, f);
	if (!kinds_fit(&r, d))
		return NULL;
	struct stand right = side_stand(&r, HAND_RIGHT);
	struct stand left = side_stand(&r, HAND_LEFT);
	int before = d->errors;
	stand_add(&list, &right, d);
	middles_add(&list, &right, &left, d);
	/* what was wrong with one of two alike is said once */
	if (d->errors == before || left.spec != right.spec)
		stand_add(&list, &left, d);
	return list.first;
}

const struct part_kind part_stringer = { "stringer", "S", make };
