#include "write/ink_svg.h"

static struct ink_svg *own(struct ink *ink)
{
	return (struct ink_svg *)ink;
}

static long micrometres(double mm)
{
	return lround(mm * 1000);
}

static void add_number(struct text *b, const char *before, double v)
{
	text_put(b, before);
	text_put_thousandths(b, micrometres(v));
}

static void move(struct ink *base, struct vec to)
{
	struct ink_svg *ink = own(base);
	long x = micrometres(to.x), y = micrometres(ink->height - to.y);
	text_put_char(ink->path, 'M');
	text_put_thousandths(ink->path, x);
	text_put_char(ink->path, ' ');
	text_put_thousandths(ink->path, y);
	ink->x = x;
	ink->y = y;
}

static void step(struct text *path, long dx, long dy)
{
	if (dy == 0) {
		text_put_char(path, 'h');
		text_put_thousandths(path, dx);
	} else if (dx == 0) {
		text_put_char(path, 'v');
		text_put_thousandths(path, dy);
	} else {
		text_put_char(path, 'l');
		text_put_thousandths(path, dx);
		text_put_char(path, ' ');
		text_put_thousandths(path, dy);
	}
}

static void line(struct ink *base, struct vec to)
{
	struct ink_svg *ink = own(base);
	long x = micrometres(to.x), y = micrometres(ink->height - to.y);

	step(ink->path, x - ink->x, y - ink->y);
	ink->x = x;
	ink->y = y;
}

static void close_path(struct ink *base)
{
	text_put_char(own(base)->path, 'z');
}

static struct vec arc_point(struct arc a, double angle)
{
	return vec(a.centre.x + a.radius * cos(angle), a.centre.y + a.radius * sin(angle));
}

/* At most half a turn: SVG's arcs are given by their ends, and those of a circle are one point. */
static void arc_on(struct ink_svg *ink, struct arc a, double to)
{
	struct vec end = arc_point(a, to);

	add_number(ink->path, "A", a.radius);
	add_number(ink->path, " ", a.radius);
	add_number(ink->path, " 0 0 0 ", end.x);
	add_number(ink->path, " ", ink->height - end.y);
}

static void arc(struct ink *base, struct arc a)
{
	struct ink_svg *ink = own(base);

	move(base, arc_point(a, a.from));
	if (a.to - a.from > PI / 2)
		arc_on(ink, a, (a.from + a.to) / 2);
	arc_on(ink, a, a.to);
}

static void end_path(struct ink_svg *ink)
{
	text_put(ink->marks, "\" d=\"");
	text_put_bytes(ink->marks, ink->path->chars, ink->path->length);
	text_put(ink->marks, "\"/>\n");
	ink->path->length = 0;
}

static void stroke(struct ink *base, struct stroke how)
{
	struct ink_svg *ink = own(base);

	text_put(ink->marks, "<path class=\"");
	text_put(ink->marks, pen_name(how.pen));
	add_number(ink->marks, "\" stroke-width=\"", how.width);
	for (int i = 0; i < how.dash_count; i++)
		add_number(ink->marks, i ? " " : "\" stroke-dasharray=\"", how.dashes[i]);
	end_path(ink);
}

static void fill(struct ink *base, enum shade shade)
{
	static const char *const colours[] = {
		[SHADE_BLACK] = "#000",
		[SHADE_GREY] = "#999",
		[SHADE_MIDDLE] = "#bfbfbf",
		[SHADE_LIGHT] = "#e0e0e0",
		[SHADE_PALE] = "#f2f2f2",
		[SHADE_WHITE] = "#fff",
	};
	struct ink_svg *ink = own(base);

	if (!ink->path->length)
		return;
	text_put(ink->marks, "<path stroke=\"none\" fill=\"");
	text_put(ink->marks, colours[shade]);
	end_path(ink);
}

/* "a34" is glyph 34 of the first face. */
static void add_id(struct text *b, enum face_name face, unsigned glyph)
{
	text_put_char(b, (char)('a' + face));
	text_put_number(b, (long)glyph);
}

static void define(struct ink_svg *ink, enum face_name face, unsigned glyph)
{
	if (ink->defined[face][glyph])
		return;
	ink->defined[face][glyph] = 1;
	text_put(ink->glyphs, "<path id=\"");
	add_id(ink->glyphs, face, glyph);
	text_put(ink->glyphs, "\" d=\"");
	text_put(ink->glyphs, outline_of(ink->outlines, face, glyph));
	text_put(ink->glyphs, "\"/>\n");
}

/* A run is one group, scaled from the font's units; thousandths are too coarse
 * for the scale, which has seven places. */
static void letters(struct ink *base, struct run r)
{
	struct ink_svg *ink = own(base);
	double units = faces_units(ink->outlines->faces, r.face) / r.height;

	add_number(ink->letters, "<g transform=\"translate(", r.at.x);
	add_number(ink->letters, " ", ink->height - r.at.y);
	if (r.angle != 0)
		add_number(ink->letters, ")rotate(", -r.angle * 180 / PI);
	text_add(ink->letters, ")scale(%.7f)\">", 1 / units);
	for (int i = 0; i < r.n; i++) {
		define(ink, r.face, r.glyphs[i].id);
		text_put(ink->letters, "<use xlink:href=\"#");
		add_id(ink->letters, r.face, r.glyphs[i].id);
		text_put(ink->letters, "\" x=\"");
		text_put_number(ink->letters, lround(r.glyphs[i].along * units));
		text_put(ink->letters, "\"/>");
	}
	text_put(ink->letters, "</g>\n");
}

struct ink_svg *ink_svg_new(struct arena *a, double height, struct outlines *outlines)
{
	static const struct ink_kind kind = { move, line, arc, close_path, stroke, fill, letters };
	struct ink_svg *ink = NEW(a, struct ink_svg);

	*ink = (struct ink_svg){
		.base = { &kind },
		.outlines = outlines,
		.height = height,
		.glyphs = text_new(a),
		.marks = text_new(a),
		.letters = text_new(a),
		.path = text_new(a),
	};
	for (enum face_name face = 0; face < FACE_COUNT; face++)
		ink->defined[face] =
			NEW_N(a, unsigned char, faces_glyph_count(outlines->faces, face));
	return ink;
}
