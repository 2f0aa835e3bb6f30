/*
 * Feeds files to a fuzz harness: the corpus as a test, built with any compiler.
 */
#include "fuzz/harness.h"

#include <stdio.h>

enum { LONGEST = 1 << 16 };

static int replay(const char *path)
{
	static uint8_t data[LONGEST];
	FILE *from = fopen(path, "rb");

	if (!from)
		return 0;
	size_t n = fread(data, 1, sizeof(data), from);
	fclose(from);
	LLVMFuzzerTestOneInput(data, n);
	return 1;
}

int main(int argc, char **argv)
{
	printf("1..%d\n", argc - 1);
	for (int i = 1; i < argc; i++) {
		int was_read = replay(argv[i]);
		printf("%s %d - %s\n", was_read ? "ok" : "not ok", i, argv[i]);
		fflush(stdout);
	}
	return 0;
}
