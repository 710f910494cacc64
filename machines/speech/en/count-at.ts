const UNDER_IN = /^(.+?) (?:going (?:in )?under|going in|went (?:in|under)|under|in)$/i;
const UNDER_OUT = /^(.+?) (?:are |came )?out(?:,? (?:and )?nobody (?:left )?under)?$/i;
/** Words that may follow the number at one question only. */
export const COUNTED_AT: Readonly<Record<string, RegExp>> = {
  "talk.headcount": /^(.+?) here$/i,
  "safe.headcount": /^(.+?) here$/i,
  "stakes.bent": /^(.+?) (?:bad(?: ones?)?|bent)$/i,
  "lean.inward": /^(.+?) leaning(?: in)?$/i,
  damage: /^(.+?) (?:bad(?: ones?)?|damaged)$/i,
  "cloth.strapped": /^(.+?) strapped$/i,
  "half.looked": /^(.+?) (?:missed(?: loops?)?|loops? missed|loops?)$/i,
  "sides.laid": /^(.+?) laid(?: out)?$/i,
  "pins.both": /^(.+?) pinned(?: both ends)?$/i,
  "straps.turns": /^(.+?) (?:full )?(?:turns?|wraps?)$/i,
  "poles.pinned": /^(.+?) pinned$/i,
  "under.hands": /^(.+?) (?:hands|people)$/i,
  afterBlow: /^(.+?) (?:moved|slack|loose)$/i,
  "under.ties": UNDER_IN,
  "under.in": UNDER_IN,
  "under.out": UNDER_OUT,
  "seams.gaps": /^(.+?) gaps?$/i,
  exits: /^(.+?) exits?$/i,
  "lower.center": UNDER_OUT,
  "lower.quarters": UNDER_OUT,
  "strike.interiorDown": /^(.+?) (?:still )?(?:up|standing)$/i,
  "strike.sides": /^(.+?) (?:down|(?:lie )?flat)$/i,
  "back.stakes": /^(.+?) (?:came )?back$/i,
};
/** Words for none at one question only. */
export const NONE_AT: Readonly<Record<string, RegExp>> = {
  "stakes.bent": /^(?:none|not one)(?: (?:are )?(?:bad|bent))?$|^no (?:bad|bent) (?:ones|stakes)$/,
  "lean.inward": /^(?:none|not one)(?: (?:are )?leaning(?: in)?)?$/,
  damage: /^(?:none|not one)(?: (?:are )?(?:bad|damaged))?$|^no damage$/,
  afterBlow: /^(?:none|not one|nothing)(?: (?:moved|slack|loose))?$/,
  "strike.interiorDown": /^(?:none|not one)(?: (?:still )?(?:up|standing))?$|^(?:they're |it's )?all (?:down|flat)$/,
  "half.looked": /^(?:none missed|no missed loops|no loops missed)$/,
  "seams.gaps": /^no gaps$/,
};
