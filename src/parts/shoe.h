/*
 * Shoe and subrail: strips under and over the infill, ploughed as wide as it is
 * thick, and the fillets that close the plough between balusters.
 *
 *       _____       _____          ____
 *      |  _  |     |  _  |        |____|   fillet, as thick as the plough is deep
 *      |_| |_|     |_|#|_|
 *      subrail      with its fillet
 *
 * Over open stringers the shoe lies on the nosing line; on a closed stringer's
 * edge and on a floor it lies full length.
 */
#ifndef PARTS_SHOE_H
#define PARTS_SHOE_H

#include "parts/infill.h"
#include "parts/setting.h"

/* Shoe and subrail of the stretch, where the job has them. */
void shoe_make(struct pieces *list, const struct stretch *s, struct diags *d);

/* Says how a strip is ploughed for the infill, where it is: on which of its faces. */
void plough_add(struct arena *a, struct part *p, const struct job *job, const char *face);

/* Fillets in their ploughs, between balusters. */
void fillets_make(struct pieces *list, const struct setting *set);

#endif
