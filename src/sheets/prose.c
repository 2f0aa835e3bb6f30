#include "sheets/prose.h"

#include <stddef.h>
#include <string.h>

#include "draw/bounds.h"
#include "draw/place.h"

#define LINE_PITCH 1.5 /* of the height of a capital (ISO 3098, mixed letters without accents) */
#define FIRST 1.1      /* an area's upper edge to the base of its first line, likewise */

/* One line as it will be set. */
struct set_line {
	const char *text;
	enum letter_style style;
	double drop;   /* base line below the line before */
	bool together; /* with the next one in a column: a heading, the ends of a paragraph */
};

/* Room for the letters of all notes: no more lines can come of them. */
static int most_lines(const struct note *notes, int n)
{
	size_t letters = 0;

	for (int i = 0; i < n; i++)
		letters += 4 + (notes[i].text ? strlen(notes[i].text) : 0);
	return (int)letters + 1;
}

struct prose prose_set(struct hand h, const struct note *notes, int n, double width)
{
	struct set_line *out = NEW_N(h.g->arena, struct set_line, most_lines(notes, n));
	double pitch = h.letter * LINE_PITCH;
	int count = 0;

	for (int i = 0; i < n; i++) {
		if (!notes[i].text || !*notes[i].text)
			continue;
		if (notes[i].heading)
			out[count++] = (struct set_line){ notes[i].heading, LETTER_BOLD,
				pitch * 1.4, true };
		struct lines l = wrap_text(h.g->arena, h.measure, h.letter, width, notes[i].text);
		for (int k = 0; k < l.n; k++)
			out[count++] = (struct set_line){ l.line[k], LETTER_REGULAR,
				k || notes[i].heading ? pitch : pitch * 1.2,
				k + 1 < l.n && (k == 0 || k + 2 == l.n) };
	}
	return (struct prose){ out, count };
}

/* How far down a line and those that stay with it reach. */
static double reach(struct prose p, int i)
{
	double down = p.lines[i].drop;

	for (; p.lines[i].together && i + 1 < p.n; i++)
		down += p.lines[i + 1].drop;
	return down;
}

/* Fills columns; draws nothing when `g` is NULL.  The number of columns. */
static int flow(struct hand h, struct prose p, struct box area, double width, struct drawing *g)
{
	double x = area.x0, y = area.y1;
	int columns = 1;
	bool fresh = true, kept = false;

	for (int i = 0; i < p.n; i++) {
		const struct set_line *line = &p.lines[i];
		double need = kept ? line->drop : reach(p, i);
		if (!fresh && y - need < area.y0) {
			x += width + PROSE_GAP;
			y = area.y1;
			columns++;
			fresh = true;
		}
		y -= fresh ? h.letter * FIRST : line->drop;
		fresh = false;
		kept = line->together;
		if (g)
			draw_text_styled(g, vec(x, y), h.letter, 0, ALIGN_LEFT, line->style,
				line->text);
	}
	return columns;
}

int prose_columns(struct hand h, struct prose p, struct box area, double width)
{
	return flow(h, p, area, width, NULL);
}

struct box prose_balance(struct hand h, struct prose p, struct box area, double width)
{
	int columns = flow(h, p, area, width, NULL);
	struct box shorter = area;

	while (columns > 1 && shorter.y0 < shorter.y1 &&
		flow(h, p, shorter, width, NULL) == columns) {
		area = shorter;
		shorter.y0 += h.letter / 2;
	}
	return area;
}

double prose_depth(struct hand h, struct prose p)
{
	double depth = h.letter * FIRST;

	for (int i = 1; i < p.n; i++)
		depth += p.lines[i].drop;
	return depth;
}

void prose_draw(struct hand h, struct prose p, struct box area, double width)
{
	flow(h, p, area, width, h.g);
}
