/*
 * Whole numbers over whole numbers, so that a length keeps its exact value
 * until it becomes millimetres in one rounding.
 */
#ifndef READ_RATIONAL_H
#define READ_RATIONAL_H

struct rational {
	long long over, under; /* under > 0 */
};

static inline struct rational rational_add(struct rational a, struct rational b)
{
	if (a.under == b.under)
		return (struct rational){ a.over + b.over, a.under };
	return (struct rational){ a.over * b.under + b.over * a.under, a.under * b.under };
}

static inline struct rational rational_times(struct rational a, long long k)
{
	return (struct rational){ a.over * k, a.under };
}

/* Both products are whole numbers below 2^53, so the division is the only rounding. */
static inline double rational_value(struct rational a, long long over, long long under)
{
	return (double)(a.over * over) / (double)(a.under * under);
}

#endif
