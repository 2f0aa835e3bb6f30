#include "parts/cuts.h"
#include "parts/skirt.h"

/*
 * The skirt of an open side, seen from above: a finished board in front of the
 * rough carriage, cut out under the treads as a mitred stringer is.
 *
 *              riser
 *     ____________________\        face of the riser
 *     ___________________  \
 *       carriage         |\ \
 *     ___________________| \ \___________________
 *                           \|_____ skirt _______   limit of the side
 *                            long point
 *
 * The carriage behind it stays square, and is set in by its thickness.  Where a
 * plain skirt stands on the wall before the open steps or behind them, in the same
 * plane, the two meet plumb at the end of that wall.
 */

/* A strip of wood that is less is not left standing (common practice). */
#define SLIVER 3.0

static const char *note_of(struct arena *a, const struct rod *r, const struct side *side)
{
	bool left = side->hand == HAND_LEFT;
	return arena_printf(a,
		"risers mitred to it: long points on the outer face, short points %s further "
		"back%s",
		length_say(a, job_lettering(r->job), side->board),
		left ? "; left hand: the outline is of the outer face, seen through the board"
		     : "");
}

/* Between the plain skirts that its walls have.  Its end against the one in front is square, and
 * the riser there butts against its back; so is that of the riser behind the last open step when
 * the wall begins too near to it for a mitre. */
static void fit_between(struct cuts *c, const struct side *side)
{
	const struct rod *r = c->rod;
	if (side->plain <= 0)
		return;
	if (side->from > 1) {
		c->first = side->from - 1;
		c->front = side->wall_end;
		c->outer[c->first] = c->inner[c->first] = c->front;
	}
	if (side->to >= r->steps)
		return;
	double face = side->to * r->run;
	c->back = side->head.x;
	c->last = c->back > face + SLIVER ? side->to : side->to - 1;
	if (!cuts_is_mitred(c, side->to + 1))
		c->outer[side->to] = c->inner[side->to] = face;
}

void open_skirt_add(struct pieces *list, const struct rod *r, enum side_hand hand)
{
	struct arena *a = list->arena;
	const struct side *side = &r->sides[hand];
	struct stand behind = side_stand(r, hand);
	struct edges e = sawtooth_edges(a, &behind);
	struct cuts c = cuts_make(a, r, side, side->board);
	fit_between(&c, side);
	double lower = e.lower - r->job->skirts.cover / r->cosine;
	e = (struct edges){ cuts_upper_edge(&c), lower };
	struct outline faces[2] = { cuts_strike(a, &c, c.outer, e),
		cuts_strike(a, &c, c.inner, e) };
	struct bench b = bench_make(r, e, faces, 2);
	double y = fmax(rod_y(r, side, 0), rod_y(r, side, side->board));
	struct part *p = piece_add(list,
		hand == HAND_RIGHT ? "open skirt, right hand" : "open skirt, left hand",
		r->job->material.skirts, bench_frame(r, b, y));
	p->outline = bench_outline(a, b, faces[0]);
	double width = (e.upper - e.lower) * r->cosine;
	p->size = (struct part_size){ outline_extent(p->outline).x1, width, side->board };
	p->splice = SPLICE_SCARF;
	p->start.mitre = c.first > 0 ? r->pitch : PI / 2 - r->pitch; /* plumb, or level foot */
	p->end.mitre = r->pitch;                                     /* the plumb head cut */
	p->solids = cuts_solid(a, b, faces, hand, side->board);
	p->note = note_of(a, r, side);
	cuts_mitres_add(a, p, &c, b,
		"riser cut, 45 degrees back from its long point on the outer face");
}

bool open_skirt_fits(const struct rod *r, struct diags *d)
{
	const struct job *job = r->job;
	struct pos at = rod_pos(r, job->skirts.src, "open");
	bool is_open = r->sides[HAND_LEFT].is_open || r->sides[HAND_RIGHT].is_open;
	int before = d->errors;
	if (job->skirts.open == OPEN_SKIRT_NONE || !is_open)
		return true;
	if (job->stringers.open.kind != STRINGER_SAWTOOTH)
		diag_error(d, at, "write skirts.open: none, or stringers.open.kind: sawtooth",
			"skirts.open: a skirt is set in front of a rough carriage, and a %s "
			"stringer is finished itself",
			job->stringers.open.kind == STRINGER_MITRED ? "mitred" : "housed");
	if (r->riser <= 0)
		diag_error(d, at, "write skirts.open: none",
			"skirts.open: open risers leave nothing to mitre it to");
	return d->errors == before;
}
