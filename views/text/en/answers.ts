import type { Answer, SiteFact } from "../../../machines/conversation/answer.ts";
import type { Countable } from "../../../machines/speech/question.ts";
import type { StationKind } from "../../../machines/tent/types.ts";
import type { Teller } from "../teller.ts";
import { calls } from "./calls.ts";
import { limitText, valueText } from "./limits.ts";
import { feetInches, kitName, pieceName, seamName } from "./names.ts";
import { phaseName, windText } from "./roles.ts";
import { when } from "./when.ts";

const KINDS: Readonly<Record<StationKind, string>> = { corner: "corners", seamEnd: "seam ends", side: "side stations" };
const COUNTED: Readonly<Record<Exclude<Countable, "rings">, string>> = {
  stakes: "stakes",
  plates: "plates",
  straps: "straps",
  quarterPoles: "quarter poles",
  centerPoles: "center poles",
  sidePoles: "poles round the edge",
  stations: "stations",
  pieces: "pieces",
  seams: "seams",
};
/** As much of somebody's words as is said back to them. */
const quoted = (words: string) => `"${words.slice(0, 40)}"`;

const SITE: Readonly<Record<SiteFact, string>> = {
  firstAid: "First aid",
  rallyPoint: "Rally point",
  stormShelter: "Storm shelter",
  address: "Address",
};

/** Answers to what a crew asks. Each is short enough to hear. */
export function answerText(answer: Answer, { name, zone }: Teller): string {
  switch (answer.is) {
    case "closed":
      return "The job is closed. Nothing left.";
    case "call":
      return calls[answer.step.wordsKey]?.say(answer.step.params) ?? "";
    case "why":
      return calls[answer.step.wordsKey]?.why ?? "";
    case "how":
      return calls[answer.step.wordsKey]?.well ?? "";
    case "left":
      return `${answer.here} ${answer.here === 1 ? "call" : "calls"} left to "${phaseName(answer.phase)}", ${answer.calls} total.`;
    case "howLong":
      return `${answer.calls} ${answer.calls === 1 ? "call" : "calls"} to go. No telling how long they take.`;
    case "next":
      return answer.step ? `Next comes: ${calls[answer.step.wordsKey]?.say(answer.step.params) ?? ""}` : "This is the last call.";
    case "piece":
      return `This is ${pieceName(answer.piece)}.`;
    case "pieces":
      return `Loops of ${pieceName(answer.lace)} go through the grommets of ${pieceName(answer.eyelet)}.`;
    case "laced":
      return answer.seams
        .map(({ id, lace, eyelet }) => `${seamName(id)}: loops of ${pieceName(lace)}, grommets of ${pieceName(eyelet)}.`)
        .join(" ");
    case "seam":
      return `This is ${seamName(answer.seam)}.`;
    case "noPiece":
      return "No panel in hand at this call.";
    case "ring":
      return `The ring is ${feetInches(answer.atFt)} from center. The plan doesn't count loops: lace until you reach it.`;
    case "noRing":
      return "No ring to lace to at this call.";
    case "count":
      return `${answer.n} ${answer.what === "rings" ? `rings on ${answer.edge}` : COUNTED[answer.what]}.`;
    case "stations":
      return `${answer.n} ${KINDS[answer.kind]}.`;
    case "each":
      return `${answer.n} ${KINDS[answer.kind]}, ${answer.each} ${answer.what} each, ${answer.n * answer.each} in all.`;
    case "hereCount":
      return `${answer.n} at this call.`;
    case "notHere":
      return `This call doesn't count ${quoted(answer.words)}.`;
    case "cannotCount":
      return `The plan doesn't count ${quoted(answer.words)}. Ask for stakes, plates, straps, poles, pieces, seams or rings.`;
    case "place":
      return `${answer.id}: ${feetInches(answer.xFt)} from the baseline, ${feetInches(answer.yFt)} from edge DA.`;
    case "edge":
      return `Edge ${answer.edge}: from corner ${answer.edge[0]} to corner ${answer.edge[1]}, ${feetInches(answer.lengthFt)}.`;
    case "notTold":
      return `Nobody told me where the ${kitName(answer.items[0])} are. They're on the truck list.`;
    case "strap":
      return `From pole top to stake it's ${feetInches(answer.spanFt)} on level ground. Add wraps and tail.`;
    case "site":
      return answer.says === null ? `${SITE[answer.what]}: not in the plan yet. Ask the lead.` : `${SITE[answer.what]}: ${answer.says}.`;
    case "wind":
      return answer.wind === null ? "No wind read yet." : `${windText(answer.wind, [])}, read ${answer.minAgo} min ago.`;
    case "limit":
      return answer.gate === null ? "Nothing to measure at this call." : `Good is: ${limitText(answer.gate)}.`;
    case "lastRead":
      return answer.answer === null ? "Nothing read yet." : `Last answer: ${valueText(answer.answer.value)}.`;
    case "whoSaid":
      return answer.answer === null
        ? "Nobody has answered yet."
        : `${name(answer.answer.by)}, at ${when.clock(zone, answer.answer.at)}: ${valueText(answer.answer.value)}.`;
    case "noSuchPlace":
      return `${quoted(answer.words)} isn't on the plan. Ask for a station, pole or panel by name, or say where next.`;
    case "rightAngle": {
      const { alongFt, acrossFt, diagonalFt } = answer.square;
      return `With a tape of ${feetInches(answer.tapeFt)}: ${alongFt} ft along the baseline, ${acrossFt} ft across, ${diagonalFt} ft between the two marks.`;
    }
    case "shortTape":
      return `A tape of ${feetInches(answer.tapeFt)} is too short for three, four, five. It takes at least five feet.`;
    case "noTape":
      return `${quoted(answer.words)} is not a tape length. Say it like: three four five with a fifty foot tape.`;
  }
}
