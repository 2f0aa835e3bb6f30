/*
 * The client's cover: a picture of what is proposed, and what it is in plain words.
 */
#include "draw/bounds.h"
#include "draw/place.h"
#include "sheets/client_facts.h"
#include "sheets/picture.h"

#define WORDS 0.38 /* of the sheet's width; the picture has the rest */
#define TITLE 2.2  /* height of its capitals, of the lettering's */
#define TITLE_LINE 1.45
#define GAP 10.0 /* picture to words */

static struct lines title_lines(struct hand h, struct box column, const char *name)
{
	return wrap_text(h.g->arena, h.measure, h.letter * TITLE, box_width(column) * 0.9, name);
}

/* What title and rule take of the column. */
static double title_height(struct hand h, struct lines l)
{
	return h.letter * (TITLE * (1 + TITLE_LINE * (l.n - 1)) + 2);
}

/* The job's name large, a rule under it. */
static void draw_title(struct hand h, struct box column, struct lines l)
{
	double y = column.y1 - h.letter * TITLE, rule = column.y1 - title_height(h, l) + h.letter;

	for (int i = 0; i < l.n; i++)
		draw_text_styled(h.g, vec(column.x0, y - i * TITLE_LINE * TITLE * h.letter),
			h.letter * TITLE, 0, ALIGN_LEFT, LETTER_BOLD, l.line[i]);
	draw_line(h.g, PEN_FRAME, vec(column.x0, rule), vec(column.x1, rule));
}

static const char *issue_words(struct arena *a, const struct job *job)
{
	const struct revision *r =
		job->revision_count ? &job->revisions[job->revision_count - 1] : NULL;
	const char *date = job_date(job), *comma = *date ? ", " : "";

	if (!r)
		return *date ? arena_printf(a, "%s, first issue", date) : "";
	return arena_printf(a, "%s%srevision %s%s%s", date, comma, r->mark, *r->text ? ": " : "",
		r->text);
}

static const char *shop_words(struct arena *a, const struct job *job)
{
	const char *address = job->about.shop_address;

	if (!job->about.shop || !*job->about.shop)
		return "";
	return arena_printf(a, "%s%s%s", job->about.shop, address && *address ? ", " : "",
		address ? address : "");
}

enum { MOST_NOTES = 96, MOST_CHANGES = 40, MOST_NOT_MET = 20 };

/* Left out where the job says nothing. */
static int add_note(struct note *notes, int n, const char *heading, const char *text)
{
	if (!text || !*text)
		return n;
	notes[n] = (struct note){ heading, text };
	return n + 1;
}

/* To whom, by whom, where and when. */
static int list_parties(struct arena *a, const struct job *job, struct note *notes)
{
	int n = add_note(notes, 0, "Proposed to", job->about.client);

	n = add_note(notes, n, "Proposed by", shop_words(a, job));
	n = add_note(notes, n, "For the house at", job->about.site);
	return add_note(notes, n, "Date", issue_words(a, job));
}

static int list_proposal(struct arena *a, const struct sheet_context *c, struct note *notes)
{
	const struct job *job = c->stair->job;
	const char *const *said = client_proposal(a, c);
	int n = 0;

	for (int i = 0; said[i]; i++)
		n = add_note(notes, n, i ? NULL : "What is proposed", said[i]);
	n = add_note(notes, n, "Guards of the stair", client_others_words(a, job));
	n = add_note(notes, n, "The edge upstairs", client_edge_words(a, c));
	n = add_note(notes, n, "Still to choose", client_still_to_choose(a, job, client_woods(c)));
	n = add_note(notes, n, "Measurements of the house", client_status(a, job));
	n = add_note(notes, n, "Building code", client_code(a, c->findings));
	n += client_not_met(a, c->findings, notes + n, MOST_NOT_MET);
	return n + client_changes(a, c, notes + n, MOST_CHANGES);
}

/* Title and words in letters of this size; whether the column has room for them. */
static bool words_fit(struct sheet *s, double letter, struct box column, const struct note *notes,
	int n)
{
	s->hand.letter = letter;
	struct prose p = prose_set(s->hand, notes, n, box_width(column));
	const char *name = s->context->stair->job->about.name;

	column.y1 -= title_height(s->hand, title_lines(s->hand, column, name));
	return prose_columns(s->hand, p, column, box_width(column)) == 1;
}

static void set_words(struct sheet *s, struct box column, const struct note *notes, int n)
{
	const char *name = s->context->stair->job->about.name;
	struct lines title = title_lines(s->hand, column, name);
	struct prose p = prose_set(s->hand, notes, n, box_width(column));

	draw_title(s->hand, column, title);
	column.y1 -= title_height(s->hand, title);
	prose_draw(s->hand, p, column, box_width(column));
}

/* In letters as large as the column has room for, but no smaller than the set's; where it has none
 * for all, what is proposed goes on a sheet of its own. */
static struct drawing *draw_words(struct sheet *s, struct box column)
{
	struct arena *a = s->drawing->arena;
	struct note *notes = NEW_N(a, struct note, MOST_NOTES);
	int parties = list_parties(a, s->context->stair->job, notes);
	int n = parties + list_proposal(a, s->context, notes + parties);

	for (int i = 0; i <= CLIENT_LETTERS_PLAIN; i++) {
		if (!words_fit(s, client_letter(s, i), column, notes, n))
			continue;
		set_words(s, column, notes, n);
		return NULL;
	}
	int i = 0;
	while (i < CLIENT_LETTERS - 1 && !words_fit(s, client_letter(s, i), column, notes, parties))
		i++;
	s->hand.letter = client_letter(s, i);
	set_words(s, column, notes, parties);
	return client_prose_sheets(a, s->context, "What is proposed", notes + parties, n - parties);
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct sheet s = sheet_begin(a, c, "What is proposed");
	struct box column = s.room, rooms[2] = { s.room, sheet_room_beside(&s) };

	column.x0 = s.room.x1 - WORDS * box_width(s.room);
	rooms[0].x1 = column.x0 - GAP;
	rooms[1].x1 = fmin(rooms[1].x1, rooms[0].x1);
	s.drawing->next = draw_words(&s, column);
	sheet_picture(&s, rooms, 2);
	return client_told(s.drawing);
}

const struct sheet_kind sheet_client_cover = { "client-cover", "C-0", draw };
