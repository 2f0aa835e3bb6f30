/*
 * Faults of YAML's syntax, said so that a carpenter can mend them.
 */
#ifndef READ_SYNTAX_H
#define READ_SYNTAX_H

#include "pitchboard/diag.h"

struct syntax_fault {
	const char *problem, *context; /* the parser's words; context may be NULL */
	struct pos at, context_at;
};

void syntax_complain(struct diags *d, const char *text, struct syntax_fault fault);

#endif
