#include "parts/compound.h"

/* The formulas agree with the compound-angle chart that power-saw manuals print; a test compares
 * them (tests/sources/compound_mitre_test.c). */
struct compound compound_mitre(int sides, double slope)
{
	double half = PI / sides;
	struct compound c = { .blade_tilt = asin(sin(slope) * sin(half)) };
	c.mitre_gauge = atan(cos(slope) * tan(half));
	c.dihedral = PI - 2 * c.blade_tilt;
	c.hip_slope = atan(tan(slope) * cos(half));
	return c;
}

/* A face is a triangle: its foot as long as the square's side, half its point's angle the setting
 * of the mitre gauge. */
struct pyramid pyramid_on(double width, double slope)
{
	double half = width / 2;
	struct pyramid p = { .joint = compound_mitre(4, slope) };
	p.height = half * tan(slope);
	p.slant = half / cos(slope);
	p.hip = sqrt(2 * half * half + p.height * p.height);
	p.base_angle = PI / 2 - p.joint.mitre_gauge;
	return p;
}
