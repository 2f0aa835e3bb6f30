#include "base/file.h"

#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static const char *refused(struct arena *a, const char *path, const char *what)
{
	return arena_printf(a, "%s: %s: %s", path, what, strerror(errno));
}

static const char *read_all(struct arena *a, int fd, struct file *f)
{
	unsigned char *bytes = NEW_N(a, unsigned char, f->size);
	size_t have = 0;

	while (have < f->size) {
		ssize_t n = read(fd, bytes + have, f->size - have);
		if (n < 0 && errno == EINTR)
			continue;
		if (n < 0)
			return refused(a, f->path, "cannot be read");
		if (n == 0)
			return arena_printf(a, "%s: became shorter while it was read", f->path);
		have += (size_t)n;
	}
	f->bytes = bytes;
	return NULL;
}

struct file_result file_read(struct arena *a, const char *path)
{
	struct file *f = NEW(a, struct file);
	struct stat s;

	int fd = open(path, O_RDONLY | O_CLOEXEC);
	if (fd < 0)
		return (struct file_result){ .problem = refused(a, path, "cannot be opened") };
	if (fstat(fd, &s) != 0 || !S_ISREG(s.st_mode)) {
		close(fd);
		return (struct file_result){ .problem = arena_printf(a, "%s: is not a plain file",
						     path) };
	}
	*f = (struct file){ .path = path, .size = (size_t)s.st_size };
	const char *problem = read_all(a, fd, f);
	close(fd);
	return (struct file_result){ .file = problem ? NULL : f, .problem = problem };
}

/* out/S-101.pdf: out/.S-101.pdf.4711.part.  The process number keeps two runs
 * into one folder apart. */
static const char *part_name(struct arena *a, const char *path)
{
	const char *slash = strrchr(path, '/');
	int folder = slash ? (int)(slash - path) + 1 : 0;

	return arena_printf(a, "%.*s.%s.%ld.part", folder, path, path + folder, (long)getpid());
}

static int write_all(int fd, const unsigned char *bytes, size_t size)
{
	while (size) {
		ssize_t n = write(fd, bytes, size);
		if (n < 0 && errno == EINTR)
			continue;
		if (n < 0)
			return -1;
		bytes += n;
		size -= (size_t)n;
	}
	return 0;
}

/* Close may be the first to tell of a full disk or quota, so it counts. */
static int finish(int fd, int written)
{
	int synced = written == 0 ? fsync(fd) : -1;
	int why = errno;
	int closed = close(fd);

	if (synced != 0)
		errno = why;
	return synced == 0 && closed == 0 ? 0 : -1;
}

static const char *write_part(struct arena *a, const struct file *f)
{
	const char *part = part_name(a, f->path);
	struct stat s;

	/* found now, it costs nothing; found while renaming, half the set would be new */
	if (stat(f->path, &s) == 0 && S_ISDIR(s.st_mode))
		return arena_printf(a, "%s: a folder stands in the way", f->path);
	/* left by a killed run that had the same process number */
	unlink(part);
	int fd = open(part, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
	if (fd < 0)
		return refused(a, f->path, "cannot be written");
	if (finish(fd, write_all(fd, f->bytes, f->size)) != 0)
		return refused(a, f->path, "cannot be written");
	return NULL;
}

static void drop_parts(struct arena *a, const struct file *files)
{
	for (const struct file *f = files; f; f = f->next)
		unlink(part_name(a, f->path));
}

static const char *write_parts(struct arena *a, const struct file *files)
{
	for (const struct file *f = files; f; f = f->next) {
		const char *problem = write_part(a, f);
		if (problem)
			return problem;
	}
	return NULL;
}

static const char *rename_parts(struct arena *a, const struct file *files)
{
	for (const struct file *f = files; f; f = f->next)
		if (rename(part_name(a, f->path), f->path) != 0)
			return refused(a, f->path, "cannot be replaced");
	return NULL;
}

const char *files_write(struct arena *a, const struct file *files)
{
	sigset_t polite, before;

	sigemptyset(&polite);
	sigaddset(&polite, SIGINT);
	sigaddset(&polite, SIGTERM);
	sigaddset(&polite, SIGHUP);
	pthread_sigmask(SIG_BLOCK, &polite, &before);
	const char *problem = write_parts(a, files);
	if (!problem)
		problem = rename_parts(a, files);
	if (problem)
		drop_parts(a, files);
	pthread_sigmask(SIG_SETMASK, &before, NULL);
	return problem;
}

const char *folder_make(struct arena *a, const char *path)
{
	char *upto = arena_strdup(a, path);

	for (char *at = upto; *at; at++) {
		if (*at != '/' || at == upto)
			continue;
		*at = '\0';
		mkdir(upto, 0777);
		*at = '/';
	}
	if (mkdir(upto, 0777) == 0 || errno == EEXIST)
		return NULL;
	return refused(a, path, "the folder cannot be made");
}
