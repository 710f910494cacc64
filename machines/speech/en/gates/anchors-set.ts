import type { GateWordsByKey } from "./words.ts";

const COUNTED = "stakes | stake | plates | plate | good";

export const anchorsSet: GateWordsByKey = {
  marked: { things: "marks | mark | dots | edge | side" },
  "kit.spread": {
    things: "pins | kit | steel | stakes | plates | straps | around | spread",
    so: "[all] steel [pins] [all around] [and] nothing [is] short",
    not: "short | missing | wrong ones",
  },
  "soil.named": {
    things: "dirt | ground | soil | corner | corners | clay | sand | side | loam",
    so: "firm [loam] [all (the way | around)] [around] | [looks like] firm loam (everywhere | at every corner) | same [dirt] [all (the way | around)] [around] | firm everywhere | all the way [around]",
    not: "soft | sandy | sand | wet | fill | not at [corner]",
  },
  "stakes.size": { things: "thick | long | thinnest | shortest | stake" },
  "stakes.bent": {
    things: "stakes | ones | kit | in | left | still | there | tossed | them",
    so: "straight | all straight | all good | clean",
    not: "bent | bad | mushroomed",
  },
  "drive.edge": { things: "sticking | up | showing | worst | inches | out | stake | highest", not: "too high" },
  "lean.inward": {
    things: "stakes | stake | toward | the tent | in | do | them",
    so: "straight | all straight | all good | clean",
    not: "lean | leans | leaning",
  },
  "lean.outward": { things: "lean | leaning | leans | away | out | degrees | worst", so: "all plumb | plumb | straight" },
  "count.corners": { things: COUNTED },
  "count.edge": { things: COUNTED },
  "straps.choked": {
    things: "straps | strap | stakes | them | low | down",
    so: "choked [low] | low | every [one] (low | nice and low)",
    not: "high | too high | riding high | not all",
  },
  "pull.test": { things: "pounds | held | hold | pulled" },
  "pull.inside.test": { things: "pounds | held | hold | pulled" },
  "anchors.pulls": { things: "pounds | held | hold | pulled | softest | spot" },
  "anchors.pulledBefore": { things: "pounds | held | hold | pulled | softest | spot" },
};
