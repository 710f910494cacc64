import type { CallTexts, WordParams } from "../../call-text.ts";
import { feetInches, inches } from "../names.ts";

const stake = (of: WordParams) => `${of.kind}, ${inches(Number(of.diameterIn))} by ${inches(Number(of.lengthIn))}`;
const group = (of: WordParams) =>
  of.kind === "corner" ? "the four corners" : `the ${of.stations} ${of.kind === "seamEnd" ? "seam ends" : "sides"} on ${of.edge}`;
/** Both diagonals, or the one figure that both have. */
const diagonals = ({ diagonalFt, AC, BD }: WordParams) => {
  const [ac, bd] = [AC ?? diagonalFt, BD ?? diagonalFt].map((ft) => feetInches(Number(ft)));
  return ac === bd ? ac : `${ac} A to C and ${bd} B to D`;
};

export const anchorsSet: CallTexts = {
  baseline: {
    say: (of) => `Stretch the baseline A to B, ${feetInches(Number(of.lengthFt))}. Pin both ends.`,
    why: "All else is measured from it.",
    wrong: "The tape hangs over a hump or a root. The line comes out short, and every corner after it is off.",
    well: "Kneel at A, pull the tape flat and hard, sight along it for a bow. Look at the marks before B is pinned, and read again.",
  },
  "corner.first": {
    say: (of) =>
      `Square the corner at A: ${of.alongFt} ft along the baseline, ${of.acrossFt} ft toward D, ${of.diagonalFt} ft between the two marks.`,
    why: "Three, four, five is the only square that fits in a tape bag.",
    wrong: "Done small, with a bit of rope. A finger's width at the corner is a stride at the far end, and all four stakes move twice.",
    well: "As large as the tape allows. Two tapes, one from A and one from the baseline mark, cross where both are tight; pin there.",
  },
  squared: {
    say: (of) => `Measure four sides and both diagonals. Diagonals want ${diagonals(of)}.`,
    ask: () => "What are the lengths? Any order; five at the least.",
    why: "Equal diagonals alone prove nothing: a trapezoid has them too.",
    wrong: "The diagonals agree and everybody stands up. One side is long, and the cloth hangs slack there for as long as it stands.",
    well: "The same hand on each end, the same pull every time. Call the figure, hear it back, write it down, then move.",
    ifNot: "Do what it says, and measure those lengths again.",
  },
  "marked.edge": {
    say: (of) => `Mark the stations on ${of.edge} off one tape, corners included.`,
    ask: (of) => `How many marks on ${of.edge}?`,
    why: "Off one tape, errors do not add up.",
    wrong: "Each bay is taped from the last mark. A little goes missing every time, and the end ring stands beside its stakes.",
    well: "Hook the tape at the corner and leave it there. Walk along, dab at each figure, and count the dabs on the way back.",
    ifNot: "Measure the bays again. If the cloth says otherwise, amend the plan.",
  },
  "kit.spread": {
    say: (of) => `Spread the kit: ${of.stakes} stakes, ${of.plates} plates, a strap to each plate.`,
    why: "What is short shows now, not with a pole in the air.",
    wrong: "It all lies in a heap by the truck. At the far corner something is missing, and somebody makes do.",
    well: "Set it down, never throw it. Stakes, plate and strap together at each mark, clear of the path, so that a gap shows.",
  },
  "soil.named": {
    say: (of) => `Dig a heel in, in several places. The sheet names ${of.soil}.`,
    ask: (of) => `Is the ground ${of.soil} all round?`,
    why: "The sheet's stakes hold in the sheet's soil, and nowhere else.",
    wrong: "One heel in by the truck, and yes. The far corner is fill over rubble, and its stakes slide out like candles.",
    well: "Try each corner, each side, and where it looks wet or new. Break a lump in your hand. In doubt, say not known.",
    ifNot: "Amend: soil not known. Then stakes are pulled, or an engineer says.",
  },
  "soil.unknown": {
    say: () => "Soil is not known. Stakes get pulled before anything hangs on them.",
    why: "A stake that holds in good clay may hold next to nothing in loose sand.",
    wrong: "A stake drove hard, so it is taken to hold. Stones made it hard, and under load it comes straight out.",
    well: "Watch how each one goes in and chalk the odd ones: too easy, jumping, turning. Those are looked at first for the pull.",
  },
  "stakes.kind": {
    say: (of) => `Check the stakes: ${stake(of)}.`,
    ask: () => "Are all of that kind?",
    why: "Stakes from two jobs get mixed on the truck.",
    wrong: "One bundle is from the small tent. Standing up it looks right, and in the ground it holds far less.",
    well: "Lay one right stake down as the pattern. Hold each against it, head and point, before it goes to its mark.",
    ifNot: "Take out the wrong ones. Short of the right ones, wait.",
  },
  "stakes.diameter": {
    say: () => "Measure the thinnest stake.",
    ask: () => "What diameter is the thinnest?",
    why: "Thinner bends before it holds.",
    wrong: "A clean new one gets measured. The rusted one beside it is thin below the head, and folds there.",
    well: "Roll them and look below the heads for rust and wear. Rub the worst spot clean, and measure across that.",
    ifNot: "Take it out, or show the engineer's paper.",
  },
  "stakes.length": {
    say: () => "Measure the shortest stake.",
    ask: () => "How long is the shortest?",
    why: "Worn heads make short stakes.",
    wrong: "The figure is read off the box. The ones that were ground down over the years go in with the rest.",
    well: "Lay them side by side, points against a board. The short one shows at once: tape that one, head to point.",
    ifNot: "Take it out, or show the engineer's paper.",
  },
  "stakes.bent": {
    say: () => "Roll the stakes. Throw out the bent and the split.",
    ask: () => "How many bent ones are left in the kit?",
    why: "A bent stake walks out of the hole.",
    wrong: "A bent one is knocked straight and goes back in. It folds at the same place with the strap on it.",
    well: "Roll each along a board. What wobbles, or has a split head, goes back on the truck at once, not beside the heap.",
    ifNot: "Take them out and count again.",
  },
  "drive.ticket": {
    say: (of) => `Before the first stake: the ticket again, ${of.ticket}, in force today, marks still to be seen.`,
    ask: () => "Which ticket, and is it in force today?",
    why: "Marks were checked on another day, maybe. Tickets run out, and rain takes paint.",
    wrong: "It was good on the day of the marking, so nobody looks again. It ran out last night, and half the paint is gone.",
    well: "Paper in hand, walk to where the first stake goes, and look down. No paint, no flag, any doubt: hammers stay on the truck.",
    ifNot: "Renew it, have it marked again, and amend the ticket. No stake before that.",
  },
  "drive.protected": {
    say: () => "Ears and eyes on. Nobody holds a stake for the hammer.",
    ask: () => "Is everybody at a hammer protected?",
    why: "Chips fly. A missed swing breaks a hand.",
    wrong: "A friend steadies the stake with a boot. The hammer glances off the head, and it is the shin.",
    well: "Feet apart, nobody in front of the swing or behind it. Try that the head sits tight. Hammers are handed over, never thrown.",
    ifNot: "No gear, no hammer. Swap people.",
  },
  "drive.edge": {
    say: (of) => `Drive ${of.edge}. Corners first, then seam ends, then sides.`,
    why: "Keep clear of the marks. If a stake meets something, stop and look.",
    wrong: "It stops, and somebody in a hurry beats on. It was not a stone.",
    well: "Eyes on the stake's head, the marks in sight, square blows. If it stops, drops or feels odd: hammer down, fetch the lead.",
  },
  "showing.edge": {
    say: (of) => `${of.edge}: find the stake that shows the most.`,
    ask: () => "How much is showing?",
    why: "What shows holds nothing. A stake's hold is in its length in the ground.",
    wrong: "The one that sits on a stone is called near enough. It has the least in the ground, and comes out first.",
    well: "Get low and sight along the heads. At the tallest, press the grass flat and tape from firm ground to the top.",
    ifNot: "Drive it down. Stops hard: do not force it. Pull it, drive a foot along, clear of the marks. Else the engineer's paper.",
  },
  "lean.stakes": {
    say: (of) => `${of.edge}: find the stake that leans the most, from plumb, away from the tent.`,
    ask: () => "How many degrees away? Toward the tent is minus.",
    why: "A stake that leans toward the tent pulls out.",
    wrong: "One was driven from the wrong side. It looks deep and tight, and the first pull draws it like a nail.",
    well: "Sight along the row from the corner. At the odd one lay the gauge along the stake, square to the edge, and read it twice.",
    ifNot: "Pull it and drive it again a foot along, clear of the marks. Else the engineer's paper.",
  },
  "count.stakes": {
    say: (of) => `Count the stakes at ${group(of)}.`,
    ask: () => "How many stakes?",
    why: "A missing stake is found by the wind.",
    wrong: "Plates get counted and stakes taken as read. One station is a stake short, and those beside it take its share.",
    well: "Put a hand on each head as you say its number. Somebody walks it from the other end, and must come to the same.",
    ifNot: "Drive what is missing. If the plan is wrong, amend it.",
  },
  "count.plates": {
    say: (of) => `Count the plates at ${group(of)}.`,
    ask: () => "How many plates?",
    why: "One plate, one strap.",
    wrong: "A plate is left lying in the grass, and the strap goes round a bare stake. That one bends by itself.",
    well: "Hand on every plate, and look at its holes as you count. One that sits on its edge, or lacks a stake, is not counted.",
    ifNot: "Set what is missing. If the plan is wrong, amend it.",
  },
  "straps.choked": {
    say: () => "Choke every strap low on its stakes, under the plate.",
    ask: () => "Are all straps choked low?",
    why: "Tied high, a strap bends the stake over.",
    wrong: "The strap is thrown over the heads to save bending down. As it tightens it rides up, and levers the stakes out.",
    well: "On one knee, lay it flat round the stakes below the plate. Snug it by hand, tug once, and look that it stays down there.",
    ifNot: "Take it off and choke it again.",
  },
  "pull.test": {
    say: (of) => `${of.edge}: pull the stake that looks worst, in the line of its strap.`,
    ask: () => "What did it hold?",
    why: "In ground nobody knows, only a pull tells. Stand clear of the line.",
    wrong: "A good one gets pulled because it is near. The loose one at the far end is never asked, and the tent hangs on it.",
    well: "Everybody well back and to the side. Pull slowly to the sheet's figure, eyes on the ground at the stake: does it lift?",
    ifNot: "Do not hang a strap on it. Use another anchor and an engineer's paper.",
  },
  "pull.noFigure": {
    say: (of) => `${of.edge}: soil not known, and the sheet gives no pull to reach.`,
    ask: () => "Whose paper says these anchors hold?",
    why: "A pull without a figure to reach proves nothing.",
    wrong: "The crew hauls on one until it feels strong, and calls it good. Nobody knows what a blow will ask of it.",
    well: "Stop here and ring the engineer. Say what the ground looks like, which stakes, how deep, and wait for the answer in writing.",
    ifNot: "Ask a licensed engineer. Nothing opens this but the paper.",
  },
};
