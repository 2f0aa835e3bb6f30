#include "draw/dimension.h"

#include <assert.h>
#include <string.h>

#include "draw/bounds.h"

/* Millimetres on paper; US architectural habit and ISO 129 agree on them within a hair
 * (both from memory). */
#define FIRST_LANE 8.0 /* outline to the first dimension line */
#define FOOT_GAP 1.2   /* the extension line starts this far from the work */
#define OVERSHOOT 1.6  /* and runs this far past the dimension line */
#define TICK 2.4       /* length of the oblique stroke */
#define TEXT_LIFT 0.9  /* dimension line to the figure's base line */
#define TEXT_AIR 0.9   /* between the figure and the ends of its link */

#define FARTHEST 25.0 /* that a figure goes off to be clear of lines */

#define LANE_AIR 2.0 /* between one lane's figures and the next line */

struct dims dims_begin(struct drawing *g, struct measure m, double letter, struct box around)
{
	return (struct dims){ .drawing = g,
		.measure = m,
		.letter = letter,
		.around = around,
		.lowest = -INFINITY };
}

static bool is_upright(enum dim_side side)
{
	return side == DIM_LEFT || side == DIM_RIGHT;
}

static struct dim_chain *chain_new(struct dims *d, enum dim_side side, const struct dim_link *links,
	int n)
{
	struct arena *a = d->drawing->arena;
	struct dim_chain *c = NEW(a, struct dim_chain);
	struct dim_link *copy = NEW_N(a, struct dim_link, n);

	memcpy(copy, links, sizeof(*links) * (size_t)n);
	*c = (struct dim_chain){ .side = side, .links = copy, .n = n };
	return c;
}

static double chain_length(const struct dim_chain *c)
{
	return c->links[c->n - 1].b - c->links[0].a;
}

/* Shortest first; of equal ones the earlier request stays nearer. */
static void insert(struct dims *d, struct dim_chain *c)
{
	struct dim_chain **at = &d->first[c->side];

	while (*at && chain_length(*at) <= chain_length(c) + NEAR_ENOUGH)
		at = &(*at)->next;
	c->next = *at;
	*at = c;
}

void dims_chain(struct dims *d, enum dim_side side, const struct dim_link *links, int n)
{
	assert(n > 0);
	insert(d, chain_new(d, side, links, n));
}

void dims_steps(struct dims *d, enum dim_side side, const struct dim_link *links, int n,
	const double *ticks, int tick_count)
{
	struct dim_chain *c = chain_new(d, side, links, n);
	double *copy = NEW_N(d->drawing->arena, double, tick_count + 1);

	memcpy(copy, ticks, sizeof(*ticks) * (size_t)tick_count);
	c->ticks = copy;
	c->tick_count = tick_count;
	insert(d, c);
}

/* Where a link's figure stands: the interval it takes along the chain, and its tier over the line.
 */
struct figure {
	double from, to;
	int tier;
	double width;
};

struct laid {
	struct figure *figures;
	double from, to; /* all that the chain takes along its lane */
	int tiers;
};

static bool clashes(const struct figure *figures, int n, struct figure f)
{
	for (int i = 0; i < n; i++)
		if (figures[i].tier == f.tier && figures[i].width > 0 &&
			f.from < figures[i].to + TEXT_AIR && figures[i].from < f.to + TEXT_AIR)
			return true;
	return false;
}

/* How many extension lines of the chains further out run through this stretch of the lane. */
static int crossings(const struct dim_chain *c, double from, double to)
{
	int n = 0;

	for (c = c->next; c; c = c->next)
		for (int i = 0; i < c->n; i++) {
			const struct dim_link *l = &c->links[i];
			n += i == 0 && !isnan(l->foot_a) && l->a > from && l->a < to;
			n += !isnan(l->foot_b) && l->b > from && l->b < to;
		}
	return n;
}

/* Past the extension lines of the chains further out, where a figure that goes on after its link
 * would be struck by them and they end soon. */
static double clear_of_lines(const struct dim_chain *c, double after, double width)
{
	double clear = after;

	if (crossings(c, after, after + width) == 0)
		return after;
	for (const struct dim_chain *out = c->next; out; out = out->next)
		clear = fmax(clear, out->links[out->n - 1].b + TEXT_AIR);
	return clear - after <= FARTHEST ? clear : after;
}

/* Over the free end of its chain; a link that is alone has two. */
static struct figure past_the_end(const struct dims *d, const struct dim_chain *c, int i,
	struct figure f)
{
	const struct dim_link *l = &c->links[i];
	double after = l->b + TICK, before = l->a - TICK - f.width;
	bool is_low = is_upright(c->side) && before < d->lowest;
	bool goes_before = i == 0 && !is_low &&
		(c->n > 1 ||
			crossings(c, before, before + f.width) <
				crossings(c, after, after + f.width));

	f.from = goes_before ? before : is_low ? clear_of_lines(c, after, f.width) : after;
	f.to = f.from + f.width;
	return f;
}

static struct figure lay_figure(const struct dims *d, const struct dim_chain *c, int i,
	const struct figure *before)
{
	const struct dim_link *l = &c->links[i];
	struct figure f = { .from = l->a, .to = l->b };

	if (!l->text || !*l->text)
		return f;
	f.width = measure_width(d->measure, LETTER_REGULAR, d->letter, l->text);
	double middle = (l->a + l->b) / 2;
	f.from = middle - f.width / 2;
	f.to = middle + f.width / 2;
	if (f.width + 2 * TEXT_AIR <= l->b - l->a)
		return f;
	if (i == c->n - 1 || i == 0)
		f = past_the_end(d, c, i, f);
	else
		f.tier = 1;
	while (clashes(before, i, f))
		f.tier++;
	return f;
}

static struct laid lay_chain(const struct dims *d, const struct dim_chain *c)
{
	struct laid l = { .figures = NEW_N(d->drawing->arena, struct figure, c->n),
		.from = c->links[0].a,
		.to = c->links[c->n - 1].b,
		.tiers = 1 };

	for (int i = 0; i < c->n; i++) {
		struct figure f = lay_figure(d, c, i, l.figures);
		l.figures[i] = f;
		l.from = fmin(l.from, f.from);
		l.to = fmax(l.to, f.to);
		if (f.tier + 1 > l.tiers)
			l.tiers = f.tier + 1;
	}
	return l;
}

/* A point by its place along the chain and its distance out from the view's edge. */
static struct vec out_at(const struct dims *d, enum dim_side side, double along, double out)
{
	switch (side) {
	case DIM_BELOW: return vec(along, d->around.y0 - out);
	case DIM_ABOVE: return vec(along, d->around.y1 + out);
	case DIM_LEFT: return vec(d->around.x0 - out, along);
	case DIM_RIGHT: return vec(d->around.x1 + out, along);
	case DIM_SIDES: break;
	}
	return vec(along, out);
}

static void draw_tick(struct drawing *g, struct vec at, enum dim_side side)
{
	struct vec half = vec_scale(vec(0.70710678, 0.70710678), TICK / 2);

	if (is_upright(side))
		half = vec_left(half);
	draw_line(g, PEN_OUTLINE, vec_sub(at, half), vec_add(at, half));
}

static void draw_extension(const struct dims *d, enum dim_side side, double along, double foot,
	double out)
{
	if (isnan(foot))
		return;
	struct vec end = out_at(d, side, along, out + OVERSHOOT);
	struct vec start = is_upright(side) ? vec(foot, along) : vec(along, foot);
	struct vec away = vec_unit(vec_sub(end, start));
	draw_line(d->drawing, PEN_DIM, vec_add(start, vec_scale(away, FOOT_GAP)), end);
}

static void draw_figure(const struct dims *d, const struct dim_chain *c, int i, struct figure f,
	double out)
{
	const struct dim_link *l = &c->links[i];
	enum dim_side side = c->side;

	if (f.width <= 0)
		return;
	bool upright = is_upright(side);
	double middle = (f.from + f.to) / 2;
	double lift = TEXT_LIFT + (c->tick_count ? TICK * 0.4 : 0) + f.tier * d->letter * 1.5;
	struct vec on_line = out_at(d, side, middle, out);
	struct vec up = upright ? vec(-1, 0) : vec(0, 1);

	draw_text_styled(d->drawing, vec_add(on_line, vec_scale(up, lift)), d->letter,
		upright ? PI / 2 : 0, ALIGN_MIDDLE, LETTER_REGULAR, l->text);
	if (f.tier > 0 && f.from < l->b && f.to > l->a)
		draw_line(d->drawing, PEN_DIM, vec_add(on_line, vec_scale(up, 0.2)),
			vec_add(on_line, vec_scale(up, lift - 0.4)));
}

static void draw_chain(const struct dims *d, const struct dim_chain *c, const struct laid *laid,
	double out)
{
	struct drawing *g = d->drawing;

	draw_line(g, PEN_DIM, out_at(d, c->side, laid->from, out),
		out_at(d, c->side, laid->to, out));
	for (int i = 0; i < c->n; i++) {
		const struct dim_link *l = &c->links[i];
		if (i == 0) {
			draw_extension(d, c->side, l->a, l->foot_a, out);
			draw_tick(g, out_at(d, c->side, l->a, out), c->side);
		}
		draw_extension(d, c->side, l->b, l->foot_b, out);
		draw_tick(g, out_at(d, c->side, l->b, out), c->side);
		draw_figure(d, c, i, laid->figures[i], out);
	}
	for (int i = 0; i < c->tick_count; i++)
		draw_tick(g, out_at(d, c->side, c->ticks[i], out), c->side);
}

/* A chain with its figures laid, and the lane it goes into. */
struct placed {
	const struct dim_chain *chain;
	struct laid laid;
	int lane;
};

/* The lane for the next chain: the outermost if there is room in it, else one further out.  Only
 * the outermost, because a later chain is longer and its extension lines must not run through
 * a figure nearer the view. */
static int find_lane(const struct placed *before, int n, const struct laid *l)
{
	int outermost = n ? before[n - 1].lane : 0;

	for (int i = 0; i < n; i++)
		if (before[i].lane == outermost && l->from < before[i].laid.to + TICK &&
			before[i].laid.from < l->to + TICK)
			return outermost + 1;
	return outermost;
}

/* Figures stand over horizontal lines and to the left of upright ones, so below and on the right
 * a lane's figures lie toward the view, above and on the left away from it. */
static double lane_out(enum dim_side side, double inner, double figures)
{
	bool toward = side == DIM_BELOW || side == DIM_RIGHT;

	return inner + (toward ? figures + LANE_AIR : LANE_AIR);
}

static double lane_end(enum dim_side side, double out, double figures)
{
	bool toward = side == DIM_BELOW || side == DIM_RIGHT;

	return out + (toward ? OVERSHOOT : figures);
}

static int lane_tiers(const struct placed *p, int n, int lane)
{
	int tiers = 1;

	for (int i = 0; i < n; i++)
		if (p[i].lane == lane && p[i].laid.tiers > tiers)
			tiers = p[i].laid.tiers;
	return tiers;
}

static int lay_side(const struct dims *d, enum dim_side side, struct placed *placed)
{
	int n = 0;

	for (const struct dim_chain *c = d->first[side]; c; c = c->next, n++) {
		placed[n].chain = c;
		placed[n].laid = lay_chain(d, c);
		placed[n].lane = find_lane(placed, n, &placed[n].laid);
	}
	return n;
}

static int count_chains(const struct dims *d, enum dim_side side)
{
	int n = 0;

	for (const struct dim_chain *c = d->first[side]; c; c = c->next)
		n++;
	return n;
}

static struct box draw_side(const struct dims *d, enum dim_side side, struct box used)
{
	struct placed *placed = NEW_N(d->drawing->arena, struct placed, count_chains(d, side) + 1);
	int n = lay_side(d, side, placed), lanes = n ? placed[n - 1].lane + 1 : 0;
	double end = FIRST_LANE - LANE_AIR - d->letter - TEXT_LIFT;

	for (int lane = 0; lane < lanes; lane++) {
		double figures =
			TEXT_LIFT + d->letter * (1 + 1.5 * (lane_tiers(placed, n, lane) - 1));
		double out = fmax(lane_out(side, end, figures), FIRST_LANE);
		end = lane_end(side, out, figures);
		for (int i = 0; i < n; i++) {
			if (placed[i].lane != lane)
				continue;
			draw_chain(d, placed[i].chain, &placed[i].laid, out);
			used = box_add(used, out_at(d, side, placed[i].laid.from, end));
			used = box_add(used, out_at(d, side, placed[i].laid.to, end));
		}
	}
	return used;
}

/* The upright chains first: a figure that went over the end of one stands where the lanes above or
 * below would begin. */
struct box dims_draw(const struct dims *d)
{
	struct box used = draw_side(d, DIM_LEFT, d->around);
	struct dims level = *d;

	used = draw_side(d, DIM_RIGHT, used);
	level.around.y0 = used.y0;
	level.around.y1 = used.y1;
	used = draw_side(&level, DIM_BELOW, used);
	return draw_side(&level, DIM_ABOVE, used);
}

void dim_between(struct drawing *g, double letter, struct vec from, struct vec to, const char *text)
{
	struct vec along = vec_unit(vec_sub(to, from));
	double angle = atan2(along.y, along.x);

	/* read from below or from the right */
	if (angle > PI / 2 + NEAR_ENOUGH || angle <= -PI / 2 + NEAR_ENOUGH)
		angle += angle > 0 ? -PI : PI;
	struct vec read = vec(cos(angle), sin(angle)), up = vec_left(read);
	struct vec half = vec_scale(vec_unit(vec_add(read, up)), TICK / 2);
	struct vec middle = vec_scale(vec_add(from, to), 0.5);

	draw_line(g, PEN_DIM, from, to);
	draw_line(g, PEN_OUTLINE, vec_sub(from, half), vec_add(from, half));
	draw_line(g, PEN_OUTLINE, vec_sub(to, half), vec_add(to, half));
	draw_text_styled(g, vec_add(middle, vec_scale(up, TEXT_LIFT)), letter, angle, ALIGN_MIDDLE,
		LETTER_REGULAR, text);
}
