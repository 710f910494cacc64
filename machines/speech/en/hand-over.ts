import type { Meaning } from "../meanings.ts";

const NAME = "([\\p{L}\\p{N}][\\p{L}\\p{N}'’. -]{0,59}?)";
const LEAD = "(?:the )?(?:lead|job|crew)";
const SAID = [
  `(?:i |i'm |i am |i'll )?(?:hand|handing|pass|passing) (?:${LEAD} )?over(?: ${LEAD})? to ${NAME}`,
  `(?:i |i'm |i am |i'll )?(?:hand|handing|pass|passing|give|giving) ${LEAD} to ${NAME}`,
  `${NAME} (?:has|has got|'s got|takes|gets|is taking) the lead`,
  `${NAME} takes over(?: ${LEAD})?`,
].map((pattern) => new RegExp(`^(?:(?:okay|ok|now),? )?${pattern}(?: now| from here| please)?$`, "iu"));
/** Words that stand for no name, or that ask. */
const NO_NAME =
  /^(?:who|who's|nobody|no one|somebody|someone|anybody|he|she|they|it|that|this|you|i|we|me|him|her|them|us|what|does|did|is|has|if|when|the|a|an)\b/i;

/**
 * The lead handed over to somebody by name. `null` if the words are about something else.
 *
 * @example parseHandOver("hand over to Maren") // { handOver: "Maren" }
 */
export function parseHandOver(said: string): Meaning | null {
  const words = said.replaceAll("’", "'");
  for (const pattern of SAID) {
    const name = pattern.exec(words)?.[1]?.trim();
    if (name) return NO_NAME.test(name) ? null : { handOver: name };
  }
  return null;
}
