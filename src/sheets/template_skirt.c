#include "sheets/template_skirt.h"

#include "sheets/template_unit.h"

#define PLAIN_CORNERS 8 /* a plain skirt has no more */

static const struct face_names names = { "lower end", "middle", "upper end", "lower edge",
	"upper edge" };

static struct unit_face face_of(struct arena *a, const struct part *p, struct lettering l)
{
	return unit_face(a, unit_of_part(a, p), FACES_FLUSH, l, &names);
}

/* One of an open side has its risers mitred to it. */
static const struct feature *first_mitre(const struct part *p)
{
	const struct feature *f = p->features;

	while (f && f->kind != FEATURE_MITRE)
		f = f->next;
	return f;
}

bool skirt_needs_template(struct arena *a, const struct part *p)
{
	struct lettering none = { UNITS_MILLIMETRES, 1, 0 };

	if (p->kind != &part_skirt)
		return false;
	if (first_mitre(p))
		return true;
	if (p->outline.n <= PLAIN_CORNERS)
		return false;
	struct unit_face f = face_of(a, p, none);
	return face_positions(a, &f).n > PLAIN_CORNERS;
}

/* So far to the left of a place of it as the middle of the flight is. */
static double way_inward(const struct stair *s, struct frame place)
{
	struct frame flight = s->flights[0].frame;
	struct vec3 middle = frame_place(flight, vec3(0, s->width / 2, 0));

	return vec3_dot(vec3_sub(middle, place.origin), flight.v);
}

/* Its outline is seen from its own z: from behind when that points to the wall, or, of one that is
 * seen from outside, into the stair. */
static bool place_is_seen_from_behind(const struct stair *s, const struct part *p, int i)
{
	struct frame place = p->places[i];
	bool from_wall = way_inward(s, place) * vec3_dot(place.w, s->flights[0].frame.v) < 0;

	return first_mitre(p) ? !from_wall : from_wall;
}

/* As its template lies on it, which is drawn for its first place. */
static bool is_seen_from_behind(const struct stair *s, const struct part *p)
{
	return place_is_seen_from_behind(s, p, 0);
}

/* One that stands on both walls shows either face. */
static const char *face_words(const struct stair *s, const struct part *p)
{
	bool at_right = way_inward(s, p->places[0]) > 0;

	for (int i = 1; i < p->count; i++)
		if (place_is_seen_from_behind(s, p, i) != is_seen_from_behind(s, p))
			return at_right ? "SHOW FACE UP on the right wall, DOWN on the left"
					: "SHOW FACE UP on the left wall, DOWN on the right";
	return "SHOW FACE UP";
}

/* Where its mitred riser cuts come out on the inner face: its thickness further back on the level,
 * square to the cut, which is plumb. */
static void add_short_points(struct draft *d, const struct part *p)
{
	for (const struct feature *f = first_mitre(p); f; f = f->next) {
		if (f->kind != FEATURE_MITRE)
			continue;
		struct vec foot = f->at.corners[0].at, top = f->at.corners[1].at;
		struct vec ahead = vec_scale(vec_left(vec_unit(vec_sub(top, foot))), -1);
		struct vec back = vec_scale(ahead, p->size.thickness);
		struct vec low = vec_add(foot, back), high = vec_add(top, back);
		draft_segment(d, PEN_HIDDEN, foot, low);
		draft_segment(d, PEN_HIDDEN, low, high);
		draft_label(d,
			(struct pattern_label){
				.at = vec_scale(vec_add(low, high), 0.5),
				.toward = vec_left(vec_unit(vec_sub(low, high))),
				.ways = { "here the mitre comes out below", "mitre, below" },
			});
	}
}

/* From edge to edge of the board, square across it. */
static struct chain across_at(struct arena *a, struct outline o, double x)
{
	struct vec *ends = NEW_N(a, struct vec, 2);

	ends[0] = vec(x, INFINITY);
	ends[1] = vec(x, -INFINITY);
	for (int i = 0; i < o.n; i++) {
		struct vec p = o.corners[i].at, q = o.corners[(i + 1) % o.n].at;
		if (near_enough(p.x, q.x) || fmin(p.x, q.x) > x || fmax(p.x, q.x) < x)
			continue;
		double y = p.y + (q.y - p.y) * (x - p.x) / (q.x - p.x);
		ends[0].y = fmin(ends[0].y, y);
		ends[1].y = fmax(ends[1].y, y);
	}
	return (struct chain){ NULL, ends, 2, false };
}

/* The outline ends in the long point of a scarf, whichever face that is of. */
enum long_point { LONG_ON_SHOW_FACE, LONG_BELOW };

/* Where the scarf meets the other face; `inward` along the board. */
static void add_scarf(struct draft *d, const struct part *p, enum long_point which, double x,
	double inward)
{
	struct chain line = across_at(d->arena, p->outline, x);
	bool saw_here = which == LONG_BELOW;

	draft_chain(d, saw_here ? PEN_TEMPLATE : PEN_HIDDEN, line);
	draft_label(d,
		(struct pattern_label){
			.at = vec_scale(vec_add(line.points[0], line.points[1]), 0.5),
			.toward = vec(inward, 0),
			.ways = { saw_here ? "scarf: saw here, it comes out below at the end"
					   : "here the scarf comes out below",
				saw_here ? "scarf, on this face" : "scarf, below" },
		});
}

/* A bevel that is positive lies further up the board the higher it is in the thickness. */
static void add_scarfs(struct draft *d, const struct stair *s, const struct part *p)
{
	struct box b = outline_extent(p->outline);
	bool show_is_low = is_seen_from_behind(s, p);
	double start = p->start.bevel, end = p->end.bevel, t = p->size.thickness;

	if (!near_enough(start, 0))
		add_scarf(d, p, (start > 0) == show_is_low ? LONG_ON_SHOW_FACE : LONG_BELOW,
			b.x0 + t * tan(fabs(start)), 1);
	if (!near_enough(end, 0))
		add_scarf(d, p, (end > 0) == show_is_low ? LONG_BELOW : LONG_ON_SHOW_FACE,
			b.x1 - t * tan(fabs(end)), -1);
}

static struct template_words words(struct arena *a, const struct stair *s, const struct part *p)
{
	struct template_words w = template_words(a, s->job);
	struct lettering l = job_lettering(s->job);

	w.piece = piece_words(a, p->mark, p->name, p->count);
	w.face = face_words(s, p);
	w.edges = is_seen_from_behind(s, p) ? "↑ upper edge, ↔ grain, → lower end"
					    : "↑ upper edge, ↔ grain, ← lower end";
	if (first_mitre(p))
		w.work = "Cut risers to the long points, blade at 45 degrees, leaning back under "
			 "the line.";
	else
		w.work = "Cut a little full and scribe it to treads and risers as they stand.";
	if (p->length_of.count)
		w.work = arena_printf(a,
			"%s The scarf to its next length leans as is lettered "
			"beside it.",
			w.work);
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
	const struct part *part)
{
	struct unit_face f = face_of(a, part, job_lettering(c->stair->job));
	struct template_job t = template_of_part(a, c, part);

	t.words = words(a, c->stair, part);
	t.positions = face_positions(a, &f);
	struct draft *d = face_draft(a, &f, t.positions, face_region(&f));
	add_short_points(d, part);
	add_scarfs(d, c->stair, part);
	if (is_seen_from_behind(c->stair, part))
		draft_mirror(d);
	t.pattern = d->pattern;
	return t;
}
