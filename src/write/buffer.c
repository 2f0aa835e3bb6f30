#include "write/buffer.h"

#include <string.h>

#define FIRST_ROOM ((size_t)1024)

struct buffer *buffer_new(struct arena *a)
{
	struct buffer *b = NEW(a, struct buffer);

	*b = (struct buffer){ .arena = a, .room = FIRST_ROOM };
	b->bytes = NEW_N(a, char, b->room);
	return b;
}

void buffer_reserve(struct buffer *b, size_t size)
{
	if (b->size + size < b->room)
		return;
	while (b->size + size >= b->room)
		b->room *= 2;
	char *larger = NEW_N(b->arena, char, b->room);
	memcpy(larger, b->bytes, b->size);
	b->bytes = larger;
}

void buffer_add(struct buffer *b, const void *bytes, size_t size)
{
	buffer_reserve(b, size);
	memcpy(b->bytes + b->size, bytes, size);
	b->size += size;
}

void buffer_byte(struct buffer *b, char c)
{
	buffer_reserve(b, 1);
	b->bytes[b->size++] = c;
}

void buffer_text(struct buffer *b, const char *text)
{
	buffer_add(b, text, strlen(text));
}

void buffer_printf(struct buffer *b, const char *fmt, ...)
{
	va_list ap;

	va_start(ap, fmt);
	buffer_text(b, arena_vprintf(b->arena, fmt, ap));
	va_end(ap);
}

/* A third of all that is written are numbers, and printf() takes ten times as long. */
void buffer_thousandths(struct buffer *b, long v)
{
	char text[24], *const end = text + sizeof(text), *s = end;
	unsigned long left = v < 0 ? -(unsigned long)v : (unsigned long)v;
	int places = 3;

	for (; places && left % 10 == 0; places--)
		left /= 10;
	for (int i = 0; i < places; i++, left /= 10)
		*--s = (char)('0' + left % 10);
	if (places)
		*--s = '.';
	for (; left || s == end || *s == '.'; left /= 10)
		*--s = (char)('0' + left % 10);
	if (v < 0)
		*--s = '-';
	buffer_add(b, s, (size_t)(end - s));
}
