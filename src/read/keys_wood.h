/*
 * When a key of the wood matters: a sheet says only what was taken for granted of this stair.
 */
#ifndef READ_KEYS_WOOD_H
#define READ_KEYS_WOOD_H

#include "read/keys_table.h"

bool has_open_side(const struct job *job);
bool has_wall_side(const struct job *job);
bool has_housed(const struct job *job);
bool has_carriages(const struct job *job);
bool has_spaced_carriages(const struct job *job);
bool has_housed_span(const struct job *job);
bool has_cut(const struct job *job);
bool has_wall_carriage(const struct job *job);
bool has_returns(const struct job *job);
bool has_newels(const struct job *job);
bool has_riser_bars(const struct job *job);
bool has_boards(const struct job *job);

#endif
