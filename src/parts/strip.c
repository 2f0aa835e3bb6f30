#include "parts/strip.h"

#define WALL 1.5      /* least wood beside a mortise, and between two: common practice */
#define GLUE_ROOM 0.8 /* 1/32 in at each end of a tenon: common practice */
#define LEAST_TENON 4.0

static struct frame place_of(const struct strip *s)
{
	double sine = sin(s->along->pitch), cosine = s->along->cosine;
	struct frame f = { .u = { cosine, 0, sine }, .v = { -sine, 0, cosine } };
	f.w = vec3(0, -1, 0);
	f.origin = vec3(s->x, s->thickness / 2, s->z);
	return frame_compose(s->along->axes, f);
}

/* Along its lower edge, and how far the upper edge is shifted against it. */
static double edge_of(const struct strip *s)
{
	return s->length / s->along->cosine;
}

static double lap_of(const struct strip *s)
{
	return s->depth * s->along->slope;
}

static struct outline outline_of(struct arena *a, const struct strip *s)
{
	struct path p = path_begin(a, 4);
	double edge = edge_of(s), lap = lap_of(s);
	path_to(&p, 0, 0);
	path_to(&p, edge, 0);
	path_to(&p, edge + lap, s->depth);
	path_to(&p, lap, s->depth);
	return path_close(p);
}

struct part *strip_add(struct pieces *list, const char *name, const struct strip *s,
	struct outline section)
{
	struct arena *a = list->arena;
	const char *material = s->along->rod->job->material.balusters;
	struct part *p = piece_add(list, name, material, place_of(s));
	struct end_plane from = { 0, s->along->slope, 0 }, to = { edge_of(s), s->along->slope, 0 };
	p->section = section;
	if (section.n == 0)
		section = outline_box(a, 0, 0, s->depth, s->thickness);
	p->outline = outline_of(a, s);
	p->size = (struct part_size){ edge_of(s) + lap_of(s), s->depth, s->thickness };
	p->start.mitre = p->end.mitre = s->along->pitch;
	p->solids = solid_strip(a, profile_of(a, section), from, to);
	return p;
}

struct bore strip_tenon(const struct strip *s, struct tenon t)
{
	double in_other = fmin(t.length / 2, t.room - WALL);
	double in_strip = fmin(t.length / 2, s->length / 2 - WALL);
	double half = s->depth / 2 / s->along->cosine;
	double width = fmin(t.width, 2 * (half - in_strip * s->along->slope - WALL));
	double thickness = fmin(t.thickness, s->thickness - 2 * WALL);
	struct bore bore = { .fixing = FIXING_LOOSE_TENON };
	bore.text = "loose tenon";
	bore.size = bore_oblong(BORE_MORTISE, width, thickness, in_strip);
	bore.mate = bore_oblong(BORE_MORTISE, width, thickness, in_other);
	bore.fixing_length = in_strip + in_other - 2 * GLUE_ROOM;
	bore.fixing_width = width;
	return bore;
}

void strip_bore(struct arena *a, struct part *p, const struct strip *s, struct bore tenon,
	enum strip_end end)
{
	double cosine = s->along->cosine, sine = sin(s->along->pitch);
	int out = end == STRIP_HIGH_END ? 1 : -1;
	double x = end == STRIP_HIGH_END ? edge_of(s) : 0;
	tenon.at.origin = vec3(lap_of(s) / 2 + x, s->depth / 2, s->thickness / 2);
	tenon.at.w = vec3(out * cosine, -out * sine, 0);
	tenon.at.u = vec3(sine, cosine, 0);
	tenon.at.v = vec3(0, 0, out);
	piece_bore(a, p, tenon);
}

void strip_fasten(struct arena *a, struct part *p, const struct strip *s, struct fastening f,
	enum strip_face face)
{
	double lap = p->size.width * s->along->slope, up = face == STRIP_UP ? 1 : -1;
	f.at = (struct frame){ .u = { 1, 0, 0 }, .v = { 0, 0, -up }, .w = { 0, up, 0 } };
	f.at.origin =
		vec3(lap, face == STRIP_UP ? s->depth : p->size.width - s->depth, s->thickness / 2);
	f.length = edge_of(s) - lap;
	f.through = s->depth;
	piece_fasten(a, p, f);
}

bool tenon_holds(const struct bore *tenon)
{
	return tenon->size.length >= fmax(LEAST_TENON, tenon->size.width) &&
		tenon->size.width > 0 && tenon->fixing_length >= LEAST_TENON;
}
