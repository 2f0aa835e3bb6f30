#include "parts/newel_foot.h"

#include "parts/fixing.h"

#define ACCESS_UP 65.0 /* its middle over the foot: room for a wrench under the nut's washer */
#define PLUG 10.0      /* its length */

struct foot_bits foot_bits(const struct post *p)
{
	enum units units = p->rod->job->about.units;

	return (struct foot_bits){ round_size(units, 3.0 / 8, 10), round_size(units, 9.0 / 32, 7),
		round_size(units, 1, 25) };
}

void foot_note_add(struct arena *a, const struct post *p, const char *text)
{
	const char *before = p->wood->note;
	p->wood->note = before ? arena_printf(a, "%s; %s", before, text) : text;
}

double foot_outer_face(const struct post *p)
{
	return p->side->hand == HAND_RIGHT ? 0 : p->section;
}

struct vec3 foot_outward(const struct post *p)
{
	return vec3(0, 0, p->side->hand == HAND_RIGHT ? -1 : 1);
}

void foot_bolt_add(struct pieces *list, const struct post *p, struct vec at, struct bore b)
{
	b.at = post_mouth(vec3(p->slope * at.x, at.x, at.y), post_back, post_down);
	b.size = bore_round(foot_bits(p).bolt, BOLT_IN_NEWEL);
	b.fixing = FIXING_NEWEL_BOLT;
	b.fixing_width = b.size.width;
	post_drill(list, p, b);
}

void foot_access_add(struct pieces *list, const struct post *p, struct vec at)
{
	struct bore b = { .fixing = FIXING_PLUG, .text = "to the bolt's nut, plugged" };
	double level = p->slope * at.x + ACCESS_UP, face = foot_outer_face(p);
	b.at = post_mouth(vec3(level, at.x, face), post_up, foot_outward(p));
	b.size = bore_round(foot_bits(p).access, fabs(at.y - face) + foot_bits(p).bolt);
	b.fixing_width = b.size.width;
	b.fixing_length = PLUG;
	post_drill(list, p, b);
}

enum newel_held newel_foot_fix(struct pieces *list, const struct post *p)
{
	switch (p->end.kind) {
	case RAIL_END_NEWEL:
	case RAIL_END_FLOOR_NEWEL: return foot_on_floor_fix(list, p);
	case RAIL_END_TREAD_NEWEL: return foot_on_tread_fix(list, p);
	case RAIL_END_STRING_NEWEL: return foot_on_string_fix(list, p);
	case RAIL_END_MET_NEWEL:
	case RAIL_END_PLUMB:
	case RAIL_END_WALL: break;
	}
	return NEWEL_HELD;
}

/* ---- what is said of one that is not held ---- */

void newel_foot_warn(const struct post *p, enum newel_held held, struct diags *d)
{
	const struct job_newels *n = &p->rod->job->newels;
	const char *section = length_say(d->arena, job_lettering(p->rod->job), n->section);
	switch (held) {
	case NEWEL_HELD: return;
	case NEWEL_LOOSE_ON_FLOOR:
		diag_warning(d, rod_pos(p->rod, n->src, "floor_fixing"),
			arena_printf(d->arena, "bolt or plate, or let bottom ones in by %s or more",
				length_say(d->arena, job_lettering(p->rod->job), LEAST_LET_IN)),
			"newels.floor_fixing: nothing is drilled that holds a newel to its floor");
		return;
	case NEWEL_WITHOUT_DOWELS:
		diag_warning(d, rod_pos(p->rod, n->src, "section"),
			"take a thicker newel, a narrower return or an edge less rounded, or fix "
			"it to the stringer",
			"the edges of the tread leave no wood for dowels under a newel of %s",
			section);
		return;
	case NEWEL_WITHOUT_BOLT:
		diag_warning(d, rod_pos(p->rod, n->src, "section"),
			"take a thicker newel or a thicker stringer, or a deeper plank",
			"the stringer under a newel of %s leaves no wood for its bolt: weak for a "
			"guard",
			section);
		return;
	}
}
