/*
 * The key reference: every key of a job file, from the tables that read them.
 */
#ifndef PITCHBOARD_KEYS_H
#define PITCHBOARD_KEYS_H

#include "pitchboard/arena.h"

/* For a terminal, 80 columns wide. */
const char *keys_text(struct arena *a);

/* JSON Schema, draft 2020-12, for editors that complete and check YAML. */
const char *keys_schema(struct arena *a);

/* A table in Markdown for every group of keys. */
const char *keys_markdown(struct arena *a);

#endif
