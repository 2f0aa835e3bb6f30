/*
 * The fingerprint of a drawing: two drawings with the same one show the same.
 */
#include "base/fingerprint.h"
#include "pitchboard/drawing.h"

static uint64_t add_text(uint64_t so_far, const char *text)
{
	for (; *text; text++)
		so_far = fingerprint_add(so_far, (unsigned char)*text);
	return fingerprint_add(so_far, 0);
}

/* To a thousandth of a millimetre, as it is written out. */
static uint64_t add_length(uint64_t so_far, double mm)
{
	return fingerprint_add(so_far, (uint32_t)(int32_t)lround(mm * 1000));
}

static uint64_t add_points(uint64_t so_far, const struct vec *p, int n)
{
	for (int i = 0; i < n; i++)
		so_far = add_length(add_length(so_far, p[i].x), p[i].y);
	return fingerprint_add(so_far, (uint32_t)n);
}

static uint64_t add_mark(uint64_t f, const struct mark *k)
{
	f = fingerprint_add(f, (uint32_t)k->kind);
	switch (k->kind) {
	case MARK_LINE:
		f = fingerprint_add(f, (uint32_t)(2 * (int)k->line.pen + (k->line.closed ? 1 : 0)));
		return add_points(f, k->line.points, k->line.n);
	case MARK_ARC:
		f = add_points(fingerprint_add(f, (uint32_t)k->arc.pen), &k->arc.centre, 1);
		f = add_length(add_length(f, k->arc.radius), k->arc.from);
		return add_length(f, k->arc.to);
	case MARK_FILL:
		return add_points(fingerprint_add(f, (uint32_t)k->fill.shade), k->fill.points,
			k->fill.n);
	case MARK_TEXT:
		f = add_length(add_points(f, &k->text.at, 1), k->text.height);
		f = fingerprint_add(f, (uint32_t)(8 * (int)k->text.style + (int)k->text.align));
		return add_text(add_length(f, k->text.angle), k->text.text);
	}
	return f;
}

static uint64_t add_drawings(uint64_t f, const struct drawing *list)
{
	for (const struct drawing *g = list; g; g = g->next) {
		f = add_text(f, g->id ? g->id : "");
		f = add_length(add_length(f, g->width), g->height);
		for (const struct mark *k = g->first; k; k = k->next)
			f = add_mark(f, k);
	}
	return f;
}

const char *drawings_fingerprint(struct arena *a, const struct drawing *list,
	const struct drawing *over)
{
	uint64_t f = add_drawings(add_drawings(FINGERPRINT_OF_NOTHING, list), over);

	return arena_printf(a, "%012llx", (unsigned long long)(f & 0xffffffffffffu));
}
