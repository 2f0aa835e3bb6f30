#include "random/drawn.h"

#include "draw/view.h"

static struct vec view_size(struct arena *a, const struct part *parts, enum view_from from)
{
	struct box b = view_make(a, parts, (struct view_spec){ .from = from }).box;
	return vec(b.x1 - b.x0, b.y1 - b.y0);
}

/* What two views both show must be equally large in both. */
static const char *differ(struct arena *a, const char *what, double one, double other)
{
	if (fabs(one - other) < 1e-6)
		return NULL;
	return arena_printf(a, "%s: %.6f and %.6f", what, one, other);
}

const char *views_disagree(struct arena *a, const struct part *parts)
{
	struct vec plan = view_size(a, parts, VIEW_PLAN), front = view_size(a, parts, VIEW_FRONT);
	struct vec right = view_size(a, parts, VIEW_FROM_RIGHT);
	struct vec left = view_size(a, parts, VIEW_FROM_LEFT);
	const char *why = differ(a, "length in plan and from the right", plan.x, right.x);
	if (!why)
		why = differ(a, "length from either side", right.x, left.x);
	if (!why)
		why = differ(a, "height from the right and from the front", right.y, front.y);
	return why ? why : differ(a, "width in plan and from the front", plan.y, front.x);
}

const char *sheets_fault(struct arena *a, const struct stair *s, const struct part *parts,
	const struct shop *shop, const char *set, struct diags *d)
{
	const struct drawing *g = sheets_draw(a, s, parts,
		(struct issue){ .set = set,
			.findings =
				code_check(a, s, parts, rules_read(a, "templates", s->job, d), d) },
		shop->stationery, shop->measure, d);
	const char *report = "";
	if (!g)
		return arena_printf(a, "not drawn: %s", d->first ? d->first->text : "no reason");
	for (; g; g = g->next) {
		if (g->runs_over)
			return arena_printf(a, "%s %s: runs over its frame", g->id, g->title);
		if (drawing_faults(a, g, shop->measure, &report))
			return arena_printf(a, "%s %s: %s", g->id, g->title, report);
	}
	return NULL;
}
