export type Half = "am" | "pm" | null;
/**
 * A time of day, or how long ago. `hour` is of the 24-hour day wherever that is known: "2:15 pm" is 14, "12:15 am" is 0.
 * For `hour` 1 to 12, `half` is null exactly where nothing tells morning from afternoon ("2:15", "ten to three", "10:15");
 * otherwise it was said, or follows: "noon", a leading zero ("07:30", "oh seven thirty"), "hours" or "hundred". For
 * `hour` 0 and 13 to 23 there is no doubt: `half` is the one that was said, or null ("14:15", "midnight").
 */
export type Clock = { readonly hour: number; readonly minute: number; readonly half: Half } | { readonly minutesAgo: number };
