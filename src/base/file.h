/*
 * Files, read whole and written whole or not at all.
 */
#ifndef BASE_FILE_H
#define BASE_FILE_H

#include <stddef.h>

#include "pitchboard/arena.h"

/* A file in memory. */
struct file {
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
 * Files that appear together or not at all, in folders that exist.
 *
 * Each is written in full beside its target, under a hidden name that ends in
 * ".part" and is this run's alone, and brought to the disk; only closing the set
 * renames them all over the earlier ones.  So a full disk leaves the earlier files
 * as they were, and nothing else behind; and runs at the same time into one folder
 * do not mind each other.  From open to close Ctrl-C and the polite kill signals
 * wait; only SIGKILL or a power cut can leave a ".part" file, and a file under its
 * own name is always whole.
 *
 * The caller has to ignore SIGXFSZ, or a file size limit ends the process.
 */
struct fileset;

struct fileset *fileset_open(struct arena *a);

/* NULL when all is well, else what the machine refused: then close with it. */
const char *fileset_add(struct fileset *s, const char *path, const void *bytes, size_t size);

/* Given a problem, drops the set and gives the problem back. */
const char *fileset_close(struct fileset *s, const char *problem);

/* Makes a folder and those above it, as far as they are missing.  NULL or a problem. */
const char *folder_make(struct arena *a, const char *path);

/* The name of a file without its folder and its last ending: "alder" of "jobs/alder.yaml". */
const char *path_stem(struct arena *a, const char *path);

#endif
