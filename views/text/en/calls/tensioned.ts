import { inches } from "../names.ts";
import type { Words } from "../words.ts";

export const tensioned: Words = {
  "tension.corners": {
    say: () => "Corners first: take up opposite corners together until the poles are plumb.",
    why: "The corners set the shape. Sides only follow.",
  },
  "tension.seamEnds": {
    say: (of) => `Then the ${of.seamEnds} seam ends, from both sides at once.`,
    why: "A seam end pulled from one side walks the whole line.",
  },
  "tension.plumb": {
    say: () => "Sight along the corners and seam ends.",
    ask: () => "Do they all stand plumb?",
    why: "Out of plumb here, no side will come right.",
    ifNot: "Ease the far side before you pull the near one.",
  },
  "tension.sides": {
    say: () => "Now the rest: two crews, opposite sides, round the tent in step.",
    why: "One side ahead of the other pulls the tent over.",
  },
  "plumb.edge": {
    say: (of) => `${of.edge}: find the side pole that leans the most.`,
    ask: (of) =>
      `How many degrees? ${of.leanDeg}° is ${inches(Math.tan((Number(of.leanDeg) * Math.PI) / 180) * Number(of.sidePoleFt) * 12)} over this pole.`,
    why: "A leaning pole carries less and its foot wants to go.",
    ifNot: "Ease and pull again, or leave it with a reason.",
  },
  "feet.onLine": {
    say: () => "String line along the feet.",
    ask: () => "Are all feet on the line?",
    why: "A foot out of line twists its pole.",
    ifNot: "Slack off, move the foot, pull again.",
  },
  "interior.tied": {
    say: (of) => `Tie down the inside poles: a stake and a strap each, ${of.poles}.`,
    ask: () => "How many are tied down?",
    why: "Uplift takes the weight off a pole, and then it falls.",
    ifNot: "Tie it. No stake possible there: ask the engineer, and amend.",
  },
  "seams.gaps": {
    say: () => "Look up along every seam, under load.",
    ask: () => "How many gaps?",
    why: "A gap under load opens further in wind.",
    ifNot: "Ease it, lace it again, pull again.",
  },
  "handles.locked": {
    say: () => "Every ratchet handle closed and locked.",
    ask: () => "Are all locked?",
    why: "An open handle lets go when it shakes.",
    ifNot: "Lock it, or swap the ratchet.",
  },
  settle: { say: () => "Let it settle. Water, five minutes.", why: "Webbing gives and stakes take up." },
  "round.again": {
    say: () => "Once more round, every strap.",
    ask: () => "Is the second round done?",
    why: "What gave in the first hour is slack by night.",
    ifNot: "Do it before anybody inspects.",
  },
};
