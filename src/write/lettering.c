#include "write/lettering.h"

#include <math.h>
#include <string.h>

#include "write/faces.h"
#include "write/strokes.h"

/* A face at one size and angle.  Making one anew for every text would cost more than the text. */
struct cut {
	struct cut *next;
	enum face_name face;
	double height, angle;
	cairo_scaled_font_t *font;
};

/* Letters that follow each other in one face: what Cairo draws in one go.  It
 * gets the text as well, so that the sheet can be searched. */
struct run {
	enum face_name face;
	cairo_glyph_t *glyphs;
	cairo_text_cluster_t *clusters;
	int n;
	char *text;
	int bytes;
};

static double rounded(double v)
{
	return fabs(v) < 1e-12 ? 0 : v;
}

static cairo_scaled_font_t *cut_new(const struct faces *faces, const struct cut *cut)
{
	double size = cut->height * POINTS_PER_MM * faces_em(faces, cut->face);
	double across = rounded(size * cos(cut->angle)), up = rounded(size * sin(cut->angle));
	cairo_matrix_t em, page;

	cairo_matrix_init(&em, across, -up, up, across, 0, 0);
	cairo_matrix_init_identity(&page);
	cairo_font_options_t *options = cairo_font_options_create();
	cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
	cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
	cairo_scaled_font_t *font =
		cairo_scaled_font_create(faces_cairo(faces, cut->face), &em, &page, options);
	cairo_font_options_destroy(options);
	return font;
}

static cairo_scaled_font_t *cut_of(struct canvas c, struct cut **cuts, enum face_name face,
	const struct mark *m)
{
	for (const struct cut *k = *cuts; k; k = k->next)
		if (k->face == face && k->height == m->text.height && k->angle == m->text.angle)
			return k->font;
	struct cut *k = NEW(c.arena, struct cut);
	*k = (struct cut){ .next = *cuts,
		.face = face,
		.height = m->text.height,
		.angle = m->text.angle };
	k->font = cut_new(c.faces, k);
	*cuts = k;
	return k->font;
}

static void run_show(struct canvas c, struct cut **cuts, struct run *r, const struct mark *m)
{
	if (!r->n)
		return;
	cairo_set_scaled_font(c.cr, cut_of(c, cuts, r->face, m));
	cairo_show_text_glyphs(c.cr, r->text, r->bytes, r->glyphs, r->n, r->clusters, r->n, 0);
	r->n = 0;
	r->bytes = 0;
}

static void run_add(struct run *r, struct letter l, struct vec at, const char *text, int bytes)
{
	r->face = l.face;
	r->glyphs[r->n] = (cairo_glyph_t){ l.glyph, at.x, at.y };
	r->clusters[r->n] = (cairo_text_cluster_t){ bytes, 1 };
	memcpy(r->text + r->bytes, text, (size_t)bytes);
	r->bytes += bytes;
	r->n++;
}

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

static struct run run_new(struct arena *a, size_t longest)
{
	return (struct run){
		.glyphs = NEW_N(a, cairo_glyph_t, longest),
		.clusters = NEW_N(a, cairo_text_cluster_t, longest),
		.text = NEW_N(a, char, longest),
	};
}

/* The base line is walked in millimetres and every letter set down on its own,
 * so that no rounding adds up along a text. */
static int text_paint(struct canvas c, struct cut **cuts, struct run *r, const struct mark *m)
{
	const struct vec along = vec(cos(m->text.angle), sin(m->text.angle));
	double walked = start(c, m);
	int missing = 0;

	for (const char *s = m->text.text; *s;) {
		struct code code = code_next(s);
		struct letter l = faces_letter(c.faces, m->text.style, code.point);
		struct vec at = vec_add(m->text.at, vec_scale(along, walked));

		if (l.face != r->face)
			run_show(c, cuts, r, m);
		run_add(r, l, canvas_point(c, at), s, code.bytes);
		walked += l.advance * m->text.height;
		missing += l.missing;
		s += code.bytes;
	}
	run_show(c, cuts, r, m);
	return missing;
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

int lettering_paint(struct canvas c)
{
	struct run run = run_new(c.arena, longest_text(c.drawing) + 1);
	struct cut *cuts = NULL;
	int missing = 0;

	cairo_set_source_rgb(c.cr, 0, 0, 0);
	for (const struct mark *m = c.drawing->first; m; m = m->next)
		if (m->kind == MARK_TEXT)
			missing += text_paint(c, &cuts, &run, m);
	for (struct cut *k = cuts; k; k = k->next)
		cairo_scaled_font_destroy(k->font);
	return missing;
}
