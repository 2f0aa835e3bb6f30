/*
 * Every corner of a stringer in figures, as it is listed and as it is lettered beside the corner.
 */
#include "sheets/joint_words.h"
#include "sheets/template_stringer.h"

static bool is_corner(struct outline o, struct vec at)
{
	for (int i = 0; i < o.n; i++)
		if (pattern_same_point(o.corners[i].at, at))
			return true;
	return false;
}

/* Which of the corners is at this place, counted from 1; 0: none. */
static int find_corner(const struct vec *corners, int n, struct vec at)
{
	for (int i = 0; corners && i < n; i++)
		if (pattern_same_point(corners[i], at))
			return i + 1;
	return 0;
}

/* Where a corner that is no step's lies: on an edge of the plank, or at an end of the piece. */
static const char *edge_name(struct box extent, struct vec at)
{
	if (at.y < extent.y0 + PATTERN_ALIKE)
		return "lower edge";
	if (at.y > extent.y1 - PATTERN_ALIKE)
		return "upper edge";
	if (at.x < extent.x0 + PATTERN_ALIKE)
		return "lower end";
	return at.x > extent.x1 - PATTERN_ALIKE ? "upper end" : "";
}

static const char *corner_name(struct arena *a, const struct part *part, struct vec at)
{
	const struct stringer *s = part->stringer;
	int front = find_corner(s->tread_corners, s->steps, at);
	int back = find_corner(s->inner_corners, s->steps, at);

	if (front)
		return arena_printf(a, "front of tread %d", front);
	if (back)
		return arena_printf(a, "back of tread %d", back);
	return edge_name(stringer_extent(a, part), at);
}

struct lister {
	struct arena *arena;
	const struct part *part;
	struct lettering lettering;
	struct position *list;
	int n;
};

static void list_corner(struct lister *l, struct vec at)
{
	l->list[l->n] = (struct position){ l->n + 1, at, corner_name(l->arena, l->part, at),
		length_letter_inches(l->arena, l->lettering, at.x),
		length_letter_inches(l->arena, l->lettering, at.y) };
	l->n++;
}

/* A housed stringer's steps are not corners of its outline: they are listed after it. */
static void list_step_corners(struct lister *l, const struct vec *corners)
{
	for (int i = 0; corners && i < l->part->stringer->steps; i++)
		if (!is_corner(l->part->outline, corners[i]))
			list_corner(l, corners[i]);
}

static struct lister list_corners(struct arena *a, const struct part *part,
	struct lettering lettering, int bores)
{
	int most = part->outline.n + 2 * part->stringer->steps + bores;
	struct lister l = { a, part, lettering, NEW_N(a, struct position, most + 1), 0 };

	for (int i = 0; i < part->outline.n; i++)
		list_corner(&l, part->outline.corners[i].at);
	list_step_corners(&l, part->stringer->tread_corners);
	list_step_corners(&l, part->stringer->inner_corners);
	return l;
}

struct positions stringer_corners(struct arena *a, const struct part *part,
	struct lettering lettering)
{
	struct lister l = list_corners(a, part, lettering, 0);

	return (struct positions){ l.list, l.n };
}

static enum bore_side other_side(enum bore_side side)
{
	switch (side) {
	case BORE_FROM_ABOVE: return BORE_FROM_BELOW;
	case BORE_FROM_BELOW: return BORE_FROM_ABOVE;
	case BORE_IN_EDGE: break;
	}
	return side;
}

/* A stringer whose worked face is the one behind lies the other way round: what is bored into that
 * face is then the work that is seen. */
struct unit_bores stringer_bores_drawn(struct arena *a, const struct part *part)
{
	struct unit_bores all = bores_laid_out(a, part);
	struct unit_bore *list = NEW_N(a, struct unit_bore, all.n + 1);

	for (int i = 0; i < all.n; i++) {
		list[i] = all.bore[i];
		if (stringer_is_mirrored(part->stringer))
			list[i].side = other_side(list[i].side);
	}
	return (struct unit_bores){ list, all.n };
}

struct positions stringer_marks(struct arena *a, const struct part *part,
	struct lettering lettering)
{
	struct unit_bores b = stringer_bores_drawn(a, part);
	struct lister l = list_corners(a, part, lettering, b.n);

	for (int i = 0; i < b.n; i++) {
		struct vec at = vec(b.bore[i].at.origin.x, b.bore[i].at.origin.y);
		l.list[l.n] = (struct position){ l.n + 1, at, bore_words(a, lettering, &b.bore[i]),
			bore_place_letter(a, lettering, b.bore[i].bore, at.x),
			bore_place_letter(a, lettering, b.bore[i].bore, at.y) };
		l.n++;
	}
	return (struct positions){ l.list, l.n };
}
