import type { CallTexts, WordParams } from "../../call-text.ts";
import { feetInches } from "../names.ts";
import { placesText } from "../worked-out.ts";

/** Tapes come in 100, 200 and 300 ft; a line is read in one pull. */
function tapeFor(before: string, lengthFt: number): string {
  if (lengthFt <= 100) return "";
  return `${before}${lengthFt <= 200 ? "two-hundred" : "three-hundred"}-foot tape`;
}
const longTape = ({ AC, BD }: WordParams): string => {
  const tape = tapeFor(" Take the ", Math.max(Number(AC), Number(BD)));
  return tape && `${tape}.`;
};

export const anchorsSet: CallTexts = {
  baseline: {
    say: (of) => `Stretch the baseline, A to B, ${feetInches(Number(of.lengthFt))}${tapeFor(", ", Number(of.lengthFt))}. Pin both ends.`,
    why: "Everything else is measured from it.",
    wrong: "The tape hangs over a hump or a root. The line comes out short, and every corner after it is off.",
    well: "Kneel at A, pull the tape hard, sight along it for a bow. On a slope hold it level, drop a plumb bob, and never lay it on the ground.",
  },
  "corner.first": {
    say: (of) => `From A: ${of.alongFt} ft toward B, ${of.acrossFt} ft toward D, ${of.diagonalFt} ft across.`,
    why: "Three, four, five makes a square corner. The bigger it is, the truer.",
    wrong: "Done small, with a piece of rope. A finger's width here is a stride at the far end, and every stake there moves twice.",
    well: "As big as the tape allows. Two tapes, one from A and one from the baseline mark, cross where both are tight; pin it there.",
  },
  squared: {
    say: (of) => `Tape all four sides and both diagonals.${longTape(of)}`,
    ask: () => "What do they read? At least five, any order.",
    why: "Matching diagonals alone prove nothing: a trapezoid has them too.",
    wrong: "The diagonals match and everybody stands up. One side is long, and the cloth hangs slack there as long as it stands.",
    well: "A diagonal longer than the tape takes a longer tape, never two readings. Same hands, same pull, tape level. Call it, hear it back, write it down.",
    ifNot: "Move what it says, then tape those lengths again.",
  },
  marked: {
    say: () => "Mark every station, edge by edge, each off one tape. Corners included.",
    ask: () => "How many marks on each edge?",
    why: "Off one tape, small errors don't add up.",
    wrong: "Each bay is taped from the last mark. A little is lost every time, and the end ring stands beside its stakes.",
    well: "Hook the tape at the corner and leave it there. Walk along, dab at each reading, and count the dabs on the way back.",
    ifNot: "Tape the bays again. If the cloth says otherwise, change the plan.",
  },
  "kit.spread": {
    say: (of) => `Spread the kit to the marks. Stakes: ${of.kind}.`,
    ask: (of) => `All ${of.kind}, and nothing short?`,
    why: "Stakes from two jobs get mixed on the truck. What's short shows now, not with a pole up.",
    wrong: "One bundle is off the small tent. Standing up it looks right, and in the ground it holds far less.",
    well: "One right stake is the pattern: hold each against it, head and point. Stakes, plate and strap together at each mark, clear of the path.",
    ifNot: "Take out the wrong ones, and wait for what's short.",
  },
  "soil.named": {
    say: (of) => `Check the dirt at every corner. The sheet says ${of.soil}.`,
    ask: (of) => `Is it ${of.soil} all the way around?`,
    why: "The sheet's stakes hold in the sheet's soil, and nowhere else.",
    wrong: "One heel in by the truck, and yes. The far corner is fill over rubble, and its stakes slide right out.",
    well: "Try each corner, each side, and wherever it looks wet or new. Break up a clod in your hand. Not sure: say don't know.",
    ifNot: "Change the plan to soil unknown. Then stakes are pull-tested, or an engineer decides.",
  },
  "soil.unknown": {
    say: () => "Soil unknown. Stakes get pull-tested before anything hangs on them.",
    why: "A stake that holds in good clay may hold next to nothing in loose sand.",
    wrong: "A stake drove hard, so it's taken to hold. Rocks made it hard, and under load it comes straight out.",
    well: "Watch each one go in and put a dab of white on the odd ones: too easy, jumping, turning. Those get looked at first for the pull.",
  },
  "stakes.size": {
    say: () => "Measure the thinnest stake, then the shortest.",
    ask: () => "How thick, and how long?",
    why: "Thin bends before it holds, and a stake with a worn head is a short one.",
    wrong: "A clean new one gets measured. The rusted one beside it is thin below the head, and folds there.",
    well: "Roll them, rub the worst rust clean, and measure across that. Then points in line on the tailgate: the short one shows. Tape it head to point.",
    ifNot: "Take it out of the kit, or get the engineer's paper.",
  },
  "stakes.bent": {
    say: () => "Roll the stakes. Toss any bent or mushroomed.",
    ask: () => "How many bad ones left in the kit?",
    why: "A bent stake walks out of its hole. A mushroomed head throws chips.",
    wrong: "A bent one is knocked straight and goes back in. It folds at the same place with the strap on it.",
    well: "Roll each along the tailgate. Whatever wobbles or has a split head goes back on the truck right away, not beside the pile.",
    ifNot: "Take them out and count again.",
  },
  "drive.edge": {
    say: (of) =>
      of.except === undefined
        ? `Drive ${of.edge}. Keep off locate paint. Find the stake sticking up most.`
        : `Drive ${of.edge}, not ${placesText(String(of.except).split(" "), 1)}. Off the paint. Find the tallest.`,
    ask: () => "How many inches sticking up?",
    why: "What sticks up holds nothing. If a stake meets something, stop and look.",
    wrong: "It stops, and somebody in a hurry keeps pounding. It wasn't a rock.",
    well: "Corners first, then seam ends, then sides. Stops, drops or feels odd: shut down and get the lead. Then sight the heads, and tape the tallest from firm ground.",
    ifNot: "Drive it down. Stops hard? Pull it, shift it off the paint, or get the engineer's paper.",
  },
  "lean.inward": {
    say: () => "Sight down every row of stakes.",
    ask: () => "How many lean toward the tent?",
    why: "A stake that leans toward the tent pulls right out.",
    wrong: "One was driven from the wrong side. It looks deep and tight, and the first good pull draws it.",
    well: "Stand at the corner, eye down low, and look along the heads. Walk to every odd one and check it with the gauge.",
    ifNot: "Pull it and drive it again alongside, off the paint. Or get the engineer's paper.",
  },
  "lean.outward": {
    say: () => "On every edge, find the stake leaning away the most.",
    ask: () => "Worst lean away, each edge, in degrees?",
    why: "Away from the tent is the right way, up to what the sheet allows. Over that it sits shallow.",
    wrong: "It's eyeballed from the truck. The bad one is behind the kit pile, way over, and it goes first.",
    well: "Gauge along the stake, square to the edge, read twice. Say the edge, then the degrees, one edge after another.",
    ifNot: "Pull it and drive it again alongside, off the paint. Or get the engineer's paper.",
  },
  "count.corners": {
    say: () => "All the corners together: count stakes, then plates.",
    ask: () => "How many stakes, how many plates?",
    why: "A missing stake gets found by the wind.",
    wrong: "Plates get counted and stakes taken for granted. One corner is a stake short, and the others take its share.",
    well: "Put a hand on each head as you say its number. Somebody walks it the other way around, and has to get the same.",
    ifNot: "Drive what's missing. If the plan is wrong, change it.",
  },
  "count.edge": {
    say: (of) => `${of.edge}, between the corners: count stakes, then plates.`,
    ask: () => "How many stakes, how many plates?",
    why: "One plate, one strap, and every stake in it.",
    wrong: "A plate is left lying in the grass, and the strap goes around a bare stake. That one bends all by itself.",
    well: "Hand on every plate, and look at its holes as you count. One on edge, or short a stake, doesn't count.",
    ifNot: "Set what's missing. If the plan is wrong, change it.",
  },
  "straps.choked": {
    say: () => "Choke every strap low on its stakes, as the sheet shows.",
    ask: () => "Every strap choked low?",
    why: "Tied high, a strap bends the stake over.",
    wrong: "The strap is tossed over the heads to save bending down. It rides up as it tightens, and levers the stakes out.",
    well: "Down on one knee, laid flat around the stakes where the sheet shows it. Snug it by hand, tug once, and see that it stays down.",
    ifNot: "Take it off and choke it again.",
  },
  "pull.test": {
    say: (of) => `${of.edge}: pull the worst-looking stake, in line with its strap.`,
    ask: () => "How many pounds did it hold?",
    why: "In ground nobody knows, only a pull tells. Stand clear of the line.",
    wrong: "A good one gets pulled because it's handy. The loose one at the far end never does, and the tent hangs on it.",
    well: "Everybody back, off to the side. Pull slowly to the sheet's figure, eyes on the ground at the stake: does it lift?",
    ifNot: "Hang nothing on it. Use another anchor, with the engineer's paper.",
  },
  "pull.inside.test": {
    say: () => "While the ground's bare: drive a test stake beside an inside dot. Pull it.",
    ask: () => "How many pounds did it hold?",
    why: "Inside stakes hold the poles down, and their ground can be different.",
    wrong: "The edges held, so the middle is taken to hold. It's an old trench under there, and the center pole's tie slides out.",
    well: "The softest-looking dot, off the locate paint. Same stake, same depth as the job; pull slowly to the sheet's figure, then pull it out and tamp the hole.",
    ifNot: "Tie no pole down there without the engineer's paper. Cloth over it already? Nobody drives under it.",
  },
  "pull.inside.noFigure": {
    say: () => "Inside: soil unknown, and the sheet gives no pull figure.",
    ask: () => "Whose paper says these anchors hold?",
    why: "What holds the poles down inside is a stake like any other.",
    wrong: "The paper is about the edges. The inside ties go into whatever is there, and nobody asked what that is.",
    well: "Ask the engineer about the inside stakes too: how many, how deep, what the ground looks like there. Wait for it in writing.",
    ifNot: "Get a licensed engineer's paper. Nothing else opens this.",
  },
  "pull.noFigure": {
    say: (of) => `${of.edge}: soil unknown, and the sheet gives no pull figure.`,
    ask: () => "Whose paper says these anchors hold?",
    why: "A pull with no figure to reach proves nothing.",
    wrong: "The crew hauls on one until it feels strong, and calls it good. Nobody knows what a real blow will ask of it.",
    well: "Stop here and call the engineer. Say what the ground looks like, which stakes, how deep, and wait for it in writing.",
    ifNot: "Get a licensed engineer's paper. Nothing else opens this.",
  },
};
