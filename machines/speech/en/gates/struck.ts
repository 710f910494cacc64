import type { GateWordsByKey } from "./words.ts";

const OUT = {
  things: "people | guys | hands | nobody | under | left | came",
  so: "[came | are | come] out [from under] | nobody [left] under",
};

export const struck: GateWordsByKey = {
  "strike.people": {
    things: "tent | people | everybody | inside | guests | caterers | there",
    so: "clear | empty | (everybody | everyone) is out | all out | nobody [is] [left] in [there] | nobody [is] inside",
    not: "still in | inside | still (one | two | some) | somebody",
  },
  "strike.power": {
    things: "power | cables | tables | stage | everything",
    so: "[power] [is] [all] off [and] (everything | all | cables) [are | is] out | all off and all out",
    not: "still in | not off | still on",
  },
  "strike.walls": { things: "walls | wall | every", so: "off", not: "to go | still on | still up" },
  "lower.center": OUT,
  "lower.quarters": OUT,
  "strike.interiorDown": { things: "poles | pole | inside", so: "all (down | flat) | down | flat", not: "up | still up | standing" },
  "strike.sides": { things: "poles | side | corners | included | lie", so: "down | flat | lie flat" },
  "back.stakes": { things: "stakes | stake | came | in all", so: "[came] back" },
  "strike.ground": {
    things: "ground | holes | hole | whistle | filled | clean",
    so: "clean | nothing left | holes (are | all) filled | clean as a whistle",
    not: "open | still holes | not clean",
  },
  "safe.headcount": { things: "heads | head | people | guys | hands | here | counting | me | of us" },
  "safe.looked": { things: "stakes | straps | poles | cloth | everything", so: "sound", not: "slack | moved | loose" },
};
