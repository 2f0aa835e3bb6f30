#include "sheets/client_when.h"

#include "sheets/client.h"

static const struct job *job_of(const struct sheet_context *c)
{
	return c->stair->job;
}

static bool has_open_side(const struct sheet_context *c)
{
	const struct job_stair *s = &job_of(c)->stair;

	return s->left.kind == SIDE_OPEN || s->right.kind == SIDE_OPEN;
}

static bool has_wall_side(const struct sheet_context *c)
{
	const struct job_stair *s = &job_of(c)->stair;

	return s->left.kind == SIDE_WALL || s->right.kind == SIDE_WALL;
}

/* ---- steps ---- */

int when_first_step_round(const struct sheet_context *c)
{
	return job_of(c)->treads.starting.ends != START_NONE;
}

int when_cut_out(const struct sheet_context *c)
{
	return job_of(c)->treads.notch_count > 0;
}

int when_moulding(const struct sheet_context *c)
{
	return job_of(c)->mouldings.under_nosing != MOULDING_NONE;
}

int when_risers(const struct sheet_context *c)
{
	return job_of(c)->risers.kind == RISER_BOARD;
}

int when_open_risers(const struct sheet_context *c)
{
	return !when_risers(c);
}

int when_riser_bars(const struct sheet_context *c)
{
	return when_open_risers(c) && job_of(c)->risers.bar > 0;
}

/* ---- what carries them ---- */

int when_housed_wall(const struct sheet_context *c)
{
	return has_wall_side(c) && job_of(c)->stringers.wall.kind == STRINGER_HOUSED;
}

int when_rough_wall(const struct sheet_context *c)
{
	return has_wall_side(c) && !when_housed_wall(c);
}

static bool has_open_string(const struct sheet_context *c, enum stringer_kind kind)
{
	return has_open_side(c) && job_of(c)->stringers.open.kind == kind;
}

int when_skirted(const struct sheet_context *c)
{
	return has_open_side(c) && job_open_skirt(job_of(c)) > 0;
}

int when_sawtooth(const struct sheet_context *c)
{
	return has_open_string(c, STRINGER_SAWTOOTH) && !when_skirted(c);
}

int when_mitred(const struct sheet_context *c)
{
	return has_open_string(c, STRINGER_MITRED);
}

int when_housed(const struct sheet_context *c)
{
	return has_open_string(c, STRINGER_HOUSED);
}

int when_wall_skirt(const struct sheet_context *c)
{
	return has_wall_side(c) && job_of(c)->skirts.wall != SKIRT_NONE &&
		client_has(c, &part_skirt);
}

/* ---- balustrade ---- */

static bool has_level_rail(const struct sheet_context *c)
{
	return job_of(c)->rail.level_run_count > 0;
}

int when_rail(const struct sheet_context *c)
{
	return client_has(c, &part_rail);
}

int when_raked_rail(const struct sheet_context *c)
{
	return when_rail(c) && job_has_guard(job_of(c), GUARD_HERE);
}

int when_guard(const struct sheet_context *c)
{
	const struct job_rail *r = &job_of(c)->rail;

	for (int i = 1; i < r->level_run_count; i++)
		if (!near_enough(r->level_runs[i].height, r->level_runs[0].height))
			return r->level_run_count;
	return has_level_rail(c);
}

int when_wall_rail(const struct sheet_context *c)
{
	return job_of(c)->wall_rail_count;
}

int when_newels(const struct sheet_context *c)
{
	return client_has(c, &part_newel);
}

int when_caps(const struct sheet_context *c)
{
	return when_newels(c) && job_of(c)->newels.cap.kind != CAP_NONE;
}

int when_balusters(const struct sheet_context *c)
{
	enum infill_name kind = job_of(c)->infill.kind;

	return client_has(c, &part_infill) && (kind == INFILL_PLAIN || kind == INFILL_BRACED);
}

int when_bars(const struct sheet_context *c)
{
	return client_has(c, &part_infill) && job_of(c)->infill.kind == INFILL_BARS;
}

int when_panels(const struct sheet_context *c)
{
	return client_has(c, &part_infill) && job_of(c)->infill.kind == INFILL_PANEL;
}
