#include "sheets/labels.h"

#include "draw/bounds.h"
#include "draw/place.h"

#define WIDTH 16.0 /* of the words, in heights of a capital */
#define LINE 1.5
#define AIR 1.1    /* between two labels */
#define SHOULDER 1.0 /* words to the leader */

/* A label's lines: its heading, then its words. */
struct set_label {
	const char *head;
	struct lines words;
	double width, height;
};

static struct set_label set_label(struct hand h, const struct label *l)
{
	struct set_label set = { l->head,
		wrap_text(h.g->arena, h.measure, h.letter, WIDTH * h.letter, l->words), 0, 0 };

	set.width = measure_width(h.measure, LETTER_BOLD, h.letter, l->head);
	for (int i = 0; i < set.words.n; i++)
		set.width = fmax(set.width, measure_width(h.measure, LETTER_REGULAR, h.letter,
						    set.words.line[i]));
	set.height = h.letter * (1 + LINE * set.words.n);
	return set;
}

/* The middle of its height stands at `at`. */
static struct box draw_label(struct hand h, const struct set_label *l, struct vec at,
	enum label_side side)
{
	enum align align = side == LABELS_LEFT ? ALIGN_RIGHT : ALIGN_LEFT;
	double y = at.y + l->height / 2 - h.letter;

	draw_text_styled(h.g, vec(at.x, y), h.letter, 0, align, LETTER_BOLD, l->head);
	for (int i = 0; i < l->words.n; i++)
		draw_text(h.g, vec(at.x, y -= LINE * h.letter), h.letter, align, l->words.line[i]);
	double away = side == LABELS_LEFT ? -l->width : l->width;
	struct box b = box_add(box_empty(), vec(at.x, at.y - l->height / 2 - h.letter * 0.3));
	return box_add(b, vec(at.x + away, at.y + l->height / 2));
}

struct box labels_draw(struct hand h, const struct label *list, int n, struct label_column column)
{
	struct arena *a = h.g->arena;
	struct set_label *set = NEW_N(a, struct set_label, n + 1);
	struct leader *leaders = NEW_N(a, struct leader, n + 1);
	double way = column.side == LABELS_LEFT ? 1 : -1, tallest = 0;
	struct box used = box_empty();

	for (int i = 0; i < n; i++) {
		set[i] = set_label(h, &list[i]);
		leaders[i] = (struct leader){ list[i].head, list[i].points_at, { 0, 0 } };
		tallest = fmax(tallest, set[i].height);
	}
	struct leader_line line = { vec(column.x, 0), vec(0, 1), tallest + AIR * h.letter,
		column.low + tallest / 2, column.high - tallest / 2 };
	leaders_set(a, leaders, n, line);
	for (int i = 0; i < n; i++) {
		struct vec shoulder = vec(way * SHOULDER * h.letter, 0);
		leader_draw(h.g, leaders[i].at, leaders[i].points_at);
		used = box_join(used, draw_label(h, &set[i], vec_sub(leaders[i].at, shoulder),
					       column.side));
	}
	return used;
}
