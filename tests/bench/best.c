/*
 * The quickest of some runs of a command, which matters less than all others
 * what else the machine was doing:
 *
 *     best COUNT COMMAND...    prints milliseconds, and the most memory in kB
 */
#include <stdio.h>
#include <stdlib.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

static double now(void)
{
	struct timespec t;

	clock_gettime(CLOCK_MONOTONIC, &t);
	return (double)t.tv_sec * 1e3 + (double)t.tv_nsec / 1e6;
}

/* Milliseconds, or -1. */
static double run(char **command)
{
	int status;
	double start = now();
	pid_t child = fork();

	if (child == 0) {
		execvp(command[0], command);
		_exit(127);
	}
	if (child < 0 || waitpid(child, &status, 0) < 0)
		return -1;
	/* 1: drawn, with warnings to read */
	return WIFEXITED(status) && WEXITSTATUS(status) <= 1 ? now() - start : -1;
}

int main(int argc, char **argv)
{
	double best = -1;
	struct rusage used;

	for (int i = 0; argc > 2 && i < atoi(argv[1]); i++) {
		double took = run(argv + 2);
		if (took < 0)
			return 1;
		best = best < 0 || took < best ? took : best;
	}
	getrusage(RUSAGE_CHILDREN, &used);
	printf("%.2f %ld\n", best, used.ru_maxrss);
	return best < 0;
}
