#include "parts/span.h"

/*
 * Posts stand like balusters, with their front in line with a riser's face, on
 * the treads that come nearest to equal spans; at an end of the rail without a
 * newel, or against one that is panelled, stands one as well.  Along a shoe, a stringer's edge or a
 * floor they stand just where the spans are equal.
 */

#define WALL 3.0       /* least wood beside a dowel: common practice */
#define SCREW_UP 18.0  /* above the foot, or below the top: common practice */
#define SCREW_HOLE 3.5 /* clearance of a #6 screw, 9/64 in (table of shank holes) */

static struct outline shape(struct arena *a, double height, double section, double top_slope,
	double foot_slope)
{
	struct path p = path_begin(a, 4);
	path_to(&p, 0, 0);
	path_to(&p, height, 0);
	path_to(&p, height + section * top_slope, section);
	path_to(&p, section * foot_slope, section);
	return path_close(p);
}

/* Square to a foot or a top; the axes are a baluster's. */
static void post_dowel(struct pieces *list, struct part *p, const struct job *job, double end,
	double slope, int up, double room)
{
	double post = job->infill.post, half = job->balusters.dowel_length / 2;
	double dowel = fmin(job->balusters.dowel, post / 3);
	double c = cos(atan(slope)), sine = sin(atan(slope));
	double deep = fmin(half, (post / 2 - dowel / 2 - WALL) / fmax(sine, 0.01));
	struct bore bore = { .at = { .u = { sine, c, 0 }, .v = { 0, 0, up } } };
	bore.at.w = vec3(up * c, -up * sine, 0);
	bore.at.origin = vec3(end + slope * post / 2, post / 2, post / 2);
	bore.size = bore_round(dowel, deep);
	if (room < INFINITY)
		bore.mate = bore_round(dowel, fmin(half, room));
	bore.fixing = FIXING_DOWEL;
	bore.fixing_length = deep + bore.mate.depth;
	bore.fixing_width = dowel;
	bore.text = up > 0 ? "dowel, post top" : "dowel, post foot";
	piece_bore(list->arena, p, bore);
}

/* Over a plough there is no wood for a dowel: a screw on the slant through the front. */
static void post_screw(struct pieces *list, struct part *p, const struct job *job, double height,
	int up)
{
	double post = job->infill.post, in = SCREW_UP;
	struct bore bore = { .at = { .u = { 1, 0, 0 }, .v = { 0, 0, 1 }, .w = { 0, -1, 0 } } };
	bore.at.origin = vec3(up > 0 ? height - in : in, 0, post / 2);
	bore.size = bore_round(SCREW_HOLE, fmin(post / 2, in / 2));
	bore.fixing = FIXING_SCREW;
	bore.text = up > 0 ? "pilot, on the slant up into the rail"
			   : "pilot, on the slant down into what it stands on";
	piece_bore(list->arena, p, bore);
}

/* By a dowel, where there is wood for it: at height 0 the foot, else the top. */
static void post_hold(struct pieces *list, struct part *p, const struct stretch *s, double x,
	double height, double slope)
{
	const struct job *job = s->rod->job;
	bool top = height > 0;
	bool strip = top ? infill_has_subrail(job) : infill_has_shoe(job);
	double room = infill_dowel_room(s, top ? INFILL_TOP : INFILL_FOOT, x + job->infill.post / 2,
		slope);
	if ((strip && job->infill.kind == INFILL_PANEL) || room < job->balusters.dowel)
		post_screw(list, p, job, height, top ? 1 : -1);
	else
		post_dowel(list, p, job, height, slope, top ? 1 : -1, room);
}

/* On the shoe, not in its plough: bars have none, and a panel's is closed here. */
static double post_foot(const struct stretch *s, double x)
{
	return infill_has_shoe(s->rod->job) ? infill_bottom(s, x) : stretch_foot(s, x);
}

static void post_add(struct pieces *list, const struct stretch *s, double x)
{
	struct arena *a = list->arena;
	const struct job *job = s->rod->job;
	double section = job->infill.post, z = post_foot(s, x);
	double height = infill_top(s, x) - z, foot_slope = infill_foot_is_raked(s) ? s->slope : 0;
	struct part *p =
		piece_add(list, "post", job->material.balustrade, infill_post(s, x, z, section));
	p->size = (struct part_size){ height + section * s->slope, section, section };
	p->outline = shape(a, height, section, s->slope, foot_slope);
	p->start.mitre = atan(foot_slope);
	p->end.mitre = s->pitch;
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, section);
	post_hold(list, p, s, x, 0, foot_slope);
	post_hold(list, p, s, x, height, s->slope);
}

/* Where there is nothing to end against: no newel, or one that is panelled. */
static bool ends_open(const struct stretch *s, struct rail_end e)
{
	return e.kind != RAIL_END_WALL && !infill_meets_newel(s, e);
}

static bool stands_on_tread(const struct stretch *s)
{
	return s->feet == FEET_ON_TREADS && !infill_has_shoe(s->rod->job);
}

/* On a tread, in line with the riser's face. */
static double post_place(const struct stretch *s, double x)
{
	double run = s->rod->run;
	return stands_on_tread(s) ? run * round(x / run) : x;
}

static bool post_fits(struct arena *a, const struct stretch *s, struct diags *d)
{
	double post = s->rod->job->infill.post, room = s->rod->run - s->rod->nosing;
	if (!stands_on_tread(s) || post <= room)
		return true;
	diag_error(d, rod_pos(s->rod, s->rod->job->infill.src, "post"), NULL,
		"a post of %s does not stand on a tread: there is room for %s",
		infill_letter(s, a, post), infill_letter(s, a, room));
	return false;
}

/* Goes on to a post at x, where that leaves room for a span. */
static double add_span(struct spans *list, double from, double x, bool post_after)
{
	if (x - from < 1)
		return from;
	list->span[list->n] = (struct span){ from, x, list->n > 0, post_after };
	list->n++;
	return x;
}

struct spans spans_make(struct pieces *list, const struct stretch *s, struct diags *d)
{
	const struct job_infill *f = &s->rod->job->infill;
	double from = s->from, to = s->to, post = f->post;
	struct spans spans = { NULL, 0 };
	if (!post_fits(list->arena, s, d))
		return spans;
	bool first = ends_open(s, s->foot), last = ends_open(s, s->head);
	if (first) {
		post_add(list, s, from);
		from += post;
	}
	if (last) {
		/* the rail ends over the face of a riser: clear of its nosing */
		to = s->to - post - (stands_on_tread(s) ? s->rod->nosing : 0);
		post_add(list, s, to);
	}
	int n = (int)ceil((to - from + post) / (f->post_spacing + post) - NEAR_ENOUGH);
	n = n > 1 ? n : 1;
	spans.span = NEW_N(list->arena, struct span, n);
	double begin = from, equal = (to - from - (n - 1) * post) / n;
	for (int i = 1; i < n; i++) {
		double x = post_place(s, begin + i * equal + (i - 1) * post);
		if (x < from + 1 || x + post > to - 1)
			continue;
		add_span(&spans, from, x, true);
		post_add(list, s, x);
		from = x + post;
	}
	add_span(&spans, from, to, last);
	if (spans.n > 0 && first)
		spans.span[0].post_before = true;
	return spans;
}
