import type { Check } from "../../install/checks/registry.ts";
import type { Gate, Unit } from "../../install/gates.ts";
import { indexOf } from "../../install/script-index.ts";
import type { Frozen } from "../../install/step.ts";
import { asking, becauseAt, gateOf } from "./job-words.ts";
import { choice, type Maker, type Shown, type Skills, worded } from "./question.ts";

/** The figure that a gate's check is about; `null` where it is about none. */
function figureOf(check: Check): number | null {
  switch (check.kind) {
    case "wind":
      return check.belowMph;
    case "measure":
      return check.to ?? check.from;
    case "count":
      return check.from;
    case "figures":
      return Object.values(check.want)[0]?.to ?? null;
    default:
      return null;
  }
}

/** A figure at which a gate shuts. Slips: the other figures of the same unit, then a step up or down. */
const limit =
  (id: string | ((frozen: Frozen) => string | undefined), unit: Unit, step: number): Maker =>
  (frozen, random) => {
    const gateId = typeof id === "string" ? id : id(frozen);
    const gate = gateId === undefined ? null : gateOf(frozen, gateId);
    const n = gate && figureOf(gate.check);
    if (gate === null || n === null) return null;
    const shown = (figure: number): Shown => ({ is: "figure", n: figure, unit });
    const others = asking(frozen).flatMap(({ gate: other }) => {
      const figure = figureOf(other.check);
      return figure !== null && unitOf(other.check) === unit && figure > 0 ? [figure] : [];
    });
    // A figure with a fraction would stand out among whole ones.
    const near = Number.isInteger(n) ? [n + step, n - step, n * 2] : [n * 2, n / 2, n * 1.5];
    const [another] = Number.isInteger(n) ? random.shuffle(others.filter((figure) => figure !== n)) : [];
    const slips = [...(another === undefined ? [] : [another]), ...random.shuffle(near)].filter((figure) => figure > 0);
    const made = choice(random, shown(n), slips.map(shown)); // biome-ignore format: one line reads best
    return made && { ask: `limit.${gateId?.split(".")[0] === "wind" ? gateId : boundOf(gate.check)}`, about: aboutGate(frozen, gate), ...made, because: becauseAt(frozen, gate.id) }; // biome-ignore format: one line reads best
  };
const boundOf = (check: Check): "most" | "least" => (check.kind === "measure" && check.to === null ? "least" : "most");
const unitOf = (check: Check): Unit | null =>
  check.kind === "wind"
    ? "mph"
    : check.kind === "measure"
      ? check.unit
      : check.kind === "figures" && check.unit !== "count"
        ? check.unit
        : null;
const aboutGate = ({ script }: Frozen, { id, check }: Gate) => {
  const asked = indexOf(script).questions.get(id);
  return asked && check.kind !== "wind" ? worded(asked) : null;
};

/** Turns of strap, exits: counted, and at least so many. */
const atLeast =
  (id: string, of: "turns" | "exits"): Maker =>
  (frozen, random) => {
    const check = gateOf(frozen, id)?.check;
    if (check?.kind !== "count" || check.from === null) return null;
    const n = check.from;
    const shown = (count: number): Shown => ({ is: "count", n: count, of });
    const made = choice(random, shown(n), [n + 1, n - 1, n + 2, n * 2, n + 3].filter((count) => count > 0).map(shown));
    return made && { ask: "limit.least", about: becauseAt(frozen, id), ...made, because: becauseAt(frozen, id) };
  };

const nearestMark = ({ script }: Frozen): string | undefined => script.steps.find((s) => s.wordsKey === "nearest.mark")?.id;
const overhead = ({ script }: Frozen): string | undefined => script.steps.find((s) => s.wordsKey === "overhead.line" && s.gate?.check.kind === "measure")?.id; // biome-ignore format: one line reads best

/** The figures that answers are judged by, as this job's gates have them. */
export const LIMITS: Skills = {
  "limit.mark": ["utilitiesMarked", limit(nearestMark, "in", 6)],
  "limit.around": ["utilitiesMarked", limit("clear.around", "ft", 5)],
  "limit.overhead": ["utilitiesMarked", limit(overhead, "ft", 10)],
  "limit.showing": ["anchorsSet", limit("drive.AB", "in", 2)],
  "limit.lean": ["anchorsSet", limit("lean.outward", "deg", 5)],
  "limit.wind.cloth": ["sectionsJoined", limit("wind.cloth", "mph", 5)],
  "limit.wind.lift": ["perimeterRaised", limit("wind.lift", "mph", 5)],
  "limit.turns": ["perimeterRaised", atLeast("straps.turns", "turns")],
  "limit.plumb": ["tensioned", limit("plumb", "in", 1)],
  "limit.extinguisher": ["inspected", limit("extinguishers", "ft", 25)],
  "limit.exits": ["inspected", atLeast("exits", "exits")],
  "limit.evacuate": ["standing", limit("wind.use", "mph", 5)],
  "limit.wind.lower": ["struck", limit("wind.lower", "mph", 5)],
};
