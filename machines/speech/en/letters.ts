const SPELLED = "alpha|alfa|bravo|charlie|delta";
const PLACE = new RegExp(`\\b(${SPELLED})(?:(?:\\s+|-)(${SPELLED}))?\\b`, "gi");

/**
 * Corners and edges that were said in the spelling alphabet, as the plan writes them. Over a generator B, C and D sound alike.
 *
 * @example asLetters("Alpha Bravo eleven, corner Charlie") // "AB eleven, corner C"
 */
export const asLetters = (said: string): string =>
  said.replaceAll(PLACE, (_, first: string, second: string | undefined) => `${first[0]}${second?.[0] ?? ""}`.toUpperCase());
