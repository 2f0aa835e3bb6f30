#include "parts/fastening.h"
#include "parts/glue_line.h"

#include <string.h>

/*
 * Screws through a tread into every stringer that is cut out for it, sunk under
 * plugs of the tread's own wood.  Seen from above:
 *
 *             carriage
 *          _____|__|____________
 *         |     | o|            |   o  first, in from the face of the riser above
 *         |     |  |            |
 *         |     | o|            |   o  first, in from the back of the riser below
 *         |_____|__|____________|
 *         |_____________________|   strip
 *
 * In the carriage nothing is drilled in the shop: its pilot hole is drilled through
 * the tread, when that lies in its place.
 *
 * Open treads have no wedges in their housings: there screws go through the string
 * into their end grain, from outside, as long as that can be come at: at an open
 * side, or where both strings are housed and the stair is put together before it
 * is stood up.
 */

/* So much of a screw bites into the carriage, by and large (common practice). */
#define BITE 45.0

/* And into end grain, which holds less (common practice). */
#define END_BITE 60.0

/* Wood beside a screw in the tread. */
#define BESIDE 4.0

/* y of the flight in the middle of a stringer. */
static double middle_of(const struct rod *r, const struct part *stringer)
{
	struct vec3 middle =
		frame_place(stringer->places[0], vec3(0, 0, stringer->size.thickness / 2));
	return frame_place_back(r->flight->frame, middle).y;
}

static struct fastener screw_for(const struct rod *r, double most)
{
	const struct job_tread_screws *s = &r->job->treads.screws;
	if (s->length > 0)
		return fastener_screw(s->number, s->length);
	return fastener_screw_within(s->number, most, r->job->about.units);
}

/* Over one stringer, back from the riser below to the riser above. */
static struct fastening row_over(const struct rod *r, int step, double y)
{
	const struct job_tread_screws *s = &r->job->treads.screws;
	double from = (step - 1) * r->run + r->riser, to = step * r->run;
	struct fastening f = { .length = to - from, .first = s->first, .count = s->per_bearing };
	f.at = (struct frame){ vec3(from, y, step * r->rise), { 1, 0, 0 }, { 0, 1, 0 },
		{ 0, 0, 1 } };
	f.through = r->tread;
	f.sunk = fmin(s->plug > 0 ? s->plug_depth : 0, r->tread / 2);
	f.plug = s->plug;
	f.fastener = screw_for(r, r->tread - f.sunk + BITE);
	f.beside = BESIDE;
	f.text = f.plug > 0 ? "plugged screw, tread to carriage" : "screw, tread to carriage";
	return f;
}

/* The piece of a tread that lies over what carries it. */
static struct part *board_of(const struct assembly *all, int unit, int step)
{
	for (int i = 0; i < all->n; i++) {
		struct part *p = all->pieces[i].piece;
		if (p->kind != &part_tread)
			continue;
		if (strcmp(p->name, "tread body") == 0 && p->units[0] == unit)
			return p;
		if (strcmp(p->name, "starting tread") == 0 && step == 1)
			return p;
	}
	return NULL;
}

/* How many treads it holds by none. */
static int stringer_drill(struct arena *a, const struct assembly *all, const struct rod *r,
	const struct part *stringer)
{
	double y = middle_of(r, stringer);
	int loose = 0;
	for (int step = 1; step <= r->steps; step++) {
		struct tread_plan t = tread_plan_make(r, step);
		struct part *board = board_of(all, tread_unit(&t), step);
		struct fastening f = row_over(r, step, y);
		if (!board)
			continue;
		f.at = frame_within(board->places[0], frame_compose(r->flight->frame, f.at));
		loose += fastening_drill(a, all, board, &f) == f.count;
	}
	return loose;
}

/* Through a housed string into the end of its body; the heads at a wall need no plugs. */
static struct fastening row_through(const struct rod *r, const struct side *side, int step)
{
	const struct job_tread_screws *s = &r->job->treads.screws;
	double from = (step - 1) * r->run - r->nosing + r->job->treads.strip_width;
	double out = side->hand == HAND_RIGHT ? -1 : 1;
	struct fastening f = { .length = step * r->run - from,
		.first = s->first,
		.count = s->per_bearing };
	f.at = (struct frame){ .u = { 1, 0, 0 }, .v = { 0, 0, -out }, .w = { 0, out, 0 } };
	f.at.origin = vec3(from, rod_y(r, side, side->outer), step * r->rise - r->tread / 2);
	f.through = side->inner - side->outer - r->job->stringers.housing_depth;
	f.sunk = fmin(s->plug_depth, f.through / 2);
	f.plug = side->is_open ? s->plug : 0;
	f.fastener = screw_for(r, f.through - f.sunk + END_BITE);
	f.beside = BESIDE;
	f.text = f.plug > 0 ? "plugged screw, string to tread" : "screw, string to tread";
	return f;
}

static bool is_come_at(const struct rod *r, const struct side *side)
{
	bool both = r->sides[HAND_LEFT].kind == STRINGER_HOUSED &&
		r->sides[HAND_RIGHT].kind == STRINGER_HOUSED;
	return side->kind == STRINGER_HOUSED && r->riser <= 0 && (side->is_open || both);
}

static struct part *string_of(const struct assembly *all, enum side_hand hand)
{
	enum stringer_hand wanted = hand == HAND_RIGHT ? STRINGER_RIGHT_HAND : STRINGER_LEFT_HAND;
	for (int i = 0; i < all->n; i++) {
		const struct stringer *g = all->pieces[i].piece->stringer;
		if (g && g->kind == STRINGER_HOUSED && g->hand == wanted)
			return all->pieces[i].piece;
	}
	return NULL;
}

/* How many treads it holds by none. */
static int string_drill(struct arena *a, const struct assembly *all, const struct rod *r,
	const struct side *side)
{
	struct part *string = is_come_at(r, side) ? string_of(all, side->hand) : NULL;
	int loose = 0;
	for (int step = 1; string && step <= r->steps; step++) {
		struct fastening f = row_through(r, side, step);
		f.at = frame_within(string->places[0], frame_compose(r->flight->frame, f.at));
		loose += fastening_drill(a, all, string, &f) == f.count;
	}
	return loose;
}

static void flight_drill(struct arena *a, const struct assembly *all, const struct rod *r,
	struct diags *d)
{
	int loose = 0;
	for (int i = 0; i < all->n; i++) {
		const struct stringer *g = all->pieces[i].piece->stringer;
		if (g && g->kind != STRINGER_HOUSED)
			loose += stringer_drill(a, all, r, all->pieces[i].piece);
	}
	for (int i = 0; i < 2; i++)
		loose += string_drill(a, all, r, &r->sides[i]);
	if (loose > 0)
		diag_warning(d, rod_pos(r, r->job->treads.src, "screws"),
			"fix it there from below: pocket screws or glue blocks",
			"treads.screws: %d time%s a tread finds no room for a screw into a "
			"stringer",
			loose, loose > 1 ? "s" : "");
}

void tread_screws_drill(struct arena *a, const struct stair *s, const struct assembly *all,
	struct diags *d)
{
	for (int i = 0; i < s->flight_count && s->job->treads.screws.used; i++) {
		struct rod r = rod_make(s, &s->flights[i]);
		flight_drill(a, all, &r, d);
	}
}
