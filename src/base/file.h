/*
 * Files, read whole and written whole or not at all.
 */
#ifndef BASE_FILE_H
#define BASE_FILE_H

#include <stddef.h>

#include "pitchboard/arena.h"

/* A file in memory: where it is or shall be, and its bytes. */
struct file {
	struct file *next;
	const char *path;
	const unsigned char *bytes;
	size_t size;
};

/* What people write in YAML is a page or two; longer files of it are refused. */
enum { LONGEST_TEXT = 1 << 20 };

struct file_result {
	const struct file *file; /* NULL when there is a problem */
	const char *problem;     /* what the machine refused, and on which file */
};

/* Plain files only: a folder is refused, and so is a pipe, which may never end. */
struct file_result file_read(struct arena *a, const char *path);

/*
 * Writes a list of files into folders that exist.  NULL when all is well, else
 * what the machine refused.
 *
 * Every file is first written in full beside its target, under a hidden name
 * that ends in ".part" and is this run's alone, and brought to the disk; only
 * when all of them are there are they renamed over the earlier ones.  So a full
 * disk leaves the earlier files as they were, and nothing else behind; and runs
 * at the same time into one folder do not mind each other.  Ctrl-C and the polite
 * kill signals wait until the set is complete; only SIGKILL or a power cut can
 * leave a ".part" file, and a file under its own name is always whole.
 *
 * The caller has to ignore SIGXFSZ, or a file size limit ends the process.
 */
const char *files_write(struct arena *a, const struct file *files);

/* Makes a folder and those above it, as far as they are missing.  NULL or a problem. */
const char *folder_make(struct arena *a, const char *path);

/* The name of a file without its folder and its last ending: "alder" of "jobs/alder.yaml". */
const char *path_stem(struct arena *a, const char *path);

#endif
