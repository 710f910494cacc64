const LEAD_IN =
  /^(?:there's|there are|it's|that's|they're|(?:i|we)(?:'ve)? (?:got|have|had)|i count(?:ed)?|we count(?:ed)?|counted|i(?:'m)? read(?:ing)?) /i;

/**
 * A number without what people say on the way to it.
 *
 * @example withoutLeadIn("there's four") // "four"
 */
export const withoutLeadIn = (said: string): string => said.replace(LEAD_IN, "");

const OPENING = /^(?:(?:okay|ok|uh|um|so|yeah|yep|all right|got it)[\s,]+)+/i;
/**
 * An answer in several parts without what is said before it, its names told from their verbs.
 *
 * @example withoutOpening("okay, AB's eleven") // "AB is eleven"
 */
export const withoutOpening = (said: string): string =>
  said
    .replaceAll(/(?<=\p{L})['’]s\b/gu, " is")
    .replaceAll(/(?<=\p{L})['’]re\b/gu, " are")
    .replace(OPENING, "");
