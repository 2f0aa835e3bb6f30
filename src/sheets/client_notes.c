/*
 * What a client ought to know, in plain words.
 *
 * No figure is promised here that the drawings do not have; what is said of wood,
 * measuring and building work is common practice.
 */
#include "sheets/client.h"

static const struct note notes[] = {
	{ "These are not drawings for a permit",
		"They show what is proposed to you. A building department gets a set of its own, "
		"and the shop makes the stair from a third one." },
	{ "Who decides about the building code",
		"The authority of your town or county, and nobody else. Codes differ from place "
		"to place and from year to year. We draw to the figures we were given and say "
		"where one is not met; whether the stair is accepted, the inspector says. Where "
		"the law asks for a licensed designer or engineer, floors, walls and beams are "
		"theirs to judge." },
	{ "Verify in field",
		"A size that is marked VIF, or named as not verified, was not yet measured in "
		"your house. It is measured before anything is made. What is found may change "
		"the drawings; then you get new ones to sign." },
	{ "We measure again before cutting",
		"Floors settle, plaster is uneven, and a new floor or tile changes the height to "
		"climb. Tell us before we measure what the finished floors will be, above and "
		"below: a change of half an inch or a centimetre is felt at the first and the last "
		"step." },
	{ "Wood moves",
		"It swells in damp seasons and shrinks in dry ones, most of all across the "
		"grain. Fine gaps that open in winter and close in summer are no fault. Heat the "
		"house and let it dry out before the stair comes in, and keep it so." },
	{ "Wood differs",
		"No two boards are alike in colour and figure, and a sample shows the species, "
		"not the board. Light darkens some woods and bleaches others in the first months. "
		"Stain and finish come out otherwise on each species." },
	{ "What you keep clear for us",
		"The way from the street to the stair, the hall below and the landing above, and "
		"a place near by for tools. Furniture, pictures and floors nearby are covered or "
		"moved by you; the work makes dust and noise." },
	{ "While the old stair is out",
		"There is a hole in your floor and no way up. Keep children, guests and animals "
		"away. Barriers stay where they stand and the temporary stair or ladder is for "
		"those who work there. Decide before the first day where you sleep, and how you "
		"would leave the upper floor in a fire." },
	{ "What may turn up",
		"Wiring, pipes and bearing posts hide in walls and floors. When one is found work "
		"stops there until somebody who may has dealt with it. That costs time and is not "
		"in the drawings." },
	{ "Using the stair",
		"Until the rail and what is under it are fixed the stair is a building site. Do "
		"not leave things on the steps, and do not climb or hang on the balustrade." },
	{ "How to read these pages",
		"Right and left are meant going up. The figures count: do not measure the paper. "
		"Words with a line and a dot name the piece under the dot." },
};

static struct drawing *draw(struct arena *a, const struct sheet_context *c)
{
	return client_prose_sheets(a, c, "In plain words", notes,
		(int)(sizeof(notes) / sizeof(*notes)));
}

const struct sheet_kind sheet_client_notes = { "client-notes", "C-9", draw };
