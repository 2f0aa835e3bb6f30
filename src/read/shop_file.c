#include "read/shop_file.h"

#include "base/file.h"

bool shop_file_read(struct arena *a, const char *path, const struct group *g, void *into,
	struct diags *d)
{
	struct file_result f = file_read(a, path);
	struct diags own;

	if (!f.file) {
		diag_error(d, (struct pos){ 0, 0 }, NULL, "%s", f.problem);
		return false;
	}
	const char *text = arena_strndup(a, (const char *)f.file->bytes, f.file->size);
	diags_init(&own, a, path, text);
	const struct node *root = node_load(a, text, &own);
	int finest = 0;
	struct field_reader reader = { a, &own, g, UNITS_MILLIMETRES, &finest };
	if (root)
		group_read(&reader, g, root, into);
	if (own.errors)
		*d = own;
	return !own.errors;
}
