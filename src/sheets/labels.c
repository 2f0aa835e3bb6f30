#include "sheets/labels.h"

#include "draw/bounds.h"
#include "draw/place.h"

#define WIDTH 16.0 /* of the words, in heights of a capital */
#define LINE 1.5
#define AIR 1.1      /* between two labels */
#define SHOULDER 1.0 /* words to the leader */
#define SHIFT 2.0    /* words over what they name */

enum { MOST_LINES = 8 };

/* A label's lines: its heading first. */
struct set_label {
	const char *line[MOST_LINES];
	int n;
	double width, height;
};

static void add_lines(struct hand h, struct set_label *set, const char *words)
{
	struct lines l = wrap_text(h.g->arena, h.measure, h.letter, WIDTH * h.letter, words);

	for (int i = 0; i < l.n && *words && set->n < MOST_LINES; i++)
		set->line[set->n++] = l.line[i];
}

static enum letter_style style_of(int line)
{
	return line == 0 ? LETTER_BOLD : LETTER_REGULAR;
}

static struct set_label set_label(struct hand h, const struct label *l)
{
	struct set_label set = { .line = { l->head }, .n = 1 };

	add_lines(h, &set, l->words);
	add_lines(h, &set, l->more);
	for (int i = 0; i < set.n; i++)
		set.width = fmax(set.width,
			measure_width(h.measure, style_of(i), h.letter, set.line[i]));
	set.height = h.letter * (1 + LINE * (set.n - 1));
	return set;
}

/* The middle of its height stands at `at`. */
static struct box draw_label(struct hand h, const struct set_label *l, struct vec at,
	enum label_side side)
{
	enum align align = side == LABELS_LEFT ? ALIGN_RIGHT : ALIGN_LEFT;
	double y = at.y + l->height / 2 - h.letter;

	for (int i = 0; i < l->n; i++)
		draw_text_styled(h.g, vec(at.x, y - i * LINE * h.letter), h.letter, 0, align,
			style_of(i), l->line[i]);
	double away = side == LABELS_LEFT ? -l->width : l->width;
	struct box b = box_add(box_empty(), vec(at.x, at.y - l->height / 2 - h.letter * 0.3));
	return box_add(b, vec(at.x + away, at.y + l->height / 2));
}

/* How the labels of a column stand, and those of a row. */
enum stacking { STACKED, SIDE_BY_SIDE };

static struct leader *set_leaders(struct hand h, const struct label *list, struct set_label *set,
	int n, enum stacking stacking)
{
	struct leader *leaders = NEW_N(h.g->arena, struct leader, n + 1);

	for (int i = 0; i < n; i++) {
		set[i] = set_label(h, &list[i]);
		leaders[i] = (struct leader){ list[i].head, list[i].points_at, { 0, 0 },
			stacking == STACKED ? set[i].height : set[i].width };
	}
	return leaders;
}

struct box labels_draw(struct hand h, const struct label *list, int n, struct label_column column)
{
	struct set_label *set = NEW_N(h.g->arena, struct set_label, n + 1);
	struct leader *leaders = set_leaders(h, list, set, n, STACKED);
	double way = column.side == LABELS_LEFT ? 1 : -1;
	struct box used = box_empty();
	struct leader_line line = { .from = vec(column.x, 0),
		.along = vec(0, 1),
		.gap = AIR * h.letter,
		.low = column.low,
		.high = column.high,
		.shift = h.letter * SHIFT };

	leaders_set(h.g->arena, leaders, n, line);
	for (int i = 0; i < n; i++) {
		struct vec shoulder = vec(way * SHOULDER * h.letter, 0);
		leader_draw(h.g, leaders[i].at, leaders[i].points_at);
		used = box_join(used,
			draw_label(h, &set[i], vec_sub(leaders[i].at, shoulder), column.side));
	}
	return used;
}

struct box label_row_draw(struct hand h, const struct label *list, int n, struct label_row row)
{
	struct set_label *set = NEW_N(h.g->arena, struct set_label, n + 1);
	struct leader *leaders = set_leaders(h, list, set, n, SIDE_BY_SIDE);
	struct box used = box_empty();
	struct leader_line line = { .from = vec(0, row.y),
		.along = vec(1, 0),
		.gap = 2 * AIR * h.letter,
		.low = row.low,
		.high = row.high };

	leaders_set(h.g->arena, leaders, n, line);
	for (int i = 0; i < n; i++) {
		double away = SHOULDER * h.letter + set[i].height / 2;
		struct vec middle = vec(leaders[i].at.x - set[i].width / 2,
			row.y + (row.side == LABELS_ABOVE ? away : -away));
		leader_draw(h.g, leaders[i].at, leaders[i].points_at);
		used = box_join(used, draw_label(h, &set[i], middle, LABELS_RIGHT));
	}
	return used;
}
