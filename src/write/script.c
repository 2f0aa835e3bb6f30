#include "write/script.h"

/* Blocks of the Unicode standard, in order (from memory). */
static const struct {
	unsigned from, to;
} shaped[] = {
	{ 0x0590, 0x08FF },   /* Hebrew, Arabic, Syriac, Thaana, N'Ko and others from the right */
	{ 0x0900, 0x0DFF },   /* Devanagari and the scripts of India that go with it */
	{ 0x0E00, 0x0FFF },   /* Thai, Lao, Tibetan */
	{ 0x1000, 0x109F },   /* Myanmar */
	{ 0x1100, 0x11FF },   /* parts of Hangul syllables */
	{ 0x1700, 0x1CFF },   /* Khmer, Mongolian, and scripts of South-East Asia */
	{ 0x200C, 0x200F },   /* joiners and marks of direction */
	{ 0x202A, 0x202E },   /* embeddings and overrides of direction */
	{ 0x2066, 0x2069 },   /* isolates of direction */
	{ 0xA800, 0xABFF },   /* further scripts of South and South-East Asia, parts of Hangul */
	{ 0xD7B0, 0xD7FF },   /* parts of Hangul syllables */
	{ 0xFB1D, 0xFDFF },   /* forms of Hebrew and Arabic letters */
	{ 0xFE70, 0xFEFF },   /* forms of Arabic letters */
	{ 0x10800, 0x11FFF }, /* old scripts from the right, scripts of India */
	{ 0x1E800, 0x1EFFF }, /* from the right */
};

bool script_needs_shaping(unsigned point)
{
	for (unsigned i = 0; i < sizeof(shaped) / sizeof(*shaped) && shaped[i].from <= point; i++)
		if (point <= shaped[i].to)
			return true;
	return false;
}
