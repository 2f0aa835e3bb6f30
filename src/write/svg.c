#include "write/svg.h"

#include "write/ink_svg.h"
#include "write/paint.h"

#include <stdbool.h>

/* XML has no control characters, nor the two at the end of the plane. */
static bool is_xml(struct code c)
{
	bool is_spoilt = c.bytes == 1 && c.point > 0x7F;

	return c.point >= ' ' && (c.point & 0xFFFE) != 0xFFFE && !is_spoilt;
}

static void add_escaped(struct text *b, const char *text)
{
	while (*text) {
		struct code c = code_next(text);
		switch (*text) {
		case '<': text_put(b, "&lt;"); break;
		case '>': text_put(b, "&gt;"); break;
		case '&': text_put(b, "&amp;"); break;
		default: text_put_bytes(b, is_xml(c) ? text : "????", (size_t)c.bytes);
		}
		text += c.bytes;
	}
}

static void add_size(struct text *b, const char *before, double mm, const char *after)
{
	text_put(b, before);
	text_put_thousandths(b, lround(mm * 1000));
	text_put(b, after);
}

static void add_root(struct text *b, const struct drawing *g)
{
	text_put(b,
		"<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
		"<svg xmlns=\"http://www.w3.org/2000/svg\""
		" xmlns:xlink=\"http://www.w3.org/1999/xlink\" role=\"img\"\n");
	add_size(b, "  width=\"", g->width, "mm\"");
	add_size(b, " height=\"", g->height, "mm\"");
	add_size(b, " viewBox=\"0 0 ", g->width, " ");
	add_size(b, "", g->height, "\">\n");
}

static void add_words(struct text *b, const struct drawing *g, const struct imprint *imprint)
{
	text_put(b, "<title>");
	add_escaped(b, arena_printf(b->arena, "%s %s", g->id, g->title));
	text_put(b, "</title>\n<desc>");
	add_escaped(b, imprint->title);
	for (const struct mark *m = g->first; m; m = m->next) {
		if (m->kind != MARK_TEXT)
			continue;
		text_put_char(b, '\n');
		add_escaped(b, m->text.text);
	}
	text_put(b, "</desc>\n");
}

static void add_text(struct text *b, const struct text *more)
{
	text_put_bytes(b, text_chars(more), more->length);
}

struct output svg_make(struct arena *a, const struct drawing *g, const struct imprint *imprint,
	struct outlines *outlines)
{
	struct ink_svg *ink = ink_svg_new(a, g->height, outlines);
	struct text *b = text_new(a);

	paint_drawing((struct canvas){ &ink->base, g, outlines->faces, a });
	add_root(b, g);
	add_words(b, g, imprint);
	text_put(b, "<defs>\n");
	add_text(b, ink->glyphs);
	text_put(b,
		"</defs>\n"
		"<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n"
		"<g stroke=\"#000\" stroke-linecap=\"round\" stroke-linejoin=\"round\""
		" fill=\"none\">\n");
	add_text(b, ink->marks);
	text_put(b, "</g>\n<g fill=\"#000\">\n");
	add_text(b, ink->letters);
	text_put(b, "</g>\n</svg>\n");
	return (struct output){ .text = b };
}
