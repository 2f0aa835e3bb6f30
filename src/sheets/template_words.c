#include "sheets/template_words.h"

#include <string.h>

#include "base/file.h"
#include "base/text.h"
#include "sheets/template.h"

const char words_full_size[] = "TEMPLATE - FULL SIZE";

const char words_print[] =
	"1. Print the calibration page and read it. Print every sheet at actual size, on one "
	"side. Measure the bars on each sheet, both ways: exactly 100 mm and 4 in, or STOP.";

const char words_govern[] = "Figures govern: check every position against its figure.";

const char words_cut[] = "Cut to the middle of the thicker line; it is 0.25 mm wide. Thin, broken "
			 "and chain lines are guides.";

const char words_stop[] =
	"Measure the bars first, both ways. If they are not exactly 100 mm and 4 in, STOP: "
	"print again at actual size (100 %, not fitted to the page).";

const char *figures_words(struct arena *a, const struct template_words *w)
{
	return arena_printf(a,
		"Figures govern: paper stretches and printers err. Check every position you work "
		"to against its figure, %s.",
		w->from);
}

static const char *unit_words(enum units units)
{
	switch (units) {
	case UNITS_INCHES: return "Figures are feet and inches.";
	case UNITS_MILLIMETRES: return "Figures are millimetres.";
	}
	return "";
}

struct template_words template_words(struct arena *a, const struct job *job)
{
	const struct job_about *about = &job->about;

	return (struct template_words){
		.job = arena_printf(a, "Job %s  %s", about->number ? about->number : "",
			about->name ? about->name : ""),
		.piece = "",
		.face = "",
		.edges = "",
		.work = "",
		.stock = "",
		.units = unit_words(about->units),
		.line = words_cut,
		.from = "",
		.doubt = "",
		.surer = "",
	};
}

const char *piece_words(struct arena *a, const char *mark, const char *what, int count)
{
	return count == 1 ? arena_printf(a, "%s  %s, make 1", mark, what)
			  : arena_printf(a, "%s  %s, make %d alike", mark, what, count);
}

/* A mark is letters and a number. */
struct mark_read {
	int letters, length, number;
};

static struct mark_read mark_read(const char *s)
{
	struct mark_read m = { (int)strcspn(s, "0123456789,"), (int)strcspn(s, ","), 0 };

	for (int i = m.letters; i < m.length; i++)
		m.number = 10 * m.number + (s[i] - '0');
	return m;
}

static const char *mark_after(const char *s)
{
	s += strcspn(s, ",");
	return *s ? s + 2 : s;
}

static bool goes_on(const char *s, const char *next)
{
	struct mark_read m = mark_read(s), n = mark_read(next);

	return *next && n.letters == m.letters && n.number == m.number + 1 &&
		!strncmp(s, next, (size_t)m.letters);
}

const char *marks_words(struct arena *a, const char *marks)
{
	struct text t = { .arena = a };

	for (const char *s = marks; *s; s = mark_after(s)) {
		const char *first = s;
		while (goes_on(s, mark_after(s)))
			s = mark_after(s);
		const char *one = arena_strndup(a, first, (size_t)mark_read(first).length);
		const char *last = arena_strndup(a, s, (size_t)mark_read(s).length);
		text_join(&t, ", ",
			s == first ? one
				   : arena_printf(a, s == mark_after(first) ? "%s, %s" : "%s to %s",
					     one, last));
	}
	return text_chars(&t);
}

const char *const *marks_list(struct arena *a, const char *marks)
{
	const char **list;
	int n = 0;

	for (const char *s = marks; *s; s = mark_after(s))
		n++;
	list = NEW_N(a, const char *, n + 1);
	n = 0;
	for (const char *s = marks; *s; s = mark_after(s))
		list[n++] = arena_strndup(a, s, (size_t)mark_read(s).length);
	return list;
}

const char *template_id(struct arena *a, const struct template_job *t)
{
	return arena_printf(a, "T-%d", t->number);
}

const char *job_stem(struct arena *a, const struct job *job)
{
	return path_stem(a, job->file ? job->file : "stair");
}

const char *template_file(struct arena *a, const struct template_job *t, const char *kind)
{
	const char *stem = job_stem(a, t->context->stair->job);

	return *kind ? arena_printf(a, "%s-%s-%s", stem, t->name, kind)
		     : arena_printf(a, "%s-%s", stem, t->name);
}

const char *correction_words(struct arena *a, struct vec c)
{
	if (near_enough(c.x, 1) && near_enough(c.y, 1))
		return "";
	return arena_printf(a,
		"Corrected for a printer that draws %.4g times true size across this page and "
		"%.4g times up it.",
		c.x, c.y);
}

static bool has_mark(const char *marks, const char *mark)
{
	const char *at = strstr(marks, mark);
	size_t n = strlen(mark);

	for (; at; at = strstr(at + 1, mark))
		if ((at == marks || at[-1] == ' ') && (!at[n] || at[n] == ','))
			return true;
	return false;
}

const char *marks_with(struct arena *a, const char *marks, const char *mark)
{
	return has_mark(marks, mark) ? marks : arena_printf(a, "%s, %s", marks, mark);
}
