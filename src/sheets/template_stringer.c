#include "sheets/template_stringer.h"

#include "sheets/template_rods_gather.h"

static const char *edge_words(const struct stringer *s)
{
	return stringer_is_mirrored(s) ? "↑ crown edge up, ↔ grain, → lower end"
				       : "↑ crown edge up, ↔ grain, ← lower end";
}

static const char *work_words(struct arena *a, const struct job *job, const struct stringer *s)
{
	switch (s->kind) {
	case STRINGER_SAWTOOTH: return "";
	case STRINGER_MITRED:
		return "Riser cuts are bevelled 45°: the thicker line is their long point on this "
		       "face, the broken line beside it is where the cut comes out below.";
	case STRINGER_HOUSED:
		return arena_printf(a, "Housings: rout to the thicker lines, %s deep.",
			length_letter(a, job_lettering(job), job->stringers.housing_depth));
	}
	return "";
}

static const char *what(struct arena *a, const struct stringer *s)
{
	return arena_printf(a, "%s%s%s", stringer_kind_words(s->kind),
		s->hand == STRINGER_EITHER_HAND ? "" : ", ", stringer_hand_words(s->hand));
}

static struct template_words words(struct arena *a, const struct stair *stair,
	const struct part *part)
{
	struct template_words w = template_words(a, stair->job);

	w.piece = piece_words(a, part->mark, what(a, part->stringer), part->count);
	w.face = stringer_face_words(a, part);
	w.edges = edge_words(part->stringer);
	w.work = work_words(a, stair->job, part->stringer);
	w.stock = arena_printf(a, "Plank %s", stringer_plank_words(a, stair, part));
	w.from = "along the plank from its lower end and across from its lower edge";
	w.doubt = "join again, or use them for the shape of a step only and set each step to its "
		  "figure in the table.";
	w.surer = "the step template with its rod, or the roll, is the surer way";
	return w;
}

struct template_job stringer_template(struct arena *a, const struct sheet_context *c,
	const struct part *part)
{
	struct lettering l = job_lettering(c->stair->job);
	struct template_job t = template_of_part(a, c, part);

	t.words = words(a, c->stair, part);
	t.pattern = stringer_pattern(a, part, l, stringer_extent(a, part), FIGURES_FROM_PLANK_END);
	t.positions = stringer_marks(a, part, l);
	t.stringer = part;
	return t;
}

struct marking_rod stringer_rod(struct arena *a, const struct part *part,
	struct lettering lettering)
{
	struct box extent = stringer_extent(a, part);
	struct positions p = stringer_marks(a, part, lettering);
	struct rod_ticks ticks = rod_ticks_begin(a, p.n);

	/* numbered round the outline, as in the table of positions */
	for (int i = 0; i < p.n; i++) {
		const struct position *q = &p.position[i];
		rod_ticks_add(&ticks,
			(struct rod_tick){ .at = q->at.x,
				.figure = q->along,
				.brief = arena_printf(a, "%d", q->number),
				.name = arena_printf(a, "%d%s%s", q->number, *q->what ? " " : "",
					q->what) });
	}
	return (struct marking_rod){
		.start = extent.x0,
		.end = extent.x1,
		.begins = stringer_is_mirrored(part->stringer) ? ROD_BEGINS_RIGHT : ROD_BEGINS_LEFT,
		.ticks = ticks.list,
		.n = ticks.n,
	};
}
