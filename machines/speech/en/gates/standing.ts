import type { GateWordsByKey } from "./words.ts";

export const standing: GateWordsByKey = {
  watch: {
    things: "straps | strap | ties | water | cloth | stakes | stake",
    so: "(everything | all) [is] (tight | good)",
    not: "water on | moved | loose | slack",
  },
  "watch.end": {
    things: "it | customer | down | she | he",
    so: "agreed | [it] (comes | is coming) down",
    not: "another day | wants it up",
  },
};
