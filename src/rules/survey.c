#include "rules/survey.h"

#include <assert.h>
#include <string.h>

#include "pitchboard/rail.h"

/* A face in the axes of the flight. */
static struct face face_of(struct arena *a, const struct flight *f, struct frame at,
	const struct vec3 *points, int n)
{
	struct vec3 *moved = NEW_N(a, struct vec3, n);

	for (int i = 0; i < n; i++)
		moved[i] = frame_place_back(f->frame, frame_place(at, points[i]));
	return (struct face){ moved, n };
}

/* Two ends and the sides between them. */
static void faces_add(struct arena *a, const struct flight *f, struct frame at,
	const struct solid *s, struct face *faces, int *n)
{
	faces[(*n)++] = face_of(a, f, at, s->a, s->n);
	faces[(*n)++] = face_of(a, f, at, s->b, s->n);
	for (int i = 0; i < s->n; i++) {
		int next = (i + 1) % s->n;
		const struct vec3 side[] = { s->a[i], s->a[next], s->b[next], s->b[i] };
		faces[(*n)++] = face_of(a, f, at, side, 4);
	}
}

static struct placed placed_make(struct arena *a, const struct flight *f, const struct part *p,
	struct frame at)
{
	struct placed placed = { .part = p, .box = box3_empty() };
	int room = 0;

	for (const struct solid *s = p->solids; s; s = s->next)
		room += s->n + 2;
	struct face *faces = NEW_N(a, struct face, room);
	for (const struct solid *s = p->solids; s; s = s->next)
		faces_add(a, f, at, s, faces, &placed.face_count);
	for (int i = 0; i < placed.face_count; i++)
		for (int k = 0; k < faces[i].n; k++)
			placed.box = box3_add(placed.box, faces[i].at[k]);
	placed.faces = faces;
	return placed;
}

static void pieces_place(struct survey *s)
{
	int room = 0;

	for (const struct part *p = s->parts; p; p = p->next)
		room += p->count;
	struct placed *pieces = NEW_N(s->arena, struct placed, room);
	for (const struct part *p = s->parts; p; p = p->next)
		for (int i = 0; i < p->count; i++)
			pieces[s->count++] = placed_make(s->arena, s->flight, p, p->places[i]);
	s->pieces = pieces;
}

/* A cut leaves at most half as many corners again: that of a comb, every second tooth gone. */
static int scratch_room(const struct survey *s)
{
	double room = 4;

	for (int i = 0; i < s->count; i++)
		for (int k = 0; k < s->pieces[i].face_count; k++)
			room = fmax(room, s->pieces[i].faces[k].n);
	for (int i = 0; i < MOST_SIDES; i++)
		room = ceil(room * 1.5) + 1;
	return (int)room;
}

struct survey survey_make(struct arena *a, const struct stair *s, const struct part *parts)
{
	struct survey v = { .arena = a, .stair = s, .parts = parts, .flight = &s->flights[0] };

	pieces_place(&v);
	for (int i = 0; i < 2; i++)
		v.scratch[i] = NEW_N(a, struct vec3, scratch_room(&v));
	v.nosing_line = flight_nosing_line(s, v.flight);
	v.top = s->total_rise;
	v.first_nosing = -s->job->treads.nosing;
	v.last_nosing = (v.top - v.nosing_line.z0) / v.nosing_line.slope;
	return v;
}

/* ---- regions ---- */

static struct region with_side(struct region r, struct vec3 normal, double at)
{
	assert(r.n < MOST_SIDES);
	r.sides[r.n++] = (struct half_space){ normal, at };
	return r;
}

struct region region_between(struct region r, struct vec3 direction, double from, double to)
{
	if (to < INFINITY)
		r = with_side(r, direction, to);
	if (from > -INFINITY)
		r = with_side(r, vec3_scale(direction, -1), -from);
	return r;
}

struct region region_box(struct vec3 low, struct vec3 high)
{
	struct region r = { .n = 0 };

	r = region_between(r, vec3(1, 0, 0), low.x, high.x);
	r = region_between(r, vec3(0, 1, 0), low.y, high.y);
	return region_between(r, vec3(0, 0, 1), low.z, high.z);
}

/* The least that normal·p comes to in a box: beyond the side, the box lies outside. */
static double least_in_box(struct vec3 normal, const struct placed *p)
{
	return normal.x * (normal.x > 0 ? p->box.low.x : p->box.high.x) +
		normal.y * (normal.y > 0 ? p->box.low.y : p->box.high.y) +
		normal.z * (normal.z > 0 ? p->box.low.z : p->box.high.z);
}

static bool box_is_outside(const struct placed *p, const struct region *r)
{
	for (int i = 0; i < r->n; i++)
		if (least_in_box(r->sides[i].normal, p) > r->sides[i].at + NEAR_ENOUGH)
			return true;
	return false;
}

/* One side of a region cut off a polygon (Sutherland and Hodgman, 1974).  A polygon with notches
 * may come out with edges along the cut; its corners are still points of the wood. */
static int clip(const struct vec3 *in, int n, struct half_space h, struct vec3 *out)
{
	int count = 0;

	for (int i = 0; i < n; i++) {
		struct vec3 p = in[i], q = in[(i + 1) % n];
		double a = vec3_dot(h.normal, p) - h.at, b = vec3_dot(h.normal, q) - h.at;
		if (a <= NEAR_ENOUGH)
			out[count++] = p;
		if ((a < -NEAR_ENOUGH && b > NEAR_ENOUGH) || (a > NEAR_ENOUGH && b < -NEAR_ENOUGH))
			out[count++] = vec3_add(p, vec3_scale(vec3_sub(q, p), a / (a - b)));
	}
	return count;
}

/* Corners of the part of a face that lies in the region; two buffers take turns. */
static int face_in_region(const struct face *f, const struct region *r, struct vec3 *buffers[2])
{
	int n = f->n;

	memcpy(buffers[0], f->at, (size_t)n * sizeof(*f->at));
	for (int i = 0; i < r->n && n > 0; i++) {
		n = clip(buffers[0], n, r->sides[i], buffers[1]);
		struct vec3 *swap = buffers[0];
		buffers[0] = buffers[1];
		buffers[1] = swap;
	}
	return n;
}

static void extreme_of_piece(const struct survey *s, const struct placed *p, struct region r,
	struct vec3 direction, struct extreme *e)
{
	struct vec3 *buffers[2] = { s->scratch[0], s->scratch[1] };

	for (int i = 0; i < p->face_count; i++) {
		int n = face_in_region(&p->faces[i], &r, buffers);
		for (int k = 0; k < n; k++) {
			double value = vec3_dot(direction, buffers[0][k]);
			if (e->found && value <= e->value)
				continue;
			*e = (struct extreme){ true, value, buffers[0][k], p->part };
		}
	}
}

struct extreme survey_extreme(const struct survey *s, counts_fn *counts, struct region r,
	struct vec3 direction)
{
	struct extreme e = { .found = false };

	for (int i = 0; i < s->count; i++)
		if (counts(s->pieces[i].part) && !box_is_outside(&s->pieces[i], &r))
			extreme_of_piece(s, &s->pieces[i], r, direction, &e);
	return e;
}

/* ---- places ---- */

struct vec3 survey_over_nosings(const struct survey *s)
{
	return vec3(-s->nosing_line.slope, 0, 1);
}

const char *survey_place(const struct survey *s, double x)
{
	if (x < s->first_nosing)
		return "the lower floor";
	for (int i = s->flight->step_count - 1; i >= 0; i--) {
		const struct step *step = &s->flight->steps[i];
		bool past = i == s->flight->step_count - 1 && x > step->back_x;
		if (x >= step->nosing_x - NEAR_ENOUGH)
			return past ? "the upper floor"
				    : arena_printf(s->arena, "step %d", step->number);
	}
	return "step 1";
}

const char *survey_say(const struct survey *s, double mm)
{
	struct lettering how = job_lettering(s->stair->job);
	const char *figure = length_letter_inches(s->arena, how, mm);

	return how.units == UNITS_INCHES ? figure : arena_printf(s->arena, "%s mm", figure);
}

/* ---- which pieces count ---- */

bool counts_treads(const struct part *p)
{
	return p->kind == &part_tread || p->kind == &part_landing;
}

bool counts_walking(const struct part *p)
{
	return counts_treads(p) || p->existing == EXISTING_LOWER_FLOOR ||
		p->existing == EXISTING_UPPER_FLOOR;
}

bool counts_overhead(const struct part *p)
{
	return p->existing == EXISTING_UPPER_FLOOR || p->existing == EXISTING_HEADER;
}

bool counts_walls(const struct part *p)
{
	return p->existing == EXISTING_WALL;
}

bool counts_rails(const struct part *p)
{
	return (p->kind == &part_rail || p->kind == &part_wall_rail) && p->rail &&
		p->rail->pitch > 0;
}

bool counts_guard_rails(const struct part *p)
{
	return counts_rails(p) && p->kind == &part_rail;
}

bool counts_wall_rails(const struct part *p)
{
	return p->kind == &part_wall_rail;
}

bool counts_level_rails(const struct part *p)
{
	return p->kind == &part_rail && p->rail && p->rail->pitch <= 0;
}

bool counts_newels(const struct part *p)
{
	return p->kind == &part_newel;
}

bool counts_infill(const struct part *p)
{
	return p->kind == &part_infill;
}

bool counts_risers(const struct part *p)
{
	return p->kind == &part_riser;
}
