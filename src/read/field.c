#include "read/field.h"

#include <assert.h>
#include <string.h>

#include "base/text.h"
#include "read/suggest.h"
#include "read/value.h"

enum { MOST_ENTRIES = 200 };

const char *field_path(struct arena *a, const struct group *g, const char *key)
{
	return *g->path ? arena_printf(a, "%s.%s", g->path, key) : key;
}

const char *field_usual(const struct field *f, const void *group, enum units units)
{
	if (f->decide)
		return f->decide(group, units);
	return units == UNITS_MILLIMETRES && f->usual_mm ? f->usual_mm : f->usual;
}

const struct field *field_find(const struct group *g, const char *key)
{
	for (const struct field *f = g->fields; f->key; f++)
		if (strcmp(f->key, key) == 0)
			return f;
	return NULL;
}

const char *choice_list(struct arena *a, const struct choice *choices)
{
	struct text list = { .arena = a };

	for (const struct choice *c = choices; c->word; c++)
		text_join(&list, c[1].word ? ", " : " or ", c->word);
	return text_chars(&list);
}

const char *choice_word(const struct choice *choices, int value)
{
	for (const struct choice *c = choices; c->word; c++)
		if (c->value == value)
			return c->word;
	return "";
}

static bool is_list(enum field_kind kind)
{
	return kind == FIELD_GROUPS || kind == FIELD_LENGTHS || kind == FIELD_TEXTS;
}

static const char *text_or_word(struct value v)
{
	const struct choice *choices = v.field->choices;

	return choices ? choice_word(choices, value_choice(v)) : value_text(v);
}

/* A value, or one entry of a list of them. */
static void read_value(struct value v, void *at)
{
	switch (v.field->kind) {
	case FIELD_TEXT:
	case FIELD_TEXTS: *(const char **)at = text_or_word(v); break;
	case FIELD_DATE: *(const char **)at = value_date(v); break;
	case FIELD_LENGTH:
	case FIELD_LENGTHS: *(double *)at = value_length(v); break;
	case FIELD_NUMBER: *(double *)at = value_number(v); break;
	case FIELD_COUNT: *(int *)at = value_count(v); break;
	case FIELD_CHOICE: *(int *)at = value_choice(v); break;
	case FIELD_YES_NO: *(bool *)at = value_yes_no(v); break;
	case FIELD_GROUP:
	case FIELD_GROUPS: group_read(v.reader, v.field->group, v.node, at); break;
	}
}

static size_t entry_size(const struct field *f)
{
	if (f->kind == FIELD_GROUPS)
		return f->group->size;
	return f->kind == FIELD_LENGTHS ? sizeof(double) : sizeof(const char *);
}

/* The entries of a list, or a complaint and none. A single value stands for a list of one. */
static struct node list_entries(struct value v)
{
	struct diags *d = v.reader->diags;
	const struct node *n = v.node;

	if (n->kind == NODE_TEXT && *n->text && v.field->kind != FIELD_GROUPS)
		return (struct node){ .entries = (struct node *)n, .count = 1 };
	if (n->kind == NODE_LIST && n->count <= MOST_ENTRIES)
		return *n;
	if (n->kind == NODE_LIST)
		diag_error(d, node_place(n), NULL,
			"%s: %d entries are more than the %d there can be", v.path, n->count,
			MOST_ENTRIES);
	else if (n->kind != NODE_REFUSED)
		diag_error(d, node_place(n), "each entry begins with a dash and a space",
			"%s: a list is expected", v.path);
	return (struct node){ 0 };
}

static void read_list(struct value v, char *into)
{
	struct node list = list_entries(v);
	size_t size = entry_size(v.field);
	char *entries = arena_alloc(v.reader->arena, size, (size_t)list.count);

	v.node = list.entries;
	for (int i = 0; i < list.count; i++, v.node = v.node->next)
		read_value(v, entries + size * (size_t)i);
	*(void **)(into + v.field->at) = entries;
	*(int *)(into + v.field->count_at) = list.count;
}

/* A default as a node, so that it is read by the code that reads what was typed. */
static const struct node *usual_node(struct arena *a, const struct field *f, const char *usual)
{
	struct node *n = NEW(a, struct node);

	*n = (struct node){ .kind = NODE_TEXT, .text = usual, .lines = 1 };
	if (!is_list(f->kind))
		return n;
	struct node *list = NEW(a, struct node);
	list->kind = NODE_LIST;
	struct node **tail = &list->entries;
	for (const char *p = usual; *p; p += strspn(p, ", ")) {
		size_t length = strcspn(p, ",");
		*tail = NEW(a, struct node);
		**tail = (struct node){ .text = arena_strndup(a, p, length), .lines = 1 };
		tail = &(*tail)->next;
		list->count++;
		p += length;
	}
	return list;
}

static void fill_default(const struct field_reader *r, const struct group *g, const struct field *f,
	char *into)
{
	const char *usual = field_usual(f, into, r->units);
	struct value v = { r, f, field_path(r->arena, g, f->key), NULL };

	if (f->kind == FIELD_GROUP)
		group_read(r, f->group, NULL, into + f->at);
	else if (f->like && f->kind == FIELD_TEXT)
		*(const char **)(into + f->at) =
			*(const char **)(into + field_find(g, f->like)->at);
	else if (f->like)
		*(double *)(into + f->at) = *(double *)(into + field_find(g, f->like)->at);
	else if (!usual && (f->kind == FIELD_TEXT || f->kind == FIELD_DATE))
		*(const char **)(into + f->at) = "";
	if (!usual)
		return;
	int errors = r->diags->errors;
	v.node = usual_node(r->arena, f, usual);
	if (is_list(f->kind))
		read_list(v, into);
	else
		read_value(v, into + f->at);
	assert(r->diags->errors == errors && "a default of the tables is wrong");
}

static void read_field(const struct field_reader *r, const struct group *g, const struct field *f,
	const struct node *n, char *into)
{
	const struct node *found = node_find(n, f->key);
	struct value v = { r, f, field_path(r->arena, g, f->key), found };

	if (!found && f->required && n)
		diag_error(r->diags, node_place(n), f->help, "%s is missing", v.path);
	if (!found)
		fill_default(r, g, f, into);
	else if (is_list(f->kind))
		read_list(v, into);
	else
		read_value(v, into + f->at);
}

static void check_unknown(const struct field_reader *r, const struct group *g,
	const struct node *group)
{
	for (const struct node *n = group->entries; n; n = n->next) {
		if (field_find(g, n->key))
			continue;
		diag_error(r->diags, n->key_at, suggest_key(r->arena, r->top, g, n->key),
			"unknown key \"%s\" in %s", n->key, *g->path ? g->path : "the file");
	}
}

/* The group's node, written out when it was given in short. */
static const struct node *group_node(const struct field_reader *r, const struct group *g,
	const struct node *n)
{
	if (n->kind != NODE_TEXT || !g->shorthand || !*n->text)
		return n;
	struct node *entry = NEW(r->arena, struct node);
	struct node *group = NEW(r->arena, struct node);
	*entry = *n;
	entry->key = g->shorthand;
	entry->key_at = n->at;
	entry->next = NULL;
	*group = *n;
	group->kind = NODE_GROUP;
	group->entries = entry;
	group->count = 1;
	return group;
}

static bool is_empty(const struct node *n)
{
	return n->kind == NODE_TEXT && !*n->text && !n->quoted && !n->comment;
}

void group_read(const struct field_reader *r, const struct group *g, const struct node *n,
	void *into)
{
	if (n)
		n = group_node(r, g, n);
	if (n && n->kind != NODE_GROUP && n->kind != NODE_REFUSED && !is_empty(n)) {
		diag_error(r->diags, node_place(n),
			g->instead ? g->instead : suggest_keys(r->arena, g),
			"%s: keys are expected here", *g->path ? g->path : "the file");
		n = NULL;
	}
	if (n && n->kind == NODE_GROUP)
		check_unknown(r, g, n);
	if (g->keeps_node)
		*(const struct node **)into = n;
	for (const struct field *f = g->fields; f->key; f++)
		read_field(r, g, f, n, into);
}
