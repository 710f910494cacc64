import type { Step } from "../install/step.ts";
import type { Question } from "../speech/question.ts";
import type { EdgeName, TentPlan } from "../tent/types.ts";
import type { Answer } from "./answer.ts";

type HowMany = Extract<Question, { asks: "howMany" }>;

/** How many: of this call where it counts them or is asked for, and never the whole tent's for that; else what the plan counts. */
export function howMany(question: HowMany, step: Step, plan: TentPlan): Answer {
  const edge = question.edge ?? (question.here ? ((step.params.edge as EdgeName | undefined) ?? null) : null);
  return atThisCall(question, step) ?? inPlan({ ...question, edge }, plan);
}

/** How many this call asks for, where it counts them and nothing else was named. `null` where it does not. */
function atThisCall({ what, edge, kind, here, words }: HowMany, { gate, params }: Step): Answer | null {
  const { check } = gate ?? {};
  if (check?.kind === "figures") {
    const range = check.want[edge ?? String(what)];
    const isCounted = range?.from !== null && range?.from === range?.to && (edge === null || what === "stations" || here);
    return check.unit === "count" && isCounted && range ? { is: "hereCount", n: range.from! } : null;
  }
  if (!here && what !== null) return null;
  const n = check?.kind === "count" && check.from === check.to ? check.from : null;
  if (n !== null && n > 0 && edge === null && kind === null) return { is: "hereCount", n };
  return here && params.edge === undefined ? { is: "notHere", words } : null;
}

function inPlan({ what, edge, kind, words }: HowMany, plan: TentPlan): Answer {
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
    case "stations":
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
