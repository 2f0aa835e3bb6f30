#include "sheets/template_tread.h"

static const struct step *step_of(const struct stair *s, int number)
{
	for (int i = 0; i < s->flight_count; i++)
		for (int k = 0; k < s->flights[i].step_count; k++)
			if (s->flights[i].steps[k].number == number)
				return &s->flights[i].steps[k];
	return NULL;
}

static void add_level(struct draft *d, const struct unit_face *f, double y, const char *words)
{
	if (y <= 0 || y >= f->extent.y1)
		return;
	draft_segment(d, PEN_CENTRE, vec(0, y), vec(f->extent.x1, y));
	draft_label(d,
		(struct pattern_label){
			.at = vec(f->extent.x1 / 2, y),
			.toward = vec(0, 1),
			.ways = { words },
		});
}

/* Where the risers come, which the hand feels for when the tread is set. */
static void add_risers(struct draft *d, const struct unit_face *f, const struct stair *s)
{
	const struct step *step = f->unit->numbers ? step_of(s, f->unit->numbers[0]) : NULL;

	if (!step)
		return;
	add_level(d, f, step->riser_x - step->nosing_x, "face of the riser below");
	add_level(d, f, step->back_x - step->nosing_x, "face of the riser above");
}

static const char *what(struct arena *a, const struct unit *u)
{
	if (!u->numbers)
		return u->pieces[0].part->name;
	return arena_printf(a, "%s, step%s %s", u->kind->name, u->count > 1 ? "s" : "",
		number_words(a, u->numbers, u->count));
}

static const char *stock_words(struct arena *a, struct lettering l, const struct unit_face *f)
{
	const struct part *body = f->unit->pieces[0].part;

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
	w.stock = stock_words(a, job_lettering(job), f);
	w.from = "along from the left-hand end, going up, and across from the front edge";
	w.doubt = "join again, or set out each point from its figures in the table.";
	w.surer = "the roll is the surer way";
	return w;
}

static struct template_job tread_template(struct arena *a, const struct sheet_context *c,
	const struct unit_face *f)
{
	struct lettering l = job_lettering(c->stair->job);
	struct positions p = face_positions(a, f, l);
	struct draft *d = face_draft(a, f, p, l);

	add_risers(d, f, c->stair);
	return (struct template_job){
		.context = c,
		.mark = f->unit->mark,
		.name = "treads",
		.words = words(a, c->stair->job, f),
		.pattern = d->pattern,
		.positions = p,
	};
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
	const struct paper *paper;
	struct template_job *jobs;
	int n, first;
};

static void add_unless_plain(struct lister *l, const struct unit *u)
{
	struct unit_face f = unit_face(l->arena, u, FACES_FLUSH);

	if (face_is_plain(&f))
		return;
	struct template_job t = tread_template(l->arena, l->context, &f);
	t.paper = l->paper;
	t.number = l->first + l->n;
	l->jobs[l->n++] = t;
}

struct template_group tread_templates(struct arena *a, const struct sheet_context *c,
	const struct unit *units, const struct paper *paper, int first)
{
	struct lister l = { a, c, paper, NULL, 0, first };
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
