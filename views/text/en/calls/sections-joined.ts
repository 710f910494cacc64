import type { CallTexts, WordParams } from "../../call-text.ts";
import { feetInches, pieceName, seamName, windwardSide } from "../names.ts";

const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
/** A ridge seam is one run; a cross seam has a half toward each side. */
const half = (of: WordParams) => `${capital(seamName(of.seam))}${String(of.seam).startsWith("R-") ? "" : `, ${of.toward} half`}`;
/** To the last of its quarter rings, from the center ring. */
function run({ ringsAtFt, rings }: WordParams): string {
  const farthest = feetInches(Number(String(ringsAtFt).split(" ").at(-1)));
  return Number(rings) > 1 ? `lace center to outer quarter ring, ${farthest}` : `lace to the quarter ring, ${farthest}`;
}

export const sectionsJoined: CallTexts = {
  groundCloth: {
    say: () => "Ground cloth where the top will lie. Leave the white dots open.",
    ask: () => "Ground cloth everywhere, dots open?",
    why: "Grit in the seams saws through cloth.",
    wrong: "The wet strip where the seam will lie is left bare. Mud gets laced in, and shows on white cloth overhead.",
    well: "Pick up rocks and sticks first. Lay it flat, past the edge of the top, a gap at every dot and mark: plates and stakes go there. Feel for lumps with a foot.",
    ifNot: "Get more, or lay half at a time.",
  },
  "lay.piece": {
    say: ({ piece, order, total }) =>
      `Lay ${pieceName(piece)}${Number(total) > 1 ? `, ${order} of ${total}` : ""}. Right side up. Strap outer corners.`,
    why: "In the wrong place lace meets lace, and no seam closes. Loose in wind, it's a sail.",
    wrong: "It's rolled out fast from the wrong end. It lies inside out, and everybody has to drag it around again.",
    well: "Read the name on bag and hem first. Carried or carted, never dragged, soft shoes only. Windward edge strapped first, kneeling low.",
  },
  damage: {
    say: () => "Look it all over: panels, rings, webs, ropes.",
    ask: () => "How many bad panels, rings, webs or ropes?",
    why: "A torn ring patch lets go when the wind asks.",
    wrong: "It comes off the truck folded and nobody opens it to look. The tear is found with the pole already in it.",
    well: "Two people, one on each edge, as it opens. A hand along the webs, a thumb around every ring, every rope bent to see into it. Rag on what's bad.",
    ifNot: "Swap it out and count again. No spare: the tent stays down.",
  },
  "cloth.strapped": {
    say: (of) => `Strap every corner and seam end, ${of.windward ? `windward first${windwardSide(of)}.` : "all before anyone walks off."}`,
    ask: () => "How many are strapped?",
    why: "Loose cloth is a sail. A gust takes it, and whoever holds on.",
    wrong: "The crew goes for water with the top lying loose. Wind gets under an edge and rolls it over the stakes.",
    well: "Windward edge first, kneeling low, strap to ring, snug by hand. If an edge lifts in a gust, let it go and get clear.",
    ifNot: "Strap them now, or fold the cloth and weight it down.",
  },
  "laid.order": {
    say: () => "Read every panel's name off the plan.",
    ask: () => "All in order, right side up?",
    why: "After the first loop it costs an hour.",
    wrong: "Seen from the corner all cloth looks alike. Two are swapped, and the last seam has no grommets to lace through.",
    well: "Seam by seam, plan in hand. Bend down, read each hem, and see loops on one edge and grommets on the other.",
    ifNot: "Move the wrong one now.",
  },
  "laid.looked": {
    say: () => "Second person: start at the other end, read every panel's name.",
    ask: () => "All in order, right side up?",
    why: "Two people see what one wants to see.",
    wrong: "The second one nods from the truck. The mistake gets its second yes, and hours of lacing come out again.",
    well: "Your own plan in your own hand. Turn up the hems and read them, and ask the first one nothing.",
    ifNot: "Move the wrong one now, and have somebody other than the first look again.",
  },
  rings: {
    say: () => "Count the rings in the cloth, edge by edge, corners included.",
    ask: () => "How many rings on each edge?",
    why: "Cloth and plan have to agree before poles go up.",
    wrong: "Counted until it comes out like the plan, with a corner left out or taken twice. One station ends up with no pole.",
    well: "Touch each ring as you count, corner to corner. Say your number before you look at the plan.",
    ifNot: "Count again. Still off? The cloth is right: change the plan with a second person.",
  },
  "lace.technique": {
    say: () => "Lacing: loop up through its grommet, next loop through that. Tug, flap in.",
    why: "Each loop holds the one before it. One that's missed lets the rest go.",
    wrong: "Everybody laces as they did on the last tent. One half goes the other way around, and nobody can tie it off.",
    well: "Show it once on the first three loops, all hands watching. Then two to a half, one on each side of the seam, kneeling.",
  },
  "lace.first": {
    say: (of) => {
      if (Number(of.rings) === 0) return `${half(of)}: center rings together, lace to the edge.`;
      return Number(of.rings) > 1 ? `${half(of)}: ${run(of)}.` : `${half(of)}: center rings together, ${run(of)}.`;
    },
    why: "From the center out, slack goes to the edge. Miss one loop, and the seam opens to there.",
    wrong: "Somebody starts at the end where the rope lies. At the other end nothing lines up, and all of it comes undone.",
    well: "One kneels on each side, center rings together, nobody on the cloth between. Snug at every loop, flap flat, and the long loop left on top past the ring.",
  },
  "lace.ring": {
    say: (of) => `${half(of)}: ${run(of)}.`,
    why: "Loop through loop. One missed loop, and the seam opens to there.",
    wrong: "Talk goes back and forth, and a grommet is skipped. The flap hides it until the cloth is up and rain comes through.",
    well: "Kneel facing the seam. Loop up through its grommet, the next one through that, a short tug at each before you go on. Flap in as you go.",
  },
  "lace.out": {
    say: (of) => `${half(of)}: lace from the center ring to the edge.`,
    why: "A seam holds from loop to loop, all the way out.",
    wrong: "Tired knees, and the flap is left out for the last few. It bunches up on the outside, and water runs in at the edge.",
    well: "Slow down for the last ones: flap flat, each loop snug, and the long loop left on top where the next hand finds it.",
  },
  "half.tied": {
    say: () => "To the edge, back to the long loop. Tie off, hook shut.",
    ask: (of) => `${half(of)}: tied off, hook shut?`,
    told: (of, value) => `${half(of)}: tied off, hook shut? ${value}`,
    why: "Tied at the edge alone it creeps under load. An open hook comes off with the first flap.",
    wrong: "The end is pulled through and left for later, the hook half shut. An hour of flapping works it out, loop after loop.",
    well: "Turn around at the edge and work back, each loop snug. Tie off and pull hard, feel around the hook until you know it's shut, then get up.",
    ifNot: "Tie it now. Go back over it if a loop got missed.",
  },
  "half.looked": {
    say: (of) => `${half(of)}: second person, feel every loop, center to edge.`,
    ask: () => "How many missed loops?",
    told: (of, missed) => `${half(of)}: ${missed} missed`,
    why: "Whoever laced it sees what the hands meant to do.",
    wrong: "It gets a look in passing. One loop lies beside the next instead of through it, and the eye slides right over.",
    well: "Go along on your knees, lift the flap and touch every loop. What you didn't see, you go back to.",
    ifNot: "Lace back from the missed loop, and have somebody other than the first look again.",
  },
};
