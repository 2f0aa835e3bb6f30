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
 */

/* So much of a screw bites into the carriage, by and large (common practice). */
#define BITE 45.0

/* Wood beside a screw in the tread. */
#define BESIDE 4.0

/* y of the flight in the middle of a stringer. */
static double middle_of(const struct rod *r, const struct part *stringer)
{
	struct vec3 middle =
		frame_place(stringer->places[0], vec3(0, 0, stringer->size.thickness / 2));
	return frame_place_back(r->flight->frame, middle).y;
}

static struct fastener screw_for(const struct rod *r, double sunk)
{
	const struct job_tread_screws *s = &r->job->treads.screws;
	if (s->length > 0)
		return fastener_screw(s->number, s->length);
	return fastener_screw_within(s->number, r->tread - sunk + BITE, r->job->about.units);
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
	f.fastener = screw_for(r, f.sunk);
	f.beside = BESIDE;
	f.text = f.plug > 0 ? "screw under a plug, tread to carriage" : "screw, tread to carriage";
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

static void flight_drill(struct arena *a, const struct assembly *all, const struct rod *r,
	struct diags *d)
{
	int loose = 0;
	for (int i = 0; i < all->n; i++) {
		const struct stringer *g = all->pieces[i].piece->stringer;
		if (g && g->kind != STRINGER_HOUSED)
			loose += stringer_drill(a, all, r, all->pieces[i].piece);
	}
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
