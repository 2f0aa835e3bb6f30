#include "sheets/stringer_bores.h"

#include <string.h>

#include "base/text.h"
#include "draw/bounds.h"
#include "sheets/joint_words.h"
#include "sheets/words.h"

#define LETTERS 26

static bool are_of_one_kind(const struct unit_bore *one, const struct unit_bore *other)
{
	const struct bore_size *a = &one->bore->size, *b = &other->bore->size;

	return a->kind == b->kind && near_enough(a->length, b->length) &&
		near_enough(a->width, b->width) && near_enough(a->depth, b->depth) &&
		near_enough(one->at.origin.y, other->at.origin.y) &&
		near_enough(one->at.origin.z, other->at.origin.z) &&
		vec3_near(one->at.w, other->at.w) &&
		strcmp(bore_purpose(one->bore), bore_purpose(other->bore)) == 0;
}

struct stringer_bores stringer_bores(struct arena *a, const struct part *p)
{
	struct unit_bores all = bores_laid_out(a, p);
	int *kind = NEW_N(a, int, all.n + 1), kinds = 0;

	for (int i = 0; i < all.n; i++) {
		int like = 0;
		while (like < i && !are_of_one_kind(&all.bore[like], &all.bore[i]))
			like++;
		kind[i] = like < i ? kind[like] : kinds++;
	}
	return (struct stringer_bores){ all, kind, kinds };
}

const char *bore_letter(struct arena *a, int kind)
{
	int round = kind / LETTERS;

	return round == 0 ? arena_printf(a, "%c", 'a' + kind)
			  : arena_printf(a, "%c%d", 'a' + kind % LETTERS, round + 1);
}

/* Is its mouth in the face that lies up? */
static bool is_in_upper_face(const struct stringer_subject *t, const struct unit_bore *b)
{
	return b->side == (t->shape.mirrored ? BORE_FROM_BELOW : BORE_FROM_ABOVE);
}

void stringer_draw_bores(struct sheet *s, const struct stringer_subject *t,
	const struct stringer_bores *b, double scale)
{
	struct arena *a = s->drawing->arena;

	for (int i = 0; i < b->bores.n; i++) {
		const struct unit_bore *bore = &b->bores.bore[i];
		struct chain c = bore_lines(a, bore);
		enum pen pen = is_in_upper_face(t, bore) ? PEN_OUTLINE : PEN_HIDDEN;
		struct vec *paper = NEW_N(a, struct vec, c.n);
		for (int k = 0; k < c.n; k++)
			paper[k] = vec_scale(shape_point(&t->shape, c.points[k]), scale);
		if (c.closed)
			draw_polygon(s->drawing, pen, paper, c.n);
		else
			draw_polyline(s->drawing, pen, paper, c.n);
	}
}

static const char *mouth_words(struct arena *a, const struct stair *s, struct bore_size z)
{
	const char *width = bit_words(a, s, z.width);

	switch (z.kind) {
	case BORE_HOLE: return arena_printf(a, "Ø %s", width);
	case BORE_SLOT:
	case BORE_MORTISE: break;
	}
	return arena_printf(a, "%s x %s", inches_words(a, s, z.length), width);
}

const char *bore_along_words(struct arena *a, const struct stair *s, const struct unit_bore *b)
{
	return bore_place_words(a, s, b->bore, b->at.origin.x);
}

/* Of one kind, in one cell: so that a table of many breaks where a sheet ends. */
#define MOST_ALONG 12

/* Positions along the plank of those of a kind, from the one that is `first` among them. */
static const char *along_words(struct arena *a, const struct stair *s,
	const struct stringer_bores *b, int kind, int first)
{
	struct text t = { .arena = a };

	for (int i = 0, n = 0; i < b->bores.n; i++) {
		if (b->kind[i] != kind)
			continue;
		if (n >= first && n < first + MOST_ALONG)
			text_join(&t, "; ", bore_along_words(a, s, &b->bores.bore[i]));
		n++;
	}
	return text_chars(&t);
}

static int count_of(const struct stringer_bores *b, int kind)
{
	int n = 0;

	for (int i = 0; i < b->bores.n; i++)
		n += b->kind[i] == kind;
	return n;
}

static const struct unit_bore *first_of(const struct stringer_bores *b, int kind)
{
	for (int i = 0; i < b->bores.n; i++)
		if (b->kind[i] == kind)
			return &b->bores.bore[i];
	return NULL;
}

/* From the face that lies up on the bench. */
static double under_the_face(const struct stringer_subject *t, const struct unit_bore *b)
{
	double z = b->at.origin.z;

	return t->shape.mirrored ? z : t->part->size.thickness - z;
}

enum { COLUMNS = 7 };

static void bore_row(struct arena *a, const struct stringer_subject *t,
	const struct stringer_bores *b, int kind, const char **row)
{
	const struct stair *s = t->context->stair;
	const struct unit_bore *bore = first_of(b, kind);

	row[0] = bore_letter(a, kind);
	row[1] = bore_purpose(bore->bore);
	row[2] = mouth_words(a, s, bore->bore->size);
	row[3] = inches_words(a, s, bore->bore->size.depth);
	if (bore->plug) {
		const struct bore_size *z = &bore->plug->size;
		row[1] = arena_printf(a, "%s: Ø %s, %s deep", row[1], bit_words(a, s, z->width),
			inches_words(a, s, z->depth));
	}
	row[4] = along_words(a, s, b, kind, 0);
	row[5] = bore_place_words(a, s, bore->bore, bore->at.origin.y);
	row[6] = bore_place_words(a, s, bore->bore, under_the_face(t, bore));
}

static void goes_on_row(struct arena *a, const struct stringer_subject *t,
	const struct stringer_bores *b, int kind, int first, const char **row)
{
	for (int i = 0; i < COLUMNS; i++)
		row[i] = "";
	row[0] = bore_letter(a, kind);
	row[4] = along_words(a, t->context->stair, b, kind, first);
}

struct table stringer_bore_table(struct arena *a, const struct stringer_subject *t)
{
	static const struct table_column columns[COLUMNS] = { { "", ALIGN_LEFT, 0 },
		{ "For", ALIGN_LEFT, 34 }, { "Size", ALIGN_LEFT, 0 }, { "Deep", ALIGN_RIGHT, 0 },
		{ "Along", ALIGN_LEFT, 30 }, { "across", ALIGN_RIGHT, 0 },
		{ "from face up", ALIGN_RIGHT, 0 } };
	struct stringer_bores b = stringer_bores(a, t->part);
	int rows = 0;
	const char **cells = NEW_N(a, const char *, COLUMNS *(b.kinds + b.bores.n) + 1);

	for (int i = 0; i < b.kinds; i++) {
		bore_row(a, t, &b, i, cells + COLUMNS * rows++);
		for (int first = MOST_ALONG; first < count_of(&b, i); first += MOST_ALONG)
			goes_on_row(a, t, &b, i, first, cells + COLUMNS * rows++);
	}
	return (struct table){ .title = arena_printf(a, "%s: holes and mortises", t->part->mark),
		.columns = columns,
		.column_count = COLUMNS,
		.cells = cells,
		.row_count = rows };
}
