/* The one place where the version stands: the Makefile reads it from here. */
#ifndef PITCHBOARD_VERSION_H
#define PITCHBOARD_VERSION_H

#define PITCHBOARD_VERSION "0.1.0"

#endif
