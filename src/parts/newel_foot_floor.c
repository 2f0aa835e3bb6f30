#include "parts/existing.h"
#include "parts/fixing.h"
#include "parts/newel_foot.h"

/* A newel on a floor: a newel bolt, alone or through a plate, or let in and bolted to a joist. */

#define BOLT_IN_FLOOR 90.0 /* in joist or blocking */
#define PLATE_THICK 6.0
#define PLATE_EDGE 10.0  /* from the recess to the newel's face */
#define PLATE_SCREW 51.0 /* 2 in */
#define IN_JOIST 60.0    /* through bolt beyond the newel: joist, nut and washers */

/* What is laid on the structure under its foot. */
static double finish_under(const struct post *p)
{
	const struct stair *s = p->rod->stair;
	return fmax(p->end.newel_z - (p->is_bottom ? s->lower_structural : s->upper_structural), 0);
}

static void floor_bolt_add(struct pieces *list, const struct post *p)
{
	struct vec middle = vec(p->section / 2, p->section / 2);
	struct bore b = { .text = "newel bolt, into joist or blocking" };
	b.fixing_length = BOLT_IN_NEWEL + finish_under(p) + BOLT_IN_FLOOR;
	foot_bolt_add(list, p, middle, b);
	foot_access_add(list, p, middle);
}

/* The bolt goes through its middle. */
static void plate_add(struct pieces *list, const struct post *p)
{
	double middle = p->section / 2, out = p->core / 8;
	struct bore plate = { .fixing = FIXING_PLATE, .text = "newel plate, let in flush" };
	plate.at = post_mouth(vec3(0, middle, middle), post_back, post_down);
	plate.size = bore_round(p->core - 2 * PLATE_EDGE, PLATE_THICK);
	post_drill(list, p, plate);
	struct fastener screw =
		fastener_screw_within(FOOT_SCREW, PLATE_SCREW, p->rod->job->about.units);
	struct bore b = fastener_bore(screw, screw.length);
	b.size = bore_round(screw.pilot, screw.length);
	b.text = "screw, plate to newel";
	for (int i = 0; i < 4; i++) {
		double y = middle + (i & 1 ? out : -out), z = middle + (i & 2 ? out : -out);
		b.at = post_mouth(vec3(0, y, z), post_back, post_down);
		post_drill(list, p, b);
	}
	floor_bolt_add(list, p);
}

/* Two bolts across, at a third of what is let in and at two, to either side of the middle. */
static void cross_bolts_add(struct pieces *list, const struct post *p, double let_in)
{
	struct bore b = { .fixing = FIXING_BOLT, .fixing_width = foot_bits(p).bolt };
	b.text = "bolt through the newel into joist or blocking";
	b.size = bore_round(foot_bits(p).bolt, p->section);
	b.fixing_length = p->section + IN_JOIST;
	for (int i = 0; i < 2; i++) {
		double y = p->section / 2 + (i ? 1 : -1) * p->core / 5;
		b.at = post_mouth(vec3(let_in * (i + 1) / 3, y, foot_outer_face(p)), post_up,
			foot_outward(p));
		post_drill(list, p, b);
	}
}

/* How deep a top newel goes into what it stands on. */
static double into_header(const struct post *p)
{
	return p->is_bottom ? 0 : fmax(existing_header_top(p->rod) - p->end.newel_z, 0);
}

enum newel_held foot_on_floor_fix(struct pieces *list, const struct post *p)
{
	const struct job_newels *n = &p->rod->job->newels;
	double let_in = p->is_bottom ? n->let_in : 0;
	if (let_in > 0)
		foot_note_add(list->arena, p,
			arena_printf(list->arena, "let %s into the floor",
				length_say(list->arena, job_lettering(p->rod->job), let_in)));
	if (into_header(p) > NEAR_ENOUGH)
		foot_note_add(list->arena, p,
			arena_printf(list->arena,
				"let %s into the header, as low as the landing nosing's underside",
				length_say(list->arena, job_lettering(p->rod->job),
					into_header(p))));
	if (let_in >= LEAST_LET_IN) {
		cross_bolts_add(list, p, let_in);
		return NEWEL_HELD;
	}
	switch (n->floor_fixing) {
	case FLOOR_FIXING_BOLT: floor_bolt_add(list, p); return NEWEL_HELD;
	case FLOOR_FIXING_PLATE: plate_add(list, p); return NEWEL_HELD;
	case FLOOR_FIXING_NONE: return NEWEL_LOOSE_ON_FLOOR;
	}
	return NEWEL_HELD;
}
