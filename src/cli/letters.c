#include "cli/letters.h"

void letters_tell_missing(struct missing m, struct diags *d)
{
	if (!m.text)
		return;
	diag_warning(d, (struct pos){ 0, 0 },
		"Latin, Greek and Cyrillic letters are there; spell it in those",
		"%d %s drawn as a question mark (U+FFFD); the first is U+%04X in \"%s\"", m.letters,
		m.letters == 1 ? "letter cannot be set and is" : "letters cannot be set and are",
		m.code, m.text);
}
