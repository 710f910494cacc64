import { feetInches, inches } from "../names.ts";
import type { Of, Words } from "../words.ts";

const stake = (of: Of) => `${of.kind}, ${inches(Number(of.diameterIn))} by ${inches(Number(of.lengthIn))}`;
const group = (of: Of) =>
  of.kind === "corner" ? "the four corners" : `the ${of.stations} ${of.kind === "seamEnd" ? "seam ends" : "sides"} on ${of.edge}`;

export const anchorsSet: Words = {
  baseline: {
    say: (of) => `Stretch the baseline A to B, ${feetInches(Number(of.lengthFt))}. Pin both ends.`,
    why: "All else is measured from it.",
  },
  squared: {
    say: (of) => `Measure four sides and both diagonals. Diagonals want ${feetInches(Number(of.diagonalFt))}.`,
    ask: () => "What are the six lengths?",
    why: "Equal diagonals alone prove nothing: a trapezoid has them too.",
    ifNot: "Hold A and B. Move C and D, and measure all six again.",
  },
  "marked.edge": {
    say: (of) => `Mark the stations on ${of.edge} off one tape, corners included.`,
    ask: (of) => `How many marks on ${of.edge}?`,
    why: "Off one tape, errors do not add up.",
    ifNot: "Measure the bays again. If the cloth says otherwise, amend the plan.",
  },
  "kit.spread": {
    say: (of) => `Spread the kit: ${of.stakes} stakes, ${of.plates} plates, a strap to each plate.`,
    why: "What is short shows now, not with a pole in the air.",
  },
  "soil.named": {
    say: (of) => `Dig a heel in, in several places. The sheet names ${of.soil}.`,
    ask: (of) => `Is the ground ${of.soil} all round?`,
    why: "The sheet's stakes hold in the sheet's soil, and nowhere else.",
    ifNot: "Amend: soil not known. Then stakes are pulled, or an engineer says.",
  },
  "soil.unknown": {
    say: () => "Soil is not known. Stakes get pulled before anything hangs on them.",
    why: "A stake that holds in good clay may hold next to nothing in loose sand.",
  },
  "stakes.kind": {
    say: (of) => `Check the stakes: ${stake(of)}.`,
    ask: () => "Are all of that kind?",
    why: "Stakes from two jobs get mixed on the truck.",
    ifNot: "Take out the wrong ones. Short of the right ones, wait.",
  },
  "stakes.diameter": {
    say: () => "Measure the thinnest stake.",
    ask: () => "What diameter is the thinnest?",
    why: "Thinner bends before it holds.",
    ifNot: "Take it out, or show the engineer's paper.",
  },
  "stakes.length": {
    say: () => "Measure the shortest stake.",
    ask: () => "How long is the shortest?",
    why: "Worn heads make short stakes.",
    ifNot: "Take it out, or show the engineer's paper.",
  },
  "stakes.bent": {
    say: () => "Roll the stakes. Throw out the bent and the split.",
    ask: () => "How many bent ones are left in the kit?",
    why: "A bent stake walks out of the hole.",
    ifNot: "Take them out and count again.",
  },
  "drive.ticket": {
    say: (of) => `Before the first stake: the ticket again, ${of.ticket}, in force today, marks still to be seen.`,
    ask: () => "Which ticket, and is it in force today?",
    why: "Marks were checked on another day, maybe. Tickets run out, and rain takes paint.",
    ifNot: "Renew it, have it marked again, and amend the ticket. No stake before that.",
  },
  "drive.protected": {
    say: () => "Ears and eyes on. Nobody holds a stake for the hammer.",
    ask: () => "Is everybody at a hammer protected?",
    why: "Chips fly. A missed swing breaks a hand.",
    ifNot: "No gear, no hammer. Swap people.",
  },
  "drive.edge": {
    say: (of) => `Drive ${of.edge}. Corners first, then seam ends, then sides.`,
    why: "Keep clear of the marks. If a stake meets something, stop and look.",
  },
  "showing.edge": {
    say: (of) => `${of.edge}: find the stake that shows the most.`,
    ask: () => "How much is showing?",
    why: "What shows holds nothing. A stake's hold is in its length in the ground.",
    ifNot: "Drive it down. Stops hard: do not force it. Pull it, drive a foot along, clear of the marks. Else the engineer's paper.",
  },
  "lean.stakes": {
    say: (of) => `${of.edge}: find the stake that leans the most, from plumb, away from the tent.`,
    ask: () => "How many degrees away? Towards the tent is minus.",
    why: "A stake that leans towards the tent pulls out.",
    ifNot: "Pull it and drive it again a foot along, clear of the marks. Else the engineer's paper.",
  },
  "count.stakes": {
    say: (of) => `Count the stakes at ${group(of)}.`,
    ask: () => "How many stakes?",
    why: "A missing stake is found by the wind.",
    ifNot: "Drive what is missing. If the plan is wrong, amend it.",
  },
  "count.plates": {
    say: (of) => `Count the plates at ${group(of)}.`,
    ask: () => "How many plates?",
    why: "One plate, one strap.",
    ifNot: "Set what is missing. If the plan is wrong, amend it.",
  },
  "straps.choked": {
    say: () => "Choke every strap low on its stakes, under the plate.",
    ask: () => "Are all straps choked low?",
    why: "Tied high, a strap bends the stake over.",
    ifNot: "Take it off and choke it again.",
  },
  "pull.test": {
    say: (of) => `${of.edge}: pull the stake that looks worst, in the line of its strap.`,
    ask: () => "What did it hold?",
    why: "In ground nobody knows, only a pull tells. Stand clear of the line.",
    ifNot: "Do not hang a strap on it. Use another anchor and an engineer's paper.",
  },
  "pull.noFigure": {
    say: (of) => `${of.edge}: soil not known, and the sheet gives no pull to reach.`,
    ask: () => "Whose paper says these anchors hold?",
    why: "A pull without a figure to reach proves nothing.",
    ifNot: "Ask a licensed engineer. Nothing opens this but the paper.",
  },
};
