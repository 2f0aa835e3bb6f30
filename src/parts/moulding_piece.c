/*
 * Lengths of moulding, and the pieces that return their ends: seen from above,
 * the wood behind them at the top,
 *
 *      ____________________________________________
 *     |\              back                       /.|  a returned end: the length is mitred, and
 *     | \______________________________________ /..|  a triangle as thick as the moulding turns
 *              out                                    the profile to the wood behind
 */
#include "parts/moulding.h"

static bool is_cut_back(enum moulding_end end)
{
	return end != MOULDING_SQUARE;
}

static void add_mitre(struct arena *a, struct part *p, enum moulding_end end)
{
	if (is_cut_back(end))
		piece_feature(a, p,
			(struct feature){ .kind = FEATURE_MITRE,
				.angle = PI / 4,
				.text = end == MOULDING_MITRED
					? "end mitred 45 degrees to the next length"
					: "end mitred 45 degrees to its return" });
}

static struct outline plan_outline(struct arena *a, const struct moulding *m,
	const struct moulding_run *run)
{
	double w = m->width;
	struct path p = path_begin(a, 4);
	path_to(&p, is_cut_back(run->start) ? w : 0, 0);
	path_to(&p, run->length - (is_cut_back(run->end) ? w : 0), 0);
	path_to(&p, run->length, w);
	path_to(&p, 0, w);
	return path_close(p);
}

static struct part *part_add(struct pieces *list, const struct rod *r, const struct moulding *m,
	const char *name, struct frame at)
{
	struct part *p = piece_add(list, name, r->job->material.mouldings,
		frame_compose(r->flight->frame, at));
	p->section = moulding_section(list->arena, m);
	p->stuff = STUFF_MOULDING;
	p->note = "ripped off wide stock";
	return p;
}

static void length_add(struct pieces *list, const struct rod *r, const struct moulding *m,
	const struct moulding_run *run)
{
	double lean0 = is_cut_back(run->start) ? 1 : 0, lean1 = is_cut_back(run->end) ? 1 : 0;
	struct part *p = part_add(list, r, m, m->name, run->at);
	p->size = (struct part_size){ run->length, m->width, m->height };
	p->outline = plan_outline(list->arena, m, run);
	p->start.mitre = lean0 * PI / 4;
	p->end.mitre = lean1 * PI / 4;
	p->solids = solid_strip(list->arena, profile_of(list->arena, p->section),
		(struct end_plane){ lean0 * m->width, -lean0, 0 },
		(struct end_plane){ run->length - lean1 * m->width, lean1, 0 });
	add_mitre(list->arena, p, run->start);
	add_mitre(list->arena, p, run->end);
}

/* On which end of a returning piece its mitre is: seen from outside, x to the right. */
enum mitre_at { MITRE_LEFT, MITRE_RIGHT };

/* The triangle that a returning piece is at one level, `out` from the wood it is mitred to. */
static struct vec3 *triangle(struct arena *a, enum mitre_at mitre, double width, struct vec out)
{
	struct vec3 *t = NEW_N(a, struct vec3, 3);
	bool right = mitre == MITRE_RIGHT;
	t[0] = vec3(right ? 0 : width, 0, out.y);
	t[1] = vec3(right ? out.x : width, out.x, out.y);
	t[2] = vec3(right ? 0 : width - out.x, out.x, out.y);
	return t;
}

/* The profile turns the corner in it, so it is built up in slices, level by level. */
static struct solid *return_solids(struct arena *a, const struct moulding *m, enum mitre_at mitre)
{
	struct profile f = profile_of(a, moulding_section(a, m));
	struct solid *s = NULL;
	for (int i = 0; i < f.n; i++) {
		struct vec low = f.at[i], high = f.at[(i + 1) % f.n];
		if (high.y <= low.y + NEAR_ENOUGH)
			continue;
		unsigned char *soft = NEW_N(a, unsigned char, 3);
		for (int k = 0; k < 3; k++)
			soft[k] = (unsigned char)((high.y < m->height - NEAR_ENOUGH ? SOFT_A : 0) |
				(low.y > NEAR_ENOUGH ? SOFT_B : 0));
		s = solid_add(s,
			solid_join(a, 3, triangle(a, mitre, m->width, high),
				triangle(a, mitre, m->width, low), soft));
	}
	return s;
}

static void return_add(struct pieces *list, const struct rod *r, const struct moulding *m,
	struct frame at, enum mitre_at mitre)
{
	struct arena *a = list->arena;
	double w = m->width;
	struct part *p = part_add(list, r, m, arena_printf(a, "%s, end", m->name), at);
	p->size = (struct part_size){ w, w, m->height };
	struct path o = path_begin(a, 3);
	path_to(&o, mitre == MITRE_RIGHT ? 0 : w, 0);
	path_to(&o, w, w);
	path_to(&o, 0, w);
	p->outline = path_close(o);
	p->start.mitre = mitre == MITRE_LEFT ? PI / 4 : 0;
	p->end.mitre = mitre == MITRE_RIGHT ? PI / 4 : 0;
	p->solids = return_solids(a, m, mitre);
	p->note = "cut off a length, mitre first";
}

/* A frame turned so that its piece looks the way the length does not: along `out`. */
static struct frame turned(const struct moulding_run *run, struct vec3 origin, struct vec3 out)
{
	struct frame f = { .v = out, .w = run->at.w };
	f.u = vec3_cross(f.v, f.w);
	f.origin = frame_place(run->at, origin);
	return f;
}

void moulding_add(struct pieces *list, const struct rod *r, const struct moulding *m,
	struct moulding_run run)
{
	double w = m->width;
	length_add(list, r, m, &run);
	if (run.start == MOULDING_RETURNED)
		return_add(list, r, m, turned(&run, vec3(w, 0, 0), vec3_scale(run.at.u, -1)),
			MITRE_RIGHT);
	if (run.end == MOULDING_RETURNED)
		return_add(list, r, m, turned(&run, vec3(run.length - w, w, 0), run.at.u),
			MITRE_LEFT);
}
