/*
 * What is known of the cover before it is drawn.
 */
#ifndef SHEETS_COVER_H
#define SHEETS_COVER_H

#define COVER_TITLE "Job, choices and cautions"

#endif
