/*
 * Marking rods in sheets and on a roll: first a list of them, then the strips.
 */
#include "draw/bounds.h"
#include "draw/table.h"
#include "sheets/template_cover.h"
#include "sheets/template_rods.h"
#include "sheets/template_strips.h"

#define PAGE_MOST 5075.0 /* just under 200 in, which is what readers of PDF take */
#define ROLL_LONG 600.0  /* room for words, however short the rods */
#define ROLL_LEAST 160.0 /* and for the bars along y */
#define ROLL_MOST 880.0  /* how wide rolls of paper are: 36 in less the margins */
#define PAPER_SIDES 40.0 /* what of a page's width is no room for strips, and a little */
#define ROLL_WORDS 60.0  /* and of its height */
#define WHAT_MOST 60.0   /* width of a column of words */

static const char words_strips[] =
	"2. Cut out the strips along their frames. Where one goes on, trim it along the line at "
	"its right, lay it on the next, in the order of their numbers, until both crosses meet "
	"their halves, and tape it to a straight batten. Each joint may be 0.3 mm out (common "
	"practice): "
	"check every tick against its figure with a tape.";

static const char words_use[] =
	"3. Check the length of each rod with a tape. Lay it on the work from the end named, prick "
	"or pencil every tick and square it across. Figures are from that end, each rounded by "
	"itself, so that no rounding adds up.";

static const struct table_column columns[] = {
	{ .head = "Rod", .align = ALIGN_RIGHT },
	{ .head = "What it marks", .align = ALIGN_LEFT, .most = WHAT_MOST },
	{ .head = "On", .align = ALIGN_LEFT, .most = WHAT_MOST / 2 },
	{ .head = "Laid", .align = ALIGN_LEFT, .most = WHAT_MOST },
	{ .head = "Check length", .align = ALIGN_RIGHT },
};

#define COLUMNS ((int)(sizeof(columns) / sizeof(*columns)))

static int rod_count(const struct named_rod *rods)
{
	int n = 0;

	for (; rods; rods = rods->next)
		n++;
	return n;
}

static struct table rod_table(struct arena *a, const struct named_rod *rods, int first, int most,
	struct lettering l)
{
	const char **cells = NEW_N(a, const char *, COLUMNS *most);
	int n = 0;

	for (int i = 1; rods && n < most; rods = rods->next, i++) {
		if (i <= first)
			continue;
		const char *row[COLUMNS] = { arena_printf(a, "%d", i), rods->what,
			marks_words(a, rods->on), arena_printf(a, "%s%s", rods->from, rods->note),
			length_letter(a, l, rods->rod.end - rods->rod.start) };
		for (int k = 0; k < COLUMNS; k++)
			cells[COLUMNS * n + k] = row[k];
		n++;
	}
	return (struct table){ NULL, columns, COLUMNS, cells, n };
}

/* As many rows as there is room for under `top`; at least one. */
static struct table rows_that_fit(const struct template_sheets *s, struct hand h,
	const struct named_rod *rods, int first, double room)
{
	struct lettering l = job_lettering(s->job->context->stair->job);
	int rows = rod_count(rods) - first;
	struct table t = rod_table(s->arena, rods, first, rows, l);

	while (rows > 1 && box_height(table_size(h, &t)) > room)
		t = rod_table(s->arena, rods, first, --rows, l);
	return t;
}

/* The first page of the list names the parts of all rods to the cut list. */
static const char *const *marked_parts(struct arena *a, const struct named_rod *rods)
{
	const char *marks = "";

	for (; rods; rods = rods->next)
		marks = *marks ? arena_printf(a, "%s, %s", marks, rods->on) : rods->on;
	return marks_list(a, marks);
}

static struct drawing *list_pages(const struct template_sheets *s, const struct named_rod *rods)
{
	struct arena *a = s->arena;
	struct drawing *list = NULL;
	double width = s->paper.x - 2 * TEMPLATE_MARGIN, x = TEMPLATE_MARGIN;

	for (int first = 0; first < rod_count(rods);) {
		struct page page = template_page(s,
			arena_printf(a, "%s%s", template_id(a, s->job),
				first ? arena_printf(a, "/rods from %d", first + 1) : ""),
			"Marking rods, list");
		struct hand h = { page.drawing, page.measure, TEMPLATE_LETTER };
		double y = cover_heading(s, &page, sheet_top(s), width, "marking rods");
		const char *const words[] = { words_print, words_strips, words_use,
			correction_words(a, s->place.correction) };
		for (int i = 0; i < 4 && first == 0; i++)
			y = page_paragraph(&page, vec(x, y), width, words[i]) - 1.5;
		struct table t = rows_that_fit(s, h, rods, first, y - 2 - TEMPLATE_MARGIN);
		draw_table(h, vec(x, y - 2), &t);
		if (first == 0)
			page.drawing->shows = marked_parts(a, rods);
		first += t.row_count;
		*drawings_end(&list) = page.drawing;
	}
	return list;
}

/* Every rod cut into lengths. */
static struct strips cut_into_strips(const struct template_sheets *s, const struct named_rod *rods)
{
	struct arena *a = s->arena;
	struct lettering l = job_lettering(s->job->context->stair->job);
	struct tiling *tilings = NEW_N(a, struct tiling, rod_count(rods));
	struct strip *list;
	int n = 0, nth = 0;

	for (const struct named_rod *r = rods; r; r = r->next, nth++) {
		struct pattern *p = NEW(a, struct pattern);
		*p = rod_pattern(a, &r->rod, l);
		tilings[nth] = strip_tiling(a, s, p, arena_printf(a, "%d/", nth + 1));
		n += tilings[nth].columns;
	}
	list = NEW_N(a, struct strip, n);
	n = nth = 0;
	for (const struct named_rod *r = rods; r; r = r->next, nth++)
		for (int i = 0; i < tilings[nth].columns; i++) {
			struct tile at = { i, 0 };
			list[n++] = (struct strip){ &tilings[nth], at,
				arena_printf(a, "rod %s", tile_name(a, &tilings[nth], at)),
				arena_printf(a, "%s: %s, %s", marks_words(a, r->on), r->what,
					r->from) };
		}
	return (struct strips){ list, n };
}

static struct template_job rods_job(struct arena *a, const struct sheet_context *c,
	const struct paper *paper, int number)
{
	struct template_job t = { .context = c,
		.paper = paper,
		.number = number,
		.mark = "rods",
		.name = "rods",
		.words = template_words(a, c->stair->job) };

	t.words.piece = "Marking rods";
	t.words.line = "Mark from the ticks; the frames are cut, and mark nothing.";
	t.words.from = "from the end named on the rod";
	return t;
}

/* As long as the longest rod, as high as all of them. */
static struct paper *roll_paper(struct arena *a, const struct named_rod *rods, struct lettering l)
{
	struct paper *p = NEW(a, struct paper);
	double longest = 0, high = ROLL_WORDS;

	for (const struct named_rod *r = rods; r; r = r->next) {
		longest = fmax(longest, r->rod.end - r->rod.start);
		high += rod_height(rod_lanes(a, &r->rod, l)) + 2 * TILE_EDGE + STRIP_GAP;
	}
	p->name = "a roll";
	p->width = fmin(fmax(longest + 2 * TILE_EDGE + PAPER_SIDES, ROLL_LONG), PAGE_MOST);
	p->height = fmin(fmax(high, ROLL_LEAST), ROLL_MOST);
	return p;
}

struct drawing *rods_draw(struct arena *a, const struct sheet_context *c,
	const struct named_rod *rods, const struct paper *paper, int number)
{
	struct template_job *sheets = NEW(a, struct template_job),
			    *roll = NEW(a, struct template_job);

	*sheets = rods_job(a, c, paper, number);
	*roll = rods_job(a, c, roll_paper(a, rods, job_lettering(c->stair->job)), number);
	struct template_sheets s = template_sheets(a, sheets, USE_TILES, "",
		paper->width > paper->height ? PAPER_AS_GIVEN : PAPER_TURNED);
	struct template_sheets on_roll = template_sheets(a, roll, USE_ROLL, "roll", PAPER_AS_GIVEN);
	struct drawing *list = strips_draw(&on_roll, cut_into_strips(&on_roll, rods), "rods");
	*drawings_end(&list) = template_calibration(a, c->measure, s.paper, s.file);
	*drawings_end(&list) = list_pages(&s, rods);
	*drawings_end(&list) = strips_draw(&s, cut_into_strips(&s, rods), "strips");
	return list;
}
