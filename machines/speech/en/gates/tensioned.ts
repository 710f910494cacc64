import type { GateWordsByKey } from "./words.ts";

export const tensioned: GateWordsByKey = {
  "tension.plumb": {
    things: "corner | corners | pole | poles | seam | ends",
    so: "plumb | dead plumb | [all] standing plumb | straight up and down",
    not: "lean | leaning | leans | off",
  },
  plumb: { things: "off | out | plumb | inch | inches | worst", so: "plumb" },
  "feet.onLine": { things: "feet | foot | string", so: "on [the] (line | string) | right on the string", not: "off | out" },
  "seams.gaps": { things: "gaps | gap | small | ones | seam", so: "clean", not: "gaps | gap" },
  "round.again": {
    things: "second | round | strap | tie | straps | ties | inside",
    so: "second round [is] done | did them all [again] | done again | all of them again",
    not: "still got | not the inside ties",
  },
  "tension.again": { things: "again", so: "tight [again] | [every] strap and tie [is] tight [again]", not: "slack | loose" },
};
