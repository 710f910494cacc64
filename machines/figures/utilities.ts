/** The facilities of the uniform color code; one line of the locate ticket each. Source: APWA Uniform Color Code. */
export const UTILITIES = ["electric", "gas", "communication", "water", "sewer", "reclaimedWater"] as const;
