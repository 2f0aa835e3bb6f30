#include "parts/nosing.h"
#include "parts/tread.h"

/*
 * The returned nosing at an open end, seen from above; e counts in from its
 * outer edge, s back from the tread's front:
 *
 *          s = 0                  length_in   length
 *   e = 0   \_______________________________/|
 *             \          strip            /  |  end piece, grain along its back
 *   overhang    \.....................__/____|
 *     width       \__________________|
 *                  front mitre       face of the riser above
 *
 * Only what overhangs the stringer can run on behind the riser above.  The
 * strip is two solids side by side, parted where the stringer's face lies.
 */
struct run {
	struct arena *a;
	const struct tread_plan *tread;
	const struct rod *rod;
	const struct tread_end *end;
	double start;     /* s of the front end; a mitre starts at 0 */
	double length;    /* s of the back end */
	double length_in; /* s of the back end under the tread above */
	bool closed;      /* by an end piece */
	struct bands bands;
	struct nosing nosing;
};

/* The last tread has the header or the floor behind it: its return stops square against that. */
static double room_behind(const struct tread_plan *t)
{
	const struct rod *r = t->rod;
	return t->step == r->steps ? r->header_x - r->steps * r->run : INFINITY;
}

/* The wall that begins beside this tread; INFINITY: none does. */
static double wall_from(const struct tread_end *e)
{
	double from = INFINITY;
	for (int i = 0; i < e->gaps.n; i++)
		if (isinf(e->gaps.at[i].to))
			from = fmin(from, e->gaps.at[i].from);
	return from;
}

/* Along the piece's own x: on the right from the front, on the left from the back, so that its
 * upper face is up on both. */
static double along(const struct run *n, double s)
{
	return n->end->side->hand == HAND_RIGHT ? s - n->start : n->length - s;
}

static struct end_plane plane(const struct run *n, double s, double lean)
{
	double way = n->end->side->hand == HAND_RIGHT ? 1 : -1;
	return (struct end_plane){ along(n, s), way * lean, 0 };
}

/* Where the strip begins at a place across it, as s = at + by_y * e: at the mitre, or behind what
 * it is cut out for. */
static struct end_plane front_of(const struct run *n, double e)
{
	const struct gaps *g = &n->end->gaps;
	double at = e, lean = 1;
	for (int i = 0; i < g->n; i++)
		if (g->at[i].in > e - n->end->overhang && g->at[i].from <= at && g->at[i].to > at) {
			at = g->at[i].to;
			lean = 0;
		}
	return (struct end_plane){ lean > 0 ? 0 : at, lean, 0 };
}

static struct end_plane back_of(const struct run *n, double e)
{
	if (e > n->end->overhang)
		return (struct end_plane){ n->length_in, 0, 0 };
	return (struct end_plane){ n->length, n->closed ? -1 : 0, 0 };
}

static struct cuts_across run_cuts(const struct run *n)
{
	struct cuts_across c = cuts_between(0, n->end->width);
	cuts_add(&c, n->end->overhang);
	for (int i = 0; i < n->end->gaps.n; i++) {
		const struct gap *g = &n->end->gaps.at[i];
		cuts_add(&c, g->in + n->end->overhang);
		cuts_add(&c, g->from);
		cuts_add(&c, g->to);
	}
	return c;
}

static void find_bands(struct run *n)
{
	struct cuts_across c = run_cuts(n);
	bool right = n->end->side->hand == HAND_RIGHT;
	for (int i = 0; i + 1 < c.n; i++) {
		double middle = (c.at[i] + c.at[i + 1]) / 2;
		struct end_plane s0 = front_of(n, middle), s1 = back_of(n, middle);
		struct end_plane front = plane(n, s0.at, s0.by_y), back = plane(n, s1.at, s1.by_y);
		if (!isinf(s0.at))
			bands_add(&n->bands,
				(struct band){ c.at[i], c.at[i + 1], right ? front : back,
					right ? back : front });
	}
}

static struct run run_of(struct arena *a, const struct tread_plan *t, const struct tread_end *e)
{
	struct run n = { .a = a, .tread = t, .rod = t->rod, .end = e };
	double wanted = t->rod->job->treads.return_past, room = room_behind(t);
	double past = fmin(wanted, room), wall = wall_from(e);
	n.nosing = nosing_make(&t->rod->job->treads, t->rod->tread);
	n.length = fmin(t->depth + past, wall);
	n.length_in = fmin(t->depth, wall);
	n.closed = past > NEAR_ENOUGH && wanted < room - NEAR_ENOUGH && isinf(wall);
	n.start = front_of(&n, 0).at;
	find_bands(&n);
	return n;
}

static struct frame strip_place(const struct run *n)
{
	const struct rod *r = n->rod;
	double front = tread_front(n->tread), z = n->tread->step * r->rise - r->tread;
	double y = rod_y(r, n->end->side, -n->end->overhang);
	struct frame f = frame_at(front + n->start, y, z);
	if (n->end->side->hand == HAND_LEFT) {
		f.u = vec3(-1, 0, 0);
		f.v = vec3(0, -1, 0);
		f.origin.x = front + n->length;
	}
	return frame_compose(r->flight->frame, f);
}

static bool is_mitred(const struct run *n)
{
	return n->start < NEAR_ENOUGH;
}

static void add_features(const struct run *n, struct part *p)
{
	nosing_add(n->a, p, n->rod->job, &n->nosing);
	if (!is_mitred(n) && !n->closed)
		return;
	const char *text = "front mitred to the front strip, back to its end piece";
	if (!n->closed)
		text = "front mitred to the front strip";
	else if (!is_mitred(n))
		text = "back mitred to its end piece";
	piece_feature(n->a, p,
		(struct feature){ .kind = FEATURE_MITRE, .angle = PI / 4, .text = text });
}

static void strip_add(struct pieces *list, const struct run *n)
{
	struct part *p =
		piece_add(list, "tread return", n->rod->job->material.treads, strip_place(n));
	double width = n->end->width;
	p->outline = bands_outline(n->a, &n->bands);
	p->size = (struct part_size){ n->length - n->start, width, n->rod->tread };
	struct end_cut front = { .mitre = is_mitred(n) ? PI / 4 : 0 };
	struct end_cut back = { .mitre = n->closed ? PI / 4 : 0 };
	bool right = n->end->side->hand == HAND_RIGHT;
	p->start = right ? front : back;
	p->end = right ? back : front;
	p->section = nosing_outline(n->a, &n->nosing, width);
	p->solids = bands_solids(n->a, &n->bands, p->section);
	add_features(n, p);
}

/* The triangle that the end piece is at one level, its back edge `q` in from the back face. */
static struct vec3 *triangle(const struct run *n, double q, double z)
{
	double over = n->end->overhang;
	bool right = n->end->side->hand == HAND_RIGHT;
	struct vec3 *t = NEW_N(n->a, struct vec3, 3);
	double e[3] = { q, over, over }, back[3] = { q, q, over };
	for (int i = 0; i < 3; i++) {
		int k = right ? i : 2 - i;
		t[i] = vec3(right ? e[k] : over - e[k], back[k], z);
	}
	return t;
}

/* The nosing runs round its back too, so it is built up in slices from the top down. */
static const struct solid *end_solids(const struct run *n)
{
	struct profile f = profile_of(n->a, nosing_outline(n->a, &n->nosing, n->end->overhang));
	struct solid *s = NULL;
	for (int k = 3; k < f.n; k++) {
		struct vec high = f.at[k], low = f.at[(k + 1) % f.n];
		unsigned char *soft = NEW_N(n->a, unsigned char, 3);
		for (int i = 0; i < 3; i++) {
			soft[i] |= k > 3 ? SOFT_A : 0;
			soft[i] |= k + 1 < f.n ? SOFT_B : 0;
		}
		s = solid_add(s,
			solid_join(n->a, 3, triangle(n, high.x, high.y), triangle(n, low.x, low.y),
				soft));
	}
	return s;
}

static void end_add(struct pieces *list, const struct run *n)
{
	const struct rod *r = n->rod;
	double over = n->end->overhang;
	bool right = n->end->side->hand == HAND_RIGHT;
	struct frame at = { .u = { 0, 1, 0 }, .v = { -1, 0, 0 }, .w = { 0, 0, 1 } };
	at.origin = vec3(tread_front(n->tread) + n->length,
		rod_y(r, n->end->side, right ? -over : 0), n->tread->step * r->rise - r->tread);
	struct part *p = piece_add(list, "tread return end", r->job->material.treads,
		frame_compose(r->flight->frame, at));
	struct path o = path_begin(n->a, 3);
	path_to(&o, 0, 0);
	path_to(&o, over, 0);
	path_to(&o, right ? over : 0, over);
	p->outline = path_close(o);
	p->size = (struct part_size){ over, over, r->tread };
	p->start.mitre = right ? PI / 4 : 0;
	p->end.mitre = right ? 0 : PI / 4;
	p->section = nosing_outline(n->a, &n->nosing, over);
	p->solids = end_solids(n);
	nosing_add(n->a, p, r->job, &n->nosing);
	p->note = "grain along the back of the return; cut off a length, mitre first";
}

void return_add(struct pieces *list, const struct tread_plan *t, const struct tread_end *e)
{
	struct run n = run_of(list->arena, t, e);
	strip_add(list, &n);
	if (n.closed)
		end_add(list, &n);
}
