import { own } from "../../lookup/own.ts";
import { phrases } from "../phrases.ts";
import { plain } from "../plain.ts";
import type { AnswerParser } from "./asked.ts";
import { GATE_WORDS } from "./gate-words.ts";
import { withoutOpening } from "./lead-in.ts";
import { namesIn } from "./names-in.ts";

/** One line of the ticket, whichever of them it is called by, or all in a row as the guide calls it: "phone, cable, fiber". */
const WIRE = "(?:communications?|comms?|tele(?:phone|com)|phone|cable|fiber|internet)";
/** What the utilities and the private lines are called; the others are called what they are named. */
const CALLED: Readonly<Record<string, string>> = {
  electric: "electric(?:al|ity)?|power",
  gas: "(?:natural )?gas",
  communication: `${WIRE}(?:,? (?:and )?${WIRE})*`,
  water: "(?<!reclaimed )(?<!recycled )water",
  sewer: "sewers?|sewage|sanitary",
  reclaimedWater: "(?:reclaimed|recycled)(?: water)?",
  irrigation: "irrigation|sprinklers?",
  lighting: "lighting|(?:yard |landscape )?lights?",
  septic: "septic(?: tank| field)?",
};
const LINES = "(?: (?:lines?|company|mains?))?";
const YES =
  "yes|yeah|yep|yup|clear|all clear|both clear|both marked|are both clear|are both marked|marked|got it|got them|good|all good|done|answered|has answered|answered clear|clear and marked";
const NO =
  "no|nope|nah|nothing yet|not yet|no answer|no answer yet|not answered|not answered yet|hasn't answered|has not answered|didn't answer|did not answer|no word|no word yet|still waiting";
const whole = (words: string) => new RegExp(`^(?:(?:is|are|it's|they're|'s) )?(?:${words})$`);

/**
 * A yes or no for one or more names on a list, each after its name. "All clear" alone is no answer: every name has to be said.
 * Two names with "and" between them share theirs.
 */
export const parseEach: AnswerParser<"each"> = (heard, { names }, { wordsKey }) => {
  const said = withoutOpening(heard).replaceAll(
    /(?:no (?:answer|word)|nothing|haven't heard(?: anything)?) (?:yet )?from (.+?)(?: yet)?$/gi,
    "$1 no answer",
  );
  const { before, each } = namesIn(said, names, (name) => `(?:the )?(?:${own(CALLED, name) ?? name})${LINES}`);
  if (each.length === 0 || !/^\W*(?:and )?$/.test(before)) return { notUnderstood: true };
  const { so, not } = own(GATE_WORDS, wordsKey) ?? {};
  const [yes, no] = [whole([YES, ...phrases(so ?? "")].join("|")), whole([NO, ...phrases(not ?? "")].join("|"))];
  const found: Record<string, boolean> = {};
  let answer: boolean | null = null;
  for (const { name, after } of each.toReversed()) {
    const words = plain(after.replaceAll(/[,;:]/g, " ")).replace(/(?:^| )and$/, (and, at: number) => (at === 0 ? and.trim() : ""));
    // "Electric, gas and water yes": with nothing but a space between them they share it.
    if (words !== "and" && !/^ +$/.test(after)) answer = yes.test(words) ? true : no.test(words) ? false : null;
    if (answer === null || (found[name] ?? answer) !== answer) return { notUnderstood: true };
    found[name] = answer;
  }
  return { kind: "each", yes: Object.fromEntries(Object.entries(found).reverse()) };
};
