#include "sheets/template_rod.h"

#include <string.h>

#include "sheets/template_draft.h"
#include "sheets/template_page.h"

#define HEIGHT_LEAST 22.0
#define TICK_LEAST 6.0
#define LANE (TEMPLATE_PITCH + 0.4)
#define LETTER_WIDTH (0.72 * TEMPLATE_LETTER) /* of one letter, the widest words apart */
#define BESIDE 4.0                            /* round what is lettered */

/* So many stand on a sheet of A4; above them it begins below again, where what has no room beside
 * its neighbours is told by its number. */
#define MOST_LANES 26

double rod_height(int lanes)
{
	return fmax(HEIGHT_LEAST, TICK_LEAST + lanes * LANE);
}

static const char *tick_words(const struct draft *d, const struct rod_tick *t, const char *name)
{
	return arena_printf(d->arena, "%s: %s", name,
		t->figure ? t->figure : draft_figure(d, t->at));
}

/* How far along the work the lettering beside it reaches. */
static double reach(const struct draft *d, const struct rod_tick *t)
{
	return t->at + LETTER_WIDTH * (double)strlen(tick_words(d, t, t->name)) + BESIDE;
}

/* The lane of every tick, from the far end back: over all that it runs over, and over the end. */
static int *lanes_of(const struct draft *d, const struct marking_rod *rod)
{
	int *lane = NEW_N(d->arena, int, rod->n + 1);

	for (int i = rod->n - 1; i >= 0; i--) {
		double to = reach(d, &rod->ticks[i]);
		lane[i] = to > rod->end && rod->ticks[i].at < rod->end ? 1 : 0;
		for (int k = i + 1; k < rod->n && rod->ticks[k].at < to; k++)
			lane[i] = lane[k] >= lane[i] ? lane[k] + 1 : lane[i];
	}
	for (int i = 0; i < rod->n; i++)
		lane[i] %= MOST_LANES;
	return lane;
}

static int lane_count(const int *lane, int n)
{
	int most = 0;

	for (int i = 0; i < n; i++)
		most = lane[i] > most ? lane[i] : most;
	return most + 1;
}

int rod_lanes(struct arena *a, const struct marking_rod *rod, struct lettering lettering)
{
	struct draft *d = draft_begin(a, lettering, box_empty());

	return lane_count(lanes_of(d, rod), rod->n);
}

static void draw_tick(struct draft *d, const struct rod_tick *t, int lane)
{
	struct vec top = vec(t->at, TICK_LEAST + lane * LANE);

	draft_segment(d, PEN_GUIDE, vec(t->at, 0), top);
	draft_label(d,
		(struct pattern_label){
			.at = vec_sub(top, vec(0, TEMPLATE_LETTER / 2)),
			.toward = vec(1, 0),
			.ways = { tick_words(d, t, t->name), tick_words(d, t, t->brief), t->brief },
			.side = LABEL_ON_EITHER_SIDE,
		});
}

struct pattern rod_pattern(struct arena *a, const struct marking_rod *rod,
	struct lettering lettering)
{
	double height = rod_height(rod_lanes(a, rod, lettering));
	struct draft *d =
		draft_begin(a, lettering, (struct box){ rod->start, 0, rod->end, height });
	const int *lane = lanes_of(d, rod);

	draft_segment(d, PEN_GUIDE, vec(rod->start, 0), vec(rod->end, 0));
	draft_segment(d, PEN_GUIDE, vec(rod->start, 0), vec(rod->start, height));
	draft_segment(d, PEN_GUIDE, vec(rod->end, 0), vec(rod->end, TICK_LEAST));
	for (int i = 0; i < rod->n; i++)
		draw_tick(d, &rod->ticks[i], lane[i]);
	if (rod->begins == ROD_BEGINS_RIGHT)
		draft_mirror(d);
	return d->pattern;
}
