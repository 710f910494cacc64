import type { GateWordsByKey } from "./words.ts";

export const conditions: GateWordsByKey = {
  warning: {
    things: "warnings | warning | for | today",
    so: "clear | no warnings [out | up | in force | in effect] | no warning [out | up | in force | in effect] | warnings [are] [all] clear",
    not: "one out | warning out | there is one",
  },
  paint: {
    so: "still there | [paint and flags] [are] [still] both there | paint and flags [are] [still] [both] there | still showing | all there",
    not: "gone | washed [it] off | mowed",
  },
  earsAndEyes: { so: "on | got them on | (ears and eyes | eyes and ears) [are] on", not: "no goggles | no muffs | off" },
  hats: {
    things: "hats | hat | hard",
    so: "on | got (one | them) on | wearing (one | them | a hat)",
    not: "got none | no hat | in the truck | off",
  },
  caller: {
    things: "who | caller | calls",
    so: "(everybody | everyone | they [all]) (knows | know) | everybody does | they all do",
    not: "not everybody | does not know",
  },
  wayOut: {
    things: "rope | ropes",
    so: "clear | all clear | [the] [way out [is]] clear and (everybody | everyone | they [all]) (knows | know) [it]",
    not: "across | blocked | in the way | not clear",
  },
  survey: { things: "stakes | straps | ones | torn", so: "all good | all tight", not: "moved | slack | loose | torn" },
  afterBlow: { things: "stakes | straps | ones", so: "all good | all tight", not: "moved | slack | loose" },
};
