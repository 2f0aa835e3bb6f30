#include "sheets/template_draft.h"

#include "draw/bounds.h"

/* The base line is gauged this far up from the lower edge: inside every throat. */
#define BASE_INCHES (2 * MM_PER_INCH)
#define BASE_MILLIMETRES 50.0

struct draft *draft_begin(struct arena *a, struct lettering lettering, struct box region)
{
	struct draft *d = NEW(a, struct draft);

	d->arena = a;
	d->lettering = lettering;
	d->region = region;
	d->pattern.box = box_empty();
	d->line_tail = &d->pattern.lines;
	d->label_tail = &d->pattern.labels;
	return d;
}

static double base_height(struct lettering l)
{
	return l.units == UNITS_INCHES ? BASE_INCHES : BASE_MILLIMETRES;
}

static double base_interval(struct lettering l)
{
	return l.units == UNITS_INCHES ? 12 * MM_PER_INCH : 250;
}

struct box chain_box(struct chain c)
{
	struct box b = box_empty();

	for (int i = 0; i < c.n; i++)
		b = box_add(b, c.points[i]);
	return b;
}

void draft_chain(struct draft *d, enum pen pen, struct chain whole)
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

void draft_segment(struct draft *d, enum pen pen, struct vec from, struct vec to)
{
	struct vec *ends = NEW_N(d->arena, struct vec, 2);

	ends[0] = from;
	ends[1] = to;
	draft_chain(d, pen, (struct chain){ NULL, ends, 2, false });
}

void draft_label(struct draft *d, struct pattern_label label)
{
	struct pattern_label *l = NEW(d->arena, struct pattern_label);
	struct box r = d->region;

	if (label.at.x < r.x0 || label.at.x > r.x1 || label.at.y < r.y0 || label.at.y > r.y1)
		return;
	*l = label;
	*d->label_tail = l;
	d->label_tail = &l->next;
}

const char *draft_figure(const struct draft *d, double x)
{
	return length_letter_inches(d->arena, d->lettering, x - d->datum);
}

/* Running positions along it, so that sheets joined badly show at once. */
void draft_base_line(struct draft *d, struct box extent)
{
	double y = base_height(d->lettering), step = base_interval(d->lettering);
	double from = fmax(extent.x0, d->region.x0) - d->datum;
	double to = fmin(extent.x1, d->region.x1) - d->datum;

	draft_segment(d, PEN_CENTRE, vec(extent.x0, y), vec(extent.x1, y));
	for (double x = ceil(from / step) * step; x <= to; x += step) {
		struct vec at = vec(d->datum + x, y);
		draft_segment(d, PEN_GUIDE, vec(at.x, y - 2), vec(at.x, y + 2));
		draft_label(d,
			(struct pattern_label){
				.at = at,
				.toward = vec(0, 1),
				.ways = { arena_printf(d->arena, "base line %s",
						  draft_figure(d, at.x)),
					draft_figure(d, at.x) },
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
	return (struct chain){ NULL, points, n, false };
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

void draft_check_line(struct draft *d)
{
	struct ends ends = diagonal(cut_points(d->arena, &d->pattern), d->pattern.box);
	struct vec run = vec_sub(ends.right, ends.left), along = vec_unit(run);
	double length = vec_length(run);
	int labels = (int)fmax(1, floor(length / CHECK_LABELS));
	const char *figure = length_letter(d->arena, d->lettering, length);

	d->pattern.check_length = length;
	draft_segment(d, PEN_CENTRE, ends.left, ends.right);
	for (int i = 0; i < labels; i++)
		draft_label(d,
			(struct pattern_label){
				.at = vec_add(ends.left,
					vec_scale(along, length * (i + 0.5) / labels)),
				.toward = vec_left(along),
				.ways = { arena_printf(d->arena, "check line, %s end to end",
						  figure),
					"check line" },
			});
}

static struct box mirrored(struct box b)
{
	return (struct box){ -b.x1, b.y0, -b.x0, b.y1 };
}

void draft_mirror(struct draft *d)
{
	struct pattern *p = &d->pattern;

	for (struct pattern_line *l = p->lines; l; l = l->next) {
		struct vec *points = NEW_N(d->arena, struct vec, l->chain.n);
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
