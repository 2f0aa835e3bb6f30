/* Two lengths that are the same but for rounding; cmocka 1.1 compares only floats. */
#ifndef NEAR_H
#define NEAR_H

#include <math.h>

#define assert_near(a, b, by) assert_true(fabs((a) - (b)) <= (by))

#endif
