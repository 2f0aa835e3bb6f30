#include "write/outlines.h"

struct outlines *outlines_new(struct arena *a, const struct faces *faces)
{
	struct outlines *o = NEW(a, struct outlines);

	*o = (struct outlines){ .arena = a, .faces = faces };
	for (enum face_name face = 0; face < FACE_COUNT; face++)
		o->known[face] = NEW_N(a, const char *, faces_glyph_count(faces, face));
	return o;
}

const char *outline_of(struct outlines *o, enum face_name face, unsigned glyph)
{
	const char **known = &o->known[face][glyph];

	if (!*known) {
		struct text *path = text_new(o->arena);
		faces_outline(o->faces, face, glyph, path);
		*known = text_chars(path);
	}
	return *known;
}
