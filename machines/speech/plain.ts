/**
 * Normalizes words for comparison: lowercase, no punctuation after words, single spaces. Decimal points stay.
 *
 * @example plain("Eight,  showing.") // "eight showing"
 */
export const plain = (said: string): string =>
  said
    .normalize("NFC")
    .toLowerCase()
    .replaceAll(/[’]/g, "'")
    .replaceAll(/[.,!?;:…]+(?=\s|$)/g, "")
    .replaceAll(/\s+/g, " ")
    .trim();

/**
 * Trims words but keeps capitals and commas, which matter in numbers and free text.
 *
 * @example trimmed(" 1,200 lbs, kN ok. ") // "1,200 lbs, kN ok"
 */
export const trimmed = (said: string): string =>
  said
    .trim()
    .replace(/[.,!?;:…]+$/, "")
    .replaceAll(/\s+/g, " ");
