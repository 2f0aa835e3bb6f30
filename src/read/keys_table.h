/*
 * The keys of a job file, group by group.
 */
#ifndef READ_KEYS_TABLE_H
#define READ_KEYS_TABLE_H

#include "read/field.h"

/* What the file itself holds: the job, and the version of the format. */
struct job_file {
	struct job job;
	int version;
};

extern const struct group keys_file;

extern const struct group keys_stringers, keys_treads, keys_risers, keys_mouldings, keys_skirts,
	keys_newels, keys_rail, keys_wall_rail, keys_balusters, keys_infill, keys_material,
	keys_code, keys_stock, keys_agreement, keys_landings;

#endif
