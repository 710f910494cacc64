export { UTILITIES } from "../figures/utilities.ts";

/** Whether its lines are looked for: also where nobody has heard from it. */
export const mayHaveLines = ({ marked }: { readonly marked: boolean | "unanswered" }): boolean => marked !== false;
