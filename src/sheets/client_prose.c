#include "draw/bounds.h"
#include "sheets/client.h"

#define COLUMN 34.0 /* of a page that is read, in heights of a capital */

/* How many paragraphs go on one page. */
static int notes_that_fit(const struct sheet *s, const struct note *notes, int n, int columns,
	double width)
{
	while (n > 1) {
		struct prose p = prose_set(s->hand, notes, n, width);
		if (prose_columns(s->hand, p, s->room, width) <= columns)
			break;
		n--;
	}
	return n;
}

struct drawing *client_prose_sheets(struct arena *a, const struct sheet_context *c,
	const char *title, const struct note *notes, int n)
{
	struct drawing *first = NULL, **tail = &first;

	while (n > 0) {
		struct sheet s = sheet_begin(a, c, title);
		double wanted = COLUMN * s.hand.letter, room = box_width(s.room);
		int columns = (int)fmax(1, floor((room + PROSE_GAP) / (wanted + PROSE_GAP)));
		double width = (room - (columns - 1) * PROSE_GAP) / columns;
		int fits = notes_that_fit(&s, notes, n, columns, width);
		struct prose p = prose_set(s.hand, notes, fits, width);
		prose_draw(s.hand, p, prose_balance(s.hand, p, s.room, width), width);
		*tail = s.drawing;
		tail = &s.drawing->next;
		notes += fits;
		n -= fits;
	}
	return first;
}
