/*
 * Panels, let into the ploughs of shoe and subrail, or of stiles on the faces of
 * newels and posts, or of both.
 *
 *              .'|  rail
 *            .' .|  subrail
 *          .' .' |
 *      | .' .' : |  panel: as deep into every plough as leaves it room to move
 *      |' .'   :.|
 *      |:' : .'.'|
 *      |:..'.' __|  shoe
 *      |.'.'__|
 */
#include "parts/shoe.h"
#include "parts/span.h"
#include "parts/strip.h"
#include "parts/upright.h"

/* What holds a stile to newel or post (common practice). */
#define SCREWS 3
#define SCREW 6       /* number */
#define SCREW_IN 28.0 /* into newel or post */
#define SCREW_FROM_END 50.0

static bool has_stiles(const struct job_infill *f)
{
	return f->panel_held != PANEL_IN_RAILS;
}

/* y across from the face of newel or post, z across the stair; the plough of that at the low end of
 * a span looks up the stair. */
static struct outline stile_section(struct arena *a, const struct job_infill *f, enum strip_end end)
{
	double depth = f->subrail_depth, side = (f->strip_width - f->panel_thickness) / 2;
	double floor = depth - f->plough, other = f->strip_width - side;
	const struct vec at[] = { { 0, 0 }, { depth, 0 }, { depth, side }, { floor, side },
		{ floor, other }, { depth, other }, { depth, f->strip_width },
		{ 0, f->strip_width } };
	struct path p = path_begin(a, 8);
	for (int i = 0; i < 8; i++)
		path_to(&p, end == STRIP_LOW_END ? at[i].x : depth - at[i].x, at[i].y);
	return path_close(p);
}

/* Through the floor of the plough, into newel or post. */
static void stile_screws(struct arena *a, struct part *p, const struct job *job, double height,
	enum strip_end end)
{
	const struct job_infill *f = &job->infill;
	double floor = f->subrail_depth - f->plough, y = end == STRIP_LOW_END ? floor : f->plough;
	double first = fmin(SCREW_FROM_END, height / 4);
	int out = end == STRIP_LOW_END ? 1 : -1;
	struct fastener bought = fastener_screw_within(SCREW, floor + SCREW_IN, job->about.units);
	for (int i = 0; i < SCREWS; i++) {
		struct bore screw = fastener_bore(bought, floor);
		screw.at =
			(struct frame){ .u = { 1, 0, 0 }, .v = { 0, 0, -out }, .w = { 0, out, 0 } };
		screw.at.origin = vec3(first + i * (height - 2 * first) / (SCREWS - 1), y,
			f->strip_width / 2);
		screw.text = "screw, stile";
		piece_bore(a, p, screw);
	}
}

/* Its back at newel or post; x is where its front on the lower side stands. */
static void stile_add(struct pieces *list, const struct stretch *s, double x, enum strip_end end)
{
	struct arena *a = list->arena;
	const struct job_infill *f = &s->rod->job->infill;
	double depth = f->subrail_depth, z = infill_bottom(s, x), height = infill_top(s, x) - z;
	double lap = depth * s->slope;
	struct outline section = stile_section(a, f, end);
	struct part *p = piece_add(list, "stile", s->rod->job->material.balusters,
		infill_post(s, x, z, f->strip_width));
	struct path o = path_begin(a, 4);
	path_to(&o, 0, 0);
	path_to(&o, height, 0);
	path_to(&o, height + lap, depth);
	path_to(&o, lap, depth);
	p->outline = path_close(o);
	p->section = section;
	p->size = (struct part_size){ height + lap, depth, f->strip_width };
	p->start.mitre = p->end.mitre = s->pitch;
	p->solids = solid_strip(a, profile_of(a, section), (struct end_plane){ 0, s->slope, 0 },
		(struct end_plane){ height, s->slope, 0 });
	plough_add(a, p, s->rod->job, "face towards the panel");
	stile_screws(a, p, s->rod->job, height, end);
}

/* Where the panel ends, from the face of newel or post. */
static double end_inset(const struct job_infill *f)
{
	double stile = has_stiles(f) ? f->subrail_depth - f->plough : 0;
	return stile + f->panel_gap;
}

static bool is_held(const struct job_infill *f)
{
	return f->panel_held != PANEL_IN_ENDS;
}

static void panel_add(struct pieces *list, const struct stretch *s, const struct span *span)
{
	const struct job_infill *f = &s->rod->job->infill;
	double gap = f->panel_gap / s->cosine, in = end_inset(f), x = span->from + in;
	double low = is_held(f) ? infill_foot(s, x) : infill_bottom(s, x);
	double high = is_held(f) ? infill_head(s, x) : infill_top(s, x);
	struct strip panel = { s, x, low + gap, span->to - span->from - 2 * in,
		(high - low - 2 * gap) * s->cosine, f->panel_thickness };
	struct part *p = strip_add(list, "panel", &panel, (struct outline){ NULL, 0 });
	p->stuff = STUFF_SHEET;
	p->material = s->rod->job->material.panels;
	if (!has_stiles(f))
		return;
	stile_add(list, s, span->from, STRIP_LOW_END);
	stile_add(list, s, span->to - f->subrail_depth, STRIP_HIGH_END);
}

static bool fits(struct arena *a, const struct stretch *s, const struct span *span, struct diags *d)
{
	const struct job_infill *f = &s->rod->job->infill;
	double wide = span->to - span->from - 2 * end_inset(f);
	double high = infill_top(s, s->from) - infill_bottom(s, s->from);
	if (f->panel_gap > f->plough / 2)
		diag_error(d, rod_pos(s->rod, f->src, "panel_gap"),
			job_write_most(a, s->rod->job, "infill.panel_gap", f->plough / 2),
			"infill.panel_gap: with %s of room a panel drops out of a plough of %s",
			infill_letter(s, a, f->panel_gap), infill_letter(s, a, f->plough));
	else if (has_stiles(f) && f->plough >= f->subrail_depth)
		diag_error(d, rod_pos(s->rod, f->src, "subrail_depth"),
			arena_printf(a, "%s, or plough it less",
				job_write_least(a, s->rod->job, "infill.subrail_depth",
					f->plough + 1)),
			"infill.subrail_depth: stiles are as deep, and a plough of %s goes through",
			infill_letter(s, a, f->plough));
	else if (wide < f->panel_thickness || high < f->panel_thickness)
		diag_error(d, rod_pos(s->rod, f->src, "kind"),
			high < f->panel_thickness
				? "take a higher rail, or less of a shoe and subrail"
				: "write infill.kind: plain, or open the side for more steps",
			"there is no room for a panel: %s wide and %s high",
			infill_letter(s, a, fmax(wide, 0)), infill_letter(s, a, fmax(high, 0)));
	else
		return true;
	return false;
}

static void make(struct pieces *list, const struct stretch *s, struct diags *d)
{
	struct spans spans = spans_make(list, s, d);
	for (int i = 0; i < spans.n; i++) {
		if (!fits(list->arena, s, &spans.span[i], d))
			return;
		panel_add(list, s, &spans.span[i]);
	}
}

const struct infill_kind infill_panel = { "panel", make };
