import type { GateWordsByKey } from "./words.ts";

export const utilitiesMarked: GateWordsByKey = {
  "sheet.atHand": { things: "sheet | number | revision" },
  "forecast.over": { things: "customer | hour", so: "[all] (told and agreed | agreed) ", not: "not agreed | not told" },
  permit: { things: "permit | number" },
  "permit.unknown": { things: "permit | number" },
  certificate: { things: "certificate | number | fabric" },
  "certificate.unknown": { things: "certificate | number | fabric" },
  "talk.briefed": {
    things: "crew | talk | today | they",
    so: "(everybody | everyone | all [of us | of them]) (is | are | was | were | got) briefed | all briefed | briefed | (everybody | everyone) (got it | heard it) | [have] all (heard it | had the talk) | heard it",
    not: "not everybody | not everyone | missed it | came late | just got here | late",
  },
  "talk.headcount": { things: "heads | head | people | guys | hands | here | counting | me | today | crew | on | of us" },
  "white.cornerB": { things: "corner | A | B | mark | pin", so: "[got] both | both marked | marked | A and B", not: "missing | not B" },
  "white.stakeLine": {
    things: "dots | dot | footprint | line | paint | stake",
    so: "[got] all three | in white | white | painted | marked | [the] whole (line | thing)",
    not: "missing | not the dots",
  },
  "locate.ticket": { things: "ticket | number | locate" },
  "locate.covers": {
    things: "ticket | line | corner | side | back | front",
    so: "covers (it [all] | everything | all of it | the whole (thing | line)) | all covered | covered | all of it | [the] whole (line | thing) | sure does",
    not: "stops short | stops at | misses | does not | all but | not the (back | front) [side] | back side | short",
  },
  "locate.answers": { so: "marks are down | marks are there | see the marks", not: "not marked yet | not in yet | nothing in yet" },
  "marks.walked": {
    things: "grass | locate",
    so: "[all] clear [to see] | walked [and clear | them both | it all] | all walked | all there | see all of it",
    not: "gone | mowed | faded | over | washed off | covered | hidden",
  },
  /** None rules them out; "asked" does not. */
  "private.lines": {
    so: "none [here] | no lines [here] | has none | have none | located | ruled out",
    not: "[is] not located [yet]",
  },
  "overhead.line": { things: "wire | wires | line | ground | along | out | up | nearest | closest", not: "too close" },
  "overhead.wire": { things: "wire | wires | line | ground | along | out | up | nearest | closest", not: "too close" },
  "overhead.any": { things: "wire | wires | line | lines | ground | along | out | up | nearest | closest", not: "too close" },
  "nearest.mark": { things: "paint | line | dot | mark | off | from | nearest | flag", not: "too close | tight" },
  "nearest.private": {
    things: "sprinkler | line | lines | dot | private | septic | light | from | off | nearest",
    not: "too close | tight",
  },
  "nearest.entered": {
    things: "paint | line | lines | dot | mark | off | from | nearest | flag",
    not: "too close | tight",
  },
  "anchor.exposed": {
    things: "line | anchor | hole",
    so: "exposed [by hand] | open | in sight | dug [by hand]",
    not: "not exposed | covered | buried",
  },
  "clear.around": {
    things: "truck | car | generator | building | barn | house | engine | fence | field | open | around | nearest",
    not: "too close",
  },
};
