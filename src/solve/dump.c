/*
 * The solved stair as text, and the layouts it was chosen from.
 */
#include "base/text.h"
#include "pitchboard/stair.h"

static double degrees(double radians)
{
	return radians * 180 / PI;
}

static void add_flight(struct text *t, const struct flight *f)
{
	text_add(t, "flight: %d risers, %d steps, unit run %.3f, total run %.3f, pitch %.3f\n",
		f->risers, f->step_count, f->unit_run, f->total_run, degrees(f->pitch));
	for (int i = 0; i < f->step_count; i++) {
		const struct step *s = &f->steps[i];
		text_add(t, "  step %d: level %.3f, nosing %.3f, riser %.3f%s%s\n", s->number,
			s->level, text_tidy(s->nosing_x), text_tidy(s->riser_x),
			s->open_left ? ", open left" : "", s->open_right ? ", open right" : "");
	}
}

static void add_opening(struct text *t, const struct stair *s)
{
	const struct box *o = &s->opening;
	if (o->x0 < o->x1)
		text_add(t, "opening: x %.3f to %.3f, y %.3f to %.3f, floor %.3f deep\n",
			text_tidy(o->x0), o->x1, text_tidy(o->y0), o->y1, s->floor_depth);
}

static void add_headroom(struct text *t, const struct headroom *h)
{
	switch (h->state) {
	case HEADROOM_NOT_CHECKED: text_add(t, "headroom: not checked\n"); return;
	case HEADROOM_ENOUGH: text_add(t, "headroom: enough"); break;
	case HEADROOM_SHORT: text_add(t, "headroom: short"); break;
	}
	text_add(t, ", %.3f at x %.3f (ceiling %.3f)\n", h->least, text_tidy(h->x), h->ceiling_z);
}

const char *stair_dump(struct arena *a, const struct stair *s)
{
	struct text t = { .arena = a };
	text_add(&t, "stair: %d risers of %.4f make %.3f, %d treads, width %.3f\n", s->risers,
		s->unit_rise, s->total_rise, s->treads, s->width);
	text_add(&t, "structural floors: %.3f and %.3f\n", text_tidy(s->lower_structural),
		s->upper_structural);
	for (int i = 0; i < s->flight_count; i++)
		add_flight(&t, &s->flights[i]);
	text_add(&t, "walking line: %.3f\n", s->walking_length);
	add_opening(&t, s);
	add_headroom(&t, &s->headroom);
	text_add(&t, "%s", stair_options_text(a, s));
	return text_chars(&t);
}

static void add_option(struct text *t, struct lettering l, const struct layout_option *o)
{
	text_add(t, "%s %3d %10s %10s %12s %6s %10s  %s\n", o->chosen ? "*" : " ", o->risers,
		length_letter(t->arena, l, o->unit_rise), length_letter(t->arena, l, o->unit_run),
		length_letter(t->arena, l, o->total_run), angle_letter(t->arena, o->pitch),
		o->headroom > 0 ? length_letter(t->arena, l, o->headroom) : "", o->verdict);
}

const char *stair_options_text(struct arena *a, const struct stair *s)
{
	struct text t = { .arena = a };
	if (s->option_count == 0)
		return "";
	text_add(&t, "  risers     rise        run    total run  pitch   headroom\n");
	for (int i = 0; i < s->option_count; i++)
		add_option(&t, job_lettering(s->job), &s->options[i]);
	return text_chars(&t);
}
