#include "draw/window.h"

/* The parts of the line, 0 to 1, still inside. */
struct inside {
	double from, to;
};

/* Narrows to where start + t * way is not negative (Liang and Barsky, ACM TOG 3(1), 1984). */
static struct inside narrow(struct inside in, double start, double way)
{
	if (way > 0)
		in.from = fmax(in.from, -start / way);
	else if (way < 0)
		in.to = fmin(in.to, -start / way);
	else if (start < 0)
		in.to = -1;
	return in;
}

struct segment window_clip(const struct box *w, struct segment s)
{
	if (!w)
		return s;
	struct vec d = vec_sub(s.b, s.a);
	struct inside in = { 0, 1 };
	in = narrow(in, s.a.x - w->x0, d.x);
	in = narrow(in, w->x1 - s.a.x, -d.x);
	in = narrow(in, s.a.y - w->y0, d.y);
	in = narrow(in, w->y1 - s.a.y, -d.y);
	if (in.from >= in.to)
		return (struct segment){ s.a, s.a };
	return (struct segment){
		in.from > 0 ? vec_add(s.a, vec_scale(d, in.from)) : s.a,
		in.to < 1 ? vec_add(s.a, vec_scale(d, in.to)) : s.b,
	};
}
