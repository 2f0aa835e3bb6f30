#include "sheets/template_words.h"

#include <string.h>

const char words_full_size[] = "TEMPLATE - FULL SIZE";

const char words_figures_govern[] =
	"Figures govern: paper stretches and printers err. Check every position you cut to against "
	"its figure, along the plank from its lower end and across from its lower edge.";

const char words_line[] =
	"Cut to the middle of the thicker line; it is 0.25 mm wide. Thin lines are guides, never cut.";

const char words_stop[] =
	"Measure both bars, in both directions, before anything else. If they are not exactly 100 mm "
	"and 4 in, STOP: print again at actual size (100 %, no fitting to the page).";

static const char *kind_name(enum stringer_kind kind)
{
	switch (kind) {
	case STRINGER_SAWTOOTH: return "sawtooth stringer";
	case STRINGER_MITRED: return "mitred open stringer";
	case STRINGER_HOUSED: return "housed stringer";
	}
	return "";
}

/* Which face lies up when the plank's lower end is on the left: the outline is drawn looking
 * against its z axis, and the outer face looks away from the middle of the stair. */
static const char *face_words(const struct stair *s, const struct part *p)
{
	const struct frame *flight = &s->flights[0].frame;
	struct vec3 from = vec3_sub(p->places[0].origin, flight->origin);
	double side = vec3_dot(from, flight->v) - s->width / 2;
	double up = vec3_dot(p->places[0].w, flight->v);

	if (p->stringer->kind == STRINGER_SAWTOOTH)
		return "Cuts are square: either face up";
	return side * up > 0 ? "OUTER FACE UP" : "INNER FACE UP (the side of the steps)";
}

static const char *times(struct arena *a, int n)
{
	return n == 1 ? "make 1" : arena_printf(a, "make %d alike", n);
}

static const char *plank_words(struct arena *a, const struct template_job *t)
{
	struct lettering l = job_lettering(t->context->stair->job);
	const struct stringer *s = t->part->stringer;

	return arena_printf(a, "Plank %s x %s x %s", length_letter(a, l, t->part->size.thickness),
		length_letter(a, l, s->plank_width),
		length_letter(a, l, s->plank_length > 0 ? s->plank_length : s->cut_length));
}

struct template_words template_words(struct arena *a, const struct template_job *t)
{
	const struct job_about *about = &t->context->stair->job->about;

	return (struct template_words){
		.job = arena_printf(a, "Job %s  %s", about->number ? about->number : "",
			about->name ? about->name : ""),
		.piece = arena_printf(a, "%s  %s, %s", t->part->mark,
			kind_name(t->part->stringer->kind), times(a, t->part->count)),
		.face = face_words(t->context->stair, t->part),
		.edges = "↑ crown edge up, → grain, lower end left",
		.plank = plank_words(a, t),
	};
}

const char *template_id(struct arena *a, const struct template_job *t)
{
	return arena_printf(a, "T-%d", t->number);
}

const char *job_stem(struct arena *a, const struct job *job)
{
	const char *file = job->file ? job->file : "stair";
	const char *slash = strrchr(file, '/'), *base = slash ? slash + 1 : file;
	const char *dot = strrchr(base, '.');

	return dot && dot != base ? arena_strndup(a, base, (size_t)(dot - base)) : base;
}

const char *template_file(struct arena *a, const struct template_job *t, const char *kind)
{
	return arena_printf(a, "%s-%s-%s", job_stem(a, t->context->stair->job), t->part->mark,
		kind);
}

const char *correction_words(struct arena *a, struct vec c)
{
	if (fabs(c.x - 1) < NEAR_ENOUGH && fabs(c.y - 1) < NEAR_ENOUGH)
		return "";
	return arena_printf(a,
		"Corrected for a printer that draws x %.4g and y %.4g times true size.", c.x, c.y);
}
