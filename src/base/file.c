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

	/* not to wait for somebody to write into a pipe of that name */
	int fd = open(path, O_RDONLY | O_NONBLOCK | O_CLOEXEC);
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

/* One file under its hidden name, made by this run and by no other. */
struct part {
	struct part *next;
	const char *path, *name; /* where it shall be, and where it is; NULL: no longer there */
};

struct fileset {
	struct arena *arena;
	struct part *first, **tail;
	sigset_t before; /* the signals that were blocked when it was opened */
};

/* More than one at a time only where runs in several containers have one process number. */
#define MOST_NAMESAKES 1000

/* out/S-101.pdf: out/.S-101.pdf.4711-0.part. */
static const char *part_name(struct arena *a, const char *path, int attempt)
{
	const char *slash = strrchr(path, '/');
	int folder = slash ? (int)(slash - path) + 1 : 0;

	return arena_printf(a, "%.*s.%s.%ld-%d.part", folder, path, path + folder, (long)getpid(),
		attempt);
}

/* Under a name that was free until now; -1 when there is none to be had. */
static int part_open(struct arena *a, struct part *p)
{
	for (int attempt = 0; attempt < MOST_NAMESAKES; attempt++) {
		const char *name = part_name(a, p->path, attempt);
		int fd = open(name, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
		if (fd >= 0)
			p->name = name;
		if (fd >= 0 || errno != EEXIST)
			return fd;
	}
	return -1;
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

struct fileset *fileset_open(struct arena *a)
{
	struct fileset *s = NEW(a, struct fileset);
	sigset_t polite;

	*s = (struct fileset){ .arena = a };
	s->tail = &s->first;
	sigemptyset(&polite);
	sigaddset(&polite, SIGINT);
	sigaddset(&polite, SIGTERM);
	sigaddset(&polite, SIGHUP);
	pthread_sigmask(SIG_BLOCK, &polite, &s->before);
	return s;
}

const char *fileset_add(struct fileset *s, const char *path, const void *bytes, size_t size)
{
	struct part *p = NEW(s->arena, struct part);
	struct stat there;

	p->path = arena_strdup(s->arena, path);
	*s->tail = p;
	s->tail = &p->next;
	/* found now, it costs nothing; found while renaming, half the set would be new */
	if (stat(path, &there) == 0 && S_ISDIR(there.st_mode))
		return arena_printf(s->arena, "%s: a folder stands in the way", path);
	int fd = part_open(s->arena, p);
	if (fd < 0 || finish(fd, write_all(fd, bytes, size)) != 0)
		return refused(s->arena, path, "cannot be written");
	return NULL;
}

static const char *rename_parts(struct arena *a, struct part *parts)
{
	for (struct part *p = parts; p; p = p->next) {
		if (rename(p->name, p->path) != 0)
			return refused(a, p->path, "cannot be replaced");
		p->name = NULL;
	}
	return NULL;
}

/* Those that are still there. */
static void drop_parts(const struct part *parts)
{
	for (const struct part *p = parts; p; p = p->next)
		if (p->name)
			unlink(p->name);
}

const char *fileset_close(struct fileset *s, const char *problem)
{
	if (!problem)
		problem = rename_parts(s->arena, s->first);
	drop_parts(s->first);
	pthread_sigmask(SIG_SETMASK, &s->before, NULL);
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

const char *path_stem(struct arena *a, const char *path)
{
	const char *slash = strrchr(path, '/'), *name = slash ? slash + 1 : path;
	const char *dot = strrchr(name, '.');

	return arena_strndup(a, name, dot && dot != name ? (size_t)(dot - name) : strlen(name));
}
