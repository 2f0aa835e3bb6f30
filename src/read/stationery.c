#include "pitchboard/stationery.h"

#include <glob.h>
#include <string.h>

#include "base/file.h"
#include "read/shop_file.h"

static const struct choice pens[] = {
	{ "small", PENS_SMALL },
	{ "large", PENS_LARGE },
	{ 0 },
};

static const struct choice families[] = {
	{ "job", SCALES_OF_JOB },
	{ "imperial", SCALES_IMPERIAL },
	{ "metric", SCALES_METRIC },
	{ 0 },
};

static const struct choice title_forms[] = {
	{ "usual", TITLE_USUAL },
	{ "slim", TITLE_SLIM },
	{ 0 },
};

static const struct field paper[] = {
	{ FIELD_TEXT, "name", LANDS(paper, name), .required = true, .most = 20,
		.help = "as a job names it" },
	{ FIELD_LENGTH, "width", LANDS(paper, width), .required = true, .least = 100, .most = 5000,
		.help = "width as drawn on" },
	{ FIELD_LENGTH, "height", LANDS(paper, height), .required = true, .least = 100,
		.most = 5000, .help = "height as drawn on" },
	{ FIELD_LENGTH, "left", LANDS(paper, left), .required = true, .most = 100,
		.help = "left edge of the paper to the frame" },
	{ FIELD_LENGTH, "right", LANDS(paper, right), .most = 100, .like = "left",
		.help = "right edge of the paper to the frame" },
	{ FIELD_LENGTH, "top", LANDS(paper, top), .most = 100, .like = "right",
		.help = "upper edge of the paper to the frame" },
	{ FIELD_LENGTH, "bottom", LANDS(paper, bottom), .most = 100, .like = "top",
		.help = "lower edge of the paper to the frame" },
	{ FIELD_CHOICE, "pens", LANDS(paper, pens), .choices = pens, .usual = "small",
		.help = "set of pens: outline of 0.35 mm or of 0.5 mm" },
	{ FIELD_CHOICE, "scales", LANDS(paper, scales), .choices = families, .usual = "job",
		.help = "family of scales to choose from: as the job's lengths are lettered, or "
			"always one" },
	{ FIELD_CHOICE, "title", LANDS(paper, title), .choices = title_forms, .usual = "usual",
		.help = "which title block of title-block.yaml goes on it" },
	{ FIELD_LENGTH, "lettering", LANDS(paper, lettering), .least = 2.5, .most = 10,
		.usual = "2.5 mm", .help = "height of a capital in figures and notes" },
	{ 0 },
};

static const struct group paper_keys = { "papers", sizeof(struct paper), paper,
	.keeps_node = false };

static const struct field papers[] = {
	{ FIELD_GROUPS, "papers", LANDS(stationery, papers), COUNTED(stationery, paper_count),
		.required = true, .group = &paper_keys, .help = "the papers there are" },
	{ 0 },
};

static const struct group papers_keys = { "", sizeof(struct stationery), papers,
	.keeps_node = false };

static const struct field cell[] = {
	{ FIELD_TEXT, "label", LANDS(title_cell, label), .most = 40,
		.help = "small, at the top of the cell" },
	{ FIELD_TEXT, "shows", LANDS(title_cell, shows), .required = true,
		.help = "what stands in it, by name, or a text after a =" },
	{ FIELD_NUMBER, "share", LANDS(title_cell, share), .least = 0.01, .most = 1000,
		.usual = "1", .help = "its share of the row's width" },
	{ FIELD_LENGTH, "letter", LANDS(title_cell, letter), .least = 2.5, .most = 20,
		.usual = "2.5 mm", .help = "height of a capital" },
	{ 0 },
};

static const struct group cell_keys = { "title_block.rows.cells", sizeof(struct title_cell), cell,
	.keeps_node = false };

static const struct field row[] = {
	{ FIELD_LENGTH, "height", LANDS(title_row, height), .required = true, .least = 5,
		.most = 100, .help = "height of the row" },
	{ FIELD_GROUPS, "cells", LANDS(title_row, cells), COUNTED(title_row, n), .required = true,
		.group = &cell_keys, .help = "its cells from left to right" },
	{ 0 },
};

static const struct group row_keys = { "title_block.rows", sizeof(struct title_row), row,
	.keeps_node = false };

static const struct field block[] = {
	{ FIELD_LENGTH, "width", LANDS(title_block, width), .required = true, .least = 60,
		.most = 1000, .help = "width of the title block" },
	{ FIELD_GROUPS, "rows", LANDS(title_block, rows), COUNTED(title_block, n), .required = true,
		.group = &row_keys, .help = "its rows from the top" },
	{ 0 },
};

static const struct group block_keys = { "title_block", sizeof(struct title_block), block,
	.keeps_node = false };

/* The same, where there is one: width and rows are asked for only then. */
static const struct field slim_block[] = {
	{ FIELD_LENGTH, "width", LANDS(title_block, width), .least = 60, .most = 1000,
		.help = "width of the title block", .usual = "180 mm" },
	{ FIELD_GROUPS, "rows", LANDS(title_block, rows), COUNTED(title_block, n),
		.group = &row_keys, .help = "its rows from the top", .absent = "none" },
	{ 0 },
};

static const struct group slim_keys = { "slim_title_block", sizeof(struct title_block), slim_block,
	.keeps_node = false };

static const struct field title[] = {
	{ FIELD_GROUP, "title_block", LANDS(stationery, title), .required = true,
		.group = &block_keys, .help = "the block in the lower right corner" },
	{ FIELD_GROUP, "slim_title_block", LANDS(stationery, slim), .group = &slim_keys,
		.help = "the one on papers with title: slim", .absent = "the usual one" },
	{ 0 },
};

static const struct group title_keys = { "", sizeof(struct stationery), title,
	.keeps_node = false };

static const struct choice readers[] = { { "shop", READER_SHOP },
	{ "department", READER_DEPARTMENT }, { "client", READER_CLIENT }, { 0 } };

static const struct field set[] = {
	{ FIELD_TEXT, "title", LANDS(sheet_set, title), .required = true,
		.help = "what the set is, in words" },
	{ FIELD_CHOICE, "reader", LANDS(sheet_set, reader), .choices = readers, .usual = "shop",
		.help = "who reads it: decides what the views say beside the stair itself" },
	{ FIELD_TEXT, "says", LANDS(sheet_set, says), .most = 120,
		.help = "what it is for, in the margin of every sheet" },
	{ FIELD_LENGTH, "stamp", LANDS(sheet_set, stamp), .most = 200,
		.help = "width kept clear beside the title block for a stamp", .absent = "none" },
	{ FIELD_NUMBER, "lettering", LANDS(sheet_set, lettering), .least = 1, .most = 3,
		.usual = "1", .help = "its letters as so many times the paper's" },
	{ FIELD_YES_NO, "templates", LANDS(sheet_set, templates), .usual = "yes",
		.help = "do the full-size templates come with it?" },
	{ FIELD_TEXTS, "sheets", LANDS(sheet_set, sheets), COUNTED(sheet_set, n), .required = true,
		.help = "its sheets in order" },
	{ 0 },
};

static const struct group set_keys = { "", sizeof(struct sheet_set), set, .keeps_node = false };

static bool check_papers(const struct stationery *s, struct diags *d)
{
	for (int i = 0; i < s->paper_count; i++) {
		const struct paper *p = &s->papers[i];
		if (p->left + p->right < p->width && p->top + p->bottom < p->height)
			continue;
		diag_error(d, (struct pos){ 0, 0 }, NULL,
			"papers.yaml: the margins of %s leave no room for a frame", p->name);
		return false;
	}
	return true;
}

static bool read_sets(struct arena *a, const char *dir, struct stationery *s, struct diags *d)
{
	glob_t found;
	bool good = true;

	if (glob(arena_printf(a, "%s/sets/*.yaml", dir), 0, NULL, &found) != 0) {
		diag_error(d, (struct pos){ 0, 0 }, NULL, "there is no set in %s/sets", dir);
		return false;
	}
	struct sheet_set *sets = NEW_N(a, struct sheet_set, found.gl_pathc);
	for (size_t i = 0; i < found.gl_pathc && good; i++) {
		sets[i].name = path_stem(a, found.gl_pathv[i]);
		good = shop_file_read(a, found.gl_pathv[i], &set_keys, &sets[i], d);
	}
	s->sets = sets;
	s->set_count = (int)found.gl_pathc;
	globfree(&found);
	return good;
}

const struct stationery *stationery_read(struct arena *a, const char *dir, struct diags *d)
{
	struct stationery *s = NEW(a, struct stationery);
	const char *papers_path = arena_printf(a, "%s/papers.yaml", dir);
	const char *title_path = arena_printf(a, "%s/title-block.yaml", dir);

	if (!shop_file_read(a, papers_path, &papers_keys, s, d) || !check_papers(s, d))
		return NULL;
	if (!shop_file_read(a, title_path, &title_keys, s, d) || !read_sets(a, dir, s, d))
		return NULL;
	return s;
}

const struct title_block *stationery_title(const struct stationery *s, const struct paper *p)
{
	return p->title == TITLE_SLIM && s->slim.n > 0 ? &s->slim : &s->title;
}

static char fold(char c)
{
	return c >= 'A' && c <= 'Z' ? (char)(c - 'A' + 'a') : c;
}

/* "ARCH D", "Arch D" and "archd" are one. */
static bool same_name(const char *a, const char *b)
{
	for (;;) {
		a += strspn(a, " ");
		b += strspn(b, " ");
		if (fold(*a) != fold(*b))
			return false;
		if (!*a)
			return true;
		a++;
		b++;
	}
}

const struct paper *stationery_paper(const struct stationery *s, const char *name)
{
	for (int i = 0; i < s->paper_count; i++)
		if (same_name(s->papers[i].name, name))
			return &s->papers[i];
	return NULL;
}

const struct sheet_set *stationery_set(const struct stationery *s, const char *name)
{
	for (int i = 0; i < s->set_count; i++)
		if (same_name(s->sets[i].name, name))
			return &s->sets[i];
	return NULL;
}
