#include "parts/fixing.h"
#include "parts/newel_foot.h"

/* A newel on the edge of a closed string: a newel bolt, dowels before and behind it, and a leg
 * that hangs down outside the string and is screwed to it. */

#define SEAT_DEPTH 40.0      /* of a dowel, in newel and in string alike */
#define BESIDE_THREAD 4.0    /* hole to the stringer's face: beside a thread less than elsewhere */
#define SCREW_IN_STRING 25.0 /* what it bites into */
#define LEG_HEAD 8.0         /* of the leg: its head lies so deep, under a plug */

/* Plumb, before and behind the bolt, in the wood that no housing goes into. */
static void seat_dowels_add(struct pieces *list, const struct post *p, struct post_contact c)
{
	enum units units = p->rod->job->about.units;
	double thick = dowel_within(units, round_size(units, 1.0 / 2, 12), (c.in1 - c.in0) / 2);
	if (thick <= 0)
		return;
	struct bore b = dowel_bore((struct dowel){ thick, 2 * SEAT_DEPTH, SEAT_DEPTH, SEAT_DEPTH });
	b.text = "dowel, newel on string";
	for (int i = -1; i <= 1; i += 2) {
		double y = p->section / 2 + i * p->core / 4;
		b.at = post_mouth(vec3(p->slope * y, y, post_across(p, (c.in0 + c.in1) / 2)),
			post_back, post_down);
		post_drill(list, p, b);
	}
}

static bool seat_bolt_add(struct pieces *list, const struct post *p, struct post_contact c)
{
	struct vec at = vec(p->section / 2, post_across(p, (c.in0 + c.in1) / 2));
	struct bore b = { .text = "newel bolt, into the string" };
	if (c.in1 - c.in0 < foot_bits(p).thread + 2 * BESIDE_THREAD)
		return false;
	b.mate = bore_round(foot_bits(p).thread, BOLT_IN_STRING);
	b.fixing_length = BOLT_IN_NEWEL + BOLT_IN_STRING;
	foot_bolt_add(list, p, at, b);
	foot_access_add(list, p, at);
	return true;
}

static void leg_plug_add(struct pieces *list, const struct post *p, struct vec at, double head)
{
	struct bore b = { .fixing = FIXING_PLUG, .text = "for the head and its plug" };
	double in = (p->section - p->core) / 2;
	double face = p->side->hand == HAND_RIGHT ? in : p->section - in;
	b.at = post_mouth(vec3(at.x, at.y, face), post_up, foot_outward(p));
	b.size = bore_round(head, LEG_HEAD);
	b.fixing_width = head;
	b.fixing_length = LEG_HEAD;
	post_drill(list, p, b);
}

/* From outside through the leg; the mouth is on the face against the string. */
static void leg_screws_add(struct pieces *list, const struct post *p)
{
	const struct rod *r = p->rod;
	bool right = p->side->hand == HAND_RIGHT;
	double string = p->side->inner - p->side->outer, thick = (p->core - string) / 2;
	double solid = string - r->job->stringers.housing_depth;
	double face = post_across(p, p->side->outer);
	double most = thick - LEG_HEAD + fmin(SCREW_IN_STRING, solid - 2);
	struct fastener screw = fastener_screw_within(FOOT_SCREW, most, r->job->about.units);
	struct bore b = fastener_bore(screw, thick);
	b.mate = bore_round(screw.pilot, screw.length - (thick - LEG_HEAD));
	b.text = "screw through the leg, plugged";
	for (int i = 0; i < 4; i++) {
		double y = p->section / 2 + (i & 1 ? 1 : -1) * p->core / 4;
		double x = p->slope * y - p->leg * (i & 2 ? 0.7 : 0.3);
		b.at = post_mouth(vec3(x, y, face), post_up, vec3(0, 0, right ? 1 : -1));
		post_drill(list, p, b);
		leg_plug_add(list, p, vec(x, y), screw.head);
	}
}

enum newel_held foot_on_string_fix(struct pieces *list, const struct post *p)
{
	struct post_contact c = post_contact(p);
	bool bolted = seat_bolt_add(list, p, c);
	foot_note_add(list->arena, p, "pack out and screw to the end of the wall as well");
	seat_dowels_add(list, p, c);
	if (p->leg > 0)
		leg_screws_add(list, p);
	return bolted ? NEWEL_HELD : NEWEL_WITHOUT_BOLT;
}
