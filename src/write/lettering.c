#include "write/lettering.h"

#include <string.h>

static double start(struct canvas c, const struct mark *m)
{
	double width =
		measure_width(faces_measure(c.faces), m->text.style, m->text.height, m->text.text);

	switch (m->text.align) {
	case ALIGN_LEFT: return 0;
	case ALIGN_MIDDLE: return -width / 2;
	case ALIGN_RIGHT: return -width;
	}
	return 0;
}

static void end_run(struct canvas c, struct run *r)
{
	if (r->n)
		c.ink->kind->letters(c.ink, *r);
	r->n = 0;
}

/* Each letter is set down by its own distance along the base line, so that no
 * rounding adds up along a text. */
static void text_paint(struct canvas c, struct glyph *room, const struct mark *m)
{
	const struct vec along = vec(cos(m->text.angle), sin(m->text.angle));
	double walked = start(c, m), run_at = 0;
	struct run run = { .height = m->text.height, .angle = m->text.angle, .glyphs = room };

	for (const char *s = m->text.text; *s;) {
		struct code code = code_next(s);
		struct letter l = faces_letter(c.faces, m->text.style, code.point);
		if (l.face != run.face)
			end_run(c, &run);
		if (!run.n) {
			run_at = walked;
			run.face = l.face;
			run.at = vec_add(m->text.at, vec_scale(along, walked));
		}
		room[run.n++] = (struct glyph){ l.glyph, walked - run_at };
		walked += l.advance * m->text.height;
		s += code.bytes;
	}
	end_run(c, &run);
}

static size_t longest_text(const struct drawing *g)
{
	size_t longest = 0;

	for (const struct mark *m = g->first; m; m = m->next) {
		size_t length = m->kind == MARK_TEXT ? strlen(m->text.text) : 0;
		longest = length > longest ? length : longest;
	}
	return longest;
}

void lettering_paint(struct canvas c)
{
	struct glyph *room = NEW_N(c.arena, struct glyph, longest_text(c.drawing));

	for (const struct mark *m = c.drawing->first; m; m = m->next)
		if (m->kind == MARK_TEXT)
			text_paint(c, room, m);
}
