/*
 * What Cairo cannot do in a PDF, or only slowly.
 */
#ifndef WRITE_PDF_MEND_H
#define WRITE_PDF_MEND_H

#include "write/buffer.h"

enum pdf_printing { PRINT_AS_LIKED, PRINT_ACTUAL_SIZE };

struct pdf_mending {
	enum pdf_printing printing;
	const struct buffer *const
		*content; /* of every page, packed, to go under what Cairo drew */
	int pages;
};

/*
 * Adds to a PDF of Cairo's the lines of its pages, the language, the wish to
 * have its title shown, and how it is to be printed; and mends its date.
 *
 * Actual size is but a preset of the print dialog: a user can still choose "fit
 * to page", and the bars on the sheet remain the safeguard.
 */
void pdf_mend(struct buffer *pdf, struct pdf_mending m);

#endif
