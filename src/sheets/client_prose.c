#include "draw/bounds.h"
#include "sheets/client.h"
#include "sheets/compose.h"

#define COLUMN 34.0 /* of a page that is read, in heights of a capital */

/* Never less than the shop gets. */
#define LEAST 2.5

double client_letter(const struct sheet *s, int i)
{
	static const double larger[CLIENT_LETTERS] = { 1.5, 1.35, 1.2, 1.1, 1, 0.85, 0.71 };

	return fmax(LEAST, s->context->paper->lettering * larger[i]);
}

void client_notes(struct sheet *s, const struct note *notes, int n)
{
	if (sheet_is_cramped(s))
		s->hand.letter = client_letter(s, CLIENT_LETTERS - 1);
	sheet_notes(s, notes, n);
}

struct drawing *client_told(struct drawing *sheets)
{
	for (struct drawing *g = sheets; g; g = g->next)
		g->tells_changes = true;
	return sheets;
}

/* A page of words being set. */
struct page {
	struct sheet sheet;
	int columns;
	double width; /* of one */
};

static struct page page_begin(struct arena *a, const struct sheet_context *c, const char *title,
	int letter)
{
	struct page p = { .sheet = sheet_begin(a, c, title) };
	double room = box_width(p.sheet.room);

	p.sheet.hand.letter = client_letter(&p.sheet, letter);
	p.columns = (int)fmax(1,
		floor((room + PROSE_GAP) / (COLUMN * p.sheet.hand.letter + PROSE_GAP)));
	p.width = (room - (p.columns - 1) * PROSE_GAP) / p.columns;
	return p;
}

/* How many paragraphs go on it: one at least. */
static int notes_that_fit(const struct page *p, const struct note *notes, int n)
{
	for (; n > 1; n--) {
		struct prose words = prose_set(p->sheet.hand, notes, n, p->width);
		if (prose_columns(p->sheet.hand, words, p->sheet.room, p->width) <= p->columns)
			break;
	}
	return n;
}

/* The room cut down to where the columns are equally long. */
static struct box shortest(const struct page *p, struct prose words)
{
	struct box area = p->sheet.room, shorter = area;
	double step = p->sheet.hand.letter / 2;

	while (shorter.y0 < shorter.y1 &&
		prose_columns(p->sheet.hand, words, shorter, p->width) <= p->columns) {
		area = shorter;
		shorter.y0 += step;
	}
	return area;
}

/* The largest letters with which all goes on one page; the plain ones where none do. */
static int largest(struct arena *a, const struct sheet_context *c, const struct note *notes, int n)
{
	for (int i = 0; i < CLIENT_LETTERS; i++) {
		struct page p = page_begin(a, c, "", i);
		if (notes_that_fit(&p, notes, n) == n)
			return i;
	}
	return CLIENT_LETTERS_PLAIN;
}

struct drawing *client_prose_sheets(struct arena *a, const struct sheet_context *c,
	const char *title, const struct note *notes, int n)
{
	struct drawing *first = NULL, **tail = &first;
	int letter = largest(a, c, notes, n);

	while (n > 0) {
		struct page p = page_begin(a, c, title, letter);
		int fits = notes_that_fit(&p, notes, n);
		struct prose words = prose_set(p.sheet.hand, notes, fits, p.width);
		prose_draw(p.sheet.hand, words, shortest(&p, words), p.width);
		*tail = p.sheet.drawing;
		tail = &p.sheet.drawing->next;
		notes += fits;
		n -= fits;
	}
	return first;
}
