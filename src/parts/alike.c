#include "parts/alike.h"

#include <string.h>

static bool near(double a, double b)
{
	return fabs(a - b) <= NEAR_ENOUGH;
}

static bool same_size(struct part_size a, struct part_size b)
{
	return near(a.length, b.length) && near(a.width, b.width) && near(a.thickness, b.thickness);
}

static bool same_outline(struct outline a, struct outline b)
{
	if (a.n != b.n)
		return false;
	for (int i = 0; i < a.n; i++)
		if (!near(a.corners[i].at.x, b.corners[i].at.x) ||
			!near(a.corners[i].at.y, b.corners[i].at.y) ||
			!near(a.corners[i].bulge, b.corners[i].bulge))
			return false;
	return true;
}

static bool same_point(struct vec3 a, struct vec3 b)
{
	return near(a.x, b.x) && near(a.y, b.y) && near(a.z, b.z);
}

static bool same_points(const struct vec3 *a, const struct vec3 *b, int n)
{
	for (int i = 0; i < n; i++)
		if (!same_point(a[i], b[i]))
			return false;
	return true;
}

static bool same_solids(const struct solid *a, const struct solid *b)
{
	for (; a && b; a = a->next, b = b->next)
		if (a->n != b->n || !same_points(a->a, b->a, a->n) ||
			!same_points(a->b, b->b, a->n))
			return false;
	return !a && !b;
}

static bool same_text(const char *a, const char *b)
{
	return a && b ? strcmp(a, b) == 0 : a == b;
}

static bool same_bore_size(struct bore_size a, struct bore_size b)
{
	return a.kind == b.kind && near(a.length, b.length) && near(a.width, b.width) &&
		near(a.depth, b.depth);
}

/* What is bought for a joint is as long as both its holes: the mate counts. */
static bool same_fixing(const struct bore *a, const struct bore *b)
{
	return a->fixing == b->fixing && near(a->fixing_length, b->fixing_length) &&
		near(a->fixing_width, b->fixing_width) && near(a->driven, b->driven) &&
		near(a->thread, b->thread) && same_bore_size(a->mate, b->mate);
}

static bool same_bore(const struct bore *a, const struct bore *b)
{
	return same_fixing(a, b) && same_bore_size(a->size, b->size) &&
		same_point(a->at.origin, b->at.origin) && same_point(a->at.u, b->at.u) &&
		same_point(a->at.w, b->at.w) && a->is_mate == b->is_mate &&
		same_text(a->text, b->text);
}

static bool has_bore(const struct bore *list, const struct bore *b)
{
	for (; list; list = list->next)
		if (same_bore(list, b))
			return true;
	return false;
}

const struct bore *bore_missing(const struct bore *list, const struct bore *in)
{
	while (list && has_bore(in, list))
		list = list->next;
	return list;
}

/* In whatever order: mates come in that of the pieces in front, which is not the same all along a
 * stair. */
static bool same_bores(const struct bore *a, const struct bore *b)
{
	const struct bore *p = a, *q = b;

	while (p && q && same_bore(p, q)) {
		p = p->next;
		q = q->next;
	}
	return !bore_missing(p, q) && !bore_missing(q, p);
}

static bool same_sawn(struct sawn a, struct sawn b)
{
	return near(a.tilt, b.tilt) && near(a.fence, b.fence) && near(a.height, b.height) &&
		a.cuts == b.cuts && same_text(a.lies, b.lies);
}

static bool same_features(const struct feature *a, const struct feature *b)
{
	for (; a && b; a = a->next, b = b->next)
		if (a->kind != b->kind || !same_outline(a->at, b->at) ||
			!near(a->angle, b->angle) || !near(a->depth, b->depth) ||
			!near(a->radius, b->radius) || !same_sawn(a->sawn, b->sawn) ||
			!same_text(a->text, b->text))
			return false;
	return !a && !b;
}

static bool same_cut(struct end_cut a, struct end_cut b)
{
	return near(a.mitre, b.mitre) && near(a.bevel, b.bevel);
}

static bool same_makeup(struct makeup a, struct makeup b)
{
	return a.boards == b.boards && near(a.board_width, b.board_width) && a.plies == b.plies &&
		near(a.ply_thickness, b.ply_thickness) && a.gang == b.gang &&
		near(a.gang_width, b.gang_width);
}

bool parts_are_alike_in(enum aspect aspect, const struct part *a, const struct part *b)
{
	switch (aspect) {
	case ASPECT_NAME: return same_text(a->name, b->name);
	case ASPECT_SIZE: return same_size(a->size, b->size) && near(a->bent, b->bent);
	case ASPECT_MATERIAL: return same_text(a->material, b->material);
	case ASPECT_STUFF: return a->stuff == b->stuff;
	case ASPECT_MAKEUP: return same_makeup(a->makeup, b->makeup);
	case ASPECT_GRAIN: return a->grain == b->grain;
	case ASPECT_ENDS: return same_cut(a->start, b->start) && same_cut(a->end, b->end);
	case ASPECT_OUTLINE: return same_outline(a->outline, b->outline);
	case ASPECT_SECTION: return same_outline(a->section, b->section);
	case ASPECT_SOLID: return same_solids(a->solids, b->solids);
	case ASPECT_FEATURES: return same_features(a->features, b->features);
	case ASPECT_BORES: return same_bores(a->bores, b->bores);
	case ASPECT_NOTE: return same_text(a->note, b->note);
	case ASPECT_COUNT: break;
	}
	return true;
}

bool parts_are_alike(const struct part *a, const struct part *b)
{
	for (enum aspect aspect = 0; aspect < ASPECT_COUNT; aspect++)
		if (!parts_are_alike_in(aspect, a, b))
			return false;
	return true;
}
