#include "write/svg.h"

#include <cairo-svg.h>
#include <string.h>

#include "write/paint.h"

static void add_escaped(struct buffer *b, const char *text)
{
	for (; *text; text++) {
		switch (*text) {
		case '<': buffer_text(b, "&lt;"); break;
		case '>': buffer_text(b, "&gt;"); break;
		case '&': buffer_text(b, "&amp;"); break;
		default: buffer_add(b, text, 1);
		}
	}
}

static void add_head(struct buffer *b, const struct drawing *g, const struct imprint *imprint)
{
	buffer_text(b, "\n<title>");
	add_escaped(b, arena_printf(b->arena, "%s %s", g->id, g->title));
	buffer_text(b, "</title>\n<desc>");
	add_escaped(b, imprint->title);
	for (const struct mark *m = g->first; m; m = m->next) {
		if (m->kind != MARK_TEXT)
			continue;
		buffer_text(b, "\n");
		add_escaped(b, m->text.text);
	}
	buffer_text(b, "</desc>");
}

/*
 * Cairo writes        <svg ...>  ...  <g id="surface7">
 * and it shall be     <svg role="img" ...><title>...<desc>...  <g id="sheet">
 *
 * where 7 counts all surfaces of the process, so that the same sheet would
 * come out differently in another set.
 */
static struct buffer *mend(struct buffer *svg, const struct drawing *g,
	const struct imprint *imprint)
{
	static const char group[] = "<g id=\"surface";
	struct buffer *b = buffer_new(svg->arena);
	const char *root = strstr(svg->bytes, "<svg ") + strlen("<svg");
	const char *inside = strchr(root, '>') + 1;
	const char *surface = strstr(inside, group);
	const char *rest = strchr(surface + strlen(group), '"');

	buffer_add(b, svg->bytes, (size_t)(root - svg->bytes));
	buffer_text(b, " role=\"img\"");
	buffer_add(b, root, (size_t)(inside - root));
	add_head(b, g, imprint);
	buffer_add(b, inside, (size_t)(surface - inside));
	buffer_text(b, "<g id=\"sheet");
	buffer_add(b, rest, svg->size - (size_t)(rest - svg->bytes));
	return b;
}

struct output svg_make(struct arena *a, const struct drawing *g, const struct imprint *imprint,
	const struct faces *faces)
{
	struct output out = { .buffer = buffer_new(a) };
	cairo_surface_t *surface = cairo_svg_surface_create_for_stream(output_stream, out.buffer,
		g->width * POINTS_PER_MM, g->height * POINTS_PER_MM);

	cairo_svg_surface_set_document_unit(surface, CAIRO_SVG_UNIT_PT);
	cairo_t *cr = cairo_create(surface);
	out.missing = paint_drawing((struct canvas){ cr, g, faces, a });
	out.problem = output_finish(cr, surface);
	if (!out.problem)
		out.buffer = mend(out.buffer, g, imprint);
	return out;
}
