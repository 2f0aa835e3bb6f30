#include "write/ink_pdf.h"

#include <assert.h>
#include <zlib.h>

/* A quarter of the time of the usual 6, and files are small anyway. */
#define PACKING 1

struct cut {
	struct cut *next;
	enum face_name face;
	double height, angle;
	cairo_scaled_font_t *font;
};

static struct ink_pdf *own(struct ink *ink)
{
	return (struct ink_pdf *)ink;
}

static void add_number(struct buffer *b, double v, char after)
{
	buffer_thousandths(b, lround(v * 1000));
	buffer_byte(b, after);
}

static void add_point(struct buffer *b, struct vec p, char after)
{
	add_number(b, p.x, ' ');
	add_number(b, p.y, after);
}

static void move(struct ink *ink, struct vec to)
{
	add_point(own(ink)->path, to, ' ');
	buffer_text(own(ink)->path, "m\n");
}

static void line(struct ink *ink, struct vec to)
{
	add_point(own(ink)->path, to, ' ');
	buffer_text(own(ink)->path, "l\n");
}

static void close_path(struct ink *ink)
{
	buffer_text(own(ink)->path, "h\n");
}

static struct vec arc_point(struct arc a, double angle, double radius)
{
	return vec(a.centre.x + radius * cos(angle), a.centre.y + radius * sin(angle));
}

/* PDF has no arcs.  An eighth of a turn as a cubic curve is true to 4 parts in a
 * million of the radius.  The handles stand square to the radius:
 *
 *     |handle| = 4/3 tan(turn/4) radius     (the usual construction; from memory)
 */
static void arc_piece(struct buffer *path, struct arc a, double from, double to)
{
	double handle = 4.0 / 3 * tan((to - from) / 4) * a.radius;
	struct vec start = arc_point(a, from, a.radius), end = arc_point(a, to, a.radius);

	add_point(path, vec_add(start, vec(-sin(from) * handle, cos(from) * handle)), ' ');
	add_point(path, vec_add(end, vec(sin(to) * handle, -cos(to) * handle)), ' ');
	add_point(path, end, ' ');
	buffer_text(path, "c\n");
}

static void arc(struct ink *ink, struct arc a)
{
	int pieces = (int)ceil((a.to - a.from) / (PI / 4) - NEAR_ENOUGH);

	move(ink, arc_point(a, a.from, a.radius));
	for (int i = 0; i < pieces; i++)
		arc_piece(own(ink)->path, a, a.from + (a.to - a.from) * i / pieces,
			a.from + (a.to - a.from) * (i + 1) / pieces);
}

/* The path comes after what tells how to draw it. */
static void end_path(struct ink_pdf *ink, const char *operator)
{
	buffer_add(ink->marks, ink->path->bytes, ink->path->size);
	buffer_text(ink->marks, operator);
	ink->path->size = 0;
}

/* Lines and dashes end round, so that edges drawn one by one still close their corners. */
static void stroke(struct ink *base, struct stroke how)
{
	struct ink_pdf *ink = own(base);

	add_number(ink->marks, how.width, ' ');
	buffer_text(ink->marks, "w [");
	for (int i = 0; i < how.dash_count; i++)
		add_number(ink->marks, how.dashes[i], ' ');
	buffer_text(ink->marks, "] 0 d\n");
	end_path(ink, "S\n");
}

static void fill(struct ink *base, enum shade shade)
{
	struct ink_pdf *ink = own(base);

	if (!ink->path->size)
		return;
	add_number(ink->marks, shade_grey(shade), ' ');
	buffer_text(ink->marks, "g\n");
	end_path(ink, "f\n");
}

static double rounded(double v)
{
	return fabs(v) < 1e-12 ? 0 : v;
}

/* Neither hinted nor rounded: letters come out as wide as they were measured. */
static cairo_scaled_font_t *cut_font(const struct faces *faces, struct run r)
{
	double size = r.height * POINTS_PER_MM * faces_em(faces, r.face);
	double across = rounded(size * cos(r.angle)), up = rounded(size * sin(r.angle));
	cairo_font_options_t *options = cairo_font_options_create();
	cairo_matrix_t em, page;

	cairo_matrix_init(&em, across, -up, up, across, 0, 0);
	cairo_matrix_init_identity(&page);
	cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
	cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
	cairo_scaled_font_t *font =
		cairo_scaled_font_create(faces_cairo(faces, r.face), &em, &page, options);
	cairo_font_options_destroy(options);
	return font;
}

/* Making one anew for every text would cost more than the text. */
static cairo_scaled_font_t *cut_of(struct ink_pdf *ink, struct run r)
{
	for (const struct cut *c = ink->cuts; c; c = c->next)
		if (c->face == r.face && c->height == r.height && c->angle == r.angle)
			return c->font;
	struct cut *c = NEW(ink->arena, struct cut);
	*c = (struct cut){ ink->cuts, r.face, r.height, r.angle, cut_font(ink->faces, r) };
	ink->cuts = c;
	return c->font;
}

/* Cairo takes longest over the number of times it is asked, so letters of one
 * cut that follow each other are shown in one go.  What they say it finds in the
 * font, so that the sheet can be searched. */
static void show_letters(struct ink_pdf *ink)
{
	struct shown *s = &ink->shown;

	if (!s->n)
		return;
	cairo_set_scaled_font(ink->cr, s->font);
	cairo_show_glyphs(ink->cr, (const cairo_glyph_t *)s->glyphs->bytes, s->n);
	s->glyphs->size = 0;
	s->n = 0;
}

/* Cairo rounds to 1/256 of a unit and measures letters in 1/64: hence points, y down. */
static void letters(struct ink *base, struct run r)
{
	struct ink_pdf *ink = own(base);
	struct shown *s = &ink->shown;
	double dx = cos(r.angle), dy = sin(r.angle);
	cairo_scaled_font_t *font = cut_of(ink, r);

	if (font != s->font)
		show_letters(ink);
	s->font = font;
	for (const struct glyph *g = r.glyphs; g < r.glyphs + r.n; g++) {
		double x = r.at.x + g->along * dx, y = ink->height - r.at.y - g->along * dy;
		cairo_glyph_t glyph = { g->id, x * POINTS_PER_MM, y * POINTS_PER_MM };
		buffer_add(s->glyphs, &glyph, sizeof(glyph));
	}
	s->n += r.n;
}

struct ink_pdf *ink_pdf_new(struct arena *a, cairo_t *cr, const struct faces *faces)
{
	static const struct ink_kind kind = { move, line, arc, close_path, stroke, fill, letters };
	struct ink_pdf *ink = NEW(a, struct ink_pdf);

	*ink = (struct ink_pdf){ .base = { &kind },
		.arena = a,
		.faces = faces,
		.cr = cr,
		.path = buffer_new(a),
		.marks = buffer_new(a),
		.shown = { .glyphs = buffer_new(a) } };
	cairo_set_source_rgb(cr, 0, 0, 0);
	return ink;
}

/* In millimetres from here on, and marked as no part of the text for those who
 * have it read aloud. */
void ink_pdf_begin_page(struct ink_pdf *ink, double height)
{
	ink->height = height;
	ink->marks->size = 0;
	buffer_text(ink->marks, "/Artifact BMC q 2.83464567 0 0 2.83464567 0 0 cm\n0 G 1 J\n");
}

struct buffer *ink_pdf_end_page(struct ink_pdf *ink)
{
	struct buffer *packed = buffer_new(ink->arena);

	show_letters(ink);
	buffer_text(ink->marks, "Q EMC\n");
	uLongf size = compressBound(ink->marks->size);
	buffer_reserve(packed, size);
	int status = compress2((Bytef *)packed->bytes, &size, (const Bytef *)ink->marks->bytes,
		ink->marks->size, PACKING);
	assert(status == Z_OK);
	packed->size = size;
	return packed;
}

void ink_pdf_free(struct ink_pdf *ink)
{
	for (struct cut *c = ink->cuts; c; c = c->next)
		cairo_scaled_font_destroy(c->font);
}
