import type { Instant, StepId } from "../install/ids.ts";
import { currentStep, type Job, nextStep } from "../install/job.ts";
import type { EscapeId, PhaseId, Step } from "../install/step.ts";
import { callInWind } from "../install/windward-call.ts";
import { type RightAngle, rightAngle, USUAL_TAPE_FT } from "../site/right-angle.ts";
import type { Countable, Question } from "../speech/question.ts";
import type { EdgeName, StationKind, TentPlan } from "../tent/types.ts";

/** What the guide answers to a question, as facts; `views/text` has the sentences. */
export type Answer =
  | { readonly is: "closed" }
  | { readonly is: "call" | "why" | "how"; readonly step: Step }
  | { readonly is: "left"; readonly calls: number; readonly phase: PhaseId | EscapeId; readonly here: number }
  /** `null` after the last call. */
  | { readonly is: "next"; readonly step: Step | null }
  | { readonly is: "piece"; readonly piece: string }
  | { readonly is: "pieces"; readonly lace: string; readonly eyelet: string }
  | { readonly is: "seam"; readonly seam: string }
  | { readonly is: "noPiece" }
  | { readonly is: "ring"; readonly atFt: number }
  | { readonly is: "noRing" }
  | { readonly is: "count"; readonly n: number; readonly what: Countable; readonly edge: EdgeName | null }
  | { readonly is: "stations"; readonly n: number; readonly kind: StationKind }
  | { readonly is: "each"; readonly n: number; readonly kind: StationKind; readonly each: number; readonly what: "stakes" | "plates" }
  | { readonly is: "cannotCount"; readonly words: string }
  | { readonly is: "place"; readonly id: string; readonly xFt: number; readonly yFt: number }
  | { readonly is: "noSuchPlace"; readonly words: string }
  | { readonly is: "rightAngle"; readonly square: RightAngle; readonly tapeFt: number }
  | { readonly is: "shortTape"; readonly tapeFt: number }
  | { readonly is: "noTape"; readonly words: string };

/** What the guide answers to a question at a moment, from plan and script, and which way the wind comes. Nothing moves and nothing is recorded. */
export function answerTo(question: Question, job: Job, at: Instant): Answer {
  const step = currentStep(job);
  if (!step) return { is: "closed" };
  const next = nextStep(job);
  const said = (call: Step) => callInWind(call, job.frozen.brief, job.snapshot.context, at);
  const { plan } = job.frozen;
  switch (question.asks) {
    case "again":
      return { is: "call", step: said(step) };
    case "why":
      return { is: "why", step };
    case "how":
      return { is: "how", step };
    case "whatsLeft":
      return left(job, step);
    case "whereNext":
      return { is: "next", step: next && said(next) };
    case "whichPiece":
      return piece(step);
    case "howFarToTheRing":
      return step.params.atFt === undefined ? { is: "noRing" } : { is: "ring", atFt: Number(step.params.atFt) };
    case "howMany":
      return howMany(question, plan);
    case "where": {
      const found = [...plan.stations, ...plan.poles].find((p) => question.places.includes(p.id));
      return found ? { is: "place", id: found.id, xFt: found.xFt, yFt: found.yFt } : { is: "noSuchPlace", words: question.words };
    }
    case "rightAngle":
      return squareCorner(question, plan);
  }
}

/** On a way out: the rest of it, and then from where work goes on. */
function left({ frozen: { script }, snapshot: { context } }: Job, step: Step): Answer {
  const { steps, escapes } = script;
  const from = (id: StepId) => steps.slice(steps.findIndex((s) => s.id === id));
  const calls = context.resumeAt === null ? from(step.id) : [...afterIn(escapes[step.phase as EscapeId], step), ...from(context.resumeAt)];
  return { is: "left", calls: calls.length, phase: step.phase, here: calls.filter((s) => s.phase === step.phase).length };
}

const afterIn = (way: readonly Step[], step: Step): readonly Step[] => way.slice(way.indexOf(step));

/** The cloth in hand at a call: a piece that is laid, or the two that are laced. */
function piece({ params }: Step): Answer {
  if (params.piece !== undefined) return { is: "piece", piece: String(params.piece) };
  if (params.lace !== undefined) return { is: "pieces", lace: String(params.lace), eyelet: String(params.eyelet) };
  return params.seam === undefined ? { is: "noPiece" } : { is: "seam", seam: String(params.seam) };
}

/** Three, four, five as large as the edges and the tape allow. */
function squareCorner({ tapeFt: named, words }: Extract<Question, { asks: "rightAngle" }>, { edges }: TentPlan): Answer {
  if (named === "unknown") return { is: "noTape", words };
  const tapeFt = named ?? USUAL_TAPE_FT;
  const lengthFt = (name: EdgeName) => edges.find((e) => e.name === name)!.lengthFt;
  const square = rightAngle(lengthFt("AB"), lengthFt("DA"), tapeFt);
  return square ? { is: "rightAngle", square, tapeFt } : { is: "shortTape", tapeFt };
}

function howMany({ what, edge, kind, words }: Extract<Question, { asks: "howMany" }>, plan: TentPlan): Answer {
  const stations = plan.stations.filter((s) => (edge === null || s.edge === edge) && (kind === null || s.kind === kind));
  const [first] = stations;
  const count = (n: number): Answer => (what === null ? { is: "cannotCount", words } : { is: "count", n, what, edge });
  switch (what) {
    case "stakes":
    case "plates":
      if (kind && first) return { is: "each", n: stations.length, kind, each: first[what], what };
      return count(stations.reduce((n, s) => n + s[what], 0));
    case "straps":
      return count(stations.reduce((n, s) => n + s.plates, 0));
    case "rings": {
      const rings = plan.edges.find((e) => e.name === edge)?.rings;
      return rings === undefined ? { is: "cannotCount", words } : count(rings);
    }
    case "quarterPoles":
      return count(plan.poles.filter((p) => p.kind === "quarter").length);
    case "centerPoles":
      return count(plan.poles.filter((p) => p.kind === "center").length);
    case "sidePoles":
    case null:
      if (kind) return { is: "stations", n: stations.length, kind };
      return count(stations.length);
    case "pieces":
      return count(plan.pieces.length);
    case "seams":
      return count(plan.seams.length);
  }
}
