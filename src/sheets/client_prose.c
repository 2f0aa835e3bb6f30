#include "draw/bounds.h"
#include "sheets/client.h"

#define COLUMN 34.0 /* of a page that is read, in heights of a capital */

/* A page of words being set. */
struct page {
	struct sheet sheet;
	int columns;
	double width; /* of one */
};

static struct page page_begin(struct arena *a, const struct sheet_context *c, const char *title,
	double larger)
{
	struct page p = { .sheet = sheet_begin(a, c, title) };
	double room = box_width(p.sheet.room);

	p.sheet.hand.letter *= larger;
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

/* Letters as large as all goes on one page with; those of the paper where it does not. */
static double largest(struct arena *a, const struct sheet_context *c, const struct note *notes,
	int n)
{
	static const double tried[] = { 1.5, 1.35, 1.2, 1.1 };

	for (size_t i = 0; i < sizeof(tried) / sizeof(*tried); i++) {
		struct page p = page_begin(a, c, "", tried[i]);
		if (notes_that_fit(&p, notes, n) == n)
			return tried[i];
	}
	return 1;
}

struct drawing *client_prose_sheets(struct arena *a, const struct sheet_context *c,
	const char *title, const struct note *notes, int n)
{
	struct drawing *first = NULL, **tail = &first;
	double larger = largest(a, c, notes, n);

	while (n > 0) {
		struct page p = page_begin(a, c, title, larger);
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
