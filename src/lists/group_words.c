#include "lists/group_words.h"

#include "lists/nominal.h"

const char *stuff_words(enum stuff stuff)
{
	switch (stuff) {
	case STUFF_BOARD: return "boards";
	case STUFF_PLANK: return "planks";
	case STUFF_SHEET: return "sheets";
	case STUFF_MOULDING: return "moulding";
	case STUFF_BOUGHT: break;
	}
	return "bought in";
}

/* Of one. */
static const char *stuff_word(enum stuff stuff)
{
	switch (stuff) {
	case STUFF_BOARD: return "board";
	case STUFF_PLANK: return "plank";
	case STUFF_SHEET: return "sheet";
	case STUFF_MOULDING: return "length";
	case STUFF_BOUGHT: break;
	}
	return "piece";
}

const char *group_thickness(struct arena *a, struct lettering l, const struct cut_group *g)
{
	const char *thick = length_letter_inches(a, l, g->nominal);

	if (g->stuff == STUFF_MOULDING)
		return g->name;
	if (g->nominal_width > 0)
		return arena_printf(a, "%s x %s", thick,
			length_letter_inches(a, l, g->nominal_width));
	return g->stuff == STUFF_SHEET ? thick : nominal_letter(a, l, g->nominal);
}

const char *group_proof(struct arena *a, const struct cut_group *g)
{
	const char *what = g->aim == CUT_CHEAPEST
		? arena_printf(a, "%.2f", g->price)
		: arena_printf(a, "%d %s%s", g->total, stuff_word(g->stuff),
			  g->total == 1 ? "" : "s");

	if (!g->total)
		return "";
	if (g->is_proved)
		return arena_printf(a, "%s, proved the %s", what,
			g->aim == CUT_CHEAPEST ? "cheapest" : "fewest");
	if (g->aim == CUT_CHEAPEST)
		return arena_printf(a, "%s; no less than %.2f is possible, a gap of %.1f %%", what,
			g->bound, 100 * (g->price - g->bound) / g->price);
	return arena_printf(a, "%s; no fewer than %.0f are possible", what, g->bound);
}

/* Held on the fence and clear of the cutters (common practice). */
#define WIDER_IN 4.0
#define WIDER_MM 100.0

const char *moulding_note(struct arena *a, const struct job *job)
{
	double wider = job->about.units == UNITS_INCHES ? WIDER_IN * MM_PER_INCH : WIDER_MM;

	return arena_printf(a,
		"Mouldings and fillets are listed in their own section, as bought ready run. Made "
		"here: out of stock as long and at least %s wider; run its edge, rip that off, "
		"joint the edge, run the next. That stock is not counted.",
		length_say(a, job_lettering(job), wider));
}
