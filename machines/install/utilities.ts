/** The facilities of the uniform color code; one line of the locate ticket each. */
export const UTILITIES = ["electric", "gas", "communication", "water", "sewer", "reclaimedWater"] as const;

/** Whether its lines are looked for: also where nobody has heard from it. */
export const mayHaveLines = ({ marked }: { readonly marked: boolean | "unanswered" }): boolean => marked !== false;
