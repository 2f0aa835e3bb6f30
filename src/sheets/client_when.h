/*
 * When something is there for a client to choose: how often a row of the facts
 * is said, 0 for never.
 */
#ifndef SHEETS_CLIENT_WHEN_H
#define SHEETS_CLIENT_WHEN_H

#include "pitchboard/sheet.h"

int when_first_step_round(const struct sheet_context *c);
int when_cut_out(const struct sheet_context *c);
int when_moulding(const struct sheet_context *c);
int when_risers(const struct sheet_context *c);
int when_open_risers(const struct sheet_context *c);
int when_riser_bars(const struct sheet_context *c);
int when_rough_wall(const struct sheet_context *c);
int when_housed_wall(const struct sheet_context *c);
int when_sawtooth(const struct sheet_context *c);
int when_skirted(const struct sheet_context *c);
int when_mitred(const struct sheet_context *c);
int when_housed(const struct sheet_context *c);
int when_wall_skirt(const struct sheet_context *c);
int when_rail(const struct sheet_context *c);
int when_raked_rail(const struct sheet_context *c);
int when_guard(const struct sheet_context *c); /* once where all are of one height */
int when_wall_rail(const struct sheet_context *c);
int when_newels(const struct sheet_context *c);
int when_caps(const struct sheet_context *c);
int when_balusters(const struct sheet_context *c);
int when_bars(const struct sheet_context *c);
int when_panels(const struct sheet_context *c);

#endif
