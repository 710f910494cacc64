import type { CallTexts, WordParams } from "../../call-text.ts";
import { feetInches, pieceName, seamName } from "../names.ts";

const seam = (of: WordParams) => {
  const name = seamName(of.seam);
  return `${name[0]!.toUpperCase()}${name.slice(1)}`;
};
const half = (of: WordParams) => (String(of.seam).startsWith("R-") ? seam(of) : `${seam(of)}, ${of.toward} half`);

export const sectionsJoined: CallTexts = {
  "damage.cloth": {
    say: () => "Look over cloth, webbing and rings as they come off the truck.",
    ask: () => "How many damaged ones in the load path?",
    why: "A torn ring patch lets go when the wind asks.",
    wrong: "It comes off the truck folded and is never opened out and looked at. The tear is found with the pole already in it.",
    well: "Two unfold, one on each edge. Hand along the webbing, thumb round every ring, a rag tied to whatever is bad.",
    ifNot: "Leave that piece on the truck. Swap it, or stand the job down.",
  },
  "damage.rope": {
    say: () => "Look over straps and lace rope: cuts, burns, loose stitching, no tag.",
    ask: () => "How many damaged ones are left in use?",
    why: "A cut strap holds until it is needed.",
    wrong: "A frayed strap is turned so that the cut faces down. It parts on the last pull of the ratchet.",
    well: "Run each through a gloved hand, both faces, and bend it at the stitching to look into the fold. Bad ones leave the field.",
    ifNot: "Throw them out of the kit and count again.",
  },
  groundCloth: {
    say: () => "Ground cloth down, everywhere the top will lie.",
    ask: () => "Is there ground cloth everywhere?",
    why: "Grit in the seams saws the cloth.",
    wrong: "The wet strip where the seam will lie is left bare. Mud gets laced in, and shows on white cloth overhead.",
    well: "Pick up stones and sticks first. Lay it flat, out past the edge of the top, and feel for lumps with a foot.",
    ifNot: "Fetch more, or lay half at a time.",
  },
  softSoles: {
    say: () => "Carry or cart the pieces. Soft soles only, where somebody must kneel on cloth.",
    ask: () => "Carried or carted, and soft soles?",
    why: "Dragged cloth has holes where nobody looks.",
    wrong: "Somebody runs across in boots with a stone in the tread. Every step is a small hole, and it rains through later.",
    well: "Change at the edge, boots in a row outside. Step flat, not on folds, and boots go back on before a pole is touched.",
    ifNot: "Change shoes, or leave it with a reason.",
  },
  "lay.piece": {
    say: (of) => `Lay ${pieceName(of.piece)}, ${of.order} of ${of.total}. Right way up.`,
    why: "Laid in the wrong place, lace meets lace and the seam will not close.",
    wrong: "It is rolled out fast from the wrong end. It lies inside out, and everybody has to drag it round again.",
    well: "Read the name on the bag and on the hem before you unroll. A hand on each corner, walk it out, set it to its marks.",
  },
  "laid.order": {
    say: (of) => `Walk all ${of.pieces}. Names against the plan, outside up.`,
    ask: () => "All in plan order, right way up?",
    why: "After the first loop it costs an hour.",
    wrong: "Seen from the corner all cloth looks alike. Two are swapped, and the last seam has no holes to lace through.",
    well: "Go seam by seam, plan in hand. Bend down, read each hem, and see loops on one edge and holes on the other.",
    ifNot: "Move the wrong one now.",
  },
  "laid.looked": {
    say: () => "Second person: walk them too, before the first loop.",
    ask: () => "All in plan order, right way up?",
    why: "Two people see what one wants to see.",
    wrong: "The second one nods from the truck. The mistake gets its second yes, and hours of lacing come out again.",
    well: "Start at the other end with the plan in your own hand. Turn up the hems and read them; ask the first one nothing.",
    ifNot: "Move the wrong one now. Somebody other than the first looks.",
  },
  "rings.edge": {
    say: (of) => `Count the rings in the cloth on ${of.edge}, corners included.`,
    ask: (of) => `How many rings on ${of.edge}?`,
    why: "Cloth and plan must agree before poles go up.",
    wrong: "Counted until it comes to what the plan says, a corner left out or taken twice. One station ends up with no pole.",
    well: "Touch each ring as you count, corner to corner. Say your number before you look at the plan.",
    ifNot: "Count again. Still not it: the cloth is right. Amend the plan with a second person.",
  },
  "lace.start": {
    say: (of) => `${seam(of)}: center rings together.`,
    why: "From the middle out, the slack goes to the edge.",
    wrong: "Somebody begins at the end where the rope lies. At the other end nothing lines up, and all of it comes undone.",
    well: "Kneel one on each side and bring the center rings together. Look both ways along the edges before the first loop.",
  },
  "lace.ring": {
    say: (of) =>
      `${half(of)}: lace out to the quarter ring, ${feetInches(Number(of.atFt))}. Flap in as you go, long loop two feet above it.`,
    why: "Loop through loop. One missed loop and the seam opens to there.",
    wrong: "Talk goes to and fro, and an eyelet is jumped. The flap hides it until the cloth is up and rain comes through.",
    well: "Kneel facing the seam, loop up through its eyelet, the next one through that. A short tug at each before you go on.",
  },
  "lace.valance": {
    say: (of) => `${half(of)}: on to the valance. Long loop above it.`,
    why: "The long loop is where the last ones are tied off.",
    wrong: "Tired knees, and the flap is left out for the last few. It bunches on the outside, and water runs in at the edge.",
    well: "Slow down for the last ones: flap flat, each loop snug, and the long one left on top where the next hand finds it.",
  },
  "lace.back": {
    say: (of) => `${half(of)}: last loops back from the edge. Knot at the long one, close the ring hook.`,
    why: "Knotted at the edge alone it creeps under load.",
    wrong: "The end is pulled through and left for later. The first hour of flapping works it out, loop after loop.",
    well: "Turn round at the edge and work back to the long loop, each one snug. Tie, close the hook, and pull it with a finger.",
  },
  "half.tied": {
    say: (of) => `${half(of)}: knotted, hook closed.`,
    ask: () => "Knotted, and the hook closed?",
    why: "An open hook comes off on the first flap.",
    wrong: "Hands are off to the next seam with the hook half shut. From standing height it looks closed.",
    well: "Stay on your knees. Pull the knot hard, feel round the hook with a finger until you know it is shut, then get up.",
    ifNot: "Tie it now. Go back over it if a loop is missed.",
  },
  "half.looked": {
    say: (of) => `${half(of)}: second person looks it over, end to end.`,
    ask: () => "How many missed loops?",
    why: "The one who laced it sees what the hands meant.",
    wrong: "It is looked at in passing. One loop lies beside the next instead of through it, and the eye slides over it.",
    well: "Go along on your knees, lift the flap and touch every loop, center ring to edge. What you did not see you go back to.",
    ifNot: "Back to the missed loop, lace it again. Somebody other than the first looks.",
  },
  "cloth.strapped": {
    say: () => "Strap the corners and the seam ends before anybody leaves the cloth.",
    ask: () => "How many are strapped?",
    why: "Loose cloth is a sail. A gust takes it and who holds it.",
    wrong: "The crew goes for water with the top lying loose. Wind gets under an edge and rolls it over the stakes.",
    well: "Windward edge first, kneeling low, strap to ring, snug by hand. An edge that lifts in a gust: let it go and get clear.",
    ifNot: "Strap them now, or fold the cloth and weigh it down.",
  },
};
