/*
 * Bars parallel to the rail, from newel to newel, with posts between where that
 * is far: all gaps alike, measured square to the bars.
 *
 *              .'|  rail
 *            .' .|
 *      |   .' .' | bars
 *      | .' .' .'|
 *      |' .' .' _|
 *      |.' .'__|
 *      |.'_|
 */
#include "parts/span.h"
#include "parts/strip.h"

#define MOST_BARS 60 /* more of them is a screen, not a balustrade */

/* Square to the rake, between shoe or nosing line and the rail. */
static double height_between(const struct stretch *s)
{
	return (infill_top(s, s->from) - infill_bottom(s, s->from)) * s->cosine;
}

static double gap_of(double height, double bar, int n)
{
	return (height - n * bar) / (n + 1);
}

/* How many, or 0 and an error.  The gap is a wish: as many as the job gives are drawn. */
static int count_bars(struct arena *a, const struct stretch *s, struct diags *d)
{
	const struct job_infill *f = &s->rod->job->infill;
	const struct job_balusters *b = &s->rod->job->balusters;
	double height = height_between(s), limit = b->largest_gap, bar = f->bar_width;
	int enough = (int)fmax(ceil((height - limit) / (bar + limit) - NEAR_ENOUGH), 1);
	int n = f->bars > 0 ? f->bars : enough;
	if (n < enough)
		diag_warning(d, rod_pos(s->rod, f->src, "bars"),
			arena_printf(a, "write infill.bars: %d", enough),
			"infill: %d bars leave gaps of %s, more than largest_gap, %s", n,
			infill_letter(s, a, gap_of(height, bar, n)), infill_letter(s, a, limit));
	if (gap_of(height, bar, n) >= 1 && n <= MOST_BARS)
		return n;
	int most = (int)fmin((height - 1) / (bar + 1), MOST_BARS);
	diag_error(d, rod_pos(s->rod, f->src, "bar_width"),
		f->bars > 0 && most > 0
			? arena_printf(a, "write infill.bars: %d, or take narrower ones", most)
			: "take narrower bars, a larger largest_gap or a higher rail",
		"%d bars of %s do not fit under the rail", n, infill_letter(s, a, bar));
	return 0;
}

/* A newel is deep enough for any tenon; a wall is as it is found, and the bar is scribed to it. */
static void end_joint(struct pieces *list, struct part *p, const struct strip *bar,
	const struct stretch *s, double room, enum strip_end end)
{
	const struct job_infill *f = &s->rod->job->infill;
	struct bore tenon = strip_tenon(bar,
		(struct tenon){ f->tenon_width, f->tenon_thickness, f->tenon_length, room });
	tenon.text = "loose tenon, bar";
	if (tenon_holds(&tenon))
		strip_bore(list->arena, p, bar, tenon, end);
}

static bool is_at_wall(const struct stretch *s, const struct span *span)
{
	return (!span->post_before && s->foot.kind == RAIL_END_WALL) ||
		(!span->post_after && s->head.kind == RAIL_END_WALL);
}

static void bar_add(struct pieces *list, const struct stretch *s, const struct span *span, double z,
	const char *note)
{
	const struct job_infill *f = &s->rod->job->infill;
	struct strip bar = { s, span->from, z, span->to - span->from, f->bar_width,
		f->bar_thickness };
	struct part *p = strip_add(list, "bar", &bar, (struct outline){ NULL, 0 });
	double in_post = f->post / 2;
	p->note = is_at_wall(s, span)
		? arena_printf(list->arena, "%s; the end at the wall scribed and fixed to it", note)
		: note;
	if (span->post_before || infill_meets_newel(s, s->foot))
		end_joint(list, p, &bar, s, span->post_before ? in_post : INFINITY, STRIP_LOW_END);
	if (span->post_after || infill_meets_newel(s, s->head))
		end_joint(list, p, &bar, s, span->post_after ? in_post : INFINITY, STRIP_HIGH_END);
}

static void make(struct pieces *list, const struct stretch *s, struct diags *d)
{
	const struct job_infill *f = &s->rod->job->infill;
	int n = count_bars(list->arena, s, d);
	if (n == 0)
		return;
	double gap = gap_of(height_between(s), f->bar_width, n);
	const char *note = arena_printf(list->arena, "%d over each other, %s clear, square to them",
		n, length_letter(list->arena, job_lettering(s->rod->job), gap));
	struct spans spans = spans_make(list, s, d);
	for (int k = 0; k < spans.n; k++)
		for (int i = 0; i < n; i++) {
			double up = gap + i * (f->bar_width + gap);
			bar_add(list, s, &spans.span[k],
				infill_bottom(s, spans.span[k].from) + up / s->cosine, note);
		}
}

const struct infill_kind infill_bars = { "bars", make };
