export type EntryNo = number;

export type DeviceId = string;

/** Milliseconds since 1970 in UTC, from the server's clock. The chart only compares them. */
export type Instant = number;

export type PersonId = string;

export type GateId = string;

export type StepId = string;
