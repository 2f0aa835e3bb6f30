#include "rules/limits.h"

#include <stdlib.h>
#include <string.h>

static const char *read_number(struct arena *a, struct limit *l, double per)
{
	char *end;

	if (!strchr("0123456789", l->text[0]))
		return arena_printf(a, "\"%s\" is not a number", l->text);
	l->value = (double)strtol(l->text, &end, 10) * per;
	return *end ? arena_printf(a, "\"%s\" is not a whole number", l->text) : NULL;
}

static const char *read_limit(struct arena *a, struct limit *l, enum gauge_unit unit,
	enum units units)
{
	if (!limit_given(*l))
		return NULL;
	switch (unit) {
	case GAUGE_ANGLE: return read_number(a, l, PI / 180);
	case GAUGE_COUNT: return read_number(a, l, 1);
	case GAUGE_LENGTH: break;
	}
	struct length_result r = length_read(a, l->text, units);
	l->value = r.mm;
	return r.problem;
}

const char *bounds_read(struct arena *a, struct bounds *b, enum gauge_unit unit, enum units units)
{
	struct limit *const limits[] = { &b->least, &b->most, &b->above, &b->below };
	const char *problem = NULL;

	for (int i = 0; i < 4 && !problem; i++)
		problem = read_limit(a, limits[i], unit, units);
	return problem;
}

bool bounds_given(const struct bounds *b)
{
	return limit_given(b->least) || limit_given(b->most) || limit_given(b->above) ||
		limit_given(b->below);
}

bool bounds_hold(const struct bounds *b, double value)
{
	return !(limit_given(b->least) && value < b->least.value - NEAR_ENOUGH) &&
		!(limit_given(b->most) && value > b->most.value + NEAR_ENOUGH) &&
		!(limit_given(b->above) && value < b->above.value + NEAR_ENOUGH) &&
		!(limit_given(b->below) && value > b->below.value - NEAR_ENOUGH);
}

const char *value_words(struct arena *a, double value, enum gauge_unit unit, struct lettering how)
{
	switch (unit) {
	case GAUGE_ANGLE: return angle_letter(a, value);
	case GAUGE_COUNT: return arena_printf(a, "%.0f", value);
	case GAUGE_LENGTH: break;
	}
	const char *figure = length_letter_inches(a, how, value);
	return how.units == UNITS_INCHES ? figure : arena_printf(a, "%s mm", figure);
}

/* Limits lie on the graduation they were typed on, and print back so. */
static const char *words(struct arena *a, struct limit l, enum gauge_unit unit, enum units units)
{
	struct lettering how = { units, units == UNITS_INCHES ? 64 : 10, 0 };

	return value_words(a, l.value, unit, how);
}

/* From below and from above; "" where there is none. */
static const char *least_words(struct arena *a, const struct bounds *b, enum gauge_unit unit,
	enum units units)
{
	if (limit_given(b->least))
		return arena_printf(a, "at least %s", words(a, b->least, unit, units));
	if (limit_given(b->above))
		return arena_printf(a, "more than %s", words(a, b->above, unit, units));
	return "";
}

static const char *most_words(struct arena *a, const struct bounds *b, enum gauge_unit unit,
	enum units units)
{
	if (limit_given(b->most))
		return arena_printf(a, "at most %s", words(a, b->most, unit, units));
	if (limit_given(b->below))
		return arena_printf(a, "less than %s", words(a, b->below, unit, units));
	return "";
}

const char *bounds_words(struct arena *a, const struct bounds *b, enum gauge_unit unit,
	enum units units)
{
	const char *least = least_words(a, b, unit, units), *most = most_words(a, b, unit, units);

	if (limit_given(b->least) && limit_given(b->most))
		return arena_printf(a, "%s to %s", words(a, b->least, unit, units),
			words(a, b->most, unit, units));
	return arena_printf(a, "%s%s%s", least, *least && *most ? " and " : "", most);
}
