#include "draw/place.h"

#include <string.h>

#include "draw/bounds.h"

#define COST_TEXT 100
#define COST_HEAVY 30
#define COST_FINE 4
#define COST_OFF 1000

/* Does the segment pass through the box?  Clips its parameter against each pair of sides. */
static bool passes(struct box b, struct vec p, struct vec q)
{
	const double from[2] = { p.x, p.y }, step[2] = { q.x - p.x, q.y - p.y };
	const double low[2] = { b.x0, b.y0 }, high[2] = { b.x1, b.y1 };
	double t0 = 0, t1 = 1;

	for (int i = 0; i < 2; i++) {
		if (fabs(step[i]) < 1e-12) {
			if (from[i] <= low[i] || from[i] >= high[i])
				return false;
			continue;
		}
		double a = (low[i] - from[i]) / step[i], z = (high[i] - from[i]) / step[i];
		t0 = fmax(t0, fmin(a, z));
		t1 = fmin(t1, fmax(a, z));
	}
	return t0 < t1;
}

static struct box text_box(struct measure m, double height, struct spot spot, const char *text)
{
	double w = measure_width(m, LETTER_REGULAR, height, text);
	double left = spot.at.x -
		(spot.align == ALIGN_LEFT                    ? 0
				: spot.align == ALIGN_MIDDLE ? w / 2
							     : w);

	return (struct box){ left, spot.at.y - height * DESCENDER, left + w, spot.at.y + height };
}

static int cost_of_line(struct box b, const struct mark *k)
{
	int pieces = k->line.n - 1 + (k->line.closed ? 1 : 0);

	for (int i = 0; i < pieces; i++)
		if (passes(b, k->line.points[i], k->line.points[(i + 1) % k->line.n]))
			return pen_is_heavy(k->line.pen) ? COST_HEAVY : COST_FINE;
	return 0;
}

static int cost_of_text(struct box b, const struct mark *k, struct measure m)
{
	struct text_room room = text_room(k, m);
	struct box other = box_empty();

	for (int i = 0; i < 4; i++)
		other = box_add(other, room.corner[i]);
	return box_touches(b, other) ? COST_TEXT : 0;
}

int spot_cost(const struct drawing *g, struct measure m, double height, struct spot spot,
	const char *text)
{
	struct box b = box_grow(text_box(m, height, spot, text), 0.5);
	int cost = 0;

	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind == MARK_LINE)
			cost += cost_of_line(b, k);
		if (k->kind == MARK_TEXT)
			cost += cost_of_text(b, k, m);
	}
	return cost;
}

int place_text(struct drawing *g, struct measure m, double height, const struct spot *spots, int n,
	const char *text)
{
	int best = -1, least = COST_HEAVY;

	for (int i = 0; i < n && least > 0; i++) {
		int cost = spot_cost(g, m, height, spots[i], text);
		if (cost < least) {
			least = cost;
			best = i;
		}
	}
	if (best >= 0)
		draw_text(g, spots[best].at, height, spots[best].align, text);
	return best;
}

/* A run of neighbours pushed together, standing at the mean of what they want. */
struct pool {
	double sum;
	int count;
};

void spread(struct arena *a, double *at, int n, double gap)
{
	struct pool *pools = NEW_N(a, struct pool, n + 1);
	int last = -1;

	/* with the gaps taken out, the places only have to be in rising order */
	for (int i = 0; i < n; i++) {
		pools[++last] = (struct pool){ at[i] - i * gap, 1 };
		while (last > 0 &&
			pools[last - 1].sum / pools[last - 1].count >
				pools[last].sum / pools[last].count) {
			pools[last - 1].sum += pools[last].sum;
			pools[last - 1].count += pools[last].count;
			last--;
		}
	}
	for (int p = 0, i = 0; p <= last; p++)
		for (int k = 0; k < pools[p].count; k++, i++)
			at[i] = pools[p].sum / pools[p].count + i * gap;
}

static size_t fitting(struct arena *a, struct measure m, double height, double width,
	const char *text)
{
	size_t fits = 0;

	for (size_t end = strcspn(text, " \n"); end; end += 1 + strcspn(text + end + 1, " \n")) {
		const char *piece = arena_strndup(a, text, end);
		if (fits && measure_width(m, LETTER_REGULAR, height, piece) > width)
			break;
		fits = end;
		if (text[end] != ' ')
			break;
	}
	return fits;
}

struct lines wrap_text(struct arena *a, struct measure m, double height, double width,
	const char *text)
{
	const char **line = NEW_N(a, const char *, strlen(text) + 1);
	int n = 0;

	while (*text) {
		size_t fits = fitting(a, m, height, width, text);
		line[n++] = arena_strndup(a, text, fits);
		text += fits;
		while (*text == ' ')
			text++;
		if (*text == '\n')
			text++;
	}
	return (struct lines){ line, n };
}
