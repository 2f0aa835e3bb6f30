/*
 * Memory.
 *
 * Everything made while reading, solving and drawing a job lives in one arena
 * and dies with it; nothing is freed by hand.  Memory comes zeroed, and zero
 * means empty, default or none in every struct of this program.  Running out
 * of memory ends the process with status 3: no caller has to check.
 */
#ifndef PITCHBOARD_ARENA_H
#define PITCHBOARD_ARENA_H

#include <stdarg.h>
#include <stddef.h>

struct arena;

struct arena *arena_new(void);
void arena_free(struct arena *a); /* NULL is fine */

/* `count` zeroed objects of `size` bytes, aligned for any type. */
void *arena_alloc(struct arena *a, size_t size, size_t count);

#define NEW(a, type) ((type *)arena_alloc((a), sizeof(type), 1))
#define NEW_N(a, type, n) ((type *)arena_alloc((a), sizeof(type), (size_t)(n)))

char *arena_strdup(struct arena *a, const char *s);
char *arena_strndup(struct arena *a, const char *s, size_t n);
/* As printf() writes in the C locale, whichever one the process is in. */
char *arena_printf(struct arena *a, const char *fmt, ...) __attribute__((format(printf, 2, 3)));
char *arena_vprintf(struct arena *a, const char *fmt, va_list ap)
	__attribute__((format(printf, 2, 0)));

#endif
