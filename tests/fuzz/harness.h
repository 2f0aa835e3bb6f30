/*
 * A fuzz harness is one file with this one function.  libFuzzer calls it with
 * what it invents, replay.c with the files of the corpus.
 */
#ifndef FUZZ_HARNESS_H
#define FUZZ_HARNESS_H

#include <stddef.h>
#include <stdint.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

#endif
