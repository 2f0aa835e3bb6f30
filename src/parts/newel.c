#include "parts/piece.h"
#include "parts/stretch.h"

/*
 * Newels: square posts at the ends of a rail.  Each stands as high over the top
 * of the rail, measured at the face that the rail meets, as the job says.
 */

static bool has_newel(struct rail_end e)
{
	switch (e.kind) {
	case RAIL_END_NEWEL:
	case RAIL_END_TREAD_NEWEL:
	case RAIL_END_STRING_NEWEL:
	case RAIL_END_FLOOR_NEWEL: return true;
	case RAIL_END_MET_NEWEL:
	case RAIL_END_PLUMB:
	case RAIL_END_WALL: return false;
	}
	return false;
}

/* x up, y along the flight; the foot follows the rake where it stands on a stringer's edge. */
static struct outline shape(struct arena *a, double height, double section, double foot_slope)
{
	struct path p = path_begin(a, 4);
	path_to(&p, 0, 0);
	path_to(&p, height, 0);
	path_to(&p, height, section);
	path_to(&p, foot_slope * section, section);
	return path_close(p);
}

static void newel_add(struct pieces *list, const struct stretch *s, struct rail_end e)
{
	struct arena *a = list->arena;
	const struct job *job = s->rod->job;
	double section = job->newels.section;
	double height = e.rail_top + job->newels.above_rail - e.newel_z;
	bool raked = e.kind == RAIL_END_STRING_NEWEL;
	struct frame post = { .u = { 0, 0, 1 }, .v = { 1, 0, 0 }, .w = { 0, 1, 0 } };
	post.origin = vec3(e.newel_x, -section / 2, e.newel_z);
	struct part *p =
		piece_add(list, "newel", job->material.balustrade, frame_compose(s->axes, post));
	p->size = (struct part_size){ height, section, section };
	p->outline = shape(a, height, section, raked ? s->slope : 0);
	p->start.mitre = raked ? s->pitch : 0;
	p->solids = solid_prism(a, profile_of(a, p->outline), 0, section);
}

/* A newel on a tread must leave the nosing above alone. */
static bool stands(struct arena *a, const struct rod *r, struct rail_end e, struct diags *d)
{
	double section = r->job->newels.section;
	bool at_floor = e.newel_z > r->top - NEAR_ENOUGH;
	double room = r->run - (at_floor ? 0 : r->nosing);
	if (e.kind != RAIL_END_TREAD_NEWEL || section <= room + NEAR_ENOUGH)
		return true;
	diag_error(d, rod_pos(r, r->job->newels.src, "section"), NULL,
		"a newel of %s does not stand on a tread: there is room for %s",
		length_say(a, job_lettering(r->job), section),
		length_say(a, job_lettering(r->job), room));
	return false;
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_newel };
	struct rod r = rod_make(s, f);
	int before = d->errors;
	/* what is wrong with several is said once */
	for (const struct stretch *k = stretches_make(a, &r); k; k = k->next) {
		const struct rail_end ends[2] = { k->foot, k->head };
		for (int i = 0; i < 2 && d->errors == before; i++)
			if (has_newel(ends[i]) && stands(a, &r, ends[i], d))
				newel_add(&list, k, ends[i]);
	}
	return list.first;
}

const struct part_kind part_newel = { "newel", "N", make };
