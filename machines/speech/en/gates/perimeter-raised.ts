import type { GateWordsByKey } from "./words.ts";

const LOCKED = {
  things: "handles | handle | ratchets | ratchet | shut | closed",
  so: "locked | shut and locked | [every] last one",
  not: "open | unlocked",
};

export const perimeterRaised: GateWordsByKey = {
  "sides.laid": { things: "poles | pole | side | laid | out | stations | station | their | at | rest | truck | down", so: "laid [out]" },
  "sides.feet": {
    things: "feet | foot | mark | marks | kick | out",
    so: "secure | secured | held | on (their | its | the) (mark | marks) | feet are good | can not kick out | none of them can kick out",
    not: "loose | kick out | not at",
  },
  "pins.both": {
    things: "pins | pin | through | go | both | ends | all the way | ring | grommet",
    so: "pinned [both ends] | through both",
  },
  "straps.turns": { things: "turns | turn | wraps | wrap | full | fewest | worst | ratchet | corner" },
  "straps.locked": LOCKED,
  "handles.locked": LOCKED,
  "sides.notTight": {
    things: "straps | strap | cranked | past | tight | hand",
    so: "[just] hand tight | nobody [is] cranked [anything] | none of them | nothing past hand tight",
    not: "cranked | past it | past hand tight | one is | two are | a couple are",
  },
};
