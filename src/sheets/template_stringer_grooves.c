/*
 * The lines to rout a housing to.
 *
 * The model gives every step a groove of its own.  Where one runs into the next
 * they are one channel, and the side they share is no line to work to.
 *
 *        ____________
 *       |  ________  |__________
 *       | |        | : ________        (:) shared
 */
#include "sheets/template_stringer.h"

static bool has_side(struct outline o, struct vec from, struct vec to)
{
	for (int i = 0; i < o.n; i++)
		if (pattern_same_point(o.corners[i].at, from) &&
			pattern_same_point(o.corners[(i + 1) % o.n].at, to))
			return true;
	return false;
}

/* Two grooves run their shared side in opposite directions. */
static bool is_shared(const struct part *part, const struct feature *groove, int side)
{
	struct outline o = groove->at;
	struct vec from = o.corners[side].at, to = o.corners[(side + 1) % o.n].at;

	for (const struct feature *f = part->features; f; f = f->next)
		if (f != groove && f->kind == FEATURE_GROOVE && has_side(f->at, to, from))
			return true;
	return false;
}

/* `sides` sides of the outline from this one on, as a line. */
static struct chain *run_of_sides(struct arena *a, struct outline o, int first, int sides)
{
	struct corner *corners = NEW_N(a, struct corner, sides + 1);
	struct chain *line = NEW(a, struct chain);

	for (int i = 0; i <= sides; i++)
		corners[i] = o.corners[(first + i) % o.n];
	corners[sides].bulge = 0;
	*line = outline_chain(a, (struct outline){ corners, sides + 1 });
	line->closed = false;
	return line;
}

static struct chain *whole_groove(struct arena *a, struct outline o)
{
	struct chain *line = NEW(a, struct chain);

	*line = outline_chain(a, o);
	return line;
}

struct chain *groove_lines(struct arena *a, const struct part *part, const struct feature *groove)
{
	struct outline o = groove->at;
	struct chain *lines = NULL, **tail = &lines;
	int start = 0;

	while (start < o.n && !is_shared(part, groove, start))
		start++;
	if (start == o.n)
		return whole_groove(a, o);
	for (int i = 1; i < o.n;) {
		int first = (start + i) % o.n, sides = 0;
		while (i + sides < o.n && !is_shared(part, groove, (first + sides) % o.n))
			sides++;
		if (sides > 0) {
			*tail = run_of_sides(a, o, first, sides);
			tail = &(*tail)->next;
		}
		i += sides + 1;
	}
	return lines;
}
