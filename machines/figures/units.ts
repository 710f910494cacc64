/** Meters in a foot and in an inch: exact by definition (NIST SP 811, B.8). */
export const METERS_PER_FOOT = 0.3048;
export const METERS_PER_INCH = 0.0254;
/** Newtons in a pound-force: exact by definition (NIST SP 811, B.8). */
export const NEWTONS_PER_POUND_FORCE = 4.4482216152605;
