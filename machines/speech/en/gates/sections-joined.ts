import type { GateWordsByKey } from "./words.ts";

const ORDER = {
  things: "panels | panel | names | mid | end | piece | pieces | in order | right side up",
  so: "in order [and] right side up | all right side up and in order",
};

export const sectionsJoined: GateWordsByKey = {
  groundCloth: {
    so: "everywhere | [ground] cloth (is down | down | everywhere) [and] [the] dots [are] open",
    not: "covered | covered up",
  },
  damage: {
    things: "panel | panels | ring | rings | web | webs | rope | ropes | at all | ones",
    so: "clean | all good",
    not: "bad | damaged | torn | damage | ripped",
  },
  "cloth.strapped": { things: "strapped | corners | seam | ends | straps", so: "strapped [down]" },
  "laid.order": { ...ORDER, not: "upside down | swapped | not in order | wrong way | backwards" },
  "laid.looked": { ...ORDER, not: "upside down | swapped | not in order | wrong way | backwards" },
  rings: { things: "rings | ring | edge | side" },
  "half.tied": {
    things: "hook | knot | loop | long | tied | shut | off",
    so: "tied off | knotted | tied [off] [and] [the] [hook] [is | hooked] (shut | closed) | knotted and [the] hook (closed | shut)",
    not: "hook [is] [still] open | not tied | untied",
  },
  "half.looked": {
    things: "loops | loop | ones | ring | up | by | felt",
    so: "all in | in",
    not: "missed | miss | missed loops | loops missed",
  },
  "straps.threaded": {
    things: "straps | strap | tail | tails | threaded | flat | slack | long | plenty | enough",
    so: "threaded [flat] with slack | threaded [and] [with] (plenty of tail | tails long [enough])",
    not: "twisted | short | too short | to go",
  },
};
