#include "read/value.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "read/place.h"
#include "read/suggest.h"

enum { USUAL_CHARACTERS = 80 };

static void complain(struct value v, const char *hint, const char *what)
{
	diag_error(v.reader->diags, node_place(v.node), hint, "%s: %s", v.path, what);
}

/* A single value, or a complaint and NULL. */
static const char *plain_value(struct value v)
{
	struct arena *a = v.reader->arena;
	const struct node *n = v.node;

	if (n->kind == NODE_REFUSED)
		return NULL;
	if (n->kind != NODE_TEXT)
		complain(v, v.field->help,
			n->kind == NODE_LIST ? "one value is expected, not a list"
					     : "one value is expected, not further keys");
	else if (n->comment)
		complain(v,
			arena_printf(a, "\"%s\" looks like a comment; quote it: '%s'", n->comment,
				n->comment),
			"has no value");
	else if (!*n->text)
		complain(v, "give a value, or delete the line", "has no value");
	else if (n->lines > 1)
		complain(v, "it was joined with the next line: check the indentation there",
			arena_printf(a, "\"%s\" runs over two lines", n->text));
	else
		return n->text;
	return NULL;
}

static int characters(const char *text)
{
	int n = 0;

	for (; *text; text = next_character(text))
		n++;
	return n;
}

static bool has_control(const char *text)
{
	for (; *text; text++)
		if ((unsigned char)*text < ' ' || *text == 0x7f)
			return true;
	return false;
}

const char *value_text(struct value v)
{
	const struct node *n = v.node;
	int most = v.field->most > 0 ? (int)v.field->most : USUAL_CHARACTERS;

	/* `client:` with nothing behind it is a form not filled in. */
	if (n->kind == NODE_TEXT && !*n->text && !n->comment && !v.field->required)
		return "";
	if (n->kind != NODE_TEXT || !*n->text) {
		plain_value(v);
		return "";
	}
	if (has_control(n->text))
		complain(v, NULL, "a text stays on one line, without control characters");
	else if (characters(n->text) > most)
		complain(v, NULL,
			arena_printf(v.reader->arena, "at most %d characters fit, these are %d",
				most, characters(n->text)));
	else
		return n->text;
	return "";
}

static int days_in(int year, int month)
{
	static const int days[] = { 31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31 };
	bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;

	return month == 2 && leap ? 29 : days[month - 1];
}

static bool is_figure(char c)
{
	return c >= '0' && c <= '9';
}

static bool is_date(const char *s)
{
	static const char form[] = "0000-00-00";

	if (strlen(s) != strlen(form))
		return false;
	for (int i = 0; form[i]; i++)
		if (form[i] == '0' ? !is_figure(s[i]) : s[i] != '-')
			return false;
	int year = atoi(s), month = atoi(s + 5), day = atoi(s + 8);
	return year > 0 && month >= 1 && month <= 12 && day >= 1 && day <= days_in(year, month);
}

const char *value_date(struct value v)
{
	const char *text = plain_value(v);

	if (!text)
		return "";
	if (is_date(text))
		return text;
	complain(v, "a date looks like 2026-11-02: year, month, day",
		arena_printf(v.reader->arena, "\"%s\" is not a date", text));
	return "";
}

/* To the millimetre or the sixteenth, or as fine as it was typed. */
static const char *letter(const struct field_reader *r, double mm)
{
	struct lettering how = { r->units, r->units == UNITS_INCHES ? 16 : 1,
		length_graduation(r->units, mm) };
	const char *figure = length_letter(r->arena, how, mm);

	return r->units == UNITS_INCHES ? figure : arena_printf(r->arena, "%s mm", figure);
}

/* The tables hold bounds in millimetres; in inches the nearest handy figure inside them. */
static const char *letter_bound(const struct field_reader *r, double mm,
	double (*inward)(double value))
{
	double step = mm > 6 * MM_PER_INCH ? MM_PER_INCH : MM_PER_INCH / 8;

	return letter(r, r->units == UNITS_INCHES ? inward(mm / step) * step : mm);
}

static bool is_within(const struct field *f, double value)
{
	return value >= f->least && (f->most <= 0 || value <= f->most);
}

/* 2743 in a job of inches was meant in millimetres, and the reverse. */
static const char *other_unit(struct value v, const char *text)
{
	struct arena *a = v.reader->arena;
	enum units own = v.reader->units;
	enum units other = own == UNITS_INCHES ? UNITS_MILLIMETRES : UNITS_INCHES;
	struct length_result r = length_read(a, text, other);

	if (r.problem || !is_within(v.field, r.mm))
		return NULL;
	return arena_printf(a, "did you mean %s%s", text, other == UNITS_INCHES ? "\"?" : " mm?");
}

/* 1 1/8' was meant in inches. */
static const char *feet_for_inches(struct value v, const char *text)
{
	struct arena *a = v.reader->arena;
	size_t n = strlen(text);

	if (n == 0 || text[n - 1] != '\'')
		return NULL;
	const char *inches = arena_printf(a, "%.*s\"", (int)n - 1, text);
	struct length_result r = length_read(a, inches, UNITS_INCHES);
	if (r.problem || !is_within(v.field, r.mm))
		return NULL;
	return arena_printf(a, "%s is feet; did you mean %s?", text, inches);
}

static void complain_of_range(struct value v, const char *text, double mm)
{
	const struct field_reader *r = v.reader;
	const struct field *f = v.field;
	const char *least = letter_bound(r, f->least, ceil);
	const char *most = letter_bound(r, f->most, floor);
	const char *bounds = arena_printf(r->arena, "between %s and %s", least, most);

	if (f->least <= 0)
		bounds = arena_printf(r->arena, "at most %s", most);
	if (f->most <= 0)
		bounds = arena_printf(r->arena, "at least %s", least);
	const char *feet = feet_for_inches(v, text);
	complain(v, feet ? feet : other_unit(v, text),
		arena_printf(r->arena, "\"%s\" was read as %s; it must be %s", text, letter(r, mm),
			bounds));
}

double value_length(struct value v)
{
	const char *text = plain_value(v);

	if (!text)
		return 0;
	struct length_result r = length_read(v.reader->arena, text, v.reader->units);
	if (r.problem) {
		complain(v, r.hint, r.problem);
		return 0;
	}
	if (!is_within(v.field, r.mm)) {
		complain_of_range(v, text, r.mm);
		return 0;
	}
	int graduation = length_graduation(v.reader->units, r.mm);
	if (graduation > *v.reader->finest)
		*v.reader->finest = graduation;
	return r.mm;
}

/* Figures and at most one point: no sign, exponent, nan or hexadecimal. */
static bool is_decimal(const char *s, int most_points)
{
	int figures = 0, points = 0;

	for (; *s; s++) {
		figures += is_figure(*s);
		points += *s == '.';
		if (!is_figure(*s) && *s != '.')
			return false;
	}
	return figures > 0 && figures < 10 && points <= most_points;
}

/* What is_decimal() passed: so few figures that the quotient is exact.  strtod() would look to the
 * locale for what a point is. */
static double decimal_of(const char *s)
{
	double figures = 0, under = 1;

	for (bool behind = false; *s; s++) {
		behind = behind || *s == '.';
		if (*s == '.')
			continue;
		figures = figures * 10 + (*s - '0');
		under *= behind ? 10 : 1;
	}
	return figures / under;
}

static void complain_of_bounds(struct value v, const char *text)
{
	complain(v, NULL,
		arena_printf(v.reader->arena, "%s is out of range; it must be between %g and %g",
			text, v.field->least, v.field->most));
}

double value_number(struct value v)
{
	struct arena *a = v.reader->arena;
	const char *text = plain_value(v);

	if (!text)
		return 0;
	if (!is_decimal(text, 1)) {
		complain(v, NULL, arena_printf(a, "\"%s\" is not a number", text));
		return 0;
	}
	double value = decimal_of(text);
	if (is_within(v.field, value))
		return value;
	complain_of_bounds(v, text);
	return 0;
}

int value_count(struct value v)
{
	struct arena *a = v.reader->arena;
	const char *text = plain_value(v);

	if (!text)
		return 0;
	if (!is_decimal(text, 0)) {
		complain(v, NULL, arena_printf(a, "\"%s\" is not a whole number", text));
		return 0;
	}
	int value = atoi(text);
	if (is_within(v.field, value))
		return value;
	complain_of_bounds(v, text);
	return 0;
}

int value_choice(struct value v)
{
	struct arena *a = v.reader->arena;
	const struct choice *choices = v.field->choices;
	const char *text = plain_value(v);

	if (!text)
		return choices[0].value;
	for (const struct choice *c = choices; c->word; c++)
		if (strcmp(c->word, text) == 0)
			return c->value;
	complain(v, suggest_choice(a, choices, text),
		arena_printf(a, "\"%s\" is not known here", text));
	return choices[0].value;
}

static const struct choice yes_no[] = { { "no", false }, { "yes", true }, { "false", false },
	{ "true", true }, { 0 } };

bool value_yes_no(struct value v)
{
	struct arena *a = v.reader->arena;
	const char *text = plain_value(v);

	if (!text)
		return false;
	for (const struct choice *c = yes_no; c->word; c++)
		if (strcmp(c->word, text) == 0)
			return c->value;
	complain(v, "yes or no", arena_printf(a, "\"%s\" is neither yes nor no", text));
	return false;
}
