#include "sheets/template_pattern.h"

#include "draw/bounds.h"
#include "sheets/stringer_shape.h"

/* The base line is gauged this far up from the lower edge: inside every throat. */
#define BASE_INCHES (2 * MM_PER_INCH)
#define BASE_MILLIMETRES 50.0

struct drafter {
	struct arena *arena;
	struct lettering lettering;
	struct pattern pattern;
	struct pattern_line **line_tail;
	struct pattern_label **label_tail;
	struct box region;
	double datum; /* figures along the plank are measured from here */
};

static double base_height(struct lettering l)
{
	return l.units == UNITS_INCHES ? BASE_INCHES : BASE_MILLIMETRES;
}

static double base_interval(struct lettering l)
{
	return l.units == UNITS_INCHES ? 12 * MM_PER_INCH : 250;
}

static struct box chain_box(struct chain c)
{
	struct box b = box_empty();

	for (int i = 0; i < c.n; i++)
		b = box_add(b, c.points[i]);
	return b;
}

struct box pattern_extent(struct arena *a, const struct part *part)
{
	return chain_box(outline_chain(a, part->outline));
}

static void add_chain(struct drafter *d, enum pen pen, struct chain whole)
{
	for (struct chain *c = clip_chain(d->arena, d->region, whole); c; c = c->next) {
		struct pattern_line *l = NEW(d->arena, struct pattern_line);
		*l = (struct pattern_line){ NULL, pen, *c, box_grow(chain_box(*c), NEAR_ENOUGH) };
		l->chain.next = NULL;
		*d->line_tail = l;
		d->line_tail = &l->next;
		d->pattern.box = box_join(d->pattern.box, chain_box(*c));
	}
}

static void add_segment(struct drafter *d, enum pen pen, struct vec from, struct vec to)
{
	struct vec *ends = NEW_N(d->arena, struct vec, 2);

	ends[0] = from;
	ends[1] = to;
	add_chain(d, pen, (struct chain){ NULL, ends, 2, 0 });
}

static void add_label(struct drafter *d, struct pattern_label label)
{
	struct pattern_label *l = NEW(d->arena, struct pattern_label);
	struct box r = d->region;

	if (label.at.x < r.x0 || label.at.x > r.x1 || label.at.y < r.y0 || label.at.y > r.y1)
		return;
	*l = label;
	*d->label_tail = l;
	d->label_tail = &l->next;
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

static const char *along_words(const struct drafter *d, double x)
{
	return length_letter_inches(d->arena, d->lettering, x - d->datum);
}

static void add_corners(struct drafter *d, const struct part *part)
{
	struct positions p = pattern_positions(d->arena, part, d->lettering);

	for (int i = 0; i < p.n; i++) {
		const struct position *q = &p.position[i];
		add_label(d,
			(struct pattern_label){
				.at = q->at,
				.toward = i < part->outline.n ? into_the_wood(part->outline, i)
							      : vec(0, 1),
				.ways = { arena_printf(d->arena, "%d: %s, %s", q->number, q->along,
						  q->across),
					arena_printf(d->arena, "%d", q->number) },
			});
	}
}

/* A piece that is used in many places carries no number and no running position. */
static void add_piece_corners(struct drafter *d, const struct part *part)
{
	struct positions p = pattern_positions(d->arena, part, d->lettering);

	for (int i = 0; i < p.n; i++) {
		const struct position *q = &p.position[i];
		const char *along = along_words(d, q->at.x);
		add_label(d,
			(struct pattern_label){
				.at = q->at,
				.toward = i < part->outline.n ? into_the_wood(part->outline, i)
							      : vec(0, 1),
				.ways = { arena_printf(d->arena,
						  "%s, %s from the lower end of this piece", along,
						  q->across),
					arena_printf(d->arena, "%s, %s", along, q->across), along },
			});
	}
}

/* Running positions along the base line, so that sheets joined badly show at once. */
static void add_base_line(struct drafter *d, struct box extent)
{
	double y = base_height(d->lettering), step = base_interval(d->lettering);
	double from = fmax(extent.x0, d->region.x0) - d->datum;
	double to = fmin(extent.x1, d->region.x1) - d->datum;

	add_segment(d, PEN_CENTRE, vec(extent.x0, y), vec(extent.x1, y));
	for (double x = ceil(from / step) * step; x <= to; x += step) {
		struct vec at = vec(d->datum + x, y);
		add_segment(d, PEN_GUIDE, vec(at.x, y - 2), vec(at.x, y + 2));
		add_label(d,
			(struct pattern_label){
				.at = at,
				.toward = vec(0, 1),
				.ways = { arena_printf(d->arena, "base line %s",
						  along_words(d, at.x)),
					along_words(d, at.x) },
			});
	}
}

static struct chain cut_points(struct arena *a, const struct pattern *p)
{
	struct vec *points = NULL;
	int n = 0;

	for (const struct pattern_line *l = p->lines; l; l = l->next)
		n += l->chain.n;
	points = NEW_N(a, struct vec, n + 1);
	n = 0;
	for (const struct pattern_line *l = p->lines; l; l = l->next)
		for (int i = 0; i < l->chain.n; i++)
			points[n++] = l->chain.points[i];
	return (struct chain){ NULL, points, n, 0 };
}

struct ends {
	struct vec left, right;
};

/* The points of the cut line farthest down to the left and up to the right.  Both are printed,
 * whatever sheets are left out; a line between them shows sheets that are askew as well as sheets
 * that are too long. */
static struct ends diagonal(struct chain c, struct box b)
{
	struct ends best = { c.points[0], c.points[0] };
	struct vec rank = vec(1 / box_width(b), 1 / box_height(b));

	for (int i = 0; i < c.n; i++) {
		if (vec_dot(c.points[i], rank) < vec_dot(best.left, rank))
			best.left = c.points[i];
		if (vec_dot(c.points[i], rank) > vec_dot(best.right, rank))
			best.right = c.points[i];
	}
	return best;
}

#define CHECK_LABELS 160.0 /* one on every sheet, whatever its size */

static void add_check_line(struct drafter *d)
{
	struct ends ends = diagonal(cut_points(d->arena, &d->pattern), d->pattern.box);
	struct vec run = vec_sub(ends.right, ends.left), along = vec_unit(run);
	double length = vec_length(run);
	int labels = (int)fmax(1, floor(length / CHECK_LABELS));
	const char *figure = length_letter(d->arena, d->lettering, length);

	d->pattern.check_length = length;
	add_segment(d, PEN_CENTRE, ends.left, ends.right);
	for (int i = 0; i < labels; i++)
		add_label(d,
			(struct pattern_label){
				.at = vec_add(ends.left,
					vec_scale(along, length * (i + 0.5) / labels)),
				.toward = vec_left(along),
				.ways = { arena_printf(d->arena, "check line, %s end to end",
						  figure),
					"check line" },
			});
}

static bool lies_on(struct vec p, struct vec a, struct vec b)
{
	struct vec run = vec_sub(b, a), along = vec_unit(run), off = vec_sub(p, a);
	double at = vec_dot(off, along);

	return fabs(vec_cross(along, off)) < 0.001 && at > -0.001 && at < vec_length(run) + 0.001;
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
static void add_far_face(struct drafter *d, const struct part *part, struct chain outline)
{
	struct chain far = outline_chain(d->arena, part->stringer->far_face);

	for (int i = 0; i < far.n; i++) {
		struct vec a = far.points[i], b = far.points[(i + 1) % far.n];
		struct vec middle = vec_scale(vec_add(a, b), 0.5);
		if (is_on_outline(outline, a, b))
			continue;
		add_segment(d, PEN_HIDDEN, a, b);
		if (is_on_outline(outline, middle, middle))
			continue;
		add_label(d,
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
static void add_features(struct drafter *d, const struct part *part)
{
	for (const struct feature *f = part->features; f; f = f->next) {
		if (f->at.n < 2)
			continue;
		if (f->kind == FEATURE_GROOVE)
			for (const struct chain *c = groove_lines(d->arena, part, f); c;
				c = c->next)
				add_chain(d, PEN_TEMPLATE, *c);
		if (f->text)
			add_label(d, feature_label(f));
	}
}

static struct box mirrored(struct box b)
{
	return (struct box){ -b.x1, b.y0, -b.x0, b.y1 };
}

static void mirror(struct arena *a, struct pattern *p)
{
	for (struct pattern_line *l = p->lines; l; l = l->next) {
		struct vec *points = NEW_N(a, struct vec, l->chain.n);
		for (int i = 0; i < l->chain.n; i++)
			points[i] = vec(-l->chain.points[i].x, l->chain.points[i].y);
		l->chain.points = points;
		l->box = mirrored(l->box);
	}
	for (struct pattern_label *l = p->labels; l; l = l->next) {
		l->at.x = -l->at.x;
		l->toward.x = -l->toward.x;
	}
	p->box = mirrored(p->box);
}

static struct pattern finish(struct drafter *d)
{
	if (stringer_is_mirrored(d->pattern.part->stringer))
		mirror(d->arena, &d->pattern);
	return d->pattern;
}

static struct drafter drafter(struct arena *a, const struct part *part, struct lettering l,
	struct box region)
{
	return (struct drafter){ .arena = a,
		.lettering = l,
		.region = region,
		.pattern = { .part = part, .box = box_empty() } };
}

/* Where the region ends inside the stringer: a line to set the next piece to. */
static void add_region_ends(struct drafter *d, struct box extent)
{
	const double x[2] = { d->region.x0, d->region.x1 };

	for (int i = 0; i < 2; i++)
		if (x[i] > extent.x0 + 1 && x[i] < extent.x1 - 1)
			add_segment(d, PEN_GUIDE, vec(x[i], extent.y0), vec(x[i], extent.y1));
}

struct pattern pattern_make(struct arena *a, const struct part *part, struct lettering lettering,
	struct box region, enum figures figures)
{
	struct drafter d = drafter(a, part, lettering, region);
	struct chain outline = outline_chain(a, part->outline);

	d.line_tail = &d.pattern.lines;
	d.label_tail = &d.pattern.labels;
	switch (figures) {
	case FIGURES_FROM_PLANK_END: add_corners(&d, part); break;
	case FIGURES_FROM_PIECE_END:
		d.datum = region.x0;
		add_piece_corners(&d, part);
		break;
	}
	add_chain(&d, PEN_TEMPLATE, outline);
	add_check_line(&d);
	add_base_line(&d, chain_box(outline));
	add_region_ends(&d, chain_box(outline));
	add_features(&d, part);
	if (part->stringer->far_face.n > 0)
		add_far_face(&d, part, outline);
	return finish(&d);
}

#define ROD_HEIGHT 18.0

struct pattern pattern_rod(struct arena *a, const struct part *part, struct lettering lettering)
{
	struct box extent = pattern_extent(a, part);
	struct box strip = { extent.x0, 0, extent.x1, ROD_HEIGHT };
	struct drafter d = drafter(a, part, lettering, strip);
	struct positions p = pattern_positions(a, part, lettering);

	d.line_tail = &d.pattern.lines;
	d.label_tail = &d.pattern.labels;
	add_segment(&d, PEN_GUIDE, vec(strip.x0, 0), vec(strip.x1, 0));
	add_segment(&d, PEN_GUIDE, vec(strip.x0, 0), vec(strip.x0, ROD_HEIGHT));
	add_segment(&d, PEN_GUIDE, vec(strip.x1, 0), vec(strip.x1, ROD_HEIGHT));
	for (int i = 0; i < p.n; i++) {
		const struct position *q = &p.position[i];
		const char *gap = *q->what ? " " : "";
		add_segment(&d, PEN_GUIDE, vec(q->at.x, 0), vec(q->at.x, ROD_HEIGHT / 3));
		add_label(&d,
			(struct pattern_label){
				.at = vec(q->at.x, ROD_HEIGHT / 3),
				.toward = vec(0, 1),
				.ways = { arena_printf(a, "%d%s%s: %s", q->number, gap, q->what,
						  q->along),
					arena_printf(a, "%d: %s", q->number, q->along),
					arena_printf(a, "%d", q->number) },
			});
	}
	return finish(&d);
}
