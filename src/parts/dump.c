/*
 * Parts as text: for goldens, bug reports and `--dump`.
 */
#include "base/text.h"
#include "pitchboard/rail.h"

static const char *const feature_names[] = {
	[FEATURE_GROOVE] = "groove",
	[FEATURE_NOTCH] = "notch",
	[FEATURE_MITRE] = "mitre",
	[FEATURE_ROUND] = "round",
	[FEATURE_CHAMFER] = "chamfer",
	[FEATURE_TAPER] = "taper",
	[FEATURE_WASTE] = "waste",
	[FEATURE_SAWN] = "sawn",
};

static double degrees(double radians)
{
	return text_tidy(radians * 180 / PI);
}

static void add_outline(struct text *t, const char *what, struct outline o)
{
	if (o.n == 0)
		return;
	text_add(t, "  %s", what);
	for (int i = 0; i < o.n; i++) {
		const struct corner *c = &o.corners[i];
		text_add(t, " %.3f,%.3f", text_tidy(c->at.x), text_tidy(c->at.y));
		if (c->bulge != 0)
			text_add(t, "~%.4f", c->bulge);
	}
	text_add(t, "\n");
}

static void add_points(struct text *t, const char *what, const struct vec3 *p, int n)
{
	text_add(t, "    %s", what);
	for (int i = 0; i < n; i++)
		text_add(t, " %.3f,%.3f,%.3f", text_tidy(p[i].x), text_tidy(p[i].y),
			text_tidy(p[i].z));
	text_add(t, "\n");
}

static void add_stringer(struct text *t, const struct stringer *g)
{
	text_add(t, "  throat %.3f, plank %.3f x %.3f, cut %.3f, first cut %.3f, drop %.3f\n",
		g->throat, g->plank_width, g->plank_length, g->cut_length, g->first_rise_cut,
		text_tidy(g->drop));
	text_add(t, "  rises finished: first %.3f, last %.3f\n", g->first_rise_finished,
		g->last_rise_finished);
	add_outline(t, "far face", g->far_face);
}

static void add_features(struct text *t, const struct feature *f)
{
	for (; f; f = f->next) {
		text_add(t, "  %s: %s\n", feature_names[f->kind], f->text);
		add_outline(t, "  at", f->at);
	}
}

static const char *const bore_names[] = {
	[BORE_HOLE] = "hole",
	[BORE_SLOT] = "slot",
	[BORE_MORTISE] = "mortise",
};

static void add_bores(struct text *t, const struct bore *b)
{
	for (; b; b = b->next) {
		const struct vec3 *o = &b->at.origin, *w = &b->at.w;
		text_add(t,
			"  %s%s %.3f x %.3f, %.3f deep, at %.3f,%.3f,%.3f out %.3f,%.3f,%.3f: %s\n",
			b->is_mate ? "mate: " : "", bore_names[b->size.kind], b->size.length,
			b->size.width, b->size.depth, text_tidy(o->x), text_tidy(o->y),
			text_tidy(o->z), text_tidy(w->x), text_tidy(w->y), text_tidy(w->z),
			b->text ? b->text : "");
	}
}

static void add_rail(struct text *t, const struct rail *r)
{
	const struct rail_profile *p = &r->profile;
	text_add(t, "  profile: round it %.3f, largest %.3f, edges %.3f, flat %.3f\n", p->perimeter,
		p->largest, p->edge_radius, p->flat);
	if (p->recess.depth > 0)
		text_add(t, "  recess: %.3f deep, starts %.3f, from %.3f to %.3f under the top\n",
			p->recess.depth, p->recess.start, p->recess.from, p->recess.to);
	text_add(t, "  cut face %.3f, at %.3f to %.3f and %.3f to %.3f\n", r->cut_face,
		r->foot.under, r->foot.top, r->head.under, r->head.top);
}

static void add_newel(struct text *t, const struct newel *n)
{
	text_add(t, "  core %.3f, rail %.3f to %.3f, leg %.3f\n", n->core, n->rail_low,
		n->rail_high, n->leg);
	for (int i = 0; i < n->ring_count; i++)
		text_add(t, "  cross rails %.3f to %.3f, spacer %.3f\n", n->rings[i].from,
			n->rings[i].to, n->rings[i].spacer);
}

static void add_cap(struct text *t, const struct cap *c)
{
	text_add(t, "  cap edge %.3f, height %.3f, slope %.3f\n", c->edge, c->height,
		degrees(c->slope));
	text_add(t, "  block: tilt %.3f, blade %.3f, fence %.3f, shoulder %.3f\n",
		degrees(c->blade_tilt), c->blade_height, c->fence, c->shoulder);
	text_add(t, "  mitred: gauge %.3f, tilt %.3f, foot %.3f\n", degrees(c->mitre_gauge),
		degrees(c->mitre_tilt), degrees(c->foot_tilt));
}

static void add_part(struct text *t, const struct part *p)
{
	text_add(t, "%s %s: %d of %.3f x %.3f x %.3f %s\n", p->mark[0] ? p->mark : "-", p->name,
		p->count, p->size.length, p->size.width, p->size.thickness,
		p->material ? p->material : "");
	text_add(t, "  ends: %.3f/%.3f and %.3f/%.3f\n", degrees(p->start.mitre),
		degrees(p->start.bevel), degrees(p->end.mitre), degrees(p->end.bevel));
	add_outline(t, "outline", p->outline);
	add_outline(t, "section", p->section);
	add_outline(t, "core", p->core);
	add_features(t, p->features);
	add_bores(t, p->bores);
	if (p->stringer)
		add_stringer(t, p->stringer);
	if (p->baluster)
		text_add(t, "  long point %.3f, short point %.3f\n", p->baluster->long_point,
			p->baluster->short_point);
	if (p->rail)
		add_rail(t, p->rail);
	if (p->newel)
		add_newel(t, p->newel);
	if (p->cap)
		add_cap(t, p->cap);
	for (const struct solid *s = p->solids; s; s = s->next) {
		text_add(t, "  solid\n");
		add_points(t, "a", s->a, s->n);
		add_points(t, "b", s->b, s->n);
	}
	for (int i = 0; i < p->count; i++)
		text_add(t, "  at %.3f,%.3f,%.3f\n", text_tidy(p->places[i].origin.x),
			text_tidy(p->places[i].origin.y), text_tidy(p->places[i].origin.z));
	if (p->note)
		text_add(t, "  note: %s\n", p->note);
}

const char *parts_dump(struct arena *a, const struct part *parts)
{
	struct text t = { .arena = a };
	for (const struct part *p = parts; p; p = p->next)
		add_part(&t, p);
	return text_chars(&t);
}
