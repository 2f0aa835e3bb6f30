/*
 * Rules as data, and what a stair has to show against them.
 *
 * An edition of a building code is a file of templates/rules/: one row a limit,
 * with its section, how it is measured, and whether the value was read in a
 * source.  A row names a gauge, one function that measures the stair and its
 * solids (src/rules/gauge.c has the table of them).  A job names its edition and
 * may amend rows.  A finding is what came of one row.
 *
 * The program says "meets the limit as entered" and no more: who may build what
 * is for the authority having jurisdiction to say.
 */
#ifndef PITCHBOARD_RULE_H
#define PITCHBOARD_RULE_H

#include "pitchboard/part.h"

/* One limit.  Lengths are millimetres, angles radians, counts whole numbers: as the gauge has it.
 */
struct limit {
	const char *text; /* as typed; "" or NULL: there is no such limit */
	double value;
};

/* Within which a reading has to lie: at least, at most, more than, less than. */
struct bounds {
	struct limit least, most, above, below;
};

/* A row counts only where another gauge reads within these bounds. */
struct rule_condition {
	const struct node *src;
	const char *gauge;
	struct bounds bounds;
};

/* Where the value of a row comes from. */
enum rule_source {
	SOURCE_READ,        /* the text, or a verbatim copy of it, was read for this program */
	SOURCE_SECOND_HAND, /* somebody's account of it was read */
	SOURCE_FROM_MEMORY, /* neither: check it before it is relied on */
};

const char *rule_source_word(enum rule_source source);

struct rule_set;

struct rule {
	const struct node *src;
	const char *row;   /* its name in the edition: "riser_height" */
	const char *gauge; /* the measuring function, by name; the row's own name unless given */
	struct bounds bounds;
	const char *asked; /* the limit in words, where a number alone says too little; "" */
	const char *section;
	const char *how;         /* how it is measured */
	const char *exceptions;  /* that the code knows and the program does not judge; "" */
	const char *not_checked; /* why the row cannot be judged from a job; "": it can */
	const char *what;        /* the trade's words; those of the gauge unless given */
	enum rule_source source;
	const struct rule_condition *conditions; /* all must hold */
	int condition_count;
	const struct rule_set *written_in;  /* the edition in whose file the row stands */
	const struct job_amendment *amends; /* who changed the limit; NULL: nobody */
	struct bounds enacted;              /* the edition's own limits where they were amended */
};

/* Sections that carry another number than in the edition it is like. */
struct renumbering {
	const struct node *src;
	const char *from, *to;
};

struct rule_set {
	const char *name;  /* of its file: "irc-2021" */
	const char *title; /* in full */
	const char *brief; /* "IRC 2021" */
	const char *like;  /* the edition whose rows are carried over; "": none */
	const char *note;  /* what a reader has to know about the file; "" */
	enum units units;  /* of a bare number, and in which limits are written */
	const struct renumbering *renumbered;
	int renumbered_count;
	const struct rule *rules;
	int rule_count;
};

/* The edition that this job names, with its amendments.  NULL when it names none, and after an
 * error, which is in `d`: at its place in the job, or naming the file of the edition. */
const struct rule_set *rules_read(struct arena *a, const char *dir, const struct job *job,
	struct diags *d);

/* What these rules ask of a layout, as the solver chooses by it; NULL: nothing. */
const struct layout_limits *rules_for_layout(struct arena *a, const struct rule_set *rules);

/* The editions there are in `dir`, by name in alphabetical order; NULL at the end. */
const char *const *rules_names(struct arena *a, const char *dir);

enum finding_state {
	FINDING_NOT_MET,
	FINDING_NEAR, /* met, by less than the shop's tolerance */
	FINDING_NOT_CHECKED,
	FINDING_MET,
	FINDING_NOT_APPLICABLE,
};

#define FINDING_STATES 5

/* "not met" */
const char *finding_word(enum finding_state state);

/* A key of the job and what to write there: "stair.segments[1].run", "10 1/4"". */
struct job_setting {
	const char *path, *value;
};

struct finding {
	struct finding *next;
	const struct rule_set *rules;
	const struct rule *rule;
	enum finding_state state;
	double value, limit;  /* what was compared, in the gauge's unit; 0 when nothing was */
	const char *what;     /* "riser height" */
	const char *asked;    /* at most 7 3/4" */
	const char *provided; /* 7 5/8"; "" when nothing was measured */
	const char *place;    /* "step 3, left end"; "" */
	const char *reason;   /* why it was not checked, or does not apply; "" */
	const char *mend;     /* what would put it right, with a number; "" unless it is not met */
	const struct job_setting *settings; /* the same in keys of the job, where keys can do it */
	int setting_count;
	const char *source; /* "read", "from memory", "amended by B. Example, 2026-10-02" */
	const char *source_in_short; /* "read in IRC 2018" */
	struct pos at;               /* the key of the job that decides it */
};

/* Every row of the edition, in its order; what is not met is a warning in `d` too.  NULL in, NULL
 * out. */
const struct finding *code_check(struct arena *a, const struct stair *s, const struct part *parts,
	const struct rule_set *rules, struct diags *d);

/* Where nothing guards the edge of the opening in the upper floor, in words: "left edge of the
 * opening, all 11'-4\""; "" where all of it is guarded, or the job gives no opening. */
const char *opening_bare_words(struct arena *a, const struct stair *s, const struct part *parts);

/* Warns of what the job itself asks for and does not get: headroom as wanted, planks as on offer.
 * NULL stair or parts: of nothing. */
void wishes_check(struct arena *a, const struct stair *s, const struct part *parts,
	struct diags *d);

int findings_count(const struct finding *list, enum finding_state state);

/* As a table for a terminal, and for other programs. */
const char *findings_text(struct arena *a, const struct finding *list);
const char *findings_json(struct arena *a, const struct finding *list, const char *job);

#endif
