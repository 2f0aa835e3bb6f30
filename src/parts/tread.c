#include "parts/tread.h"

#include "parts/nosing.h"

/*
 * Treads, glued up from a body, a front strip that carries the nosing, and at
 * every open end a return strip mitred to it.  Seen from above, the front
 * nearest:
 *
 *                ___________________________
 *               |                        |  |
 *     wall      |  body                  |  | return
 *               |________________________|  |
 *               |  front strip            \_|
 *               |__________________________\|
 *
 * The body of the first tread goes round a newel that stands on the floor;
 * front strip and return then end square at its faces.
 */

/* Depth of a tread body below which there is nothing to glue to. */
#define LEAST_BODY 10.0

static double return_width(const struct rod *r, const struct side *side, enum tread_end_kind kind)
{
	const struct job_treads *t = &r->job->treads;
	if (kind == TREAD_END_NEWEL)
		return fmin(t->strip_width, t->side_overhang + rod_newel_inner(r, side));
	return t->strip_width;
}

static struct tread_end tread_end_of(const struct rod *r, const struct side *side, int step)
{
	const struct job_treads *t = &r->job->treads;
	struct tread_end e = { .side = side };
	if (side->kind == STRINGER_HOUSED)
		e.body = side->inner - r->job->stringers.housing_depth;
	else if (!side_open_at(side, step))
		e.body = t->scribe;
	e.strip = e.body;
	if (side->kind == STRINGER_HOUSED || !side_open_at(side, step))
		return e;
	bool at_newel = step == 1 && side_has_foot_newel(side);
	if (t->side_overhang > NEAR_ENOUGH) {
		e.kind = at_newel ? TREAD_END_NEWEL : TREAD_END_RETURN;
		e.overhang = t->side_overhang;
		e.width = return_width(r, side, e.kind);
		e.body = e.width - e.overhang;
		e.strip = -e.overhang;
	}
	if (at_newel) {
		e.kind = TREAD_END_NEWEL;
		e.strip = rod_newel_inner(r, side);
		e.newel_back = side->foot.x + r->nosing;
	}
	return e;
}

/* The end of a body from front to back, in from the limit and back from the nosing's front. */
static int body_end(const struct rod *r, struct tread_end e, struct vec corners[4])
{
	double depth = r->nosing + r->run, strip = r->job->treads.strip_width;
	int n = 0;
	if (e.kind == TREAD_END_NEWEL) {
		corners[n++] = vec(e.strip, strip);
		corners[n++] = vec(e.strip, e.newel_back);
		corners[n++] = vec(e.body, e.newel_back);
	} else {
		corners[n++] = vec(e.body, strip);
	}
	corners[n++] = vec(e.body, depth);
	return n;
}

static struct outline body_outline(struct arena *a, const struct rod *r, struct tread_end left,
	struct tread_end right)
{
	struct path p = path_begin(a, 8);
	struct vec c[4];
	int n = body_end(r, right, c);
	for (int i = 0; i < n; i++)
		path_to(&p, rod_along(r, right.side, c[i].x), c[i].y);
	n = body_end(r, left, c);
	for (int i = n - 1; i >= 0; i--)
		path_to(&p, rod_along(r, left.side, c[i].x), c[i].y);
	return path_close(p);
}

/* Round the newel: as far in from the end as it reaches, as far back from the strip's joint. */
static void add_newel_notch(struct arena *a, struct part *p, const struct rod *r,
	struct tread_end e)
{
	struct lettering l = job_lettering(r->job);

	if (e.kind != TREAD_END_NEWEL)
		return;
	p->note = arena_printf(a, "front corner cut out round the newel, %s along x %s across",
		length_letter_inches(a, l, e.strip - e.body),
		length_letter_inches(a, l, e.newel_back - r->job->treads.strip_width));
	piece_feature(a, p,
		(struct feature){ .kind = FEATURE_NOTCH,
			.depth = p->size.thickness,
			.text = "corner cut out round the newel" });
}

static void body_add(struct pieces *list, const struct rod *r, struct tread_end left,
	struct tread_end right, int step)
{
	struct arena *a = list->arena;
	struct outline o = body_outline(a, r, left, right);
	struct box at = outline_extent(o);
	double front = (step - 1) * r->run - r->nosing;
	struct part *p = piece_add(list, "tread body", r->job->material.treads,
		rod_flat(r, at.x0, front + at.y0, step * r->rise - r->tread));
	p->outline = outline_moved(a, o, -at.x0, -at.y0);
	p->size = (struct part_size){ at.x1 - at.x0, at.y1 - at.y0, r->tread };
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, r->tread);
	add_newel_notch(a, p, r, left);
	add_newel_notch(a, p, r, right);
}

static void add_strip_features(struct arena *a, struct part *p, const struct rod *r,
	const struct nosing *n, bool mitred)
{
	nosing_add(a, p, r->job, n);
	if (mitred)
		piece_feature(a, p,
			(struct feature){ .kind = FEATURE_MITRE,
				.angle = PI / 4,
				.text = "front corner mitred 45 degrees" });
}

static void strip_add(struct pieces *list, const struct rod *r, struct tread_end left,
	struct tread_end right, int step)
{
	struct arena *a = list->arena;
	double width = r->job->treads.strip_width;
	double x0 = rod_along(r, left.side, left.strip);
	double length = rod_along(r, right.side, right.strip) - x0;
	double lean0 = left.kind == TREAD_END_RETURN ? 1 : 0;
	double lean1 = right.kind == TREAD_END_RETURN ? 1 : 0;
	struct part *p = piece_add(list, "tread front strip", r->job->material.treads,
		rod_flat(r, x0, (step - 1) * r->run - r->nosing, step * r->rise - r->tread));
	struct path o = path_begin(a, 4);
	path_to(&o, 0, 0);
	path_to(&o, length, 0);
	path_to(&o, length - lean1 * width, width);
	path_to(&o, lean0 * width, width);
	p->outline = path_close(o);
	p->size = (struct part_size){ length, width, r->tread };
	p->start.mitre = lean0 * PI / 4;
	p->end.mitre = lean1 * PI / 4;
	struct nosing n = nosing_make(&r->job->treads, r->tread);
	p->section = nosing_outline(a, &n, width);
	p->solids = solid_strip(a, profile_of(a, p->section), (struct end_plane){ 0, lean0, 0 },
		(struct end_plane){ length, -lean1, 0 });
	add_strip_features(a, p, r, &n, lean0 + lean1 > 0);
}

static void tread_add(struct pieces *list, const struct rod *r, int step)
{
	struct tread_end left = tread_end_of(r, &r->sides[HAND_LEFT], step);
	struct tread_end right = tread_end_of(r, &r->sides[HAND_RIGHT], step);
	body_add(list, r, left, right, step);
	strip_add(list, r, left, right, step);
	if (left.overhang > 0)
		return_add(list, r, left, step);
	if (right.overhang > 0)
		return_add(list, r, right, step);
}

static bool has_returns(const struct rod *r)
{
	bool any = false;
	for (int i = 0; i < 2; i++)
		any = any || (r->sides[i].is_open && r->sides[i].kind != STRINGER_HOUSED);
	return any && r->job->treads.side_overhang > NEAR_ENOUGH;
}

/* One size that only goes with another: a complaint when it does not hold. */
struct demand {
	bool holds;
	const char *key;
	double size;
	const char *fault; /* what is wrong, and which way to mend it */
	double limit;
};

static void demand(struct arena *a, const struct rod *r, struct diags *d, struct demand m)
{
	struct lettering l = job_lettering(r->job);
	if (!m.holds)
		diag_error(d, rod_pos(r, r->job->treads.src, m.key), NULL, "treads.%s: %s %s %s",
			m.key, length_say(a, l, m.size), m.fault, length_say(a, l, m.limit));
}

static void returns_fit(struct arena *a, const struct rod *r, struct diags *d)
{
	const struct job_treads *t = &r->job->treads;
	double round = nosing_make(t, r->tread).reach + 1, past = r->run - t->side_overhang;
	demand(a, r, d,
		(struct demand){ t->side_overhang >= round, "side_overhang", t->side_overhang,
			"does not hold the rounded nosing: at least", round });
	demand(a, r, d,
		(struct demand){ t->return_past <= past, "return_past", t->return_past,
			"reaches under the tread after next: at most", past });
}

/* Sizes that only make a tread together. */
static bool sizes_fit(struct arena *a, const struct rod *r, struct diags *d)
{
	const struct job_treads *t = &r->job->treads;
	int before = d->errors;
	double round = nosing_make(t, r->tread).reach;
	double lip = r->nosing + r->riser, body = r->run + r->nosing - LEAST_BODY;
	demand(a, r, d,
		(struct demand){ t->strip_width >= round, "strip_width", t->strip_width,
			"does not hold the rounded nosing: at least", round });
	demand(a, r, d,
		(struct demand){ r->riser <= 0 || round <= lip, "nosing_radius", round,
			"leaves nothing over the riser: at most", lip });
	demand(a, r, d,
		(struct demand){ t->strip_width <= body, "strip_width", t->strip_width,
			"leaves no body of the tread: at most", body });
	if (has_returns(r))
		returns_fit(a, r, d);
	return d->errors == before;
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_tread };
	struct rod r = rod_make(s, f);
	if (!sizes_fit(a, &r, d))
		return NULL;
	for (int i = 1; i <= r.steps; i++)
		tread_add(&list, &r, i);
	return list.first;
}

const struct part_kind part_tread = { "tread", "T", make };
