/*
 * What Cairo cannot say in a PDF.
 */
#ifndef WRITE_PDF_MEND_H
#define WRITE_PDF_MEND_H

#include "write/buffer.h"

enum pdf_printing { PRINT_AS_LIKED, PRINT_ACTUAL_SIZE };

/*
 * Adds to a PDF of Cairo's the language, the wish to have its title shown, and
 * how it is to be printed; and mends its date.  Only the dialog can be preset
 * so: a user can still choose "fit to page", and the bars on the sheet remain
 * the safeguard.
 */
void pdf_mend(struct buffer *pdf, enum pdf_printing printing);

#endif
