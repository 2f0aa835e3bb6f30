/*
 * General notes: how to read the set, what was not checked, what is by others,
 * the loads that the edition asks, cautions, and what each line means.
 */
#include "draw/bounds.h"
#include "draw/dimension.h"
#include "sheets/limits.h"
#include "sheets/tables.h"
#include "sheets/words.h"

/* ---- notes ---- */

/* As the row of the edition has it, with where that was taken from. */
static const char *load_words(struct arena *a, const struct finding *list)
{
	const struct finding *f = limit_for(list, "loads");

	if (!list)
		return "Not checked here, and no code is named: loads are for a licensed designer "
		       "where one is required.";
	if (!f || !*f->asked)
		return arena_printf(a,
			"%s: the loads that it asks are not in the file of the edition, and they "
			"are not checked here: strength is by a licensed designer where one is "
			"required.",
			list->rules->brief);
	return arena_printf(a,
		"%s, %s asks: %s (%s). Not checked here: strength is by a licensed designer where "
		"one is required.",
		list->rules->brief, f->rule->section, f->asked, f->source);
}

static const char *code_note(struct arena *a, const struct finding *list)
{
	if (!list)
		return "The job names no code: nothing in this set was held against one.";
	return arena_printf(a,
		"Held against %s as entered in its file. Met: the stair as drawn meets the limit "
		"as "
		"entered; it is no more than that. Codes differ by place, and the authority having "
		"jurisdiction decides.",
		list->rules->title);
}

static const char *verify_words(struct arena *a, const struct job *job)
{
	const char *open = unverified_words(a, job);

	if (!*open)
		return "Every site size that was given is marked as measured.";
	return arena_printf(a, "VIF: verify in field. Still to be verified: %s.", open);
}

static const char *rail_words(const struct stair *s)
{
	return s->job->newels.floor_fixing == FLOOR_FIXING_NONE
		? "The fixing of newels to the floor is by others."
		: "";
}

static void set_all_notes(struct sheet *s)
{
	const struct sheet_context *c = s->context;
	struct arena *a = s->drawing->arena;
	const struct stair *st = c->stair;
	const struct note notes[] = {
		{ "General", general_words(st) },
		{ NULL,
			"Vertical sizes are from finished floor to finished floor unless they say "
			"structure. Widths are between finished walls; an open side counts at the "
			"outer face of its stringer." },
		{ NULL,
			"Risers are even once both floors have the finishes as entered: with "
			"others "
			"the lowest and the highest come out different." },
		{ NULL, rounding_words(a, st) },
		{ NULL, verify_words(a, st->job) },
		{ "Code", code_note(a, c->findings) },
		{ "Loads", load_words(a, c->findings) },
		{ "By others",
			"Site plan, framing, headers, floors, footings and what carries the stair; "
			"cutting of the opening; blocking in walls for brackets; lighting and its "
			"switches; glazing near the stair; fire separation under it; finishes of "
			"floors and walls. None of these is shown here to be built from." },
		{ NULL, by_others_words(a, st->job) },
		{ NULL,
			"Structure is by a licensed designer where one is required. Where a "
			"designer's drawing differs, it governs." },
		{ NULL, rail_words(st) },
		{ "Existing and new",
			"Existing work, by others, is drawn in its own line and with the widest "
			"hatch where it is cut: floors, header, walls. All else is new. Sizes of "
			"existing work are as measured by the shop." },
		{ "Scale",
			"Every view carries its scale and a bar in feet and in metres. Papers are "
			"reduced and copied: measure the bar first; figures govern." },
		{ "Cautions",
			"Measure again before cutting: walls are not plumb and floors not level." },
		{ NULL,
			"Before cutting into existing walls, floors or stairs find wiring, pipes "
			"and load-bearing members; shore first, and keep a safe way up and down "
			"until the new stair can be used." },
		{ NULL, "In the shop mind dust, kickback and short pieces." },
	};

	sheet_of_notes(s, notes, sizeof(notes) / sizeof(*notes));
}

/* ---- legend ---- */

struct line_meaning {
	enum pen pen;
	const char *words;
};

static const struct line_meaning meanings[] = {
	{ PEN_CUT, "new work, cut" },
	{ PEN_OUTLINE, "new work, seen" },
	{ PEN_EXISTING, "existing work, by others" },
	{ PEN_HIDDEN, "hidden behind what is seen" },
	{ PEN_ABOVE, "above the cut, or before what is seen" },
	{ PEN_CENTRE, "nosing line, headroom line, walking line" },
	{ PEN_DIM, "sizes" },
};

enum { MEANINGS = sizeof(meanings) / sizeof(*meanings) };

/* Sizes are told by their ticks, not by their width. */
static void draw_sample(struct hand h, enum pen pen, struct vec from, struct vec to)
{
	if (pen == PEN_DIM)
		dim_between(h.g, h.letter, from, to, "");
	else
		draw_line(h.g, pen, from, to);
}

/* At the upper left of the room, which loses it. */
static void draw_legend(struct sheet *s)
{
	struct hand h = s->hand;
	double sample = 9 * h.letter, row = 2.2 * h.letter, x = s->room.x0, y = s->room.y1;
	double wide = 0;

	y -= 1.4 * h.letter;
	draw_text_styled(h.g, vec(x, y), h.letter, 0, ALIGN_LEFT, LETTER_BOLD, "Lines");
	for (int i = 0; i < MEANINGS; i++) {
		y -= row;
		double middle = y + h.letter / 2;
		draw_sample(h, meanings[i].pen, vec(x, middle), vec(x + sample, middle));
		draw_text(h.g, vec(x + sample + 2 * h.letter, y), h.letter, ALIGN_LEFT,
			meanings[i].words);
		wide = fmax(wide,
			measure_width(h.measure, LETTER_REGULAR, h.letter, meanings[i].words));
	}
	s->room.x0 = x + sample + 2 * h.letter + wide + 4 * h.letter;
}

static struct table abbreviations(void)
{
	static const struct table_column columns[] = { { "", ALIGN_LEFT, 0 },
		{ "", ALIGN_LEFT, 60 } };
	static const char *const cells[] = { "R, T", "risers, treads", "VIF", "verify in field",
		"±", "even division, lettered to the nearest", "UP", "the arrow points up" };

	return (struct table){ "Abbreviations", columns, 2, cells, 4 };
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct sheet s = sheet_begin(a, c, "General notes");
	const struct table table = abbreviations();
	struct box whole = s.room;

	draw_legend(&s);
	struct box left = { whole.x0, whole.y0, s.room.x0, whole.y1 };
	double down = (MEANINGS + 3) * 2.2 * s.hand.letter;
	draw_table(s.hand, vec(left.x0, left.y1 - down), &table);
	set_all_notes(&s);
	return s.drawing;
}

const struct sheet_kind sheet_general = { "notes", "S-9", draw };
