/*
 * What a client ought to know, in plain words.
 *
 * No figure is promised here that the drawings do not have; what is said of wood,
 * measuring and building work is common practice.
 */
#include "sheets/client.h"
#include "sheets/words.h"

enum said_when { ALWAYS, WHEN_NOT_VERIFIED, WHEN_COMPARED };

static const struct {
	enum said_when when;
	struct note note;
} notes[] = {
	{ ALWAYS,
		{ "These are not drawings for a permit",
			"They show what is proposed to you. A building department gets a set of "
			"its "
			"own, and the shop makes the stair from a third one." } },
	{ ALWAYS,
		{ "Who decides about the building code",
			"We compared the drawing with the figures of the code named on C-001 and "
			"say "
			"there where one is not met. Only your building authority can decide "
			"whether "
			"the stair is accepted; codes differ from place to place and from year to "
			"year. We do not judge strength: where the law asks for a licensed "
			"designer "
			"or engineer, floors, walls and beams are theirs to judge." } },
	{ WHEN_NOT_VERIFIED,
		{ "Sizes that are not verified",
			"They were not yet measured in your house. They are measured before "
			"anything "
			"that depends on them is made. What is found may change the drawings; then "
			"you get new ones to sign." } },
	{ ALWAYS,
		{ "We measure again before cutting",
			"Floors settle, plaster is uneven, and a new floor or tile changes the "
			"height"
			" to climb. Tell us before we measure what the finished floors will be, "
			"above"
			" and below: a change of half an inch or a centimetre is felt at the first "
			"and the last step." } },
	{ ALWAYS,
		{ "Wood moves",
			"It swells in damp seasons and shrinks in dry ones, most of all across the "
			"grain. Fine gaps that open in dry seasons and close in damp ones are "
			"normal."
			" Heat the house and let it dry out before the stair comes in, and keep it "
			"so." } },
	{ ALWAYS,
		{ "Wood differs",
			"No two boards are alike in colour and figure, and a sample shows the "
			"species, not the board. Light darkens some woods and bleaches others in "
			"the "
			"first months. Stain and finish come out otherwise on each species." } },
	{ ALWAYS,
		{ "What you keep clear for us",
			"The way from the street to the stair, the hall below and the landing "
			"above, "
			"and a place near by for tools. Furniture, pictures and floors nearby are "
			"covered or moved by you; the work makes dust and noise." } },
	{ ALWAYS,
		{ "If an old stair is taken out",
			"Then there is a hole in your floor and no way up. Keep children, guests "
			"and "
			"animals away. Barriers stay where they stand, and a temporary stair or "
			"ladder is for those who work there. Decide before the first day where you "
			"sleep, and how you would leave the upper floor in a fire." } },
	{ ALWAYS,
		{ "What may turn up",
			"Wiring, pipes and bearing posts hide in walls and floors. When one is "
			"found "
			"work stops there until a qualified person has dealt with it. That takes "
			"time, and its cost is not part of this proposal." } },
	{ ALWAYS,
		{ "Using the stair",
			"Until the rail and what is under it are fixed the stair is a building "
			"site. "
			"Do not leave things on the steps, and do not climb or hang on the "
			"balustrade." } },
	{ ALWAYS,
		{ "How to read these pages",
			"Right and left are meant going up. The figures count: do not measure the "
			"paper. Words with a line and a dot name the piece under the dot." } },
	{ WHEN_COMPARED,
		{ "Clouds",
			"A cloud with a letter marks what has changed since the last set; C-001 "
			"says "
			"what it was." } },
};

enum { NOTES = sizeof(notes) / sizeof(*notes) };

static bool is_said(struct arena *a, const struct sheet_context *c, enum said_when when)
{
	switch (when) {
	case ALWAYS: return true;
	case WHEN_NOT_VERIFIED: return *unverified_words(a, c->stair->job) != '\0';
	case WHEN_COMPARED: return c->earlier != NULL;
	}
	return true;
}

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	struct note said[NOTES];
	int n = 0;

	for (int i = 0; i < NOTES; i++)
		if (is_said(a, c, notes[i].when))
			said[n++] = notes[i].note;
	return client_told(client_prose_sheets(a, c, "In plain words", said, n));
}

const struct sheet_kind sheet_client_notes = { "client-notes", "C-9", draw };
