#include "base/text.h"

#include <math.h>
#include <string.h>

#define FIRST_ROOM ((size_t)256)

struct text *text_new(struct arena *a)
{
	struct text *t = NEW(a, struct text);

	t->arena = a;
	return t;
}

/* Room doubles, so that adding n lines costs n and not n squared. */
static void make_room(struct text *t, size_t more)
{
	size_t room = t->room ? t->room : FIRST_ROOM;

	if (t->length + more < t->room)
		return;
	while (room <= t->length + more)
		room *= 2;
	char *larger = NEW_N(t->arena, char, room);
	if (t->length)
		memcpy(larger, t->chars, t->length);
	t->chars = larger;
	t->room = room;
}

void text_put_bytes(struct text *t, const void *bytes, size_t n)
{
	make_room(t, n);
	if (n)
		memcpy(t->chars + t->length, bytes, n);
	t->length += n;
	t->chars[t->length] = '\0';
}

void text_put_char(struct text *t, char c)
{
	make_room(t, 1);
	t->chars[t->length++] = c;
	t->chars[t->length] = '\0';
}

void text_put(struct text *t, const char *words)
{
	text_put_bytes(t, words, strlen(words));
}

void text_add(struct text *t, const char *fmt, ...)
{
	va_list ap;

	va_start(ap, fmt);
	text_put(t, arena_vprintf(t->arena, fmt, ap));
	va_end(ap);
}

/* Half of all that is written are numbers, and printf() takes ten times as long.  The figures of
 * `v`, the last `places` of them behind a point; from the back, where they are known first. */
static void put_figures(struct text *t, long v, int places)
{
	char figures[24], *const end = figures + sizeof(figures), *s = end;
	unsigned long left = v < 0 ? -(unsigned long)v : (unsigned long)v;

	for (int i = 0; i < places; i++, left /= 10)
		*--s = (char)('0' + left % 10);
	if (places)
		*--s = '.';
	do
		*--s = (char)('0' + left % 10);
	while (left /= 10);
	if (v < 0)
		*--s = '-';
	text_put_bytes(t, s, (size_t)(end - s));
}

void text_put_number(struct text *t, long v)
{
	put_figures(t, v, 0);
}

void text_put_thousandths(struct text *t, long v)
{
	int places = 3;

	for (; places && v % 10 == 0; places--)
		v /= 10;
	put_figures(t, v, places);
}

void text_join(struct text *t, const char *between, const char *word)
{
	if (t->length)
		text_put(t, between);
	text_put(t, word);
}

const char *text_spoken(struct arena *a, const char *key)
{
	char *words = arena_strdup(a, key);

	for (char *c = words; *c; c++)
		if (*c == '_')
			*c = ' ';
	return words;
}

int text_columns(const char *words)
{
	int n = 0;

	for (; *words; words++)
		n += ((unsigned char)*words & 0xc0) != 0x80;
	return n;
}

void text_put_blanks(struct text *t, int n)
{
	for (int i = 0; i < n; i++)
		text_put_char(t, ' ');
}

const char *text_chars(const struct text *t)
{
	return t->chars ? t->chars : "";
}

double text_tidy(double v)
{
	double r = round(v * 1000) / 1000;
	return r == 0 ? 0 : r;
}
