/**
 * Student's t that one in twenty is beyond, by degrees of freedom from 1. Table of critical values, one-sided 0.05: NIST/SEMATECH e-Handbook
 * 1.3.6.7.2, as bookdown.org/pingapang9/linear_models_bookdown prints it (read).
 */
const T_95 = [
  6.314, 2.92, 2.353, 2.132, 2.015, 1.943, 1.895, 1.86, 1.833, 1.812, 1.796, 1.782, 1.771, 1.761, 1.753, 1.746, 1.74, 1.734, 1.729, 1.725,
] as const; // biome-ignore format: a table

/** The same for any whole number of degrees of freedom from 1; beyond the table its last, which is the wider. */
export const studentT95 = (degreesOfFreedom: number): number => T_95[Math.min(degreesOfFreedom, T_95.length) - 1]!;
