#include "sheets/template_bores.h"

#include "sheets/template_joined.h"

#define CROSS_PAST 4.5 /* of a cross, beyond the hole */
#define EDGE_LINE 6.0  /* of a hole in an edge, to either side of its mouth */

static enum bore_side side_of(struct frame at)
{
	if (at.w.z > 0.5)
		return BORE_FROM_ABOVE;
	return at.w.z < -0.5 ? BORE_FROM_BELOW : BORE_IN_EDGE;
}

/* Both halves of a joint between two pieces of the unit have their mouths in one place. */
static bool is_there(const struct unit_bore *list, int n, struct vec3 mouth)
{
	for (int i = 0; i < n; i++)
		if (vec3_length(vec3_sub(list[i].at.origin, mouth)) < 1)
			return true;
	return false;
}

struct unit_bores unit_bores(struct arena *a, const struct unit *u)
{
	struct unit_bore *list;
	int n = 0;

	for (int i = 0; i < u->piece_count; i++)
		for (const struct bore *b = u->pieces[i].part->bores; b; b = b->next)
			n++;
	list = NEW_N(a, struct unit_bore, n + 1);
	n = 0;
	for (int i = 0; i < u->piece_count; i++)
		for (const struct bore *b = u->pieces[i].part->bores; b; b = b->next) {
			struct frame at = frame_compose(u->pieces[i].at, b->at);
			if (side_of(at) != BORE_IN_EDGE || !is_there(list, n, at.origin))
				list[n++] = (struct unit_bore){ b, at, side_of(at), NULL };
		}
	return (struct unit_bores){ list, n };
}

/* A screw's hole in the piece behind is drilled through the piece in front of it. */
static bool is_laid_out(const struct bore *b)
{
	bool by_screw = b->fixing == FIXING_SCREW || b->fixing == FIXING_BRAD;

	return !(by_screw && b->is_mate);
}

/* The hole at the same place whose fixing is this; NULL: there is none. */
static const struct bore *bore_at(const struct part *p, struct vec3 mouth, enum fixing fixing)
{
	for (const struct bore *b = p->bores; b; b = b->next)
		if (b->fixing == fixing && vec3_near(b->at.origin, mouth))
			return b;
	return NULL;
}

struct unit_bores bores_laid_out(struct arena *a, const struct part *p)
{
	struct unit_bores all = unit_bores(a, unit_of_part(a, p));
	struct unit_bore *kept = NEW_N(a, struct unit_bore, all.n + 1);
	int n = 0;

	for (int i = 0; i < all.n; i++) {
		struct unit_bore b = all.bore[i];
		struct vec3 mouth = b.bore->at.origin;
		bool is_plug = b.bore->fixing == FIXING_PLUG;
		if (!is_laid_out(b.bore) || (is_plug && bore_at(p, mouth, FIXING_SCREW)))
			continue;
		if (b.bore->fixing == FIXING_SCREW)
			b.plug = bore_at(p, mouth, FIXING_PLUG);
		kept[n++] = b;
	}
	return (struct unit_bores){ kept, n };
}

int face_bore_count(struct unit_bores b)
{
	int n = 0;

	for (int i = 0; i < b.n; i++)
		n += b.bore[i].side != BORE_IN_EDGE;
	return n;
}

static struct vec on_plane(struct vec3 p)
{
	return vec(p.x, p.y);
}

/* Two half rounds, and what is straight between them. */
static struct outline shape(struct arena *a, const struct unit_bore *b, struct vec middle)
{
	struct bore_size size = b->bore->size;
	struct vec u = vec_unit(on_plane(b->at.u)), v = vec_left(u);
	double half = size.width / 2, straight = fmax(0, size.length / 2 - half);
	struct corner *c = NEW_N(a, struct corner, 4);
	int n = 0;

	for (int end = 1; end >= -1; end -= 2) {
		struct vec at = vec_add(middle, vec_scale(u, end * straight));
		c[n++] = (struct corner){ vec_sub(at, vec_scale(v, end * half)), 1 };
		if (straight > NEAR_ENOUGH)
			c[n++] = (struct corner){ vec_add(at, vec_scale(v, end * half)), 0 };
	}
	return (struct outline){ c, n };
}

/* Seen from the side: as wide as it is that way, as deep as it goes; open at its mouth. */
static struct chain pocket(struct arena *a, const struct unit_bore *b)
{
	struct bore_size size = b->bore->size;
	struct vec u = on_plane(b->at.u), v = on_plane(b->at.v), mouth = on_plane(b->at.origin);
	struct vec in = vec_scale(vec_unit(on_plane(b->at.w)), -size.depth);
	bool shows_length = vec_length(u) > vec_length(v);
	struct vec half = shows_length ? vec_scale(vec_unit(u), size.length / 2)
				       : vec_scale(vec_unit(v), size.width / 2);
	struct vec *p = NEW_N(a, struct vec, 4);

	p[0] = vec_add(mouth, half);
	p[1] = vec_add(p[0], in);
	p[3] = vec_sub(mouth, half);
	p[2] = vec_add(p[3], in);
	return (struct chain){ NULL, p, 4, false };
}

struct chain bore_lines(struct arena *a, const struct unit_bore *b)
{
	if (b->side == BORE_IN_EDGE)
		return pocket(a, b);
	return outline_chain(a, shape(a, b, on_plane(b->at.origin)));
}

static void draw_in_face(struct draft *d, const struct unit_bore *b, struct vec middle)
{
	struct unit_bore over = { .bore = b->plug, .at = b->at };
	struct vec u = vec_unit(on_plane(b->at.u)), v = vec_left(u);
	struct vec along = vec_scale(u, b->bore->size.length / 2 + CROSS_PAST);
	struct vec across = vec_scale(v, b->bore->size.width / 2 + CROSS_PAST);
	enum pen pen = b->side == BORE_FROM_ABOVE ? PEN_TEMPLATE : PEN_HIDDEN;

	draft_chain(d, pen, outline_chain(d->arena, shape(d->arena, b, middle)));
	if (b->plug)
		draft_chain(d, pen, outline_chain(d->arena, shape(d->arena, &over, middle)));
	draft_segment(d, PEN_GUIDE, vec_sub(middle, along), vec_add(middle, along));
	draft_segment(d, PEN_GUIDE, vec_sub(middle, across), vec_add(middle, across));
}

void draft_bore(struct draft *d, const struct unit_bore *b, struct vec by)
{
	struct vec middle = vec_add(on_plane(b->at.origin), by);

	if (b->side != BORE_IN_EDGE) {
		draw_in_face(d, b, middle);
		return;
	}
	struct vec across = vec_scale(vec_unit(on_plane(b->at.w)), EDGE_LINE);
	draft_segment(d, PEN_CENTRE, vec_sub(middle, across), vec_add(middle, across));
}

static const char *mouth_words(struct arena *a, struct lettering l, struct bore_size s)
{
	const char *length = length_letter_inches(a, l, s.length);
	const char *width = length_letter_inches(a, bit_lettering(l), s.width);

	switch (s.kind) {
	case BORE_HOLE: return arena_printf(a, "Ø %s", width);
	case BORE_SLOT: return arena_printf(a, "slot %s x %s", width, length);
	case BORE_MORTISE: return arena_printf(a, "mortise %s x %s", width, length);
	}
	return "";
}

const char *bore_words(struct arena *a, struct lettering l, const struct unit_bore *b)
{
	const char *what = bore_purpose(b->bore);
	const char *plug = "";

	if (b->plug)
		plug = arena_printf(a, "; plug %s, %s deep", mouth_words(a, l, b->plug->size),
			length_letter_inches(a, l, b->plug->size.depth));
	return arena_printf(a, "%s, %s deep%s%s%s%s", mouth_words(a, l, b->bore->size),
		length_letter_inches(a, l, b->bore->size.depth), plug,
		b->side == BORE_FROM_BELOW ? ", from below" : "", *what ? ": " : "", what);
}
