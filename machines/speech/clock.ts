export type AmPm = "am" | "pm" | null;
/**
 * A time of day, or how long ago. `hour` is on the 24-hour clock if that is known: "2:15 pm" is 14, "12:15 am" is 0. For hours
 * 1 to 12, `half` is null exactly if nothing tells morning from afternoon ("2:15", "ten to three", "10:15"); otherwise it was
 * said, or is implied by "noon", a leading zero ("07:30", "oh seven thirty"), "hours", or "hundred". Hours 0 and 13 to 23 are
 * unambiguous: `half` is what was said, or null ("14:15", "midnight").
 */
export type Clock = { readonly hour: number; readonly minute: number; readonly half: AmPm } | { readonly minutesAgo: number };
