/*
 * Any bytes to a job, or to problems that can be printed; never neither, never both.
 */
#include "fuzz/harness.h"
#include "pitchboard/job.h"

#include <stdlib.h>
#include <string.h>

static void print_away(const struct diags *d)
{
	FILE *nowhere = fopen("/dev/null", "w");

	if (!nowhere)
		abort();
	diags_print(d, nowhere);
	fclose(nowhere);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
	if (size && memchr(data, 0, size))
		return 0;

	struct arena *a = arena_new();
	const char *text = size ? arena_strndup(a, (const char *)data, size) : "";
	struct diags d;
	diags_init(&d, a, "fuzz.yaml", text);
	const struct job *job = job_read(a, text, &d);
	if ((job == NULL) != (d.errors > 0))
		abort();
	print_away(&d);
	arena_free(a);
	return 0;
}
