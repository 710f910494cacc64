import { currentStep, type Job } from "../machines/install/job.ts";
import type { Step } from "../machines/install/step.ts";
import { rightAngle, USUAL_TAPE_FT } from "../machines/site/right-angle.ts";
import { inUnit, readNumber } from "../machines/speech/en/numbers.ts";
import type { Question } from "../machines/speech/meanings.ts";
import type { StationKind, TentPlan } from "../machines/tent/types.ts";
import type { Words } from "./text/words.ts";

/** What the guide answers to a question, from plan and script alone. Nothing moves and nothing is recorded. */
export function answerTo(question: Question, about: string, job: Job, words: Words): string {
  const step = currentStep(job);
  if (!step) return words.answers.closed;
  const call = words.calls[step.wordsKey];
  switch (question) {
    case "again":
      return call?.say(step.params) ?? "";
    case "why":
      return call?.why ?? "";
    case "whatsLeft":
      return whatsLeft(job, step, words);
    case "which":
      return whichPiece(step, words);
    case "howMany":
      if (/\bto the (?:next )?ring\b/.test(about.toLowerCase())) return toTheRing(step, words);
      return howMany(about.toLowerCase(), job.frozen.plan, words);
    case "rightAngle":
      return squareCorner(about, job.frozen.plan, words);
    case "where":
      return /\bnext\b/.test(about.toLowerCase()) ? whereNext(job, step, words) : whereIs(about, job.frozen.plan, words);
  }
}

/** The cloth in hand at a call: a piece that is laid, or the two that are laced. */
function whichPiece({ params }: Step, { answers, pieceName, seamName }: Words): string {
  if (params.piece !== undefined) return answers.thisPiece(pieceName(params.piece));
  if (params.lace !== undefined) return answers.thesePieces(pieceName(params.lace), pieceName(params.eyelet));
  return params.seam === undefined ? answers.noPiece : answers.thisSeam(seamName(params.seam));
}

const toTheRing = ({ params }: Step, { answers, feetInches }: Words): string =>
  params.atFt === undefined ? answers.noRing : answers.ringAt(feetInches(Number(params.atFt)));

function whatsLeft({ frozen }: Job, step: Step, { answers, phaseName }: Words): string {
  const { steps } = frozen.script;
  const at = Math.max(
    0,
    steps.findIndex((s) => s.id === step.id),
  );
  const here = steps.slice(at).filter((s) => s.phase === step.phase).length;
  return answers.left(steps.length - at, phaseName(step.phase), here);
}

function whereNext({ frozen }: Job, step: Step, { answers, calls }: Words): string {
  const { steps } = frozen.script;
  const next = steps[steps.findIndex((s) => s.id === step.id) + 1];
  return next ? answers.whereNext(calls[next.wordsKey]?.say(next.params) ?? "") : answers.lastCall;
}

const KINDS: readonly (readonly [RegExp, StationKind])[] = [
  [/corner/, "corner"],
  [/seam end/, "seamEnd"],
  [/side/, "side"],
];

/** Three, four, five as large as the edges and the tape allow. */
function squareCorner(about: string, { edges }: TentPlan, { answers, feetInches }: Words): string {
  const said = about === "" ? null : readNumber(about);
  const tapeFt = said ? inUnit(said, "ft") : USUAL_TAPE_FT;
  if (tapeFt === null || (about !== "" && said === null)) return answers.noTape(about);
  const along = edges.find((e) => e.name === "AB")!.lengthFt;
  const across = edges.find((e) => e.name === "DA")!.lengthFt;
  const square = rightAngle(along, across, tapeFt);
  return square ? answers.rightAngle(square, feetInches(tapeFt)) : answers.shortTape(feetInches(tapeFt));
}

function howMany(about: string, plan: TentPlan, { answers }: Words): string {
  const { things } = answers;
  const edge = plan.edges.find((e) => about.includes(e.name.toLowerCase()));
  const kind = KINDS.find(([words]) => words.test(about));
  const stations = plan.stations.filter((s) => (!edge || s.edge === edge.name) && (!kind || s.kind === kind[1]));
  const [first] = stations;
  for (const what of ["stakes", "plates"] as const) {
    if (!about.includes(what.slice(0, -1))) continue;
    if (kind && first) return answers.each(stations.length, things[kind[1]], first[what], things[what]);
    return answers.count(
      stations.reduce((n, s) => n + s[what], 0),
      things[what],
    );
  }
  if (/strap/.test(about))
    return answers.count(
      stations.reduce((n, s) => n + s.plates, 0),
      things.straps,
    );
  if (/ring/.test(about)) return edge ? answers.count(edge.rings, things.ringsOn(edge.name)) : answers.cannotCount(about);
  if (/quarter/.test(about)) return answers.count(plan.poles.filter((p) => p.kind === "quarter").length, things.quarterPoles);
  if (/cent(?:re|er)/.test(about)) return answers.count(plan.poles.filter((p) => p.kind === "center").length, things.centerPoles);
  if (/pole|station/.test(about)) return answers.count(stations.length, kind ? things[kind[1]] : things.edgePoles);
  if (/piece/.test(about)) return answers.count(plan.pieces.length, things.pieces);
  return /seam/.test(about) ? answers.count(plan.seams.length, things.seams) : answers.cannotCount(about);
}

function whereIs(about: string, plan: TentPlan, { answers, feetInches }: Words): string {
  const named = about.toUpperCase().match(/[A-Z]+-?\d*/g) ?? [];
  const found = [...plan.stations, ...plan.poles].find((p) => named.some((n) => n === p.id));
  return found ? answers.at(found.id, feetInches(found.xFt), feetInches(found.yFt)) : answers.noSuchPlace(about);
}
