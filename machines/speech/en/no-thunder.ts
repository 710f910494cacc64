import type { Meaning } from "../meanings.ts";

const WAS_NONE = "(?:that|it) (?:wasn't|was not|was no|isn't|is not|ain't) (?:thunder|lightning)";
const NONE =
  "(?:(?:there's |there was |that was )?no (?:thunder|lightning)|false alarm on the thunder|take (?:back the thunder|the thunder back))";
const SAID = new RegExp(`^(?:(?:okay|ok|no|hey),? )?(?:${WAS_NONE}|${NONE})(?:,| -|;)? (?:because |since )?(.+)$`, "i");
/** Words that take nothing back: not yet, or not for sure. */
const DOUBTS = /\b(?:yet|maybe|might|think|guess|if|probably|until|so far|near|around|anymore)\b/i;

/**
 * Thunder taken back, with what it was. `null` if the words are about something else, or no reason is given.
 *
 * @example parseNoThunder("that wasn't thunder, it was a truck") // { noThunder: "it was a truck" }
 */
export function parseNoThunder(said: string): Meaning | null {
  const because = SAID.exec(said.replaceAll("’", "'"))?.[1]?.trim();
  return because && because.split(" ").length > 1 && !DOUBTS.test(said) ? { noThunder: because } : null;
}
