#include "sheets/joint_words.h"

/* The finest division of a rule that is laid out by. */
enum { FINEST_INCH = 64, FINEST_MILLIMETRE = 2 };

double joint_miss(enum units units)
{
	return units == UNITS_INCHES ? MM_PER_INCH / FINEST_INCH : 1.0 / FINEST_MILLIMETRE;
}

bool bore_is_of_joint(const struct bore *b)
{
	bool on_site = b->fixing == FIXING_SCREW || b->fixing == FIXING_BRAD;

	return !on_site && (b->is_mate || b->mate.depth > 0);
}

/* The coarsest that says it to half of what two halves may miss by. */
static struct lettering lettering_for(struct lettering how, double mm)
{
	int finest = how.units == UNITS_INCHES ? FINEST_INCH : FINEST_MILLIMETRE;

	while (how.fraction < finest &&
		fabs(length_lettered_value(how, mm) - mm) > joint_miss(how.units) / 2)
		how.fraction *= 2;
	return how;
}

const char *joint_words(struct arena *a, const struct stair *s, double mm)
{
	return length_letter_inches(a, lettering_for(job_lettering(s->job), mm), mm);
}

const char *bore_place_words(struct arena *a, const struct stair *s, const struct bore *b,
	double mm)
{
	return bore_place_letter(a, job_lettering(s->job), b, mm);
}

const char *bore_place_letter(struct arena *a, struct lettering how, const struct bore *b,
	double mm)
{
	return length_letter_inches(a, bore_is_of_joint(b) ? lettering_for(how, mm) : how, mm);
}

double joint_lettered(const struct job *job, double mm)
{
	return length_lettered_value(lettering_for(job_lettering(job), mm), mm);
}
