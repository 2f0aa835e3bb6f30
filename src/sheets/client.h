/*
 * The pages of the client's set: read by someone who has never seen a plan.
 *
 * Plain words, large letters, no marks of pieces; series letter C, so that none
 * of them is taken for a sheet of the permit or of the shop.
 */
#ifndef SHEETS_CLIENT_H
#define SHEETS_CLIENT_H

#include "draw/view.h"
#include "sheets/frame.h"
#include "sheets/labels.h"

/* ---- words (client_words.c) ---- */

/* What is proposed, a sentence or two each; ended by NULL. */
const char *const *client_proposal(struct arena *a, const struct sheet_context *c);

/* Which site sizes are open, or who measured them and when. */
const char *client_status(struct arena *a, const struct job *job);

/* How many steps, how high and how deep. */
const char *client_steps(struct arena *a, const struct stair *s);

/* The least of it, and whether it rests on sizes that nobody has measured. */
const char *client_headroom(struct arena *a, const struct stair *s);

const char *client_headroom_figure(struct arena *a, const struct stair *s);

/* A site measurement, said to be not verified while it is not marked as measured. */
const char *client_measured(struct arena *a, const struct stair *s, const char *size, double mm);

/* That others make the guard of an open side; "" where none do. */
const char *client_others_words(struct arena *a, const struct job *job);

/* That the edge of the opening upstairs is left for somebody to guard; "" where it is guarded. */
const char *client_edge_words(struct arena *a, const struct sheet_context *c);

/* With which code the drawings were compared; what of it is not met, a paragraph each. */
const char *client_code(struct arena *a, const struct finding *list);
int client_not_met(struct arena *a, const struct finding *list, struct note *notes, int most);

/* Does the stair have a piece of this family? */
bool client_has(const struct sheet_context *c, const struct part_kind *kind);

/* ---- wood and finish (client_material.c) ---- */

enum client_wood {
	WOOD_TREADS,
	WOOD_RISERS,
	WOOD_STRINGERS,
	WOOD_CARRIAGES,
	WOOD_SKIRTS,
	WOOD_MOULDINGS,
	WOOD_NEWELS,
	WOOD_RAIL,
	WOOD_RISER_BARS,
	WOOD_PANELS,
	WOOD_BALUSTERS,
};

/* As the client has chosen them, or that they are not chosen yet. */
const char *client_wood_words(struct arena *a, const struct job *job, enum client_wood wood);
const char *client_finish_words(const struct job *job, enum client_wood wood);

/* "wood of the treads, finish", of the woods in the set `used` (1 << wood); "" when all is chosen.
 */
const char *client_still_to_choose(struct arena *a, const struct job *job, unsigned used);

/* ---- what has changed (client_changes.c) ---- */

/* Since the set before, a paragraph each; their count, 0 when nothing is compared. */
int client_changes(struct arena *a, const struct sheet_context *c, struct note *notes, int most);

/* ---- pages of words (client_prose.c) ---- */

enum { CLIENT_LETTERS = 7, CLIENT_LETTERS_PLAIN = 4 };

/* Heights of letters to try for words that should go on one page, the largest first; the plain one
 * is that of the drawings. */
double client_letter(const struct sheet *s, int i);

/* Notes of a drawing, which on a small paper is lettered as small as the shop's. */
void client_notes(struct sheet *s, const struct note *notes, int n);

/* These say in words what has changed: clouds over them would only be in the way of reading. */
struct drawing *client_told(struct drawing *sheets);

/* Paragraphs in wide columns on as many sheets as they take. */
struct drawing *client_prose_sheets(struct arena *a, const struct sheet_context *c,
	const char *title, const struct note *notes, int n);

/* ---- labels (client_labels.c) ---- */

/* What stands over the steps of a side view, the rest of it, and what is named on a plan. */
enum named { NAMED_OVER, NAMED_UNDER, NAMED_ON_PLAN };

/* One label for each of those families that the view shows; the count. */
int client_labels(struct arena *a, const struct sheet_context *c, const struct view *v,
	enum named named, double scale, const struct label **list);

#endif
