#include "sheets/stands.h"

#include "sheets/reader.h"

struct stands list_stands(struct arena *a, const struct part *parts)
{
	struct stringer_stand *at;
	int most = 0, n = 0;

	for (const struct part *p = parts; p; p = p->next)
		most += p->stringer ? p->count : 0;
	at = NEW_N(a, struct stringer_stand, most + 1);
	for (const struct part *p = parts; p; p = p->next)
		for (int i = 0; p->stringer && i < p->count; i++) {
			double y = p->places[i].origin.y;
			double other = frame_place(p->places[i], vec3(0, 0, p->size.thickness)).y;
			struct stringer_stand one = { p, fmin(y, other), fmax(y, other) };
			int k = n++;
			for (; k > 0 && at[k - 1].low > one.low; k--)
				at[k] = at[k - 1];
			at[k] = one;
		}
	return (struct stands){ at, n };
}

static bool is_open_all_the_way(const struct stair *s, const struct job_side *side)
{
	return side->kind == SIDE_OPEN && side->from_step <= 1 &&
		(side->to_step == 0 || side->to_step >= s->treads);
}

bool has_section(const struct sheet_context *c)
{
	const struct stair *s = c->stair;

	if (sheet_says(c, SAYS_SECTION))
		return true;
	return !is_open_all_the_way(s, &s->job->stair.left) &&
		!is_open_all_the_way(s, &s->job->stair.right);
}

static bool is_clear(struct stands stands, double y)
{
	for (int i = 0; i < stands.n; i++)
		if (y > stands.at[i].low - 1 && y < stands.at[i].high + 1)
			return false;
	return true;
}

double section_y(struct arena *a, const struct sheet_context *c)
{
	static const double shares[] = { 0.42, 0.36, 0.46, 0.32, 0.54, 0.5 };
	struct stands stands = list_stands(a, c->parts);
	int i = 0;

	while (i < 5 && !is_clear(stands, c->stair->width * shares[i]))
		i++;
	return c->stair->width * shares[i];
}

struct vec3 section_point(struct arena *a, const struct sheet_context *c)
{
	return frame_place(c->stair->flights[0].frame, vec3(0, section_y(a, c), 0));
}

struct view section_view(struct arena *a, const struct sheet_context *c, struct box window)
{
	struct view_spec spec = { .from = VIEW_FROM_RIGHT, .cut = true, .window = window };

	spec.at = vec3_dot(section_point(a, c), view_frame(spec.from).w);
	return view_make(a, c->parts, spec);
}
