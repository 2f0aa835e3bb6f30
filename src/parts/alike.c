#include "parts/alike.h"

#include <string.h>

static bool same_size(struct part_size a, struct part_size b)
{
	return near_enough(a.length, b.length) && near_enough(a.width, b.width) &&
		near_enough(a.thickness, b.thickness);
}

bool outlines_are_same(struct outline a, struct outline b)
{
	if (a.n != b.n)
		return false;
	for (int i = 0; i < a.n; i++)
		if (!vec_near(a.corners[i].at, b.corners[i].at) ||
			!near_enough(a.corners[i].bulge, b.corners[i].bulge))
			return false;
	return true;
}

static bool same_points(const struct vec3 *a, const struct vec3 *b, int n)
{
	for (int i = 0; i < n; i++)
		if (!vec3_near(a[i], b[i]))
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
	return a.kind == b.kind && near_enough(a.length, b.length) &&
		near_enough(a.width, b.width) && near_enough(a.depth, b.depth);
}

/* What is bought for a joint is as long as both its holes: the mate counts. */
static bool same_fixing(const struct bore *a, const struct bore *b)
{
	return a->fixing == b->fixing && near_enough(a->fixing_length, b->fixing_length) &&
		near_enough(a->fixing_width, b->fixing_width) &&
		near_enough(a->driven, b->driven) && near_enough(a->thread, b->thread) &&
		same_bore_size(a->mate, b->mate);
}

static bool same_bore(const struct bore *a, const struct bore *b)
{
	return same_fixing(a, b) && same_bore_size(a->size, b->size) &&
		vec3_near(a->at.origin, b->at.origin) && vec3_near(a->at.u, b->at.u) &&
		vec3_near(a->at.w, b->at.w) && a->is_mate == b->is_mate &&
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
	return near_enough(a.tilt, b.tilt) && near_enough(a.fence, b.fence) &&
		near_enough(a.height, b.height) && a.cuts == b.cuts && same_text(a.lies, b.lies);
}

static bool same_features(const struct feature *a, const struct feature *b)
{
	for (; a && b; a = a->next, b = b->next)
		if (a->kind != b->kind || !outlines_are_same(a->at, b->at) ||
			!near_enough(a->angle, b->angle) || !near_enough(a->depth, b->depth) ||
			!near_enough(a->radius, b->radius) || !same_sawn(a->sawn, b->sawn) ||
			a->goes_round != b->goes_round || !same_text(a->text, b->text))
			return false;
	return !a && !b;
}

static bool same_cut(struct end_cut a, struct end_cut b)
{
	return near_enough(a.mitre, b.mitre) && near_enough(a.bevel, b.bevel);
}

static bool same_makeup(struct makeup a, struct makeup b)
{
	return a.boards == b.boards && near_enough(a.board_width, b.board_width) &&
		a.plies == b.plies && near_enough(a.ply_thickness, b.ply_thickness) &&
		a.gang == b.gang && near_enough(a.gang_width, b.gang_width);
}

bool parts_are_alike_in(enum aspect aspect, const struct part *a, const struct part *b)
{
	switch (aspect) {
	case ASPECT_NAME: return same_text(a->name, b->name);
	case ASPECT_SIZE: return same_size(a->size, b->size) && near_enough(a->bent, b->bent);
	case ASPECT_MATERIAL: return same_text(a->material, b->material);
	case ASPECT_STUFF: return a->stuff == b->stuff;
	case ASPECT_MAKEUP: return same_makeup(a->makeup, b->makeup);
	case ASPECT_GRAIN: return a->grain == b->grain;
	case ASPECT_ENDS: return same_cut(a->start, b->start) && same_cut(a->end, b->end);
	case ASPECT_OUTLINE:
		return outlines_are_same(a->outline, b->outline) &&
			outlines_are_same(a->core, b->core);
	case ASPECT_SECTION: return outlines_are_same(a->section, b->section);
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
