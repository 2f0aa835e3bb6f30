/*
 * One value of the job file: text to number, choice, date.
 *
 * Each complains for itself, at the node, and returns a harmless value then.
 */
#ifndef READ_VALUE_H
#define READ_VALUE_H

#include "read/field.h"

/* Where a complaint belongs: the key's path and its node. */
struct value {
	const struct field_reader *reader;
	const struct field *field;
	const char *path;
	const struct node *node;
};

const char *value_text(struct value v);
const char *value_date(struct value v);
double value_length(struct value v);
double value_number(struct value v);
int value_count(struct value v);
int value_choice(struct value v);
bool value_yes_no(struct value v);

#endif
