/*
 * A stair with rails, for tests: with runs on the upper floor, or along its walls.
 */
#ifndef TESTS_RAILED_H
#define TESTS_RAILED_H

#include "built_refused.h"

/* Header at 2268; the opening reaches 150 past the stair on each open side. */
#define JOB(left, right, more)                                                                     \
	"pitchboard: 1\n"                                                                          \
	"job: {name: Test, units: millimetres}\n"                                                  \
	"floors: {total_rise: 1800}\n"                                                             \
	"opening: {length: 2000, width: 1200, floor_thickness: 300}\n"                             \
	"stair: {width: 900, left: " left ", right: " right                                        \
	", segments: [{risers: 10, run: 250}]}\n"                                                  \
	"treads: {thickness: 30, nosing: 25, side_overhang: 32}\n"                                 \
	"risers: {thickness: 18}\n"                                                                \
	"newels: {section: 90, above_rail: 70}\n" more

#define RAIL "rail: {height: 900, width: 57, depth: 60"

static inline struct built with(const char *text)
{
	struct built b = built_from(text);
	if (!b.parts)
		print_message("%s\n", built_complaint(&b));
	assert_non_null(b.parts);
	return b;
}

#endif
