/*
 * The floors before and after a flight.  A job knows their levels and no more.
 */
#include "rules/gauge.h"

static struct reading floor_size(const struct survey *s)
{
	(void)s;
	return reading_not_possible(
		"how far the floors go on before and after the flight is not in the job");
}

static struct reading landing_on_the_way(const struct survey *s)
{
	(void)s;
	return reading_not_applicable("there is no landing between the floors");
}

const struct gauge gauges_of_landings[] = {
	{ "landing_depth", "landing, in the direction of travel", GAUGE_LENGTH, floor_size, NULL,
		"stair", NULL },
	{ "landing_width", "landing, across", GAUGE_LENGTH, floor_size, NULL, "stair", NULL },
	{ "landing_between", "landing between two flights", GAUGE_LENGTH, landing_on_the_way, NULL,
		"stair", NULL },
	{ 0 },
};
