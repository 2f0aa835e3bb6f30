#include "sheets/template_block.h"

#include "draw/bounds.h"
#include "sheets/template_unit.h"

static const struct face_names names = { "left end", "middle", "right end", "front", "back" };

bool is_riser_block(const struct part *p)
{
	return p->kind == &part_riser && p->makeup.plies > 0;
}

static struct template_words words(struct arena *a, const struct job *job, const struct part *p)
{
	struct template_words w = template_words(a, job);
	struct lettering l = job_lettering(job);

	w.piece = piece_words(a, p->mark, p->name, p->count);
	w.face = "TOP FACE UP";
	w.edges = "↓ front";
	w.work = "The thin line is the face of the riser that is bent round the block; saw its "
		 "core to the thicker one within.";
	w.stock = arena_printf(a, "Glued up of %d layers to %s, %s", p->makeup.plies,
		length_letter_inches(a, l, p->size.thickness), p->material);
	w.from = "along from the left-hand end, going up, and across from the front";
	w.doubt = "join again, or set out each point from its figures in the table.";
	w.surer = "the roll is the surer way";
	return w;
}

/* The outline, which comes first of the lines, is not what this piece is cut to. */
static void thin_face(struct draft *d)
{
	for (struct pattern_line *l = d->pattern.lines; l && l->pen == PEN_TEMPLATE; l = l->next)
		l->pen = PEN_GUIDE;
}

/* Two lines nearly in one: each is named from its own side, where the round reaches farthest. */
static void add_core(struct draft *d, const struct part *p)
{
	struct box core = outline_extent(p->core), face = outline_extent(p->outline);
	double y = (face.y0 + face.y1) / 2;
	bool right = core.x1 < face.x1 - PATTERN_ALIKE;

	draft_chain(d, PEN_TEMPLATE, outline_chain(d->arena, p->core));
	draft_label(d,
		(struct pattern_label){ .at = vec(right ? core.x1 : core.x0, y),
			.toward = vec(right ? -1 : 1, 0),
			.ways = { "saw the core to this line" } });
	draft_label(d,
		(struct pattern_label){ .at = vec(right ? face.x1 : face.x0, y),
			.toward = vec(right ? 1 : -1, 0),
			.ways = { "face of the riser" } });
}

struct template_job block_template(struct arena *a, const struct sheet_context *c,
	const struct part *part)
{
	const struct job *job = c->stair->job;
	struct unit_face f =
		unit_face(a, unit_of_part(a, part), FACES_FLUSH, job_lettering(job), &names);
	struct template_job t = template_of_part(a, c, part);
	t.words = words(a, job, part);
	t.positions = face_positions(a, &f);
	struct draft *d = face_draft(a, &f, t.positions, face_region(&f));

	thin_face(d);
	add_core(d, part);
	t.pattern = d->pattern;
	return t;
}
