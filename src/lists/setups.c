#include "lists/setups.h"

#include <string.h>

#include "parts/alike.h"

struct setups {
	struct arena *arena;
	struct lettering lettering;
	const struct job *job;
	struct setup *first;
};

static bool is_same(const struct setup *a, const struct setup *b)
{
	return a->work == b->work && near_enough(a->mitre, b->mitre) &&
		near_enough(a->bevel, b->bevel) && near_enough(a->main, b->main) &&
		near_enough(a->second, b->second) && strcmp(a->words, b->words) == 0;
}

/* One after the other on the machine: less than 0 when `a` goes first. */
static int order(const struct setup *a, const struct setup *b)
{
	if (a->work != b->work)
		return (int)a->work - (int)b->work;
	if (!near_enough(a->bevel, b->bevel))
		return a->bevel < b->bevel ? -1 : 1;
	if (!near_enough(a->mitre, b->mitre))
		return a->mitre < b->mitre ? -1 : 1;
	int words = strcmp(a->words, b->words);
	if (a->rank != b->rank)
		return a->rank - b->rank;
	if (words)
		return words;
	/* without a stop first: the ends that the stop then bears on */
	if ((a->main > 0) != (b->main > 0))
		return a->main > 0 ? 1 : -1;
	if (!near_enough(a->main, b->main))
		return a->main > b->main ? -1 : 1;
	return near_enough(a->second, b->second) ? 0 : a->second > b->second ? -1 : 1;
}

static struct setup *find(struct setups *s, const struct setup *wanted)
{
	struct setup **at = &s->first;

	while (*at && order(*at, wanted) < 0)
		at = &(*at)->next;
	if (*at && is_same(*at, wanted))
		return *at;
	struct setup *made = NEW(s->arena, struct setup);
	*made = *wanted;
	made->marks = made->short_ones = (struct text){ .arena = s->arena };
	made->next = *at;
	*at = made;
	return made;
}

/* A machine is set by what is lettered: what is lettered alike is one setting. */
static void settle(const struct setups *s, struct setup *wanted)
{
	const double tenth = PI / 1800;

	wanted->words = wanted->words ? wanted->words : "";
	wanted->mitre = round(wanted->mitre / tenth) * tenth;
	wanted->bevel = round(wanted->bevel / tenth) * tenth;
	if (!wanted->lettering.fraction)
		wanted->lettering = s->lettering;
	wanted->main = length_lettered_value(wanted->lettering, wanted->main);
	wanted->second = length_lettered_value(s->lettering, wanted->second);
}

static void want(struct setups *s, struct setup wanted, const struct blank *b, int pieces)
{
	settle(s, &wanted);
	struct setup *it = find(s, &wanted);

	it->cuts += pieces * (wanted.each > 0 ? wanted.each : 1);
	if (it->last == b->part)
		return;
	it->last = b->part;
	text_join(&it->marks, ", ", arena_printf(s->arena, "%d %s", pieces, b->part->mark));
	if (b->is_short)
		text_join(&it->short_ones, ", ", b->part->mark);
}

/* ---- what the parts want ---- */

static bool is_glued(const struct blank *b)
{
	return b->each > 1;
}

static int whole_pieces(const struct blank *b)
{
	return b->pieces + b->spares;
}

#define PLAIN_CORNERS 8 /* of a board with mitred ends and a corner cut out at either */

/* Round somewhere, or along the steps: no fence leads it. */
static bool is_sawn_to_outline(const struct part *p)
{
	if (p->stringer)
		return false;
	for (int i = 0; i < p->outline.n; i++)
		if (fabs(p->outline.corners[i].bulge) > NEAR_ENOUGH)
			return true;
	return p->outline.n > PLAIN_CORNERS;
}

/* Too short to be led along a fence or against a stop, or a block of plies too thick for the saw;
 * and none of its edges is of use there. */
static bool is_sawn_free(const struct blank *b)
{
	return (b->row > 0 || b->plies > 1) && is_sawn_to_outline(b->part);
}

static void want_plane(struct setups *s, const struct blank *b)
{
	struct setup plane = { .work = WORK_PLANE, .main = b->thickness, .words = "to thickness" };

	if (b->plies > 1)
		plane.words = "plies, their stack to the size of the piece";
	if (b->plies > 1 || (b->gang > 1 && b->is_turned))
		plane.lettering = ply_lettering(s->job);
	want(s, plane, b, blank_count(b));
}

static void want_rip(struct setups *s, const struct blank *b)
{
	struct setup rip = { .work = WORK_RIP, .main = b->width, .words = "fence" };

	if (is_glued(b))
		rip.words = "fence, to be glued up";
	else if (b->gang > 1 || b->row > 1)
		rip.words = "fence, for several out of one";
	if (b->gang > 1 && !b->is_turned)
		rip.lettering = ply_lettering(s->job);
	want(s, rip, b, blank_count(b));
}

static void want_sizes(struct setups *s, const struct blank *b)
{
	if (b->stuff == STUFF_BOARD)
		want_plane(s, b);
	if (b->stuff == STUFF_PLANK)
		return;
	/* plies go into the clamps rough, and are trimmed as one */
	if (!is_glued(b) || b->width < blank_finished(b).width - NEAR_ENOUGH)
		want_rip(s, b);
	if (is_glued(b) && !is_sawn_free(b))
		want(s,
			(struct setup){ .work = b->row > 0 ? WORK_TRIM : WORK_PANEL,
				.main = blank_finished(b).width },
			b, blank_lengths(b));
}

static bool is_before(struct end_cut a, struct end_cut b)
{
	return near_enough(a.bevel, b.bevel) ? a.mitre < b.mitre : a.bevel < b.bevel;
}

static struct end_cut unsigned_cut(struct end_cut c)
{
	return (struct end_cut){ fabs(c.mitre), fabs(c.bevel) };
}

static struct setup crosscut(struct end_cut cut, double stop)
{
	return (struct setup){ .work = WORK_CROSSCUT,
		.mitre = cut.mitre,
		.bevel = cut.bevel,
		.main = stop };
}

/* Off a length: its end first, mitred where one end of the piece is; then to a line. */
static void want_cut_off(struct setups *s, const struct blank *b, struct end_cut end,
	struct end_cut off)
{
	struct setup first = crosscut(end, 0), last = crosscut(off, 0);

	first.words = "end of a length, no stop";
	last.words = "off that length";
	last.second = b->length;
	want(s, first, b, blank_sawn(b));
	want(s, last, b, blank_sawn(b));
}

/* The plainer end first, by eye; the other one to the stop. */
static void want_ends(struct setups *s, const struct blank *b)
{
	struct end_cut first = unsigned_cut(b->part->start), last = unsigned_cut(b->part->end);
	int n = blank_sawn(b);

	if (b->part->stringer || is_sawn_free(b))
		return;
	if (is_before(last, first)) {
		struct end_cut swap = first;
		first = last;
		last = swap;
	}
	if (b->row > 0) {
		want_cut_off(s, b, last, first);
		return;
	}
	want(s, crosscut(first, 0), b, n);
	want(s, crosscut(last, b->length), b, n);
}

/* Waste comes off before the router; across the grain before along it. */
static int shape_rank(enum feature_kind kind)
{
	switch (kind) {
	case FEATURE_WASTE: return 0;
	case FEATURE_NOTCH: return 1;
	case FEATURE_GROOVE: return 2;
	case FEATURE_CHAMFER:
	case FEATURE_TAPER: return 3;
	case FEATURE_ROUND: return 4;
	case FEATURE_MITRE:
	case FEATURE_SAWN: break;
	}
	return 5;
}

/* NULL: it is no shaping; a mitre is cut with the ends, and the saw has its own settings. */
static const char *shape_words(const struct setups *s, const struct feature *f)
{
	struct arena *a = s->arena;
	struct lettering l = s->lettering;
	const char *depth = length_letter_inches(a, l, f->depth);

	if (f->setting)
		return f->setting;
	switch (f->kind) {
	case FEATURE_NOTCH: return "notch";
	case FEATURE_GROOVE: return arena_printf(a, "groove %s deep", depth);
	case FEATURE_CHAMFER: return arena_printf(a, "chamfer %s", depth);
	case FEATURE_TAPER:
		return arena_printf(a, "saw a taper of %s, on a jig that holds the piece down",
			angle_letter(a, f->angle));
	case FEATURE_ROUND:
		return arena_printf(a, "round %s",
			length_letter_inches(a, job_radius_lettering(s->job), f->radius));
	case FEATURE_WASTE:
	case FEATURE_MITRE:
	case FEATURE_SAWN: break;
	}
	return NULL;
}

/* Half of a block's cuts are made across the grain, and they come first. */
static void want_block(struct setups *s, const struct blank *b, const struct sawn *cut)
{
	static const char *const ways[2] = { "across the grain", "along the grain" };

	for (int i = 0; i < 2; i++)
		want(s,
			(struct setup){ .work = WORK_BLOCK,
				.rank = i,
				.bevel = cut->tilt,
				.main = cut->fence,
				.second = cut->height,
				.each = cut->cuts / 2,
				.words = arena_printf(s->arena, "%s, %s", ways[i], cut->lies) },
			b, whole_pieces(b));
}

/* Of a block the plumb cuts come before the sloped ones, which would leave nothing to stand on. */
static void want_sawn(struct setups *s, const struct blank *b)
{
	for (const struct feature *f = b->part->features; f; f = f->next) {
		if (f->kind == FEATURE_SAWN && f->sawn.fence > 0)
			want_block(s, b, &f->sawn);
		else if (f->kind == FEATURE_SAWN)
			want(s,
				(struct setup){ .work = WORK_BEVEL,
					.bevel = f->sawn.tilt,
					.second = f->sawn.height,
					.each = f->sawn.cuts,
					.words = f->sawn.lies },
				b, blank_lengths(b));
	}
}

static bool is_run(const struct blank *b)
{
	return b->stuff == STUFF_MOULDING || (b->part->rail && b->stuff != STUFF_BOUGHT);
}

static bool runs_alike(const struct blank *a, const struct blank *b)
{
	return is_run(a) && outlines_are_same(a->part->section, b->part->section);
}

/* One set of cutters for all of one section, whatever they are called: named by the first. */
static void want_profile(struct setups *s, const struct blank *all, const struct blank *b)
{
	const struct blank *first = all;
	if (!is_run(b))
		return;
	while (!runs_alike(first, b))
		first = first->next;
	const struct part *p = first->part;
	const char *words = arena_printf(s->arena, "the profile of %s, %s x %s%s", p->mark,
		length_letter_inches(s->arena, s->lettering, p->size.thickness),
		length_letter_inches(s->arena, s->lettering, p->size.width),
		p->rail ? "" : ", on the edge of wide stock; rip it off");
	want(s, (struct setup){ .work = WORK_PROFILE, .words = words }, b, blank_count(b));
}

/* An edge, which runs along the grain, and round an end across it. */
static bool is_edge(enum feature_kind kind)
{
	return kind == FEATURE_WASTE || kind == FEATURE_CHAMFER || kind == FEATURE_ROUND;
}

static void want_shape(struct setups *s, const struct blank *b, const struct feature *f,
	const char *words)
{
	struct setup shape = { .work = WORK_SHAPE, .rank = 2 * shape_rank(f->kind) };

	if (f->goes_round) {
		shape.words = arena_printf(s->arena, "%s, across the grain", words);
		want(s, shape, b, whole_pieces(b));
	}
	/* what is short is run before it is cut off its length */
	if (is_edge(f->kind) && !f->goes_round && b->row > 0) {
		shape.work = WORK_PROFILE;
		shape.words = words;
		want(s, shape, b, blank_lengths(b));
		return;
	}
	shape.rank++;
	shape.words =
		is_edge(f->kind) ? arena_printf(s->arena, "%s, along the grain", words) : words;
	want(s, shape, b, whole_pieces(b));
}

static void want_shapes(struct setups *s, const struct blank *b)
{
	for (const struct feature *f = b->part->features; f; f = f->next) {
		const char *words = b->part->stringer ? NULL : shape_words(s, f);
		if (words)
			want_shape(s, b, f, words);
	}
}

static const char *outline_words(const struct blank *b)
{
	if (b->row > 0)
		return "band saw to the outline, off its length";
	return b->plies > 1 ? "band saw to the outline" : "band saw or jig saw to the outline";
}

/* First of all shaping: what is run along an edge follows it, and so does a section that no
 * straight length has. */
static void want_outline(struct setups *s, const struct blank *b)
{
	const struct part *p = b->part;

	if (!is_sawn_to_outline(p))
		return;
	if (p->section.n > 0 && !p->nosing && !is_run(b))
		want(s,
			(struct setup){ .work = WORK_SHAPE,
				.rank = 2 * shape_rank(FEATURE_SAWN),
				.words = "its section along the outline, by router" },
			b, whole_pieces(b));
	want(s, (struct setup){ .work = WORK_SHAPE, .rank = -1, .words = outline_words(b) }, b,
		whole_pieces(b));
}

static const char *bore_words(enum bore_kind kind)
{
	switch (kind) {
	case BORE_HOLE: return "hole";
	case BORE_SLOT: return "slot";
	case BORE_MORTISE: return "mortise";
	}
	return "";
}

/* Brads are driven. */
static void want_bores(struct setups *s, const struct blank *b)
{
	for (const struct bore *o = b->part->bores; o; o = o->next)
		if (o->fixing != FIXING_BRAD)
			want(s,
				(struct setup){ .work = WORK_BORE,
					.words = bore_words(o->size.kind),
					.main = o->size.width,
					.second = o->size.depth,
					.lettering = bit_lettering(s->lettering) },
				b, whole_pieces(b));
}

const struct setup *setups_find(struct arena *a, const struct job *job, const struct blank *blanks)
{
	struct setups all = { .arena = a, .lettering = job_lettering(job), .job = job };

	for (const struct blank *b = blanks; b; b = b->next) {
		want_sizes(&all, b);
		want_profile(&all, blanks, b);
		want_ends(&all, b);
		want_sawn(&all, b);
		want_outline(&all, b);
		want_shapes(&all, b);
		want_bores(&all, b);
	}
	return all.first;
}
