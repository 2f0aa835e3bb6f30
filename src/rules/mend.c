#include "rules/mend.h"

#define ONE_STEP 1.0 /* what treads made alike may differ by */
#define EXACTLY 1e-6 /* of a graduation */

double mend_size(const struct survey *s, struct shortfall f, double exact, int way)
{
	struct lettering how = job_lettering(s->stair->job);
	double unit = how.units == UNITS_INCHES ? MM_PER_INCH : 1;
	double parts = exact / (unit / how.fraction);

	if (way > 0)
		parts = f.is_strict ? floor(parts + EXACTLY) + 1 : ceil(parts - EXACTLY);
	else
		parts = f.is_strict ? ceil(parts - EXACTLY) - 1 : floor(parts + EXACTLY);
	return parts * (unit / how.fraction);
}

double mend_from(const struct survey *s, struct shortfall f, double was)
{
	return mend_size(s, f, was + f.by, f.by > 0 ? 1 : -1);
}

bool mend_is_for_one_step(struct shortfall f)
{
	return f.reading->most - f.reading->least > ONE_STEP;
}

struct mend mend_one_step(const struct survey *s, struct shortfall f)
{
	if (f.by <= 0)
		return mend_said(NULL);
	return mend_said(arena_printf(s->arena, "%s less cut out of that tread",
		survey_say(s, mend_size(s, f, f.by, 1))));
}

struct mend mend_said(const char *words)
{
	return (struct mend){ .words = words };
}

struct mend mend_also(const struct survey *s, struct mend m, const char *path, const char *value)
{
	struct job_setting *more = NEW_N(s->arena, struct job_setting, m.n + 1);

	for (int i = 0; i < m.n; i++)
		more[i] = m.settings[i];
	more[m.n++] = (struct job_setting){ path, value };
	m.settings = more;
	return m;
}

struct mend mend_also_size(const struct survey *s, struct mend m, const char *path, double mm)
{
	return mend_also(s, m, path, survey_say(s, mm));
}
