#include "parts/newel.h"

/*
 * Newels: square posts at the ends of a rail.  Each stands as high over the top
 * of the rail, measured at the face that the rail meets, as the job says; a cap
 * comes on top of that.
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

static double newel_core(const struct job *job)
{
	const struct job_newels *n = &job->newels;
	return n->section - (n->build == NEWEL_PANELLED ? 2 * n->panels.strip_thickness : 0);
}

static bool cap_wanted(const struct post *p)
{
	const struct job_newel_cap *cap = &p->rod->job->newels.cap;
	switch (cap->on) {
	case CAP_ON_ALL: return cap->kind != CAP_NONE;
	case CAP_ON_BOTTOM: return cap->kind != CAP_NONE && p->is_bottom;
	case CAP_ON_TOP: return cap->kind != CAP_NONE && !p->is_bottom;
	}
	return false;
}

/* Level up to which something comes against the faces of a newel. */
static double covered_level(const struct post *p)
{
	const struct rod *r = p->rod;
	bool housed = p->side->kind == STRINGER_HOUSED;
	double back = p->end.newel_x + p->section;
	switch (p->end.kind) {
	case RAIL_END_NEWEL:
		if (p->is_bottom)
			return housed ? fmax(r->rise, rod_housed_edge_z(r, back)) : r->rise;
		return housed ? rod_housed_edge_z(r, p->end.newel_x) : r->top;
	case RAIL_END_STRING_NEWEL:
	case RAIL_END_TREAD_NEWEL:
	case RAIL_END_FLOOR_NEWEL:
	case RAIL_END_MET_NEWEL:
	case RAIL_END_PLUMB:
	case RAIL_END_WALL: break;
	}
	return p->end.newel_z;
}

static struct post post_of(const struct stretch *s, enum stretch_end end)
{
	const struct rod *r = s->rod;
	struct rail_end e = end == STRETCH_FOOT ? s->foot : s->head;
	struct post p = { .rod = r, .stretch = s, .side = s->side, .end = e };
	struct frame at = { .u = { 0, 0, 1 }, .v = { 1, 0, 0 }, .w = { 0, 1, 0 } };
	p.is_bottom = end == STRETCH_FOOT && !s->run;
	p.section = r->job->newels.section;
	p.core = newel_core(r->job);
	at.origin = vec3(e.newel_x, -p.section / 2, e.newel_z);
	p.place = frame_compose(s->axes, at);
	p.height = e.rail_top + r->job->newels.above_rail - e.newel_z;
	p.slope = e.kind == RAIL_END_STRING_NEWEL ? s->slope : 0;
	p.covered = covered_level(&p) - e.newel_z;
	p.has_cap = cap_wanted(&p);
	return p;
}

/* A newel on a tread must leave the nosing above alone. */
static bool stands(struct arena *a, const struct post *p, struct diags *d)
{
	const struct rod *r = p->rod;
	bool at_floor = p->end.newel_z > r->top - NEAR_ENOUGH;
	double room = r->run - (at_floor ? 0 : r->nosing);
	if (p->end.kind != RAIL_END_TREAD_NEWEL || p->section <= room + NEAR_ENOUGH)
		return true;
	diag_error(d, rod_pos(r, r->job->newels.src, "section"),
		job_write_most(a, r->job, "newels.section", room),
		"a newel of %s does not stand on a tread: there is room for %s",
		length_say(a, job_lettering(r->job), p->section),
		length_say(a, job_lettering(r->job), room));
	return false;
}

/* Only what stands on the floor is let into it. */
static void warn_of_let_in(const struct rod *r, const struct stretch *all, struct diags *d)
{
	if (r->job->newels.let_in <= 0)
		return;
	for (const struct stretch *k = all; k; k = k->next) {
		if (k->run || k->foot.kind != RAIL_END_TREAD_NEWEL)
			continue;
		diag_warning(d, rod_pos(r, r->job->newels.src, "let_in"),
			"it is bolted to what is under its tread: leave out let_in",
			"newels.let_in: the bottom newel on the %s stands on a tread and is not "
			"let into the floor",
			hand_word(k->side->hand));
	}
}

/* One piece alone is no unit. */
static enum newel_held newel_add(struct pieces *list, struct post *p, int number, struct diags *d)
{
	bool panelled = p->rod->job->newels.build == NEWEL_PANELLED;
	list->unit = panelled || p->has_cap ? number : 0;
	if (!newel_post_add(list, p, d))
		return NEWEL_HELD;
	if (p->has_cap)
		cap_add(list, p, d);
	return newel_joints_add(list, p);
}

static struct part *make(struct arena *a, const struct stair *s, const struct flight *f,
	struct diags *d)
{
	struct pieces list = { .arena = a, .kind = &part_newel };
	struct rod r = rod_make(s, f);
	int before = d->errors;
	/* what is wrong with one is said once */
	const struct stretch *all = stretches_make(a, &r);
	enum newel_held held = NEWEL_HELD;
	int number = 0;
	warn_of_let_in(&r, all, d);
	for (const struct stretch *k = all; k; k = k->next)
		for (int i = 0; i < 2 && d->errors == before; i++) {
			struct post p = post_of(k, i == 0 ? STRETCH_FOOT : STRETCH_HEAD);
			p.all = all;
			if (!has_newel(p.end) || !stands(a, &p, d))
				continue;
			enum newel_held this = newel_add(&list, &p, ++number, d);
			if (held == NEWEL_HELD)
				newel_foot_warn(&p, this, d);
			held = this == NEWEL_HELD ? held : this;
		}
	return list.first;
}

const struct part_kind part_newel = { "newel", "N", make };
