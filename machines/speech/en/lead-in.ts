const LEAD_IN =
  /^(?:there's|there are|it's|that's|they're|(?:i|we)(?:'ve)? (?:got|have|had)|i count(?:ed)?|we count(?:ed)?|counted|i(?:'m)? read(?:ing)?) /i;

/**
 * A number without what people say on the way to it.
 *
 * @example withoutLeadIn("there's four") // "four"
 */
export const withoutLeadIn = (said: string): string => said.replace(LEAD_IN, "");
