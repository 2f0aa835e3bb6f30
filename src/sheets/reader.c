#include "sheets/reader.h"

static const unsigned said_to[] = {
	[READER_SHOP] = SAYS_MARKS | SAYS_POSITIONS | SAYS_STRINGERS,
	[READER_DEPARTMENT] = SAYS_FLOORS | SAYS_LIMITS | SAYS_SECTION,
	[READER_CLIENT] = 0,
};

bool sheet_says(const struct sheet_context *c, enum said what)
{
	enum set_reader reader = c->set ? c->set->reader : READER_SHOP;

	return (said_to[reader] & what) != 0;
}
