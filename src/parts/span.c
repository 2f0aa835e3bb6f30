#include "parts/span.h"

#include "parts/upright.h"

/*
 * Posts stand like balusters, with their front in line with a riser's face, on
 * the treads that come nearest to equal spans; at an end of the rail without a
 * newel, or against one that is panelled, stands one as well.  Along a shoe, a stringer's edge or a
 * floor they stand just where the spans are equal.
 */

#define WALL 3.0      /* least wood beside a dowel: common practice */
#define SCREW_UP 18.0 /* above the foot, or below the top: common practice */

static double dowel_of(const struct job *job)
{
	return dowel_within(job->about.units, job->balusters.dowel, job->infill.post / 3);
}

static void post_dowel(struct pieces *list, struct part *p, const struct upright *post,
	enum infill_end end, const struct job *job, double room)
{
	struct bore bore = upright_dowel(post, end,
		(struct upright_dowel){ .diameter = dowel_of(job),
			.length = job->balusters.dowel_length,
			.wall = WALL,
			.in_other = room });
	if (isinf(room)) /* an existing floor is drilled on site, from the foot */
		bore.mate.depth = 0;
	bore.text = end == INFILL_TOP ? "dowel, post top" : "dowel, post foot";
	piece_bore(list->arena, p, bore);
}

/* Over a plough there is no wood for a dowel. */
static void post_screw(struct pieces *list, struct part *p, const struct upright *post,
	enum infill_end end, enum units units)
{
	struct bore bore = upright_pilot(post, end, SCREW_UP, upright_screw(units),
		fmin(post->width / 2, SCREW_UP / 2));
	piece_bore(list->arena, p, bore);
}

/* By a dowel, where there is wood for it and the post takes one. */
static void post_hold(struct pieces *list, struct part *p, const struct stretch *s, double x,
	const struct upright *post, enum infill_end end)
{
	const struct job *job = s->rod->job;
	bool strip = end == INFILL_TOP ? infill_has_subrail(job) : infill_has_shoe(job);
	double room = infill_dowel_room(s, end, x + post->width / 2, post->slope[end]);
	if ((strip && job->infill.kind == INFILL_PANEL) || room < job->balusters.dowel ||
		dowel_of(job) <= 0)
		post_screw(list, p, post, end, job->about.units);
	else
		post_dowel(list, p, post, end, job, room);
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
	struct upright post = {
		section, section, infill_top(s, x) - z,
		{ [INFILL_FOOT] = infill_foot_is_raked(s) ? s->slope : 0, [INFILL_TOP] = s->slope }
	};
	struct part *p =
		piece_add(list, "post", job->material.balusters, infill_post(s, x, z, section));
	p->size = (struct part_size){ post.height + section * s->slope, section, section };
	p->outline = upright_outline(a, &post);
	p->start.mitre = atan(post.slope[INFILL_FOOT]);
	p->end.mitre = s->pitch;
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, section);
	post_hold(list, p, s, x, &post, INFILL_FOOT);
	post_hold(list, p, s, x, &post, INFILL_TOP);
}

/* Where there is nothing to end against: no newel, or one that is panelled. */
static bool ends_open(const struct stretch *s, struct rail_end e)
{
	return e.kind != RAIL_END_WALL && !infill_meets_newel(s, e);
}

/* On a tread, in line with the riser's face. */
static double post_place(const struct stretch *s, double x)
{
	double run = s->rod->run;
	return infill_on_treads(s) ? run * round(x / run) : x;
}

/* Kept clear in front of a riser's face: the nosing over it, and the moulding at its foot. */
static double kept_clear(const struct stretch *s)
{
	const struct job_mouldings *m = &s->rod->job->mouldings;
	double moulding = m->back != MOULDING_NONE ? m->back_size : 0;
	return infill_on_treads(s) ? fmax(s->rod->nosing, moulding) : 0;
}

static bool post_fits(struct arena *a, const struct stretch *s, struct diags *d)
{
	double post = s->rod->job->infill.post, room = s->rod->run - kept_clear(s);
	if (!infill_on_treads(s) || post <= room)
		return true;
	diag_error(d, rod_pos(s->rod, s->rod->job->infill.src, "post"),
		job_write_most(a, s->rod->job, "infill.post", room),
		"a post of %s does not stand on a tread: there is room for %s",
		infill_letter(s, a, post), infill_letter(s, a, room));
	return false;
}

/* How far the post beside the first newel, which stands where that leaves off, comes into the
 * nosing above; not at all: 0 or less. */
static double into_nosing(const struct stretch *s)
{
	double run = s->rod->run, post = s->rod->job->infill.post;
	double riser = run * (floor(s->from / run + NEAR_ENOUGH) + 1);

	if (!stretch_is_made(s) || !infill_on_treads(s) || !ends_open(s, s->foot))
		return 0;
	return s->from + post - (riser - kept_clear(s));
}

/* What mends it does so on the other side too. */
static bool first_fits(struct arena *a, const struct stretch *s, struct diags *d)
{
	double over = into_nosing(s), most = over;

	if (over <= NEAR_ENOUGH)
		return true;
	for (const struct stretch *next = s->next; next; next = next->next)
		most = fmax(most, into_nosing(next));
	diag_error(d, rod_pos(s->rod, s->rod->job->infill.src, "post"),
		arena_printf(a, "%s, or take a thinner newel, or one that is not panelled",
			job_write_most(a, s->rod->job, "infill.post",
				s->rod->job->infill.post - most)),
		"the post at the foot of the rail comes %s into the nosing above its tread",
		infill_letter(s, a, over));
	return false;
}

/* Those between stand with their front in line with a riser's face, the one at an open foot where
 * the rail begins: which is nearest to a nosing? */
static bool clears_nosing(struct arena *a, const struct stretch *s, int n, struct diags *d)
{
	const struct job *job = s->rod->job;
	double run = s->rod->run, dowel = dowel_of(job);
	double front = n > 1 ? 0 : s->from - run * floor(s->from / run + NEAR_ENOUGH);
	double room = infill_dowel_room(s, INFILL_FOOT, s->from, 0);
	if (room < job->balusters.dowel || (n == 1 && !ends_open(s, s->foot)))
		return true;
	return upright_clears_nosing(a, s, front + (job->infill.post - dowel) / 2, "a post", d);
}

/* The whole stretch, between the posts that are added where it ends open. */
static struct span whole_span(struct pieces *list, const struct stretch *s)
{
	double post = s->rod->job->infill.post;
	struct span whole = { s->from, s->to, ends_open(s, s->foot), ends_open(s, s->head) };
	if (whole.post_before) {
		post_add(list, s, whole.from);
		whole.from += post;
	}
	if (whole.post_after) {
		/* the rail ends over the face of a riser: clear of its nosing */
		whole.to -= post + kept_clear(s);
		post_add(list, s, whole.to);
	}
	return whole;
}

/* Where there is room for one. */
static void add_span(struct spans *list, struct span span)
{
	if (span.to - span.from >= 1)
		list->span[list->n++] = span;
}

struct spans spans_make(struct pieces *list, const struct stretch *s, struct diags *d)
{
	const struct job_infill *f = &s->rod->job->infill;
	double post = f->post;
	struct spans spans = { NULL, 0 };
	if (!post_fits(list->arena, s, d) || !first_fits(list->arena, s, d))
		return spans;
	struct span whole = whole_span(list, s), left = whole;
	double length = whole.to - whole.from;
	int n = (int)fmax(1, ceil((length + post) / (f->post_spacing + post) - NEAR_ENOUGH));
	if (!clears_nosing(list->arena, s, n, d))
		return spans;
	double equal = (length - (n - 1) * post) / n;
	spans.span = NEW_N(list->arena, struct span, n);
	for (int i = 1; i < n; i++) {
		double x = post_place(s, whole.from + i * equal + (i - 1) * post);
		if (x < left.from + 1 || x + post > left.to - 1)
			continue;
		add_span(&spans, (struct span){ left.from, x, left.post_before, true });
		post_add(list, s, x);
		left.from = x + post;
		left.post_before = true;
	}
	add_span(&spans, left);
	return spans;
}
