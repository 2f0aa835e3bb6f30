#include "sheets/template_skirt.h"

#include "sheets/template_unit.h"

#define PLAIN_CORNERS 8 /* a plain skirt has no more */

static const struct face_names names = { "lower end", "middle", "upper end", "lower edge",
	"upper edge" };

static struct unit_face face_of(struct arena *a, const struct part *p, struct lettering l)
{
	return unit_face(a, unit_of_part(a, p), FACES_FLUSH, l, &names);
}

bool skirt_needs_template(struct arena *a, const struct part *p)
{
	struct lettering none = { UNITS_MILLIMETRES, 1, 0 };

	if (p->kind != &part_skirt || p->outline.n <= PLAIN_CORNERS)
		return false;
	struct unit_face f = face_of(a, p, none);
	return face_positions(a, &f).n > PLAIN_CORNERS;
}

/* Its outline is seen from its own z: from the wall when that points there. */
static bool is_seen_from_wall(const struct stair *s, const struct part *p)
{
	struct frame place = p->places[0], flight = s->flights[0].frame;
	struct vec3 middle = frame_place(flight, vec3(0, s->width / 2, 0));
	double away = vec3_dot(vec3_sub(middle, place.origin), flight.v);

	return away * vec3_dot(place.w, flight.v) < 0;
}

static struct template_words words(struct arena *a, const struct stair *s, const struct part *p)
{
	struct template_words w = template_words(a, s->job);
	struct lettering l = job_lettering(s->job);

	w.piece = piece_words(a, p->mark, p->name, p->count);
	w.face = "SHOW FACE UP";
	w.edges = is_seen_from_wall(s, p) ? "↑ upper edge, ↔ grain, → lower end"
					  : "↑ upper edge, ↔ grain, ← lower end";
	w.work = "Cut a little full and scribe it to treads and risers as they stand.";
	w.stock = arena_printf(a, "Board %s x %s x %s, %s",
		length_letter_inches(a, l, p->size.thickness),
		length_letter_inches(a, l, p->size.width), length_letter(a, l, p->size.length),
		p->material);
	w.from = "along from the lower end and across from the lower edge";
	w.doubt = "join again, or set each step to its figures in the table.";
	w.surer = "the roll is the surer way";
	return w;
}

struct template_job skirt_template(struct arena *a, const struct sheet_context *c,
	const struct part *part, const struct paper *paper, int number)
{
	struct unit_face f = face_of(a, part, job_lettering(c->stair->job));
	struct positions p = face_positions(a, &f);
	struct draft *d = face_draft(a, &f, p, face_region(&f));
	struct template_part *whole = NEW(a, struct template_part);

	if (is_seen_from_wall(c->stair, part))
		draft_mirror(d);
	*whole = (struct template_part){ "", d->pattern };
	return (struct template_job){
		.context = c,
		.paper = paper,
		.number = number,
		.mark = part->mark,
		.name = part->mark,
		.words = words(a, c->stair, part),
		.pattern = d->pattern,
		.parts = whole,
		.part_count = 1,
		.positions = p,
	};
}
