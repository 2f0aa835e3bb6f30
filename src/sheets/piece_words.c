#include "sheets/piece_words.h"

#include <string.h>

#include "base/text.h"
#include "pitchboard/list.h"
#include "pitchboard/rail.h"
#include "sheets/joint_words.h"
#include "sheets/piece_view.h"
#include "sheets/words.h"

const char *piece_heading(struct arena *a, const struct part *p)
{
	return arena_printf(a, "%s  %s", p->mark, p->name);
}

static const char *grain_words(enum grain grain)
{
	switch (grain) {
	case GRAIN_ALONG: return ", grain along";
	case GRAIN_NONE: break;
	}
	return "";
}

const char *piece_size_words(struct arena *a, const struct stair *s, const struct part *p)
{
	return arena_printf(a, "Make %d; %s; %s x %s x %s%s.", p->count, p->material,
		inches_words(a, s, p->size.thickness), inches_words(a, s, p->size.width),
		inches_words(a, s, part_sawn_length(p)), grain_words(p->grain));
}

static void add_line(struct text *t, const char *line)
{
	if (line && *line)
		text_add(t, "%s%s", text_chars(t)[0] ? "\n" : "", line);
}

static const char *end_words(struct arena *a, const char *which, struct end_cut cut)
{
	bool mitre = fabs(cut.mitre) > NEAR_ENOUGH, bevel = fabs(cut.bevel) > NEAR_ENOUGH;

	if (!mitre && !bevel)
		return NULL;
	return arena_printf(a, "%s: %s%s%s%s%s from square.", which, mitre ? "mitre " : "",
		mitre ? angle_letter(a, cut.mitre) : "", mitre && bevel ? ", " : "",
		bevel ? "bevel " : "", bevel ? angle_letter(a, cut.bevel) : "");
}

static const char *ply_words(struct arena *a, const struct stair *s, struct makeup m)
{
	double planed = ply_planed(s->job->about.units, m.ply_thickness);

	return arena_printf(a, "Glued from %d plies of %s, planed to fill %s.", m.plies,
		length_letter_inches(a, ply_lettering(s->job), planed),
		inches_words(a, s, m.plies * m.ply_thickness));
}

static const char *makeup_words(struct arena *a, const struct stair *s, struct makeup m)
{
	if (m.boards > 1)
		return arena_printf(a,
			"Glued from %d boards, each %s wide or more, heart side by "
			"turns, trimmed to %s.",
			m.boards, inches_words(a, s, board_ripped(s->job, m.board_width)),
			inches_words(a, s, m.boards * m.board_width));
	if (m.plies > 1)
		return ply_words(a, s, m);
	return NULL;
}

/* On which side of the piece the mouth is. */
static const char *side_words(const struct part *p, const struct bore *b)
{
	switch (piece_bore_side(p, b)) {
	case PIECE_FACE: return b->at.w.z > 0 ? "face" : "back";
	case PIECE_EDGE: return b->at.w.y > 0 ? "far edge" : "near edge";
	case PIECE_START: return "left end";
	case PIECE_END:
	case PIECE_SIDES: break;
	}
	return "right end";
}

/* A brad is driven, not drilled for. */
static const char *hole_words(struct arena *a, const struct stair *s, const struct bore *b, int n)
{
	struct bore_size size = b->size;
	const char *deep = inches_words(a, s, size.depth);

	if (b->fixing == FIXING_BRAD)
		return arena_printf(a, "%s, %s,", n > 1 ? "brads" : "brad",
			fixing_size(a, job_lettering(s->job), b));
	if (size.kind == BORE_HOLE)
		return arena_printf(a, "hole%s \xc3\x98 %s, %s deep", n > 1 ? "s" : "",
			bit_words(a, s, size.width), deep);
	return arena_printf(a, "%s%s %s x %s, %s deep", size.kind == BORE_SLOT ? "slot" : "mortise",
		n > 1 ? "s" : "", inches_words(a, s, size.length), bit_words(a, s, size.width),
		deep);
}

/* What it is for; that it is a brad has been said. */
static const char *purpose(const struct bore *b)
{
	static const char brad[] = "brad, ";
	size_t n = sizeof(brad) - 1;

	if (!b->text)
		return "";
	return b->fixing == FIXING_BRAD && strncmp(b->text, brad, n) == 0 ? b->text + n : b->text;
}

/* Which screw it is for. */
static const char *screw_words(struct arena *a, const struct stair *s, const struct bore *b)
{
	if (b->fixing != FIXING_SCREW || b->fixing_length <= 0)
		return "";
	return arena_printf(a, ", %s", fixing_size(a, job_lettering(s->job), b));
}

static bool same_work(const struct part *p, const struct bore *a, const struct bore *b)
{
	const char *one = a->text ? a->text : "", *other = b->text ? b->text : "";

	return a->size.kind == b->size.kind && near_enough(a->size.length, b->size.length) &&
		near_enough(a->size.width, b->size.width) &&
		near_enough(a->size.depth, b->size.depth) &&
		strcmp(side_words(p, a), side_words(p, b)) == 0 && strcmp(one, other) == 0;
}

static bool was_said(const struct part *p, const struct bore *b)
{
	for (const struct bore *before = p->bores; before != b; before = before->next)
		if (same_work(p, before, b))
			return true;
	return false;
}

/* One that looks the same on the same side, but is for something else; NULL when there is none. */
static const struct bore *look_alike(const struct part *p, const struct bore *b)
{
	for (const struct bore *other = p->bores; other; other = other->next)
		if (piece_bore_side(p, other) == piece_bore_side(p, b) &&
			fabs(other->size.width - b->size.width) < 0.01 &&
			fabs(other->size.length - b->size.length) < 0.01 && !same_work(p, other, b))
			return other;
	return NULL;
}

/* Which of two that look alike is meant: by the figure in which they differ. */
static const char *place_words(struct arena *a, const struct stair *s, const struct part *p,
	const struct bore *b)
{
	const struct bore *other = look_alike(p, b);
	struct piece_view v = { .part = p, .side = piece_bore_side(p, b), .zero = piece_zero(p) };
	bool is_end = v.side == PIECE_START || v.side == PIECE_END;
	double apart = 1;

	if (!other)
		return "";
	v.stretch = piece_stretch(p, v.side);
	struct vec at = piece_figured(&v, b->at.origin), by = piece_figured(&v, other->at.origin);
	if (!is_end && fabs(at.x - by.x) > apart)
		return arena_printf(a, ", %s along", bore_place_words(a, s, b, at.x));
	if (fabs(at.y - by.y) > apart)
		return arena_printf(a, ", %s up", bore_place_words(a, s, b, at.y));
	return "";
}

static void add_bores(struct text *t, const struct stair *s, const struct part *p)
{
	struct arena *a = t->arena;

	for (const struct bore *b = p->bores; b; b = b->next) {
		int n = 0;
		if (was_said(p, b))
			continue;
		for (const struct bore *k = b; k; k = k->next)
			n += same_work(p, b, k);
		add_line(t,
			arena_printf(a, "%d %s in the %s%s%s%s%s.", n, hole_words(a, s, b, n),
				side_words(p, b), n == 1 ? place_words(a, s, p, b) : "",
				b->text ? ": " : "", purpose(b), screw_words(a, s, b)));
	}
}

static bool feature_was_said(const struct part *p, const struct feature *f)
{
	for (const struct feature *before = p->features; before != f; before = before->next)
		if (before->text && strcmp(before->text, f->text) == 0)
			return true;
	return false;
}

/* Begun with a capital and ended with a stop. */
static const char *sentence(struct arena *a, const char *text)
{
	size_t n = strlen(text);
	char first = text[0];

	if (n == 0)
		return text;
	if (first >= 'a' && first <= 'z')
		first = (char)(first - 'a' + 'A');
	return arena_printf(a, "%c%s%s", first, text + 1, text[n - 1] == '.' ? "" : ".");
}

static void add_features(struct text *t, const struct stair *s, const struct part *p)
{
	struct arena *a = t->arena;

	for (const struct feature *f = p->features; f; f = f->next) {
		/* its note, which a list shows too, may say it */
		if (!f->text || feature_was_said(p, f) || (p->note && strstr(p->note, f->text)))
			continue;
		const char *more = f->radius > 0
			? arena_printf(a, "%s, radius %s", f->text, radius_words(a, s, f->radius))
			: f->text;
		add_line(t, sentence(a, more));
	}
}

static double radius_at(struct outline o, int i)
{
	return corner_arc(o.corners[i], o.corners[(i + 1) % o.n].at).radius;
}

/* Of its rounds (way 1) or its hollows (way -1), each radius once; "" when there are none. */
static const char *radii(struct arena *a, const struct stair *s, struct outline o, double way)
{
	struct text t = { .arena = a };

	for (int i = 0; i < o.n; i++) {
		bool said = o.corners[i].bulge * way <= 0;
		for (int k = 0; k < i && !said; k++)
			said = o.corners[k].bulge * way > 0 &&
				fabs(radius_at(o, k) - radius_at(o, i)) < 0.05;
		if (!said)
			text_join(&t, ", ", radius_words(a, s, radius_at(o, i)));
	}
	return t.length ? text_chars(&t) : "";
}

static void add_radii(struct text *t, const struct stair *s, const char *where, struct outline o)
{
	const char *rounds = radii(t->arena, s, o, 1), *hollows = radii(t->arena, s, o, -1);

	if (!*rounds && !*hollows)
		return;
	add_line(t,
		arena_printf(t->arena, "%s:%s%s%s%s%s.", where, *rounds ? " rounds of radius " : "",
			rounds, *rounds && *hollows ? ";" : "",
			*hollows ? " hollows of radius " : "", hollows));
}

/* What a hand takes hold of, as codes measure it: round the section, and from one of its points to
 * any other. */
static const char *grip_words(struct arena *a, const struct stair *s, const struct rail *rail)
{
	const struct rail_profile *p;

	if (!rail)
		return NULL;
	p = &rail->profile;
	return arena_printf(a, "Perimeter of its section %s, longest across %s%s%s.",
		inches_words(a, s, p->perimeter), inches_words(a, s, p->largest),
		p->recess.depth > 0 ? ", finger recesses deep " : "",
		p->recess.depth > 0 ? inches_words(a, s, p->recess.depth) : "");
}

const char *piece_work_words(struct arena *a, const struct stair *s, const struct part *p)
{
	struct text t = { .arena = a };

	add_line(&t, makeup_words(a, s, p->makeup));
	add_line(&t, end_words(a, "Left end", p->start));
	add_line(&t, end_words(a, "Right end", p->end));
	add_line(&t, grip_words(a, s, p->rail));
	add_features(&t, s, p);
	add_radii(&t, s, "Outline", p->outline);
	if (!p->nosing)
		add_radii(&t, s, "Section", p->section);
	add_bores(&t, s, p);
	if (p->note)
		add_line(&t, sentence(a, p->note));
	return text_chars(&t);
}
