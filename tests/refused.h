/*
 * Jobs that are refused: what the message says to write instead mends it.
 *
 * "write PATH: VALUE", and PATH: VALUE where one key alone does not do; what follows after a comma
 * or a semicolon is another way, or says why.
 */
#ifndef TESTS_REFUSED_H
#define TESTS_REFUSED_H

#include <ctype.h>
#include <string.h>

#include "job_edit.h"
#include "pitchboard/part.h"
#include "pitchboard/rule.h"

/* What came of the messages of one refused job that name a key and a value. */
struct refused {
	int messages;    /* of a job that is refused */
	int said;        /* of these, how many say what to write */
	int mended;      /* and of these: with that written, they are said less often */
	const char *why; /* one that is said as often, or that nobody can follow; NULL: none */
};

static inline struct diags complaints(struct arena *a, const char *text)
{
	struct diags d;

	diags_init(&d, a, "refused.yaml", text);
	const struct job *job = job_read(a, text, &d);
	const struct rule_set *rules = rules_read(a, "templates", job, &d);
	const struct stair *s = stair_solve(a, job, rules_for_layout(a, rules), &d);
	parts_make(a, s, &d);
	return d;
}

/* What a message says, but for its figures. */
static inline const char *kind_of(struct arena *a, const char *text)
{
	char *kind = arena_strdup(a, text), *to = kind;

	for (const char *c = text; *c; c++)
		if (!isdigit((unsigned char)*c) && !strchr(" '\"/-.", *c))
			*to++ = *c;
	*to = '\0';
	return kind;
}

static inline int count_said(struct arena *a, const struct diags *d, const struct diag *before)
{
	int n = 0;

	for (const struct diag *e = d->first; e; e = e->next)
		n += e->level == DIAG_ERROR &&
			strcmp(kind_of(a, e->text), kind_of(a, before->text)) == 0;
	return n;
}

/* "write A: x and B: y, or ..." is two settings; NULL: it says of no key what to write. */
static inline const char *settings_of(const char *hint)
{
	const char *at = hint ? strstr(hint, "write ") : NULL;
	size_t path = at ? strcspn(at + 6, ": ") : 0;

	if (path == 0 || at[6 + path] != ':' || !memchr(at + 6, '.', path))
		return NULL;
	return at + 6;
}

static inline size_t value_length(const char *value)
{
	const char *ends[] = { ", ", "; ", " and " };
	size_t n = strlen(value);

	for (int i = 0; i < 3; i++) {
		const char *end = strstr(value, ends[i]);
		if (end && (size_t)(end - value) < n)
			n = (size_t)(end - value);
	}
	return n;
}

static inline const char *followed(struct arena *a, const char *text, const char *settings)
{
	const char *at = settings;

	while (text) {
		const char *value = strstr(at, ": ") + 2;
		size_t n = value_length(value);
		text = job_edit(a, text, arena_strndup(a, at, (size_t)(value - 2 - at)),
			arena_strndup(a, value, n));
		at = value + n;
		if (strncmp(at, " and ", 5) != 0)
			break;
		at += 5;
	}
	return text;
}

static inline void try_one(struct arena *a, const char *text, const struct diags *d,
	const struct diag *e, struct refused *r)
{
	const char *settings = settings_of(e->hint);

	r->messages++;
	if (!settings)
		return;
	r->said++;
	const char *otherwise = followed(a, text, settings);
	struct diags now = { .first = NULL };
	if (otherwise)
		now = complaints(a, otherwise);
	if (!otherwise || count_said(a, &now, e) >= count_said(a, d, e))
		r->why = arena_printf(a, "\"%s\" and with \"%s\" %s", e->text, e->hint,
			otherwise ? "it is said again" : "nothing can be written");
	else
		r->mended++;
}

static inline struct refused refused_try(struct arena *a, const char *text)
{
	struct refused r = { .why = NULL };
	struct diags d = complaints(a, text);

	for (const struct diag *e = d.first; e && !r.why; e = e->next)
		if (e->level == DIAG_ERROR)
			try_one(a, text, &d, e, &r);
	return r;
}

#endif
