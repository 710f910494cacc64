import { inches } from "../names.ts";
import type { Words } from "../words.ts";

export const inspected: Words = {
  "walked.edge": {
    say: (of) => `${of.edge}: somebody who did not tension it walks every station, corners included.`,
    ask: () => "How many stations were walked and are good?",
    why: "Who pulled the strap does not see it.",
    ifNot: "Put right what is wrong, and walk it again. Somebody other than the one who tensioned.",
  },
  "tails.rolled": {
    say: () => "Roll the strap tails and tie them away.",
    ask: () => "Are all tails rolled?",
    why: "A loose tail trips a child or opens a ratchet.",
    ifNot: "Roll them before the public comes.",
  },
  "stakes.capped": {
    say: () => "Cap stakes and flag straps where people walk.",
    ask: () => "Are all capped and flagged?",
    why: "Guests look at the band, not at their feet.",
    ifNot: "Cap them, or fence the line off.",
  },
  exits: {
    say: (of) => `Exits for ${of.occupants}: at least ${of.exits}, open, spread round the tent.`,
    ask: () => "How many exits are there?",
    why: "The fire code's table. The local fire official has the last word.",
    ifNot: "Open another wall, or show the fire official's paper.",
  },
  "exits.ask": {
    say: () => "The table gives no exits for this number of people. Ask the fire official.",
    ask: () => "Whose paper says how many exits?",
    why: "Too many people, or nobody knows how many.",
    ifNot: "Ask the fire official, or amend the number of people.",
  },
  "exits.width": {
    say: (of) => `Measure the narrowest exit, clear width. Wanted: ${inches(Number(of.widthIn))}.`,
    ask: () => "How wide is the narrowest?",
    why: "A crowd goes as fast as its narrowest door.",
    ifNot: "Open it wider, or show the fire official's paper.",
  },
  "exits.signs": {
    say: () => "Exit signs over every exit, lit if it gets dark.",
    ask: () => "Are all exits signed?",
    why: "In smoke people go the way they came.",
    ifNot: "Hang them before the doors open, or show the fire official's paper.",
  },
  extinguishers: {
    say: (of) => `Walk from the farthest spot to an extinguisher. At most ${of.walkFt} ft.`,
    ask: () => "How far is the longest walk?",
    why: "A small fire is out in a minute, or it is not small.",
    ifNot: "Hang another one, or show the fire official's paper.",
  },
  permit: {
    say: () => "Permit: have it here.",
    ask: () => "What is its number?",
    why: "The fire official asks for it first.",
    ifNot: "Not open to the public without it. Or the fire official's paper.",
  },
  "permit.unknown": {
    say: () => "Nobody has said whether a permit is wanted. Ask the fire official.",
    ask: () => "What is its number?",
    why: "Not known is treated as wanted.",
    ifNot: "Get it, or the fire official's paper that none is wanted, or amend.",
  },
  certificate: {
    say: () => "Fabric certificate: have it here, for this top.",
    ask: () => "What is its number?",
    why: "It says the cloth does not carry fire.",
    ifNot: "No public under it without one. Or the fire official's paper.",
  },
  "certificate.unknown": {
    say: () => "Nobody has said whether a fabric certificate is wanted. Ask the fire official.",
    ask: () => "What is its number?",
    why: "Not known is treated as wanted.",
    ifNot: "Get it, or the fire official's paper that none is wanted, or amend.",
  },
  walls: {
    say: () => "Walls: hung as the sheet allows, and only as many.",
    ask: () => "Are the walls within the sheet?",
    why: "Walls catch wind, and the anchors carry it.",
    ifNot: "Take them down, or show the engineer's paper.",
  },
  "hung.loads": {
    say: () => "Lights, sound, decoration: weigh what hangs, against the sheet.",
    ask: () => "Is all that hangs within the sheet?",
    why: "Poles are sized for cloth and wind.",
    ifNot: "Take it down, or show the engineer's paper.",
  },
  "hung.nothing": {
    say: () => "Look up: nothing hangs from cloth or poles that is not on the sheet.",
    ask: () => "Is all clear, but for what the sheet allows?",
    why: "Decorators come when the crew has gone.",
    ifNot: "Take it down, or show the engineer's paper.",
  },
  "weather.plan": {
    say: () => "Go through the weather plan with the customer's person: who watches, at what wind everybody goes out, where to.",
    ask: () => "Is it agreed, by name?",
    why: "A tent is no shelter from lightning or a blow.",
    ifNot: "No handover without somebody who watches.",
  },
  handover: {
    say: () => "Hand over: limits, phone number, nobody touches a strap.",
    ask: () => "Does the customer's person have the tent?",
    why: "From now on somebody else sees it first.",
    ifNot: "Stay until somebody has it.",
  },
};
