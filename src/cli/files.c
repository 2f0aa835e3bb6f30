#include "cli/files.h"

#include "base/file.h"
#include "cli/command.h"

#include <limits.h>
#include <stdbool.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static struct text_result refuse(struct arena *a, const char *path, const char *why)
{
	return (struct text_result){ .problem = arena_printf(a, "%s: %s", path, why) };
}

struct text_result text_read(struct arena *a, const char *path)
{
	struct stat s;

	if (stat(path, &s) == 0 && s.st_size > LONGEST_TEXT)
		return refuse(a, path, "is longer than 1 MiB; a job file is a page or two of text");
	struct file_result read = file_read(a, path);
	if (!read.file)
		return (struct text_result){ .problem = read.problem };
	if (read.file->size == 0)
		return (struct text_result){ .text = "" };
	if (memchr(read.file->bytes, 0, read.file->size))
		return refuse(a, path, "holds a zero byte; a job file is plain text");
	const char *text = arena_strndup(a, (const char *)read.file->bytes, read.file->size);
	return (struct text_result){ .text = text };
}

const char *job_text(struct arena *a, const char *path, struct diags *d)
{
	struct text_result file = text_read(a, path);

	diags_init(d, a, path, file.text);
	if (!file.text)
		complain("%s", file.problem);
	return file.text;
}

/* Cuts the last part off a path; false when nothing is left to cut. */
static bool to_parent(char *path)
{
	char *slash = strrchr(path, '/');

	if (!slash || slash == path)
		return false;
	*slash = '\0';
	return true;
}

static const char *templates_at(struct arena *a, const char *dir, const char *below)
{
	const char *path = arena_printf(a, "%s/%s", dir, below);

	return access(arena_printf(a, "%s/papers.yaml", path), R_OK) == 0 ? path : NULL;
}

/* From the program's own place upwards: build/pitchboard and build/san/pitchboard find the source
 * tree's templates, PREFIX/bin/pitchboard finds PREFIX/share, wherever PREFIX was moved to. */
static const char *templates_above(struct arena *a, char *path)
{
	for (int level = 0; level < 3 && to_parent(path); level++) {
		const char *found = templates_at(a, path, "templates");
		if (!found)
			found = templates_at(a, path, "share/pitchboard/templates");
		if (found)
			return found;
	}
	return NULL;
}

const char *templates_find(struct arena *a, const char *asked)
{
	char path[PATH_MAX];

	if (asked)
		return asked;
	ssize_t n = readlink("/proc/self/exe", path, sizeof(path) - 1);
	path[n > 0 ? n : 0] = '\0';
	const char *found = templates_above(a, path);
	if (!found)
		complain("the folder of templates is not where it was installed; name it with "
			 "--templates");
	return found;
}
