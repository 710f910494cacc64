import { warningText } from "../../install/warning-text.ts";
import type { SpokenWarning } from "../meanings.ts";
import { plain } from "../plain.ts";

/** What it is out for: only words that such warnings are made of, so that nothing said around them gets in. */
const HOW = "severe|extreme|excessive|flash|high|strong|winter|tropical|special|dust|ice|red";
const WHAT_FOR = "tornado|thunderstorms?|storm|weather|winds?|flood|lightning|hail|hurricane|heat|cold|flag";
const WHAT = new RegExp(`\\b((?:(?:${HOW}) )*(?:severe|(?:${WHAT_FOR})(?: (?:${WHAT_FOR}))*)) warnings?\\b`);
/** A funnel that is seen needs no name of a warning. */
const SEEN = /\b(?:tornado|funnel cloud)\b/;
const UNTIL = /\b(?:until|till?|through) (?!further)(.+?)(?= (?:(?:issued|put out|given) )?(?:by|from) |$)/;
const ISSUER = /\b(?:by|from) (?:the )?((?:[a-z]+ )*(?:weather (?:service|office|radio|bureau|desk)|office|sheriff|county|city|airport))\b/;

/**
 * A warning as it was read out: what it is, until when, who put it out. What was not said is left out; "weather warning" says nothing.
 *
 * @example warningSaid("severe thunderstorm warning until four pm") // { what: "severe thunderstorm", until: "four pm" }
 */
export function warningSaid(heard: string): SpokenWarning {
  const words = plain(heard).replaceAll(",", "");
  const what = WHAT.exec(words)?.[1] ?? SEEN.exec(words)?.[0];
  const said: SpokenWarning = {
    ...(what === "weather" ? {} : part("what", what)),
    ...part("until", UNTIL.exec(words)?.[1]),
    ...part("issuer", ISSUER.exec(words)?.[1]),
  };
  return said;
}

const part = (name: keyof SpokenWarning, text: string | undefined): SpokenWarning =>
  text === undefined ? {} : { [name]: warningText(text.trim()) };
