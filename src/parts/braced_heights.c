/*
 * Heights at which rows of cross pieces are met whole by all balusters of all stretches: each row
 * as high as the job says, or as near to that as the others let it.
 *
 *     most:  as high as the tops let it, and from the topmost down the rows over it
 *     least: as low as the feet let it, and from the lowest up the rows under it
 */
#include "base/text.h"
#include "parts/braced_rows.h"
#include "parts/infill.h"

/* What balusters let one row have. */
struct bounds {
	double least, most;
};

/* All gaps of all stretches, and the rows, the lowest first. */
struct heights {
	struct arena *arena;
	const struct job *job;
	struct gap *gaps;
	int gap_count;
	int *order; /* of the rows in the job */
	int n;
};

static int gaps_of(const struct setting *set, struct gap *gaps)
{
	int n = 0;
	for (int i = 0; i < set->count; i++)
		if (braced_in_one_unit(set, i))
			gaps[n++] = braced_gap(set, i);
	return n;
}

/* What is wrong with it is said where it is made; where others guard there is none. */
static struct setting setting_of(const struct heights *h, const struct stretch *s)
{
	struct diags unsaid;
	diags_init(&unsaid, h->arena, "", NULL);
	if (!stretch_is_made(s))
		return (struct setting){ .count = 0 };
	return setting_make(h->arena, s, &unsaid);
}

static void find_gaps(struct heights *h, const struct rod *r)
{
	int most = 0;
	const struct stretch *all = stretches_make(h->arena, r);
	for (const struct stretch *s = all; s; s = s->next)
		most += setting_of(h, s).count;
	h->gaps = NEW_N(h->arena, struct gap, most + 1);
	for (const struct stretch *s = all; s; s = s->next) {
		struct setting set = setting_of(h, s);
		h->gap_count += gaps_of(&set, h->gaps + h->gap_count);
	}
}

/* As they lie in the first gap. */
static double middle(const struct heights *h, int row)
{
	struct crossing c = braced_crossing(&h->job->infill.rows[row], &h->gaps[0]);
	return (c.z[0] + c.z[1]) / 2;
}

static void find_order(struct heights *h)
{
	h->order = NEW_N(h->arena, int, h->n);
	for (int i = 0; i < h->n; i++) {
		int at = i;
		for (; at > 0 && middle(h, h->order[at - 1]) > middle(h, i); at--)
			h->order[at] = h->order[at - 1];
		h->order[at] = i;
	}
}

static struct bounds bounds_of(const struct heights *h, int row)
{
	struct bounds b = { -INFINITY, INFINITY };
	double height = h->job->infill.rows[row].height;
	for (int i = 0; i < h->gap_count; i++) {
		struct crossing c = braced_crossing(&h->job->infill.rows[row], &h->gaps[i]);
		struct opening o = braced_opening(&h->gaps[i]);
		for (int k = 0; k < 2; k++) {
			b.least = fmax(b.least, height + o.foot[k] - (c.z[k] - c.half));
			b.most = fmin(b.most, height + o.top[k] - (c.z[k] + c.half));
		}
	}
	return b;
}

/* By how much the height of one row has to be more than that of one below it. */
static double apart(const struct heights *h, int row, int below)
{
	const struct job_row *rows = h->job->infill.rows;
	double most = -INFINITY;
	for (int i = 0; i < h->gap_count; i++) {
		struct crossing c = braced_crossing(&rows[row], &h->gaps[i]);
		struct crossing other = braced_crossing(&rows[below], &h->gaps[i]);
		double low = fmin(c.z[0] - other.z[0], c.z[1] - other.z[1]);
		most = fmax(most, c.half + other.half - low);
	}
	return rows[row].height - rows[below].height + most;
}

static double on_graduation(const struct heights *h, double mm, int way)
{
	return length_on_graduation(job_lettering(h->job), mm, way);
}

/* NULL: there is no room for all of them. */
static const double *find_heights(const struct heights *h)
{
	struct bounds *bounds = NEW_N(h->arena, struct bounds, h->n);
	double *found = NEW_N(h->arena, double, h->n);
	for (int i = h->n - 1; i >= 0; i--) {
		bounds[i] = bounds_of(h, h->order[i]);
		for (int k = i + 1; k < h->n; k++)
			bounds[i].most = fmin(bounds[i].most,
				bounds[k].most - apart(h, h->order[k], h->order[i]));
		bounds[i].most = on_graduation(h, bounds[i].most, -1);
	}
	for (int i = 0; i < h->n; i++) {
		double given = h->job->infill.rows[h->order[i]].height, least = bounds[i].least;
		for (int k = 0; k < i; k++)
			least = fmax(least, found[k] + apart(h, h->order[i], h->order[k]));
		found[i] = given < least ? on_graduation(h, least, 1) : fmin(given, bounds[i].most);
		if (found[i] < least || found[i] > bounds[i].most)
			return NULL;
	}
	return found;
}

static const char *height_written(const struct heights *h, int row, double mm)
{
	return arena_printf(h->arena, "infill.rows[%d].height: %s", row + 1,
		length_say(h->arena, job_lettering(h->job), mm));
}

const char *braced_heights_mend(struct arena *a, const struct stretch *s)
{
	const struct job_infill *f = &s->rod->job->infill;
	struct heights h = { .arena = a, .job = s->rod->job, .n = f->row_count };
	struct text t = { .arena = a };
	const char *before = "write ";
	find_gaps(&h, s->rod);
	if (h.gap_count > 0)
		find_order(&h);
	const double *found = h.gap_count > 0 && h.n > 0 ? find_heights(&h) : NULL;
	if (!found)
		return "take narrower cross pieces (cross_width), fewer rows, or a higher rail";
	for (int i = 0; i < h.n; i++) {
		if (found[i] == f->rows[h.order[i]].height)
			continue;
		text_add(&t, "%s%s", before, height_written(&h, h.order[i], found[i]));
		before = " and ";
	}
	return text_chars(&t);
}
