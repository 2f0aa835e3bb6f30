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
bool has_guard(const struct job *job); /* made here: of an open side, or a level run */
bool has_riser_bars(const struct job *job);
bool has_boards(const struct job *job);

/* How far the lower edges of a rail can be eased, and are unless the job says otherwise. */
double edge_radius_most(enum rail_profile_kind profile, double recess, double depth);
double edge_radius_usual(double most, enum units units);

#endif
