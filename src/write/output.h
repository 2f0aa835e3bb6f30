/*
 * A file as it comes from Cairo, still in memory.
 */
#ifndef WRITE_OUTPUT_H
#define WRITE_OUTPUT_H

#include <cairo.h>

#include "base/text.h"
#include "pitchboard/write.h"

struct output {
	struct text *text;
	const char *problem; /* NULL: the text holds the whole file */
};

/* For Cairo's surfaces that write to a stream; `closure` is the text. */
cairo_status_t output_stream(void *closure, const unsigned char *bytes, unsigned length);

/* Ends a surface and its context, and tells what went wrong in all that was done on them. */
const char *output_finish(cairo_t *cr, cairo_surface_t *surface);

#endif
