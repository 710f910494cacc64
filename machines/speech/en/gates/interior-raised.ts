import type { GateWordsByKey } from "./words.ts";

const IN = {
  things: "people | guys | hands | us | center | quarter | poles",
  so: "[going | went] (under | in) | going in under | in under | under",
};
const OUT = { things: "people | guys | hands | nobody | under | left", so: "[came | are | come] out [from under] | nobody [left] under" };
const FOOT = "foot | feet | plate | plates | dot | dots | pole | poles | up | on | its | their";

export const interiorRaised: GateWordsByKey = {
  "poles.pinned": { things: "poles | pole | joints | joint | every | pin | last", so: "pinned" },
  "under.hands": { things: "hands | people | guys | guy | fewest | each | pole | on | apiece | got" },
  "under.ties": IN,
  "under.in": IN,
  "under.out": OUT,
  "lift.quarters": { things: FOOT, so: "secured | held | secure | [all] up and secured", not: "off its plate | not secured | off | loose" },
  "lift.center": {
    things: FOOT,
    so: "secured | held | secure | [all] up and secured",
    not: "off the dot | off its plate | not secured | off | loose",
  },
  "tied.quarters": { things: "tied | worst | stake | up | sticking | showing", so: "tied" },
  "tied.center": { things: "tied | worst | stake | up | sticking | showing", so: "tied" },
  "groundCloth.out": { things: "cloths | cloth | ground | every", so: "out", not: "stuck | still in | not out" },
};
