#include "sheets/compose.h"

#include "draw/bounds.h"

/* Scales of an architect's rule in the US, and ISO 5455's reductions (both from memory); 1:25 is
 * not in ISO 5455 but common practice for stairs on small metric sheets. */
static const double imperial_ratios[] = { 1, 2, 4, 8, 12, 16, 24, 32, 48, 64, 96, 192, 0 };
static const double metric_ratios[] = { 1, 2, 5, 10, 20, 25, 50, 100, 200, 0 };

const double *sheet_ratios(const struct sheet_context *c)
{
	bool inches = c->stair->job->about.units == UNITS_INCHES;

	switch (c->paper->scales) {
	case SCALES_OF_JOB: return inches ? imperial_ratios : metric_ratios;
	case SCALES_IMPERIAL: return imperial_ratios;
	case SCALES_METRIC: return metric_ratios;
	}
	return metric_ratios;
}

static bool fits(struct box b, struct box room)
{
	return box_width(b) <= box_width(room) + NEAR_ENOUGH &&
		box_height(b) <= box_height(room) + NEAR_ENOUGH;
}

static struct vec settle(struct box took, struct box room, enum setting setting)
{
	struct vec left_top = vec(room.x0 - took.x0, room.y1 - took.y1);
	double spare_x = box_width(room) - box_width(took);
	double spare_y = box_height(room) - box_height(took);

	switch (setting) {
	case SET_TOP_LEFT: return left_top;
	case SET_TOP: return vec_add(left_top, vec(spare_x / 2, 0));
	case SET_CENTRED: return vec_add(left_top, vec(spare_x / 2, -spare_y / 2));
	case SET_BOTTOM_LEFT: return vec_add(left_top, vec(0, -spare_y));
	}
	return left_top;
}

/* Letter and A4, lying. */
#define SMALL_PAPER 220.0

bool sheet_is_cramped(const struct sheet *s)
{
	return s->drawing->runs_over || s->context->paper->height <= SMALL_PAPER;
}

struct composed sheet_compose(struct sheet *s, struct composition c, struct box room,
	enum setting setting)
{
	struct drawing *sheet = s->drawing;
	const double *ratio = sheet_ratios(s->context);
	struct sheet trial = *s;
	struct box took;

	while (ratio[1] != 0 &&
		(*ratio < c.least_ratio || !fits(box_scale(c.model, 1 / *ratio), room)))
		ratio++;
	for (;; ratio++) {
		trial.drawing = drawing_new(sheet->arena, sheet->use, sheet->width, sheet->height);
		trial.drawing->pens = sheet->pens;
		trial.hand.g = trial.drawing;
		took = c.compose(&trial, c.what, 1 / *ratio);
		if (fits(took, room) || ratio[1] == 0)
			break;
	}
	if (!fits(took, room)) {
		sheet->runs_over = true;
		sheet->is_too_small |= !fits(box_scale(c.model, 1 / *ratio), room);
	}
	sheet->is_crowded |= trial.drawing->is_crowded;
	struct vec by = settle(took, room, setting);
	drawing_take(sheet, trial.drawing, by);
	return (struct composed){ *ratio,
		{ took.x0 + by.x, took.y0 + by.y, took.x1 + by.x, took.y1 + by.y } };
}
