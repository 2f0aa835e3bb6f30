/*
 * The signatures, over the title block of the first page of its series.
 */
#ifndef SHEETS_CLIENT_SIGN_H
#define SHEETS_CLIENT_SIGN_H

#include "pitchboard/sheet.h"

#define CLIENT_SIGNED_SERIES "C-8"

/* What the page keeps clear for them. */
double client_sign_height(struct arena *a, const struct sheet_context *c);

/* Draws them, where the set has that page: when its fingerprint is known, which they name. */
void client_sign(struct arena *a, const struct sheet_context *c, struct drawing *sheets);

#endif
