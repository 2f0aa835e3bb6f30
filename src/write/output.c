#include "write/output.h"

cairo_status_t output_stream(void *closure, const unsigned char *bytes, unsigned length)
{
	text_put_bytes(closure, bytes, length);
	return CAIRO_STATUS_SUCCESS;
}

/* Cairo keeps the first error and does nothing more after it, so asking once at the end will do. */
const char *output_finish(cairo_t *cr, cairo_surface_t *surface)
{
	cairo_status_t painting = cairo_status(cr);

	cairo_destroy(cr);
	cairo_surface_finish(surface);
	cairo_status_t status = painting ? painting : cairo_surface_status(surface);
	cairo_surface_destroy(surface);
	return status ? cairo_status_to_string(status) : NULL;
}
