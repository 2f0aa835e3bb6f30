/*
 * The client's cover: a picture of what is proposed, and what it is in plain words.
 */
#include "draw/bounds.h"
#include "draw/place.h"
#include "sheets/client.h"

#define WORDS 0.38 /* of the sheet's width; the picture has the rest */
#define TITLE 2.2  /* height of its capitals, of the lettering's */
#define GAP 10.0   /* picture to words */

static bool is_made(const struct part *p, const void *with)
{
	(void)with;
	return !p->existing;
}

/* A picture has no scale: it is as large as there is room. */
static void draw_picture(struct sheet *s, struct box room)
{
	struct view_spec spec = { .from = VIEW_PICTORIAL, .shows = is_made };
	struct view picture = view_make(s->drawing->arena, s->context->parts, spec);
	struct box b = picture.box;
	double scale = fmin(box_width(room) / box_width(b), box_height(room) / box_height(b));
	struct vec middle = vec((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2);
	struct vec origin = vec_sub(vec((room.x0 + room.x1) / 2, (room.y0 + room.y1) / 2),
		vec_scale(middle, scale));

	view_draw(s->drawing, &picture, (struct placing){ origin, scale }, NULL);
}

/* The job's name large, a rule under it; where the words go on. */
static double draw_title(struct sheet *s, struct box column)
{
	struct hand h = s->hand;
	double big = h.letter * TITLE, y = column.y1;
	struct lines name = wrap_text(h.g->arena, h.measure, big, box_width(column) * 0.9,
		s->context->stair->job->about.name);

	for (int i = 0; i < name.n; i++, y -= big * 0.45)
		draw_text_styled(h.g, vec(column.x0, y -= big), big, 0, ALIGN_LEFT, LETTER_BOLD,
			name.line[i]);
	y -= big * 0.2;
	draw_line(h.g, PEN_FRAME, vec(column.x0, y), vec(column.x1, y));
	return y - h.letter;
}

static const char *or_none(const char *text)
{
	return text && *text ? text : "-";
}

static const char *issue_words(struct arena *a, const struct job *job)
{
	const struct revision *r =
		job->revision_count ? &job->revisions[job->revision_count - 1] : NULL;

	if (!r)
		return arena_printf(a, "%s, first issue", or_none(job->about.date));
	return arena_printf(a, "%s, revision %s: %s", or_none(job->about.date), r->mark,
		or_none(r->text));
}

enum { MOST_NOTES = 16 };

static int list_notes(struct arena *a, const struct sheet_context *c, struct note *notes)
{
	const struct job *job = c->stair->job;
	const char *const *said = client_proposal(a, c);
	int n = 0;

	notes[n++] = (struct note){ "Proposed to", or_none(job->about.client) };
	notes[n++] = (struct note){ "For the house at", or_none(job->about.site) };
	notes[n++] = (struct note){ "Date", issue_words(a, job) };
	for (int i = 0; said[i]; i++)
		notes[n++] = (struct note){ i ? NULL : "What is proposed", said[i] };
	notes[n++] = (struct note){ "Measurements of the house", client_status(a, job) };
	return n;
}

/* The words under the title, on a sheet of their own where the column is too short. */
static struct drawing *draw_words(struct sheet *s, struct box column)
{
	struct arena *a = s->drawing->arena;
	struct note notes[MOST_NOTES];
	int n = list_notes(a, s->context, notes);
	struct prose p = prose_set(s->hand, notes, n, box_width(column));

	column.y1 = draw_title(s, column);
	if (prose_columns(s->hand, p, column, box_width(column)) == 1) {
		prose_draw(s->hand, p, column, box_width(column));
		return NULL;
	}
	return client_prose_sheets(a, s->context, "What is proposed", notes, n);
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct sheet s = sheet_begin(a, c, "What is proposed");
	struct box column = s.room, picture = s.room;

	column.x0 = s.room.x1 - WORDS * box_width(s.room);
	picture.x1 = column.x0 - GAP;
	s.drawing->next = draw_words(&s, column);
	draw_picture(&s, picture);
	return s.drawing;
}

const struct sheet_kind sheet_client_cover = { "client-cover", "C-0", draw };
