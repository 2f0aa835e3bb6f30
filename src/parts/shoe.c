#include "parts/shoe.h"

#include "parts/baluster.h"
#include "parts/rail_joint.h"
#include "parts/strip.h"

#define LEAST_LEFT 3.0 /* wood under a plough and beside it: common practice */
#define SHORTEST 3.0   /* of a fillet worth cutting */

/* A third of the screw at least bites; brads of fillets (common practice). */
#define SHOE_BITE 38.0
#define RAIL_BITE 0.6 /* of its depth, at most SHOE_BITE */
#define BESIDE_SCREW 4.0
#define BRAD 18
#define BRAD_BITE 0.8 /* of the wood under the plough */
#define BRAD_FIRST 25.0
#define BRAD_COVER 3.0 /* of wood between its point and the end */
#define BRAD_PITCH 120.0

/* What stands in the plough. */
static double plough_width(const struct job *job)
{
	switch (job->infill.kind) {
	case INFILL_PLAIN:
	case INFILL_BRACED: return job->balusters.thickness;
	case INFILL_PANEL: return job->infill.panel_thickness;
	case INFILL_BARS: break;
	}
	return 0;
}

/* y up from the strip's lower face, z across; ploughed for this end of the infill: a shoe from
 * above for its foot, a subrail from below for its top. */
static struct outline ploughed(struct arena *a, const struct job_infill *f, double depth,
	double plough, enum infill_end end)
{
	double side = (f->strip_width - plough) / 2, floor = depth - f->plough;
	const struct vec at[] = { { 0, 0 }, { depth, 0 }, { depth, side }, { floor, side },
		{ floor, side + plough }, { depth, side + plough }, { depth, f->strip_width },
		{ 0, f->strip_width } };
	struct path p = path_begin(a, 8);
	if (plough <= 0)
		return outline_box(a, 0, 0, depth, f->strip_width);
	for (int i = 0; i < 8; i++)
		path_to(&p, end == INFILL_FOOT ? at[i].x : depth - at[i].x, at[i].y);
	return path_close(p);
}

void plough_add(struct arena *a, struct part *p, const struct job *job, const char *face)
{
	struct lettering l = job_lettering(job);
	double width = plough_width(job), depth = job->infill.plough;
	if (width <= 0)
		return;
	const char *size = arena_printf(a, "%s wide, %s deep, %s from either edge",
		length_say(a, l, width), length_say(a, l, depth),
		length_say(a, job_radius_lettering(job), (job->infill.strip_width - width) / 2));
	piece_feature(a, p,
		(struct feature){ .kind = FEATURE_GROOVE,
			.depth = depth,
			.text = arena_printf(a, "ploughed along the middle of its %s: %s", face,
				size),
			.setting = arena_printf(a, "plough along the middle, %s", size) });
}

/* A bottom rail over the nosings is held by what it ends against: tenons in the wood under the
 * plough. */
static void hold_ends(struct pieces *list, struct part *p, struct strip strip)
{
	const struct stretch *s = strip.along;
	const struct job_infill *f = &s->rod->job->infill;
	strip.depth -= plough_width(s->rod->job) > 0 ? f->plough : 0;
	struct bore tenon = strip_tenon(&strip,
		(struct tenon){ f->tenon_width, f->tenon_thickness, f->tenon_length, INFINITY });
	if (s->feet != FEET_ON_TREADS || !tenon_holds(&tenon))
		return;
	if (infill_meets_newel(s, s->foot))
		strip_bore(list->arena, p, &strip, tenon, STRIP_LOW_END);
	if (infill_meets_newel(s, s->head))
		strip_bore(list->arena, p, &strip, tenon, STRIP_HIGH_END);
}

/* Screwed down on an edge or a floor, up to the rail, through the floor of the plough: fillets
 * cover the heads. */
static void screw_on(struct arena *a, struct part *p, const struct strip *strip,
	enum infill_end end)
{
	const struct job *job = strip->along->rod->job;
	const struct job_screws *screws = &job->infill.screws;
	struct strip under = *strip;
	under.depth -= plough_width(job) > 0 ? job->infill.plough : 0;
	double bite = end == INFILL_TOP ? fmin(SHOE_BITE, RAIL_BITE * job->rail.depth) : SHOE_BITE;
	struct fastening f = { .first = screws->first,
		.pitch = screws->pitch,
		.beside = BESIDE_SCREW,
		.text = end == INFILL_TOP ? "screw, subrail to rail" : "screw, shoe" };
	f.fastener = fastener_screw_within(screws->number, under.depth + bite, job->about.units);
	strip_fasten(a, p, &under, f, end == INFILL_TOP ? STRIP_DOWN : STRIP_UP);
}

/* Wider ones would run into each other at a corner newel. */
static bool fits_newels(struct arena *a, const struct stretch *s, struct diags *d)
{
	double wide = s->rod->job->infill.strip_width, newel = s->rod->job->newels.section;
	bool newels = rail_end_has_newel(s->foot) || rail_end_has_newel(s->head);
	if (!newels || wide <= newel + NEAR_ENOUGH)
		return true;
	diag_error(d, rod_pos(s->rod, s->rod->job->infill.src, "strip_width"),
		arena_printf(a, "%s, or take thicker newels",
			job_write_most(a, s->rod->job, "infill.strip_width", newel)),
		"infill.strip_width: %s is wider than the newels, %s", infill_letter(s, a, wide),
		infill_letter(s, a, newel));
	return false;
}

static bool takes_plough(struct arena *a, const struct stretch *s, const char *key, double depth,
	struct diags *d)
{
	const struct job_infill *f = &s->rod->job->infill;
	double plough = plough_width(s->rod->job);
	if (plough <= 0)
		return true;
	if (f->plough > depth - LEAST_LEFT + NEAR_ENOUGH)
		diag_error(d, rod_pos(s->rod, f->src, key),
			arena_printf(a, "%s, or plough it less",
				job_write_least(a, s->rod->job, arena_printf(a, "infill.%s", key),
					f->plough + LEAST_LEFT)),
			"infill.%s: a plough of %s goes through %s", key,
			infill_letter(s, a, f->plough), infill_letter(s, a, depth));
	else if (plough > f->strip_width - 2 * LEAST_LEFT + NEAR_ENOUGH)
		diag_error(d, rod_pos(s->rod, f->src, "strip_width"),
			arena_printf(a, "%s, or take thinner infill",
				job_write_least(a, s->rod->job, "infill.strip_width",
					plough + 2 * LEAST_LEFT)),
			"infill.strip_width: %s leaves no wood beside a plough of %s",
			infill_letter(s, a, f->strip_width), infill_letter(s, a, plough));
	else
		return true;
	return false;
}

void shoe_make(struct pieces *list, const struct stretch *s, struct diags *d)
{
	struct arena *a = list->arena;
	const struct job *job = s->rod->job;
	const struct job_infill *f = &job->infill;
	double plough = plough_width(job);
	struct strip strip = { s, s->from, infill_base(s, s->from), s->to - s->from, f->shoe_depth,
		f->strip_width };
	if ((infill_has_shoe(job) || infill_has_subrail(job)) && !fits_newels(a, s, d))
		return;
	if (infill_has_shoe(job) && takes_plough(a, s, "shoe_depth", f->shoe_depth, d)) {
		struct part *p = strip_add(list, "shoe", &strip,
			ploughed(a, f, strip.depth, plough, INFILL_FOOT));
		plough_add(a, p, job, "upper face");
		hold_ends(list, p, strip);
		if (s->feet != FEET_ON_TREADS) {
			screw_on(a, p, &strip, INFILL_FOOT);
			p->splice = SPLICE_SCARF;
		}
	}
	strip.z = infill_top(s, s->from);
	strip.depth = f->subrail_depth;
	if (infill_has_subrail(job) && takes_plough(a, s, "subrail_depth", f->subrail_depth, d)) {
		struct part *p = strip_add(list, "subrail", &strip,
			ploughed(a, f, strip.depth, plough, INFILL_TOP));
		plough_add(a, p, job, "lower face");
		screw_on(a, p, &strip, INFILL_TOP);
		p->splice = SPLICE_SCARF;
	}
}

static void fillet_brad(struct arena *a, struct part *p, struct fastener f, double x,
	enum infill_end end)
{
	double up = end == INFILL_TOP ? 1 : -1, depth = p->size.width;
	struct bore brad = fastener_bore(f, depth);
	brad.at = (struct frame){ .u = { 1, 0, 0 }, .v = { 0, 0, up }, .w = { 0, -up, 0 } };
	brad.at.origin = vec3(x, end == INFILL_TOP ? 0 : depth, p->size.thickness / 2);
	brad.driven = f.length - depth;
	brad.text = "brad, fillet";
	piece_bore(a, p, brad);
}

/* One through its middle, or one at either end, where it is long enough on both faces; into the
 * floor of the plough.  All fillets alike: one that comes down on a screw is set beside it. */
static void fillet_brads(struct arena *a, struct part *p, const struct strip *strip,
	enum infill_end end)
{
	const struct stretch *s = strip->along;
	const struct job *job = s->rod->job;
	double edge = strip->length / s->cosine, lap = strip->depth * s->slope;
	double deep = end == INFILL_TOP ? job->infill.subrail_depth : job->infill.shoe_depth;
	double floor = deep - strip->depth;
	/* square to the rake it comes nearer to the plumb end the deeper it goes */
	bool is_short = edge - lap < BRAD_PITCH;
	double cover = (is_short ? (edge - lap) / 2 : BRAD_FIRST) - BRAD_COVER;
	double to_end = s->slope > 0 ? fmax(cover, 0) / s->slope : INFINITY;
	struct fastener f = fastener_brad_within(BRAD,
		strip->depth + fmin(BRAD_BITE * floor, to_end), job->about.units);
	if (edge < 2 * lap + f.width || f.length <= strip->depth)
		return;
	if (is_short) {
		fillet_brad(a, p, f, (edge + lap) / 2, end);
		return;
	}
	fillet_brad(a, p, f, lap + BRAD_FIRST, end);
	fillet_brad(a, p, f, edge - BRAD_FIRST, end);
}

/* One, its lower face at z over `from`. */
static void fillet_add(struct pieces *list, const struct stretch *s, struct vec span, double z,
	enum infill_end end)
{
	const struct job *job = s->rod->job;
	struct strip strip = { s, span.x, z, span.y - span.x, job->infill.plough,
		plough_width(job) };
	struct part *p = strip_add(list, end == INFILL_TOP ? "fillet, subrail" : "fillet, shoe",
		&strip, (struct outline){ NULL, 0 });
	p->stuff = STUFF_MOULDING;
	fillet_brads(list->arena, p, &strip, end);
}

static void fillets_add(struct pieces *list, const struct stretch *s, double from, double to)
{
	const struct job *job = s->rod->job;
	double plough = job->infill.plough / s->cosine;
	if (to - from < SHORTEST)
		return;
	if (infill_has_shoe(job))
		fillet_add(list, s, vec(from, to), infill_bottom(s, from) - plough, INFILL_FOOT);
	if (infill_has_subrail(job))
		fillet_add(list, s, vec(from, to), infill_top(s, from), INFILL_TOP);
}

void fillets_make(struct pieces *list, const struct setting *set)
{
	const struct stretch *s = set->stretch;
	double before = s->from, flat = baluster_flat(s->rod->job);
	if (!s->rod->job->infill.fillets)
		return;
	for (int i = 0; i < set->count; i++) {
		if (!setting_is_placed(set, i))
			continue;
		fillets_add(list, s, before, setting_front(set, i) + flat);
		before = setting_front(set, i) + set->section - flat;
	}
	fillets_add(list, s, before, s->to);
}
