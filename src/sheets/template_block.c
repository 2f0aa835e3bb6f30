#include "sheets/template_block.h"

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
	w.work = "The line is the face of the riser that is bent round it; the core is less round "
		 "the curve, as its sheet says.";
	w.stock = arena_printf(a, "Glued up of %d layers to %s, %s", p->makeup.plies,
		length_letter_inches(a, l, p->size.thickness), p->material);
	w.from = "along from the left-hand end, going up, and across from the front";
	w.doubt = "join again, or set out each point from its figures in the table.";
	w.surer = "the roll is the surer way";
	return w;
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
	t.pattern = face_draft(a, &f, t.positions, face_region(&f))->pattern;
	return t;
}
