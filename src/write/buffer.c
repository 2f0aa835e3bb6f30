#include "write/buffer.h"

#include <string.h>

#define FIRST_ROOM ((size_t)64 * 1024)

struct buffer *buffer_new(struct arena *a)
{
	struct buffer *b = NEW(a, struct buffer);

	*b = (struct buffer){ .arena = a, .room = FIRST_ROOM };
	b->bytes = NEW_N(a, char, b->room);
	return b;
}

void buffer_add(struct buffer *b, const void *bytes, size_t size)
{
	if (b->size + size >= b->room) {
		while (b->size + size >= b->room)
			b->room *= 2;
		char *larger = NEW_N(b->arena, char, b->room);
		memcpy(larger, b->bytes, b->size);
		b->bytes = larger;
	}
	memcpy(b->bytes + b->size, bytes, size);
	b->size += size;
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
