/*
 * Files that a shop keeps in templates/ and may edit: read against a table of
 * keys, like a job.
 */
#ifndef READ_SHOP_FILE_H
#define READ_SHOP_FILE_H

#include "read/field.h"

/* Reads one file.  A bare length in it is in millimetres.  False after an error: the diags are then
 * that file's own, so that they print its name and line. */
bool shop_file_read(struct arena *a, const char *path, const struct group *g, void *into,
	struct diags *d);

#endif
