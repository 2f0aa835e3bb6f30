#include <string.h>

#include "parts/piece.h"

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

static bool same_bores(const struct bore *a, const struct bore *b)
{
	for (; a && b; a = a->next, b = b->next)
		if (!same_fixing(a, b) || !same_bore_size(a->size, b->size) ||
			!same_point(a->at.origin, b->at.origin) || !same_point(a->at.u, b->at.u) ||
			!same_point(a->at.w, b->at.w) || a->is_mate != b->is_mate)
			return false;
	return !a && !b;
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

static bool same_ends(const struct part *a, const struct part *b)
{
	return near(a->start.mitre, b->start.mitre) && near(a->start.bevel, b->start.bevel) &&
		near(a->end.mitre, b->end.mitre) && near(a->end.bevel, b->end.bevel);
}

static bool same_makeup(struct makeup a, struct makeup b)
{
	return a.boards == b.boards && near(a.board_width, b.board_width) && a.plies == b.plies &&
		near(a.ply_thickness, b.ply_thickness) && a.gang == b.gang &&
		near(a.gang_width, b.gang_width);
}

/* The wood that is bought for it, and how it is glued up. */
static bool same_stuff(const struct part *a, const struct part *b)
{
	return a->stuff == b->stuff && a->grain == b->grain &&
		same_text(a->material, b->material) && same_makeup(a->makeup, b->makeup);
}

bool parts_are_alike(const struct part *a, const struct part *b)
{
	return strcmp(a->name, b->name) == 0 && same_size(a->size, b->size) &&
		near(a->bent, b->bent) && same_stuff(a, b) && same_ends(a, b) &&
		same_outline(a->outline, b->outline) && same_outline(a->section, b->section) &&
		same_solids(a->solids, b->solids) && same_features(a->features, b->features) &&
		same_bores(a->bores, b->bores) && same_text(a->note, b->note);
}

/* The first piece of the list that is equal to this one: itself, unless an equal one came before.
 * Only first ones are looked at, and a flight has a handful of those. */
static struct part *model_of(struct part *models, struct part *piece)
{
	for (struct part *m = models; m; m = m->next)
		if (parts_are_alike(m, piece))
			return m;
	return NULL;
}

/* Room for the places doubles, so that n equal pieces cost n. */
static void add_place(struct arena *a, struct part *p, struct frame at, int unit)
{
	bool full = (p->count & (p->count - 1)) == 0;
	struct frame *places = (struct frame *)p->places;
	int *units = (int *)p->units;
	if (full) {
		places = NEW_N(a, struct frame, 2 * p->count);
		units = NEW_N(a, int, 2 * p->count);
		memcpy(places, p->places, (size_t)p->count * sizeof(*places));
		memcpy(units, p->units, (size_t)p->count * sizeof(*units));
		p->places = places;
		p->units = units;
	}
	places[p->count] = at;
	units[p->count++] = unit;
}

struct part *pieces_merge(struct arena *a, const struct part_kind *kind, struct part *pieces)
{
	struct part *first = NULL, **tail = &first, *next;
	int number = 0;
	for (struct part *p = pieces; p; p = next) {
		next = p->next;
		p->next = NULL;
		struct part *model = model_of(first, p);
		if (model) {
			add_place(a, model, p->places[0], p->units[0]);
			continue;
		}
		if (kind->prefix[0])
			p->mark = arena_printf(a, "%s%d", kind->prefix, ++number);
		*tail = p;
		tail = &p->next;
	}
	return first;
}
