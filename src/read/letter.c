/*
 * Writing lengths as they are read on a drawing.
 */
#include <stdbool.h>
#include <stdlib.h>

#include "pitchboard/length.h"
#include "pitchboard/vec.h"

enum { INCHES_A_FOOT = 12, TENTHS = 10 };

/* A length as a whole count of equal parts. */
struct parts {
	long long n;
	int of; /* parts in one inch, or in one millimetre */
};

static double unit_mm(enum units units)
{
	return units == UNITS_INCHES ? MM_PER_INCH : 1;
}

static bool lies_on(enum units units, int graduation, double mm)
{
	double step = unit_mm(units) / graduation;

	return fabs((double)llround(mm / step) * step - mm) < NEAR_ENOUGH;
}

int length_graduation(enum units units, double mm)
{
	static const int inches[] = { 1, 2, 4, 8, 16, 32, 64, 0 };
	static const int millimetres[] = { 1, 2, 10, 0 };

	for (const int *g = units == UNITS_INCHES ? inches : millimetres; *g; g++)
		if (lies_on(units, *g, mm))
			return *g;
	return 1;
}

/* The finest graduation when the value lies on it, else the job's own: what was typed
 * comes back as typed, what was computed is rounded. */
static struct parts round_to_parts(struct lettering how, double mm)
{
	int own = how.fraction > 0 ? how.fraction : how.units == UNITS_INCHES ? 16 : 1;
	bool is_exact = how.finest > own && lies_on(how.units, how.finest, mm);
	int of = is_exact ? how.finest : own;

	return (struct parts){ llround(mm / unit_mm(how.units) * of), of };
}

static struct parts lowest_terms(struct parts p)
{
	while (p.of > 1 && p.n % 2 == 0) {
		p.n /= 2;
		p.of /= 2;
	}
	return p;
}

/* 7 5/8, 5/8, 7, 0 */
static const char *letter_mixed(struct arena *a, struct parts p)
{
	p = lowest_terms(p);
	long long whole = p.n / p.of, rest = p.n % p.of;

	if (rest == 0)
		return arena_printf(a, "%lld", whole);
	if (whole == 0)
		return arena_printf(a, "%lld/%d", rest, p.of);
	return arena_printf(a, "%lld %lld/%d", whole, rest, p.of);
}

static const char *letter_millimetres(struct arena *a, const char *sign, struct parts p)
{
	long long tenths = p.n * TENTHS / p.of;

	if (tenths % TENTHS == 0)
		return arena_printf(a, "%s%lld", sign, tenths / TENTHS);
	return arena_printf(a, "%s%lld.%lld", sign, tenths / TENTHS, tenths % TENTHS);
}

static const char *letter_feet(struct arena *a, const char *sign, struct parts p)
{
	long long foot = (long long)p.of * INCHES_A_FOOT;
	struct parts inches = { p.n % foot, p.of };

	/* 5'-0 1/2", so that nobody reads the stroke of the fraction as feet. */
	const char *zero = inches.n > 0 && inches.n < p.of ? "0 " : "";
	return arena_printf(a, "%s%lld'-%s%s\"", sign, p.n / foot, zero, letter_mixed(a, inches));
}

enum feet { FEET_FROM_TWELVE, FEET_NEVER };

static const char *letter(struct arena *a, struct lettering how, enum feet feet, double mm)
{
	struct parts p = round_to_parts(how, fabs(mm));
	const char *sign = mm < 0 && p.n > 0 ? "-" : "";

	if (how.units == UNITS_MILLIMETRES)
		return letter_millimetres(a, sign, p);
	if (feet == FEET_FROM_TWELVE && p.n >= (long long)p.of * INCHES_A_FOOT)
		return letter_feet(a, sign, p);
	return arena_printf(a, "%s%s\"", sign, letter_mixed(a, p));
}

const char *length_letter(struct arena *a, struct lettering how, double mm)
{
	return letter(a, how, FEET_FROM_TWELVE, mm);
}

const char *length_letter_inches(struct arena *a, struct lettering how, double mm)
{
	return letter(a, how, FEET_NEVER, mm);
}

double length_lettered_value(struct lettering how, double mm)
{
	struct parts p = round_to_parts(how, mm);

	return (double)p.n * unit_mm(how.units) / p.of;
}

double length_on_graduation(struct lettering how, double mm, int way)
{
	double step = unit_mm(how.units) / how.fraction, steps = mm / step;

	return step * (way > 0 ? ceil(steps - 1e-6) : floor(steps + 1e-6));
}

const char *angle_letter(struct arena *a, double radians)
{
	long long tenths = llround(radians * 1800 / PI);

	return arena_printf(a, "%s%lld.%lld\u00b0", tenths < 0 ? "-" : "", llabs(tenths) / 10,
		llabs(tenths) % 10);
}
