#include "sheets/template_rod.h"

#include "sheets/template_draft.h"

static void draw_tick(struct draft *d, const struct rod_tick *t)
{
	struct arena *a = d->arena;
	const char *figure = t->figure ? t->figure : draft_figure(d, t->at);

	draft_segment(d, PEN_GUIDE, vec(t->at, 0), vec(t->at, ROD_HEIGHT / 3));
	draft_label(d,
		(struct pattern_label){
			.at = vec(t->at, ROD_HEIGHT / 3),
			.toward = vec(0, 1),
			.ways = { arena_printf(a, "%s: %s", t->name, figure),
				arena_printf(a, "%s: %s", t->brief, figure), t->brief },
		});
}

struct pattern rod_pattern(struct arena *a, const struct marking_rod *rod,
	struct lettering lettering)
{
	struct draft *d =
		draft_begin(a, lettering, (struct box){ rod->start, 0, rod->end, ROD_HEIGHT });

	draft_segment(d, PEN_GUIDE, vec(rod->start, 0), vec(rod->end, 0));
	draft_segment(d, PEN_GUIDE, vec(rod->start, 0), vec(rod->start, ROD_HEIGHT));
	draft_segment(d, PEN_GUIDE, vec(rod->end, 0), vec(rod->end, ROD_HEIGHT));
	for (int i = 0; i < rod->n; i++)
		draw_tick(d, &rod->ticks[i]);
	if (rod->begins == ROD_BEGINS_RIGHT)
		draft_mirror(d);
	return d->pattern;
}
