import type { Answer } from "../../../machines/conversation/answer-to.ts";
import type { Countable } from "../../../machines/speech/question.ts";
import type { StationKind } from "../../../machines/tent/types.ts";
import { calls } from "./calls.ts";
import { feetInches, pieceName, seamName } from "./names.ts";
import { phaseName } from "./roles.ts";

const KINDS: Readonly<Record<StationKind, string>> = { corner: "corners", seamEnd: "seam ends", side: "side stations" };
const COUNTED: Readonly<Record<Exclude<Countable, "rings">, string>> = {
  stakes: "stakes",
  plates: "plates",
  straps: "straps",
  quarterPoles: "quarter poles",
  centerPoles: "center poles",
  sidePoles: "poles round the edge",
  pieces: "pieces",
  seams: "seams",
};
/** As much of somebody's words as is said back to them. */
const quoted = (words: string) => `"${words.slice(0, 40)}"`;

/** Answers to what a crew asks. Each is short enough to hear. */
export function answerText(answer: Answer): string {
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
    case "next":
      return answer.step ? `Next comes: ${calls[answer.step.wordsKey]?.say(answer.step.params) ?? ""}` : "This is the last call.";
    case "piece":
      return `This is ${pieceName(answer.piece)}.`;
    case "pieces":
      return `Loops of ${pieceName(answer.lace)} go through the grommets of ${pieceName(answer.eyelet)}.`;
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
    case "cannotCount":
      return `The plan doesn't count ${quoted(answer.words)}. Ask for stakes, plates, straps, poles, pieces, seams or rings.`;
    case "place":
      return `${answer.id}: ${feetInches(answer.xFt)} from the baseline, ${feetInches(answer.yFt)} from edge DA.`;
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
