/*
 * What is drawn of a stringer at true size, in the plank's own axes: x along the plank from its
 * lower end, y up from its lower edge.
 */
#include "draw/bounds.h"
#include "sheets/template_draft.h"
#include "sheets/template_stringer.h"

struct box stringer_extent(struct arena *a, const struct part *part)
{
	return chain_box(outline_chain(a, part->outline));
}

static double area(struct outline o)
{
	double sum = 0;

	for (int i = 0; i < o.n; i++)
		sum += vec_cross(o.corners[i].at, o.corners[(i + 1) % o.n].at);
	return sum / 2;
}

/* From corner i into the wood, half way between its two sides. */
static struct vec into_the_wood(struct outline o, int i)
{
	struct vec at = o.corners[i].at;
	struct vec before = vec_unit(vec_sub(at, o.corners[(i + o.n - 1) % o.n].at));
	struct vec after = vec_unit(vec_sub(o.corners[(i + 1) % o.n].at, at));
	struct vec left = vec_unit(vec_add(vec_left(before), vec_left(after)));

	return area(o) > 0 ? left : vec_scale(left, -1);
}

/* At a position of the stringer, lettered beside it: out of its outline into the wood. */
static struct pattern_label position_label(const struct part *part, struct positions p, int i)
{
	return (struct pattern_label){
		.at = p.position[i].at,
		.toward = i < part->outline.n ? into_the_wood(part->outline, i) : vec(0, 1),
	};
}

static void add_corners(struct draft *d, const struct part *part)
{
	struct positions p = stringer_corners(d->arena, part, d->lettering);

	for (int i = 0; i < p.n; i++) {
		const struct position *q = &p.position[i];
		struct pattern_label l = position_label(part, p, i);
		l.ways[0] = arena_printf(d->arena, "%d: %s, %s", q->number, q->along, q->across);
		l.ways[1] = arena_printf(d->arena, "%d", q->number);
		draft_label(d, l);
	}
}

/* A piece that is used in many places carries no number and no running position. */
static void add_piece_corners(struct draft *d, const struct part *part)
{
	struct positions p = stringer_corners(d->arena, part, d->lettering);

	for (int i = 0; i < p.n; i++) {
		const char *across = p.position[i].across,
			   *along = draft_figure(d, p.position[i].at.x);
		struct pattern_label l = position_label(part, p, i);
		l.ways[0] = arena_printf(d->arena, "%s, %s from the lower end of this piece", along,
			across);
		l.ways[1] = arena_printf(d->arena, "%s, %s", along, across);
		l.ways[2] = along;
		draft_label(d, l);
	}
}

static bool lies_on(struct vec p, struct vec a, struct vec b)
{
	struct vec run = vec_sub(b, a), along = vec_unit(run), off = vec_sub(p, a);
	double at = vec_dot(off, along);

	return pattern_alike(vec_cross(along, off), 0) && at > -PATTERN_ALIKE &&
		at < vec_length(run) + PATTERN_ALIKE;
}

static bool is_on_outline(struct chain outline, struct vec a, struct vec b)
{
	for (int i = 0; i < outline.n; i++) {
		struct vec p = outline.points[i], q = outline.points[(i + 1) % outline.n];
		if (lies_on(a, p, q) && lies_on(b, p, q))
			return true;
	}
	return false;
}

/* Where the far face's edge leaves the near one's: the line a bevelled cut comes out on. */
static void add_far_face(struct draft *d, const struct part *part, struct chain outline)
{
	struct chain far = outline_chain(d->arena, part->stringer->far_face);

	for (int i = 0; i < far.n; i++) {
		struct vec a = far.points[i], b = far.points[(i + 1) % far.n];
		struct vec middle = vec_scale(vec_add(a, b), 0.5);
		if (is_on_outline(outline, a, b))
			continue;
		draft_segment(d, PEN_HIDDEN, a, b);
		if (is_on_outline(outline, middle, middle))
			continue;
		draft_label(d,
			(struct pattern_label){
				.at = middle,
				.toward = vec_left(vec_unit(vec_sub(b, a))),
				.ways = { "here the bevel comes out below", "bevel, below" },
			});
	}
}

/* A label for a feature: inside it, half way along its longest side. */
static struct pattern_label feature_label(const struct feature *f)
{
	struct outline o = f->at;
	struct vec best = vec(0, 0), run = vec(0, 0);

	for (int i = 0; i < o.n; i++) {
		struct vec from = o.corners[i].at,
			   side = vec_sub(o.corners[(i + 1) % o.n].at, from);
		if (vec_length(side) <= vec_length(run))
			continue;
		run = side;
		best = vec_add(from, vec_scale(side, 0.5));
	}
	struct vec inward = vec_left(vec_unit(run));
	return (struct pattern_label){ .at = best,
		.toward = area(o) < 0 ? vec_scale(inward, -1) : inward,
		.ways = { f->text } };
}

/* Grooves are worked to their lines; the other features lie on the cut line already. */
static void add_features(struct draft *d, const struct part *part)
{
	for (const struct feature *f = part->features; f; f = f->next) {
		if (f->at.n < 2)
			continue;
		if (f->kind == FEATURE_GROOVE)
			for (const struct chain *c = groove_lines(d->arena, part, f); c;
				c = c->next)
				draft_chain(d, PEN_TEMPLATE, *c);
		if (f->text)
			draft_label(d, feature_label(f));
	}
}

static void label_bore(struct draft *d, const struct unit_bore *b, const struct position *q)
{
	bool in_edge = b->side == BORE_IN_EDGE;
	struct vec into = vec_scale(vec_unit(vec(b->at.w.x, b->at.w.y)), -1);
	const char *figures = arena_printf(d->arena, "%d: %s, %s", q->number, q->along, q->across);
	const char *words = bore_words(d->arena, d->lettering, b);

	draft_label(d,
		(struct pattern_label){
			.at = q->at,
			.toward = in_edge ? into : vec(0, 1),
			.ways = { arena_printf(d->arena, "%s; %s", figures, words), figures,
				arena_printf(d->arena, "%d", q->number) },
		});
}

/* Mortises and holes: in its edges and ends with their sides and bottom, broken. */
static void add_bores(struct draft *d, const struct part *part)
{
	struct unit_bores b = stringer_bores_drawn(d->arena, part);
	struct positions p = stringer_marks(d->arena, part, d->lettering);

	for (int i = 0; i < b.n; i++) {
		const struct unit_bore *bore = &b.bore[i];
		draft_bore(d, bore, vec(0, 0));
		if (bore->side == BORE_IN_EDGE)
			draft_chain(d, PEN_HIDDEN, bore_lines(d->arena, bore));
		label_bore(d, bore, &p.position[p.n - b.n + i]);
	}
}

static struct pattern finish(struct draft *d, const struct part *part)
{
	if (stringer_is_mirrored(part->stringer))
		draft_mirror(d);
	return d->pattern;
}

/* Where the region ends inside the stringer: a line to set the next piece to. */
static void add_region_ends(struct draft *d, struct box extent)
{
	const double x[2] = { d->region.x0, d->region.x1 };

	for (int i = 0; i < 2; i++)
		if (x[i] > extent.x0 + 1 && x[i] < extent.x1 - 1)
			draft_segment(d, PEN_GUIDE, vec(x[i], extent.y0), vec(x[i], extent.y1));
}

struct pattern stringer_pattern(struct arena *a, const struct part *part,
	struct lettering lettering, struct box region, enum figures figures)
{
	struct draft *d = draft_begin(a, lettering, region);
	struct chain outline = outline_chain(a, part->outline);

	switch (figures) {
	case FIGURES_FROM_PLANK_END:
		add_corners(d, part);
		add_bores(d, part);
		break;
	case FIGURES_FROM_PIECE_END: /* a hole is in one of its places alone: the rod has it */
		d->datum = region.x0;
		add_piece_corners(d, part);
		break;
	}
	draft_chain(d, PEN_TEMPLATE, outline);
	draft_check_line(d);
	draft_base_line(d, chain_box(outline));
	add_region_ends(d, chain_box(outline));
	add_features(d, part);
	if (part->stringer->far_face.n > 0)
		add_far_face(d, part, outline);
	return finish(d, part);
}
