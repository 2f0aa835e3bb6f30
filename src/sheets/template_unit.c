#include "sheets/template_unit.h"

#include <stdlib.h>

#include "base/text.h"
#include "draw/bounds.h"
#include "sheets/joint_words.h"

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

struct unit_face unit_face(struct arena *a, const struct unit *u, enum faces which,
	struct lettering l, const struct face_names *names)
{
	struct unit_face f = { .unit = u,
		.lettering = l,
		.names = names,
		.bores = unit_bores(a, u) };
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

static bool runs_aslant(struct vec from, struct vec to)
{
	return !pattern_alike(from.x, to.x) && !pattern_alike(from.y, to.y);
}

/* How many pieces of these lines run neither along the work nor across it. */
static int count_aslant(const struct chain *list)
{
	int n = 0;

	for (const struct chain *c = list; c; c = c->next)
		for (int i = 0; i + 1 < c->n; i++)
			n += runs_aslant(c->points[i], c->points[i + 1]);
	return n;
}

/* Was this corner of another piece met before? */
static bool is_repeated(const struct unit_face *f, int i)
{
	for (int k = 0; k < i; k++)
		if (pattern_same_point(f->corners.corners[k].at, f->corners.corners[i].at))
			return true;
	return false;
}

static struct vec bore_middle(const struct unit_face *f, const struct unit_bore *b)
{
	return vec_add(vec(b->at.origin.x, b->at.origin.y), f->by);
}

static const char *corner_words(struct arena *a, const struct unit_face *f, struct vec at)
{
	const struct face_names *names = f->names;
	const char *end = pattern_alike(at.x, 0)    ? names->left
		: pattern_alike(at.x, f->extent.x1) ? names->right
						    : "";
	const char *edge = pattern_alike(at.y, 0)   ? names->lower
		: pattern_alike(at.y, f->extent.y1) ? names->upper
						    : "";

	if (!*end)
		return *edge ? edge : "inside";
	return *edge ? arena_printf(a, "%s, %s", end, edge) : end;
}

struct position_list {
	struct arena *arena;
	struct lettering lettering;
	struct position *list;
	int n;
};

static void add_position(struct position_list *l, struct position p)
{
	p.number = l->n + 1;
	l->list[l->n++] = p;
}

static void add_corner(struct position_list *l, struct vec at, const char *what)
{
	add_position(l,
		(struct position){ .at = at,
			.what = what,
			.along = length_letter_inches(l->arena, l->lettering, at.x),
			.across = length_letter_inches(l->arena, l->lettering, at.y) });
}

static void add_bore(struct position_list *l, struct vec at, const struct unit_bore *b)
{
	add_position(l,
		(struct position){ .at = at,
			.what = bore_words(l->arena, l->lettering, b),
			.along = bore_place_letter(l->arena, l->lettering, b->bore, at.x),
			.across = bore_place_letter(l->arena, l->lettering, b->bore, at.y) });
}

struct places {
	struct vec *at;
	int n;
};

/* Where its line turns, from the left-hand end on. */
static struct places turning_corners(struct arena *a, const struct unit_face *f)
{
	struct places l = { NEW_N(a, struct vec, f->corners.n + 1), 0 };

	for (int i = 0; i < f->corners.n; i++) {
		struct vec at = f->corners.corners[i].at;
		if (!is_repeated(f, i) && cut_turns(&f->lines, at).turns)
			l.at[l.n++] = at;
	}
	qsort(l.at, (size_t)l.n, sizeof(*l.at), vec_by_place);
	return l;
}

struct positions face_positions(struct arena *a, const struct unit_face *f)
{
	struct position_list p = { a, f->lettering,
		NEW_N(a, struct position, f->corners.n + f->bores.n + 1), 0 };

	struct places turned = turning_corners(a, f);

	for (int i = 0; i < turned.n; i++)
		add_corner(&p, turned.at[i], corner_words(a, f, turned.at[i]));
	for (int i = 0; i < f->bores.n; i++)
		if (f->bores.bore[i].side != BORE_IN_EDGE &&
			f->bores.bore[i].bore->fixing != FIXING_PLUG)
			add_bore(&p, bore_middle(f, &f->bores.bore[i]), &f->bores.bore[i]);
	return (struct positions){ p.list, p.n };
}

static void add_position_labels(struct draft *d, const struct unit_face *f, struct positions p)
{
	struct arena *a = d->arena;

	for (int i = 0; i < p.n; i++) {
		const struct position *q = &p.position[i];
		struct turning t = cut_turns(&f->lines, q->at);
		const char *figures = arena_printf(a, "%d: %s, %s", q->number, q->along, q->across);
		const char *brief = arena_printf(a, "%d", q->number);
		draft_label(d,
			(struct pattern_label){
				.at = q->at,
				.toward = t.turns ? t.toward : vec(0, 1),
				.ways = { figures, brief },
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

/* Long enough to be named. */
#define LONG_JOINT 100.0

static void add_joint_labels(struct draft *d, const struct chain *joints)
{
	for (const struct chain *c = joints; c; c = c->next) {
		struct vec run = vec_sub(c->points[1], c->points[0]);
		if (vec_length(run) < LONG_JOINT)
			continue;
		draft_label(d,
			(struct pattern_label){
				.at = vec_add(c->points[0], vec_scale(run, 0.4)),
				.toward = vec_left(vec_unit(run)),
				.ways = { "glue line" },
			});
	}
}

/* Where the region ends inside the work: a line to set to its figure. */
static void add_region_end(struct draft *d, const struct unit_face *f, double x)
{
	if (x < f->extent.x0 + 1 || x > f->extent.x1 - 1)
		return;
	draft_segment(d, PEN_GUIDE, vec(x, 0), vec(x, f->extent.y1));
	draft_label(d,
		(struct pattern_label){
			.at = vec(x, f->extent.y1 / 2),
			.toward = vec(x > (d->region.x0 + d->region.x1) / 2 ? -1 : 1, 0),
			.ways = { arena_printf(d->arena, "this line at %s", draft_figure(d, x)) },
		});
}

struct box face_region(const struct unit_face *f)
{
	return box_grow(f->extent, 200);
}

struct draft *face_draft(struct arena *a, const struct unit_face *f, struct positions p,
	struct box region)
{
	struct draft *d = draft_begin(a, f->lettering, region);

	add_position_labels(d, f, p);
	add_lines(d, PEN_TEMPLATE, f->lines.cut);
	draft_check_line(d);
	add_lines(d, PEN_GUIDE, f->lines.joint);
	add_joint_labels(d, f->lines.joint);
	draft_base_line(d, f->extent);
	add_region_end(d, f, region.x0);
	add_region_end(d, f, region.x1);
	for (int i = 0; i < f->bores.n; i++)
		draft_bore(d, &f->bores.bore[i], f->by);
	return d;
}

#define AIR_BESIDE 60.0 /* of plain work shown beside what is marked */
#define NEAR_END 150.0  /* an end nearer than this is shown too */
#define APART 200.0     /* marked places nearer than this share a stretch */

/* An end that is straight from front to back has two corners and no more. */
static bool is_of_plain_end(const struct unit_face *f, struct positions p, struct vec at)
{
	int n = 0;

	if (!pattern_alike(at.x, 0) && !pattern_alike(at.x, f->extent.x1))
		return false;
	for (int i = 0; i < p.n; i++)
		n += pattern_alike(p.position[i].at.x, at.x);
	return n == 2;
}

static int add_aslant(const struct chain *list, struct vec *at)
{
	int n = 0;

	for (const struct chain *c = list; c; c = c->next)
		for (int i = 0; i + 1 < c->n; i++) {
			if (!runs_aslant(c->points[i], c->points[i + 1]))
				continue;
			at[n++] = c->points[i];
			at[n++] = c->points[i + 1];
		}
	return n;
}

static int add_across(const struct chain *list, struct vec *at)
{
	int n = 0;

	for (const struct chain *c = list; c; c = c->next) {
		if (pattern_alike(c->points[0].y, c->points[1].y))
			continue;
		at[n++] = c->points[0];
		at[n++] = c->points[1];
	}
	return n;
}

/* Where there is something to mark, from the left-hand end on: positions, joints across, and
 * rounds, which may have no corner at all. */
static struct places marked_places(struct arena *a, const struct unit_face *f, struct positions p)
{
	struct places l = { NULL, 0 };
	int joints = 0;

	for (const struct chain *c = f->lines.joint; c; c = c->next)
		joints++;
	l.at = NEW_N(a, struct vec, p.n + 2 * (joints + count_aslant(f->lines.cut)) + 1);
	for (int i = 0; i < p.n; i++)
		if (!is_of_plain_end(f, p, p.position[i].at))
			l.at[l.n++] = p.position[i].at;
	l.n += add_across(f->lines.joint, l.at + l.n);
	l.n += add_aslant(f->lines.cut, l.at + l.n);
	qsort(l.at, (size_t)l.n, sizeof(*l.at), vec_by_place);
	return l;
}

static const char *part_name(const struct unit_face *f, struct box region)
{
	bool left = region.x0<0, right = region.x1> f->extent.x1;

	if (left && right)
		return "";
	return left ? f->names->left : right ? f->names->right : f->names->middle;
}

/* Several stretches between the ends are numbered, so that each of their sheets has a name. */
static void number_middles(struct arena *a, const struct unit_face *f, struct template_parts *parts)
{
	int n = 0, count = 0;

	for (int i = 0; i < parts->n; i++)
		count += parts->name[i] == f->names->middle;
	for (int i = 0; count > 1 && i < parts->n; i++)
		if (parts->name[i] == f->names->middle)
			parts->name[i] = arena_printf(a, "%s %d", f->names->middle, ++n);
}

struct template_parts face_parts(struct arena *a, const struct unit_face *f, struct positions p)
{
	struct places l = marked_places(a, f, p);
	struct template_parts parts = { NEW_N(a, struct box, l.n + 1),
		NEW_N(a, const char *, l.n + 1), 0 };

	for (int i = 0; i < l.n;) {
		struct box region = face_region(f);
		int last = i;
		while (last + 1 < l.n && l.at[last + 1].x - l.at[last].x < APART)
			last++;
		if (l.at[i].x > NEAR_END)
			region.x0 = l.at[i].x - AIR_BESIDE;
		if (l.at[last].x < f->extent.x1 - NEAR_END)
			region.x1 = l.at[last].x + AIR_BESIDE;
		parts.name[parts.n] = part_name(f, region);
		parts.region[parts.n++] = region;
		i = last + 1;
	}
	number_middles(a, f, &parts);
	return parts;
}

bool face_is_plain(struct arena *a, const struct unit_face *f)
{
	return face_bore_count(f->bores) == 0 && count_aslant(f->lines.joint) == 0 &&
		count_aslant(f->lines.cut) == 0 && turning_corners(a, f).n == 4;
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
