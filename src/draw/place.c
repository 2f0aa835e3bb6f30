#include "draw/place.h"

#include <ctype.h>
#include <string.h>

#include "draw/bounds.h"

/* What a text that is placed there would cost: the least wins.  Only their order matters. */
#define COST_TEXT 100
#define COST_HEAVY 30
#define COST_FINE 4
#define COST_HATCH 12
#define AIR 0.5 /* round a text that is being placed */

/* The room a text would take, with air all round. */
static struct text_room room_for(struct measure m, double height, struct spot spot,
	const char *text)
{
	struct mark k = { .kind = MARK_TEXT };

	k.text.at = spot.at;
	k.text.height = height;
	k.text.angle = spot.angle;
	k.text.align = spot.align;
	k.text.text = text;
	struct text_room room = text_room(&k, m);
	struct vec along = vec_scale(vec_unit(vec_sub(room.corner[1], room.corner[0])), AIR);
	struct vec up = vec_left(along);
	room.corner[0] = vec_sub(vec_sub(room.corner[0], along), up);
	room.corner[1] = vec_sub(vec_add(room.corner[1], along), up);
	room.corner[2] = vec_add(vec_add(room.corner[2], along), up);
	room.corner[3] = vec_add(vec_sub(room.corner[3], along), up);
	return room;
}

static int line_cost(enum pen pen)
{
	if (pen_is_heavy(pen))
		return COST_HEAVY;
	return pen == PEN_HATCH ? COST_HATCH : COST_FINE;
}

/* What a line or an arc costs in a spot: hatch nothing where it is knocked out, and a ring, which
 * no other lettering may run into, as much as lettering. */
static int mark_cost(const struct mark *k, enum spot_ground ground)
{
	enum pen pen = k->kind == MARK_LINE ? k->line.pen : k->arc.pen;

	if (mark_is_ring(k))
		return COST_TEXT;
	return ground == SPOT_KNOCKED_OUT && pen == PEN_HATCH ? 0 : line_cost(pen);
}

/* A balloon, an arrow's head: lettering on a shade is read as well as on paper. */
static bool is_in_the_way(const struct mark *fill)
{
	return fill->fill.shade == SHADE_WHITE || fill->fill.shade == SHADE_BLACK;
}

/* What a text in `spot` would spoil on the drawing so far: 0 is free; touching lettering weighs
 * more than a heavy line, and that more than a fine one. */
static int spot_cost(const struct drawing *g, struct measure m, double height, struct spot spot,
	const char *text)
{
	struct text_room room = room_for(m, height, spot, text);
	struct box box = room_box(&room);
	int cost = 0;

	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind == MARK_TEXT) {
			struct text_room other = text_room(k, m);
			cost += rooms_touch(&room, &other) ? COST_TEXT : 0;
		} else if (k->kind == MARK_FILL) {
			cost += is_in_the_way(k) && fill_touches(k, &room, box) ? COST_TEXT : 0;
		} else if (mark_crosses(k, &room, box)) {
			cost += mark_cost(k, spot.ground);
		}
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
		draw_text_styled(g, spots[best].at, height, spots[best].angle, spots[best].align,
			LETTER_REGULAR, text);
	return best;
}

bool stroke_strikes_text(const struct drawing *g, struct measure m, struct vec from, struct vec to,
	double width)
{
	struct vec half = vec_scale(vec_left(vec_unit(vec_sub(to, from))), width / 2);
	const struct text_room stroke = { { vec_sub(from, half), vec_sub(to, half),
		vec_add(to, half), vec_add(from, half) } };

	for (const struct mark *k = g->first; k; k = k->next) {
		if (k->kind != MARK_TEXT)
			continue;
		struct text_room room = text_room(k, m);
		if (rooms_touch(&room, &stroke))
			return true;
	}
	return false;
}

bool heavy_line_crosses(const struct drawing *g, struct box b)
{
	const struct text_room room = { { { b.x0, b.y0 }, { b.x1, b.y0 }, { b.x1, b.y1 },
		{ b.x0, b.y1 } } };

	for (const struct mark *k = g->first; k; k = k->next)
		if (mark_is_heavy(k) && mark_crosses(k, &room, b))
			return true;
	return false;
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

static bool is_fraction(const char *s)
{
	size_t over = strspn(s, "0123456789");

	return over > 0 && s[over] == '/';
}

static bool is_mark_of_part(const char *s)
{
	return s[0] >= 'A' && s[0] <= 'Z' && s[1] >= '0' && s[1] <= '9';
}

static bool is_millimetres(const char *s)
{
	return strncmp(s, "mm", 2) == 0 && !isalnum((unsigned char)s[2]);
}

/* A fraction stays with its whole number, a times with what follows, a figure with its unit, a
 * count with its mark: 3 15/16", x 3", 60 mm, 7 T6. */
static bool stay_together(const char *word, size_t length, const char *next)
{
	if (is_fraction(next) || (length == 1 && *word == 'x'))
		return true;
	if (length > 0 && isdigit((unsigned char)word[length - 1]) && is_millimetres(next))
		return true;
	return length > 0 && strspn(word, "0123456789") == length && is_mark_of_part(next);
}

/* Length of the words up to the next place where a line may end. */
static size_t next_break(const char *text, size_t from)
{
	size_t word = from, end = from + strcspn(text + from, " \n");

	while (text[end] == ' ' && stay_together(text + word, end - word, text + end + 1)) {
		word = end + 1;
		end = word + strcspn(text + word, " \n");
	}
	return end;
}

/* Length of the words that fit; the first one at least.  Letters stand side by side at their own
 * widths, so each word is measured once. */
static size_t fitting(struct measure m, enum letter_style style, double height, double width,
	const char *text)
{
	size_t fits = 0;
	double used = 0;

	for (size_t end = next_break(text, 0); end; end = next_break(text, end + 1)) {
		used += m.width(m.faces, style, height, text + fits, end - fits);
		if (fits && used > width)
			break;
		fits = end;
		if (text[end] != ' ')
			break;
	}
	return fits;
}

static int count_breaks(const char *text)
{
	int n = 0;

	for (; *text; text++)
		n += *text == ' ' || *text == '\n';
	return n;
}

struct lines wrap_text_styled(struct arena *a, struct measure m, enum letter_style style,
	double height, double width, const char *text)
{
	const char **line = NEW_N(a, const char *, count_breaks(text) + 1);
	int n = 0;

	while (*text) {
		size_t fits = fitting(m, style, height, width, text);
		line[n++] = arena_strndup(a, text, fits);
		text += fits;
		while (*text == ' ')
			text++;
		if (*text == '\n')
			text++;
	}
	return (struct lines){ line, n };
}

struct lines wrap_text(struct arena *a, struct measure m, double height, double width,
	const char *text)
{
	return wrap_text_styled(a, m, LETTER_REGULAR, height, width, text);
}
