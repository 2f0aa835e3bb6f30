#include "write/ink_pdf.h"

/* Arcs keep this close to their true shape, in points: 0.004 mm. */
#define ARC_TOLERANCE 0.01

/* Before it writes a stroke Cairo works out the box that its ink covers, as exactly as the
 * tolerance asks, and that took a third of its time; the box shows nowhere in the file.  To be kept
 * below the shortest pattern of dashes (3 points), or Cairo takes a broken line for a whole one. */
#define STROKE_TOLERANCE 1.0

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

/* Cairo rounds to 1/256 of a unit: hence points, and y down as it counts. */
static struct vec on_page(const struct ink_pdf *ink, struct vec p)
{
	return vec(p.x * POINTS_PER_MM, (ink->height - p.y) * POINTS_PER_MM);
}

static void move(struct ink *base, struct vec to)
{
	struct vec p = on_page(own(base), to);

	cairo_move_to(own(base)->cr, p.x, p.y);
}

static void line(struct ink *base, struct vec to)
{
	struct vec p = on_page(own(base), to);

	cairo_line_to(own(base)->cr, p.x, p.y);
}

static void close_path(struct ink *base)
{
	cairo_close_path(own(base)->cr);
}

/* Counter-clockwise is backwards where y counts down. */
static void arc(struct ink *base, struct arc a)
{
	struct vec centre = on_page(own(base), a.centre);

	cairo_set_tolerance(own(base)->cr, ARC_TOLERANCE);
	cairo_new_sub_path(own(base)->cr);
	cairo_arc_negative(own(base)->cr, centre.x, centre.y, a.radius * POINTS_PER_MM, -a.from,
		-a.to);
}

static void stroke(struct ink *base, struct stroke how)
{
	cairo_t *cr = own(base)->cr;
	double dashes[MOST_DASHES];

	for (int i = 0; i < how.dash_count; i++)
		dashes[i] = how.dashes[i] * POINTS_PER_MM;
	cairo_set_source_rgb(cr, 0, 0, 0);
	cairo_set_line_width(cr, how.width * POINTS_PER_MM);
	cairo_set_dash(cr, dashes, how.dash_count, 0);
	cairo_set_tolerance(cr, STROKE_TOLERANCE);
	cairo_stroke(cr);
}

static void fill(struct ink *base, enum shade shade)
{
	double grey = shade_grey(shade);

	cairo_set_source_rgb(own(base)->cr, grey, grey, grey);
	cairo_fill(own(base)->cr);
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
	cairo_set_source_rgb(ink->cr, 0, 0, 0);
	cairo_set_scaled_font(ink->cr, s->font);
	cairo_show_glyphs(ink->cr, s->glyphs, s->n);
	s->n = 0;
}

static void make_room(struct arena *a, struct shown *s, int more)
{
	if (s->n + more <= s->room)
		return;
	s->room = 2 * (s->n + more);
	cairo_glyph_t *larger = NEW_N(a, cairo_glyph_t, s->room);
	for (int i = 0; i < s->n; i++)
		larger[i] = s->glyphs[i];
	s->glyphs = larger;
}

static void letters(struct ink *base, struct run r)
{
	struct ink_pdf *ink = own(base);
	struct shown *s = &ink->shown;
	double dx = cos(r.angle), dy = sin(r.angle);
	cairo_scaled_font_t *font = cut_of(ink, r);

	if (font != s->font)
		show_letters(ink);
	s->font = font;
	make_room(ink->arena, s, r.n);
	for (const struct glyph *g = r.glyphs; g < r.glyphs + r.n; g++) {
		struct vec p = on_page(ink, vec_add(r.at, vec(g->along * dx, g->along * dy)));
		s->glyphs[s->n++] = (cairo_glyph_t){ g->id, p.x, p.y };
	}
}

struct ink_pdf *ink_pdf_new(struct arena *a, cairo_t *cr, const struct faces *faces)
{
	static const struct ink_kind kind = { move, line, arc, close_path, stroke, fill, letters };
	struct ink_pdf *ink = NEW(a, struct ink_pdf);

	*ink = (struct ink_pdf){ .base = { &kind }, .arena = a, .faces = faces, .cr = cr };
	/* Edges drawn one by one still close their corners, and sharp ones get no spike. */
	cairo_set_line_cap(cr, CAIRO_LINE_CAP_ROUND);
	cairo_set_line_join(cr, CAIRO_LINE_JOIN_ROUND);
	return ink;
}

void ink_pdf_begin_page(struct ink_pdf *ink, double height)
{
	ink->height = height;
}

void ink_pdf_end_page(struct ink_pdf *ink)
{
	show_letters(ink);
	ink->shown.font = NULL;
}

void ink_pdf_free(struct ink_pdf *ink)
{
	for (struct cut *c = ink->cuts; c; c = c->next)
		cairo_scaled_font_destroy(c->font);
}
