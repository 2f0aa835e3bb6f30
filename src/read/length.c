/*
 * Reading a length as carpenters type it.
 *
 *   length   = feet [ "-" ] [ inches ]  |  inches  |  quantity metric
 *   feet     = quantity ( "'" | "ft" )
 *   inches   = quantity [ '"' | "in" ]
 *   quantity = whole [ " " | "-" ] fraction  |  fraction  |  decimal  |  whole
 *
 * Every value is an exact fraction until the very end.
 */
#include "pitchboard/length.h"

#include <stdbool.h>
#include <string.h>

#include "read/plain_text.h"
#include "read/rational.h"

enum { MOST_DIGITS = 7, MOST_DECIMALS = 4, FINEST_ON_A_RULE = 64, INCHES_A_FOOT = 12 };

enum measure_unit { UNIT_NONE, UNIT_FOOT, UNIT_INCH, UNIT_MM, UNIT_CM, UNIT_M };

struct reader {
	struct arena *arena;
	const char *typed; /* as in the file, for messages */
	const char *whole; /* the same, marks made plain */
	const char *at;    /* what of it is still to be read */
	const char *problem, *hint;
};

struct quantity {
	struct rational value;
	bool whole;    /* neither fraction nor decimals */
	bool fraction; /* with a stroke */
};

static void skip_spaces(struct reader *r)
{
	while (*r->at == ' ')
		r->at++;
}

static bool is_digit(char c)
{
	return c >= '0' && c <= '9';
}

/* The first problem is the one to mend; what follows from it is noise. */
static void complain(struct reader *r, const char *problem, const char *hint)
{
	if (r->problem)
		return;
	r->problem = problem;
	r->hint = hint;
}

static long long read_digits(struct reader *r, int most)
{
	long long n = 0;
	int digits = 0;

	for (; is_digit(*r->at); r->at++, digits++)
		if (digits < most)
			n = n * 10 + (*r->at - '0');
	if (digits > most)
		complain(r, arena_printf(r->arena, "\"%s\" has too many figures", r->typed),
			arena_printf(r->arena, "at most %d figures, and %d behind a decimal point",
				MOST_DIGITS, MOST_DECIMALS));
	return n;
}

static const char *letter_exact(struct arena *a, struct rational inches)
{
	struct lettering finest = { .units = UNITS_INCHES, .fraction = FINEST_ON_A_RULE };

	return length_letter_inches(a, finest, rational_value(inches, 254, 10));
}

/* 75/8 was probably 7 5/8 with the space left out: the longest tail of the upper figures
 * that is a proper fraction in lowest terms. */
static const char *missing_space(struct arena *a, long long over, long long under)
{
	long long tens = 10, best = 0;

	for (; tens <= over; tens *= 10)
		if (over % tens < under && over % tens % 2 == 1 && over % tens >= tens / 10)
			best = tens;
	if (!best)
		return arena_printf(a, "write %s",
			letter_exact(a, (struct rational){ over, under }));
	return arena_printf(a, "did you mean %lld %lld/%lld\"?", over / best, over % best, under);
}

static bool is_on_a_rule(long long under)
{
	return under >= 2 && under <= FINEST_ON_A_RULE && (under & (under - 1)) == 0;
}

/* 75/8 is a slip where it stands alone, 7 9/8 where it follows whole inches. */
enum fraction_place { FRACTION_ALONE, FRACTION_AFTER_INCHES };

static void check_fraction(struct reader *r, long long over, long long under,
	enum fraction_place place)
{
	struct arena *a = r->arena;

	if (under == 0)
		complain(r, arena_printf(a, "\"%s\" divides by zero", r->typed), NULL);
	else if (!is_on_a_rule(under))
		complain(r,
			arena_printf(a, "\"%s\": a rule has no division of 1/%lld", r->typed,
				under),
			"halves, quarters, eighths, 16ths, 32nds and 64ths are read; else use a "
			"decimal point");
	else if (over >= under && place == FRACTION_ALONE)
		complain(r,
			arena_printf(a, "\"%s\" was read as %s", r->typed,
				letter_exact(a, (struct rational){ over, under })),
			missing_space(a, over, under));
	else if (over >= under)
		complain(r,
			arena_printf(a, "\"%s\": the fraction %lld/%lld is not less than one",
				r->typed, over, under),
			NULL);
}

/* The lower half of a fraction, its upper half and the stroke being read. */
static struct rational read_under(struct reader *r, long long over, enum fraction_place place)
{
	if (!is_digit(*r->at)) {
		complain(r,
			arena_printf(r->arena, "\"%s\": the fraction has no lower figure",
				r->typed),
			NULL);
		return (struct rational){ 0, 1 };
	}
	long long under = read_digits(r, 3);
	check_fraction(r, over, under, place);
	return (struct rational){ over, under > 0 ? under : 1 };
}

/* Is what follows `p` a fraction? */
static bool fraction_follows(const char *p)
{
	if (!is_digit(*p))
		return false;
	while (is_digit(*p))
		p++;
	return *p == '/';
}

/* Past the space or hyphen between whole inches and their fraction. */
static const char *past_joint(const char *p)
{
	while (*p == ' ')
		p++;
	if (*p == '-')
		p++;
	while (*p == ' ')
		p++;
	return p;
}

static struct rational read_decimals(struct reader *r, long long whole)
{
	long long under = 1;

	for (const char *p = r->at; is_digit(*p) && under < 10000; p++)
		under *= 10;
	long long over = read_digits(r, MOST_DECIMALS);
	return (struct rational){ whole * under + over, under };
}

static struct quantity read_quantity(struct reader *r)
{
	long long whole = 0;

	if (*r->at != '.')
		whole = read_digits(r, MOST_DIGITS);
	if (*r->at == '/') {
		r->at++;
		return (struct quantity){ read_under(r, whole, FRACTION_ALONE), .fraction = true };
	}
	if (*r->at == '.' && is_digit(r->at[1])) {
		r->at++;
		return (struct quantity){ .value = read_decimals(r, whole) };
	}
	const char *joint = past_joint(r->at);
	if (joint == r->at || !fraction_follows(joint))
		return (struct quantity){ { whole, 1 }, .whole = true };
	r->at = joint;
	long long over = read_digits(r, 3);
	r->at++;
	struct rational part = read_under(r, over, FRACTION_AFTER_INCHES);
	part = rational_add((struct rational){ whole, 1 }, part);
	return (struct quantity){ part, .fraction = true };
}

static const struct {
	const char *word;
	enum measure_unit unit;
} unit_words[] = {
	/* longer words first where one begins another */
	{ "feet", UNIT_FOOT },
	{ "foot", UNIT_FOOT },
	{ "ft.", UNIT_FOOT },
	{ "ft", UNIT_FOOT },
	{ "inches", UNIT_INCH },
	{ "inch", UNIT_INCH },
	{ "in.", UNIT_INCH },
	{ "in", UNIT_INCH },
	{ "''", UNIT_INCH },
	{ "'", UNIT_FOOT },
	{ "\"", UNIT_INCH },
	{ "mm", UNIT_MM },
	{ "cm", UNIT_CM },
	{ "m", UNIT_M },
};

static bool is_letter(char c)
{
	return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/* Takes the unit that stands here, if one does. */
static enum measure_unit read_unit(struct reader *r)
{
	skip_spaces(r);
	for (size_t i = 0; i < sizeof(unit_words) / sizeof(unit_words[0]); i++) {
		size_t n = strlen(unit_words[i].word);
		const char *word = unit_words[i].word;
		if (strncmp(r->at, word, n) != 0)
			continue;
		if (is_letter(word[n - 1]) && is_letter(r->at[n]))
			continue;
		r->at += n;
		return unit_words[i].unit;
	}
	return UNIT_NONE;
}

static void complain_of_mixture(struct reader *r)
{
	complain(r,
		arena_printf(r->arena, "\"%s\" mixes feet or inches with metric units", r->typed),
		"one length, one system");
}

static bool is_metric(enum measure_unit unit)
{
	return unit == UNIT_MM || unit == UNIT_CM || unit == UNIT_M;
}

/* What may follow the feet: nothing, or inches below twelve. */
static struct rational read_inches_after(struct reader *r, struct quantity feet)
{
	struct rational sum = rational_times(feet.value, INCHES_A_FOOT);
	const char *next = past_joint(r->at);

	if (!is_digit(*next) && *next != '.')
		return sum;
	r->at = next;
	struct quantity inches = read_quantity(r);
	enum measure_unit unit = read_unit(r);
	if (is_metric(unit)) {
		complain_of_mixture(r);
		return sum;
	}
	if (unit == UNIT_FOOT)
		complain(r, arena_printf(r->arena, "\"%s\" gives feet twice", r->typed), NULL);
	if (!feet.whole)
		complain(r,
			arena_printf(r->arena, "\"%s\" gives inches after a part of a foot",
				r->typed),
			"write whole feet, then inches");
	sum = rational_add(sum, inches.value);
	if (inches.value.over >= INCHES_A_FOOT * inches.value.under)
		complain(r,
			arena_printf(r->arena, "\"%s\" has twelve inches or more after the feet",
				r->typed),
			"inches after feet stay under twelve: check the figures");
	return sum;
}

static double metric_value(struct rational n, enum measure_unit unit)
{
	long long mm = unit == UNIT_M ? 1000 : unit == UNIT_CM ? 10 : 1;

	return rational_value(n, mm, 1);
}

static enum measure_unit bare_unit(enum units bare)
{
	return bare == UNITS_INCHES ? UNIT_INCH : UNIT_MM;
}

static double read_measure(struct reader *r, enum units bare)
{
	struct quantity q = read_quantity(r);
	enum measure_unit unit = read_unit(r);

	if (unit == UNIT_NONE) {
		unit = bare_unit(bare);
		if (unit == UNIT_MM && q.fraction)
			complain(r,
				arena_printf(r->arena, "\"%s\" is a fraction of a millimetre",
					r->typed),
				"an inch mark is missing, or the job's units are wrong");
	}
	if (unit == UNIT_FOOT)
		return rational_value(read_inches_after(r, q), 254, 10);
	if (unit == UNIT_INCH)
		return rational_value(q.value, 254, 10);
	return metric_value(q.value, unit);
}

/* 1 /8": the figures before the space belong to the stroke. */
static const char *close_up(const struct reader *r, const char *stroke)
{
	const char *end = stroke, *over = NULL;

	while (end > r->whole && end[-1] == ' ')
		end--;
	for (over = end; over > r->whole && is_digit(over[-1]); over--)
		;
	return arena_printf(r->arena, "no space before the stroke: %.*s/%.*s\"", (int)(end - over),
		over, (int)strspn(stroke + 1, "0123456789"), stroke + 1);
}

/* What was meant by what stands behind a length. */
static const char *hint_at(const struct reader *r, const char *rest)
{
	if (is_digit(*rest))
		return "feet and inches look like 5'-6 1/2\", the inch mark behind the fraction";
	if (strncmp(rest, "//", 2) == 0)
		return "a comment begins with a space and #";
	if (*rest == '/' && is_digit(rest[1]))
		return close_up(r, rest);
	if (is_letter(*rest) && !is_digit(rest[-1]))
		return "the length alone; behind a space and # you may say what you like";
	return NULL;
}

/* A second measure after the first: two systems, or simply too much. */
static void check_rest(struct reader *r)
{
	struct arena *a = r->arena;

	skip_spaces(r);
	if (!*r->at || r->problem)
		return;
	if (*r->at == '-' && is_digit(past_joint(r->at)[0])) {
		complain(r, arena_printf(a, "\"%s\" is ambiguous", r->typed),
			"write feet and inches as 5'-6\", inches and a fraction as 5 3/4\"");
		return;
	}
	if (*r->at == ',') {
		complain(r, arena_printf(a, "\"%s\" has a comma", r->typed),
			"write a decimal point");
		return;
	}
	const char *rest = r->at;
	const char *hint = hint_at(r, rest);
	if (is_digit(*rest)) {
		read_quantity(r);
		if (!r->problem && is_metric(read_unit(r)))
			complain_of_mixture(r);
	}
	complain(r, arena_printf(a, "\"%s\": cannot read \"%s\"", r->typed, rest), hint);
}

static const char *examples(enum units bare)
{
	return bare == UNITS_INCHES ? "a length looks like 7 5/8\", 5'-6 1/2\" or 194 mm"
				    : "a length looks like 194, 19.4 cm, 2.7 m or 7 5/8\"";
}

struct length_result length_read(struct arena *a, const char *text, enum units bare)
{
	struct reader r = { .arena = a, .typed = text, .whole = plain_text(a, text) };
	double mm = 0;

	r.at = r.whole;
	skip_spaces(&r);
	if (!*r.at)
		complain(&r, "no length is given", examples(bare));
	else if (*r.at == '-' && (is_digit(r.at[1]) || r.at[1] == '.'))
		complain(&r, arena_printf(a, "\"%s\" is negative", text),
			"a length here is never below zero");
	else if (!is_digit(*r.at) && !(*r.at == '.' && is_digit(r.at[1])))
		complain(&r, arena_printf(a, "\"%s\" is not a length", text), examples(bare));
	else
		mm = read_measure(&r, bare);
	check_rest(&r);
	if (r.problem)
		return (struct length_result){ .problem = r.problem, .hint = r.hint };
	return (struct length_result){ .mm = mm };
}
