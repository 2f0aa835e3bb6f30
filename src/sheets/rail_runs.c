#include "sheets/rail_runs.h"

#include "sheets/template_words.h"

/* Two pieces of one rail lie in one line, and what stands under it stands in its middle. */
#define IN_LINE 0.5
#define APART 5.0 /* of two lengths, their joint drawn up */

/* How far the top of an upright may be under the rail: a subrail and its plough between. */
#define UNDER_RAIL 120.0

struct vec3 rail_run_point(const struct rail_run *r, enum rail_run_end end)
{
	double along = end == RUN_HIGH_END ? r->length : 0;

	return vec3_add(r->at.origin, vec3_scale(r->at.u, along));
}

static double length_of(const struct part *p)
{
	return p->rail->between / cos(p->rail->pitch);
}

/* Does the piece go on where the run ends, or before it begins? */
static bool goes_on(const struct rail_run *r, struct frame at, double length)
{
	struct vec3 from = frame_turn_back(r->at, vec3_sub(at.origin, r->at.origin));

	return vec3_near(at.u, r->at.u) && fabs(from.y) < IN_LINE && fabs(from.z) < IN_LINE &&
		from.x < r->length + APART && from.x + length > -APART;
}

static void lengthen(struct arena *a, struct rail_run *r, const struct part *p, struct frame at)
{
	double from = vec3_dot(vec3_sub(at.origin, r->at.origin), r->at.u);
	double to = from + length_of(p);

	if (from < 0) {
		r->at.origin = at.origin;
		r->end[RUN_LOW_END] = p->rail;
	}
	if (to > r->length)
		r->end[RUN_HIGH_END] = p->rail;
	r->length = fmax(to, r->length) - fmin(from, 0);
	r->marks = marks_with(a, r->marks, p->mark);
}

static void add_piece(struct arena *a, struct rail_runs *l, const struct part *p, struct frame at)
{
	for (int i = 0; i < l->n; i++)
		if (goes_on(&l->run[i], at, length_of(p))) {
			lengthen(a, &l->run[i], p, at);
			return;
		}
	l->run[l->n++] = (struct rail_run){ at, length_of(p), p->mark, { p->rail, p->rail } };
}

struct rail_runs rail_runs(struct arena *a, const struct part *parts, const struct part_kind *kind)
{
	struct rail_runs l = { NULL, 0 };
	int most = 0;

	for (const struct part *p = parts; p; p = p->next)
		most += p->kind == kind && p->rail ? p->count : 0;
	l.run = NEW_N(a, struct rail_run, most + 1);
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; p->kind == kind && p->rail && i < p->count; i++)
			add_piece(a, &l, p, p->places[i]);
	return l;
}

/* In the middle of its thickness both ways. */
static struct vec3 middle_of(const struct part *p, int place, double up)
{
	return frame_place(p->places[place], vec3(up, p->size.width / 2, p->size.thickness / 2));
}

double rail_run_upright(const struct rail_run *r, const struct part *upright, int place)
{
	struct vec3 top = middle_of(upright, place, upright->size.length);
	struct vec3 from = vec3_sub(top, r->at.origin);
	double cosine = hypot(r->at.u.x, r->at.u.y);
	double along = (from.x * r->at.u.x + from.y * r->at.u.y) / (cosine * cosine);
	double aside = from.x * r->at.v.x + from.y * r->at.v.y;
	bool is_under = fabs(from.z - along * r->at.u.z) < UNDER_RAIL;

	if (fabs(aside) > IN_LINE || !is_under || along > r->length)
		return -1;
	return along;
}

bool rail_run_meets(const struct rail_run *r, enum rail_run_end end, const struct part *post,
	int place)
{
	struct vec3 at = frame_place_back(post->places[place], rail_run_point(r, end));
	double reach = post->newel->section / 2 + APART;

	return at.x > 0 && at.x < post->size.length && fabs(at.y - post->size.width / 2) < reach &&
		fabs(at.z - post->size.thickness / 2) < reach;
}
