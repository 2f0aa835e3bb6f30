#include "sheets/stringer_shape.h"

#include "sheets/template_bores.h"
#include "sheets/template_stringer.h"
#include "sheets/words.h"

#define OFF_MIDDLE 0.1 /* less is within the width of a scribed line */

bool stringer_is_mirrored(const struct stringer *s)
{
	switch (s->kind) {
	case STRINGER_SAWTOOTH: return false;
	case STRINGER_MITRED: return s->hand == STRINGER_LEFT_HAND;
	case STRINGER_HOUSED: return s->hand == STRINGER_RIGHT_HAND;
	}
	return false;
}

const char *stringer_kind_words(enum stringer_kind kind)
{
	switch (kind) {
	case STRINGER_SAWTOOTH: return "sawtooth carriage";
	case STRINGER_MITRED: return "mitred open stringer";
	case STRINGER_HOUSED: return "housed closed stringer";
	}
	return "";
}

const char *stringer_hand_words(enum stringer_hand hand)
{
	switch (hand) {
	case STRINGER_EITHER_HAND: return "";
	case STRINGER_RIGHT_HAND: return "right hand going up";
	case STRINGER_LEFT_HAND: return "left hand going up";
	}
	return "";
}

/* Laid over, a hole in an edge would come off its mate.  Of what is laid out on the bench only. */
static bool is_alike_from_both_faces(struct arena *a, const struct part *p)
{
	struct unit_bores b = bores_laid_out(a, p);

	for (int i = 0; i < b.n; i++)
		if (fabs(b.bore[i].at.origin.z - p->size.thickness / 2) > OFF_MIDDLE)
			return false;
	return true;
}

const char *stringer_face_words(struct arena *a, const struct part *p)
{
	switch (p->stringer->kind) {
	case STRINGER_SAWTOOTH:
		return is_alike_from_both_faces(a, p)
			? "Cuts are square: either face up"
			: "RIGHT-HAND FACE UP, going up: holes are off the middle";
	case STRINGER_MITRED: return "OUTER FACE UP";
	case STRINGER_HOUSED: return "INNER FACE UP: the face with the housings";
	}
	return "";
}

const char *stringer_plank_words(struct arena *a, const struct stair *s, const struct part *p)
{
	const struct stringer *w = p->stringer;
	const char *length = w->plank_length > 0
		? length_words(a, s, w->plank_length)
		: arena_printf(a, "over %s, no stock so long", length_words(a, s, w->cut_length));

	return arena_printf(a, "%s x %s", section_words(a, s, p->size.thickness, w->plank_width),
		length);
}

struct vec shape_point(const struct stringer_shape *s, struct vec plank)
{
	return s->mirrored ? vec(s->length - plank.x, plank.y) : plank;
}

static struct chain laid(struct arena *a, const struct stringer_shape *s, struct chain c)
{
	struct vec *points = NEW_N(a, struct vec, c.n);

	for (int i = 0; i < c.n; i++)
		points[i] = shape_point(s, c.points[i]);
	c.points = points;
	return c;
}

static struct chain *groove_list(struct arena *a, const struct stringer_shape *s,
	const struct part *p)
{
	struct chain *first = NULL, **tail = &first;

	for (const struct feature *f = p->features; f; f = f->next) {
		if (f->kind != FEATURE_GROOVE)
			continue;
		for (const struct chain *c = groove_lines(a, p, f); c; c = c->next) {
			*tail = NEW(a, struct chain);
			**tail = laid(a, s, *c);
			(*tail)->next = NULL;
			tail = &(*tail)->next;
		}
	}
	return first;
}

struct stringer_shape stringer_shape(struct arena *a, const struct part *p)
{
	struct stringer_shape s = { .mirrored = stringer_is_mirrored(p->stringer) };
	struct chain outline = outline_chain(a, p->outline);

	for (int i = 0; i < outline.n; i++)
		s.length = fmax(s.length, outline.points[i].x);
	s.outline = laid(a, &s, outline);
	if (p->stringer->far_face.n)
		s.far_face = laid(a, &s, outline_chain(a, p->stringer->far_face));
	s.grooves = groove_list(a, &s, p);
	return s;
}
