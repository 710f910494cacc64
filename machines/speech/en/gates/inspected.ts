import type { GateWordsByKey } from "./words.ts";

const WITHIN = "within [the] [sheet]";

export const inspected: GateWordsByKey = {
  walked: { things: "good | stations | station | edge" },
  trips: {
    things: "tails | stakes | straps | caps | flags | rolled | capped | flagged",
    so: "[tails] rolled [stakes] capped [and] [straps] flagged | all three",
    not: "out of caps | out of flags | not capped | not flagged",
  },
  walls: { things: "walls | wall | sheet", so: WITHIN, not: "over the sheet | too many" },
  exits: { things: "exits | exit | and | open | clear | doors | door" },
  "exits.width": { things: "wide | clear | exit | door | narrowest | on the nose" },
  "exits.signs": { things: "exit | exits | sign | signs | every", so: "signed", not: "missing | dark" },
  extinguishers: { things: "extinguisher | walk | farthest | table | tables", not: "too far" },
  fire: {
    things: "fire | marshal | official | heater | heaters | generator | all | with | everything",
    so: "okayed [everything | it all] | okay with (all of it | everything | it) | all okay",
    not: "does not like | not okay",
  },
  "hung.loads": { things: "lights | sound | all of it | sheet", so: WITHIN, not: "over | too heavy" },
  "hung.nothing": {
    things: "up | hanging | hung",
    so: "[all] clear | nothing [is] (hung | hanging) [up]",
    not: "hanging | speaker | light | up there",
  },
  "plan.evacuate": { things: "at | gust | gusts | of | agreed | everybody | out | we" },
  "plan.walls": { things: "at | gust | gusts | of | agreed | walls | wall | come | off | we" },
  "forecast.fresh": { things: "gust | gusts | of | peak | forecast | highest | it | says" },
  "forecast.clearBy": { things: "customer | hour", so: "[they] (agreed | agree) [to that]", not: "not agreed | do not agree | later" },
  "storm.plan": {
    things: "plan | customer",
    so: "[all] told | told [them] [all of it] | went through it",
    not: "not all of it | not told",
  },
  "storm.agreed": { things: "plan | customer", so: "[they] (agreed | agree) [to it]", not: "not agreed | do not agree" },
  "night.watch": {
    things: "phone | tonight | watch | he | she",
    so: "watching | [is] on watch | has the watch | got a phone",
    not: "nobody [yet | tonight]",
  },
  handover: {
    things: "customer | number | limits | phone | it | her | him | myself",
    so: "(he | she | they | customer) (has | have | is got | have got | got) (it | the tent | both | them both) | (he | she | they) (does | do) | handed (over | it [over]) [to (him | her | them)]",
    not: "left | on the phone | not here",
  },
};
