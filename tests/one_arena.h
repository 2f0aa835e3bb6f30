/*
 * The arena of a test program: made before its first test, and gone behind its last.
 */
#ifndef TESTS_ONE_ARENA_H
#define TESTS_ONE_ARENA_H

#include "pitchboard/arena.h"

static struct arena *arena;

static int arena_open(void **state)
{
	(void)state;
	arena = arena_new();
	return 0;
}

static int arena_close(void **state)
{
	(void)state;
	arena_free(arena);
	return 0;
}

#endif
