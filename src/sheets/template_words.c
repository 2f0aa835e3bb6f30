#include "sheets/template_words.h"

#include "base/file.h"
#include "sheets/stringer_shape.h"
#include "sheets/template_pattern.h"

const char words_full_size[] = "TEMPLATE - FULL SIZE";

const char words_print[] =
	"1. Print the calibration page and read it. Print every sheet at actual size, on one "
	"side. Measure the bars on each sheet, both ways: exactly 100 mm and 4 in, or STOP.";

const char words_govern[] = "Figures govern: check every position against its figure.";

const char words_figures_govern[] =
	"Figures govern: paper stretches and printers err. Check every position you cut to "
	"against its figure, along the plank from its lower end and across from its lower "
	"edge.";

const char words_line[] = "Cut to the middle of the thicker line; it is 0.25 mm wide. Thin, broken "
			  "and chain lines are guides.";

const char words_stop[] =
	"Measure the bars first, both ways. If they are not exactly 100 mm and 4 in, STOP: "
	"print again at actual size (100 %, not fitted to the page).";

static const char *edge_words(const struct stringer *s)
{
	return stringer_is_mirrored(s) ? "↑ crown edge up, ↔ grain, → lower end"
				       : "↑ crown edge up, ↔ grain, ← lower end";
}

static const char *work_words(struct arena *a, const struct template_job *t)
{
	const struct job *job = t->context->stair->job;

	switch (t->part->stringer->kind) {
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

static const char *unit_words(enum units units)
{
	switch (units) {
	case UNITS_INCHES: return "Figures are feet and inches.";
	case UNITS_MILLIMETRES: return "Figures are millimetres.";
	}
	return "";
}

static const char *times(struct arena *a, int n)
{
	return n == 1 ? "make 1" : arena_printf(a, "make %d alike", n);
}

struct template_words template_words(struct arena *a, const struct template_job *t)
{
	const struct job_about *about = &t->context->stair->job->about;
	const struct stringer *s = t->part->stringer;

	return (struct template_words){
		.job = arena_printf(a, "Job %s  %s", about->number ? about->number : "",
			about->name ? about->name : ""),
		.piece = arena_printf(a, "%s  %s%s%s, %s", t->part->mark,
			stringer_kind_words(s->kind), s->hand == STRINGER_EITHER_HAND ? "" : ", ",
			stringer_hand_words(s->hand), times(a, t->part->count)),
		.face = stringer_face_words(s->kind),
		.edges = edge_words(s),
		.work = work_words(a, t),
		.plank = arena_printf(a, "Plank %s",
			stringer_plank_words(a, t->context->stair, t->part)),
		.units = unit_words(about->units),
	};
}

const char *template_id(struct arena *a, const struct template_job *t)
{
	return arena_printf(a, "T-%d", t->number);
}

const char *job_stem(struct arena *a, const struct job *job)
{
	return path_stem(a, job->file ? job->file : "stair");
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
