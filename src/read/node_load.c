#include "read/node.h"

#include <string.h>
#include <yaml.h>

#include "base/file.h"
#include "read/place.h"
#include "read/syntax.h"

/* A job is a page or two; libyaml itself knows no bound, and deep nesting costs it dearly. */
enum { MOST_DEPTH = 32, MOST_NODES = 10000 };

struct loader {
	struct arena *arena;
	struct diags *diags;
	const char *text;
	yaml_parser_t parser;
	yaml_event_t event;
	/* How far the raw text has been followed, to see what stands behind a value. */
	const char *at;
	size_t at_index;
	int node_count;
	bool stopped;
};

/* libyaml counts from zero, and columns in characters, not bytes. */
static struct pos pos_of(yaml_mark_t mark)
{
	return (struct pos){ (int)mark.line + 1, (int)mark.column + 1 };
}

static void report_fault(struct loader *l)
{
	const yaml_parser_t *p = &l->parser;
	struct syntax_fault fault = { p->problem, p->context, pos_of(p->problem_mark),
		pos_of(p->context_mark) };

	/* A fault of the bytes themselves has no mark, only an offset. */
	if (p->error == YAML_READER_ERROR)
		fault.at = place_of_byte(l->text, p->problem_offset);
	syntax_complain(l->diags, l->text, fault);
	l->stopped = true;
}

/* Moves to the next event; the last one is gone. */
static bool next_event(struct loader *l)
{
	yaml_event_delete(&l->event);
	if (l->stopped)
		return false;
	if (yaml_parser_parse(&l->parser, &l->event))
		return true;
	report_fault(l);
	return false;
}

static struct node *node_new(struct loader *l, enum node_kind kind)
{
	struct node *n = NEW(l->arena, struct node);

	n->kind = kind;
	n->at = pos_of(l->event.start_mark);
	n->text = "";
	return n;
}

/* The raw text behind the event. Events come in order, so the text is walked once. */
static const char *text_behind(struct loader *l)
{
	for (; l->at_index < l->event.end_mark.index && *l->at; l->at_index++)
		l->at = next_character(l->at);
	return l->at;
}

static bool is_figure_or_letter(char c)
{
	return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}

/* `3'-0" #2 pine`: YAML drops everything from the # on.  A comment that was meant as one has
 * a space behind its #. */
static const char *lost_text(struct loader *l)
{
	const char *p = text_behind(l);
	const char *start = p;

	while (*p == ' ' || *p == '\t')
		p++;
	if (p == start || *p != '#' || !is_figure_or_letter(p[1]))
		return NULL;
	return arena_strndup(l->arena, p, strcspn(p, "\r\n"));
}

static void warn_of_lost_text(struct loader *l, const struct node *n, const char *lost)
{
	diag_warning(l->diags, n->at,
		arena_printf(l->arena, "quote the whole value if \"%s\" belongs to it", lost),
		"\"%s\" is taken as a comment; the value is only \"%s\"", lost, n->text);
}

static struct node *load_text(struct loader *l)
{
	struct node *n = node_new(l, NODE_TEXT);
	const char *value = (const char *)l->event.data.scalar.value;
	size_t length = l->event.data.scalar.length;

	n->text = arena_strndup(l->arena, value, length);
	n->quoted = l->event.data.scalar.style != YAML_PLAIN_SCALAR_STYLE;
	n->lines = (int)(l->event.end_mark.line - l->event.start_mark.line) + 1;
	if (strlen(value) != length) {
		diag_error(l->diags, n->at, NULL, "a text cannot hold a zero byte");
		n->kind = NODE_REFUSED;
	}
	if (n->quoted)
		return n;
	const char *lost = lost_text(l);
	if (!*n->text)
		n->comment = lost;
	else if (lost)
		warn_of_lost_text(l, n, lost);
	return n;
}

static struct node *load_node(struct loader *l, int depth);

static void stop(struct loader *l, const char *why, const char *hint)
{
	diag_error(l->diags, pos_of(l->event.start_mark), hint, "%s", why);
	l->stopped = true;
}

static struct node *load_list(struct loader *l, int depth)
{
	struct node *list = node_new(l, NODE_LIST);
	struct node **tail = &list->entries;

	while (next_event(l) && l->event.type != YAML_SEQUENCE_END_EVENT) {
		struct node *n = load_node(l, depth + 1);
		if (!n)
			break;
		*tail = n;
		tail = &n->next;
		list->count++;
	}
	return list;
}

/* A copy of the key just met, or NULL when it is no word. */
static const char *load_key(struct loader *l, int depth)
{
	struct pos at = pos_of(l->event.start_mark);
	struct node *n = load_node(l, depth + 1);

	if (!n || n->kind == NODE_REFUSED)
		return NULL;
	if (n->kind == NODE_TEXT && *n->text)
		return n->text;
	diag_error(l->diags, at, NULL, "a key must be a word");
	return NULL;
}

/* libyaml accepts a key twice; the later value would win without a word. */
static void check_twice(struct loader *l, const struct node *group, const struct node *n)
{
	const struct node *earlier = node_find(group, n->key);

	if (earlier)
		diag_error(l->diags, n->key_at, "keep one of the two",
			"\"%s\" is given twice, in lines %d and %d", n->key, earlier->key_at.line,
			n->key_at.line);
}

static struct node *load_group(struct loader *l, int depth)
{
	struct node *group = node_new(l, NODE_GROUP);
	struct node **tail = &group->entries;

	while (next_event(l) && l->event.type != YAML_MAPPING_END_EVENT) {
		struct pos key_at = pos_of(l->event.start_mark);
		const char *key = load_key(l, depth);
		if (!next_event(l))
			break;
		struct node *n = load_node(l, depth + 1);
		if (!n)
			break;
		if (!key)
			continue;
		n->key = key;
		n->key_at = key_at;
		check_twice(l, group, n);
		*tail = n;
		tail = &n->next;
		group->count++;
	}
	return group;
}

static const char *anchor_of(const yaml_event_t *e)
{
	switch (e->type) {
	case YAML_SCALAR_EVENT: return (const char *)e->data.scalar.anchor;
	case YAML_SEQUENCE_START_EVENT: return (const char *)e->data.sequence_start.anchor;
	case YAML_MAPPING_START_EVENT: return (const char *)e->data.mapping_start.anchor;
	default: return NULL;
	}
}

static const char *tag_of(const yaml_event_t *e)
{
	switch (e->type) {
	case YAML_SCALAR_EVENT: return (const char *)e->data.scalar.tag;
	case YAML_SEQUENCE_START_EVENT: return (const char *)e->data.sequence_start.tag;
	case YAML_MAPPING_START_EVENT: return (const char *)e->data.mapping_start.tag;
	default: return NULL;
	}
}

/* A job needs none of these, and an alias may point at its own ancestor. */
static bool is_refused(struct loader *l)
{
	const char *hint = "quote the value if the mark belongs to it";
	struct pos at = pos_of(l->event.start_mark);

	if (l->event.type == YAML_ALIAS_EVENT)
		diag_error(l->diags, at, hint, "a value cannot begin with * (a YAML alias)");
	else if (anchor_of(&l->event))
		diag_error(l->diags, at, hint, "a value cannot begin with & (a YAML anchor)");
	else if (tag_of(&l->event))
		diag_error(l->diags, at, hint, "a value cannot begin with ! (a YAML tag)");
	else
		return false;
	return true;
}

static struct node *load_content(struct loader *l, int depth)
{
	switch (l->event.type) {
	case YAML_SCALAR_EVENT: return load_text(l);
	case YAML_SEQUENCE_START_EVENT: return load_list(l, depth);
	case YAML_MAPPING_START_EVENT: return load_group(l, depth);
	default: return node_new(l, NODE_REFUSED);
	}
}

static struct node *load_node(struct loader *l, int depth)
{
	if (depth > MOST_DEPTH)
		stop(l, "groups and lists are nested too deeply", NULL);
	else if (++l->node_count > MOST_NODES)
		stop(l, "this is more than a job can hold", NULL);
	if (l->stopped)
		return NULL;
	bool refused = is_refused(l);
	struct node *n = load_content(l, depth);
	if (refused)
		n->kind = NODE_REFUSED;
	return n;
}

/* Steps over marks of the stream that carry nothing. */
static bool skip_events(struct loader *l, int n)
{
	while (n-- > 0)
		if (!next_event(l))
			return false;
	return true;
}

static struct node *load_document(struct loader *l)
{
	struct node *root;

	/* to the start of the document, behind that of the stream */
	if (!skip_events(l, 2))
		return NULL;
	if (l->event.type == YAML_STREAM_END_EVENT) {
		stop(l, "the file is empty", "`pitchboard new` prints a job to begin from");
		return NULL;
	}
	if (!next_event(l) || !(root = load_node(l, 1)))
		return NULL;
	/* to the end of the stream, behind that of the document */
	if (!skip_events(l, 2))
		return NULL;
	if (l->event.type != YAML_STREAM_END_EVENT)
		stop(l, "a second document begins here", "one file holds one job");
	return l->stopped ? NULL : root;
}

const struct node *node_load(struct arena *a, const char *text, struct diags *d)
{
	struct loader l = { .arena = a, .diags = d, .text = text, .at = text_start(text) };

	if (strlen(text) > LONGEST_TEXT) {
		diag_error(d, (struct pos){ 1, 1 }, NULL, "the file is larger than 1 MiB");
		return NULL;
	}
	if (!yaml_parser_initialize(&l.parser)) {
		diag_error(d, (struct pos){ 1, 1 }, NULL, "there is no memory to read the file");
		return NULL;
	}
	yaml_parser_set_encoding(&l.parser, YAML_UTF8_ENCODING);
	yaml_parser_set_input_string(&l.parser, (const unsigned char *)l.at, strlen(l.at));
	struct node *root = load_document(&l);
	yaml_event_delete(&l.event);
	yaml_parser_delete(&l.parser);
	return root;
}
