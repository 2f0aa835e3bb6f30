#include "random/boards.h"

#include "pitchboard/list.h"

#define TINY 1e-6

static int count_in(const struct cut_board *b, const struct blank *blank)
{
	int n = 0;

	for (int i = 0; i < b->strip_count; i++)
		for (int k = 0; k < b->strips[i].piece_count; k++)
			if (b->strips[i].pieces[k].blank == blank)
				n += b->strips[i].pieces[k].count;
	return n * b->count;
}

/* Cut out of boards, or named as fitting none. */
static int count_of(const struct cut_group *groups, const struct blank *blank)
{
	int n = 0;

	for (const struct cut_group *g = groups; g; g = g->next) {
		for (int i = 0; i < g->board_count; i++)
			n += count_in(&g->boards[i], blank);
		for (int i = 0; i < g->misfit_count; i++)
			n += g->misfits[i].blank == blank ? g->misfits[i].count : 0;
	}
	return n;
}

/* How much longer than its board, or wider than its strip, what is on a strip is. */
static double over_length(const struct cut_board *b, const struct cut_strip *s, double kerf)
{
	double used = -kerf, over = 0;

	for (int i = 0; i < s->piece_count; i++) {
		const struct blank *blank = s->pieces[i].blank;
		used += s->pieces[i].count * (blank->rough_length + kerf);
		over = fmax(over, blank->rough_width - s->width);
	}
	return fmax(over, used - (b->length - 2 * b->end_trim));
}

static double over(const struct cut_board *b, double kerf)
{
	double wide = -kerf, most = 0;

	for (int i = 0; i < b->strip_count; i++) {
		wide += b->strips[i].width + kerf;
		most = fmax(most, over_length(b, &b->strips[i], kerf));
	}
	return fmax(most, wide - b->width);
}

static const char *group_wrong(struct arena *a, const struct cut_group *g, double kerf)
{
	double got = g->aim == CUT_FEWEST ? g->total : g->price + TINY;
	int total = 0;

	for (int i = 0; i < g->board_count; i++) {
		total += g->boards[i].count;
		if (over(&g->boards[i], kerf) > TINY)
			return arena_printf(a, "a board of %s is too small by %g", g->species,
				over(&g->boards[i], kerf));
	}
	if (total != g->total)
		return arena_printf(a, "%s: %d boards are %d", g->species, g->total, total);
	if (g->bound > got)
		return arena_printf(a, "%s: bound %g over %g", g->species, g->bound, got);
	return NULL;
}

const char *boards_wrong(struct arena *a, const struct stair *s, const struct part *parts)
{
	struct diags d;
	diags_init(&d, a, "random.yaml", NULL);
	const struct blank *blanks = blanks_make(a, s, parts);
	const struct cut_group *groups = cutting_make(a, s, blanks, &d);

	for (const struct blank *b = blanks; b; b = b->next)
		if (count_of(groups, b) != blank_count(b))
			return arena_printf(a, "%s %s: %d cut, %d wanted", b->part->name,
				b->part->mark, count_of(groups, b), blank_count(b));
	for (const struct cut_group *g = groups; g; g = g->next) {
		const char *wrong = group_wrong(a, g, s->job->stock.kerf);
		if (wrong)
			return wrong;
	}
	return NULL;
}
