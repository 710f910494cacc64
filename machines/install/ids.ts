export type EntryNo = number;

export type DeviceId = string;

/**
 * Steady time of a job, in milliseconds: it begins with the wall clock at its opening, and never goes back, whatever is done
 * to that clock. The chart only compares instants; to be shown they are turned into wall time.
 */
export type Instant = number;

/** Milliseconds since 1970 in UTC, as the server's wall clock has it: somebody can set it, back or ahead. */
export type WallTime = number;

export type PersonId = string;

export type GateId = string;

export type StepId = string;
