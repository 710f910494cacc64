import type { GateWordsByKey } from "./words.ts";

const LOCKED = {
  things: "handles | handle | ratchets | ratchet | shut | closed",
  so: "locked | shut and locked | [every] last one",
  not: "open | unlocked",
};

export const perimeterRaised: GateWordsByKey = {
  "sides.laid": { things: "poles | pole | side | laid | out | stations | station | their | rest | truck", so: "laid [out]" },
  "sides.feet": {
    things: "feet | foot | mark | marks | kick | out",
    so: "secure | secured | held | on (their | its | the) (mark | marks) | feet are good | can not kick out",
    not: "loose | kick out | not at",
  },
  "pins.both": { things: "pins | pin | through | both | ends | all the way", so: "pinned [both ends] | through both" },
  "straps.turns": { things: "turns | turn | wraps | wrap | full | fewest | worst | ratchet | corner | least" },
  "straps.locked": LOCKED,
  "handles.locked": LOCKED,
  "sides.notTight": {
    things: "straps | strap | cranked | past | tight | hand",
    so: "hand tight | nobody cranked | none of them",
    not: "cranked | past it | past hand tight | one is | two are | a couple are",
  },
};
