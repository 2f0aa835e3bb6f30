#include "rules/mend.h"

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
