/*
 * What Cairo 1.16 cannot say in a PDF.
 */
#ifndef WRITE_PDF_MEND_H
#define WRITE_PDF_MEND_H

#include "base/text.h"

enum pdf_printing { PRINT_AS_LIKED, PRINT_ACTUAL_SIZE };

/*
 * Adds to a PDF of Cairo's the language, the wish to have its title shown, and how
 * it is to be printed; and mends its date.  NULL, or what is not as Cairo 1.14 to
 * 1.18 write it: then the PDF is as it was.
 *
 * Actual size is but a preset of the print dialog: a user can still choose "fit
 * to page", and the bars on the sheet remain the safeguard.
 */
const char *pdf_mend(struct text *pdf, enum pdf_printing printing);

#endif
