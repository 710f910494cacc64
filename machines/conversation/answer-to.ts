import type { Answer as Given } from "../install/gates.ts";
import type { Instant, StepId } from "../install/ids.ts";
import { currentStep, type Job, nextStep, questionAt } from "../install/job.ts";
import type { EscapeId, Step } from "../install/step.ts";
import { callInWind } from "../install/windward-call.ts";
import { rightAngle, USUAL_TAPE_FT } from "../site/right-angle.ts";
import type { Question } from "../speech/question.ts";
import type { EdgeName, TentPlan } from "../tent/types.ts";
import type { Answer } from "./answer.ts";
import { howMany } from "./how-many.ts";

/** What the guide answers to a question at a moment, from plan and script, and which way the wind comes. Nothing moves and nothing is recorded. */
export function answerTo(question: Question, job: Job, at: Instant): Answer {
  const step = currentStep(job);
  if (!step) return { is: "closed" };
  const next = nextStep(job);
  const said = (call: Step) => callInWind(call, job.frozen.brief, job.snapshot.context, at);
  const { plan } = job.frozen;
  const { context } = job.snapshot;
  switch (question.asks) {
    case "again":
      return { is: "call", step: said(step) };
    case "why":
      return { is: "why", step };
    case "how":
      return { is: "how", step };
    case "whatsLeft":
      return { is: "left", ...left(job, step) };
    case "howLong":
      return { is: "howLong", ...left(job, step) };
    case "whereNext":
      return { is: "next", step: next && said(next) };
    case "whichPiece":
      return piece(step);
    case "howFarToTheRing":
      return step.params.atFt === undefined ? { is: "noRing" } : { is: "ring", atFt: Number(step.params.atFt) };
    case "laceSide":
      return laced(step, plan);
    case "strapLength":
      return { is: "strap", spanFt: Math.hypot(plan.spec.sidePoleFt, plan.spec.setbackFt) };
    case "howMany":
      return howMany(question, step, plan);
    case "where":
      return where(question, plan);
    case "firstAid":
    case "rallyPoint":
    case "stormShelter":
    case "address":
      return { is: "site", what: question.asks, says: job.frozen.brief.site[question.asks] ?? null };
    case "whatsTheWind":
      return { is: "wind", wind: context.wind, minAgo: Math.floor((at - (context.wind?.takenAt ?? at)) / 60_000) };
    case "whatsTheLimit":
      return { is: "limit", gate: questionAt(job, at)?.gate ?? null };
    case "lastRead":
      return { is: "lastRead", answer: lastOf(context.answers) };
    case "whoSaid":
      return { is: "whoSaid", answer: (step.gate && context.answers[step.gate.id]) || lastOf(context.answers) };
    case "rightAngle":
      return squareCorner(question, plan);
  }
}

/** On a way out: the rest of it, and then from where work goes on. */
function left({ frozen: { script }, snapshot: { context } }: Job, step: Step) {
  const { steps, escapes } = script;
  const from = (id: StepId) => steps.slice(steps.findIndex((s) => s.id === id));
  const calls = context.resumeAt === null ? from(step.id) : [...afterIn(escapes[step.phase as EscapeId], step), ...from(context.resumeAt)];
  return { calls: calls.length, phase: step.phase, here: calls.filter((s) => s.phase === step.phase).length };
}

const afterIn = (way: readonly Step[], step: Step): readonly Step[] => way.slice(way.indexOf(step));

/** The cloth in hand at a call: a piece that is laid, or the two that are laced. */
function piece({ params }: Step): Answer {
  if (params.piece !== undefined) return { is: "piece", piece: String(params.piece) };
  if (params.lace !== undefined) return { is: "pieces", lace: String(params.lace), eyelet: String(params.eyelet) };
  return params.seam === undefined ? { is: "noPiece" } : { is: "seam", seam: String(params.seam) };
}

/** Whose loops go through whose grommets: at the seam in hand, or at every seam. */
function laced(step: Step, { seams }: TentPlan): Answer {
  if (step.params.lace !== undefined) return piece(step);
  if (seams.length === 0) return { is: "noPiece" };
  return { is: "laced", seams: seams.map(({ id, lacePiece, eyeletPiece }) => ({ id, lace: lacePiece, eyelet: eyeletPiece })) };
}

function where({ places, items, words }: Extract<Question, { asks: "where" }>, plan: TentPlan): Answer {
  const found = [...plan.stations, ...plan.poles].find((p) => places.includes(p.id));
  if (found) return { is: "place", id: found.id, xFt: found.xFt, yFt: found.yFt };
  const edge = plan.edges.find(({ name }) => places.includes(name));
  if (edge) return { is: "edge", edge: edge.name, lengthFt: edge.lengthFt };
  return items.length > 0 ? { is: "notTold", items } : { is: "noSuchPlace", words };
}

/** The latest of the answers. */
const lastOf = (answers: Readonly<Record<string, Given>>): Given | null =>
  Object.values(answers).reduce<Given | null>((last, answer) => (last === null || answer.entry > last.entry ? answer : last), null);

/** Three, four, five as large as the edges and the tape allow. */
function squareCorner({ tapeFt: named, words }: Extract<Question, { asks: "rightAngle" }>, { edges }: TentPlan): Answer {
  if (named === "unknown") return { is: "noTape", words };
  const tapeFt = named ?? USUAL_TAPE_FT;
  const lengthFt = (name: EdgeName) => edges.find((e) => e.name === name)!.lengthFt;
  const square = rightAngle(lengthFt("AB"), lengthFt("DA"), tapeFt);
  return square ? { is: "rightAngle", square, tapeFt } : { is: "shortTape", tapeFt };
}
