#include "write/svg.h"

#include "write/ink_svg.h"
#include "write/paint.h"

/* XML has no control characters, nor the two at the end of the plane. */
static int is_xml(struct code c)
{
	int is_spoilt = c.bytes == 1 && c.point > 0x7F;

	return c.point >= ' ' && (c.point & 0xFFFE) != 0xFFFE && !is_spoilt;
}

static void add_escaped(struct buffer *b, const char *text)
{
	while (*text) {
		struct code c = code_next(text);
		switch (*text) {
		case '<': buffer_text(b, "&lt;"); break;
		case '>': buffer_text(b, "&gt;"); break;
		case '&': buffer_text(b, "&amp;"); break;
		default: buffer_add(b, is_xml(c) ? text : "????", (size_t)c.bytes);
		}
		text += c.bytes;
	}
}

static void add_size(struct buffer *b, const char *before, double mm, const char *after)
{
	buffer_text(b, before);
	buffer_thousandths(b, lround(mm * 1000));
	buffer_text(b, after);
}

static void add_root(struct buffer *b, const struct drawing *g)
{
	buffer_text(b,
		"<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
		"<svg xmlns=\"http://www.w3.org/2000/svg\""
		" xmlns:xlink=\"http://www.w3.org/1999/xlink\" role=\"img\"\n");
	add_size(b, "  width=\"", g->width, "mm\"");
	add_size(b, " height=\"", g->height, "mm\"");
	add_size(b, " viewBox=\"0 0 ", g->width, " ");
	add_size(b, "", g->height, "\">\n");
}

static void add_words(struct buffer *b, const struct drawing *g, const struct imprint *imprint)
{
	buffer_text(b, "<title>");
	add_escaped(b, arena_printf(b->arena, "%s %s", g->id, g->title));
	buffer_text(b, "</title>\n<desc>");
	add_escaped(b, imprint->title);
	for (const struct mark *m = g->first; m; m = m->next) {
		if (m->kind != MARK_TEXT)
			continue;
		buffer_byte(b, '\n');
		add_escaped(b, m->text.text);
	}
	buffer_text(b, "</desc>\n");
}

static void add_buffer(struct buffer *b, const struct buffer *more)
{
	buffer_add(b, more->bytes, more->size);
}

struct output svg_make(struct arena *a, const struct drawing *g, const struct imprint *imprint,
	struct outlines *outlines)
{
	struct ink_svg *ink = ink_svg_new(a, g->height, outlines);
	struct buffer *b = buffer_new(a);
	int missing = paint_drawing((struct canvas){ &ink->base, g, outlines->faces, a });

	add_root(b, g);
	add_words(b, g, imprint);
	buffer_text(b, "<defs>\n");
	add_buffer(b, ink->glyphs);
	buffer_text(b,
		"</defs>\n"
		"<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n"
		"<g stroke=\"#000\" stroke-linecap=\"round\" fill=\"none\">\n");
	add_buffer(b, ink->marks);
	buffer_text(b, "</g>\n<g fill=\"#000\">\n");
	add_buffer(b, ink->letters);
	buffer_text(b, "</g>\n</svg>\n");
	return (struct output){ .buffer = b, .missing = missing };
}
