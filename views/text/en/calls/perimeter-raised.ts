import type { Words } from "../words.ts";

export const perimeterRaised: Words = {
  gust: {
    say: (of) => `Wind, out in the open, now. No raising at gusts of ${of.raiseGustMph} mph or more.`,
    ask: () => "What is the wind, and the gust?",
    why: "Half up is the worst shape a tent can be in when it blows.",
    ifNot: "Wait and read again. Make safe what is up.",
  },
  warning: {
    say: () => "Check for a weather warning here, for as long as the raise takes.",
    ask: () => "Is a warning in force?",
    why: "A raise cannot be stopped quickly. Start none that you cannot finish.",
    ifNot: "Wait until it is lifted. Strap down what lies out.",
  },
  "straps.threaded": {
    say: () => "Thread every strap tail so that it grips: up through the slot, no twist.",
    ask: () => "Are all threaded to grip?",
    why: "Threaded wrong, it slips at the first pull.",
    ifNot: "Take it out and thread it again.",
  },
  "straps.turns": {
    say: (of) => `At least ${of.turns} turns on the spindle before load.`,
    ask: () => "Fewest turns on any spindle?",
    why: "With less the webbing slips through.",
    ifNot: "Slack off, shorten the tail, wind again.",
  },
  "straps.locked": {
    say: () => "Close and lock every ratchet handle.",
    ask: () => "Are all handles locked?",
    why: "A handle that springs open breaks a face.",
    ifNot: "Lock it, or swap the ratchet.",
  },
  "sides.laid": {
    say: (of) => `A pole at every station: ${of.stations}.`,
    ask: () => "How many poles lie at their stations?",
    why: "Nobody runs for a pole while another is in the air.",
    ifNot: "Lay what is missing. Wrong count in the plan: amend it.",
  },
  "raise.firstCorner": {
    say: (of) => `First corner, ${of.corner}: pin through ring and eyelet, stand it, ropes hold the foot.`,
    why: "The first corner holds all the others. One lifts, one watches the foot.",
  },
  "raise.corner": {
    say: (of) => `Corner ${of.corner}: pin through both, stand it, ropes hold the foot.`,
    why: "Corners first, or the cloth drags the sides over.",
  },
  "raise.edge": {
    say: (of) => `Sides on ${of.edge}, ${of.first} to ${of.last}: pin, stand, ropes on the foot.`,
    why: "Work round the tent, so that no side pulls alone.",
  },
  "pins.both": {
    say: () => "Walk round. Look at every pin: through the ring and through the eyelet.",
    ask: () => "How many pins go through both?",
    why: "Through one only, the cloth tears off the pole.",
    ifNot: "Lower that pole and pin it again.",
  },
  "sides.feet": {
    say: () => "All feet held by ropes, none free to kick out.",
    ask: () => "Are all feet held?",
    why: "A foot that kicks out takes the next one with it.",
    ifNot: "Rope it now. Nobody under until it is.",
  },
  "sides.notTight": {
    say: () => "Straps hand-tight, no more. The cloth must give for the poles inside.",
    ask: () => "Are all straps hand-tight and no more?",
    why: "Too tight now, and the centre poles will not stand.",
    ifNot: "Ease both sides alike, and look again.",
  },
};
