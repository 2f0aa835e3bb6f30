/*
 * The families of parts as a client calls them, and what each is made of.
 */
#include <string.h>

#include "sheets/client.h"

static const char *infill_head(const struct job *job)
{
	switch (job->infill.kind) {
	case INFILL_PLAIN:
	case INFILL_BRACED: return "Balusters";
	case INFILL_BARS: return "Bars";
	case INFILL_PANEL: return "Panels";
	}
	return "";
}

static const struct family {
	const struct part_kind *kind;
	const char *head; /* NULL: by the infill */
	enum named named;
	double share; /* of the view's width from the foot of the stair, where one would point */
} families[] = {
	{ &part_rail, "Rail", NAMED_OVER, 0.5 },
	{ &part_wall_rail, "Wall rail", NAMED_OVER, 0.35 },
	{ &part_infill, NULL, NAMED_OVER, 0.4 },
	{ &part_newel, "Newel posts", NAMED_OVER, 0.1 },
	{ &part_tread, "Treads", NAMED_UNDER, 0.8 },
	{ &part_riser, "Risers", NAMED_UNDER, 0.7 },
	{ &part_stringer, "Stringers", NAMED_UNDER, 0.6 },
	{ &part_skirt, "Skirt boards", NAMED_UNDER, 0.5 },
};

#define FAMILIES ((int)(sizeof(families) / sizeof(*families)))

/* A material that says how it is finished is not finished otherwise: "poplar, painted". */
static const char *words_of(struct arena *a, const struct job *job, const struct part *p)
{
	if (strchr(p->material, ','))
		return p->material;
	return arena_printf(a, "%s, %s", p->material, job->material.finish);
}

static struct vec middle(const struct stroke *s)
{
	return vec((s->a.x + s->b.x) / 2, (s->a.y + s->b.y) / 2);
}

/* The edge of the family that is nearest to where one would like to point; a longer edge is worth
 * going a little further for.  NULL: nothing of it is seen. */
static const struct stroke *edge_of(const struct view *v, const struct part_kind *kind,
	double wanted)
{
	const struct stroke *best = NULL;
	double least = INFINITY;

	for (int i = 0; i < v->stroke_count; i++) {
		const struct stroke *s = &v->strokes[i];
		if (s->part->kind != kind || s->pen == PEN_HIDDEN)
			continue;
		double off = fabs(middle(s).x - wanted) - vec_length(vec_sub(s->a, s->b)) / 2;
		if (off < least) {
			least = off;
			best = s;
		}
	}
	return best;
}

int client_labels(struct arena *a, const struct sheet_context *c, const struct view *v,
	enum named named, double scale, const struct label **list)
{
	struct label *labels = NEW_N(a, struct label, FAMILIES);
	const struct job *job = c->stair->job;
	bool mirrored = v->spec.from == VIEW_FROM_LEFT;
	double width = v->box.x1 - v->box.x0;
	int n = 0;

	for (int i = 0; i < FAMILIES; i++) {
		const struct family *f = &families[i];
		double share = mirrored ? 1 - f->share : f->share;
		const struct stroke *s = edge_of(v, f->kind, v->box.x0 + share * width);
		if (!s || (named != NAMED_ALL && named != f->named))
			continue;
		labels[n++] = (struct label){ f->head ? f->head : infill_head(job),
			words_of(a, job, s->part), vec_scale(middle(s), scale) };
	}
	*list = labels;
	return n;
}
