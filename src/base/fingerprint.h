/*
 * FNV-1a over 64 bits: quick, and enough to tell two files apart where nobody means ill.
 * http://www.isthe.com/chongo/tech/comp/fnv/ (constants from memory)
 */
#ifndef BASE_FINGERPRINT_H
#define BASE_FINGERPRINT_H

#include <stdint.h>

#define FINGERPRINT_OF_NOTHING UINT64_C(0xcbf29ce484222325)

static inline uint64_t fingerprint_add(uint64_t so_far, uint32_t unit)
{
	return (so_far ^ unit) * UINT64_C(0x100000001b3);
}

#endif
