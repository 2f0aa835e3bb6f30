/* Tests that letter with the real faces: an arena and the faces, for the whole group. */
#ifndef WITH_FACES_H
#define WITH_FACES_H

#include "pitchboard/write.h"

static struct arena *arena;
static struct faces *faces;

static inline int take_faces(void **state)
{
	const char *problem;

	(void)state;
	arena = arena_new();
	faces = faces_load(arena, "templates", &problem);
	return faces ? 0 : -1;
}

static inline int drop_faces(void **state)
{
	(void)state;
	faces_free(faces);
	arena_free(arena);
	return 0;
}

#endif
