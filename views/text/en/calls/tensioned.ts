import type { CallTexts } from "../../call-text.ts";
import { inches } from "../names.ts";

export const tensioned: CallTexts = {
  "tension.corners": {
    say: () => "Corners first: take up opposite corners together until the poles are plumb.",
    why: "The corners set the shape. Sides only follow.",
    wrong: "One gets cranked right home before the others are touched. The whole top creeps that way, poles and all.",
    well: "One at each of the opposite ratchets, click for click, called aloud. After every few look up at the pole top.",
  },
  "tension.seamEnds": {
    say: (of) => `Then the ${of.seamEnds} seam ends, from both sides at once.`,
    why: "A seam end pulled from one side walks the whole line.",
    wrong: "The near end is pulled first because the crew is there. The seam runs crooked, and the lacing takes the twist.",
    well: "One at each end of the seam, in sight of each other. A few clicks, look along it for straight, a few more.",
  },
  "tension.plumb": {
    say: () => "Sight along the corners and seam ends.",
    ask: () => "Do they all stand plumb?",
    why: "Out of plumb here, no side will come right.",
    wrong: "From close by every pole looks straight. From the road the whole side leans, and all the straps are done.",
    well: "Step well back, in line with the edge, one eye shut. Sight each pole against the corner, then go and sight the next edge.",
    ifNot: "Ease the far side before you pull the near one.",
  },
  "tension.sides": {
    say: () => "Now the rest: two crews, opposite sides, round the tent in step.",
    why: "One side ahead of the other pulls the tent over.",
    wrong: "The quick crew does not wait for the slow one. Feet on the far side are dragged in, and it is all to ease again.",
    well: "Same station on both sides. Call across, hear the answer, then click. A palm on the webbing tells you if they are alike.",
  },
  "plumb.edge": {
    say: (of) => `${of.edge}: find the side pole that leans the most.`,
    ask: (of) =>
      `How many degrees? ${of.leanDeg}° is ${inches(Math.tan((Number(of.leanDeg) * Math.PI) / 180) * Number(of.sidePoleFt) * 12)} over this pole.`,
    why: "A leaning pole carries less and its foot wants to go.",
    wrong: "The one at the door is measured because it is handy. The bad one is round the back, and stays bad.",
    well: "Sight along the edge for the odd one out. Level against a straight side of that pole, off any dent, and read it twice.",
    ifNot: "Ease and pull again, or leave it with a reason.",
  },
  "feet.onLine": {
    say: () => "String line along the feet.",
    ask: () => "Are all feet on the line?",
    why: "A foot out of line twists its pole.",
    wrong: "A foot with the weight on is hammered across to the string. It jumps the last bit, and the pole jumps with it.",
    well: "Pull the string hard from corner foot to corner foot. Get down, look along it, and mark the ones that stand off.",
    ifNot: "Slack off, move the foot, pull again.",
  },
  "interior.tied": {
    say: (of) => `Tie down the inside poles: a stake and a strap each, ${of.poles}.`,
    ask: () => "How many are tied down?",
    why: "Uplift takes the weight off a pole, and then it falls.",
    wrong: "The evening is still, so it is left for the morning. A gust lifts the roof, the pole hangs for a moment, and drops.",
    well: "Look at the buried line marks before the stake. Tie as the sheet shows, take the slack out, and pull on it once.",
    ifNot: "Tie it. No stake possible there: ask the engineer, and amend.",
  },
  "seams.gaps": {
    say: () => "Look up along every seam, under load.",
    ask: () => "How many gaps?",
    why: "A gap under load opens further in wind.",
    wrong: "Once it is tight nobody looks up. The first guest sees daylight through the seam, in the first rain.",
    well: "Walk slowly under each seam, center to edge and back. Where light shows or cloth puckers, stand and point at it.",
    ifNot: "Ease it, lace it again, pull again.",
  },
  "handles.locked": {
    say: () => "Every ratchet handle closed and locked.",
    ask: () => "Are all locked?",
    why: "An open handle lets go when it shakes.",
    wrong: "The handle lies flat, but the catch never dropped. The webbing shakes all night and works it open.",
    well: "A hand on every one: press down, feel for the catch, try to lift. Walk all the way round, back to the one you began at.",
    ifNot: "Lock it, or swap the ratchet.",
  },
  settle: {
    say: () => "Let it settle. Water, five minutes.",
    why: "Webbing gives and stakes take up.",
    wrong: "Straight from the last click to the inspection. It all looks tight, and by evening it hangs.",
    well: "Sit outside the stake line, facing the tent. Watch which edge drops or which pole moves, and go there first.",
  },
  "round.again": {
    say: () => "Once more round, every strap.",
    ask: () => "Is the second round done?",
    why: "What gave in the first hour is slack by night.",
    wrong: "It is walked with hands in pockets. The slack one at the back is not felt, and the cloth there starts to pump.",
    well: "Same order as before, opposite sides together. Palm on each strap, take up what gave, look at the pole top, lock it.",
    ifNot: "Do it before anybody inspects.",
  },
};
