#include "sheets/client_sign.h"

#include <string.h>

#include "draw/bounds.h"
#include "sheets/frame.h"

#define WORDS 0.42 /* of the width; the signatures have the rest */
#define GAP 8.0
#define ROW 3.4  /* height of a line to write on, in heights of a capital */
#define HEAD 2.4 /* over the first of them */
#define NAME 1.6 /* letters of the set's name */

static const struct note signed_for[] = {
	{ "What is signed",
		"The drawings of one set and of no other. Its name is printed beside \"set\" on "
		"every page; a page with another name there does not belong to it." },
	{ "If something changes",
		"Whatever is drawn otherwise makes another set with another name, which is signed "
		"anew. Until then the set that was signed last holds." },
};

enum { NOTES = 2, PARTIES = 2, LINES = 3 };

static struct box words_of(struct box room)
{
	room.x1 = room.x0 + WORDS * box_width(room);
	return room;
}

static double boxes_height(const struct sheet *s)
{
	return s->hand.letter * (HEAD + LINES * ROW);
}

static double height_of(const struct sheet *s)
{
	struct prose p = prose_set(s->hand, signed_for, NOTES, box_width(words_of(s->room)));
	double name = s->hand.letter * (NAME + 2.2);

	return fmax(boxes_height(s), name + prose_depth(s->hand, p) + s->hand.letter);
}

double client_sign_height(struct arena *a, const struct sheet_context *c)
{
	struct sheet s = sheet_begin(a, c, "");

	return height_of(&s);
}

/* The set's name large, the words for it under it. */
static void draw_words(const struct sheet *s, struct box b)
{
	const struct sheet_context *c = s->context;
	struct hand h = s->hand;
	double y = b.y1 - h.letter * NAME;

	draw_text_styled(h.g, vec(b.x0, y), h.letter * NAME, 0, ALIGN_LEFT, LETTER_BOLD,
		arena_printf(h.g->arena, "Set %s", c->set_fingerprint));
	b.y1 = y - h.letter * 1.6;
	prose_draw(h, prose_set(h, signed_for, NOTES, box_width(b)), b, box_width(b));
}

static void draw_party(struct hand h, struct box b, const char *who)
{
	static const char *const lines[LINES] = { "signature", "name", "date" };
	double y = b.y1 - HEAD * h.letter, left = b.x0 + 1.5 * h.letter;

	draw_box(h.g, PEN_TABLE, b);
	draw_text_styled(h.g, vec(left, b.y1 - 1.8 * h.letter), h.letter, 0, ALIGN_LEFT,
		LETTER_BOLD, who);
	for (int i = 0; i < LINES; i++) {
		y -= ROW * h.letter;
		double base = y + 1.1 * h.letter;
		draw_text(h.g, vec(left, base), h.letter, ALIGN_LEFT, lines[i]);
		draw_line(h.g, PEN_DIM, vec(left + 7 * h.letter, base),
			vec(b.x1 - 1.5 * h.letter, base));
	}
}

static void draw_signatures(struct sheet *s)
{
	static const char *const parties[PARTIES] = { "For the client", "For the shop" };
	struct box room = s->room, words = words_of(room);

	room.y1 = words.y1 = room.y0 + height_of(s);
	draw_words(s, words);
	double wide = (room.x1 - words.x1 - PARTIES * GAP) / PARTIES;
	for (int i = 0; i < PARTIES; i++) {
		double x = words.x1 + GAP + i * (wide + GAP);
		struct box b = { x, room.y1 - boxes_height(s), x + wide, room.y1 };
		draw_party(s->hand, b, parties[i]);
	}
}

void client_sign(struct arena *a, const struct sheet_context *c, struct drawing *sheets)
{
	struct sheet s = sheet_begin(a, c, "");

	for (; sheets; sheets = sheets->next) {
		if (strcmp(sheets->id, CLIENT_SIGNED_SERIES "01") != 0)
			continue;
		draw_signatures(&s);
		drawing_take(sheets, s.drawing, vec(0, 0));
	}
}
