import { feetInches, pieceName, seamName } from "../names.ts";
import type { Of, Words } from "../words.ts";

const seam = (of: Of) => {
  const name = seamName(of.seam);
  return `${name[0]!.toUpperCase()}${name.slice(1)}`;
};
const half = (of: Of) => (String(of.seam).startsWith("R-") ? seam(of) : `${seam(of)}, ${of.toward} half`);

export const sectionsJoined: Words = {
  "damage.cloth": {
    say: () => "Look over cloth, webbing and rings as they come off the truck.",
    ask: () => "How many damaged ones in the load path?",
    why: "A torn ring patch lets go when the wind asks.",
    ifNot: "Leave that piece on the truck. Swap it, or stand the job down.",
  },
  "damage.rope": {
    say: () => "Look over straps and lace rope: cuts, burns, loose stitching, no tag.",
    ask: () => "How many damaged ones are left in use?",
    why: "A cut strap holds until it is needed.",
    ifNot: "Throw them out of the kit and count again.",
  },
  groundCloth: {
    say: () => "Ground cloth down, everywhere the top will lie.",
    ask: () => "Is there ground cloth everywhere?",
    why: "Grit in the seams saws the cloth.",
    ifNot: "Fetch more, or lay half at a time.",
  },
  softSoles: {
    say: () => "Carry or cart the pieces. Soft soles only, where somebody must kneel on cloth.",
    ask: () => "Carried or carted, and soft soles?",
    why: "Dragged cloth has holes where nobody looks.",
    ifNot: "Change shoes, or leave it with a reason.",
  },
  "lay.piece": {
    say: (of) => `Lay ${pieceName(of.piece)}, ${of.order} of ${of.of}. Right way up.`,
    why: "Laid in the wrong place, lace meets lace and the seam will not close.",
  },
  "laid.order": {
    say: (of) => `Walk all ${of.pieces}. Names against the plan, outside up.`,
    ask: () => "All in plan order, right way up?",
    why: "After the first loop it costs an hour.",
    ifNot: "Move the wrong one now.",
  },
  "laid.looked": {
    say: () => "Second person: walk them too, before the first loop.",
    ask: () => "All in plan order, right way up?",
    why: "Two people see what one wants to see.",
    ifNot: "Move the wrong one now. Somebody other than the first looks.",
  },
  "rings.edge": {
    say: (of) => `Count the rings in the cloth on ${of.edge}, corners included.`,
    ask: (of) => `How many rings on ${of.edge}?`,
    why: "Cloth and plan must agree before poles go up.",
    ifNot: "Count again. Still not it: the cloth is right. Amend the plan with a second person.",
  },
  "lace.start": { say: (of) => `${seam(of)}: centre rings together.`, why: "From the middle out, the slack goes to the edge." },
  "lace.ring": {
    say: (of) =>
      `${half(of)}: lace out to the quarter ring, ${feetInches(Number(of.atFt))}. Flap in as you go, long loop two feet above it.`,
    why: "Loop through loop. One missed loop and the seam opens to there.",
  },
  "lace.valance": {
    say: (of) => `${half(of)}: on to the valance. Long loop above it.`,
    why: "The long loop is where the last ones are tied off.",
  },
  "lace.back": {
    say: (of) => `${half(of)}: last loops back from the edge. Knot at the long one, close the ring hook.`,
    why: "Knotted at the edge alone it creeps under load.",
  },
  "half.tied": {
    say: (of) => `${half(of)}: knotted, hook closed.`,
    ask: () => "Knotted, and the hook closed?",
    why: "An open hook comes off on the first flap.",
    ifNot: "Tie it now. Go back over it if a loop is missed.",
  },
  "half.looked": {
    say: (of) => `${half(of)}: second person looks it over, end to end.`,
    ask: () => "How many missed loops?",
    why: "The one who laced it sees what the hands meant.",
    ifNot: "Back to the missed loop, lace it again. Somebody other than the first looks.",
  },
  "cloth.strapped": {
    say: () => "Strap the corners and the seam ends before anybody leaves the cloth.",
    ask: () => "How many are strapped?",
    why: "Loose cloth is a sail. A gust takes it and who holds it.",
    ifNot: "Strap them now, or fold the cloth and weigh it down.",
  },
};
