/*
 * Set-ups as a list: every setting of a machine once, with all the pieces that want it.
 */
#include "lists/setups.h"
#include "lists/table.h"

static const char *work_words(enum setup_work work)
{
	switch (work) {
	case WORK_PLANE: return "Plane";
	case WORK_RIP: return "Rip while long";
	case WORK_BEVEL: return "Bevel while long";
	case WORK_PROFILE: return "Run while long";
	case WORK_TRIM: return "Trim while long";
	case WORK_CROSSCUT: return "Cut to length";
	case WORK_PANEL: return "Trim panel";
	case WORK_BLOCK: return "Saw block";
	case WORK_SHAPE: return "Shape";
	case WORK_BORE: return "Bore, mortise";
	}
	return "";
}

enum { SET_NUMBER, SET_WORK, SET_SETTING, SET_STOP, SET_CUTS, SET_MARKS, SET_SHORT, SET_COLUMNS };

static const struct list_column columns[SET_COLUMNS] = {
	[SET_NUMBER] = { "No.", "number", LIST_COUNT, 0 },
	[SET_WORK] = { "Work", "work", LIST_TEXT, 0 },
	[SET_SETTING] = { "Setting", "setting", LIST_TEXT, 70 },
	[SET_STOP] = { "Stop, fence", "stop", LIST_LENGTH, 0 },
	[SET_CUTS] = { "Cuts", "cuts", LIST_COUNT, 0 },
	[SET_MARKS] = { "Pieces", "pieces", LIST_TEXT, 90 },
	[SET_SHORT] = { "Short", "short", LIST_TEXT, 30 },
};

static const char *angle_words(struct arena *a, const struct setup *s)
{
	const char *mitre = s->mitre > NEAR_ENOUGH
		? arena_printf(a, "mitre %s", angle_letter(a, s->mitre))
		: "square";

	if (s->bevel <= NEAR_ENOUGH)
		return mitre;
	return arena_printf(a, "%s, blade tilted %s", mitre, angle_letter(a, s->bevel));
}

static const char *block_words(const struct list_maker *m, const struct setup *s)
{
	struct arena *a = m->arena;
	const char *blade = s->bevel > NEAR_ENOUGH
		? arena_printf(a, "blade tilted %s", angle_letter(a, s->bevel))
		: "blade square";

	return arena_printf(a, "%s, %s high over the table; %s", blade,
		length_letter_inches(a, m->lettering, s->second), s->words);
}

static const char *end_setting(const struct list_maker *m, const struct setup *s)
{
	if (s->second > 0)
		return arena_printf(m->arena,
			"%s to a line, %s; no stop block, nothing beyond the blade", s->words,
			length_letter_inches(m->arena, m->lettering, s->second));
	if (*s->words)
		return s->words;
	return s->main > 0 ? "to the stop" : "one end, no stop";
}

static const char *setting_words(const struct list_maker *m, const struct setup *s)
{
	struct arena *a = m->arena;

	switch (s->work) {
	case WORK_TRIM: return "fence, glued up, before pieces are cut off it";
	case WORK_PANEL: return "fence, ends cut before";
	case WORK_BEVEL:
		return arena_printf(a, "blade tilted %s to the arris; %s",
			angle_letter(a, s->bevel), s->words);
	case WORK_BLOCK: return block_words(m, s);
	case WORK_CROSSCUT: return arena_printf(a, "%s, %s", angle_words(a, s), end_setting(m, s));
	case WORK_PLANE:
	case WORK_RIP:
	case WORK_PROFILE:
	case WORK_SHAPE: return s->words;
	case WORK_BORE:
		return arena_printf(a, "%s %s, %s deep", s->words,
			length_letter_inches(a, s->lettering, s->main),
			length_letter_inches(a, m->lettering, s->second));
	}
	return "";
}

static void add(struct list_maker *m, const struct setup *s)
{
	struct list_cell *row = list_row(m);

	row[SET_NUMBER] = cell_count(m->arena, m->list.row_count);
	row[SET_WORK] = cell_text(work_words(s->work));
	row[SET_SETTING] = cell_text(setting_words(m, s));
	if (s->main > 0 && s->work != WORK_BORE)
		row[SET_STOP] =
			(struct list_cell){ length_letter_inches(m->arena, s->lettering, s->main),
				s->main };
	row[SET_CUTS] = cell_count(m->arena, s->cuts);
	row[SET_MARKS] = cell_text(text_chars(&s->marks));
	row[SET_SHORT] = cell_text(text_chars(&s->short_ones));
}

static const char *const *set_up_notes(struct arena *a, const struct stair *s)
{
	const char **notes = NEW_N(a, const char *, 6);
	double limit = s->job->stock.short_piece;

	notes[0] = "A setting is made once, for all pieces beside it; try it on a piece of waste. "
		   "Spares are counted in. Stringers are laid out and cut by their own sheets.";
	notes[1] = "Mitres and tilts are from square, to the long point; swing or turn the piece "
		   "for the other hand.";
	notes[2] = "Where a piece is worked across the grain and along it: across first, for the "
		   "long cut takes off what the other broke out.";
	notes[3] = arena_printf(a,
		"Short: under %s. Hold it down with a clamp or a jig, set a stop block clear of "
		"the blade so that nothing is caught between, and keep every free hand away from "
		"the blade. Under half of that it stays in one length with others like it and is "
		"cut off that: the length is held, and what falls off lies until the blade "
		"stands.",
		length_say(a, job_lettering(s->job), limit));
	notes[4] = "Guard, riving knife, eyes and ears covered. Whoever works the machine judges "
		   "whether a cut can be made with it.";
	return notes;
}

struct list list_setups(struct arena *a, const struct stair *s, const struct blank *blanks)
{
	struct list_maker m = list_begin(a, s, "setups", "Set-ups", columns, SET_COLUMNS);

	for (const struct setup *one = setups_find(a, s->job, blanks); one; one = one->next)
		add(&m, one);
	m.list.notes = set_up_notes(a, s);
	return m.list;
}
