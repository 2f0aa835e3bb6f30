#include "sheets/client_sign.h"

#include <string.h>

#include "draw/bounds.h"
#include "draw/place.h"
#include "sheets/client_facts.h"

#define WORDS 0.5 /* of the width; the signatures have the rest */
#define GAP 5.0
#define ROW 3.2  /* height of a line to write on, in heights of a capital */
#define HEAD 2.5 /* over the first of them, beside the lines of a name */
#define NEXT 1.5 /* from one line of a name to the next */
#define NAME 1.6 /* letters of the set's name */

enum { MOST_NOTES = 16, MOST_NOT_MET = 6, PARTIES = 2, LINES = 3 };

/* ---- what is signed ---- */

/* The sheets of the set, as words: "5 sheets, C-001 to C-901". */
static const char *sheets_words(struct arena *a, const struct drawing *sheets)
{
	const struct drawing *last = sheets;
	int n = 1;

	for (; last->next; last = last->next)
		n++;
	return arena_printf(a, "%d sheets, %s to %s", n, sheets->id, last->id);
}

static const char *or_else(const char *text, const char *other)
{
	return text && *text ? text : other;
}

/* The newest revision, where there is one, and the date. */
static const char *issue_words(struct arena *a, const struct job *job)
{
	const char *date = job_date(job);
	const char *mark = job->revision_count ? job->revisions[job->revision_count - 1].mark : "";

	return arena_printf(a, "%s%s%s%s", *date ? ", dated " : "", date,
		*mark ? ", revision " : "", mark);
}

static const char *signed_words(struct arena *a, const struct sheet_context *c, const char *sheets)
{
	const struct job *job = c->stair->job;

	return arena_printf(a,
		"By signing, you and %s agree that this set of %s%s, set number %s, shows the "
		"stair to be made. The number is on every page; a page with another one is not of "
		"this set. Price, payment and dates are in the contract, not here. The shop works "
		"from job file %s, or from a later one that gives this same set number.",
		or_else(job->about.shop, "the shop"), sheets, issue_words(a, job),
		c->set_fingerprint, *c->set_fingerprint ? job->fingerprint : "");
}

static const char changes_words[] =
	"You get a new set with a new number to sign. Until you sign it, the last signed set "
	"stands. Sizes marked not verified stay open, and nothing that depends on them is made.";

/* What must not be overlooked comes first. */
static int sign_notes(struct arena *a, const struct sheet_context *c, const char *sheets,
	struct note *notes)
{
	const struct job *job = c->stair->job;
	const char *open = client_still_to_choose(a, job, client_woods(c));
	int n = 0;

	if (*open)
		notes[n++] = (struct note){ "Still to choose", open };
	int not_met = client_not_met(a, c->findings, notes + n, MOST_NOT_MET);
	if (not_met)
		notes[n].heading = "Building code";
	n += not_met;
	notes[n++] = (struct note){ "What is signed", signed_words(a, c, sheets) };
	notes[n++] = (struct note){ "If anything changes", changes_words };
	return n;
}

/* ---- how it is set ---- */

static struct box words_of(struct box room)
{
	room.x1 = room.x0 + WORDS * box_width(room);
	return room;
}

static double box_of_one(const struct sheet *s)
{
	return (s->room.x1 - words_of(s->room).x1 - PARTIES * GAP) / PARTIES;
}

struct party {
	const char *who;
	struct lines name;
};

/* A name with a word too long for the box stands in the title block alone. */
static struct party party(const struct sheet *s, const char *who, const char *name)
{
	struct hand h = s->hand;
	double wide = box_of_one(s) - 2 * h.letter;
	struct lines l = wrap_text(h.g->arena, h.measure, h.letter, wide, or_else(name, ""));

	for (int i = 0; i < l.n; i++)
		if (measure_width(h.measure, LETTER_REGULAR, h.letter, l.line[i]) > wide)
			return (struct party){ who, { NULL, 0 } };
	return (struct party){ who, l };
}

struct parties {
	struct party of[PARTIES];
};

static struct parties parties(const struct sheet *s)
{
	const struct job_about *job = &s->context->stair->job->about;

	return (struct parties){ { party(s, "For the client", job->client),
		party(s, "For the shop", job->shop) } };
}

/* Both have their lines to write on at one height. */
static double head_height(const struct sheet *s)
{
	struct parties both = parties(s);
	int lines = 1;

	for (int i = 0; i < PARTIES; i++)
		lines = both.of[i].name.n > lines ? both.of[i].name.n : lines;
	return s->hand.letter * (HEAD + NEXT * lines);
}

static double boxes_height(const struct sheet *s)
{
	return head_height(s) + s->hand.letter * LINES * ROW;
}

static double name_height(struct hand h)
{
	return h.letter * (NAME + 1.6);
}

static double height_of(const struct sheet *s, const char *sheets)
{
	struct note notes[MOST_NOTES];
	int n = sign_notes(s->drawing->arena, s->context, sheets, notes);
	struct prose p = prose_set(s->hand, notes, n, box_width(words_of(s->room)));

	return fmax(boxes_height(s),
		name_height(s->hand) + prose_depth(s->hand, p) + s->hand.letter);
}

/* How many sheets there will be is not known yet, nor the two numbers: room for the longest. */
double client_sign_height(struct arena *a, const struct sheet_context *c, double letter)
{
	struct sheet_context longest = *c;

	longest.set_fingerprint = "000000000000";
	struct sheet s = sheet_begin(a, &longest, "");
	s.hand.letter = letter;
	return height_of(&s, "00 sheets, C-001 to C-901");
}

/* The set's number large, the words for it under it. */
static void draw_words(const struct sheet *s, struct box b, const char *sheets)
{
	struct hand h = s->hand;
	struct note notes[MOST_NOTES];
	int n = sign_notes(h.g->arena, s->context, sheets, notes);
	double y = b.y1 - h.letter * NAME;

	draw_text_styled(h.g, vec(b.x0, y), h.letter * NAME, 0, ALIGN_LEFT, LETTER_BOLD,
		arena_printf(h.g->arena, "Set %s", s->context->set_fingerprint));
	b.y1 -= name_height(h);
	prose_draw(h, prose_set(h, notes, n, box_width(b)), b, box_width(b));
}

static void draw_head(struct hand h, struct box b, struct party p)
{
	double left = b.x0 + h.letter;

	draw_text_styled(h.g, vec(left, b.y1 - 1.8 * h.letter), h.letter, 0, ALIGN_LEFT,
		LETTER_BOLD, p.who);
	for (int i = 0; i < p.name.n; i++)
		draw_text(h.g, vec(left, b.y1 - (3.4 + NEXT * i) * h.letter), h.letter, ALIGN_LEFT,
			p.name.line[i]);
}

static void draw_lines(struct hand h, struct box b)
{
	static const char *const lines[LINES] = { "signature", "name", "date" };
	double y = b.y1, left = b.x0 + h.letter;

	for (int i = 0; i < LINES; i++) {
		y -= ROW * h.letter;
		double base = y + 1.1 * h.letter;
		draw_text(h.g, vec(left, base), h.letter, ALIGN_LEFT, lines[i]);
		draw_line(h.g, PEN_DIM, vec(left + 6.5 * h.letter, base),
			vec(b.x1 - h.letter, base));
	}
}

static void draw_signatures(struct sheet *s, const char *sheets)
{
	struct box room = s->room, words = words_of(room);
	struct parties both = parties(s);
	double wide = box_of_one(s);

	room.y1 = words.y1 = room.y0 + height_of(s, sheets);
	draw_words(s, words, sheets);
	for (int i = 0; i < PARTIES; i++) {
		double x = words.x1 + GAP + i * (wide + GAP);
		struct box b = { x, room.y0, x + wide, room.y0 + boxes_height(s) };
		draw_box(s->drawing, PEN_TABLE, b);
		draw_head(s->hand, b, both.of[i]);
		b.y1 -= head_height(s);
		draw_lines(s->hand, b);
	}
}

void client_sign(struct arena *a, const struct sheet_context *c, struct drawing *over)
{
	for (struct drawing *g = over; g; g = g->next) {
		if (strcmp(g->id, CLIENT_SIGNED_SERIES "01") != 0)
			continue;
		struct sheet s = sheet_begin(a, c, "");
		s.hand.letter = client_choices_page(a, c).letter;
		draw_signatures(&s, sheets_words(a, over));
		drawing_take(g, s.drawing, vec(0, 0));
	}
}
