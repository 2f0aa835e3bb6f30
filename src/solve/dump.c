#include <string.h>

#include "pitchboard/stair.h"

/* Text that grows: each line is added behind what is there. */
struct text {
	struct arena *a;
	const char *so_far;
};

static void add(struct text *t, const char *line)
{
	t->so_far = arena_printf(t->a, "%s%s", t->so_far, line);
}

/* Without the minus that a rounded zero would show. */
static double tidy(double v)
{
	return fabs(v) < 0.0005 ? 0 : v;
}

static double degrees(double radians)
{
	return radians * 180 / PI;
}

static void add_flight(struct text *t, const struct flight *f)
{
	add(t,
		arena_printf(t->a,
			"flight: %d risers, %d steps, unit run %.3f, total run %.3f, pitch %.3f\n",
			f->risers, f->step_count, f->unit_run, f->total_run, degrees(f->pitch)));
	for (int i = 0; i < f->step_count; i++) {
		const struct step *s = &f->steps[i];
		add(t,
			arena_printf(t->a, "  step %d: level %.3f, nosing %.3f, riser %.3f%s%s\n",
				s->number, s->level, tidy(s->nosing_x), tidy(s->riser_x),
				s->open_left ? ", open left" : "",
				s->open_right ? ", open right" : ""));
	}
}

static void add_headroom(struct text *t, const struct headroom *h)
{
	switch (h->state) {
	case HEADROOM_NOT_CHECKED: add(t, "headroom: not checked\n"); return;
	case HEADROOM_ENOUGH: add(t, "headroom: enough"); break;
	case HEADROOM_SHORT: add(t, "headroom: short"); break;
	}
	add(t,
		arena_printf(t->a, ", %.3f at x %.3f (edge %.3f, ceiling %.3f)\n", h->least,
			tidy(h->x), tidy(h->edge_x), h->ceiling_z));
}

const char *stair_dump(struct arena *a, const struct stair *s)
{
	struct text t = { a, "" };
	add(&t,
		arena_printf(a, "stair: %d risers of %.4f make %.3f, %d treads, width %.3f\n",
			s->risers, s->unit_rise, s->total_rise, s->treads, s->width));
	add(&t,
		arena_printf(a, "structural floors: %.3f and %.3f\n", tidy(s->lower_structural),
			s->upper_structural));
	for (int i = 0; i < s->flight_count; i++)
		add_flight(&t, &s->flights[i]);
	add(&t, arena_printf(a, "walking line: %.3f\n", s->walking_length));
	add_headroom(&t, &s->headroom);
	add(&t, stair_options_text(a, s));
	return t.so_far;
}

static const char *option_line(struct arena *a, struct lettering l, const struct layout_option *o)
{
	return arena_printf(a, "%s %3d %10s %10s %12s %6s  %s\n", o->chosen ? "*" : " ", o->risers,
		length_letter(a, l, o->unit_rise), length_letter(a, l, o->unit_run),
		length_letter(a, l, o->total_run), angle_letter(a, o->pitch), o->verdict);
}

const char *stair_options_text(struct arena *a, const struct stair *s)
{
	struct text t = { a, "" };
	if (s->option_count == 0)
		return t.so_far;
	add(&t, "  risers     rise        run    total run  pitch\n");
	for (int i = 0; i < s->option_count; i++)
		add(&t, option_line(a, job_lettering(s->job), &s->options[i]));
	return t.so_far;
}
