/*
 * What the client is told of the stair, its steps, headroom and code, in words.
 */
#include <string.h>

#include "base/text.h"
#include "sheets/client.h"
#include "sheets/client_facts.h"
#include "sheets/words.h"

bool client_has(const struct sheet_context *c, const struct part_kind *kind)
{
	for (const struct part *p = c->parts; p; p = p->next)
		if (p->kind == kind)
			return true;
	return false;
}

/* With its unit: millimetres say that they are. */
static const char *say(struct arena *a, const struct stair *s, double mm)
{
	return length_say(a, job_lettering(s->job), mm);
}

/* A rounded figure is said to be one. */
static const char *about(struct arena *a, const struct stair *s, double mm)
{
	double lettered = length_lettered_value(job_lettering(s->job), mm);

	return arena_printf(a, "%s%s", !near_enough(lettered, mm) ? "about " : "", say(a, s, mm));
}

const char *client_measured(struct arena *a, const struct stair *s, const char *size, double mm)
{
	return arena_printf(a, "%s%s", length_words(a, s, mm),
		job_is_measured(s->job, size) ? "" : " (not verified)");
}

const char *client_steps(struct arena *a, const struct stair *s)
{
	const struct flight *f = &s->flights[0];

	return arena_printf(a,
		"%d steps up. Each rises %s and brings you %s forward; each tread overhangs the "
		"step below by %s.",
		s->risers, about(a, s, s->unit_rise), about(a, s, f->unit_run),
		say(a, s, s->job->treads.nosing));
}

static const char *size_words(struct arena *a, const struct stair *s)
{
	return arena_printf(a,
		"One straight flight, %s from finished floor to finished floor, %s wide, %s long "
		"from the first step to the upper floor.",
		say(a, s, s->total_rise), say(a, s, s->width), say(a, s, s->flights[0].total_run));
}

static const char *wood_words(struct arena *a, const struct sheet_context *c)
{
	const struct job *job = c->stair->job;
	const char *treads = client_wood_words(a, job, WOOD_TREADS);

	if (client_has(c, &part_riser) && job->risers.kind == RISER_BOARD)
		return arena_printf(a, "Treads: %s, %s. Closed with risers: %s, %s.", treads,
			client_finish_words(job, WOOD_TREADS),
			client_wood_words(a, job, WOOD_RISERS),
			client_finish_words(job, WOOD_RISERS));
	return arena_printf(a, "Treads: %s, %s. Open between them%s.", treads,
		client_finish_words(job, WOOD_TREADS),
		job->risers.bar > 0 ? ", with a bar under each" : "");
}

/* ---- rails ---- */

static const char *guarded(struct arena *a, const struct job_side *side, const char *name)
{
	if (!side_has_guard(side, GUARD_HERE))
		return NULL;
	return side->from_step > 1
		? arena_printf(a, "on the %s from step %d on", name, side->from_step)
		: arena_printf(a, "on the %s", name);
}

static const char *balustrade_words(struct arena *a, const struct sheet_context *c)
{
	const struct job *job = c->stair->job;
	const char *right = guarded(a, &job->stair.right, "right");
	const char *left = guarded(a, &job->stair.left, "left");

	if (!client_has(c, &part_rail) || (!right && !left))
		return "";
	return arena_printf(a,
		"Balustrade (%s) %s%s%s, going up; the top of its rail is %s over the edges of "
		"the treads.",
		client_wood_words(a, job, WOOD_RAIL), right ? right : "",
		right && left ? " and " : "", left ? left : "", say(a, c->stair, job->rail.height));
}

static const char *guard_words(struct arena *a, const struct sheet_context *c)
{
	const struct job *job = c->stair->job;
	const struct job_rail *r = &job->rail;
	double least = INFINITY, most = 0;

	for (int i = 0; i < r->level_run_count; i++) {
		least = fmin(least, r->level_runs[i].height);
		most = fmax(most, r->level_runs[i].height);
	}
	if (most <= 0)
		return "";
	return arena_printf(a, "A guard upstairs, %s%s high over the floor (%s).",
		most > least + NEAR_ENOUGH ? arena_printf(a, "%s to ", say(a, c->stair, least))
					   : "",
		say(a, c->stair, most), client_wood_words(a, job, WOOD_RAIL));
}

static const char *wall_rail_on(struct arena *a, const struct job_wall_rail *w)
{
	const char *from = w->from_step > 1 ? arena_printf(a, " from step %d", w->from_step) : "";
	const char *to = w->to_step > 0 ? arena_printf(a, " to step %d", w->to_step) : "";

	return arena_printf(a, "on the %s%s%s", side_word(w->side), from, to);
}

static const char *wall_rail_words(struct arena *a, const struct sheet_context *c)
{
	const struct job *job = c->stair->job;
	struct text list = { .arena = a };

	if (!client_has(c, &part_wall_rail))
		return "";
	for (int i = 0; i < job->wall_rail_count; i++)
		text_join(&list, ", and ", wall_rail_on(a, &job->wall_rails[i]));
	return arena_printf(a, "A rail (%s) on brackets along the wall: %s.",
		client_wood_words(a, job, WOOD_RAIL), text_chars(&list));
}

/* ---- headroom ---- */

/* What the headroom was reckoned from and nobody has measured: of the ceiling over the upper floor,
 * or of the opening's edge. */
static const char *headroom_rests_on(struct arena *a, const struct stair *s)
{
	static const char *const under_ceiling[] = { "upper_ceiling_height", NULL };
	static const char *const under_edge[] = { "total_rise", "structural_rise", "opening_length",
		"floor_thickness", "ceiling_height", "total_run", NULL };
	bool is_ceiling = s->headroom.overhead_z > s->total_rise;
	const char *const *names, *const *rests = is_ceiling ? under_ceiling : under_edge;
	int n = job_unmeasured(a, s->job, &names);
	struct text list = { .arena = a };

	for (; *rests; rests++)
		for (int i = 0; i < n; i++)
			if (strcmp(names[i], *rests) == 0)
				text_join(&list, ", ", text_spoken(a, *rests));
	return text_chars(&list);
}

/* Down to what one would say of a size that is not certain. */
#define ROUGH_INCHES (MM_PER_INCH / 2)
#define ROUGH_MILLIMETRES 10.0

static double roughly(const struct stair *s, double mm)
{
	double step = s->job->about.units == UNITS_INCHES ? ROUGH_INCHES : ROUGH_MILLIMETRES;

	return floor(mm / step + NEAR_ENOUGH) * step;
}

const char *client_headroom(struct arena *a, const struct stair *s)
{
	const struct headroom *h = &s->headroom;
	const char *only = h->state == HEADROOM_SHORT ? "ONLY " : "";
	const char *rests = headroom_rests_on(a, s);

	if (h->state == HEADROOM_NOT_CHECKED)
		return "Headroom: NOT KNOWN. The opening upstairs is not in these drawings.";
	if (!*rests)
		return arena_printf(a, "Least headroom over the steps: %s%s.", only,
			say(a, s, h->least));
	return arena_printf(a,
		"Least headroom over the steps: %sabout %s, NOT VERIFIED: it depends on the %s.",
		only, say(a, s, roughly(s, h->least)), rests);
}

const char *client_headroom_figure(struct arena *a, const struct stair *s)
{
	if (!*headroom_rests_on(a, s))
		return arena_printf(a, "headroom %s", length_words(a, s, s->headroom.least));
	return arena_printf(a, "headroom about %s, not verified",
		length_words(a, s, roughly(s, s->headroom.least)));
}

/* ---- the floor above ---- */

/* The edge that nobody guards is where people fall: said whether or not a code is named. */
const char *client_edge_words(struct arena *a, const struct sheet_context *c)
{
	const char *bare = opening_bare_words(a, c->stair, c->parts);
	bool guards = c->stair->job->rail.level_run_count > 0;

	if (c->stair->job->opening.length > 0 && !*bare)
		return "";
	return arena_printf(a,
		"%s around the opening upstairs are not part of this proposal%s%s. That edge must "
		"be guarded before the stair is used; ask who does it.",
		guards ? "Further guards" : "Guards", guards && *bare ? ": " : "",
		guards ? bare : "");
}

const char *client_others_words(struct arena *a, const struct job *job)
{
	const char *where = by_others_where(job);

	if (!*where)
		return "";
	return arena_printf(a,
		"Rail and guard %s of the stair are not part of this proposal: others make them. "
		"The steps must be guarded before the stair is used.",
		where);
}

/* ---- all of it ---- */

const char *const *client_proposal(struct arena *a, const struct sheet_context *c)
{
	const char *const said[] = { size_words(a, c->stair), client_steps(a, c->stair),
		wood_words(a, c), balustrade_words(a, c), guard_words(a, c), wall_rail_words(a, c),
		client_headroom(a, c->stair) };
	const char **kept = NEW_N(a, const char *, sizeof(said) / sizeof(*said) + 1);
	int n = 0;

	for (size_t i = 0; i < sizeof(said) / sizeof(*said); i++)
		if (*said[i])
			kept[n++] = said[i];
	return kept;
}

const char *client_status(struct arena *a, const struct job *job)
{
	const char *open = unverified_words(a, job);

	if (*open)
		return arena_printf(a,
			"NOT YET VERIFIED ON SITE: %s. Nothing is made before %s measured, and "
			"what is measured may change these drawings.",
			open, strchr(open, ',') ? "these are" : "this is");
	return arena_printf(a, "All sizes of the house were measured on site by %s, %s.",
		job->measured.by, job->measured.date);
}

const char *client_code(struct arena *a, const struct finding *list)
{
	int not_judged = findings_count(list, FINDING_NOT_CHECKED);
	int not_met = findings_count(list, FINDING_NOT_MET);

	if (!list)
		return "These drawings were not compared with any building code.";
	return arena_printf(a, "Compared with the figures of %s as entered: %s%s",
		list->rules->title,
		not_met ? arena_printf(a, "%d NOT MET.", not_met)
			: "none that could be compared is missed.",
		not_judged ? arena_printf(a, " %d cannot be judged from drawings.", not_judged)
			   : "");
}

int client_not_met(struct arena *a, const struct finding *list, struct note *notes, int most)
{
	int n = 0;

	for (; list && n < most; list = list->next)
		if (list->state == FINDING_NOT_MET)
			notes[n++] = (struct note){ NULL,
				arena_printf(a, "NOT MET: %s %s, asked %s (%s).", list->what,
					list->provided, list->asked, list->rule->section) };
	return n;
}
