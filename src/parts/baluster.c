#include "parts/baluster.h"

#include "parts/setting.h"
#include "parts/upright.h"

/*
 *        |    .|'                     long point
 *        |  .' |              short   |
 *        |.'|  |              point __|'|
 *        |  |  |                   |    |
 *      __|__|__|__ tread           |____|
 *
 * On a slope the foot is cut to the same rake.  A square foot has an oblong slot
 * for its dowel, longer along the stair, so that holes in treads that are a
 * little out do not put a baluster out of line.
 */

#define WALL 2.5     /* least wood beside a slot or a hole: common practice */
#define BRAD_UP 12.0 /* above the foot, or below the top, where a brad goes in */

struct standing {
	const struct stretch *stretch;
	const struct job_balusters *spec;
	double x, z;            /* of its front at the foot */
	struct upright upright; /* between the flats of a round one */
};

double baluster_flat(const struct job *job)
{
	const struct job_balusters *b = &job->balusters;
	double r = b->section / 2, half = job->infill.cross_thickness / 2;
	if (b->shape == BALUSTER_SQUARE || job->infill.kind != INFILL_BRACED || half >= r)
		return 0;
	return r - sqrt(r * r - half * half);
}

/* Round, with a flat for cross pieces at front and back, as wide as they are thick. */
static struct outline round_section(struct arena *a, const struct job *job)
{
	double r = job->balusters.section / 2, flat = baluster_flat(job);
	double half = flat > 0 ? job->infill.cross_thickness / 2 : 0;
	double bulge = tan((PI - 2 * asin(half / r)) / 4);
	struct path p = path_begin(a, 4);
	path_to(&p, 0, r - half);
	p.corners[p.n - 1].bulge = bulge;
	path_to(&p, 2 * (r - flat), r - half);
	path_to(&p, 2 * (r - flat), r + half);
	p.corners[p.n - 1].bulge = bulge;
	path_to(&p, 0, r + half);
	return path_close(p);
}

static struct outline section_of(struct arena *a, const struct job *job)
{
	if (job->balusters.shape == BALUSTER_ROUND)
		return round_section(a, job);
	return outline_box(a, 0, 0, job->balusters.section, job->balusters.thickness);
}

static struct standing standing_at(const struct stretch *s, double x)
{
	const struct job_balusters *b = &s->rod->job->balusters;
	double flat = baluster_flat(s->rod->job);
	struct standing st = { .stretch = s, .spec = b, .x = x + flat };
	st.z = infill_foot(s, st.x);
	st.upright.width = b->section - 2 * flat;
	st.upright.thickness = b->thickness;
	st.upright.slope[INFILL_FOOT] = infill_foot_is_raked(s) ? s->slope : 0;
	st.upright.slope[INFILL_TOP] = b->top == BALUSTER_TOP_RAKED ? s->slope : 0;
	st.upright.height = infill_head(s, st.x) - st.z;
	return st;
}

static struct baluster facts_of(const struct standing *st)
{
	const struct upright *u = &st->upright;
	double top = u->slope[INFILL_TOP], foot = u->slope[INFILL_FOOT];
	struct baluster b = { .short_point = u->height };
	b.long_point = u->height + u->width * (top - foot);
	b.rake = atan(top);
	b.foot_rake = atan(foot);
	return b;
}

/* Looking down out of a square foot: the slot runs along the stair. */
static void foot_dowel(struct pieces *list, struct part *p, const struct standing *st)
{
	const struct job_balusters *b = st->spec;
	double width = st->upright.width, room = width - 2 * WALL;
	double slot = fmin(b->dowel + b->play, room);
	struct bore bore = dowel_bore((struct dowel){ b->dowel, b->dowel_length,
		st->upright.height / 2, infill_dowel_room(st->stretch, INFILL_FOOT, st->x, 0) });
	bore.at = (struct frame){ .u = { 0, 1, 0 }, .v = { 0, 0, -1 }, .w = { -1, 0, 0 } };
	bore.at.origin = vec3(0, width / 2, b->thickness / 2);
	bore.size = bore_oblong(slot > b->dowel + NEAR_ENOUGH ? BORE_SLOT : BORE_HOLE, slot,
		b->dowel, bore.size.depth);
	bore.text = "dowel, baluster foot";
	/* an existing floor is drilled on site, from the foot */
	if (st->stretch->feet != FEET_ON_TREADS)
		bore.mate.depth = 0;
	piece_bore(list->arena, p, bore);
}

static void end_dowel(struct pieces *list, struct part *p, const struct standing *st,
	enum infill_end end, double in_other)
{
	const struct job_balusters *b = st->spec;
	struct bore bore = upright_dowel(&st->upright, end,
		(struct upright_dowel){ b->dowel, b->dowel_length, WALL, in_other });
	bore.text = end == INFILL_TOP ? "dowel, baluster top" : "dowel, baluster foot";
	piece_bore(list->arena, p, bore);
}

static void end_pilot(struct pieces *list, struct part *p, const struct standing *st,
	enum infill_end end)
{
	bool screw = st->spec->held == HELD_BY_SCREWS;
	double from_end = fmin(BRAD_UP, st->upright.height / 4);
	double deep = fmin(st->upright.width / 2, 0.8 * from_end / fmax(1, st->stretch->slope));
	enum units units = st->stretch->rod->job->about.units;
	piece_bore(list->arena, p,
		upright_pilot(&st->upright, end, from_end,
			screw ? upright_screw(units) : upright_brad(units), deep));
}

static void end_hold(struct pieces *list, struct part *p, const struct standing *st,
	enum infill_end end)
{
	const struct job_balusters *b = st->spec;
	double slope = st->upright.slope[end];
	double room = infill_dowel_room(st->stretch, end, st->x + st->upright.width / 2, slope);
	bool meets = end == INFILL_FOOT || slope >= st->stretch->slope - NEAR_ENOUGH;
	/* where there is no room for a dowel, or only a corner touches, it is nailed */
	if (b->held == HELD_BY_DOWELS && room > b->dowel && meets)
		end_dowel(list, p, st, end, room);
	else
		end_pilot(list, p, st, end);
}

static bool stands_square(const struct standing *st)
{
	return st->stretch->feet != FEET_ON_EDGE && !infill_has_shoe(st->stretch->rod->job);
}

struct part *baluster_add(struct pieces *list, const struct stretch *s, double x)
{
	struct arena *a = list->arena;
	const struct job *job = s->rod->job;
	const struct job_balusters *spec = &job->balusters;
	struct standing st = standing_at(s, x);
	const struct upright *u = &st.upright;
	struct baluster *b = NEW(a, struct baluster);
	*b = facts_of(&st);
	struct part *p = piece_add(list, "baluster", job->material.balusters,
		infill_post(s, st.x, st.z, spec->thickness));
	p->baluster = b;
	p->size.length = fmax(u->height, u->height + u->width * u->slope[INFILL_TOP]);
	p->size.width = u->width;
	p->size.thickness = spec->thickness;
	p->outline = upright_outline(a, u);
	if (spec->shape == BALUSTER_ROUND)
		p->section = section_of(a, job);
	if (spec->section > u->width + NEAR_ENOUGH)
		p->note = "turned round first, then a flat for cross pieces at front and back";
	p->start.mitre = b->foot_rake;
	p->end.mitre = b->rake;
	p->solids = solid_strip(a, profile_of(a, section_of(a, job)),
		(struct end_plane){ 0, u->slope[INFILL_FOOT], 0 },
		(struct end_plane){ u->height, u->slope[INFILL_TOP], 0 });
	if (stands_square(&st))
		foot_dowel(list, p, &st);
	else
		end_hold(list, p, &st, INFILL_FOOT);
	end_hold(list, p, &st, INFILL_TOP);
	return p;
}

/* The first one on a tread stands nearest to its nosing. */
static bool clears_nosing(struct arena *a, const struct stretch *s, struct diags *d)
{
	const struct job_balusters *b = &s->rod->job->balusters;
	return upright_clears_nosing(a, s, (b->section - b->dowel) / 2, "the first baluster", d);
}

static bool stands_anywhere(const struct setting *set)
{
	for (int i = 0; i < set->count; i++)
		if (setting_is_placed(set, i))
			return true;
	return false;
}

/* A rake rises over a baluster by its width times the slope; where the plough of a subrail is as
 * deep plumb, what is open beside a square top is hidden in it. */
void baluster_tops_look(struct arena *a, const struct setting *set, struct diags *d)
{
	const struct stretch *s = set->stretch;
	const struct job *job = s->rod->job;
	const struct job_balusters *b = &job->balusters;
	double hidden = infill_has_subrail(job) ? job->infill.plough : 0;
	double open = (b->section - 2 * baluster_flat(job)) * sin(s->pitch);
	struct pos at = rod_pos(s->rod, b->src, "top");
	const char *hint =
		arena_printf(a, "write balusters.top: raked, or let them %s deep into a subrail",
			length_say_least(a, job_lettering(job), open));
	if (b->top != BALUSTER_TOP_SQUARE || open <= hidden + NEAR_ENOUGH || !stands_anywhere(set))
		return;
	if (hidden > 0)
		diag_warning(d, at, hint,
			"balusters.top: a raked plough of %s is not deep enough for square tops: a "
			"wedge of air is seen beside them",
			infill_letter(s, a, hidden));
	else
		diag_warning(d, at, hint,
			"balusters.top: square tops touch a raked rail with one arris only, and "
			"leave a wedge of air beside it");
}

bool baluster_takes_dowel(struct arena *a, const struct stretch *s, struct diags *d)
{
	const struct job_balusters *b = &s->rod->job->balusters;
	double least = fmin(b->section - 2 * baluster_flat(s->rod->job), b->thickness);
	if (b->dowel <= least - 2 * WALL + NEAR_ENOUGH)
		return clears_nosing(a, s, d);
	diag_error(d, rod_pos(s->rod, b->src, "dowel"),
		job_write_most(a, s->rod->job, "balusters.dowel", least - 2 * WALL),
		"a dowel of %s leaves too little of a baluster of %s",
		infill_letter(s, a, b->dowel), infill_letter(s, a, least));
	return false;
}
