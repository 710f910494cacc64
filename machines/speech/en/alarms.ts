import type { Meaning } from "../meanings.ts";
import { plain, trimmed } from "../plain.ts";
import { parseFlashToBang, secondsIn } from "./sky.ts";
import { warningSaid } from "./warning-words.ts";

/** More words than anybody uses to raise an alarm; a longer sentence is a story. */
const MAX_WORDS = 16;
/** Words that ask, or send somebody to look. */
const ASKS =
  /^(?:(?:so|and|hey|okay|ok) )?(?:check|ask|(?:look|listen|watch) (?:for|at|up)|is|isn't|are|was|were|did|do|does|has|have|had|can|could|will|would|should|any|anybody|anyone|who|who's|what|what's|when|where|where's|why|how)\b/;
/** A denial, a condition, or what is over. */
const NOT_SO =
  /\b(?:no|not|never|nobody|nobody's|no one|none|nothing|without|if|unless|in case|yesterday|last (?:night|week|year|time|month)|practice|drill|story|stories)\b|n't\b/;
/** What denies nothing: how badly somebody is hurt, and what is called out around them. */
const NO_DENIAL =
  /\b(?:isn't|ain't|is not|are not|aren't|not) (?:\w+ly )?(?:breathing|moving|responding|responsive|conscious|awake|talking|waking up|getting up)\b|\b(?:nobody|no one|don't|do not) (?:moves?|touch|touches)\b|\bno (?:pulse|heartbeat)\b/g;
/** Weather of another hour. A warning may well be "until six tonight". */
const NOT_NOW = /\b(?:until|till|tomorrow|tonight|later|forecast|forecasted)\b/;

const THUNDER = /\b(?:thunder|thunder's|thundering|thunderclap|thunderstorms?|lightning|lightning's)\b/;
/** Talk that only sounds like it, or weather that was announced and not seen. */
const NO_THUNDER =
  /\b(?:lightning (?:rods?|protection|fast|detector|meter|bug)|thunder (?:road|bolt)|(?:thunderstorm|storm|lightning|weather) watch|passed|stopped|gone|done|over with|it's over|quit)\b/;

const WARNING = [
  /\b(?:tornado|thunderstorm|storm|severe(?: weather)?|weather|wind|high winds?|flood|flash flood|lightning|hail|hurricane) warnings?\b/,
  /\b(?:there's|there is|we've got|we have|we got|just got|got|issued|put out|under) (?:a|an|another|the) (?:\w+ ){0,2}warning\b/,
  /^(?:(?:there's|there is|it's) a )?(?:tornado|funnel cloud)(?: coming| over there)?$/,
  /\bwarning(?:'s| is| has been|'s been)? (?:now )?(?:in force|in effect|out|up|issued)\b/,
];
const NO_WARNING =
  /\bwarnings?(?:'s)? (?:(?:is|are|has|have|was|were|been|just|now) )*(?:clear|cleared|over|off|lifted|expired|ended|cancell?ed|signs?|labels?|tape|lights?|triangles?|tracks?|shots?|flags?)\b|\ball clear\b/;

const FALLING = "(?:raining|pouring|sprinkling|drizzling)";
const RAINS = [
  `(?:(?:it's|it is) )?${FALLING}`,
  `(?:(?:it's|it is) )?(?:just )?(?:started|starting) (?:to rain|raining)`,
  "it (?:just )?(?:rained|started raining|started to rain)",
  "(?:the )?rain(?:'s| is| has)? (?:just )?(?:started|starting|coming(?: down)?|here)",
  "(?:heavy )?rain",
  "here comes the rain",
  "we(?:'ve)? got rain",
];
const WHEN = "(?:now|again|here|hard|on us|last night|overnight|this morning|out here|already)";
const RAIN = new RegExp(`^(?:(?:oh|hey|guys|now|and|well) )*(?:${RAINS.join("|")})(?: ${WHEN})*$`);

const EVERYONE = "(?:everybody|everyone|all hands|all of you|people|the people|the guests|the crew)";
const OUT_OF = "(?:(?: of| from under)(?: the)? (?:tent|top|cloth|canvas|here|there|it)| from under)?";
const LEAVE = [
  `${EVERYONE} out${OUT_OF}`,
  `${EVERYONE} get out(?: of the (?:tent|top))?`,
  `get out of the tent`,
  `(?:get|bring|move) ${EVERYONE} out${OUT_OF}`,
  // Stakes are got out too: "them" needs the tent.
  `(?:get|bring|move) (?:them|'em)(?: all)? out (?:of the tent|from under(?: the)? (?:tent|top|cloth|there|it))`,
  `(?:clear|evacuate|empty) (?:the )?(?:tent|top)`,
  `(?:${EVERYONE} )?clear out`,
  `evacuate(?: ${EVERYONE})?`,
];
const URGENT = "(?:okay|ok|hey|guys|right|alright|please|now|right now|go|go go|quick|quickly|let's|we need to|we have to|you need to)";
const EVERYBODY_OUT = new RegExp(`^(?:${URGENT} )*(?:(?:${LEAVE.join("|")})(?: ${URGENT})*(?: |$))+$`);

const NINE_ONE_ONE = "(?:911|9[ -]1[ -]1|nine one one)";
const HURT = [
  /\b(?:not|isn't|ain't|stopped) breathing\b/,
  /^(?!(?:it|that|this|which|what)\b)(?:[\p{L}'-]+ ){0,5}(?:[\p{L}-]+'s|is|are|got|been|gets|i'm|they're|we're) (?:\w+ )?(?:hurt|injured|bleeding|unconscious)\b/u,
  /\b(?:somebody|someone|he|she|one of the (?:guys|crew)) fell (?:off|from)\b|^(?:somebody|someone) fell$/,
  /\b(?:somebody|someone|he|she)(?:'s| is) (?:trapped|crushed|electrocuted)\b/,
  /\b(?:somebody|someone|he|she) (?:got|was|just got) (?:hit|struck|crushed|electrocuted|knocked (?:out|down))\b/,
  /\b(?:somebody|someone|he|she)(?:'s not| is not| isn't) (?:moving|responding|waking up|getting up)(?=$| at all\b| anymore\b| and\b)/,
  /\b(?:man|woman|person|somebody|someone) (?:is )?down$|\b(?:man|woman) down\b|\b(?:somebody|someone)(?:'s| is) down(?=$| and\b| no\b| not\b| under\b)/,
  /^(?:(?:get|call|need|we need|i need|we need to call|somebody call|someone call|get me) )?(?:a |the )?(?:medic|paramedics?|ambulance)(?: (?:now|please|over here|here|quick|medic))*$/,
  /\b(?:need|get|call|calling)(?: us| me| for)? (?:an?|the) (?:ambulance|medic|paramedics?)\b/,
  new RegExp(`\\b(?:call|calling|dial) ${NINE_ONE_ONE}\\b|^${NINE_ONE_ONE}$`),
];

/**
 * Whether everybody is told to leave the tent, and nothing else.
 *
 * @example isEverybodyOut("everybody get out now") // true
 */
export const isEverybodyOut = (heard: string): boolean =>
  EVERYBODY_OUT.test(
    plain(heard)
      .replace(/^oh no,? /, "")
      .replaceAll(/[,;:!.-]+/g, " ")
      .replaceAll(/\s+/g, " "),
  );

/**
 * What can only stop work, and rain, in ordinary words and from anybody. Generous with how it is said; a question, a denial and
 * talk of another day are none. `null` if it is none of these.
 *
 * @example parseAlarm("I heard thunder over there") // { thunder: true }
 */
export function parseAlarm(heard: string): Meaning | null {
  const words = plain(heard).replace(/^oh no,? /, "");
  if (heard.trim().endsWith("?") || words.split(" ").length > MAX_WORDS || ASKS.test(words)) return null;
  const counted = parseFlashToBang(heard);
  if (counted) return counted;
  // Nobody is asked to leave in the negative, and "no more people in, everybody out" is still an order.
  if (isEverybodyOut(heard)) return { everybodyOut: trimmed(heard) };
  if (RAIN.test(words)) return { rain: true };
  if (NOT_SO.test(words.replaceAll(NO_DENIAL, " "))) return null;
  if (HURT.some((pattern) => pattern.test(words))) return { hurt: trimmed(heard) };
  if (WARNING.some((pattern) => pattern.test(words))) return NO_WARNING.test(words) ? null : { warning: true, ...warningSaid(heard) };
  return THUNDER.test(words) && !NO_THUNDER.test(words) && !NOT_NOW.test(words) ? thunderSaid(heard) : null;
}

const thunderSaid = (heard: string): Meaning => {
  const seconds = secondsIn(heard);
  return seconds === null ? { thunder: true } : { thunder: true, seconds };
};

/**
 * Whether words raise an alarm that can only stop work: all that `parseAlarm` finds but rain.
 *
 * @example isAlarm("somebody's hurt") // true
 */
export function isAlarm(heard: string): boolean {
  const alarm = parseAlarm(heard);
  return alarm !== null && !("rain" in alarm);
}
