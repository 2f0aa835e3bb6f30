#include "base/text.h"

#include <math.h>
#include <string.h>

/* Room doubles, so that adding n lines costs n and not n squared. */
static void make_room(struct text *t, size_t more)
{
	size_t room = t->room ? t->room : 1024;
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

void text_add(struct text *t, const char *fmt, ...)
{
	va_list ap;
	va_start(ap, fmt);
	const char *line = arena_vprintf(t->arena, fmt, ap);
	va_end(ap);
	size_t n = strlen(line);
	make_room(t, n);
	memcpy(t->chars + t->length, line, n + 1);
	t->length += n;
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
