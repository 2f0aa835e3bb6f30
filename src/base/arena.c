/*
 * Chained blocks, freed together.  The first is small and each of the next twice as large, up to a
 * most, for there are many arenas that little is made in: a node of a search, the scene of a small
 * view.
 *
 * ARENA_BLOCK 0 gives every object an allocation of its own: the tests are
 * built so, because inside one big block an overrun of one object into the
 * next goes unseen by the sanitizers.
 */
#include "pitchboard/arena.h"

#include <locale.h>
#include <stdalign.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#ifndef ARENA_BLOCK
#define ARENA_BLOCK ((size_t)64 * 1024)
#endif

#define FIRST_BLOCK (ARENA_BLOCK / 16)

struct block {
	struct block *next;
	alignas(max_align_t) unsigned char data[];
};

struct arena {
	struct block *blocks;
	unsigned char *at;
	size_t left, block; /* of the current block, and all of it */
};

/* The one place where memory may run out.  No stage could draw without it, so the run ends: 3, the
 * machine failed.  Earlier jobs of the call are complete, and files are whole or not there. */
static void *must_have(void *p)
{
	static const char message[] = "pitchboard: out of memory\n";

	if (p)
		return p;
	ssize_t told = write(STDERR_FILENO, message, sizeof(message) - 1);
	(void)told;
	_exit(3);
}

struct arena *arena_new(void)
{
	return must_have(calloc(1, sizeof(struct arena)));
}

void arena_free(struct arena *a)
{
	if (!a)
		return;
	for (struct block *b = a->blocks, *next; b; b = next) {
		next = b->next;
		free(b);
	}
	free(a);
}

static unsigned char *block_add(struct arena *a, size_t size)
{
	struct block *b = must_have(calloc(1, sizeof(struct block) + size));

	b->next = a->blocks;
	a->blocks = b;
	return b->data;
}

/* A block that takes so much, which is a quarter of the largest at most. */
static void block_begin(struct arena *a, size_t bytes)
{
	if (!a->block)
		a->block = FIRST_BLOCK;
	else if (a->block * 2 <= ARENA_BLOCK)
		a->block *= 2;
	while (a->block < bytes)
		a->block *= 2;
	a->at = block_add(a, a->block);
	a->left = a->block;
}

void *arena_alloc(struct arena *a, size_t size, size_t count)
{
	const size_t grain = alignof(max_align_t);

	if (size && count > (SIZE_MAX / 2 - grain) / size)
		return must_have(NULL);
	size_t bytes = (size * count + grain - 1) / grain * grain;

	/* an empty list has a place too and is no NULL */
	if (bytes == 0)
		bytes = grain;

	/* a large object gets a block of its own, and the current one is kept */
	if (bytes * 4 > ARENA_BLOCK)
		return block_add(a, bytes);
	if (bytes > a->left)
		block_begin(a, bytes);
	void *p = a->at;
	a->at += bytes;
	a->left -= bytes;
	return p;
}

char *arena_strndup(struct arena *a, const char *s, size_t n)
{
	char *copy = arena_alloc(a, 1, n + 1);

	memcpy(copy, s, n);
	return copy;
}

char *arena_strdup(struct arena *a, const char *s)
{
	return arena_strndup(a, s, strlen(s));
}

static char *format(struct arena *a, const char *fmt, va_list ap)
{
	va_list again;

	va_copy(again, ap);
	int n = vsnprintf(NULL, 0, fmt, again);
	va_end(again);
	if (n < 0)
		return must_have(NULL);
	char *s = arena_alloc(a, 1, (size_t)n + 1);
	vsnprintf(s, (size_t)n + 1, fmt, ap);
	return s;
}

/* In the C locale, and for this thread only: a point stays a point in whatever process this is. */
char *arena_vprintf(struct arena *a, const char *fmt, va_list ap)
{
	locale_t plain = must_have(newlocale(LC_ALL_MASK, "C", (locale_t)0));
	locale_t before = uselocale(plain);
	char *s = format(a, fmt, ap);

	uselocale(before);
	freelocale(plain);
	return s;
}

char *arena_printf(struct arena *a, const char *fmt, ...)
{
	va_list ap;

	va_start(ap, fmt);
	char *s = arena_vprintf(a, fmt, ap);
	va_end(ap);
	return s;
}
