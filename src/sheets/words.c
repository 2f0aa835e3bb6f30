#include "sheets/words.h"

#include <string.h>

#include "base/text.h"
#include "draw/annotate.h"

const char *length_words(struct arena *a, const struct stair *s, double mm)
{
	return length_letter(a, job_lettering(s->job), mm);
}

const char *inches_words(struct arena *a, const struct stair *s, double mm)
{
	return length_letter_inches(a, job_lettering(s->job), mm);
}

const char *radius_words(struct arena *a, const struct stair *s, double mm)
{
	return length_letter_inches(a, job_radius_lettering(s->job), mm);
}

const char *bit_words(struct arena *a, const struct stair *s, double mm)
{
	return length_letter_inches(a, bit_lettering(job_lettering(s->job)), mm);
}

const char *measured_words(struct arena *a, const struct stair *s, const char *size, double mm)
{
	return arena_printf(a, "%s%s", length_words(a, s, mm),
		job_is_measured(s->job, size) ? "" : " VIF");
}

const char *unverified_words(struct arena *a, const struct job *job)
{
	const char *const *names;
	int n = job_unmeasured(a, job, &names);
	struct text list = { .arena = a };

	for (int i = 0; i < n; i++)
		text_join(&list, ", ", text_spoken(a, names[i]));
	return text_chars(&list);
}

const char *section_words(struct arena *a, const struct stair *s, double one, double other)
{
	return arena_printf(a, "%s x %s", inches_words(a, s, one), inches_words(a, s, other));
}

const char *steps_words(struct arena *a, const struct stair *s, int n, double each)
{
	struct lettering how = job_lettering(s->job);
	double stepped = n * length_lettered_value(how, each);
	double whole = length_lettered_value(how, n * each);

	if (n == 1)
		return length_words(a, s, each);
	return arena_printf(a, "%d @ %s%s = %s", n, length_words(a, s, each),
		!near_enough(stepped, whole) ? "±" : "", length_words(a, s, n * each));
}

/* Less than half the finest usual division is nobody's trouble. */
#define TROUBLE (MM_PER_INCH / 32)

const char *rounding_words(struct arena *a, const struct stair *s)
{
	struct lettering how = job_lettering(s->job);
	double stepped = length_lettered_value(how, s->unit_rise) * s->risers;
	double off = stepped - s->total_rise;

	if (fabs(off) < TROUBLE)
		return "";
	return arena_printf(a,
		"%d risers stepped off at %s would come out %s %s. Lay out from the running "
		"positions, never by stepping.",
		s->risers, length_words(a, s, s->unit_rise), length_words(a, s, fabs(off)),
		off > 0 ? "too high" : "too low");
}

const char *header_words(const struct part *parts)
{
	for (const struct part *p = parts; p; p = p->next)
		if (p->existing == EXISTING_HEADER && p->note)
			return p->note;
	return "";
}

const char *general_words(const struct stair *s)
{
	return s->job->about.units == UNITS_MILLIMETRES
		? "Millimetres. Figures govern; do not scale. Measure again before cutting."
		: "Feet and inches. Figures govern; do not scale. Measure again before cutting.";
}

const char *by_others_where(const struct job *job)
{
	bool right = side_has_guard(&job->stair.right, GUARD_BY_OTHERS);
	bool left = side_has_guard(&job->stair.left, GUARD_BY_OTHERS);

	if (right && left)
		return "on both sides";
	return right ? "on the right" : left ? "on the left" : "";
}

const char *by_others_words(struct arena *a, const struct job *job)
{
	const char *where = by_others_where(job);

	if (!*where)
		return "";
	return arena_printf(a,
		"Rail and guard %s, going up: by others, and not drawn. Steps must be guarded "
		"before the stair is used.",
		where);
}

const char *not_met_words(struct arena *a, const struct finding *list)
{
	struct text words = { .arena = a };
	const char *brief = list ? list->rules->brief : "";

	for (; list; list = list->next)
		if (list->state == FINDING_NOT_MET)
			text_join(&words, "; ",
				arena_printf(a, "%s %s, asked %s (%s)", list->what, list->provided,
					list->asked, list->rule->section));
	if (!words.length)
		return "";
	return arena_printf(a, "NOT MET, %s: %s.", brief, text_chars(&words));
}

const char *code_words(struct arena *a, const struct finding *list)
{
	if (!list)
		return "not checked: no code named";
	int missed = findings_count(list, FINDING_NOT_MET);

	return arena_printf(a, "%s: %d %s, %d near, %d met as entered, %d not checked here",
		list->rules->brief, missed, missed ? "NOT MET" : "not met",
		findings_count(list, FINDING_NEAR), findings_count(list, FINDING_MET),
		findings_count(list, FINDING_NOT_CHECKED));
}

const char *balustrade_species(struct arena *a, const struct job_material *m, const char *before)
{
	if (strcmp(m->newels, m->rail) == 0 && strcmp(m->rail, m->balusters) == 0)
		return arena_printf(a, "%s%s", before, m->rail);
	return arena_printf(a, "newels of %s, rail of %s, balusters of %s", m->newels, m->rail,
		m->balusters);
}

const char *scale_words(struct arena *a, const struct stair *s, double ratio)
{
	return scale_letter(a, ratio, s->job->about.units);
}

const char *square_words(struct arena *a, const struct stair *s, double rise, double run)
{
	return arena_printf(a, "%s on the tongue, %s on the blade", inches_words(a, s, rise),
		inches_words(a, s, run));
}
