/*
 * What a client chooses and signs, fact by fact: the same rows fill the table of
 * choices and tell what has changed since the set before.
 */
#ifndef SHEETS_CLIENT_FACTS_H
#define SHEETS_CLIENT_FACTS_H

#include "sheets/client.h"

struct fact {
	const char *label;  /* "Treads" */
	const char *words;  /* "red oak, 1 1/16\" thick" */
	const char *finish; /* "clear oil, three coats"; "" where that is no question */
	bool is_chosen;     /* a row of the table; else a size, which the drawings say */
};

enum { MOST_FACTS = 64 };

/* Of the job and the parts of this stair; the count. */
int client_facts(struct arena *a, const struct sheet_context *c, struct fact facts[MOST_FACTS]);

/* The woods that they name, a bit each: 1 << enum client_wood. */
unsigned client_woods(const struct sheet_context *c);

/* The fact as it stood before, by its label; NULL: it is new. */
const struct fact *client_fact_before(const struct fact *was, int n, const struct fact *f);

/* Does it say something else now? */
bool client_fact_differs(const struct fact *was, const struct fact *f);

/* The facts of the job that this one is compared with; 0: with none. */
int client_facts_before(struct arena *a, const struct sheet_context *c,
	struct fact facts[MOST_FACTS]);

#endif
