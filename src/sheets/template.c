#include "sheets/template.h"

#include "sheets/template_sheets.h"
#include "sheets/template_stringer.h"

struct drawing *templates_draw(struct arena *a, const struct sheet_context *c,
	const struct paper *tile_paper)
{
	struct drawing *list = NULL;
	int number = 0;

	for (const struct part *p = c->parts; p; p = p->next) {
		if (!p->stringer || p->outline.n < 3)
			continue;
		const struct template_job t = stringer_template(a, c, p, tile_paper, ++number);
		*drawings_end(&list) = template_roll(a, &t);
		*drawings_end(&list) = template_tiles(a, (struct template_group){ &t, 1 });
		*drawings_end(&list) = template_step(a, &t);
	}
	return list;
}
