#include "parts/nosing.h"
#include "parts/tread.h"

/*
 * The returned nosing at an open end, seen from above; e counts in from its
 * outer edge, s back from the tread's front:
 *
 *          s = 0                  length_in   length
 *   e = 0   \_______________________________/|
 *             \          strip            /  |  end piece, its grain across
 *   overhang    \.....................__/____|
 *     width       \__________________|
 *                  front mitre       face of the riser above
 *
 * Only what overhangs the stringer can run on behind the riser above.  The
 * strip is two solids side by side, parted where the stringer's face lies.
 */
struct run {
	struct arena *a;
	const struct rod *rod;
	struct tread_end end;
	int step;
	double start;     /* s of the front end; a mitre starts at 0 */
	double lean;      /* of the front end: 1 for the mitre */
	double length;    /* s of the back end */
	double length_in; /* s of the back end under the tread above */
	bool closed;      /* by an end piece */
	struct nosing nosing;
};

/* The last tread has the header or the floor behind it: its return stops square against that. */
static double room_behind(const struct rod *r, int step)
{
	return step == r->steps ? r->header_x - r->steps * r->run : INFINITY;
}

static struct run run_of(struct arena *a, const struct rod *r, struct tread_end e, int step)
{
	struct run n = { a, r, e, step, 0, 1, 0, r->nosing + r->run, false, { 0 } };
	double wanted = r->job->treads.return_past, room = room_behind(r, step);
	double past = fmin(wanted, room);
	if (e.kind == TREAD_END_NEWEL) {
		n.start = e.newel_back;
		n.lean = 0;
	}
	n.nosing = nosing_make(&r->job->treads, r->tread);
	n.length = n.length_in + past;
	n.closed = past > NEAR_ENOUGH && wanted < room - NEAR_ENOUGH;
	return n;
}

/* Along the piece's own x: on the right from the front, on the left from the back, so that its
 * upper face is up on both. */
static double along(const struct run *n, double s)
{
	return n->end.side->hand == HAND_RIGHT ? s - n->start : n->length - s;
}

static struct end_plane plane(const struct run *n, double s, double lean)
{
	double way = n->end.side->hand == HAND_RIGHT ? 1 : -1;
	return (struct end_plane){ along(n, s), way * lean, 0 };
}

/* A profile between the front end and s = back - lean * e. */
static struct solid *draw_out(const struct run *n, struct profile f, double back, double lean)
{
	struct end_plane front = plane(n, n->start, n->lean), rear = plane(n, back, -lean);
	if (n->end.side->hand == HAND_RIGHT)
		return solid_strip(n->a, f, front, rear);
	return solid_strip(n->a, f, rear, front);
}

static const struct solid *strip_solids(const struct run *n)
{
	double over = n->end.overhang, width = n->end.width, thickness = n->rod->tread;
	struct profile outer = profile_of(n->a, nosing_outline(n->a, &n->nosing, over));
	bool wider = width > over + NEAR_ENOUGH;
	if (wider) {
		outer.soft[1] |= SOFT_SIDE | SOFT_A | SOFT_B; /* the seam, from below to above */
		outer.soft[2] |= SOFT_SIDE;
	}
	struct solid *s = draw_out(n, outer, n->length, n->closed ? 1 : 0);
	if (!wider)
		return s;
	struct profile inner = profile_of(n->a, outline_box(n->a, over, 0, width, thickness));
	inner.soft[0] |= SOFT_SIDE;
	inner.soft[3] |= SOFT_SIDE | SOFT_A | SOFT_B;
	return solid_add(s, draw_out(n, inner, n->length_in, 0));
}

/* Counter-clockwise: on the left x runs the other way, so the corners are taken backwards. */
static struct outline strip_outline(const struct run *n)
{
	double over = n->end.overhang, width = n->end.width, cut = n->closed ? over : 0;
	double inner = fmax(over, width);
	struct vec c[6] = {
		{ n->start, 0 },
		{ n->length, 0 },
		{ n->length - cut, over },
		{ width > over ? n->length_in : n->length - cut, over },
		{ width > over ? n->length_in : n->length - cut, inner },
		{ n->start + n->lean * inner, inner },
	};
	bool right = n->end.side->hand == HAND_RIGHT;
	struct path p = path_begin(n->a, 6);
	for (int i = 0; i < 6; i++) {
		struct vec at = c[right ? i : 5 - i];
		path_to(&p, along(n, at.x), at.y);
	}
	return path_close(p);
}

static struct frame strip_place(const struct run *n)
{
	const struct rod *r = n->rod;
	double front = (n->step - 1) * r->run - r->nosing, z = n->step * r->rise - r->tread;
	double y = rod_y(r, n->end.side, -n->end.overhang);
	struct frame f = frame_at(front + n->start, y, z);
	if (n->end.side->hand == HAND_LEFT) {
		f.u = vec3(-1, 0, 0);
		f.v = vec3(0, -1, 0);
		f.origin.x = front + n->length;
	}
	return frame_compose(r->flight->frame, f);
}

static void add_features(const struct run *n, struct part *p)
{
	nosing_add(n->a, p, n->rod->job, &n->nosing);
	piece_feature(n->a, p,
		(struct feature){ .kind = FEATURE_MITRE,
			.angle = PI / 4,
			.text = n->lean > 0
				? "front mitred to the front strip, back to its end piece"
				: "back mitred to its end piece" });
}

static void strip_add(struct pieces *list, const struct run *n)
{
	struct part *p =
		piece_add(list, "tread return", n->rod->job->material.treads, strip_place(n));
	p->outline = strip_outline(n);
	p->size = (struct part_size){ n->length - n->start, n->end.width, n->rod->tread };
	struct end_cut front = { .mitre = n->lean * PI / 4 };
	struct end_cut back = { .mitre = n->closed ? PI / 4 : 0 };
	bool right = n->end.side->hand == HAND_RIGHT;
	p->start = right ? front : back;
	p->end = right ? back : front;
	p->section = nosing_outline(n->a, &n->nosing, n->end.width);
	p->solids = strip_solids(n);
	add_features(n, p);
}

/* The triangle that the end piece is at one level, its back edge `q` in from the back face. */
static struct vec3 *triangle(const struct run *n, double q, double z)
{
	double over = n->end.overhang;
	bool right = n->end.side->hand == HAND_RIGHT;
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
	struct profile f = profile_of(n->a, nosing_outline(n->a, &n->nosing, n->end.overhang));
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
	double over = n->end.overhang;
	bool right = n->end.side->hand == HAND_RIGHT;
	struct frame at = { .u = { 0, 1, 0 }, .v = { -1, 0, 0 }, .w = { 0, 0, 1 } };
	at.origin = vec3((n->step - 1) * r->run - r->nosing + n->length,
		rod_y(r, n->end.side, right ? -over : 0), n->step * r->rise - r->tread);
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
	p->note = "grain across, along the back of the return";
}

void return_add(struct pieces *list, const struct rod *r, struct tread_end e, int step)
{
	struct run n = run_of(list->arena, r, e, step);
	strip_add(list, &n);
	if (n.closed)
		end_add(list, &n);
}
