/** One pattern of several ways to say a thing, as a whole utterance. */
const any = (...ways: readonly string[]): RegExp => new RegExp(`^(?:${ways.join("|")})$`);

const CLEAR = "(?:it's |they're |we're )?(?:all )?clear";
const ON = "(?:they're |all )?on|all on";
const HELD = "(?:(?:the |all |every )?(?:feet|foot)(?:'s| are| is)? |(?:it's|they're) |all )?(?:secured?|held)";
const LOCKED = "(?:they're |all )?locked";
const WITHIN = "(?:it's |they're |all )?within(?: the sheet)?";

/**
 * Words that mean yes at one question only, by the key of its words. Where a question asks two things, words that answer only one
 * of them are none.
 */
export const YES_AT: Readonly<Record<string, RegExp>> = {
  // What kinds of work need.
  warning: any(CLEAR, "no warnings?(?: out| up| in force| in effect)?", "warnings? (?:are |is )?(?:all )?clear"),
  paint: any("(?:it's |they're |all )?(?:still )?there", "still showing"),
  earsAndEyes: any(ON, "(?:ears and eyes|eyes and ears)(?: are)?(?: on)?"),
  hats: any(ON, "(?:all |hard )?hats(?: are)?(?: all)? on"),
  caller: any("(?:everybody|everyone|they all) (?:knows?|does)", "they know"),
  wayOut: any(CLEAR, "clear and (?:everybody|everyone) knows(?: it)?"),
  // Talk and marks.
  "talk.briefed": any("(?:(?:everybody|everyone)(?:'s| is)|all) briefed", "(?:everybody|everyone) got it"),
  "white.stakeLine": any("(?:it's |all )?(?:in )?white", "the whole (?:line|thing)"),
  "locate.covers": any("(?:it )?covers (?:it|everything|it all|all of it)", "(?:it's )?all covered"),
  "marks.walked": any(CLEAR, "(?:all )?walked and clear", "all walked"),
  "straps.choked": any("(?:they're |all )?choked(?: low)?"),
  // Cloth and seams.
  groundCloth: any("(?:it's )?everywhere"),
  "half.tied": any("tied off", "knotted", "tied off(?: and)? (?:hooked|hook shut)", "knotted(?: and the)? hook closed"),
  "straps.threaded": any("(?:all )?threaded with slack"),
  // Poles.
  "sides.feet": any(HELD),
  "straps.locked": any(LOCKED),
  "lift.quarters": any(HELD),
  "lift.center": any(HELD),
  "groundCloth.out": any("(?:it's |they're |all )?out"),
  "tension.plumb": any("(?:they're |all |standing )?plumb"),
  "feet.onLine": any("(?:they're |all )?on (?:the )?line"),
  "handles.locked": any(LOCKED),
  "tension.again": any("(?:they're |all )?tight(?: again)?"),
  // Use and strike.
  walls: any(WITHIN),
  "exits.signs": any("(?:they're |all )?signed"),
  "hung.loads": any(WITHIN),
  "hung.nothing": any(CLEAR, "nothing(?:'s)? (?:hung|hanging)"),
  handover: any(
    "(?:he|she|they)(?:'s| has|'ve| have) (?:got it|got the tent|it)",
    "(?:he|she|they) (?:does|do|has it|have it)",
    "handed over",
  ),
  "watch.end": any("agreed", "it comes down"),
  "strike.people": any(CLEAR, "(?:it's |tent's |the tent is )?(?:all )?empty"),
  "strike.power": any("power(?:'s| is)? off(?:,? (?:and )?(?:everything|all|cables)(?:'s| is| are)? out)"),
  "strike.walls": any("(?:they're |(?:the )?walls are |all )?off"),
  "strike.ground": any("(?:it's |ground's |the ground is |all )?clean"),
  "safe.looked": any("(?:it's |they're |all |everything's )?(?:still )?sound"),
};
