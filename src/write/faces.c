/*
 * Three font files, pinned, loaded by FreeType and handed to Cairo.
 *
 * Fontconfig is never asked: it would pick another face on another machine,
 * and what was measured would not be what is printed.  For the same reason the
 * outlines are neither hinted nor rounded.
 */
#include "write/faces.h"

#include <cairo-ft.h>
#include <ft2build.h>
#include <stdbool.h>
#include FT_FREETYPE_H
#include FT_ADVANCES_H
#include FT_OUTLINE_H
#include <stdint.h>
#include <string.h>

#include "base/file.h"
#include "base/fingerprint.h"
#include "base/text.h"
#include "write/script.h"

/* Latin with its accents: nearly all that is ever lettered. */
#define COMMON_CODES 0x180
#define REPLACEMENT 0xFFFD

struct face {
	FT_Face ft;
	cairo_font_face_t *cairo;
	double cap; /* height of H over the em */
};

struct faces {
	struct face face[FACE_COUNT];
	struct letter common[2][COMMON_CODES]; /* LETTER_REGULAR, LETTER_BOLD */
};

/* Another file of the same name may have other widths, so the bytes themselves are pinned. */
struct pinned {
	const char *file;
	size_t size;
	uint64_t fingerprint;
};

static const struct pinned pinned_files[FACE_COUNT] = {
	[FACE_REGULAR] = { "B612-Regular.otf", 59632, 0x14ca0fc5536faebb },
	[FACE_BOLD] = { "B612-Bold.otf", 73760, 0x86e85f8774fb4f23 },
	[FACE_FALLBACK] = { "DejaVuSans.ttf", 759720, 0xe77344c82d76726d },
};

/* Word by word, which is quick. */
static uint64_t fingerprint(const struct file *f)
{
	uint64_t h = FINGERPRINT_OF_NOTHING;

	for (size_t i = 0; i + 4 <= f->size; i += 4) {
		const unsigned char *b = f->bytes + i;
		uint32_t word =
			(uint32_t)b[0] << 24 | (uint32_t)b[1] << 16 | (uint32_t)b[2] << 8 | b[3];
		h = fingerprint_add(h, word);
	}
	return h;
}

static const char *not_pinned(struct arena *a, const struct file *f, const struct pinned *want)
{
	if (f->size == want->size && fingerprint(f) == want->fingerprint)
		return NULL;
	return arena_printf(a,
		"%s: is not the %s that this program measures with; put back the file it came with",
		f->path, want->file);
}

/* Cairo keeps a face for as long as it likes, so it is Cairo that closes it; and
 * every face has a FreeType of its own, so that the last one need not be known. */
static void close_face(void *ft)
{
	FT_Library library = ((FT_Face)ft)->glyph->library;

	FT_Done_Face(ft);
	FT_Done_FreeType(library);
}

static double cap_height(FT_Face ft)
{
	FT_Load_Char(ft, 'H', FT_LOAD_NO_SCALE);
	return (double)ft->glyph->metrics.height / ft->units_per_EM;
}

static const char *hand_to_cairo(struct face *face)
{
	static const cairo_user_data_key_t closing;

	face->cap = cap_height(face->ft);
	face->cairo = cairo_ft_font_face_create_for_ft_face(face->ft, FT_LOAD_NO_HINTING);
	cairo_status_t status =
		cairo_font_face_set_user_data(face->cairo, &closing, face->ft, close_face);
	return status ? cairo_status_to_string(status) : NULL;
}

static const char *open_face(struct face *face, const struct file *f)
{
	FT_Library library;

	if (FT_Init_FreeType(&library) != 0)
		return "FreeType cannot be started";
	if (FT_New_Memory_Face(library, f->bytes, (FT_Long)f->size, 0, &face->ft) == 0)
		return hand_to_cairo(face);
	FT_Done_FreeType(library);
	return "FreeType cannot open this font";
}

static const char *load_face(struct arena *a, struct face *face, const char *dir,
	const struct pinned *want)
{
	struct file_result r = file_read(a, arena_printf(a, "%s/fonts/%s", dir, want->file));

	if (r.problem)
		return r.problem;
	const char *problem = not_pinned(a, r.file, want);
	if (problem)
		return problem;
	problem = open_face(face, r.file);
	return problem ? arena_printf(a, "%s: %s", r.file->path, problem) : NULL;
}

static struct letter look_up(const struct faces *f, enum face_name name, unsigned point)
{
	const struct face *face = &f->face[name];
	FT_Fixed advance = 0;

	unsigned glyph = FT_Get_Char_Index(face->ft, point);
	if (!glyph)
		return (struct letter){ .missing = 1 };
	FT_Get_Advance(face->ft, glyph, FT_LOAD_NO_SCALE, &advance);
	return (struct letter){
		.face = name,
		.glyph = glyph,
		.advance = (double)advance / face->ft->units_per_EM / face->cap,
	};
}

static struct letter find(const struct faces *f, enum letter_style style, unsigned point)
{
	struct letter l = look_up(f, style == LETTER_BOLD ? FACE_BOLD : FACE_REGULAR, point);

	if (l.missing)
		l = look_up(f, FACE_FALLBACK, point);
	if (!l.missing && !script_needs_shaping(point))
		return l;
	l = look_up(f, FACE_FALLBACK, REPLACEMENT);
	l.missing = 1;
	return l;
}

struct letter faces_letter(const struct faces *f, enum letter_style style, unsigned point)
{
	return point < COMMON_CODES ? f->common[style][point] : find(f, style, point);
}

static void find_common(struct faces *f)
{
	for (unsigned point = 0; point < COMMON_CODES; point++) {
		f->common[LETTER_REGULAR][point] = find(f, LETTER_REGULAR, point);
		f->common[LETTER_BOLD][point] = find(f, LETTER_BOLD, point);
	}
}

struct faces *faces_load(struct arena *a, const char *dir, const char **problem)
{
	struct faces *f = NEW(a, struct faces);

	*problem = NULL;
	for (int i = 0; i < FACE_COUNT && !*problem; i++)
		*problem = load_face(a, &f->face[i], dir, &pinned_files[i]);
	if (*problem) {
		faces_free(f);
		return NULL;
	}
	find_common(f);
	return f;
}

void faces_free(struct faces *f)
{
	for (int i = 0; f && i < FACE_COUNT; i++)
		cairo_font_face_destroy(f->face[i].cairo);
}

cairo_font_face_t *faces_cairo(const struct faces *f, enum face_name face)
{
	return f->face[face].cairo;
}

double faces_em(const struct faces *f, enum face_name face)
{
	return 1 / f->face[face].cap;
}

/* Spelt as short as it can be, and no half of a surrogate pair. */
static bool is_character(unsigned point, int bytes)
{
	static const unsigned least[] = { 0, 0, 0x80, 0x800, 0x10000 };

	return point >= least[bytes] && point < 0x110000 && (point & 0xFFFFF800) != 0xD800;
}

/* As the first byte tells; 0 when it cannot be a first one. */
static int code_bytes(unsigned char first)
{
	if (first < 0x80)
		return 1;
	if (first < 0xC0 || first >= 0xF8)
		return 0;
	return first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
}

struct code code_next(const char *text)
{
	static const struct code spoilt = { REPLACEMENT, .bytes = 1 };
	const unsigned char *s = (const unsigned char *)text;
	int bytes = code_bytes(s[0]);
	unsigned point = bytes > 1 ? s[0] & (0xFFu >> (bytes + 1)) : s[0];

	for (int i = 1; i < bytes; i++) {
		if ((s[i] & 0xC0) != 0x80)
			return spoilt;
		point = point << 6 | (s[i] & 0x3Fu);
	}
	return bytes && is_character(point, bytes) ? (struct code){ point, bytes } : spoilt;
}

/* Placing without overlaps measures every text many times over, nearly all of them plain ASCII. */
static double width(const void *faces, enum letter_style style, double height, const char *text,
	size_t bytes)
{
	const struct letter *common = ((const struct faces *)faces)->common[style];
	const char *end = text + bytes;
	double sum = 0;

	while (text < end) {
		struct code c = { (unsigned char)*text, .bytes = 1 };
		if (c.point > 0x7F)
			c = code_next(text);
		sum += c.point < COMMON_CODES ? common[c.point].advance
					      : faces_letter(faces, style, c.point).advance;
		text += c.bytes;
	}
	return sum * height;
}

struct measure faces_measure(const struct faces *f)
{
	return (struct measure){ .width = width, .faces = f };
}

static void miss(struct missing *m, const struct faces *f, const struct mark *mark)
{
	for (const char *s = mark->text.text; *s;) {
		struct code c = code_next(s);
		s += c.bytes;
		if (!faces_letter(f, mark->text.style, c.point).missing)
			continue;
		if (m->letters++ == 0)
			*m = (struct missing){ 1, c.point, mark->text.text };
	}
}

struct missing faces_missing(const struct faces *f, const struct drawing *drawings)
{
	struct missing m = { 0 };

	for (const struct drawing *g = drawings; g; g = g->next)
		for (const struct mark *mark = g->first; mark; mark = mark->next)
			if (mark->kind == MARK_TEXT)
				miss(&m, f, mark);
	return m;
}

double faces_units(const struct faces *f, enum face_name face)
{
	return f->face[face].ft->units_per_EM * f->face[face].cap;
}

unsigned faces_glyph_count(const struct faces *f, enum face_name face)
{
	return (unsigned)f->face[face].ft->num_glyphs;
}

static void add_point(struct text *b, char before, const FT_Vector *p)
{
	text_put_char(b, before);
	text_put_number(b, p->x);
	text_put_char(b, ' ');
	text_put_number(b, -p->y);
}

static int outline_move(const FT_Vector *to, void *path)
{
	add_point(path, 'M', to);
	return 0;
}

static int outline_line(const FT_Vector *to, void *path)
{
	add_point(path, 'L', to);
	return 0;
}

static int outline_conic(const FT_Vector *c, const FT_Vector *to, void *path)
{
	add_point(path, 'Q', c);
	add_point(path, ' ', to);
	return 0;
}

static int outline_cubic(const FT_Vector *c, const FT_Vector *d, const FT_Vector *to, void *path)
{
	add_point(path, 'C', c);
	add_point(path, ' ', d);
	add_point(path, ' ', to);
	return 0;
}

void faces_outline(const struct faces *f, enum face_name face, unsigned glyph, struct text *path)
{
	static const FT_Outline_Funcs funcs = { outline_move, outline_line, outline_conic,
		outline_cubic, 0, 0 };
	FT_Face ft = f->face[face].ft;

	/* Cairo leaves the turn of its last text in the face. */
	if (FT_Load_Glyph(ft, glyph, FT_LOAD_NO_SCALE | FT_LOAD_IGNORE_TRANSFORM) == 0)
		FT_Outline_Decompose(&ft->glyph->outline, &funcs, path);
}
