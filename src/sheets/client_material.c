/*
 * What the pieces are made of and how they are finished, as a client has chosen
 * it: a default of the program is nobody's choice, and is not passed off as one.
 */
#include <string.h>

#include "base/text.h"
#include "sheets/client.h"

static const char no_wood[] = "wood NOT CHOSEN YET", no_finish[] = "finish NOT CHOSEN YET";

/* By enum client_wood: the key of each, those that it follows where that is not written, and what
 * of it the client has to choose. */
static const struct {
	const char *keys[3], *of;
} woods[] = {
	[WOOD_TREADS] = { { "treads" }, "wood of the treads" },
	[WOOD_RISERS] = { { "risers" }, "wood of the risers" },
	[WOOD_STRINGERS] = { { "stringers" }, "wood of the stringers" },
	[WOOD_CARRIAGES] = { { "carriages", "stringers" }, NULL }, /* nobody sees them */
	[WOOD_SKIRTS] = { { "skirts", "risers" }, "wood of the skirt boards" },
	[WOOD_MOULDINGS] = { { "mouldings", "treads" }, "wood of the mouldings" },
	[WOOD_NEWELS] = { { "newels", "balustrade" }, "wood of the newel posts" },
	[WOOD_RAIL] = { { "rail", "balustrade" }, "wood of the rail" },
	[WOOD_RISER_BARS] = { { "riser_bars", "treads" }, "wood of the bars under the treads" },
	[WOOD_PANELS] = { { "panels", "balusters", "balustrade" }, "what the panels are of" },
	[WOOD_BALUSTERS] = { { "balusters", "balustrade" }, "wood of what stands under the rail" },
};

enum { WOODS = sizeof(woods) / sizeof(*woods) };

static bool is_chosen(const struct job *job, enum client_wood wood)
{
	for (int i = 0; i < 3; i++)
		if (woods[wood].keys[i] && node_has(job->material.src, woods[wood].keys[i]))
			return true;
	return false;
}

static const char *name_of(const struct job *job, enum client_wood wood)
{
	const struct job_material *m = &job->material;

	switch (wood) {
	case WOOD_TREADS: return m->treads;
	case WOOD_RISERS: return m->risers;
	case WOOD_STRINGERS: return m->stringers;
	case WOOD_CARRIAGES: return m->carriages;
	case WOOD_SKIRTS: return m->skirts;
	case WOOD_MOULDINGS: return m->mouldings;
	case WOOD_NEWELS: return m->newels;
	case WOOD_RAIL: return m->rail;
	case WOOD_RISER_BARS: return m->riser_bars;
	case WOOD_PANELS: return m->panels;
	case WOOD_BALUSTERS: return m->balusters;
	}
	return "";
}

/* A name may say how it is finished: "poplar, painted". */
static const char *own_finish(const char *name)
{
	const char *comma = strchr(name, ',');

	return comma ? comma + 1 + strspn(comma + 1, " ") : NULL;
}

const char *client_wood_words(struct arena *a, const struct job *job, enum client_wood wood)
{
	const char *name = name_of(job, wood);

	if (!is_chosen(job, wood))
		return woods[wood].of ? no_wood : name;
	return arena_strndup(a, name, strcspn(name, ","));
}

const char *client_finish_words(const struct job *job, enum client_wood wood)
{
	const char *own = own_finish(name_of(job, wood));

	if (!woods[wood].of)
		return "";
	if (own && is_chosen(job, wood))
		return own;
	return node_has(job->material.src, "finish") ? job->material.finish : no_finish;
}

const char *client_still_to_choose(struct arena *a, const struct job *job, unsigned used)
{
	struct text list = { .arena = a };

	for (int i = 0; i < WOODS; i++)
		if (used & 1U << i && woods[i].of && !is_chosen(job, (enum client_wood)i))
			text_join(&list, ", ", woods[i].of);
	if (!node_has(job->material.src, "finish"))
		text_join(&list, ", ", "finish");
	return text_chars(&list);
}
