/*
 * Which letters can be set one by one, from left to right.
 */
#ifndef WRITE_SCRIPT_H
#define WRITE_SCRIPT_H

#include <stdbool.h>

/* Does this character run from right to left, or change its shape or place beside others?  Then
 * a face may hold it, and a word of it would come out wrong all the same. */
bool script_needs_shaping(unsigned point);

#endif
