/*
 * Jigs as templates: the unit, the blocks against it, and where the clamps go.
 */
#include "sheets/template_jig.h"

static bool is_braced(const struct unit *u)
{
	int balusters = 0;

	for (int i = 0; i < u->piece_count; i++)
		balusters += u->pieces[i].part->baluster != NULL;
	return u->kind == &part_infill && balusters > 1 && balusters < u->piece_count;
}

static void draw_block(struct draft *d, const struct block *b, const char *words)
{
	struct vec *points = NEW_N(d->arena, struct vec, 4);
	struct vec middle = vec(0, 0), edge = vec_scale(vec_add(b->corner[0], b->corner[1]), 0.5);

	for (int i = 0; i < 4; i++) {
		points[i] = b->corner[i];
		middle = vec_add(middle, vec_scale(b->corner[i], 0.25));
	}
	draft_chain(d, PEN_GUIDE, (struct chain){ NULL, points, 4, true });
	draft_label(d,
		(struct pattern_label){
			.at = middle,
			.toward = vec_unit(vec_sub(middle, edge)),
			.ways = { words },
		});
}

/* A clamp runs on over the unit, from jaw to jaw. */
static void draw_clamps(struct draft *d, const struct jig *j)
{
	for (int i = 0; i + 1 < j->clamp_count; i += 2) {
		const struct block *low = &j->clamps[i], *high = &j->clamps[i + 1];
		draw_block(d, low, "clamp");
		draw_block(d, high, "clamp");
		draft_segment(d, PEN_CENTRE,
			vec_scale(vec_add(low->corner[2], low->corner[3]), 0.5),
			vec_scale(vec_add(high->corner[2], high->corner[3]), 0.5));
	}
}

static struct pattern pattern_of(struct arena *a, const struct jig *j, struct positions p)
{
	struct draft *d = face_draft(a, &j->face, p, face_region(&j->face));

	for (int i = 0; i < j->block_count; i++)
		draw_block(d, &j->blocks[i], "stop block");
	draw_clamps(d, j);
	return d->pattern;
}

/* The corners of the unit, and where each block touches it. */
static struct positions positions_of(struct arena *a, const struct jig *j)
{
	struct positions own = face_positions(a, &j->face);
	struct position *list = NEW_N(a, struct position, own.n + j->block_count);
	struct lettering l = j->face.lettering;

	for (int i = 0; i < own.n; i++)
		list[i] = own.position[i];
	for (int i = 0; i < j->block_count; i++) {
		struct vec at =
			vec_scale(vec_add(j->blocks[i].corner[0], j->blocks[i].corner[1]), 0.5);
		list[own.n + i] = (struct position){ own.n + i + 1, at, "stop block, its middle",
			length_letter_inches(a, l, at.x), length_letter_inches(a, l, at.y) };
	}
	return (struct positions){ list, own.n + j->block_count };
}

static struct template_words words(struct arena *a, const struct job *job, const struct unit *u)
{
	struct template_words w = template_words(a, job);

	w.piece = piece_words(a, u->mark, "jig for braced balusters", u->count);
	w.face = "LEFT-HAND FACE UP, going up";
	w.edges = "← feet, → tops, ↑ uphill";
	w.work = "Fix the sheet to a flat board and screw stop blocks down where they are drawn, "
		 "against the line; wax them, keep glue off. Assemble dry first. Pull up with a "
		 "clamp along each row, then check both diagonals and the figures.";
	w.line = "Pieces lie to the middle of the thicker line; it is 0.25 mm wide. Blocks, clamps "
		 "and all thin, broken and chain lines are guides.";
	w.from = "along from the lowest foot and across from the downhill edge";
	w.doubt = "join again, or set out the pieces and blocks from their figures in the table.";
	w.surer = "the roll is the surer way";
	return w;
}

static struct template_job jig_template(struct arena *a, const struct sheet_context *c,
	const struct unit *u)
{
	struct jig j = jig_make(a, u, job_lettering(c->stair->job));
	struct template_job t = template_of_unit(a, c, u, "jigs");

	t.words = words(a, c->stair->job, u);
	t.positions = positions_of(a, &j);
	t.pattern = pattern_of(a, &j, t.positions);
	return t;
}

struct template_group jig_templates(struct arena *a, const struct sheet_context *c,
	const struct unit *units)
{
	struct template_job *jobs;
	int n = 0;

	for (const struct unit *u = units; u; u = u->next)
		n += is_braced(u);
	jobs = NEW_N(a, struct template_job, n + 1);
	n = 0;
	for (const struct unit *u = units; u; u = u->next)
		if (is_braced(u))
			jobs[n++] = jig_template(a, c, u);
	return (struct template_group){ jobs, n };
}
