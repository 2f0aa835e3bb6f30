#include "sheets/template_tread.h"

const struct step *tread_step(const struct stair *s, const struct unit *u)
{
	for (int i = 0; i < s->flight_count; i++)
		for (int k = 0; k < s->flights[i].step_count; k++)
			if (u->numbers && s->flights[i].steps[k].number == u->numbers[0])
				return &s->flights[i].steps[k];
	return NULL;
}

static const struct flight *flight_of(const struct stair *s, const struct unit *u)
{
	const struct step *step = tread_step(s, u);

	for (int i = 0; step && i < s->flight_count; i++)
		if (step >= s->flights[i].steps &&
			step < s->flights[i].steps + s->flights[i].step_count)
			return &s->flights[i];
	return &s->flights[0];
}

struct unit_face tread_face(struct arena *a, const struct stair *s, const struct unit *u)
{
	static const struct face_names names = { "left end", "middle", "right end", "front",
		"back" };
	struct vec3 up = vec3(0, 0, 1), ahead = flight_of(s, u)->frame.u;
	struct frame axes = { u->pieces[0].in_house.origin, vec3_cross(ahead, up), ahead, up };

	return unit_face(a, unit_turned(a, u, axes), FACES_FLUSH, job_lettering(s->job), &names);
}

static bool is_an_edge(const struct unit_face *f, double y)
{
	for (int i = 0; i < f->corners.n; i++)
		if (fabs(f->corners.corners[i].at.y - y) < 0.5)
			return true;
	return false;
}

static void add_level(struct draft *d, const struct unit_face *f, double y, const char *words)
{
	if (y <= 0 || y >= f->extent.y1 || is_an_edge(f, y))
		return;
	draft_segment(d, PEN_CENTRE, vec(0, y), vec(f->extent.x1, y));
	draft_label(d,
		(struct pattern_label){
			.at = vec(fmax(d->region.x0, 0) * 0.3 +
					fmin(d->region.x1, f->extent.x1) * 0.7,
				y),
			.toward = vec(0, 1),
			.ways = { words },
		});
}

/* Where the risers come, which the hand feels for when the tread is set. */
static void add_risers(struct draft *d, const struct unit_face *f, const struct stair *s)
{
	const struct step *step = tread_step(s, f->unit);

	if (!step)
		return;
	add_level(d, f, step->riser_x - step->nosing_x, "face of the riser below");
	add_level(d, f, step->back_x - step->nosing_x, "face of the riser above");
}

/* The largest of its pieces. */
static const struct part *body_of(const struct unit *u)
{
	const struct part *body = u->pieces[0].part;

	for (int i = 1; i < u->piece_count; i++) {
		const struct part *p = u->pieces[i].part;
		if (p->size.length * p->size.width > body->size.length * body->size.width)
			body = p;
	}
	return body;
}

static const char *what(struct arena *a, const struct unit *u)
{
	if (!u->numbers)
		return body_of(u)->name;
	return arena_printf(a, "%s, step%s %s", u->kind->name, u->count > 1 ? "s" : "",
		number_words(a, u->numbers, u->count));
}

static const char *stock_words(struct arena *a, const struct unit_face *f)
{
	struct lettering l = f->lettering;
	const struct part *body = body_of(f->unit);

	return arena_printf(a, "Finished %s x %s x %s, %s",
		length_letter_inches(a, l, body->size.thickness),
		length_letter_inches(a, l, f->extent.y1), length_letter_inches(a, l, f->extent.x1),
		body->material);
}

static struct template_words words(struct arena *a, const struct job *job,
	const struct unit_face *f)
{
	struct template_words w = template_words(a, job);

	w.piece = piece_words(a, f->unit->mark, what(a, f->unit), f->unit->count);
	w.face = "TOP FACE UP";
	w.edges = "↓ front edge, ↔ grain of the body";
	w.work = face_bore_count(f->bores) > 0
		? "Holes: prick through the middle of each cross and drill there; broken circles "
		  "are drilled from below."
		: "";
	w.stock = stock_words(a, f);
	w.from = "along from the left-hand end, going up, and across from the front edge";
	w.doubt = "join again, or set out each point from its figures in the table.";
	w.surer = "the roll is the surer way";
	return w;
}

static struct pattern pattern_of(struct arena *a, const struct stair *s, const struct unit_face *f,
	struct positions p, struct box region)
{
	struct draft *d = face_draft(a, f, p, region);

	add_risers(d, f, s);
	return d->pattern;
}

static struct template_job tread_template(struct arena *a, const struct sheet_context *c,
	const struct unit_face *f)
{
	struct template_job t = template_of_unit(a, c, f->unit, "treads");
	struct positions p = face_positions(a, f);
	struct template_parts ends = face_parts(a, f, p);
	struct template_part *parts = NEW_N(a, struct template_part, ends.n);

	for (int i = 0; i < ends.n; i++)
		parts[i] = (struct template_part){ ends.name[i],
			pattern_of(a, c->stair, f, p, ends.region[i]) };
	t.words = words(a, c->stair->job, f);
	t.pattern = pattern_of(a, c->stair, f, p, face_region(f));
	t.parts = parts;
	t.part_count = ends.n;
	t.positions = p;
	return t;
}

static bool is_tread(const struct part_kind *kind)
{
	return kind == &part_tread || kind == &part_landing;
}

/* A tread that is not glued up is a unit of its own. */
static bool is_lone_tread(const struct part *p)
{
	return is_tread(p->kind) && p->units[0] == 0 && p->outline.n > 2;
}

struct lister {
	struct arena *arena;
	const struct sheet_context *context;
	struct template_job *jobs;
	int n;
};

static void add_unless_plain(struct lister *l, const struct unit *u)
{
	struct unit_face f = tread_face(l->arena, l->context->stair, u);

	if (!face_is_plain(l->arena, &f))
		l->jobs[l->n++] = tread_template(l->arena, l->context, &f);
}

struct template_group tread_templates(struct arena *a, const struct sheet_context *c,
	const struct unit *units)
{
	struct lister l = { a, c, NULL, 0 };
	int most = 0;

	for (const struct unit *u = units; u; u = u->next)
		most += is_tread(u->kind);
	for (const struct part *p = c->parts; p; p = p->next)
		most += is_lone_tread(p);
	l.jobs = NEW_N(a, struct template_job, most + 1);
	for (const struct unit *u = units; u; u = u->next)
		if (is_tread(u->kind))
			add_unless_plain(&l, u);
	for (const struct part *p = c->parts; p; p = p->next)
		if (is_lone_tread(p))
			add_unless_plain(&l, unit_of_part(a, p));
	return (struct template_group){ l.jobs, l.n };
}
