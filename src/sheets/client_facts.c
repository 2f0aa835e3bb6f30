#include "sheets/client_facts.h"

#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "sheets/client_when.h"

enum { NO_WOOD = -1, UNSEEN = -2 }; /* unseen are rough carriages: they get no finish */

/* Words with values in braces: of a key, as its table says it, or of one of the words below.  A #
 * is the number of the entry where a row stands for a list. */
static const struct fact_row {
	const char *label, *words;
	int wood; /* of enum client_wood; or one of the two below */
	int (*times)(const struct sheet_context *c); /* NULL: once */
} rows[] = {
	{ "Treads", "{=wood}, {treads.thickness} thick", WOOD_TREADS, NULL },
	{ "Edge of the treads",
		"{treads.nosing_profile}; each tread overhangs the step below by {treads.nosing}",
		NO_WOOD, NULL },
	{ "First step", "its {treads.starting_step.ends} rounded", NO_WOOD, when_first_step_round },
	{ "Treads cut out", "{=cutouts}: round the wall that stands out there", NO_WOOD,
		when_cut_out },
	{ "Moulding under the edge", "{=wood}, {mouldings.under_nosing}", WOOD_MOULDINGS,
		when_moulding },
	{ "Risers", "closed: {=wood}", WOOD_RISERS, when_risers },
	{ "Risers", "open: you can see between the steps", NO_WOOD, when_open_risers },
	{ "Bar under each tread", "{=wood}, {risers.bar} high", WOOD_RISER_BARS, when_riser_bars },
	{ "Stringers at walls", "{=wood}, under the steps, not seen from above", UNSEEN,
		when_rough_wall },
	{ "Stringers at walls", "{=wood}, straight; the step ends are hidden in them",
		WOOD_STRINGERS, when_housed_wall },
	{ "Stringers, open side", "{=wood}, cut to follow the steps, seen from the side",
		WOOD_STRINGERS, when_sawtooth },
	{ "Stringers, open side",
		"{material.stringers}, cut to follow the steps, behind a skirt board", UNSEEN,
		when_skirted },
	{ "Stringers, open side",
		"{=wood}, cut to follow the steps, mitred with the risers, seen from the side",
		WOOD_STRINGERS, when_mitred },
	{ "Stringers, open side", "{=wood}, straight; the step ends are hidden in them",
		WOOD_STRINGERS, when_housed },
	{ "Skirt boards on walls", "{=wood}, {skirts.wall}", WOOD_SKIRTS, when_wall_skirt },
	{ "Skirt board, open side", "{=wood}, cut to follow the steps", WOOD_SKIRTS, when_skirted },
	{ "Rail", "{=wood}, {=rail}", WOOD_RAIL, when_rail },
	{ "Height of the rail", "{rail.height} over the edges of the treads", NO_WOOD,
		when_raked_rail },
	{ "Guard upstairs {=guard_number}",
		"{rail.level_runs[#].height} high over the floor, {=wood}, {=infill}", WOOD_RAIL,
		when_guard },
	{ "Wall rail, {wall_rails[#].side}{=wall_from}",
		"{=wood}, {=wall_rail}, on brackets; its top {wall_rails[#].height} over the edges "
		"of the treads",
		WOOD_RAIL, when_wall_rail },
	{ "Newel posts", "{=wood}, {newels.section} square, {newels.build}", WOOD_NEWELS,
		when_newels },
	{ "Caps of the newels", "{=cap}; standing out {newels.cap.overhang} all round", WOOD_NEWELS,
		when_caps },
	{ "Balusters", "{=wood}, {balusters.shape}, {balusters.section}, {=spacing}{=braced}",
		WOOD_BALUSTERS, when_balusters },
	{ "Bars",
		"{=wood}, {infill.bar_width} x {infill.bar_thickness}, along the slope, {=spacing}",
		WOOD_BALUSTERS, when_bars },
	{ "Panels", "{=wood}, {infill.panel_thickness} thick", WOOD_PANELS, when_panels },
};

enum { ROWS = sizeof(rows) / sizeof(*rows) };

/* ---- values in the client's words ---- */

static const struct {
	const char *key, *word, *says;
} plain[] = {
	{ "treads.nosing_profile", "eased", "slightly rounded" },
	{ "treads.nosing_profile", "full round", "fully rounded" },
	{ "treads.nosing_profile", "half round", "rounded above, square below" },
	{ "treads.nosing_profile", "chamfer", "bevelled" },
	{ "treads.starting_step.ends", "left", "left end" },
	{ "treads.starting_step.ends", "right", "right end" },
	{ "treads.starting_step.ends", "both", "two ends" },
	{ "skirts.wall", "cut round", "cut to follow the steps" },
	{ "skirts.wall", "plain", "straight; the steps end against them" },
	{ "newels.build", "glued", "glued up from layers" },
};

static const char *plain_value(struct arena *a, const struct job *job, const char *key)
{
	const char *word = job_value_words(a, job, key);

	for (size_t i = 0; i < sizeof(plain) / sizeof(*plain); i++)
		if (strcmp(plain[i].key, key) == 0 && strcmp(plain[i].word, word) == 0)
			return plain[i].says;
	return word;
}

/* A row being filled in. */
struct filling {
	struct arena *arena;
	const struct sheet_context *context;
	const struct fact_row *row;
	int entry; /* of a list, counted from 1 */
};

static const char *say_length(const struct filling *f, double mm)
{
	return length_say(f->arena, job_lettering(f->context->stair->job), mm);
}

static const char *say_wood(const struct filling *f)
{
	int wood = f->row->wood == UNSEEN ? WOOD_CARRIAGES : f->row->wood;

	return client_wood_words(f->arena, f->context->stair->job, (enum client_wood)wood);
}

/* Round, where it is as deep as wide; a round one with a flat below only has rounded sides. */
static const char *say_profile(const struct filling *f, enum rail_profile_kind profile,
	const char *words, double width, double depth)
{
	if (profile != PROFILE_ROUND)
		return arena_printf(f->arena, "%s, %s x %s", words, say_length(f, width),
			say_length(f, depth));
	if (near_enough(width, depth))
		return arena_printf(f->arena, "round, %s thick", say_length(f, width));
	return arena_printf(f->arena, "rounded, flat below, %s wide, %s deep", say_length(f, width),
		say_length(f, depth));
}

static const char *say_rail(const struct filling *f)
{
	const struct job_rail *r = &f->context->stair->job->rail;

	return say_profile(f, r->profile,
		job_value_words(f->arena, f->context->stair->job, "rail.profile"), r->width,
		r->depth);
}

static const char *say_wall_rail(const struct filling *f)
{
	const struct job *job = f->context->stair->job;
	const struct job_wall_rail *w = &job->wall_rails[f->entry - 1];
	const char *key = node_has(w->src, "profile")
		? arena_printf(f->arena, "wall_rails[%d].profile", f->entry)
		: "rail.profile";

	return say_profile(f, w->profile, job_value_words(f->arena, job, key), w->width, w->depth);
}

static const char *say_wall_from(const struct filling *f)
{
	const struct job_wall_rail *w = &f->context->stair->job->wall_rails[f->entry - 1];
	const char *to = w->to_step > 0 ? arena_printf(f->arena, " to %d", w->to_step) : "";

	return w->from_step > 1 || *to
		? arena_printf(f->arena, ", from step %d%s", w->from_step, to)
		: "";
}

/* Guards of one height are one row. */
static const char *say_guard_number(const struct filling *f)
{
	return when_guard(f->context) > 1 ? arena_printf(f->arena, "%d", f->entry) : "";
}

static const char *say_infill(const struct filling *f)
{
	switch (f->context->stair->job->infill.kind) {
	case INFILL_PLAIN: return "balusters";
	case INFILL_BRACED: return "balusters joined by cross pieces";
	case INFILL_BARS: return "bars";
	case INFILL_PANEL: return "panels";
	}
	return "";
}

static const char *say_spacing(const struct filling *f)
{
	const struct job *job = f->context->stair->job;

	if (job->infill.kind != INFILL_BARS && job->balusters.per_tread > 0)
		return arena_printf(f->arena, "%d on each tread", job->balusters.per_tread);
	if (job->infill.kind == INFILL_BARS && job->infill.bars > 0)
		return arena_printf(f->arena, "%d of them", job->infill.bars);
	return arena_printf(f->arena, "at most %s apart",
		say_length(f, job->balusters.largest_gap));
}

static const char *say_braced(const struct filling *f)
{
	return f->context->stair->job->infill.kind == INFILL_BRACED
		? "; those of a tread joined by cross pieces"
		: "";
}

/* Its shape, as seen from the floor: by the height to the point, or by the slope. */
static const char *say_pyramid(const struct filling *f, const struct job_newel_cap *cap)
{
	const char *steep = cap->rise > 0
		? arena_printf(f->arena, "%s high to its point", say_length(f, cap->rise))
		: arena_printf(f->arena, "sloping %s",
			  angle_letter(f->arena, cap->slope_degrees * PI / 180));

	return arena_printf(f->arena, "pyramid, %s, %s", steep,
		cap->build == CAP_MITRED ? "of four pieces mitred together" : "from one piece");
}

static const char *say_cap(const struct filling *f)
{
	const struct job_newel_cap *cap = &f->context->stair->job->newels.cap;

	switch (cap->kind) {
	case CAP_NONE: return "";
	case CAP_FLAT: return "flat";
	case CAP_CHAMFERED: return "flat, its edge bevelled";
	case CAP_PYRAMID: break;
	}
	return say_pyramid(f, cap);
}

/* A chimney breast passes more steps than the one it is given from. */
static bool passes_steps(const struct stair *s, const struct job_notch *n)
{
	double depth = s->job->treads.nosing + s->flights[0].unit_run;

	return n->at != NOTCH_BACK && n->from + n->across > depth + NEAR_ENOUGH;
}

static const char *say_cutouts(const struct filling *f)
{
	static const char *const places
		[] = { [NOTCH_LEFT] = "left", [NOTCH_RIGHT] = "right", [NOTCH_BACK] = "back" };
	const struct job_treads *t = &f->context->stair->job->treads;
	struct text list = { .arena = f->arena };

	for (int i = 0; i < t->notch_count; i++)
		text_join(&list, "; ",
			arena_printf(f->arena, "%s %d%s, at the %s",
				passes_steps(f->context->stair, &t->notches[i]) ? "from step"
										: "step",
				t->notches[i].step,
				passes_steps(f->context->stair, &t->notches[i]) ? " on" : "",
				places[t->notches[i].at]));
	return text_chars(&list);
}

static const char *value_words(const struct filling *f, const char *name)
{
	static const struct {
		const char *name;
		const char *(*say)(const struct filling *f);
	} words[] = {
		{ "=wood", say_wood },
		{ "=rail", say_rail },
		{ "=wall_rail", say_wall_rail },
		{ "=wall_from", say_wall_from },
		{ "=guard_number", say_guard_number },
		{ "=infill", say_infill },
		{ "=spacing", say_spacing },
		{ "=braced", say_braced },
		{ "=cap", say_cap },
		{ "=cutouts", say_cutouts },
	};

	for (size_t i = 0; i < sizeof(words) / sizeof(*words); i++)
		if (strcmp(words[i].name, name) == 0)
			return words[i].say(f);
	return plain_value(f->arena, f->context->stair->job, name);
}

/* The key with the entry's number in place of #. */
static const char *numbered(const struct filling *f, const char *key, size_t length)
{
	const char *name = arena_strndup(f->arena, key, length), *hash = strchr(name, '#');

	if (!hash)
		return name;
	return arena_printf(f->arena, "%.*s%d%s", (int)(hash - name), name, f->entry, hash + 1);
}

static const char *fill(const struct filling *f, const char *words)
{
	struct text t = { .arena = f->arena };

	while (*words) {
		size_t plain_length = strcspn(words, "{");
		text_add(&t, "%.*s", (int)plain_length, words);
		words += plain_length;
		if (!*words)
			break;
		size_t key = strcspn(words, "}");
		text_put(&t, value_words(f, numbered(f, words + 1, key - 1)));
		words += key + 1;
	}
	while (t.length && t.chars[t.length - 1] == ' ')
		t.chars[--t.length] = '\0';
	return text_chars(&t);
}

/* ---- the facts ---- */

static const char *finish_of(const struct filling *f)
{
	switch (f->row->wood) {
	case NO_WOOD: return "";
	case UNSEEN: return "none";
	default: return client_finish_words(f->context->stair->job, (enum client_wood)f->row->wood);
	}
}

static void add(struct fact *facts, int *n, struct fact f)
{
	if (*n < MOST_FACTS && *f.words)
		facts[(*n)++] = f;
}

static void add_sizes(struct arena *a, const struct sheet_context *c, struct fact *facts, int *n)
{
	const struct stair *s = c->stair;
	const struct lettering how = job_lettering(s->job);
	const struct {
		const char *label;
		double mm;
	} sizes[] = {
		{ "Floor to floor", s->total_rise },
		{ "Each step rises", s->unit_rise },
		{ "Each step brings you forward", s->flights[0].unit_run },
		{ "Length of the flight", s->flights[0].total_run },
		{ "Width", s->width },
		{ "Least headroom",
			s->headroom.state == HEADROOM_NOT_CHECKED ? 0 : s->headroom.least },
	};

	add(facts, n, (struct fact){ "Steps", arena_printf(a, "%d", s->risers), "", false });
	for (size_t i = 0; i < sizeof(sizes) / sizeof(*sizes); i++)
		if (sizes[i].mm > 0)
			add(facts, n,
				(struct fact){ sizes[i].label, length_say(a, how, sizes[i].mm), "",
					false });
}

int client_facts(struct arena *a, const struct sheet_context *c, struct fact facts[MOST_FACTS])
{
	int n = 0;

	add_sizes(a, c, facts, &n);
	for (int i = 0; i < ROWS; i++) {
		int times = rows[i].times ? rows[i].times(c) : 1;
		for (int entry = 1; entry <= times; entry++) {
			struct filling f = { a, c, &rows[i], entry };
			add(facts, &n,
				(struct fact){ fill(&f, rows[i].label), fill(&f, rows[i].words),
					finish_of(&f), true });
		}
	}
	return n;
}

unsigned client_woods(const struct sheet_context *c)
{
	unsigned woods = 0;

	for (int i = 0; i < ROWS; i++)
		if (rows[i].wood >= 0 && (!rows[i].times || rows[i].times(c)))
			woods |= 1U << rows[i].wood;
	return woods;
}

int client_facts_before(struct arena *a, const struct sheet_context *c,
	struct fact facts[MOST_FACTS])
{
	struct sheet_context before = *c;

	if (!c->was.parts)
		return 0;
	before.stair = c->was.stair;
	before.parts = c->was.parts;
	return client_facts(a, &before, facts);
}

const struct fact *client_fact_before(const struct fact *was, int n, const struct fact *f)
{
	for (int i = 0; i < n; i++)
		if (strcmp(was[i].label, f->label) == 0)
			return &was[i];
	return NULL;
}

bool client_fact_differs(const struct fact *was, const struct fact *f)
{
	return !was || strcmp(was->words, f->words) != 0 || strcmp(was->finish, f->finish) != 0;
}
