#include "sheets/template_unit.h"

#include "base/text.h"
#include "draw/bounds.h"

static struct chain *moved(struct arena *a, const struct chain *list, struct vec by)
{
	struct chain *first = NULL, **tail = &first;

	for (const struct chain *c = list; c; c = c->next) {
		struct chain *m = NEW(a, struct chain);
		struct vec *points = NEW_N(a, struct vec, c->n);
		for (int i = 0; i < c->n; i++)
			points[i] = vec_add(c->points[i], by);
		*m = (struct chain){ NULL, points, c->n, c->closed };
		*tail = m;
		tail = &m->next;
	}
	return first;
}

struct unit_face unit_face(struct arena *a, const struct unit *u, enum faces which)
{
	struct unit_face f = { .unit = u, .bores = unit_bores(a, u) };
	struct chain *faces = unit_faces(a, u, which);
	struct box b = box_empty();
	struct outline own = unit_corners(a, u, which);
	struct corner *corners = NEW_N(a, struct corner, own.n + 1);

	for (const struct chain *c = faces; c; c = c->next)
		b = box_join(b, chain_box(*c));
	f.by = vec(-b.x0, -b.y0);
	f.extent = (struct box){ 0, 0, box_width(b), box_height(b) };
	f.lines = chains_join(a, moved(a, faces, f.by));
	for (int i = 0; i < own.n; i++)
		corners[i].at = vec_add(own.corners[i].at, f.by);
	f.corners = (struct outline){ corners, own.n };
	return f;
}

static bool is_square_to_it(const struct chain *list)
{
	for (const struct chain *c = list; c; c = c->next)
		for (int i = 0; i + 1 < c->n; i++) {
			struct vec run = vec_sub(c->points[i + 1], c->points[i]);
			if (fabs(run.x) > 0.01 && fabs(run.y) > 0.01)
				return false;
		}
	return true;
}

/* Was this corner of another piece met before? */
static bool is_repeated(const struct unit_face *f, int i)
{
	for (int k = 0; k < i; k++)
		if (vec_length(vec_sub(f->corners.corners[k].at, f->corners.corners[i].at)) < 0.01)
			return true;
	return false;
}

static int turns(const struct unit_face *f)
{
	int n = 0;

	for (int i = 0; i < f->corners.n; i++)
		n += !is_repeated(f, i) && cut_turns(&f->lines, f->corners.corners[i].at).turns;
	return n;
}

bool face_is_plain(const struct unit_face *f)
{
	return face_bore_count(f->bores) == 0 && is_square_to_it(f->lines.joint) &&
		is_square_to_it(f->lines.cut) && turns(f) == 4;
}

static struct vec bore_middle(const struct unit_face *f, const struct unit_bore *b)
{
	return vec_add(vec(b->at.origin.x, b->at.origin.y), f->by);
}

struct position_list {
	struct arena *arena;
	struct lettering lettering;
	struct position *list;
	int n;
};

static void add_position(struct position_list *l, struct vec at, const char *what)
{
	l->list[l->n] = (struct position){ l->n + 1, at, what,
		length_letter_inches(l->arena, l->lettering, at.x),
		length_letter_inches(l->arena, l->lettering, at.y) };
	l->n++;
}

struct positions face_positions(struct arena *a, const struct unit_face *f, struct lettering l)
{
	struct position_list p = { a, l, NEW_N(a, struct position, f->corners.n + f->bores.n + 1),
		0 };

	for (int i = 0; i < f->corners.n; i++) {
		struct vec at = f->corners.corners[i].at;
		if (!is_repeated(f, i) && cut_turns(&f->lines, at).turns)
			add_position(&p, at, "");
	}
	for (int i = 0; i < f->bores.n; i++)
		if (f->bores.bore[i].side != BORE_IN_EDGE)
			add_position(&p, bore_middle(f, &f->bores.bore[i]),
				bore_words(a, l, &f->bores.bore[i]));
	return (struct positions){ p.list, p.n };
}

static void add_position_labels(struct draft *d, const struct unit_face *f, struct positions p)
{
	struct arena *a = d->arena;

	for (int i = 0; i < p.n; i++) {
		const struct position *q = &p.position[i];
		struct turning t = cut_turns(&f->lines, q->at);
		const char *figures = arena_printf(a, "%d: %s, %s", q->number, q->along, q->across);
		draft_label(d,
			(struct pattern_label){
				.at = q->at,
				.toward = t.turns ? t.toward : vec(0, 1),
				.ways = { figures, arena_printf(a, "%d", q->number) },
			});
	}
}

static void add_lines(struct draft *d, enum pen pen, const struct chain *list)
{
	for (const struct chain *c = list; c; c = c->next) {
		struct chain one = *c;
		one.next = NULL;
		draft_chain(d, pen, one);
	}
}

struct draft *face_draft(struct arena *a, const struct unit_face *f, struct positions p,
	struct lettering l)
{
	struct draft *d = draft_begin(a, l, box_grow(f->extent, 200));

	add_position_labels(d, f, p);
	add_lines(d, PEN_TEMPLATE, f->lines.cut);
	draft_check_line(d);
	add_lines(d, PEN_GUIDE, f->lines.joint);
	draft_base_line(d, f->extent);
	for (int i = 0; i < f->bores.n; i++)
		draft_bore(d, &f->bores.bore[i], f->by);
	return d;
}

const char *number_words(struct arena *a, const int *numbers, int n)
{
	struct text t = { .arena = a };

	for (int i = 0; i < n;) {
		int last = i;
		while (last + 1 < n && numbers[last + 1] == numbers[last] + 1)
			last++;
		text_join(&t, ", ",
			last > i ? arena_printf(a, "%d to %d", numbers[i], numbers[last])
				 : arena_printf(a, "%d", numbers[i]));
		i = last + 1;
	}
	return text_chars(&t);
}
