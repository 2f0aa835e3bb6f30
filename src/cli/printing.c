#include "cli/printing.h"

#include <stdio.h>

enum status printing_open(struct arena *a, const char *dir, struct printing *p)
{
	const char *problem = NULL;
	struct diags d;

	diags_init(&d, a, dir, NULL);
	p->stationery = stationery_read(a, dir, &d);
	diags_print(&d, stderr);
	if (!p->stationery)
		return STATUS_MACHINE;
	p->faces = faces_load(a, dir, &problem);
	if (p->faces)
		return STATUS_DONE;
	complain("%s", problem);
	return STATUS_MACHINE;
}
