import { lineName } from "../names.ts";
import type { Words } from "../words.ts";

export const interiorRaised: Words = {
  hats: {
    say: () => "Hats on, everybody who goes near.",
    ask: () => "Is every head covered?",
    why: "What falls here is steel.",
    ifNot: "No hat, outside the stake line.",
  },
  "poles.pinned": {
    say: (of) => `Put the inside poles together: ${of.poles}. Pin every joint.`,
    ask: () => "How many poles have all joints pinned?",
    why: "An unpinned joint folds under load.",
    ifNot: "Pin it. A bent pin or hole: that pole stays down.",
  },
  "plates.atMarks": {
    say: () => "Pole plates at their marks.",
    ask: () => "How many plates lie at their marks?",
    why: "A pole that stands off its mark walks.",
    ifNot: "Measure from the seam and lay it.",
  },
  "under.caller": {
    say: () => "Name one caller. Nobody else calls.",
    ask: () => "Does everybody know who calls?",
    why: "Two callers lift at two times.",
    ifNot: "Name one, aloud, and ask again.",
  },
  "under.hands": {
    say: () => "Hands for each pole; or with a machine, an operator and a spotter.",
    ask: () => "Are there enough hands?",
    why: "Short of hands, a pole comes back down on them.",
    ifNot: "Nobody goes under. Wait for more hands, or a machine with operator and spotter.",
  },
  "under.wayOut": {
    say: () => "Show the way out from under, clear of ropes.",
    ask: () => "Is the way out clear, and known?",
    why: "When it goes wrong there is no time to look.",
    ifNot: "Clear it before anybody goes under.",
  },
  "under.in": {
    say: (of) => `Going under for ${lineName(of)}: count them as they go.`,
    ask: () => "How many are going under?",
    why: "Who went in has to come out.",
    ifNot: "Only the crew that was counted this morning.",
  },
  "lean.line": {
    say: (of) => `On the call: lean in ${lineName(of)}. Tops into their rings, feet held.`,
    why: "Caller calls, all together. Nobody stands in line with a foot.",
  },
  "stand.all": {
    say: () => "On the call: stand them up, one line after the other, feet walked in to their plates.",
    why: "Finish each line before the next. Nobody stands in line with a foot.",
  },
  "feet.restrained": {
    say: (of) => `Restrain the feet of ${lineName(of)} before hands come off.`,
    ask: () => "Are the feet restrained?",
    why: "Hands off first, and the foot kicks out.",
    ifNot: "Keep hands on. Restrain it, or lower the pole.",
  },
  "under.out": {
    say: () => "Everybody out. Somebody else counts them.",
    ask: () => "How many came out?",
    why: "Nobody is left under a tent that is being moved.",
    ifNot: "Stop. Find who is missing before anything moves.",
  },
  "groundCloth.out": {
    say: () => "Ground cloths out: pulled from outside, on a call, as the cloth clears them.",
    ask: () => "Are all out, and nobody went under for them?",
    why: "It is not worth a trip under loose poles.",
    ifNot: "Leave it until the tent is tight.",
  },
};
