/*
 * The flight as a whole.
 */
#include "rules/mend.h"

static struct reading flight_rise(const struct survey *s)
{
	return reading_of(s->stair->total_rise, "floor to floor");
}

static struct reading flight_risers(const struct survey *s)
{
	return reading_of(s->flight->risers, "the flight");
}

static struct reading winders(const struct survey *s)
{
	(void)s;
	return reading_not_applicable("there are no winders in this stair");
}

static struct mend mend_rise(const struct survey *s, struct shortfall f)
{
	return mend_said(arena_printf(s->arena,
		"a landing on the way up, no more than %s above a floor", survey_say(s, f.limit)));
}

static struct mend mend_risers(const struct survey *s, struct shortfall f)
{
	return mend_said(f.by > 0 ? NULL
				  : arena_printf(s->arena, "a landing after %d risers at most",
					    (int)f.limit));
}

const struct gauge gauges_of_flight[] = {
	{ "flight_rise", "rise of the flight", GAUGE_LENGTH, flight_rise, mend_rise,
		"floors.total_rise" },
	{ "flight_risers", "risers in the flight", GAUGE_COUNT, flight_risers, mend_risers,
		"stair.segments[1].risers" },
	{ "winder_depth", "depth of winders on the walking line", GAUGE_LENGTH, winders, NULL,
		"stair.segments[1].kind" },
	{ "winder_narrow", "narrow end of winders", GAUGE_LENGTH, winders, NULL,
		"stair.segments[1].kind" },
	{ "winder_difference", "largest difference of winders", GAUGE_LENGTH, winders, NULL,
		"stair.segments[1].kind" },
	{ "winder_angle", "turn of each winder", GAUGE_ANGLE, winders, NULL,
		"stair.segments[1].kind" },
	{ 0 },
};
