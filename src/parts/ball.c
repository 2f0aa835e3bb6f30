#include "pitchboard/ball.h"

#include <string.h>

#include "parts/ball_cross.h"
#include "parts/infill.h"

/* Two that are so near to the ball both touch it. */
#define TOUCHES 0.05

/* Two so nearly as large are told of as one: no more than the search may miss, for the larger one
 * does not pass where the other lies. */
#define ALIKE 0.02

#define PLACES BALL_BETWEEN_TREADS

static bool is_bottom_member(const struct stretch *s)
{
	const struct job *job = s->rod->job;
	return s->feet == FEET_ON_TREADS &&
		(infill_has_shoe(job) || job->infill.kind == INFILL_BARS ||
			job->infill.kind == INFILL_PANEL);
}

/* Lower edge of what closes the triangle, plumb over x = 0: the shoe's, the lowest bar's, or the
 * panel's. */
static double bottom_member(const struct stretch *s, const struct part *parts)
{
	double least = infill_base(s, 0) + BALL_LARGEST;
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; p->kind == &part_infill && i < p->count; i++) {
			struct vec3 at = frame_place_back(s->axes, p->places[i].origin);
			bool lies = strcmp(p->name, "post") != 0 && strcmp(p->name, "stile") != 0;
			bool here = at.x > s->from - 1 && at.x < s->to &&
				fabs(at.y) < s->rod->job->rail.width;
			if (lies && here)
				least = fmin(least, at.z - s->slope * at.x);
		}
	return least;
}

static enum ball_place touched(const struct ball_plane *plane, const struct ball_window *w,
	struct ball_found b)
{
	enum ball_place place = BALL_BETWEEN;
	for (int i = 0; i < w->n; i++) {
		const struct ball_edge *e = &plane->edges[w->edges[i]];
		const struct part *p = e->part;
		if (!p || ball_edge_distance(e, b.at) > b.radius + TOUCHES)
			continue;
		if (p->kind == &part_newel)
			return BALL_AT_NEWEL;
		if (p->existing == EXISTING_WALL)
			place = BALL_AT_WALL;
		else if (place == BALL_BETWEEN &&
			(p->kind == &part_rail || strcmp(part_whole_name(p), "subrail") == 0))
			place = BALL_UNDER_RAIL;
	}
	return place;
}

/* Of places that are alike the first on the rake is told of, and the last on a level run: that is
 * not where a gallery stands before the head of the flight. */
static void keep(struct ball *largest, const struct stretch *s, enum ball_place place,
	struct ball_found b)
{
	struct ball *kept = &largest[place];
	const struct rod *r = s->rod;
	bool on_rake = s->feet != FEET_ON_FLOOR;
	double diameter = fmax(2 * b.radius, kept->diameter);
	bool is_alike = fabs(2 * b.radius - kept->diameter) < ALIKE;
	if (is_alike && on_rake)
		kept->diameter = diameter;
	if (is_alike ? on_rake : 2 * b.radius < kept->diameter)
		return;
	*kept = (struct ball){ .place = place, .diameter = diameter, .on_rake = on_rake };
	kept->at = frame_place(s->axes, vec3(b.at.x, 0, b.at.y));
	kept->on_left = s->side->hand == HAND_LEFT;
	kept->step =
		on_rake ? (int)floor(b.at.x / r->run + NEAR_ENOUGH) + r->flight->first_step : 0;
}

/* What is open over the line between triangles and the rest, up to the rail. */
static struct ball_zone zone_over(const struct stretch *s, double divide)
{
	return (struct ball_zone){ .low = { divide, s->slope },
		.high = { stretch_rail_under(s, 0), s->slope } };
}

/* The lower zone is the triangles under a bottom member, the upper one all over them. */
static void search_window(struct arena *a, const struct ball_plane *plane, int i, double divide,
	struct ball *largest)
{
	const struct stretch *s = plane->stretch;
	const struct ball_window *w = &plane->windows[i];
	struct ball_zone zone = zone_over(s, divide);
	zone.from = s->from + i * plane->width;
	zone.to = fmin(zone.from + plane->width, s->to);
	zone.floor = stretch_foot(s, zone.from);
	struct ball_found b = ball_search(a, plane, w, &zone);
	if (b.radius > 0)
		keep(largest, s, touched(plane, w, b), b);
	if (!is_bottom_member(s))
		return;
	zone.high = zone.low;
	zone.low.z0 = -INFINITY;
	b = ball_search(a, plane, w, &zone);
	if (b.radius > 0)
		keep(largest, s, BALL_TRIANGLE, b);
}

static void search_crosses(struct arena *a, const struct ball_plane *plane,
	const struct part *parts, double divide, struct ball *largest)
{
	struct ball_zone all = zone_over(plane->stretch, divide);
	struct ball_crosses crosses = ball_crosses_make(a, plane, parts, &all);
	for (int i = 0; i < crosses.n; i++) {
		const struct ball_cross *c = &crosses.at[i];
		struct ball_found b = ball_search(a, plane, c->window, &c->zone);
		if (b.radius > 0)
			keep(largest, plane->stretch, c->place, b);
	}
}

static struct ball **stretch_measure(struct arena *a, const struct stretch *s,
	const struct part *parts, struct ball **tail)
{
	struct arena *scratch = arena_new();
	struct ball_plane plane = ball_plane_make(scratch, s, parts);
	struct ball largest[PLACES] = { 0 };
	double divide = is_bottom_member(s) ? bottom_member(s, parts) : -1e5;
	for (int i = 0; i < plane.count; i++)
		search_window(scratch, &plane, i, divide, largest);
	search_crosses(scratch, &plane, parts, divide, largest);
	for (int i = 0; i < PLACES; i++) {
		if (largest[i].diameter <= 0)
			continue;
		*tail = NEW(a, struct ball);
		**tail = largest[i];
		tail = &(*tail)->next;
	}
	arena_free(scratch);
	return tail;
}

const struct ball *balls_measure(struct arena *a, const struct stair *s, const struct part *parts)
{
	struct ball *first = NULL, **tail = &first;
	for (int i = 0; parts && i < s->flight_count; i++) {
		struct rod r = rod_make(s, &s->flights[i]);
		for (const struct stretch *k = stretches_make(a, &r); k; k = k->next)
			if (stretch_is_made(k))
				tail = stretch_measure(a, k, parts, tail);
	}
	return first;
}

/* Its middle is under the bar, where there is one; else under the nosing. */
static struct ball ball_over(const struct rod *r, int step)
{
	const struct job_risers *risers = &r->job->risers;
	double gap = r->rise - r->tread - risers->bar;
	double in = risers->bar > 0 ? risers->bar_thickness / 2 : r->nosing / 2;
	struct vec3 at = vec3(step * r->run - in, r->width / 2, step * r->rise + gap / 2);

	return (struct ball){ .place = BALL_BETWEEN_TREADS,
		.diameter = gap,
		.at = frame_place(r->flight->frame, at),
		.on_rake = true,
		.step = step };
}

const struct ball *ball_between_treads(struct arena *a, const struct stair *s)
{
	const struct flight *f = &s->flights[0];
	struct ball *b = NEW(a, struct ball);
	if (s->job->risers.kind != RISER_OPEN)
		return NULL;
	struct rod r = rod_make(s, f);
	*b = ball_over(&r, f->risers / 2);
	return b->diameter > 0 ? b : NULL;
}

static const char *between_name(enum infill_name kind)
{
	switch (kind) {
	case INFILL_PLAIN:
	case INFILL_BRACED: return "between balusters";
	case INFILL_BARS: return "between bars";
	case INFILL_PANEL: return "between panels";
	}
	return "";
}

const char *ball_place_name(const struct job *job, enum ball_place place)
{
	switch (place) {
	case BALL_BETWEEN: return between_name(job->infill.kind);
	case BALL_UNDER_CROSS: return "under the lowest cross piece";
	case BALL_BETWEEN_CROSSES: return "between two cross pieces";
	case BALL_OVER_CROSS: return "over the highest cross piece";
	case BALL_TRIANGLE: return "in the triangle of tread, riser and bottom rail";
	case BALL_AT_NEWEL: return "at a newel";
	case BALL_AT_WALL: return "at the end of the wall";
	case BALL_UNDER_RAIL: return "under the rail";
	case BALL_BETWEEN_TREADS: return "between two treads";
	}
	return "";
}
